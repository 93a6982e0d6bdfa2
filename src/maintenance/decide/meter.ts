/** The machine's own counter was read. */
import { MS_AN_HOUR } from '../record/runs.ts';
import { tidy } from '../record/tidy.ts';
import type { DecideContext, Shops } from './context.ts';
import type { MeterDeed } from './deed.ts';
import {
  asked,
  refused,
  written,
  type Asked,
  type Decision,
  type Flag,
  type Refused,
  type WrittenNotes,
} from './decision.ts';
import { BORDERS, impossible } from './figures.ts';
import { isScene, machineScene, type Scene } from './scene.ts';

/** A reading noted a day late is no reason to ask; a digit too many is. */
const ROUGHLY = 1.1;
const SLACK_HOURS = 24;

export function decideMeter(deed: MeterDeed, shops: Shops, context: DecideContext): Decision {
  const scene = machineScene(deed, shops, context);
  if (!isScene(scene)) return scene;
  const doubt = doubtReading(deed, scene, context);
  if (doubt) return doubt;
  const { name: machine, at, precision } = scene;
  const fresh = deed.newCounter ? { newCounter: true as const } : {};
  const { flags, notes } = conflicts(deed, scene);
  const draft = { kind: 'meter', machine, hours: deed.hours, ...fresh, at, precision } as const;
  return written([draft], [...scene.flags, ...flags], notes);
}

/** Below the last reading is refused; below that plus what was logged since is a conflict, and written. */
export function doubtReading(
  deed: MeterDeed,
  scene: Scene,
  context: DecideContext,
): Refused | Asked | undefined {
  const facts = { act: 'meter', machine: scene.name, field: 'hours', given: deed.hours };
  const wrong = impossible('hours', deed.hours, BORDERS.counter, facts);
  const { anchor, counterKnown, totals } = scene.machine;
  if (wrong || deed.newCounter || !counterKnown || !anchor) return wrong;
  if (deed.hours < anchor.hours)
    return refused('counter-back', { ...facts, known: totals.hours, at: anchor.mark.at });
  const most = anchor.hours + ((scene.at - anchor.mark.at) / MS_AN_HOUR) * ROUGHLY + SLACK_HOURS;
  if (deed.hours <= Math.max(most, totals.hours) || context.confirmed) return undefined;
  return asked('hours', { ...facts, limit: most, known: totals.hours, border: 'clock', at: anchor.mark.at });
}

function conflicts(deed: MeterDeed, scene: Scene): { flags: readonly Flag[]; notes: WrittenNotes } {
  const { anchor, totals, counterKnown } = scene.machine;
  const later = scene.latest.anchor;
  if (later && later.mark.at > scene.at && later.hours < deed.hours && !deed.newCounter)
    return {
      flags: ['conflict'],
      notes: { conflictsWith: { entry: later.mark.entry, at: later.mark.at, figure: later.hours } },
    };
  const logged = counterKnown && anchor && !deed.newCounter ? totals.hours - deed.hours : 0;
  if (!anchor || logged < 1) return { flags: [], notes: {} };
  return {
    flags: ['conflict'],
    notes: {
      conflictsWith: {
        entry: anchor.mark.entry,
        at: anchor.mark.at,
        figure: anchor.hours,
        logged: tidy(totals.hours - anchor.hours),
      },
    },
  };
}
