/** Jokes and figures of speech: what was said of a machine, and not meant of it. */
import { FIGURE_WORDS } from './english/words/figures-of-speech.ts';
import { isFn, isVerb } from './item.ts';
import { phraseReader } from './phrases.ts';
import type { Draft, Scene } from './scene.ts';

const figures = phraseReader(FIGURE_WORDS);

/** "is dead to me": only of what is dead or broken; "it makes no sense to me" is plain speech. */
const isToMe = (scene: Scene, from: number): boolean =>
  scene.items[from]?.text === 'to' && !/\b(?:dead|died)$/u.test(scene.items[from - 1]?.text ?? '');
const speaksInFigures = (scene: Scene): boolean =>
  figures(scene.items).some(({ from }) => !isToMe(scene, from) && !isLikeness(scene, from));
/** "bends like a banana": how it looks. */
const isLikeness = (scene: Scene, from: number): boolean =>
  isFn(scene.items[from - 1], 'like') || /\blike\b/u.test(scene.items[from]?.text ?? '');
/** Of the clause, or of the one that goes on with it: "cedar died … of boredom". */
export function isFigurative(scenes: readonly Scene[], at: number): boolean {
  const [scene, next] = [scenes[at], scenes[at + 1]];
  if (!scene) return false;
  if (speaksInFigures(scene)) return true;
  return next !== undefined && next.verbs.length === 0 && next.items.length <= 5 && speaksInFigures(next);
}

const STATES: ReadonlySet<string> = new Set(['down', 'up', 'open', 'close', 'ask']);
const laughs = (scene: Scene | undefined): boolean =>
  scene?.items.some((item) => isFn(item, 'laugh')) ?? false;
/** A laugh takes no trouble back ("jammed again lol"), but what is laughed about is no hold, and no "what if" is an answer's worth. */
export function soberly(drafts: readonly Draft[], scenes: readonly Scene[], at: number): readonly Draft[] {
  const laughed = laughs(scenes[at]) || ((scenes[at + 1]?.items.length ?? 9) <= 2 && laughs(scenes[at + 1]));
  return laughed && !scenes[at]?.items.some((item) => isVerb(item, 'plug'))
    ? drafts.filter(({ act }) => !STATES.has(act.kind))
    : drafts;
}
