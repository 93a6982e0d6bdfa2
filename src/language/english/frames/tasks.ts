/** Which tasks a clause names: each verb class with the nouns that stand to it. */
import type { Task } from '../../../maintenance/codes.ts';
import { replaceTask } from '../../../maintenance/codes.ts';
import { isFn, isThing } from '../../item.ts';
import { hasMachine, type NounAt, objects, type Scene, type VerbAt } from '../../scene.ts';
import type { VerbClass } from '../../senses.ts';
import { partOf, standsAlone } from './parts-said.ts';
import { TASK_ALONE, TASKS_OF } from './task-table.ts';

export interface Named {
  task: Task;
  noun?: NounAt;
  verb?: VerbClass;
}

/** Things that only say where or what kind: they count when nothing better stands there. */
const FALLBACK = new Set<string>([
  'dust',
  'machine',
  'gunk',
  'plastic',
  'debris',
  'hot-end',
  'frame',
  'floor',
  'feeder',
  'bed',
  'z-axis',
  'glue',
  'x-axis',
  'y-axis',
  'print',
  'carriage',
  'gantry',
  'corner',
  'paper',
  'play',
  'crack',
  'plug',
  'temperature',
  'fastener',
  'enclosure',
  'filament',
  'spool',
]);
/** Of several classes that one word may be, the more particular one first. */
const ORDER: readonly VerbClass[] = [
  'runin',
  'pull',
  'tension',
  'level',
  'square',
  'dry',
  'update',
  'save',
  'trim',
  'calibrate',
  'oil',
  'dust',
  'clear',
  'tighten',
  'adjust',
  'wipe',
  'clean',
  'test',
  'look',
  'work',
  'did',
  'run',
  'print',
  'make',
  'install',
  'put',
  'get',
  'read',
];

function row(verb: VerbClass, nouns: readonly NounAt[]): Named[] {
  const table = TASKS_OF[verb];
  if (!table) return [];
  const hits = nouns.flatMap((noun): Named[] => {
    const task = table[noun.code];
    return task === undefined ? [] : [{ task, noun, verb }];
  });
  const firm = hits.filter(({ noun }) => noun && !FALLBACK.has(noun.code));
  const chosen = firm.length > 0 ? firm : hits.slice(0, 1);
  return chosen.filter((hit, i) => chosen.findIndex((other) => other.task === hit.task) === i);
}

/** For the verbs that qualify, in order of particularity; the first class that names a task wins at each place. */
export function tasksNamed(scene: Scene, use: (verb: VerbAt) => boolean): Named[] {
  const nouns = objects(scene);
  const places = new Map<number, VerbClass[]>();
  for (const verb of scene.verbs)
    if (use(verb)) places.set(verb.at, [...(places.get(verb.at) ?? []), verb.code]);
  const found: Named[] = [];
  const spots = [...places.keys()];
  for (const at of spots) {
    const codes = places.get(at) ?? [];
    const next = spots.find((other) => other > at && nouns.some((noun) => noun.at > at && noun.at < other));
    const after = nouns.filter((noun) => noun.at > at && (next === undefined || noun.at < next));
    const before = nouns.filter((noun) => noun.at < at && !found.some((hit) => hit.noun?.at === noun.at));
    const same = nouns.filter((noun) => noun.at === at);
    const loose = scene.nouns.filter((noun) => !isFn(scene.items[noun.at - 1], 'with', 'by'));
    const telling = after.every((noun) => FALLBACK.has(noun.code))
      ? before.filter((noun) => !FALLBACK.has(noun.code))
      : [];
    const hits = firstHits(codes, [telling, after, before, [...before, ...after, ...same], loose]);
    found.push(...(hits.length > 0 ? hits : alone(codes, scene)));
  }
  return tidy(found, scene);
}

