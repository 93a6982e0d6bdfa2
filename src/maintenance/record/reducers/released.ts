/** A hold is lifted: with what was found and mended, or as a false alarm. */
import { keepLast, markOf } from '../mark.ts';
import { reasonsOf } from '../reasons.ts';
import type { Reducer } from './reducer.ts';
import { clearSymptom } from './symptoms.ts';

export const released: Reducer<'released'> = (machine, entry, calendar) => {
  const { hold } = machine;
  delete machine.hold;
  if (hold) for (const symptom of reasonsOf(hold)) clearSymptom(machine, symptom);
  if (entry.found === undefined) return;
  const mark = markOf(entry, machine.totals, calendar);
  machine.found = keepLast(machine.found, { text: entry.found, mark });
};
