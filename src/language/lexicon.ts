/** Stage 3. The word tables of every field as one trie, and the overlays that read across it. */
import { COMPLAINT_WORDS, FINDING_WORDS, REASON_WORDS, STATE_WORDS } from './english/words/complaints.ts';
import { CUE_WORDS } from './english/words/cues.ts';
import { MATERIAL_WORDS, SPEC_WORDS } from './english/words/materials.ts';
import {
  BEFORE_PERSON,
  BEFORE_STUFF,
  FOREIGN_VERBS,
  FOREIGN_WORDS,
  HARMLESS_WORDS,
  HUMAN_WORDS,
  TIMBER_WORDS,
  WOODWORK_WORDS,
} from './english/words/ordinary.ts';
import { ORDER_WORDS } from './english/words/order-cues.ts';
import { PART_WORDS } from './english/words/parts.ts';
import {
  MONTH_WORDS, NUMBER_WORDS, RELATIVE_DAYS, SHY_WEEKDAYS, UNIT_WORDS, VAGUE_TIMES, WEEKDAY_WORDS,
} from './english/words/quantities.ts'; // prettier-ignore
import { FN_WORDS, JOINT_WORDS } from './english/words/small-words.ts';
import {
  BARE_PARTICIPLES,
  bareParticiples,
  LACKED,
  lacks,
  REFUSED_COMPLAINTS,
  REFUSED_SYMPTOMS,
  refusals,
} from './english/words/refusals.ts';
import { SYMPTOM_WORDS } from './english/words/symptoms.ts';
import { TROUBLE_VERBS } from './english/words/trouble-verbs.ts';
import { THING_WORDS } from './english/words/things.ts';
import { VERB_WORDS } from './english/words/verbs.ts';
import { plural, verbForms } from './inflect.ts';
import type { Sense } from './item.ts';
import type { Complaint } from './senses.ts';
import { isPlainWord, tokenise } from './tokens.ts';
import { emptyNode, insert, type TrieNode } from './trie.ts';

const plainTokens = (text: string): string[] =>
  tokenise({ text, origin: Array.from({ length: text.length + 1 }, (_, i) => i) }).map((token) => token.text);
/** The words of a phrase as a message would hold them; a clitic ("'ll") may stand alone in a table. */
export const tokensOf = (phrase: string): string[] =>
  phrase
    .split(' ')
    .flatMap((word) => (word.startsWith("'") || isPlainWord(word) ? [word] : plainTokens(word)));

const list = (row: string): string[] => row.split(',').map((word) => word.trim()).filter((word) => word !== ''); // prettier-ignore
/** `Object.entries` that keeps the key's type. */
const rows = <K extends string>(table: Readonly<Partial<Record<K, string>>>): [K, string][] =>
  Object.entries(table) as [K, string][];

/** The phrase, its plural, and two words run together. */
function nounForms(phrase: string): string[] {
  const words = phrase.split(' ');
  const last = words.at(-1) ?? '';
  const forms = phrase.includes('hot end ') ? [phrase, phrase.replace('hot end ', 'hotend ')] : [phrase];
  if (/^\p{L}{3,}$/u.test(last) && !/(?:[^s]s|z)$/u.test(last))
    forms.push(...forms.map((form) => [...form.split(' ').slice(0, -1), plural(last)].join(' ')));
  if (words[1] === 'of' && words.length <= 4)
    forms.push([plural(words[0] ?? ''), ...words.slice(1)].join(' '));
  return words.length === 2 ? [...forms, ...forms.map((form) => form.replace(' ', ''))] : forms;
}

const add = (root: TrieNode, phrase: string, meaning: Sense): void => insert(root, tokensOf(phrase), meaning);

