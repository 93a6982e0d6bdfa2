/** One clause laid open for the frames: its verbs, nouns, figures and mood, found once. */
import { isPart, type Material, type StockItem } from '../maintenance/codes.ts';
import type { Act } from './act.ts';
import type { Clause } from './clauses.ts';
import { byInstrument, isDeed } from './deeds.ts';
import { fnsOf, hasTag, isFn, type Item, sense, type SenseOf, sensesOf } from './item.ts';
import type { Mood } from './mood.ts';
import { withParticle } from './particles.ts';
import type { Fn, Thing, Unit, VerbClass, VerbForm } from './senses.ts';

export interface VerbAt {
  readonly code: VerbClass;
  readonly form: VerbForm;
  readonly at: number;
  /** Told as carried out. */
  readonly deed: boolean;
}
export interface NounAt {
  readonly code: StockItem | Thing;
  readonly part?: StockItem | undefined;
  readonly weak: boolean;
  readonly at: number;
}
export interface Scene {
  readonly index: number;
  /** A machine, or a thing of the room, stands in this clause or before it. */
  readonly named: boolean;
  readonly clause: Clause;
  readonly items: readonly Item[];
  readonly mood: Mood;
  /** The small words that stand in it. */
  readonly fns: ReadonlySet<Fn>;
  /** A machine, or a name where one would stand. */
  readonly machine: boolean;
  readonly verbs: readonly VerbAt[];
  readonly nouns: readonly NounAt[];
  readonly materials: readonly Material[];
  readonly values: readonly { code: Unit | 'bare'; value: number; at: number }[];
  readonly span: readonly [number, number];
  /** The words as they were looked up. */
  readonly text: string;
  /** A line of a list of spares, and what the list tells; `head`: it only says that one follows. */
  readonly listing?: 'head' | 'in' | 'out' | 'count' | undefined;
}

/** What a frame makes of a clause, before machine and day are put to it. */
export interface Draft {
  readonly act: Act;
  readonly rule: string;
  readonly clause: number;
  readonly span: readonly [number, number];
  /** The act belongs to no machine (stock, undo), or to the room. */
  readonly placeless?: true;
  /** The complaint that a symptom was made of; a swap nearby may take it as its reason. */
  readonly complaint?: string;
  /** The noun that a symptom or a deed was said of. */
  readonly noun?: string;
  readonly weak?: true;
  /** Machines that this draft alone is on, where the clause has several. */
  readonly on?: readonly string[];
  readonly doubt?: {
    field: 'machine' | 'task' | 'part' | 'value' | 'date' | 'name';
    said: string;
    options: readonly string[];
  };
}

/** What a task may be done to: an instrument or a source is not it. */
const ROLE_BEFORE = new Set(['with', 'from', 'off', 'out', 'by', 'than', 'through']);

/* Scenes, their nouns and their verbs have one shape each, for the same reason as items. */
export const nounAt = (
  code: NounAt['code'],
  part: StockItem | undefined,
  weak: boolean,
  at: number,
): NounAt => ({
  code,
  part,
  weak,
  at,
});
/** Said elsewhere, and meant here too. */
export const lentNoun = ({ code, part, weak }: NounAt): NounAt => nounAt(code, part, weak, -1);
export const lentVerb = ({ code, form, deed }: VerbAt, at = -1): VerbAt => ({ code, form, at, deed });
/** The part that a noun turns out to be. */
export const knownAs = (noun: NounAt, part: StockItem): NounAt => nounAt(part, part, false, noun.at);

/** The scene, but for what it is seen to mean beside its neighbours. */
export function sceneWith(
  scene: Scene,
  { mood, verbs, nouns, listing }: Partial<Pick<Scene, 'mood' | 'verbs' | 'nouns' | 'listing'>>,
): Scene {
  return {
    index: scene.index, named: scene.named, clause: scene.clause, items: scene.items,
    mood: mood ?? scene.mood, values: scene.values, fns: scene.fns, machine: scene.machine,
    verbs: verbs ?? scene.verbs, nouns: nouns ?? scene.nouns, materials: scene.materials,
    span: scene.span, text: scene.text, listing: listing ?? scene.listing,
  }; // prettier-ignore
}

