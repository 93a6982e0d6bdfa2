/** Verb forms and plurals, British and American. */
import { IRREGULAR } from './english/words/verbs.ts';
import type { VerbForm } from './senses.ts';

const VOWEL = /[aeiou]/u;
/** One vowel between consonants at the end of a short word: "snip", "trim"; not "clean", "fix", "reset". */
const doubles = (word: string): boolean =>
  /^[^aeiou]*(?:qu)?[aeiou][bdgklmnprt]$/u.test(word) && !/(?:w|x|y)$/u.test(word);
const DOUBLING = new Set([
  'unplug',
  'unjam',
  'rejig',
  'retrim',
  'unclog',
  'declog',
  'dejam',
  'refit',
  'relog',
  'unlog',
  'debrief',
  'transfer',
  'regret',
  'unstrap',
]);

export function plural(word: string): string {
  if (/(?:s|x|z|ch|sh)$/u.test(word)) return `${word}es`;
  if (/[^aeiou]y$/u.test(word)) return `${word.slice(0, -1)}ies`;
  return `${word}s`;
}

function stem(word: string): string {
  return doubles(word) || DOUBLING.has(word) ? word + word.slice(-1) : word;
}
function regularPast(word: string): string {
  if (word.endsWith('e')) return `${word}d`;
  if (/[^aeiou]y$/u.test(word)) return `${word.slice(0, -1)}ied`;
  return `${stem(word)}ed`;
}
function gerund(word: string): string {
  if (word.endsWith('ie')) return `${word.slice(0, -2)}ying`;
  if (word.endsWith('e') && !word.endsWith('ee')) return `${word.slice(0, -1)}ing`;
  return `${stem(word)}ing`;
}

/** First words that are no verbs: "cold pull", "brass brush" bend at the end. */
const BENT_LAST = new Set([
  'cold',
  'atomic',
  'hot',
  'brass',
  'wire',
  'oven',
  'bed',
  'pre',
  'fine',
  'double',
  'feather',
  'wet',
  'auto',
  'test',
  'thread',
  'allen',
  'hex',
]);

export interface Form {
  readonly words: string;
  readonly form: VerbForm;
}

/** All forms of a verb of one or more words; only the first word is bent. */
export function verbForms(verb: string): Form[] {
  const words = verb.split(' ');
  if (words.length === 2 && BENT_LAST.has(words[0] ?? ''))
    return verbForms(words[1] ?? '').map((one) => ({ ...one, words: `${words[0]} ${one.words}` }));
  const [first = '', ...rest] = words;
  const prefix = first === 're' || first === 'un' || first === 'de' ? `${first} ` : '';
  const head = prefix ? (rest.shift() ?? '') : first;
  const tail = rest.length > 0 ? ` ${rest.join(' ')}` : '';
  const irregular = Object.hasOwn(IRREGULAR, head) ? IRREGULAR[head] : undefined;
  const past = irregular ?? [regularPast(head)];
  const make = (word: string, form: VerbForm): Form => ({ words: `${prefix}${word}${tail}`, form });
  const pasts = past.filter((word): word is string => word !== undefined);
  const forms = pasts.map((word) => make(word, word === head && pasts[0] === head ? 'both' : 'past'));
  if (pasts[0] !== head) forms.push(make(head, 'base'));
  if (tail === '') forms.push(make(plural(head), 's'));
  forms.push(make(gerund(head), 'ing'));
  if (head.endsWith('el')) forms.push(make(`${head}ing`, 'ing'), make(`${head}ling`, 'ing'));
  return VOWEL.test(head) || head.length > 1 ? forms : [];
}
