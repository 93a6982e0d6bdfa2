/** What is said of a run or a load in the clauses after it. */
import type { Material } from '../maintenance/codes.ts';
import { hasTag, isFn } from './item.ts';
import type { Placed } from './placed.ts';
import type { Scene } from './scene.ts';

/** Two figures of one run, in neighbouring clauses: one in hours, the other in filament. */
export function oneRun(last: Placed, one: Placed): Placed | undefined {
  const [a, b] = [last.act, one.act];
  if (a.kind !== 'usage' || b.kind !== 'usage' || a.machine !== b.machine || a.on !== b.on) return undefined;
  const close = one.draft.clause - last.draft.clause;
  if (close < 0 || close > 1) return undefined;
  const filament = (act: typeof a): boolean => act.grams !== undefined || act.metres !== undefined;
  const apart =
    (a.hours !== undefined && !filament(a) && b.hours === undefined) ||
    (b.hours !== undefined && !filament(b) && a.hours === undefined);
  if (!apart || (a.material !== undefined && b.material !== undefined && a.material !== b.material))
    return undefined;
  return { ...last, act: { ...b, ...a }, trail: [...last.trail, ...one.trail] };
}

/** How far after a run its material may stand. */
const REACH = 8;
/** A clause that names a material and nothing else that is known: "all pla", "white pla as usual". */
const isMaterialAlone = (scene: Scene): boolean =>
  scene.materials.length === 1 &&
  scene.items.filter((item) => !hasTag(item, 'fn', 'unit')).length <= 4 &&
  scene.items.length <= 10 &&
  scene.values.length === 0 &&
  scene.nouns.every((noun) => noun.code === 'filament') &&
  !scene.mood.question &&
  !scene.mood.negated &&
  !scene.items.some((item) => hasTag(item, 'machine', 'symptom', 'complaint', 'state')) &&
  scene.verbs.every((verb) => !verb.deed);
const ofAll = (scene: Scene): boolean =>
  scene.items.some((item) => isFn(item, 'all', 'both', 'each', 'every', 'they', 'throughout', 'only'));

/** Looked up clause by clause, so that a long log stays linear. */
export function byClause(placed: readonly Placed[]): ReadonlyMap<number, readonly Placed[]> {
  const found = new Map<number, Placed[]>();
  for (const one of placed) {
    const known = found.get(one.draft.clause);
    if (known) known.push(one);
    else found.set(one.draft.clause, [one]);
  }
  return found;
}

export function materialAfter(
  placed: ReadonlyMap<number, readonly Placed[]>,
  scenes: readonly Scene[],
  clause: number,
): Material | undefined {
  for (let i = clause + 1; i < Math.min(scenes.length, clause + REACH); i += 1) {
    const scene = scenes[i];
    if (!scene) return undefined;
    if (isMaterialAlone(scene) && !placed.has(i))
      return i === clause + 1 || ofAll(scene) || scene.items.some((item) => hasTag(item, 'unit'))
        ? scene.materials[0]
        : undefined;
    const others = placed.get(i) ?? [];
    if (others.some((one) => one.act.kind !== 'usage' || one.act.material !== undefined)) return undefined;
  }
  return undefined;
}

const isNameAndMaterial = (scene: Scene): boolean =>
  scene.items.every((item) => hasTag(item, 'machine', 'material'));
/** "petg: hazel 430 g, birch 95 g": a material before the colon is of the whole row. */
export function materialHead(scenes: readonly Scene[], clause: number): Material | undefined {
  const sentence = scenes[clause]?.clause.sentence;
  const at = scenes.findIndex((scene) => scene.clause.sentence === sentence);
  const head = scenes[at];
  return head &&
    at < clause &&
    scenes[at + 1]?.clause.joint === 'colon' &&
    (isMaterialAlone(head) || isNameAndMaterial(head)) &&
    head.items.length <= 3
    ? head.materials[0]
    : undefined;
}

export function weightAfter(
  placed: readonly Placed[],
  scenes: readonly Scene[],
  clause: number,
): number | undefined {
  for (const scene of scenes.slice(clause + 1, clause + 3)) {
    if (placed.some((one) => one.draft.clause === scene.index && one.act.kind !== 'usage')) return undefined;
    const grams = scene.values.find((value) => value.code === 'grams')?.value;
    const ofSpool =
      scene.nouns.every((noun) => noun.code === 'spool' || noun.code === 'filament') &&
      !scene.items.some((item) => hasTag(item, 'machine'));
    if (grams !== undefined)
      return ofSpool && !placed.some((one) => one.draft.clause === scene.index) ? grams : undefined;
  }
  return undefined;
}
