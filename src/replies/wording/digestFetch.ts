/** What to fetch before the round, in one line: what can be missing first, then as many tools as are read. */
import type { Digest } from '../../maintenance/due/digest.ts';
import type { FetchItem, Shortage } from '../../maintenance/due/fetch.ts';
import { shortened } from '../format/list.ts';
import { count, figure } from '../format/number.ts';
import { bold, item, type Item } from '../reply.ts';
import { partName } from './names.ts';

const MOST_TOOLS = 6;

/** " (the last one: order, 5 days’ delivery)". */
function have(thing: FetchItem, shelf: readonly Shortage[]): string {
  if (thing.kind === 'tool') return '';
  const fitted = thing.kind === 'part' ? thing.fitted : undefined;
  const lack = shelf.find((of) => of.item === thing.item && of.fitted === fitted);
  if (!lack) return '';
  const delivery = lack.deliveryDays === undefined ? '' : `, ${count(lack.deliveryDays, 'day')}’ delivery`;
  const left =
    lack.short === 'last'
      ? lack.need === 1
        ? 'the last one'
        : 'the last'
      : lack.have === 0
        ? 'none on the shelf'
        : `only ${lack.have} on the shelf`;
  return ` (${left}: order${delivery})`;
}

function fetchWord(thing: FetchItem, shelf: readonly Shortage[]): string {
  if (thing.kind === 'tool') return thing.tool;
  if (thing.kind === 'consumable') return `${partName(thing.item)}${have(thing, shelf)}`;
  const kind = thing.fitted === undefined ? '' : ` ${thing.fitted}`;
  return `${figure(thing.need)} ${partName(thing.item, thing.need)}${kind}${have(thing, shelf)}`;
}

/** What guards the hands comes first of the tools; what is cut is in the steps of each task. */
export function fetch({ fetch: things, shelf }: Digest): Item[] {
  if (things.length === 0) return [];
  const tools = shortened(
    things.filter(({ kind }) => kind === 'tool'),
    MOST_TOOLS,
  );
  const shown = [...things.filter(({ kind }) => kind !== 'tool'), ...tools.shown];
  const words = shown.map((thing) => fetchWord(thing, shelf));
  const more = tools.more > 0 ? ` and ${count(tools.more, 'more tool')} (“how do I …” names them)` : '';
  return [item(bold('Fetch: '), `${words.join(', ')}${more}.`)];
}
