/** Trouble that is over: named and ended in one clause, or named in one and ended in the next. */
import type { Symptom } from '../../../maintenance/codes.ts';
import { hasTag, isFn, isThing, type Item, sensesOf } from '../../item.ts';
import { deedOf, type Draft, draft, hasMachine, type Scene, someFn, textOf } from '../../scene.ts';
import { type Seen, symptomsIn, usedTo } from './symptom.ts';
import { SYMPTOMS_OF } from './symptom-table.ts';

/** The trouble is itself a denial: "not round any more" tells of no end. */
const DENIAL =
  /^(?:not|no longer|never|won't|don't|doesn't|isn't|aren't|ain't|hasn't been|has not been|haven't been|can't|cannot|couldn't|does not|do not|did not|is not|are not|will not|can not|has not|could not|refuses|fails)\b/u;

/** What it does again, and what it then has no longer; the row of the thing that does it goes first. */
const DOES_AGAIN: readonly (readonly [RegExp, Readonly<Partial<Record<string, Symptom>>>])[] = [
  [/^(?:heats|heating|warms|heats up|warms up|heating up|warming up)$/u, { bed: 'bed-no-heat', 'bed-heater': 'bed-no-heat', 'build-plate': 'bed-no-heat', '*': 'no-heat', 'hot-end': 'no-heat', nozzle: 'no-heat', heater: 'no-heat' }],
  [/^(?:extrudes|extruding|feeds|feeding)$/u, { '*': 'no-extrusion', filament: 'no-extrusion', feeder: 'no-extrusion', nozzle: 'no-extrusion' }],
  [/^(?:homes|homing)$/u, { '*': 'homing-failed', probe: 'homing-failed' }],
  [/^(?:sticks|stick|sticking|holds|hold|holding|adheres|adhere|grips|grip)$/u, { print: 'poor-adhesion', 'first-layer': 'poor-adhesion', filament: 'poor-adhesion' }],
  [/^(?:(?:works|working|responds|reacts|lights up|alive|fine|ok|readable|runs|running)(?: again)?|back)$/u, { screen: 'screen-frozen', 'bed-heater': 'bed-no-heat', heater: 'no-heat', probe: 'homing-failed', 'end-stop': 'homing-failed', fan: 'fan-stopped', 'hot-end-fan': 'fan-stopped', 'part-fan': 'fan-stopped', 'board-fan': 'fan-stopped' }],
  [/^(?:spins|spinning|turns|blows)$/u, { fan: 'fan-stopped', 'hot-end-fan': 'fan-stopped', 'part-fan': 'fan-stopped', 'board-fan': 'fan-stopped' }],
]; // prettier-ignore
const HEATED = { bed: 'bed-no-heat', 'bed-heater': 'bed-no-heat', 'build-plate': 'bed-no-heat', '*': 'no-heat', 'hot-end': 'no-heat', nozzle: 'no-heat', heater: 'no-heat' } as const; // prettier-ignore
/** The same of two words: "gets warm again", "finds home again". */
const PAIRED: typeof DOES_AGAIN = [
  [/\b(?:gets?|getting|is) (?:warm|hot)(?: properly)? again\b/u, HEATED],
  [/\bfinds? (?:its )?(?:home|zero) again\b/u, { '*': 'homing-failed' }],
  [/\b(?:comes?|coming) out again\b/u, { '*': 'no-extrusion', plastic: 'no-extrusion', filament: 'no-extrusion', nozzle: 'no-extrusion' }],
]; // prettier-ignore
/** "cedar heats again", "prints stick again on juniper". */
function doesAgain(scene: Scene): Symptom | undefined {
  if (
    !(someFn(scene, 'again') || scene.text.endsWith(' again') || isBack(scene)) ||
    scene.mood.negated ||
    !hasMachine(scene)
  )
    return undefined;
  if (deedOf(scene, 'swap', 'fit', 'install', 'put', 'plug')) return undefined;
  const row = (DOES_AGAIN.find(([words]) => scene.items.some((item) => words.test(item.text))) ??
    PAIRED.find(([words]) => words.test(scene.text)))?.[1];
  if (!row) return undefined;
  const noun = scene.nouns.find((one) => row[one.code] !== undefined);
  if (noun) return row[noun.code];
  const sticks = scene.materials.length > 0 && scene.items.some((item) => item.text.startsWith('stick'));
  return sticks ? 'poor-adhesion' : scene.nouns.length === 0 ? row['*'] : undefined;
}
/** "rowan's screen is back": the part, and nothing that it came back to. */
const isBack = (scene: Scene): boolean =>
  !someFn(scene, 'i', 'we', 'you', 'they', 'when', 'person') &&
  scene.items.at(-1)?.text === 'back' &&
  isFn(scene.items.at(-2), 'be') &&
  scene.nouns.length === 1;
