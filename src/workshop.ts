/**
 * The workshop file: what a workshop says of itself, its people, machines and shelf. Read once, checked whole,
 * plain JSON from then on (it is kept in the database).
 */
import type { Instant } from './maintenance/entry/entry.ts';
import { clashesIn } from './workshop/clashes.ts';
import { readSheet } from './workshop/document.ts';
import type { Sheet } from './workshop/document.ts';
import { inOrder } from './workshop/fault.ts';
import type { Fault } from './workshop/fault.ts';
import { phrasesOf, placeOf } from './workshop/phrase.ts';
import type { Phrase } from './workshop/phrase.ts';
import { workshopSchema } from './workshop/schema.ts';
import type { Workshop } from './workshop/schema.ts';

export type { Fault } from './workshop/fault.ts';
export type { Person, ShelfLine, Workshop, WorkshopMachine } from './workshop/schema.ts';

export type ParsedWorkshop = { ok: true; workshop: Workshop } | { ok: false; faults: Fault[] };

/**
 * @param yamlText the file, at most 1 MB
 * @param now when given, dates that lie ahead are faults too (the day is the workshop's own)
 * @returns the checked workshop, or about twenty faults at most, each with its line
 */
export function parseWorkshop(yamlText: string, now?: Instant): ParsedWorkshop {
  const read = readSheet(yamlText);
  if ('faults' in read) return { ok: false, faults: inOrder(read.faults) };
  const { sheet } = read;
  const parsed = workshopSchema.safeParse(sheet.value, { reportInput: true });
  if (!parsed.success) return failed(sheet, parsed.error.issues.flatMap(phrasesOf));
  const clashes = clashesIn(parsed.data, now);
  return clashes.length > 0 ? failed(sheet, clashes) : { ok: true, workshop: parsed.data };
}

function failed(sheet: Sheet, phrases: readonly Phrase[]): ParsedWorkshop {
  const faults = phrases.map(({ path, text, stranger }) => {
    // a stranger among the fields is named in its own sentence; its place is the block it stands in
    const place = placeOf(stranger ? path.slice(0, -1) : path, sheet.value);
    return {
      line: sheet.lineOf(path),
      text: place === '' ? (stranger ? text : `the file ${text}`) : `${place}: ${text}`,
    };
  });
  return { ok: false, faults: inOrder(faults) };
}
