/**
 * What the message is made of once words have been looked up: a row of items, each with every sense
 * that its words may have. Nothing is decided here; the frames choose a sense by its neighbours.
 */
import type { Finding, Material, Reason, StockItem, Symptom } from '../maintenance/codes.ts';
import type { LocalDate } from './act.ts';
import type {
  AskCue,
  Complaint,
  Fn,
  Joint,
  OrderCue,
  State,
  Thing,
  Unit,
  VerbClass,
  VerbForm,
} from './senses.ts';

/** A row of days, both ends inclusive, as one who looks back and one who looks ahead would count it. */
export interface Stretch {
  readonly back: readonly [from: LocalDate, to: LocalDate];
  readonly ahead: readonly [from: LocalDate, to: LocalDate];
}

export type Sense =
  | { tag: 'part'; code: StockItem; weak?: true }
  | { tag: 'thing'; code: Thing }
  | { tag: 'verb'; code: VerbClass; form: VerbForm }
  | { tag: 'complaint'; code: Complaint }
  | { tag: 'symptom'; code: Symptom }
  | { tag: 'material'; code: Material }
  | { tag: 'machine'; code: string }
  | { tag: 'person'; code: string }
  | { tag: 'finding'; code: Finding }
  | { tag: 'state'; code: State }
  | { tag: 'reason'; code: Reason }
  | { tag: 'unit'; code: Unit }
  | { tag: 'number'; value: number }
  | { tag: 'fn'; code: Fn }
  | { tag: 'cue'; code: AskCue }
  /** Only on the items that orders are read from; \`until\`: where its words end in the message as sent. */
  | { tag: 'order'; code: OrderCue; until: number }
  | { tag: 'spec' }
  | { tag: 'foreign' }
  | { tag: 'human' }
  | { tag: 'value'; code: Unit | 'bare'; value: number; each?: true }
  /** A day said; which of the two is meant hangs on the tense. `stretch`: days from and to, of "this week"; `counted`: from a day said before. */
  | {
      tag: 'date';
      past: LocalDate;
      future: LocalDate;
      to?: LocalDate;
      vague?: true;
      stretch?: Stretch;
      counted?: true;
    }
  | { tag: 'joint'; code: Joint }
  | { tag: 'calendar'; code: 'day' | 'weekday' | 'shy-weekday' | 'month' | 'vague'; n: number }
  /** A name that stands where a machine's would, and belongs to none here. */
  | { tag: 'stranger' }
  /** Names that disagree, or a choice between several: which is meant cannot be told. */
  | { tag: 'choice'; options: readonly string[] }
  | { tag: 'timber' }
  | { tag: 'woodwork' }
  | { tag: 'before-person' }
  | { tag: 'before-stuff' };

export type Tag = Sense['tag'];
export type SenseOf<T extends Tag> = Extract<Sense, { tag: T }>;

export interface Item {
  /** The words as folded for look-up, joined by single spaces. */
  readonly text: string;
  /** UTF-16 offsets into the message as it was sent. */
  readonly from: number;
  readonly to: number;
  readonly senses: readonly Sense[];
  /** White space stood before it. */
  readonly gap: boolean;
  /** The word as written, when spelling was put right. */
  readonly said?: string | undefined;
}

/*
 * Every rule of the language looks at senses and items, some thousand times a message. An object that always has the
 * same fields in the same order is read many times faster than one of a dozen shapes, so both are made here alone:
 * a spread would give them a shape of its own at each place where it stands.
 */
type FieldOf<T> = T extends unknown ? keyof T : never;
/** The sense in the one shape; a field that is missing here does not compile. */
export function asSense<S extends Sense>(meaning: S): S {
  const s: { readonly [F in FieldOf<Sense>]?: unknown } = meaning;
  const made: { readonly [F in FieldOf<Sense>]: unknown } = {
    tag: s.tag, code: s.code, form: s.form, value: s.value, n: s.n, weak: s.weak, until: s.until, options: s.options,
    past: s.past, future: s.future, to: s.to, vague: s.vague, stretch: s.stretch, each: s.each, counted: s.counted,
  }; // prettier-ignore
  return made as S;
}
export const makeItem = (
  text: string,
  from: number,
  to: number,
  senses: readonly Sense[],
  gap: boolean,
  said?: string,
): Item => ({ text, from, to, senses, gap, said });
/** The item, with other senses. */
export const withSenses = (item: Item, ...senses: readonly Sense[]): Item =>
  makeItem(item.text, item.from, item.to, senses, item.gap, item.said);
/** The item as other words. */
export const reworded = (item: Item, text: string, senses: readonly Sense[] = item.senses): Item =>
  makeItem(text, item.from, item.to, senses, item.gap, item.said);
/** The items from one up to, not including, another as one. */
export function joinedItem(
  items: readonly Item[],
  from: number,
  to: number,
  senses: readonly Sense[],
  said?: string,
): Item {
  const first = items[from];
  const end = Math.min(to, items.length);
  let text = first?.text ?? '';
  for (let i = from + 1; i < end; i += 1) text += ` ${items[i]?.text ?? ''}`;
  return makeItem(text, first?.from ?? 0, items[end - 1]?.to ?? 0, senses, first?.gap ?? true, said);
}

/** The first sense with that tag. */
export function sense<T extends Tag>(item: Item | undefined, tag: T): SenseOf<T> | undefined {
  if (!item) return undefined;
  for (const s of item.senses) if (s.tag === tag) return s as SenseOf<T>;
  return undefined;
}

/** Every sense with that tag, over all items, in order. */
export function sensesOf<T extends Tag>(items: readonly Item[], tag: T): SenseOf<T>[] {
  const found: SenseOf<T>[] = [];
  for (const item of items) for (const s of item.senses) if (s.tag === tag) found.push(s as SenseOf<T>);
  return found;
}

// Asked some thousand times a message: plain loops, for a closure each time is what a reading would then cost.
export function isFn(item: Item | undefined, ...codes: readonly Fn[]): boolean {
  if (!item) return false;
  for (const s of item.senses) if (s.tag === 'fn') for (const code of codes) if (s.code === code) return true;
  return false;
}
export function isVerb(item: Item | undefined, ...codes: readonly VerbClass[]): boolean {
  if (!item) return false;
  for (const s of item.senses)
    if (s.tag === 'verb') for (const code of codes) if (s.code === code) return true;
  return false;
}
export function isThing(item: Item | undefined, ...codes: readonly Thing[]): boolean {
  if (!item) return false;
  for (const s of item.senses)
    if (s.tag === 'thing') for (const code of codes) if (s.code === code) return true;
  return false;
}
export function hasTag(item: Item | undefined, ...tags: readonly Tag[]): boolean {
  if (!item) return false;
  for (const s of item.senses) for (const tag of tags) if (s.tag === tag) return true;
  return false;
}

/** Every small word of a row of items, found once. */
export function fnsOf(items: readonly Item[]): ReadonlySet<Fn> {
  const found = new Set<Fn>();
  for (const item of items) for (const s of item.senses) if (s.tag === 'fn') found.add(s.code);
  return found;
}
/** A form that can be nothing but past: "arrived", not "fit" or "set". */
export const pastOnly = (item: Item): boolean =>
  item.senses.some((s) => s.tag === 'verb' && s.form === 'past') &&
  !item.senses.some((s) => s.tag === 'verb' && s.form === 'base');
