/** What the speaker takes back or puts right of what was logged before. */
import type { AmendAct } from '../../act.ts';
import type { LocalDate } from '../../act.ts';
import { isPart, type Reason } from '../../../maintenance/codes.ts';
import { hasTag, isFn, isVerb, type Item, sense, sensesOf } from '../../item.ts';
import { type Draft, draft, hasMachine, objects, type Scene, someFn, textOf } from '../../scene.ts';
import { partOf } from './parts-said.ts';
import { tasksNamed } from './tasks.ts';
import { symptomsIn } from './symptom.ts';

const WHAT_WAS_SAID =
  /\b(?:that|this|it|last|previous|entry|log|message|one|those|them|my|what i|everything|above)\b/u;
const UNDO =
  /^(?:undo|revert|cancel|scratch|scrap|delete|strike|forget|ignore|take back|disregard|remove|erase|unlog|retract|roll back|withdraw|rub out|void|discard|un log|un do|annul|rescind|unrecord|back out|take|drop|nix|scrub|kill|wipe|strike that|undone|bin)\b/u;

/** "take that back", "undo", "delete my last entry", "undo the nozzle swap". */
export function readUndo(scene: Scene): Draft[] {
  const { items, mood } = scene;
  if ((mood.question && !mood.requested) || mood.conditional || mood.reported) return [];
  const text = textOf(scene);
  const first = items.findIndex(
    (item) =>
      !isFn(item, 'please', 'sorry', 'no', 'now', 'not', 'just', 'thanks') &&
      item.text !== 'fettle' &&
      !hasTag(item, 'joint') &&
      !isFn(item, 'you', 'wrong'),
  );
  const verb = items[first];
  const bare =
    items.length - first <= 1 && /^(?:undo|revert|scratch|strike that|unlog)$/u.test(verb?.text ?? '');
  const known = items
    .slice(first + 1)
    .every((item) => item.senses.length > 0 && !isFn(item, 'my', 'you') && !hasTag(item, 'foreign'));
  const takes =
    verb !== undefined &&
    UNDO.test(verb.text) &&
    (WHAT_WAS_SAID.test(text) || (known && /^(?:undo|unlog|un do|un log|revert|retract)/u.test(verb.text)));
  const backs =
    /\btake (?:that|it|this|them|my last|the last)\b.*\bback\b|\btake back\b|\bnever mind (?:that|my|the) (?:last|log|entry)\b|\b(?:that|it|this) (?:never happened|did n't happen|didn't happen|was a mistake|was wrong|was a test|was just a test)\b|\bscratch that\b|\bstrike that\b|\bforget (?:that|it|i said|what i)\b|\bi take it back\b|\bwrong channel\b|\bgot that wrong\b|\bignore (?:that|my last|the last|me)\b|\b(?:last one|that last one|that) was (?:rubbish|nonsense|bogus|a mistake|an error|by mistake|wrong)\b|\bdid ?n't actually (?:do|happen)\b|\bdidn't actually\b/u.test(
      text,
    );
  if (!(bare || takes || backs) || amendable(scene)) return [];
  const part = objects(scene)
    .map((noun) => partOf(scene, noun))
    .find((one) => one !== undefined);
  const task = tasksNamed(scene, (one) => one.code !== 'did').find(() => true)?.task;
  const named =
    part !== undefined && !(task !== undefined && !hasSwapWord(scene))
      ? { part }
      : task === undefined
        ? {}
        : { task };
  return [draft(scene, { kind: 'undo', ...named }, 'undo')];
}
const hasSwapWord = (scene: Scene): boolean => scene.verbs.some((verb) => verb.code === 'swap');
const amendable = (scene: Scene): boolean =>
  scene.values.some((v) => ['hours', 'grams', 'metres'].includes(v.code)) &&
  someFn(scene, 'sorry') &&
  /\bmake\b|\bshould\b/u.test(textOf(scene));

