/** "What's due on oak?", where no machine is called that: said plainly, with the names that there are. */
import type { AskTopic } from '../../language/act.ts';
import { list } from '../../replies/format/list.ts';
import { item, type Reply } from '../../replies/reply.ts';
import { machineName } from '../../replies/wording/names.ts';
import type { Scene } from '../scene.ts';
import type { Step } from '../step.ts';

/** Questions that stand behind "on" or "for" with a machine; stock and figures are of other things. */
const OF_A_MACHINE: ReadonlySet<AskTopic> = new Set<AskTopic>([
  'overdue', 'due', 'next', 'history', 'age', 'usage', 'status', 'ready', 'how',
]); // prettier-ignore

/** Undefined where the question names a machine of this workshop, or none at all. */
export function unknownMachine(
  scene: Scene,
  { act, assumed }: Pick<Step, 'act' | 'assumed'>,
): Reply | undefined {
  const { askedOf } = scene.reading;
  if (act.kind !== 'ask' || askedOf === undefined || !OF_A_MACHINE.has(act.topic)) return undefined;
  if (act.machine !== undefined && assumed?.['machine']?.from !== 'conversation') return undefined;
  const names = [...scene.record.machines.values()]
    .filter(({ retired }) => !retired)
    .map(({ name }) => machineName(name, scene));
  return {
    sections: [{ items: [item(`I know no machine called “${askedOf}”. Here there are ${list(names)}.`)] }],
    buttons: [],
  };
}