/** `named`: a machine stands in this clause or before it. */
export function makeScene(clause: Clause, mood: Mood, index: number, named: boolean): Scene {
  const { items } = clause;
  const values = items.flatMap((item, at) => {
    const value = sense(item, 'value');
    return value ? [{ code: value.code, value: value.value, at }] : [];
  });
  return {
    index, named, clause, items, mood, values,
    fns: fnsOf(items),
    machine: items.some((item) => hasTag(item, 'machine', 'stranger')),
    verbs: items.flatMap((item, at) => verbsOf(item, at, items, mood, named)),
    nouns: boreNoun(items, ofWhole(items, headsOnly(items, items.flatMap((item, at) => unlessPaper(nounOf(item, at), items[at + 1]))))),
    materials: sensesOf(items, 'material').map((s) => s.code),
    span: spanOf(items),
    text: items.map((item) => item.text).join(' '),
    listing: undefined,
  }; // prettier-ignore
}

const STUFFS: ReadonlySet<string> = new Set(['oil', 'grease', 'alcohol']);
function verbsOf(item: Item, at: number, items: readonly Item[], mood: Mood, named: boolean): VerbAt[] {
  const own = item.senses.filter((s): s is SenseOf<'verb'> => s.tag === 'verb');
  const split = withParticle(items, at);
  const off = split.some((one) => one.code === 'plug');
  let meant: { code: VerbClass; form: VerbForm }[] = [
    ...(off ? own.filter((s) => s.code !== 'swap' && s.code !== 'adjust') : own),
    ...(own.some((s) => s.form !== 'base') ? [] : byInstrument(item)),
    ...split.filter((one) => own.every((s) => s.code !== one.code)),
  ];
  if (meant.length === 0) return [];
  // "put fresh oil on": nothing is fitted
  const next = sense(items[at + 1], 'part')?.code;
  if (next !== undefined && STUFFS.has(next) && own.some((s) => s.code === 'install'))
    meant = [{ code: 'put', form: 'past' }];
  if (
    gotStuck(item, items[at - 1], items[at + 1]) ||
    isAwaited(at, items) ||
    isTheirs(at, items) ||
    isEmphatic(item, items[at + 1])
  )
    return [];
  return meant.map(({ code, form }) => ({
    code,
    form,
    at,
    deed: isDeed(code, form, at, items, mood, named),
  }));
}

/** "off until somebody has looked at it": what is waited for has not been done. */
const isAwaited = (at: number, items: readonly Item[]): boolean =>
  items
    .slice(Math.max(0, at - 6), at)
    .some((one, i, row) => isFn(one, 'until') && i < row.length - 1 && one.text !== 'up to');

/** "did trim half an inch off it": the deed is the verb behind. */
const isEmphatic = (item: Item, next: Item | undefined): boolean =>
  item.text === 'did' &&
  next !== undefined &&
  next.senses.some((s) => s.tag === 'verb' && s.form === 'base') &&
  !hasTag(next, 'part', 'thing', 'fn', 'machine') &&
  next.gap;

/** "whatever they put in it": told of as unknown, not as done. */
const isTheirs = (at: number, items: readonly Item[]): boolean =>
  isFn(items[at - 1], 'they', 'someone', 'you', 'person') && isFn(items[at - 2], 'what', 'who');

/** "got stuck in the tube" is a trouble; "stuck a new one in" a deed. */
const gotStuck = (item: Item, before: Item | undefined, next: Item | undefined): boolean =>
  item.text.startsWith('stuck') &&
  !isFn(next, 'another', 'new') &&
  (isFn(before, 'be', 'have') || before?.text === 'got');

/** "stepper coupler", "bed heater plug": of nouns side by side the last is the thing meant. */
function headsOnly(items: readonly Item[], nouns: readonly NounAt[]): NounAt[] {
  return nouns.filter((noun, i) => {
    const next = nouns[i + 1];
    return !(
      next &&
      next.at === noun.at + 1 &&
      (items[next.at]?.from ?? 0) - (items[noun.at]?.to ?? 0) <= 1 &&
      noun.part !== undefined &&
      next.part !== undefined &&
      !items[noun.at]?.text.endsWith('s') &&
      // "rail lube" put off to Friday: the greasing of the rails
      !/^(?:lube|oil|grease)$/u.test(items[next.at]?.text ?? '')
    );
  });
}

