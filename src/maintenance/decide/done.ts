/** A maintenance task was carried out. What happened is recorded, also where it was wrong for this build. */
import { isRoomTask, partReplacedBy, ROOM } from '../codes.ts';
import { greasesPlasticNut, lacksTask } from './builds.ts';
import type { DecideContext, Shops } from './context.ts';
import type { DoneDeed } from './deed.ts';
import { written, type Decision, type Flag } from './decision.ts';
import { isScene, sceneOf } from './scene.ts';
import { decideSwap } from './swap.ts';

export function decideDone(deed: DoneDeed, shops: Shops, context: DecideContext): Decision {
  const part = partReplacedBy(deed.task);
  if (part) {
    const { task: _task, finding: _finding, ...rest } = deed;
    return decideSwap({ ...rest, kind: 'swap', part }, shops, context);
  }
  const scene = sceneOf(isRoomTask(deed.task) ? { ...deed, machine: ROOM } : deed, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision } = scene;
  const { task, finding } = deed;
  const { build } = scene.latest;
  const flags: Flag[] = [...scene.flags];
  if (lacksTask(task, build)) flags.push('not-on-this-build');
  if (greasesPlasticNut(task, build)) flags.push('plastic-nut');
  return written([{ kind: 'done', machine, task, ...(finding ? { finding } : {}), at, precision }], flags);
}
