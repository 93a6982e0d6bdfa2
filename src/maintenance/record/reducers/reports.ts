/** Notes, findings, and the spool that is on. */
import { keepLast, markOf } from '../mark.ts';
import type { Reducer } from './reducer.ts';

export const noted: Reducer<'noted'> = (machine, entry, calendar) => {
  const mark = markOf(entry, machine.totals, calendar);
  machine.notes = keepLast(machine.notes, { text: entry.text, mark });
};

export const found: Reducer<'found'> = (machine, entry, calendar) => {
  const { text, part } = entry;
  const mark = markOf(entry, machine.totals, calendar);
  machine.found = keepLast(machine.found, { text, mark, ...(part ? { part } : {}) });
};

/** A spool of which the material is not said is not the old one: what runs from here is unknown. */
export const loaded: Reducer<'loaded'> = (machine, entry, calendar) => {
  const { material, grams } = entry;
  const mark = markOf(entry, machine.totals, calendar);
  machine.loaded = { mark, ...(material ? { material } : {}), ...(grams === undefined ? {} : { grams }) };
};
