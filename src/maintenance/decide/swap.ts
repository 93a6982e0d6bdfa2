/** A part was taken out and another fitted. */
import type { Part } from '../codes.ts';
import type { Draft } from '../entry/entry.ts';
import { whatIsIn } from '../record/reducers/swapped.ts';
import type { ShopRecord } from '../record/record.ts';
import { findToTake } from '../record/shelf.ts';
import { lacksPart } from './builds.ts';
import type { DecideContext, Shops } from './context.ts';
import type { SwapDeed } from './deed.ts';
import { written, type Decision, type Flag, type WrittenNotes } from './decision.ts';
import { BORDERS, impossible } from './figures.ts';
import { isScene, machineScene, type Scene } from './scene.ts';

export function decideSwap(deed: SwapDeed, shops: Shops, context: DecideContext): Decision {
  const scene = machineScene(deed, shops, context);
  if (!isScene(scene)) return scene;
  const { part, count = 1 } = deed;
  const wrong = impossible('count', deed.count, BORDERS.pieces, { act: 'swap', machine: scene.name, part });
  if (wrong) return wrong;
  const before = deed.fitted === undefined ? whatIsIn(scene.machine, part) : undefined;
  const shelf = shortOf(part, deed.fitted ?? before, count, shops.latest);
  const lacks = lacksPart(part, scene.latest.build);
  const flags: Flag[] = [...scene.flags];
  if (lacks) flags.push('not-on-this-build');
  if (before !== undefined) flags.push('assumed-fitted');
  if (shelf) flags.push('conflict');
  return written([swapDraft(deed, scene)], flags, {
    ...(before === undefined ? {} : { assumedFitted: before }),
    ...(lacks ? { missing: part } : {}),
    ...(shelf ? { shelf } : {}),
  });
}

function swapDraft({ part, fitted, reason, count }: SwapDeed, { name, at, precision }: Scene): Draft {
  return {
    kind: 'swapped',
    machine: name,
    part,
    ...(fitted === undefined ? {} : { fitted }),
    ...(reason === undefined ? {} : { reason }),
    ...(count === undefined ? {} : { count }),
    at,
    precision,
  };
}

/** What the shelf was believed to hold, where that is less than was taken. */
function shortOf(
  part: Part,
  want: string | undefined,
  count: number,
  shop: ShopRecord,
): WrittenNotes['shelf'] {
  const item = shop.shelf[findToTake(shop.shelf, part, want)];
  if (!item || item.count >= count) return undefined;
  return { part, before: item.count, ...(item.fitted === undefined ? {} : { fitted: item.fitted }) };
}
