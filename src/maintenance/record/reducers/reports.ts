/** Notes, findings, and the spool that is on. */
import { keepLast, markOf } from '../mark.ts';
import type { Reducer } from './reducer.ts';

export const noted: Reducer<'noted'> = (machine, entry, calendar) => ({
  ...machine,
  notes: keepLast(machine.notes, { text: entry.text, mark: markOf(entry, machine.totals, calendar) }),
});

export const found: Reducer<'found'> = (machine, entry, calendar) => {
  const { text, part } = entry;
  const item = { text, mark: markOf(entry, machine.totals, calendar), ...(part ? { part } : {}) };
  return { ...machine, found: keepLast(machine.found, item) };
};

/** A spool of which the material is not said is not the old one: what runs from here is unknown. */
export const loaded: Reducer<'loaded'> = (machine, entry, calendar) => {
  const { material, grams } = entry;
  const mark = markOf(entry, machine.totals, calendar);
  return {
    ...machine,
    loaded: { mark, ...(material ? { material } : {}), ...(grams === undefined ? {} : { grams }) },
  };
};
