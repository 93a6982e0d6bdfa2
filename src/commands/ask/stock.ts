/** "Any nozzles left?": the shelf as the records have it. */
import type { StockItem } from '../../maintenance/codes.ts';
import type { ShelfItem } from '../../maintenance/record/record.ts';
import { count, figure } from '../../replies/format/number.ts';
import { capital } from '../../replies/format/list.ts';
import { partName } from '../../replies/wording/names.ts';
import { bold, item, type Reply } from '../../replies/reply.ts';
import type { Topic } from './topic.ts';

/** "Belt" on the shelf is either axis's. */
const asked = (part: StockItem, shelf: StockItem): boolean =>
  part === shelf || (part === 'belt' && (shelf === 'x-belt' || shelf === 'y-belt'));

const line = ({ part, fitted, count: n, deliveryDays }: ShelfItem): string => {
  const delivery = deliveryDays === undefined ? '' : `, ${count(deliveryDays, 'day')}’ delivery`;
  const order = n === 0 ? ': none left, order' : n === 1 ? ' (the last one)' : '';
  return `${figure(n)} ${partName(part, n)}${fitted ? ` ${fitted}` : ''}${order}${n <= 1 ? delivery : ''}`;
};

export const stock: Topic = ({ act, record }): Reply => {
  const items = record.shelf.filter((s) => act.part === undefined || asked(act.part, s.part));
  if (items.length === 0) {
    const what = act.part === undefined ? 'The shelf' : capital(partName(act.part, 2));
    return {
      sections: [
        { items: [item(`${what}: nothing on record. Tell me a count, such as “4 nozzles on the shelf”.`)] },
      ],
      buttons: [],
    };
  }
  return {
    title: [bold('On the shelf'), ', by the records:'],
    sections: [{ items: items.map((s) => item(line(s))) }],
    buttons: [],
  };
};