function firstHits(codes: readonly VerbClass[], sets: readonly (readonly NounAt[])[]): Named[] {
  for (const nouns of sets)
    for (const code of ORDER) {
      const hits = codes.includes(code) ? row(code, nouns) : [];
      if (hits.length > 0) return hits;
    }
  return [];
}
function alone(codes: readonly VerbClass[], scene: Scene): Named[] {
  if (codes.includes('dry') && scene.materials.length > 0) return [{ task: 'dry-filament', verb: 'dry' }];
  if (
    codes.includes('clear') &&
    scene.items.some((item) => /^(?:un|de) ?(?:jam|clog|block)/u.test(item.text))
  )
    return [{ task: 'clear-jam', verb: 'clear' }];
  // "oiled alder": the rods; grease may be of the screw or of the rails
  if (codes.includes('oil') && hasMachine(scene) && scene.nouns.length === 0 && scene.items.length <= 4 && /\b(?:re ?)?oiled\b/u.test(scene.text)) return [{ task: 'lubricate-rods', verb: 'oil' }]; // prettier-ignore
  if (codes.includes('update') && hasMachine(scene) && /\b(?:re ?)?flash(?:ed)?\b/u.test(scene.text))
    return [{ task: 'update-firmware', verb: 'update' }];
  if (codes.includes('calibrate') && scene.items.some((item) => /^(?:pid|auto ?tune)/u.test(item.text)))
    return [{ task: 'tune-temperature', verb: 'calibrate' }];
  if (codes.includes('clean') && hasMachine(scene) && /\bbrush\b/u.test(scene.text))
    return [{ task: 'dust-off', verb: 'dust' }];
  if (
    codes.includes('clean') &&
    hasMachine(scene) &&
    /\b(?:bottom|base|floor|drip tray)\b|^(?:i |just )?swept\b/u.test(scene.text)
  )
    return [{ task: 'clear-debris', verb: 'clean' }];
  if (codes.includes('dust') && scene.nouns.length > 0 && !hasMachine(scene)) return [];
  if (codes.includes('tighten') && roundTheMachine(scene))
    return [{ task: 'check-fasteners', verb: 'tighten' }];
  for (const code of ORDER) {
    const task = codes.includes(code) ? TASK_ALONE[code] : undefined;
    if (task !== undefined) return [{ task, verb: code }];
  }
  return [];
}

/** "tightened everything on juniper", "went over maple with an allen key": no part is named, so it is every screw. */
const roundTheMachine = (scene: Scene): boolean =>
  hasMachine(scene) &&
  scene.items.some((item) => isFn(item, 'all') || /^(?:spanner|allen key|hex key|wrench)/u.test(item.text));

/** Wiped and oiled is oiled; cleaned and checked the same part are two. */
function tidy(found: readonly Named[], scene: Scene): Named[] {
  const has = (task: Task): boolean => found.some((hit) => hit.task === task);
  const ball = scene.items.some((item) => isThing(item, 'ball-screw'));
  return found
    .map((hit) =>
      ball && hit.task === 'grease-screw' ? { ...hit, task: 'grease-ball-screw' as const } : hit,
    )
    .filter((hit, i, all) => all.findIndex((other) => other.task === hit.task) === i)
    .filter(
      (hit) =>
        !(hit.task === 'wipe-rods' && has('lubricate-rods')) &&
        !(hit.task === 'clean-screw' && (has('grease-screw') || has('grease-ball-screw'))),
    );
}

/** A task named without a deed: "the belt check", "birch's tube trim", "the nozzle". */
export function taskPlanned(scene: Scene): Named[] {
  const swaps = scene.verbs.some(
    (verb) =>
      verb.code === 'swap' || verb.code === 'install' || (verb.code === 'fit' && verb.form !== 'both'),
  );
  const nouns = objects(scene).filter(standsAlone);
  // "birch's new build plate: pushed back"
  const anew = nouns.some(
    (noun) => noun.part !== undefined && noun.at > 0 && isFn(scene.items[noun.at - 1], 'new'),
  );
  if (swaps || (anew && scene.verbs.every((verb) => verb.code === 'put-off' || !verb.deed)))
    return nouns.flatMap((noun) => planSwap(scene, noun));
  const named = tasksNamed(scene, (verb) => verb.code !== 'did' && verb.code !== 'work');
  if (named.length > 0) return named;
  const done = nouns.flatMap((noun): Named[] => {
    const task = TASKS_OF.did?.[noun.code];
    return task === undefined ? planSwap(scene, noun) : [{ task, noun }];
  });
  return done.slice(0, 4);
}
function planSwap(scene: Scene, noun: NounAt): Named[] {
  const part = partOf(scene, noun);
  return part === undefined ? [] : [{ task: replaceTask(part), noun }];
}