function addNouns(root: TrieNode): void {
  for (const [code, row] of rows(PART_WORDS))
    for (const word of list(row)) {
      const weak = word.startsWith('~');
      const meaning: Sense = weak ? { tag: 'part', code, weak } : { tag: 'part', code };
      for (const form of nounForms(weak ? word.slice(1) : word)) add(root, form, meaning);
    }
  for (const [code, row] of rows(THING_WORDS))
    for (const word of list(row)) for (const form of nounForms(word)) add(root, form, { tag: 'thing', code });
  for (const [code, row] of rows(MATERIAL_WORDS))
    for (const word of list(row)) add(root, word, { tag: 'material', code });
  for (const word of list(SPEC_WORDS)) add(root, word, { tag: 'spec' });
}

function addVerbs(root: TrieNode): void {
  for (const [code, row] of rows(VERB_WORDS))
    for (const verb of list(row))
      for (const { words, form } of verbForms(verb)) add(root, words, { tag: 'verb', code, form });
}

function addStates(root: TrieNode): void {
  for (const [code, row] of rows(COMPLAINT_WORDS))
    for (const word of list(row)) add(root, word, { tag: 'complaint', code });
  for (const [code, row] of rows(TROUBLE_VERBS))
    for (const verb of list(row))
      for (const { words, form } of verbForms(verb))
        if (form !== 'base') add(root, words, { tag: 'complaint', code });
  for (const [code, row] of rows(SYMPTOM_WORDS))
    for (const word of list(row)) add(root, word, { tag: 'symptom', code });
  for (const [code, row] of rows(REFUSED_COMPLAINTS))
    for (const word of list(row).flatMap(refusals)) add(root, word, { tag: 'complaint', code });
  for (const [code, row] of rows(REFUSED_SYMPTOMS))
    for (const word of list(row).flatMap(refusals)) add(root, word, { tag: 'symptom', code });
  for (const [code, row] of rows(BARE_PARTICIPLES))
    for (const word of list(row).flatMap(bareParticiples)) add(root, word, { tag: 'complaint', code });
  for (const [code, row] of rows(LACKED))
    for (const word of list(row).flatMap(lacks)) add(root, word, { tag: 'complaint', code });
  for (const [code, row] of rows(FINDING_WORDS))
    for (const word of list(row)) add(root, word, { tag: 'finding', code });
  for (const [code, row] of rows(STATE_WORDS))
    for (const word of list(row)) add(root, word, { tag: 'state', code });
  for (const [code, row] of rows(FN_WORDS))
    for (const word of list(row)) add(root, word, { tag: 'fn', code });
  for (const [code, row] of rows(JOINT_WORDS))
    for (const word of list(row)) add(root, word, { tag: 'joint', code });
}

function addQuantities(root: TrieNode): void {
  for (const [word, value] of NUMBER_WORDS) add(root, word, { tag: 'number', value });
  for (const [code, row] of rows(UNIT_WORDS))
    for (const word of list(row)) add(root, word, { tag: 'unit', code });
  WEEKDAY_WORDS.forEach((row, n) =>
    list(row).forEach((word) => add(root, word, { tag: 'calendar', code: 'weekday', n })),
  );
  MONTH_WORDS.forEach((row, n) =>
    list(row).forEach((word) => add(root, word, { tag: 'calendar', code: 'month', n })),
  );
  for (const [word, n] of Object.entries(SHY_WEEKDAYS))
    add(root, word, { tag: 'calendar', code: 'shy-weekday', n });
  for (const [row, n] of RELATIVE_DAYS)
    for (const word of list(row)) add(root, word, { tag: 'calendar', code: 'day', n });
  for (const word of list(VAGUE_TIMES)) add(root, word, { tag: 'calendar', code: 'vague', n: 0 });
}

function addHarmless(root: TrieNode): void {
  for (const word of list(HARMLESS_WORDS)) add(root, word, { tag: 'foreign' });
}

