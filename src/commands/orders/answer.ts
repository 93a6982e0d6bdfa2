/** The answer to a question about an order goes into the order, which is carried on. */
import type { Reading } from '../../language/act.ts';
import { foldName } from '../../maintenance/machine.ts';
import { readNozzle } from '../../maintenance/record/nozzle.ts';
import { CONFIRM } from '../answering.ts';
import type { OpenQuestion } from '../conversation.ts';
import { playDeeds } from '../play.ts';
import type { Scene } from '../scene.ts';
import type { Played } from '../step.ts';
import { onAxes } from './build.ts';
import { playOrders } from './index.ts';
import type { PendingOrder } from './order.ts';

type OrderQuestion = OpenQuestion & { order: PendingOrder };
export const isOrderQuestion = (question: OpenQuestion | undefined): question is OrderQuestion =>
  question?.order !== undefined;

/** A name or a nozzle in the speaker's own words: a few of them, and no report. */
const LONGEST_NAME = 3;

/** The value that the message gives; undefined when it says something else. */
export function orderAnswer(text: string, reading: Reading, question: OrderQuestion): string | undefined {
  const { field, order } = question;
  if (order.kind === 'whichAll') return scopeIn(reading);
  if (order.kind === 'retire') return foldName(text).startsWith('retire') ? CONFIRM : undefined;
  const words = text.trim().replace(/[.!]+$/u, '');
  const brief = words !== '' && words.split(/\s+/u).length <= LONGEST_NAME && !words.endsWith('?');
  const reports = reading.acts.some(({ act }) => act.kind !== 'unclear' && act.kind !== 'usage');
  if (field === 'name') {
    const given = /^(?:call it|it's|its name is|it is called|called)\s+(.+)$/iu.exec(words)?.[1] ?? words;
    return (brief || given !== words) && !reports ? given : undefined;
  }
  if (field === 'fitted') return brief && !reports ? words : undefined;
  if (field === 'other' && order.kind === 'add')
    return ['new', 'used'].find((one) => new RegExp(`\\b${one}\\b`, 'u').test(foldName(text)));
  return undefined;
}

const scopeIn = ({ bare, acts }: Reading): string | undefined => {
  if (acts.some(({ act }) => act.kind !== 'unclear')) return undefined;
  if (bare?.choice === 'all') return 'all';
  return bare?.choice === 'these' || bare?.choice === 'both' ? 'these' : undefined;
};

export async function playOrderAnswer(scene: Scene, question: OrderQuestion, value: string): Promise<Played> {
  const { order, field, pending } = question;
  if (order.kind === 'whichAll') {
    const named = new Set(order.named);
    const meant = pending.filter(
      (deed) => value === 'all' || ('machine' in deed && named.has(deed.machine ?? '')),
    );
    return playDeeds(scene, meant, {});
  }
  return playOrders(scene, [alsoSaid(scene, withAnswer(order, field, value))]);
}

function withAnswer(order: PendingOrder, field: OpenQuestion['field'], value: string): PendingOrder {
  if (value === CONFIRM) return { ...order, confirmed: true };
  if (order.kind === 'add') return withAdded(order, field, value);
  if (order.kind === 'convert' && order.guide !== undefined && field === 'other') {
    const { guide, ...rest } = order;
    return { ...rest, build: onAxes(value, guide) };
  }
  if (order.kind === 'rename')
    return field === 'name' ? { ...order, name: value } : { ...order, machine: value };
  return field === 'machine' && 'machines' in order ? { ...order, machines: [value] } : order;
}

type Add = Extract<PendingOrder, { kind: 'add' }>;

const HOURS = /(\d[\d.,]*)\s*(?:h|hrs?|hours?)\b/iu;
/** "used, 800 h, brass 0.4": what was not asked yet is taken with the answer. */
function alsoSaid({ message }: Scene, order: PendingOrder): PendingOrder {
  if (order.kind !== 'add' || message.press || message.text.endsWith('?')) return order;
  const told = HOURS.exec(message.text);
  const hours =
    told?.[1] === undefined ? undefined : Number(told[1].replace(/,(?=\d{3}\b)/u, '').replace(',', '.'));
  const words = message.text
    .replace(HOURS, ' ')
    .replace(/\b(?:used|new)\b/giu, ' ')
    .replace(/[,;.](?!\d)/gu, ' ')
    .trim();
  const nozzle = Object.keys(readNozzle(words)).length > 0 ? words : undefined;
  return {
    ...order,
    ...(order.hours === undefined && hours !== undefined && Number.isFinite(hours) ? { hours } : {}),
    ...(order.nozzle === undefined && nozzle !== undefined ? { nozzle } : {}),
  };
}

/** A counter that nobody knows is below any reading. */
const NO_COUNTER = -1;

function withAdded(order: Add, field: OpenQuestion['field'], value: string): Add {
  switch (field) {
    case 'name':
      return { ...order, name: value };
    case 'machine':
      return { ...order, like: value };
    case 'hours':
      return { ...order, condition: 'used', hours: value === 'unknown' ? NO_COUNTER : Number(value) };
    case 'fitted':
      return { ...order, nozzle: value };
    default:
      return { ...order, condition: value === 'new' ? 'new' : 'used' };
  }
}
