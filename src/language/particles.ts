/** Verbs whose particle stands after the object: "blew the shavings out", "wiped it all down". */
import { VERB_WORDS } from './english/words/verbs.ts';
import { verbForms } from './inflect.ts';
import type { Item } from './item.ts';
import type { VerbClass, VerbForm } from './senses.ts';

/** Classes that are plain handwork; "took it off", "put it in" mean too many things to be read across an object. */
const SPLIT: readonly VerbClass[] = [
  'clean', 'wipe', 'dust', 'oil', 'tighten', 'tension', 'look', 'trim', 'clear', 'save', 'dry',
]; // prettier-ignore
const PARTICLES: ReadonlySet<string> = new Set(['out', 'off', 'up', 'down', 'over', 'through', 'on', 'in']);
/** Heads that say too little alone. */
const EMPTY =
  /^(?:go|get|take|turn|put|set|do|give|push|burn|look|run|stick|pop|slip|slap|drop|chuck|whack|bung|slot)$/u;
/** Only bent and split: "a bolt on rowan" and "a screw in the frame" are things. */
const FASTENED = [
  'screw on',
  'screw in',
  'bolt on',
  'bolt in',
  'clip on',
  'clip in',
  'click in',
  'snap on',
  'solder in',
];
/** "switched it off": no swap, whatever the verb alone may be. */
const POWER = ['switch off', 'turn off', 'power off', 'shut off', 'power down', 'shut down'];
/** How far the particle may stand from its verb. */
const REACH = 7;

const TABLE: ReadonlyMap<string, readonly { code: VerbClass; form: VerbForm }[]> = build();

function build(): Map<string, { code: VerbClass; form: VerbForm }[]> {
  const table = new Map<string, { code: VerbClass; form: VerbForm }[]>();
  for (const code of SPLIT)
    for (const phrase of VERB_WORDS[code].split(', ')) {
      const words = phrase.split(' ');
      if (words.length !== 2 || !PARTICLES.has(words[1] ?? '') || EMPTY.test(words[0] ?? '')) continue;
      for (const { words: bent, form } of verbForms(phrase)) {
        const known = table.get(bent) ?? [];
        if (!known.some((one) => one.code === code)) table.set(bent, [...known, { code, form }]);
      }
    }
  for (const phrase of FASTENED)
    for (const { words, form } of verbForms(phrase))
      if (form === 'past') table.set(words, [{ code: 'fit', form }]);
  for (const phrase of POWER)
    for (const { words, form } of verbForms(phrase)) table.set(words, [{ code: 'plug', form }]);
  return table;
}

/** Looked at first: most words bend no particle to themselves. */
const HEADS: ReadonlySet<string> = new Set([...TABLE.keys()].map((phrase) => phrase.split(' ')[0] ?? ''));

/** The classes that the verb at `at` has with a particle further on; none where another verb stands between. */
export function withParticle(
  items: readonly Item[],
  at: number,
): readonly { code: VerbClass; form: VerbForm }[] {
  const head = items[at]?.text ?? '';
  if (!HEADS.has(head)) return [];
  for (let i = at + 1; i < Math.min(items.length, at + REACH); i += 1) {
    const word = items[i]?.text.split(' ')[0] ?? '';
    const found = PARTICLES.has(word) ? TABLE.get(`${head} ${word}`) : undefined;
    if (found) return found;
    if (items[i]?.senses.some((s) => s.tag === 'verb' && s.form !== 'base')) return [];
  }
  return [];
}