/** What a part is called together with the whole that it is of. */
const OF_WHOLE: Readonly<Partial<Record<string, Readonly<Partial<Record<string, StockItem>>>>>> = {
  nut: { 'lead-screw': 'screw-nut', 'z-axis': 'screw-nut', 'ball-screw': 'screw-nut' },
  fan: { 'hot-end': 'hot-end-fan', nozzle: 'hot-end-fan', 'heat-break': 'hot-end-fan', 'control-board': 'board-fan', 'power-supply': 'board-fan', wiring: 'board-fan', print: 'part-fan', 'printed-part': 'part-fan' },
  ventilator: { 'hot-end': 'hot-end-fan', nozzle: 'hot-end-fan', 'control-board': 'board-fan', 'power-supply': 'board-fan', print: 'part-fan' },
  sensor: { 'hot-end': 'thermistor', nozzle: 'thermistor', temperature: 'thermistor', filament: 'filament-sensor' },
  heater: { bed: 'bed-heater', 'build-plate': 'bed-heater' },
  tube: { 'hot-end': 'liner' },
  tip: { probe: 'probe' },
}; // prettier-ignore
/** "the nut of the Z screw", "the connector of the bed": the whole only says which part it is. */
function ofWhole(items: readonly Item[], nouns: NounAt[]): NounAt[] {
  if (nouns.length < 2) return nouns;
  const owners = new Set<NounAt>();
  const out = nouns.map((noun, i): NounAt => {
    const whole = nouns[i + 1];
    if (!whole || !joinedByOf(items, noun.at, whole.at)) return noun;
    const word = (items[noun.at]?.text ?? '').replace(/s$/u, '');
    const named = OF_WHOLE[word]?.[whole.code];
    if (named === undefined && (noun.part === undefined || !isPart(noun.part))) return noun;
    owners.add(whole);
    return named === undefined ? noun : knownAs(noun, named);
  });
  return out.filter((_, i) => nouns[i] !== undefined && !owners.has(nouns[i]));
}
function joinedByOf(items: readonly Item[], at: number, whole: number): boolean {
  if (whole - at < 2 || whole - at > 4 || items[at + 1]?.text !== 'of') return false;
  // Small gaps only: a joint that was cut away left a wider one.
  return items
    .slice(at + 2, whole + 1)
    .every(
      (item, i) =>
        item.from - (items[at + 1 + i]?.to ?? 0) <= 1 &&
        (at + 2 + i === whole || isFn(item, 'article', 'its', 'possessive') || hasTag(item, 'machine')),
    );
}

/** "fitted a hardened 0.6", "put the 0.4 back in": a bore and no part named is a nozzle. */
function boreNoun(items: readonly Item[], nouns: NounAt[]): NounAt[] {
  if (nouns.some((noun) => noun.part !== undefined)) return nouns;
  const fits = items.some(
    (item) =>
      item.senses.some(
        (s) =>
          s.tag === 'verb' &&
          ['fit', 'swap', 'install', 'put', 'look', 'load', 'arrive', 'buy', 'count', 'bin'].includes(s.code),
      ) || isFn(item, 'new'),
  );
  const stands = items.some((item, i) => HARD.test(item.text) && BORE.test(items[i + 1]?.text ?? '') && isFn(items[i + 2], 'be')); // prettier-ignore
  // "any 0.4 left"
  const any = items.some((item, i) => isFn(item, 'any') && BORE.test(items[i + 1]?.text ?? '') && isFn(items[i + 2], 'left')); // prettier-ignore
  if (!fits && !stands && !any && !isExchange(items)) return nouns;
  const hard = items.findIndex(
    (item, i) => HARD.test(item.text) && /^ones?$/u.test(items[i + 1]?.text ?? ''),
  );
  if (hard >= 0) return [...nouns, { code: 'nozzle', part: 'nozzle', weak: false, at: hard }];
  const at = items.findIndex(
    (item, i) =>
      BORE.test(item.text) &&
      (!hasTag(items[i + 1], 'unit', 'thing') || /^(?:in|left)$/u.test(items[i + 1]?.text ?? '')),
  );
  return at >= 0 ? [...nouns, nounAt('nozzle', 'nozzle', false, at)] : nouns;
}