function addOrdinary(root: TrieNode): void {
  for (const word of list(FOREIGN_WORDS).flatMap(nounForms)) add(root, word, { tag: 'foreign' });
  for (const word of list(FOREIGN_VERBS)) add(root, word, { tag: 'foreign' });
  for (const word of list(WOODWORK_WORDS)) add(root, word, { tag: 'woodwork' });
  for (const word of list(TIMBER_WORDS)) add(root, word, { tag: 'timber' });
  for (const word of list(HUMAN_WORDS)) add(root, word, { tag: 'human' });
  for (const word of list(BEFORE_PERSON)) add(root, word, { tag: 'before-person' });
  for (const word of list(BEFORE_STUFF)) add(root, word, { tag: 'before-stuff' });
}

function build(...fill: readonly ((root: TrieNode) => void)[]): TrieNode {
  const root = emptyNode();
  for (const one of fill) one(root);
  return root;
}

const LAYERS = ['words', 'ordinary', 'cues', 'orders', 'reasons'] as const;
export type Heads = Readonly<Record<(typeof LAYERS)[number], TrieNode | undefined>>;

function headsOf(roots: Readonly<Record<(typeof LAYERS)[number], TrieNode>>): Map<string, Heads> {
  const found = new Map<string, Heads>();
  for (const layer of LAYERS)
    for (const word of roots[layer].next.keys()) {
      if (found.has(word)) continue;
      const head = (of: keyof Heads): TrieNode | undefined => roots[of].next.get(word);
      found.set(word, { words: head('words'), ordinary: head('ordinary'), cues: head('cues'), orders: head('orders'), reasons: head('reasons') }); // prettier-ignore
    }
  return found;
}

/** Bare verbs of trouble: they name one only behind an auxiliary. */
const bareTroubles = (): Map<string, Complaint> =>
  new Map(
    rows(TROUBLE_VERBS).flatMap(([code, row]) =>
      list(row)
        .filter((verb) => !verb.includes(' '))
        .map((verb): [string, Complaint] => [verb, code]),
    ),
  );

export interface Lexicon {
  /** The main layer: a word read here is used up. */
  readonly words: TrieNode;
  /** Overlays: read across the main layer and use nothing up. */
  readonly ordinary: TrieNode;
  readonly cues: TrieNode;
  readonly orders: TrieNode;
  readonly reasons: TrieNode;
  /** What begins with a word, in every layer: one look-up a word of the message. */
  readonly heads: ReadonlyMap<string, Heads>;
  readonly bareTroubles: ReadonlyMap<string, Complaint>;
  /** Every single word of the main layer, and of all layers. */
  readonly content: ReadonlySet<string>;
  readonly known: ReadonlySet<string>;
}

let made: Lexicon | undefined;

/** Made at the first message and kept: a command that reads none starts without it. */
export function lexicon(): Lexicon {
  made ??= makeLexicon();
  return made;
}

function makeLexicon(): Lexicon {
  const words = build(addNouns, addVerbs, addStates, addQuantities, addHarmless);
  const ordinary = build(addOrdinary);
  const cues = build((root) => {
    for (const [code, row] of rows(CUE_WORDS))
      for (const word of list(row)) add(root, word, { tag: 'cue', code });
  });
  const orders = build((root) => {
    for (const [code, row] of rows(ORDER_WORDS))
      for (const word of list(row)) add(root, word, { tag: 'order', code, until: 0 });
  });
  const reasons = build((root) => {
    for (const [code, row] of rows(REASON_WORDS))
      for (const word of list(row)) add(root, word, { tag: 'reason', code });
  });
  const known = vocabulary(words, cues, orders, reasons, ordinary);
  const heads = headsOf({ words, ordinary, cues, orders, reasons });
  const bare = bareTroubles();
  return {
    words,
    ordinary,
    cues,
    orders,
    reasons,
    heads,
    bareTroubles: bare,
    content: vocabulary(words),
    known,
  };
}

/** Every single word that some table holds: never corrected. */
function vocabulary(...roots: readonly TrieNode[]): Set<string> {
  const found = new Set<string>();
  const visit = (node: TrieNode): void => {
    for (const [word, next] of node.next) {
      found.add(word);
      visit(next);
    }
  };
  roots.forEach(visit);
  return found;
}
