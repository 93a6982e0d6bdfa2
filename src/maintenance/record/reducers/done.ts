/** Work that was done. A replacement told as a task is the swap that it was. */
import { partReplacedBy, type Part } from '../../codes.ts';
import type { EntryOf } from '../../entry/entry.ts';
import { markOf } from '../mark.ts';
import type { Reducer } from './reducer.ts';
import { settle, withTask } from './settle.ts';
import { swapped } from './swapped.ts';
import { clearedSymptom, occurred } from './symptoms.ts';

export const done: Reducer<'done'> = (machine, entry, calendar) => {
  const part = partReplacedBy(entry.task);
  if (part) return swapped(machine, asSwap(entry, part), calendar);
  const mark = markOf(entry, machine.totals, calendar);
  const finding = entry.finding ? { finding: entry.finding } : {};
  const settled = settle(
    withTask(machine, entry.task, { ...mark, why: 'done', ...finding }),
    entry.task,
    entry.by,
  );
  return entry.task === 'clear-jam' ? jamCleared(settled, entry, calendar) : settled;
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
const jamCleared: Reducer<'done'> = (machine, entry, calendar) => {
  const told = machine.symptoms['no-extrusion']?.open !== undefined;
  const mark = markOf(entry, machine.totals, calendar);
  return clearedSymptom(told ? machine : occurred(machine, 'no-extrusion', mark), 'no-extrusion');
};