/** What is named as the right thing: after "not X but", before "not X". */
function rightSide(items: readonly Item[]): readonly Item[] {
  const not = items.findIndex(
    (item, i) =>
      i > 0 &&
      (isFn(item, 'not') || /^(?:instead of|rather than|not)$/u.test(item.text)) &&
      !isFn(items[i - 1], 'be', 'do'),
  );
  if (
    not > 0 &&
    items.slice(0, not).some((item) => hasTag(item, 'machine', 'value', 'material', 'part', 'date', 'reason'))
  )
    return items.slice(0, not);
  return items;
}

function fields(scene: Scene, items: readonly Item[], today: LocalDate): Omit<AmendAct, 'kind'> {
  const machines = sensesOf(items, 'machine').map((s) => s.code);
  const values = sensesOf(items, 'value').filter((v) => v.code !== 'other' && v.code !== 'range');
  const value = values.at(-1);
  const material = sensesOf(items, 'material').at(-1)?.code;
  const day = sensesOf(items, 'date').at(-1);
  const reason = sensesOf(items, 'reason').at(-1)?.code ?? reasonWord(items);
  const part = sensesOf(items, 'part')
    .filter((s) => !s.weak || !value)
    .at(-1)?.code;
  const machine = machines.at(-1);
  const symptom =
    part === undefined && reason === undefined ? symptomsIn({ ...scene, items })[0]?.symptom : undefined;
  return {
    ...(machine === undefined ? {} : { machine }),
    ...(value === undefined ? {} : amount(value.code, value.value)),
    ...(material === undefined ? {} : { material }),
    ...(part === undefined
      ? {}
      : {
          part:
            scene.nouns.length > 0
              ? (partOf(
                  scene,
                  scene.nouns.find((n) => n.part === part) ?? { code: part, part, weak: false, at: 0 },
                ) ?? part)
              : part,
        }),
    ...(reason === undefined ? {} : { reason }),
    ...(symptom === undefined ? {} : { symptom }),
    ...(day === undefined || day.vague ? {} : { on: day.past <= today ? day.past : day.future }),
  };
}
function amount(code: string, value: number): Partial<Omit<AmendAct, 'kind'>> {
  if (code === 'hours' || code === 'clock') return { hours: value };
  if (code === 'grams') return { grams: value };
  if (code === 'metres') return { metres: value };
  if (code === 'days') return { days: value };
  return { value };
}
const reasonWord = (items: readonly Item[]): Reason | undefined => {
  const text = items.map((item) => item.text).join(' ');
  if (/\b(?:worn|worn out|wear)\b/u.test(text)) return 'worn';
  return /\b(?:broken|snapped|broke)\b/u.test(text) ? 'broken' : undefined;
};

