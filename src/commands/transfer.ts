/** The journal out and in, as lines of JSON. An import is all or nothing. */
import type { LocalCalendar } from '../maintenance/calendar.ts';
import { entryDocument, entryOfDocument } from '../maintenance/entry/document.ts';
import type { Entry } from '../maintenance/entry/entry.ts';
import type { JournalReader } from '../store/journal.ts';
import type { Transaction } from '../store/store.ts';
import { RequestFault } from './fault.ts';

export async function* exportLines(journal: JournalReader, calendar: LocalCalendar): AsyncGenerator<string> {
  for await (const { entries } of journal.all('arrival'))
    for (const entry of entries) yield JSON.stringify(entryDocument(entry, calendar));
}

export interface Imported {
  written: number;
  /** Already here with the same content. */
  skipped: number;
}

/** Throws RequestFault at the first line that is no entry or contradicts one that is here; then nothing is kept. */
export async function importLines({ journal }: Transaction, lines: readonly string[]): Promise<Imported> {
  const result = { written: 0, skipped: 0 };
  for (const [index, line] of lines.entries()) {
    if (line.trim() === '') continue;
    const entry = entryOf(line, index + 1);
    const outcome = await journal.insertRaw(entry);
    if (outcome === 'different')
      throw new RequestFault(
        'conflict',
        `Line ${index + 1}: entry ${entry.id} is here already with other content. Nothing was imported.`,
      );
    result[outcome === 'written' ? 'written' : 'skipped'] += 1;
  }
  return result;
}

function entryOf(line: string, number: number): Entry {
  try {
    return entryOfDocument(JSON.parse(line));
  } catch (cause) {
    const why =
      cause instanceof SyntaxError
        ? 'this is not JSON'
        : cause instanceof Error
          ? cause.message
          : String(cause);
    throw new RequestFault('bad-line', `Line ${number}: ${why}. Nothing was imported.`);
  }
}
