/** A hold is lifted: with what was found and mended, or as a false alarm. */
import { keepLast, markOf } from '../mark.ts';
import type { Reducer } from './reducer.ts';
import { clearedSymptom } from './symptoms.ts';

export const released: Reducer<'released'> = (machine, entry, calendar) => {
  const { hold, ...rest } = machine;
  const symptoms = hold ? [hold.symptom, ...hold.also] : [];
  const free = symptoms.reduce(clearedSymptom, hold ? rest : machine);
  if (entry.found === undefined) return free;
  const mark = markOf(entry, machine.totals, calendar);
  return { ...free, found: keepLast(free.found, { text: entry.found, mark }) };
};