/** "juniper sticks again": the prints to the plate, which is well, or the carriage, which is not. */
const sticksUnsaid = (scene: Scene): boolean =>
  scene.items.length === 3 && hasTag(scene.items[0], 'machine') && scene.items[1]?.text === 'sticks' && isFn(scene.items[2], 'again'); // prettier-ignore

const askWhatSticks = (scene: Scene): Draft =>
  draft(
    scene,
    { kind: 'unclear', why: 'Do the prints stick to the plate again, or does something bind?' },
    'unclear: what sticks',
    { doubt: { field: 'value', said: scene.text, options: [] } },
  );
const CEASES =
  /^(?:stopped|has stopped|have stopped|finally stopped|quit|has quit|ceased|has ceased|gave up|given up|has given up|left off|packed in|has packed in)$/u;
/** Where "has quit" stands before "rattling", "its squeaking"; -1 where nothing ceases. */
export function ceasesAt(items: readonly Item[], trouble: number): number {
  let i = trouble - 1;
  while (i >= 0 && (isFn(items[i], 'its', 'this', 'article', 'my', 'really', 'just', 'have', 'all') || /ly$|^making$/u.test(items[i]?.text ?? ''))) i -= 1; // prettier-ignore
  const led = i < trouble - 1;
  const cause = /ing$|ing\b/u.test(items[trouble]?.text ?? '');
  return (led || cause) && CEASES.test(items[i]?.text ?? '') ? i : -1;
}
/** "the squeak isn't gone", "has not stopped". */
const lastsStill = (items: readonly Item[]): boolean =>
  items.some(
    (item, at) =>
      /^(?:gone|stopped|over|cured|away|fixed|sorted|gone away|cleared up|disappeared)$/u.test(item.text) &&
      items.slice(Math.max(0, at - 2), at).some((one) => isFn(one, 'not') && !isFn(one, 'anymore')),
  );
