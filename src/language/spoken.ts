/**
 * Stage 3b. What dictation leaves in a message: sounds of thinking between the words, and numbers spelled out over
 * several words ("two thousand two hundred and twenty", "six point five", "two and a quarter").
 */
import { asSense, hasTag, type Item, joinedItem, makeItem, sense } from './item.ts';
import { figure } from './values.ts';

const SOUND = /^(?:um+|uh+|uhm+|erm+|hmm+|mhm|like)$/u;
/** "birch uh maple", "5 um 6": between two of a kind the sound corrects, and stays. */
const isField = (item: Item | undefined): boolean =>
  hasTag(item, 'machine', 'material', 'number', 'calendar') || figure(item) !== undefined;
const isMark = (item: Item | undefined): boolean => item === undefined || !/^[\p{L}\d]/u.test(item.text);

/** "like" only fills before a figure or after another sound: "for like four hours". */
function fills(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (!item || !SOUND.test(item.text)) return false;
  const [before, next] = [items[at - 1], items[at + 1]];
  if (item.text === 'like')
    return (
      (figure(next) !== undefined && !isMark(before) && before?.text !== 'more') ||
      SOUND.test(before?.text ?? '')
    );
  return !(isField(before) && isField(next)) && !(isMark(before) && at > 0 && isField(next));
}

/** Without the sounds. What follows one at the very start opens the message. */
export function withoutSounds(items: readonly Item[]): readonly Item[] {
  return items.some((item) => SOUND.test(item.text)) ? items.filter((_, at) => !fills(items, at)) : items;
}

const MENTION = '\uFFF9';
const CALLED = asSense({ tag: 'fn', code: 'mention' });
/** "@bot", "@Priya" typed by hand: whom the message calls; a person or a machine keeps its own reading. */
export function withMentions(items: readonly Item[]): readonly Item[] {
  if (!items.some((item) => item.text === '@')) return items;
  const out: Item[] = [];
  for (let at = 0; at < items.length; at += 1) {
    const [item, next] = [items[at], items[at + 1]];
    if (!item) break;
    const called = item.text === '@' && next !== undefined && !next.gap && /^\p{L}/u.test(next.text);
    if (!called) out.push(item);
    else if (!hasTag(next, 'person', 'machine')) {
      out.push(makeItem(MENTION, item.from, next.to, [CALLED], item.gap, item.said));
      at += 1;
    }
  }
  return out;
}

interface Sum {
  readonly value: number;
  readonly end: number;
}

const isWord = (item: Item | undefined, ...words: readonly string[]): boolean =>
  item !== undefined && words.includes(item.text);
const spelled = (item: Item | undefined): number | undefined => sense(item, 'number')?.value;

/** Hundreds and thousands: "two thousand two hundred and twenty", "7 hundred". */
function whole(items: readonly Item[], at: number): Sum | undefined {
  let [total, part] = [0, 0];
  let i = at;
  for (; i < items.length; i += 1) {
    const item = items[i];
    const joined = isWord(item, 'and') && (part > 0 ? part % 100 === 0 : total > 0) && i > at;
    const value = joined ? undefined : i === at ? figure(item) : spelled(item);
    if (joined && (spelled(items[i + 1]) ?? 100) < 100) continue;
    if (value === undefined || !Number.isInteger(value)) break;
    if (isWord(item, 'thousand') && part > 0 && total === 0) [total, part] = [part * 1000, 0];
    else if (isWord(item, 'hundred') && part > 0 && part < 100) part *= 100;
    else if (part === 0 && (i === at || total > 0) && value < 1000) part = value;
    else if (part >= 100 && part % 100 === 0 && value < 100 && value > 0) part += value;
    else break;
  }
  return i === at ? undefined : { value: total + part, end: i };
}

const DIGIT = 10;
/** "six point five", "two point two five". */
function withPoint(items: readonly Item[], head: Sum): Sum {
  if (!isWord(items[head.end], 'point')) return head;
  let digits = '';
  let end = head.end + 1;
  for (; end < items.length && digits.length < 3; end += 1) {
    const value = spelled(items[end]) ?? (isWord(items[end], 'oh') ? 0 : undefined);
    if (value === undefined || (value >= DIGIT && digits !== '') || !Number.isInteger(value)) break;
    digits += String(value);
  }
  return digits === '' ? head : { value: Number(`${head.value}.${digits}`), end };
}

const PARTS: readonly (readonly [words: string, value: number])[] = [
  ['and a half', 0.5],
  ['an a half', 0.5],
  ['n a half', 0.5],
  ['and a quarter', 0.25],
  ['and three quarters', 0.75],
];
/** "two and a quarter", "4 and three quarters". */
function withPart(items: readonly Item[], head: Sum): Sum {
  if (!isWord(items[head.end], 'and', 'an', 'n')) return head;
  let text = '';
  for (let i = head.end; i < Math.min(items.length, head.end + 3); i += 1) {
    text += `${i === head.end ? '' : ' '}${items[i]?.text ?? ''}`;
    const part = PARTS.find(([words]) => words === text);
    if (part) return { value: head.value + part[1], end: i + 1 };
  }
  return head;
}

/** Numbers of several words become one item. */
export function joinNumbers(items: readonly Item[]): readonly Item[] {
  if (
    !items.some(
      (item) =>
        hasTag(item, 'number') ||
        item.text === 'and' ||
        item.text === 'an' ||
        item.text === 'n' ||
        item.text === 'point' ||
        item.text === 'oh',
    )
  )
    return items;
  const out: Item[] = [];
  for (let at = 0; at < items.length;) {
    const item = items[at];
    if (!item) break;
    // "oh point four"
    const nought =
      isWord(item, 'oh', 'nought', 'naught') && isWord(items[at + 1], 'point')
        ? { value: 0, end: at + 1 }
        : undefined;
    const head = hasTag(item, 'machine') ? undefined : (nought ?? whole(items, at));
    const sum = head === undefined ? undefined : withPart(items, withPoint(items, head));
    if (sum === undefined || sum.end === at + 1) out.push(item);
    else out.push(joinedItem(items, at, sum.end, [asSense({ tag: 'number', value: sum.value })], item.said));
    at = Math.max(sum?.end ?? 0, at + 1);
  }
  return out;
}
