/** After "Change something": a bare day, figure, reason or name is a correction of that message. */
import type { AmendAct, BareAnswer, Reading } from '../language/act.ts';
import type { AmendDeed } from '../maintenance/decide/deed.ts';
import { standingBatch } from './lastBatch.ts';
import { playDeeds } from './play.ts';
import type { Scene } from './scene.ts';
import type { Played } from './step.ts';

/** Undefined when the message says something else. */
export function changeIn({ acts, bare }: Reading): AmendDeed | undefined {
  const [only, ...more] = acts.map(({ act }) => act);
  if (more.length > 0) return undefined;
  if (only?.kind === 'amend') return only;
  if (only?.kind === 'usage' && only.machine === undefined && only.on === undefined)
    return { ...only, kind: 'amend' };
  if (only && only.kind !== 'unclear') return undefined;
  const change = bare && fieldsOf(bare);
  return change && Object.keys(change).length > 0 ? { kind: 'amend', ...change } : undefined;
}

function fieldsOf({ number, unit, machine, date, reason, part }: BareAnswer): Omit<AmendAct, 'kind'> {
  return {
    ...(date === undefined ? {} : { on: date }),
    ...(number === undefined || date !== undefined
      ? {}
      : unit === 'hours'
        ? { hours: number }
        : { value: number }),
    ...(machine === undefined ? {} : { machine }),
    ...(reason === undefined ? {} : { reason }),
    ...(part === undefined ? {} : { part }),
  };
}

/** The correction, on the entries of the message that the button stood under. */
export async function playChange(scene: Scene, change: AmendDeed, message: string): Promise<Played> {
  const batch = await standingBatch(scene.transaction.journal, message, scene.message.now);
  return { ...(await playDeeds(scene, [change], { batch })), changing: message };
}
