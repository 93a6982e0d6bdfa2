/** What a clause is said of, where that is none of the printers': "the ladder is broken", "the paper printer jams". */
import { hasTag, isFn, isThing, type Item } from './item.ts';
import type { Scene } from './scene.ts';

const unknown = (item: Item | undefined): boolean =>
  item !== undefined &&
  item.senses.every((s) => s.tag === 'foreign' || s.tag === 'human' || s.tag === 'timber') &&
  /^\p{L}{3,}$/u.test(item.text) &&
  !item.text.endsWith('ly');
const predicate = (item: Item): boolean =>
  hasTag(item, 'complaint', 'symptom', 'state') || isFn(item, 'be', 'have', 'not');

/** Names in the clause, or a word that points at one. */
const isNamed = (scene: Scene): boolean =>
  scene.items.some((item) => hasTag(item, 'machine', 'stranger') || isFn(item, 'its'));

/** The last word before what is said: an unknown noun there is another thing. "Thing" and adverbs are not. */
export function otherSubject(scene: Scene): boolean {
  if (isNamed(scene)) return false;
  const at = scene.items.findIndex(predicate);
  const head = scene.items[at - 1];
  if (at < 1 || !unknown(head) || /^(?:thing|bugger|beast|machine|one)$/u.test(head?.text ?? ''))
    return false;
  return !scene.nouns.some((noun) => noun.at < at);
}

const APART = new Set(['old', 'my', 'another', 'other', 'any']);
/** "my printer at home", "the paper printer", "a printer that leaked": a machine, and none of those here. */
export function otherMachine(scene: Scene): boolean {
  if (isNamed(scene)) return false;
  return scene.items.some((item, at) => {
    if (!item.senses.some((s) => s.tag === 'thing' && s.code === 'machine')) return false;
    const before = scene.items[at - 1];
    return (
      (before !== undefined &&
        before.senses.some((s) => s.tag === 'fn' && APART.has(s.code)) &&
        before.text !== 'our') ||
      before?.text === 'a' ||
      before?.text === 'an' ||
      unknown(before) ||
      isThing(before, 'paper') ||
      hasTag(before, 'foreign')
    );
  });
}

/** "the puppet's head": what belongs to another thing is no part of a printer. */
export function otherOwner(scene: Scene): boolean {
  if (isNamed(scene)) return false;
  return scene.items.some(
    (item, at) =>
      isFn(item, 'possessive') &&
      unknown(scene.items[at - 1]) &&
      hasTag(scene.items[at + 1], 'part', 'thing') &&
      at > 0,
  );
}
/** Qualities that carry no ending of their own. */
const PLAIN_QUALITY =
  /^(?:crap|dud|bust|naff|gash|cheap|big|wee|wide|small|large|huge|short|tall|left|right|front|rear|upper|lower|top|bottom|middle|inner|outer|far|near|main|second|third|fourth|own|proper|decent|coarse|black|white|red|blue|green|yellow|grey|gray|orange|purple|pink|silver|gold|clear|thick|long|hard|soft|raw|blunt|sharp|ancient|current|correct|same|damn|poor|sad|whole|entire|double|dual|twin|single|triple|stock|genuine|copper|steel|stainless|aluminium|aluminum|bronze|ceramic|rubber|different|better|best|bad|good|nice|odd|sole|very|bare|blank|slim|fat|lot|pair|set|third-party|non|anti|corexy|bowden|direct|drive|side|end|hand|work|shop|workshop|room)$/u;
const isQuality = (word: string): boolean =>
  PLAIN_QUALITY.test(word) || /(?:[^w]y|ed|en|ing|ish|ful|less|ous|ible|ic|ive|ly|most|proof)$/u.test(word);
const otherNoun = (item: Item | undefined): boolean => unknown(item) && !isQuality(item?.text ?? '');
const beside = (a: Item | undefined, b: Item | undefined): boolean =>
  a !== undefined && b !== undefined && b.from - a.to <= 1;

/** "wiring in the old theatre", "the nozzle of the wand": the word that a noun is tied to by "of", "on", "in". */
function isTiedElsewhere({ items }: Scene, at: number): boolean {
  if (!/^(?:of|on|in|from|off)$/u.test(items[at + 1]?.text ?? '')) return false;
  let i = at + 2;
  while (
    isFn(items[i], 'article', 'my', 'this', 'old', 'its', 'some', 'another', 'possessive') ||
    hasTag(items[i], 'person') ||
    (otherNoun(items[i - 1]) && isFn(items[i], 'possessive')) ||
    (unknown(items[i]) && beside(items[i], items[i + 1]) && unknown(items[i + 1]))
  )
    i += 1;
  const next = items[i + 1];
  return (
    i > at + 2 &&
    otherNoun(items[i]) &&
    !(beside(items[i], next) && hasTag(next, 'part', 'thing', 'machine', 'spec'))
  );
}
/** "pressure washer nozzle", "railway track", "the nozzle of the wand": a part by its word, and of what no printer has. */
export function otherWhole(scene: Scene): boolean {
  if (isNamed(scene)) return false;
  const own = scene.nouns.filter((noun) => noun.at >= 0 && noun.code !== 'machine');
  return (
    own.length > 0 &&
    own.every(
      ({ at }) =>
        (otherNoun(scene.items[at - 1]) &&
          beside(scene.items[at - 1], scene.items[at]) &&
          !scene.items.slice(0, at - 1).some((item) => hasTag(item, 'part', 'thing', 'material'))) ||
        isTiedElsewhere(scene, at),
    )
  );
}
export const ofAnother = (scene: Scene): boolean =>
  otherSubject(scene) || otherMachine(scene) || otherOwner(scene);
