/** A spool was mounted. */
import type { DecideContext, Shops } from './context.ts';
import type { LoadDeed } from './deed.ts';
import { written, type Decision } from './decision.ts';
import { BORDERS, impossible } from './figures.ts';
import { isScene, machineScene } from './scene.ts';

export function decideLoad(deed: LoadDeed, shops: Shops, context: DecideContext): Decision {
  const scene = machineScene(deed, shops, context);
  if (!isScene(scene)) return scene;
  const { material, grams } = deed;
  const { name: machine, at, precision, flags } = scene;
  const wrong = impossible('grams', grams, BORDERS.grams, { act: 'load', machine });
  if (wrong) return wrong;
  const spool = { ...(material ? { material } : {}), ...(grams === undefined ? {} : { grams }) };
  return written([{ kind: 'loaded', machine, ...spool, at, precision }], flags);
}
