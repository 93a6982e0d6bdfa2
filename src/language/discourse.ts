/** Stage 8. Which machines a clause is on: named in it, pointed at, or carried from its neighbours. */
import type { NameBook } from './names.ts';
import { hasTag, isFn, type Item, sense, sensesOf } from './item.ts';
import type { Scene } from './scene.ts';

export interface Place {
  /** Canonical names; empty where none is named nor pointed at. */
  machines: readonly string[];
  how: 'said' | 'pointed' | 'carried' | 'none';
  /** Names that disagree, or a choice. */
  choice?: { said: string; options: readonly string[] };
  /** "#4's too", "same on birch": what the clause before did. */
  ditto: boolean;
  /** Spelling was put right in a name. */
  said?: string;
  /** Named only to be denied: "neither alder nor maple". */
  denied?: readonly string[];
}

export interface Memory {
  /** Machines of the clause before. */
  last: readonly string[];
  /** In order of first mention. */
  mentioned: string[];
}

function named(
  scene: Scene,
  book: NameBook,
): { machines: string[]; excluded: string[]; not: string[]; choice?: Place['choice']; said?: string } {
  const machines: string[] = [];
  const excluded: string[] = [];
  const not: string[] = [];
  let said: string | undefined;
  let choice: Place['choice'];
  let excepting = false;
  let previous = -1;
  scene.items.forEach((item, at) => {
    if (isFn(item, 'except')) excepting = true;
    const clash = sense(item, 'choice');
    if (clash) choice = { said: item.text, options: clash.options };
    const code = sense(item, 'machine')?.code;
    if (code === undefined) return;
    if (item.said !== undefined) said = item.said;
    const before = previous >= 0 ? sense(scene.items[previous], 'machine')?.code : undefined;
    if (before !== undefined && before !== code) {
      const between = scene.items.slice(previous + 1, at);
      const spoken = scene.items.slice(previous, at + 1).map((one) => one.text).join(' '); // prettier-ignore
      if (between.some((one) => isFn(one, 'or')) && !scene.mood.question)
        choice = { said: spoken, options: [before, code] };
      else if (
        between.length === 0 &&
        (adjacent(scene.items[previous], item) || isApposed(scene.items, previous, at))
      )
        choice = { said: spoken, options: [before, code] };
      else if (
        between.length === 1 &&
        /^(?:to|-|through|thru|till)$/u.test(between[0]?.text ?? '') &&
        !deedBetween(scene)
      )
        machines.push(...rangeOf(before, code, book));
    }
    if (isMeasuredBy(scene.items, at)) return;
    if (excepting) excluded.push(code);
    else if (denied(scene, at)) not.push(code);
    else machines.push(code);
    previous = at;
  });
  return {
    machines: [...new Set(machines)],
    excluded,
    not,
    ...(choice === undefined ? {} : { choice }),
    ...(said === undefined ? {} : { said }),
  };
}
/** "ran twice as long as birch", "longer than elm": only what is compared with. */
const isMeasuredBy = (items: readonly Item[], at: number): boolean =>
  isFn(items[at - 1], 'than') ||
  (items[at - 1]?.text === 'as long as' && items[at - 2] !== undefined && !hasTag(items[at - 2], 'joint')) ||
  (isFn(items[at - 1], 'as') && items.slice(Math.max(0, at - 4), at - 1).some((item) => isFn(item, 'as')));
/** Two names side by side in one breath: "#3 alder". Lists lose their commas to the splitter, so the gap tells. */
const adjacent = (a: Item | undefined, b: Item): boolean =>
  a !== undefined && b.from - a.to <= 1 && !(isNumber(a) && isNumber(b));
/** "on machine #2, Cedar, the screw …": the name of the one just numbered, or another's. */
const isApposed = (items: readonly Item[], before: number, at: number): boolean =>
  at === before + 1 &&
  /^(?:machine|printer|unit|number)\b/u.test(items[before]?.text ?? '') &&
  !isNumber(items[at] ?? { text: '', from: 0, to: 0, senses: [], gap: true }) &&
  !hasTag(items[at + 1], 'machine') &&
  !isFn(items[at + 1], 'both', 'all') &&
  items[at + 1] !== undefined;
/** "#3 #7 #8": numbers are listed, where a name and a number say one machine twice. */
const isNumber = (item: Item): boolean => /^#? ?\d+$/u.test(item.text);
const deedBetween = (scene: Scene): boolean =>
  scene.verbs.some((verb) => verb.code === 'move' || (verb.code === 'put-off' && scene.nouns.length === 0));
/** "not elm", "not on elm"; "doesn't elm jam" denies nothing of the name. */
const isNot = (item: Item | undefined): boolean => isFn(item, 'not') && !/n't$|nt$/u.test(item?.text ?? '');
const denied = (scene: Scene, at: number): boolean =>
  isNot(scene.items[at - 1]) || (isNot(scene.items[at - 2]) && isFn(scene.items[at - 1], 'on', 'for'));