/** "the squeaking seems to be over", "is a thing of the past". */
const OVER =
  /\b(?:is|are|'s|be) (?:all |now |finally |well and truly )?(?:over|over now|a thing of the past|no more|past|history)$/u;
const isOver = (scene: Scene, trouble: number): boolean =>
  !scene.mood.negated && trouble < scene.items.length - 1 && OVER.test(scene.text);

const WHO = "(?:it|that|this|she|he|they|which|those|these|all that|both|the noise|the sound|the trouble|the problem|the issue)"; // prettier-ignore
const HOW = '(?:now|all|completely|totally|just|already|finally|thankfully|again|since|today|at last|for good|by itself|by themselves|on its own|altogether|entirely|well and truly|long)'; // prettier-ignore
const IS = "(?:'s|is|are|'re|was|seems|seem|seems to be|seem to be|appears to be|has been|have been|has|have|'ve|got|has now|have now)"; // prettier-ignore
const NO_MORE = '(?: now| any more| anymore| at all| these days| since| since then| again| today)';
/** All that a clause says which ends what the clause before named. */
const ENDS = new RegExp(
  `^(?:(?:and|but|now|though|yet|so|then|well) )*(?:${[
    `(?:${WHO} )?(?:${IS} )?(?:${HOW} )*(?:gone|gone away|away|history|no more|cured|sorted|sorted out|fixed|solved|resolved|cleared|cleared up|past|a thing of the past|disappeared|vanished|subsided)(?: ${HOW})*`,
    `(?:(?:that|this|which|those|these|the noise|the sound) |(?:${WHO} )?(?:has|have|'ve|seems to have) )(?:${HOW} )*(?:stopped|ceased|quit)(?: ${HOW})*`,
    `${WHO} (?:'s|is|are) (?:all |now )?over(?: now| with)?`,
    `(?:${WHO} )?(?:(?:'s|is|are) (?:no longer|not)|isn't|aren't|ain't|'s no longer|wasn't) (?:there|so|the case|like that|happening|a problem|an issue|true)${NO_MORE}*`,
    `(?:${WHO} )?(?:doesn't|does not|don't|do not|didn't|hasn't|has not|haven't|isn't|is not|ain't|no longer does|never does)(?: do)?(?: (?:it|that|so))?${NO_MORE}+`,
    `(?:${WHO} )?no longer(?: does)?(?: (?:it|that|so))?(?: now)?`,
    `not(?: any more| anymore| now| since)+`,
    `(?:${WHO} )?(?:went|goes|has gone|have gone) away(?: ${HOW})*`,
  ].join('|')})$`,
  'u',
);
/** Longer clauses say more than that it is over. */
const LONGEST_END = 9;
const saysOver = (scene: Scene): boolean =>
  scene.items.length <= LONGEST_END && !scene.mood.question && ENDS.test(scene.text);

/** "that rattle on #3?", "elm rattle:": names the trouble and tells nothing of it. */
const isTopic = (scene: Scene, trouble: Seen): boolean =>
  scene.verbs.length === 0 &&
  scene.items.every(
    (item, at) =>
      !isFn(item, 'not', 'no', 'be', 'have', 'i', 'we', 'why', 'what', 'how') ||
      item.text === "'s" ||
      at === trouble.at ||
      /^(?:remember|about)/u.test(item.text),
  );
/** Names a trouble that the clause after it says is over. */
export const namesWhatIsOver = (scene: Scene, seen: readonly Seen[], after: Scene | undefined): boolean =>
  seen.length > 0 &&
  after !== undefined &&
  saysOver(after) &&
  seen.every((one) => usedTo(scene.items, one.at) || isTopic(scene, one));
/** The trouble of the clause before, where this one says no more than that it is over. */
function troubleOver(scene: Scene, before: Scene | undefined): Seen | undefined {
  if (!before || !saysOver(scene)) return undefined;
  if (before.mood.negated && !before.mood.question) return undefined;
  const named = symptomsIn(before);
  // "used to grind when homing": what it used to do, not when
  return named.find((one) => usedTo(before.items, one.at)) ?? named[0];
}

/** The rule of a trouble that was mended: what it turned out to be is no new one. */
export const MENDED = 'gone: mended';
/** "fixed the no heat", "no heat fixed": the trouble is what was mended. */
const mends = (scene: Scene, trouble: Seen): boolean =>
  scene.items.some(
    (item, at) =>
      /^(?:(?:has been |have been |been |is |are |was |got |now )*(?:fixed|cured|solved|sorted|sorted out|resolved)|got rid of)$/u.test(item.text) &&
      at !== trouble.at &&
      !isFn(scene.items[at - 1], 'not', 'cant', 'to', 'no', 'until', 'nobody') &&
      scene.items.slice(Math.min(at, trouble.at) + 1, Math.max(at, trouble.at)).every((between) => isFn(between, 'article', 'be', 'now', 'its', 'my', 'this', 'all', 'have') || hasTag(between, 'machine')), // prettier-ignore
  );

/** "cedar is quiet again, no squeak": denied beside what says that all is well again. */
const isQuietAgain = (scene: Scene, trouble: Seen | undefined, before: Scene | undefined): boolean =>
  trouble !== undefined &&
  before !== undefined &&
  before.clause.sentence === scene.clause.sentence &&
  scene.items.length <= 5 &&
  isFn(scene.items[trouble.at - 1], 'no', 'nothing', 'not') &&
  someFn(before, 'again', 'now') &&
  (sensesOf(before.items, 'finding').some((s) => s.code === 'fine') ||
    before.items.some((item) => /^(?:quiet|quieter|silent|smooth|well|normal)$/u.test(item.text)));

/** "the noise from hazel's part fan has stopped": the noise, not the fan. */
function noiseEnds(scene: Scene): Symptom | undefined {
  const at = scene.items.findIndex((item) => isThing(item, 'noise') || item.senses.some((s) => s.tag === 'complaint' && s.code === 'noisy')); // prettier-ignore
  const ends = scene.items.findIndex((item, i) => i > at && isFn(item, 'anymore'));
  if (at < 0 || ends < 0 || scene.mood.negated || !isFn(scene.items[at + 1], 'from', 'of', 'in', 'on', 'at'))
    return undefined;
  const noun = scene.nouns.find(
    (one) => one.at > at && one.at < ends && SYMPTOMS_OF.noisy[one.code] !== undefined,
  );
  return noun === undefined ? undefined : SYMPTOMS_OF.noisy[noun.code];
}

/** "the bearings have gone": worn out, where nothing says that the trouble is on, at or of them. */
const isGonePart = ({ items }: Scene, trouble: number, ends: number): boolean =>
  ends > trouble + 1 &&
  hasTag(items[ends - 1], 'part') &&
  /\b(?:gone|went)$/u.test(items[ends]?.text ?? '') &&
  !items.slice(trouble + 1, ends - 1).some((item) => isFn(item, 'at', 'on', 'in', 'of', 'from', 'with'));

const STRANDS_GONE =
  /\b(?:strings|hairs|whiskers|threads|cobwebs) (?:are|have) (?:all |now )*(?:gone|disappeared|vanished|history)\b/u;
/** "no clicking any more", "the grinding has stopped", "fine now". */
export function readGone(scene: Scene, seen: readonly Seen[], before?: Scene): Draft[] {
  const { mood, items } = scene;
  if (mood.question || mood.conditional || mood.planned || mood.requested || mood.reported || mood.wished)
    return [];
  const over = troubleOver(scene, before);
  if (over) return [draft(scene, { kind: 'gone', symptom: over.symptom }, 'gone: what was named before')];
  const silent = noiseEnds(scene);
  if (silent !== undefined) return [draft(scene, { kind: 'gone', symptom: silent }, 'gone: noise')];
  const quiet = seen[0];
  if (quiet && isQuietAgain(scene, quiet, before))
    return [draft(scene, { kind: 'gone', symptom: quiet.symptom }, 'gone: well again, and none of it')];
  const ceased = mood.negated ? undefined : seen.find((one) => ceasesAt(items, one.at) >= 0);
  if (ceased) return [draft(scene, { kind: 'gone', symptom: ceased.symptom }, 'gone: does it no longer')];
  if (STRANDS_GONE.test(scene.text) && !mood.negated)
    return [draft(scene, { kind: 'gone', symptom: 'stringing' }, 'gone: strands')];
  // "no squeaking left on alder"
  const left = isFn(items[0], 'no') && isFn(items[2], 'left') ? seen.find((one) => one.at === 1) : undefined;
  if (left) return [draft(scene, { kind: 'gone', symptom: left.symptom }, 'gone: none left')];
  const again = doesAgain(scene);
  if (again !== undefined) return [draft(scene, { kind: 'gone', symptom: again }, 'gone: does it again')];
  if (sticksUnsaid(scene)) return [askWhatSticks(scene)];
  const mended = mood.negated ? undefined : seen.find((one) => mends(scene, one));
  if (mended) return [draft(scene, { kind: 'gone', symptom: mended.symptom }, MENDED)];
  const stopped = items.some(
    (item, i) =>
      isFn(item, 'anymore') || (item.text === 'stopped' && i > 0) || item.text.startsWith('no longer'),
  );
  const denied =
    items.some((item) => isFn(item, 'no') || isFn(item, 'not') || isFn(item, 'nothing')) &&
    (items.some(
      (item) => isFn(item, 'anymore', 'now', 'since') || /^(?:more|since|further)$/u.test(item.text),
    ) ||
      items.some((item) => /^no more$|^no longer$/u.test(item.text)));
  if (seen.some((one) => DENIAL.test(items[one.at]?.text ?? ''))) return [];
  if (lastsStill(items)) return [];
  // "adhesion has gone to hell"
  if (/\b(?:gone|went|going) (?:to|bad|wrong|downhill|crazy|haywire|mad|up|down|through)\b/u.test(scene.text))
    return [];
  const trouble = seen.find((one) => !isFn(items[one.at], 'anymore')) ?? seen[0];
  const ends = items.findLastIndex((item) => isFn(item, 'anymore'));
  if (trouble && isGonePart(scene, trouble.at, ends)) return [];
  if (trouble && isOver(scene, trouble.at))
    return [draft(scene, { kind: 'gone', symptom: trouble.symptom }, 'gone: is over')];
  const led =
    ends < 0 ||
    denied ||
    (trouble !== undefined && trouble.at < ends) ||
    /^(?:no |free|rid|cured|fixed|solved|not|any|hasn't)/u.test(items[ends]?.text ?? '');
  if (trouble && led && (stopped || denied) && !(mood.negated && stopped && !denied))
    return [draft(scene, { kind: 'gone', symptom: trouble.symptom }, 'gone: symptom x stopped')];
  return [];
}

/** "fine now", "all good again", "that fixed it", "it runs fine now": after a trouble or its repair. */
export function saysFine(scene: Scene): boolean {
  const { mood } = scene;
  if (
    mood.question ||
    mood.negated ||
    mood.conditional ||
    mood.planned ||
    mood.wished ||
    mood.requested ||
    symptomsIn(scene).length > 0
  )
    return false;
  const text = textOf(scene);
  if (
    /\b(?:that|this|which) (?:fixed|cured|sorted|did|solved|has fixed|seems to have fixed) (?:it|the trick|that)\b|\bdid the trick\b|\b(?:problem|fault|trouble|issue|noise) (?:is |has |was |seems )?(?:now |all )?(?:solved|gone|cured|fixed|over|sorted|disappeared|away)\b|^(?:and |it 's |is |all |now )*(?:silent|quiet|smooth|steady)(?: now| again| since)+$/u.test(
      text,
    )
  )
    return true;
  const fine =
    sensesOf(scene.items, 'finding').some((s) => s.code === 'fine') ||
    sensesOf(scene.items, 'state').some(
      (s) => s.code === 'up' && /\b(?:fine|ok|good|happy|again)\b/u.test(text),
    );
  return (
    (fine && scene.items.some((item) => isFn(item, 'now', 'again', 'since'))) ||
    flowsAgain(scene) ||
    RUNS_WELL.test(text) ||
    (fine && /^after (?:that|this) it\b|\b(?:since|ever since)\b/u.test(text)) ||
    (fine && scene.clause.joint === 'next' && someFn(scene, 'it')) ||
    /^(?:all )?(?:good|fine|ok|sorted|happy) (?:now|again)$/u.test(text) ||
    (fine && /\bsince\b|\bagain\b/u.test(text)) ||
    (fine &&
      // "it is still holding"
      !someFn(scene, 'still') &&
      scene.verbs.some(
        (verb) => ['print', 'run', 'work'].includes(verb.code) && (verb.form === 's' || verb.form === 'ing'),
      ))
  );
}
/** "running sweet", "prints like a dream". */
const RUNS_WELL =
  /^(?:(?:and|now|it|she|he|it 's|'s|is|all) )*(?:running|runs|printing|prints|working|works|flowing|flows|feeding) (?:sweet|sweetly|lovely|beautifully|perfectly|a treat|like a dream|like new|well|nicely|great|smooth|smoothly|fine)(?: now| again| since)*$/u;
/** "flows since 04:35", "feeding again": what a jam had stopped. */
const flowsAgain = (scene: Scene): boolean =>
  scene.items.some((item) =>
    /^(?:flows?|flowing|feeds|feeding|extrudes|extruding|pushes|prints|runs)$/u.test(item.text),
  ) &&
  someFn(scene, 'since', 'again', 'now') &&
  scene.items.length <= 5 &&
  scene.verbs.every((verb) => !verb.deed);
