/** Work that was done. A replacement told as a task is the swap that it was. */
import { partReplacedBy, type Part } from '../../codes.ts';
import type { EntryOf } from '../../entry/entry.ts';
import { markOf } from '../mark.ts';
import type { MachineRecord, Mark } from '../record.ts';
import { taskHere } from '../taskHere.ts';
import type { Reducer } from './reducer.ts';
import { noteTask, settle } from './settle.ts';
import { swapped } from './swapped.ts';
import { clearSymptom, occurred } from './symptoms.ts';

export const done: Reducer<'done'> = (machine, entry, calendar) => {
  const part = partReplacedBy(entry.task);
  if (part) {
    swapped(machine, asSwap(entry, part), calendar);
    return;
  }
  const mark = markOf(entry, machine.totals, calendar);
  const task = taskHere(entry.task, machine.build);
  const { finding } = entry;
  noteTask(machine, task, finding ? { ...mark, why: 'done', finding } : { ...mark, why: 'done' });
  settle(machine, task, entry.by);
  if (entry.task === 'clear-jam') jamCleared(machine, mark);
  if (entry.task === 'trim-tube') machine.tubeTrims = (machine.tubeTrims ?? 0) + 1;
};

const asSwap = (
  { task: _task, finding: _finding, ...rest }: EntryOf<'done'>,
  part: Part,
): EntryOf<'swapped'> => ({
  ...rest,
  kind: 'swapped',
  part,
});

/** A jam that somebody cleared had happened, whether or not it was told before. */
function jamCleared(machine: MachineRecord, mark: Mark): void {
  if (!machine.symptoms['no-extrusion']?.open) occurred(machine, 'no-extrusion', mark);
  clearSymptom(machine, 'no-extrusion');
}
