/** Out of use and back, hands in it and closed again. */
import type { EntryKind } from '../entry/entry.ts';
import type { DecideContext, Shops } from './context.ts';
import type { StateDeed } from './deed.ts';
import { written, type Decision } from './decision.ts';
import { heldBy } from './hold.ts';
import { isScene, machineScene } from './scene.ts';

const ENTRY_OF = { down: 'down', up: 'up', open: 'opened', close: 'closed' } as const satisfies Record<
  StateDeed['kind'],
  EntryKind
>;

/** A held machine does not come back by saying so. */
export function decideState(deed: StateDeed, shops: Shops, context: DecideContext): Decision {
  const scene = machineScene(deed, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision, flags, latest } = scene;
  if (deed.kind === 'up' && latest.hold) return heldBy(machine, latest.hold);
  const { opened } = latest;
  const notes = deed.kind === 'up' && opened ? { openedBy: { by: opened.by, at: opened.at } } : {};
  return written([{ kind: ENTRY_OF[deed.kind], machine, at, precision }], flags, notes);
}