function rangeOf(from: string, to: string, book: NameBook): string[] {
  const [a, b] = [book.machines.indexOf(from), book.machines.indexOf(to)];
  return a >= 0 && b > a ? book.machines.slice(a, b + 1) : [];
}

/** "all but cedar", "every printer", "the whole lot"; "all the belts on elm" is elm alone. */
/** What every machine has: "gave every bed a wipe" is of them all. */
const OF_EACH = /^(?:beds?|plates?|printers?|machines?|nozzles?|belts?|fans?|rods?|printer's)$/u;
function allMeant(scene: Scene, explicit: boolean): boolean {
  // "levelled all the beds"
  const each = /^(?:beds|build plates|machines|printers|nozzles)$/u;
  if (
    !explicit &&
    !scene.named &&
    scene.verbs.some((verb) => verb.deed) &&
    scene.items.some(
      (item, at) =>
        item.text === 'all' &&
        each.test(scene.items[isFn(scene.items[at + 1], 'article') ? at + 2 : at + 1]?.text ?? ''),
    )
  )
    return true;
  if (
    !explicit &&
    scene.verbs.some((verb) => verb.deed) &&
    scene.items.some(
      (item, at) =>
        /^(?:every|every single|each)$/u.test(item.text) && OF_EACH.test(scene.items[at + 1]?.text ?? ''),
    )
  )
    return true;
  return scene.items.some((item, at) => {
    if (!isFn(item, 'all', 'each', 'every') || explicit) return false;
    if (scene.items.some((other) => isFn(other, 'except'))) return true;
    if (!isFn(item, 'all')) return false;
    // "finished everything it was given"
    if (item.text === 'everything' && isFn(scene.items[at + 1], 'it', 'i', 'we', 'you', 'they', 'this', 'from')) return false;
    if (item.text !== 'all' && item.text !== 'everything' && item.text !== 'each one' && item.text !== 'everyone') return true;
    const next = scene.items[at + 1];
    // "on all three: alder, maple, hazel" names them itself.
    if (hasTag(next, 'number')) return false;
    if (isFn(next, 'except') || isFn(scene.items[at - 1], 'on', 'for')) return true;
    return item.text === 'everything' && scene.nouns.length === 0 && scene.verbs.some((verb) => verb.deed) && at > 0;
  }) || scene.items.some((item) => isFn(item, 'except') && /^(?:all|every)/u.test(item.text)); // prettier-ignore
}

/** "both belts", "both of the rods": two parts; "both only had their rods wiped" is of two machines. */
function bothOfPart(scene: Scene): boolean {
  const at = scene.items.findIndex((item) => isFn(item, 'both'));
  return scene.nouns.some(
    (noun) =>
      noun.at > at &&
      scene.items
        .slice(at + 1, noun.at)
        .every(
          (item) => isFn(item, 'article', 'its', 'of', 'my', 'possessive') || hasTag(item, 'machine', 'spec'),
        ),
  );
}

function pointed(scene: Scene, memory: Memory, book: NameBook): readonly string[] | undefined {
  const some = (...codes: Parameters<typeof isFn>[1][]): boolean =>
    scene.items.some((item) => isFn(item, ...codes));
  const seen = memory.mentioned;
  if (some('latter') && seen.length > 0) return seen.slice(-1);
  if (some('former') && seen.length > 1) return seen.slice(-2, -1);
  if (some('both') && seen.length >= 2 && !bothOfPart(scene)) return seen.slice(-2);
  if (
    scene.items.some((item) =>
      /^(?:the other one|the others?|the rest|others|all the others|all others|the other machines|the other printers|rest of them|the rest of them|the other)$/u.test(
        item.text,
      ),
    ) &&
    seen.length > 0 &&
    !scene.nouns.some(
      (noun) =>
        noun.at > scene.items.findIndex((item) => isFn(item, 'other')) &&
        isFn(scene.items[noun.at - 1], 'other'),
    )
  ) {
    const rest = book.machines.filter((machine) => !seen.includes(machine));
    return scene.items.find((item) => isFn(item, 'other'))?.text.endsWith('one') === true ? undefined : rest;
  }
  if (some('they') && memory.last.length > 1) return memory.last;
  return some('it', 'its') && memory.last.length > 0 ? memory.last : undefined;
}

/** "all v wheel machines", "all the rod printers": of a build, and which have it is not known here. */
function ofBuild(scene: Scene): string | undefined {
  const all = scene.items.findIndex((item) => isFn(item, 'all', 'every', 'each'));
  const machine = scene.items.findIndex((item, i) => i > all && i <= all + 5 && /^(?:machines?|printers?|ones)$/u.test(item.text)); // prettier-ignore
  const between = all < 0 || machine < 0 ? [] : scene.items.slice(all + 1, machine);
  const built = between.some((item) => hasTag(item, 'part', 'thing') || /^(?:bowden|direct|v|corexy|bedslingers?|enclosed|open)$/u.test(item.text)); // prettier-ignore
  return built && between.every((item) => !isFn(item, 'on', 'in', 'of', 'for'))
    ? between.map((item) => item.text).join(' ')
    : undefined;
}

export function placeOf(scene: Scene, memory: Memory, book: NameBook): Place {
  const { machines, excluded, not, choice, said } = named(scene, book);
  const ditto = scene.items.some((item) => isFn(item, 'too', 'same'));
  const extra = {
    ditto,
    ...(choice === undefined ? {} : { choice }),
    ...(said === undefined ? {} : { said }),
    ...(not.length > 1 ? { denied: not } : {}),
  };
  const build = machines.length > 0 ? undefined : ofBuild(scene);
  if (build !== undefined)
    return { machines: [], how: 'none', ...extra, choice: { said: build, options: [] } };
  if (allMeant(scene, machines.length > 0))
    return { machines: book.machines.filter((one) => !excluded.includes(one)), how: 'said', ...extra };
  // "one of alder and birch jammed"
  if (machines.length > 1 && scene.items.some((item) => /^one of\b/u.test(item.text)))
    return { machines, how: 'said', ...extra, choice: { said: machines.join(' or '), options: machines } };
  if (machines.length > 0) return { machines, how: 'said', ...extra };
  const back = pointed(scene, memory, book);
  return back === undefined
    ? { machines: [], how: 'none', ...extra }
    : { machines: back, how: 'pointed', ...extra };
}

export function remember(memory: Memory, { machines, denied = [] }: Place): void {
  if (denied.length > 0)
    memory.mentioned = [...memory.mentioned.filter((one) => !denied.includes(one)), ...denied].slice(-64);
  if (machines.length === 0) return;
  memory.last = machines;
  memory.mentioned = [...memory.mentioned.filter((one) => !machines.includes(one)), ...machines].slice(-64);
}

/** A name in a machine's place that no machine here bears: "oak ran 4 h", "oiled the rods on oak", "#9". */
export function strangerIn(scene: Scene): string | undefined {
  const marked = scene.items.find((item) => hasTag(item, 'stranger'));
  if (marked) return marked.text;
  const unknown = (item: Item | undefined): boolean =>
    item !== undefined &&
    item.senses.every((s) => s.tag === 'timber') &&
    /^\p{L}{2,}/u.test(item.text) &&
    item.text !== "'s";
  const owner = scene.items.find(
    (item, i) =>
      unknown(item) && /\p{L}{3}s$/u.test(item.text) && isFn(scene.items[i - 1], 'from', 'on', 'in', 'of') && hasTag(scene.items[i + 1], 'part'), // prettier-ignore
  );
  if (owner && !sensesOf(scene.items, 'machine').length) return owner.text;
  const first = scene.items.findIndex((item) => !isFn(item, 'article'));
  const next = scene.items[first + 1];
  const runs =
    next !== undefined &&
    (next.senses.some(
      (s) =>
        s.tag === 'verb' &&
        s.form === 'past' &&
        (s.code === 'run' || (s.code === 'did' && sense(scene.items[first + 2], 'value')?.code === 'hours')),
    ) ||
      sense(next, 'value')?.code === 'hours' ||
      (isFn(next, 'possessive') && hasTag(scene.items[first + 2], 'part')));
  if (unknown(scene.items[first]) && runs) return scene.items[first]?.text;
  const ran = ranByName(scene, unknown);
  if (ran !== undefined) return ran;
  const last = scene.items.findLastIndex(
    (item) => !hasTag(item, 'date') && !isFn(item, 'now', 'too', 'again'),
  );
  return isFn(scene.items[last - 1], 'on') &&
    unknown(scene.items[last]) &&
    scene.items[last - 1]?.text === 'on' &&
    sensesOf(scene.items, 'part').length + scene.values.length > 0
    ? scene.items[last]?.text
    : undefined;
}

/** "i ran chestnut for 2 hours, pla", "the printer poplar has worked six hours": a name where the machine's stands. */
function ranByName(scene: Scene, unknown: (item: Item | undefined) => boolean): string | undefined {
  const { items } = scene;
  const printing = scene.materials.length > 0 && scene.values.some((value) => value.code === 'hours');
  if (!printing || scene.machine) return undefined;
  const at = items.findIndex(
    (item, i) =>
      unknown(item) &&
      ((/^(?:ran|printed on)$/u.test(items[i - 1]?.text ?? '') &&
        (isFn(items[i + 1], 'for') || hasTag(items[i + 1], 'value'))) ||
        (/^(?:printer|machine)$/u.test(items[i - 1]?.text ?? '') && isFn(items[i + 1], 'have', 'be'))),
  );
  return items[at]?.text;
}