const CORRECTS =
  /^(?:no |nope |oh |oops |sorry |err |er |wait |hang on |hold on )*(?:make (?:that|it)|i (?:'m )?mean[t]?|meant|correction|typo|should (?:be|read|say|have been)|that should|actually|rather|change (?:that|it|the)|amend|correct|fix|my bad|my mistake|mistake|wrong|oops|sorry|edit)\b/u;
const POINTS_BACK =
  /\b(?:that|it|last one|last entry|last log|my last|that last|previous|the last|last|those|entry)\b/u;

/** "make that 12 h", "that was maple, not alder", "typo in my last one, should read 640 g". */
export function readAmend(
  scene: Scene,
  before: Scene | undefined,
  after: Scene | undefined,
  today: LocalDate,
): Draft[] {
  const { mood } = scene;
  if ((mood.question && !mood.requested) || mood.conditional || mood.reported) return [];
  const text = textOf(scene);
  if (isContrast(scene) || /^i make it\b/u.test(text)) return [];
  const opened =
    CORRECTS.test(text) ||
    (scene.items.some(
      (item) => isFn(item, 'sorry') && !(item.text.startsWith('should') && hasTag(scene.items[0], 'machine')),
    ) &&
      !mood.planned);
  const wasNot =
    /\b(?:that|it|this|last one|those|entry|last|log)\b.* (?:was|were|is|'s) (?:actually |really |for |on |only )*/u.test(
      text,
    ) &&
    (hasContrast(scene, after) ||
      someFn(scene, 'wrong') ||
      /\b(?:last one|my last|last entry|last log|that last|previous)\b/u.test(text) ||
      /\bactually\b|\bonly\b/u.test(text));
  const led =
    before !== undefined &&
    before.items.every(
      (item) =>
        isFn(item, 'sorry', 'wrong', 'no', 'not', 'my', 'in', 'article') ||
        hasTag(item, 'thing', 'machine') ||
        isVerb(item, 'amend'),
    ) &&
    before.items.some((item) => isFn(item, 'sorry', 'wrong')) &&
    (hasContrast(scene, after) || POINTS_BACK.test(text) || scene.values.length > 0 || hasMachine(scene));
  const curt =
    before !== undefined &&
    scene.items.length <= 4 &&
    scene.items.every(
      (item) =>
        hasTag(item, 'machine', 'value', 'date', 'part', 'material', 'number') ||
        isFn(item, 'article', 'on', 'for', 'at', 'its'),
    ) &&
    ((before.items.length === 1 && isFn(before.items[0], 'no')) || isContrast(before));
  if (!opened && !wasNot && !led && !curt) return [];
  const deed = scene.verbs.some(
    (verb) =>
      verb.deed &&
      [
        'swap',
        'clean',
        'oil',
        'tighten',
        'tension',
        'clear',
        'trim',
        'look',
        'install',
        'dry',
        'update',
      ].includes(verb.code),
  );
  if (deed && mood.negated && !hasContrast(scene, after)) return [];
  if (deed && !/\bmeant\b|\bmean\b|\bshould\b|\bnot\b/u.test(text)) return [];
  const items = rightSide(scene.items);
  const set = fields(scene, items, today);
  if (Object.keys(set).length === 0) return [];
  if (
    !opened &&
    !led &&
    !curt &&
    scene.nouns.length > 0 &&
    set.machine === undefined &&
    scene.values.length === 0 &&
    set.material === undefined
  )
    return [];
  if (
    opened &&
    !strong(text) &&
    !POINTS_BACK.test(text) &&
    !hasContrast(scene, after) &&
    before === undefined &&
    scene.verbs.length > 0
  )
    return [];
  return [draft(scene, { kind: 'amend', ...set }, 'amend')];
}
const strong = (text: string): boolean =>
  /\b(?:make (?:that|it)|meant?|correction|typo|should|change (?:that|it)|amend|correct)\b/u.test(text);
/** "…, not alder": in this clause or at the head of the next. */
function hasContrast(scene: Scene, after: Scene | undefined): boolean {
  if (
    scene.items.some(
      (item, i) =>
        i > 0 &&
        (isFn(item, 'not') || /^(?:instead of|rather than)$/u.test(item.text)) &&
        // "did not change the nozzle" denies a deed; it sets nothing against another
        !isFn(scene.items[i - 1], 'do', 'have') &&
        scene.items.slice(i + 1).some((one) => hasTag(one, 'machine', 'value', 'part', 'material', 'date')),
    )
  )
    return true;
  const head = after?.items[0];
  return isFn(head, 'not') && (after?.items.length ?? 9) <= 4;
}
export const isContrast = (scene: Scene): boolean =>
  isFn(scene.items[0], 'not') &&
  scene.items.length <= 4 &&
  scene.items
    .slice(1)
    .every(
      (item) =>
        hasTag(item, 'machine', 'value', 'part', 'material', 'date', 'number') ||
        isFn(item, 'article', 'on', 'for'),
    );
export const amendsPart = (code: string): boolean => isPart(code);
export const saidSense = (item: Item | undefined): number | undefined => sense(item, 'value')?.value;
