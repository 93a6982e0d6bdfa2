/**
 * The shelf: the file's count is what was there when it was written, and swaps have drawn on it since. So it
 * counts when the item is new, and again only when somebody changed the figure in the file.
 */
import type { EntryFields } from '../../maintenance/entry/entry.ts';
import { foldName } from '../../maintenance/machine.ts';
import type { ShelfItem } from '../../maintenance/record/record.ts';
import type { ShelfLine } from '../../workshop.ts';

type Named = Pick<ShelfItem, 'part' | 'fitted'>;
const itemKey = ({ part, fitted }: Named): string => `${part} ${foldName(fitted ?? '')}`;
const find = <Item extends Named>(items: readonly Item[], wanted: Named): Item | undefined =>
  items.find((item) => itemKey(item) === itemKey(wanted));

/** @param before the shelf of the file that was applied last, if there was one */
export const shelfFacts = (
  lines: readonly ShelfLine[],
  shelf: readonly ShelfItem[],
  before: readonly ShelfLine[] = [],
): EntryFields[] => lines.flatMap((line) => lineFacts(line, find(shelf, line), find(before, line)));

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
