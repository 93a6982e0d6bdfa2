/**
 * The shelf: the file's count is what was there when it was written, and swaps have drawn on it since. So it
 * counts when the item is new, and again only when somebody changed the figure in the file.
 */
import type { EntryFields } from '../../maintenance/entry/entry.ts';
import { foldName } from '../../maintenance/machine.ts';
import { findItem } from '../../maintenance/record/shelf.ts';
import type { ShelfItem } from '../../maintenance/record/record.ts';
import type { ShelfLine } from '../../workshop.ts';

type Named = Pick<ShelfItem, 'part' | 'fitted'>;
const itemKey = ({ part, fitted }: Named): string => `${part} ${foldName(fitted ?? '')}`;
const inFile = (lines: readonly ShelfLine[], wanted: Named): ShelfLine | undefined =>
  lines.find((line) => itemKey(line) === itemKey(wanted));
/** As the record itself finds it, whatever the order of the words. */
const onRecord = (shelf: readonly ShelfItem[], { part, fitted }: Named): ShelfItem | undefined =>
  shelf[findItem(shelf, part, fitted)];

/** @param before the shelf of the file that was applied last, if there was one */
export const shelfFacts = (
  lines: readonly ShelfLine[],
  shelf: readonly ShelfItem[],
  before: readonly ShelfLine[] = [],
): EntryFields[] => lines.flatMap((line) => lineFacts(line, onRecord(shelf, line), inFile(before, line)));

function lineFacts(
  line: ShelfLine,
  running: ShelfItem | undefined,
  before: ShelfLine | undefined,
): EntryFields[] {
  const counted = !running || (before !== undefined && before.count !== line.count);
  const count = counted ? line.count : running.count;
  if (running && count === running.count && !termsChanged(line, running)) return [];
  return [{ kind: 'stockCounted', ...line, count }];
}

const termsChanged = (line: ShelfLine, running: ShelfItem): boolean =>
  (line.deliveryDays !== undefined && line.deliveryDays !== running.deliveryDays) ||
  (line.price !== undefined && line.price !== running.price);