/** Only nozzles are sold so. */
const HARD = /^(?:hardened|hardened steel|ruby|brass|plated brass|tungsten)$/u;
const BORE = /^(?:0[.,]\d{1,2}|1[.,][0-8])(?: mm)?$/u;
/** "cedar: 0.4 -> 0.6 hardened". */
const isExchange = (items: readonly Item[]): boolean =>
  items.some(
    (item, i) => BORE.test(item.text) && isFn(items[i + 1], 'to') && BORE.test(items[i + 2]?.text ?? ''),
  ) && items.some((item) => hasTag(item, 'machine'));

/** "the nozzle price", "the belt drawing": what is written or asked for a part is not the part. */
const isOfPaper = (next: Item | undefined): boolean =>
  /^(?:prices?|costs?|catalogues?|catalogs?|data ?sheets?|invoices?|quotes?|drawings?|photos?|pictures?|manuals?|budget)$/u.test(next?.text ?? ''); // prettier-ignore

const unlessPaper = (nouns: NounAt[], next: Item | undefined): NounAt[] =>
  nouns.length > 0 && isOfPaper(next) ? [] : nouns;

function nounOf(item: Item, at: number): NounAt[] {
  const part = sense(item, 'part');
  const thing = sense(item, 'thing');
  if (!part && (hasTag(item, 'machine') || (hasTag(item, 'symptom') && thing?.code !== 'dust'))) return [];
  const out: NounAt[] = [];
  if (part) out.push(nounAt(part.code, part.code, part.weak ?? false, at));
  else if (thing) out.push(nounAt(thing.code, undefined, true, at));
  return out;
}

/** Nouns that stand as what something is done to, in order; "with the brush" and "from the shelf" are not. */
export function objects(scene: Scene): readonly NounAt[] {
  return scene.nouns.filter(({ at }) => {
    let i = at - 1;
    while (
      i >= 0 &&
      (isFn(scene.items[i], 'article', 'my', 'its', 'old', 'new', 'possessive', 'this') ||
        hasTag(scene.items[i], 'machine', 'spec', 'number'))
    )
      i -= 1;
    return !scene.items[i]?.senses.some(
      (s) => s.tag === 'fn' && ROLE_BEFORE.has(s.code) && !s.code.startsWith('by'),
    );
  });
}

export const valueOf = (scene: Scene, ...codes: readonly (Unit | 'bare')[]): number | undefined =>
  scene.values.find((v) => codes.includes(v.code))?.value;
export function someFn(scene: Scene, ...codes: readonly Fn[]): boolean {
  for (const code of codes) if (scene.fns.has(code)) return true;
  return false;
}
export const hasVerb = (scene: Scene, ...codes: readonly VerbClass[]): boolean =>
  scene.verbs.some((v) => codes.includes(v.code));
export const deedOf = (scene: Scene, ...codes: readonly VerbClass[]): VerbAt | undefined =>
  scene.verbs.find((v) => v.deed && codes.includes(v.code));
export const hasMachine = (scene: Scene): boolean => scene.machine;
export const textOf = (scene: Scene): string => scene.text;
/** Neither asked, denied, wished nor told by another: what was said to be so. */
export const asserted = ({ mood }: Scene): boolean =>
  !mood.question &&
  !mood.negated &&
  !mood.planned &&
  !mood.wished &&
  !mood.conditional &&
  !mood.requested &&
  !mood.reported;
export const draft = (scene: Scene, act: Act, rule: string, more: Partial<Draft> = {}): Draft => ({
  act,
  rule,
  clause: scene.index,
  span: scene.span,
  ...more,
});

/** What was put right may stand elsewhere than where it is read. */
function spanOf(items: readonly Item[]): readonly [number, number] {
  let [from, to] = [items[0]?.from ?? 0, items[0]?.to ?? 0];
  for (const item of items) {
    from = Math.min(from, item.from);
    to = Math.max(to, item.to);
  }
  return [from, to];
}
