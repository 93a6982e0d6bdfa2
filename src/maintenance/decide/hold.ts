/** A held machine: what it is held for, and how the hold is lifted. */
import { asksFinding } from '../record/reasons.ts';
import type { Hold } from '../record/record.ts';
import type { DecideContext, Shops } from './context.ts';
import type { ReleaseDeed } from './deed.ts';
import { asked, refused, written, type Decision, type Refused } from './decision.ts';
import { isScene, sceneOf } from './scene.ts';

export const heldBy = (machine: string, { symptom, also, since }: Hold): Refused =>
  refused('safety-hold', { machine, symptom, also, at: since.at, by: since.by });

/**
 * "False alarm" may be said by anyone, and stands under their name, except of a shock, a bare wire or a scorched
 * connector. What was found is a keeper's word. Neither speaks of what was told after its own moment: a word that
 * comes late lifts nothing that it could not know.
 */
export function decideRelease(deed: ReleaseDeed, shops: Shops, context: DecideContext): Decision {
  const scene = sceneOf(deed, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision, latest } = scene;
  if (!latest.hold) return refused('nothing-to-undo', { act: 'release', machine });
  if (latest.hold.last > at) {
    const { facts } = heldBy(machine, latest.hold);
    return refused('safety-hold', { ...facts, before: at });
  }
  const bare = deed.falseAlarm === true && !asksFinding(latest.hold);
  if (!bare && context.role !== 'keeper') return heldBy(machine, latest.hold);
  const found = deed.found?.trim();
  if (!bare && !found) return asked('other', { act: 'release', machine, symptom: latest.hold.symptom });
  const said = {
    ...(found ? { found } : {}),
    ...(deed.falseAlarm ? { falseAlarm: true as const } : {}),
  };
  return written([{ kind: 'released', machine, ...said, at, precision }], [], { hold: latest.hold.symptom });
}
