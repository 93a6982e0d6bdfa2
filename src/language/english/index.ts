/** The ordered lists: frames as they are tried on each clause, each with why it stands where it stands. */
import type { LocalDate } from '../act.ts';
import { isFn } from '../item.ts';
import { asserted, type Draft, draft, type Scene } from '../scene.ts';
import { readAsk } from './ask/index.ts';
import { readClaim, readDefer } from './frames/plans.ts';
import { readDone } from './frames/done.ts';
import { namesWhatIsOver, readGone, saysFine } from './frames/gone.ts';
import { readState } from './frames/state.ts';
import { readHappening } from './frames/happening.ts';
import { readLoad, readMeter, readUsage } from './frames/usage.ts';
import { isLogHead } from './frames/usage-figures.ts';
import { readStock } from './frames/stock.ts';
import { readSwap } from './frames/swap.ts';
import { type Seen, symptomDrafts, symptomsIn } from './frames/symptom.ts';
import { isMadeToSound } from './frames/symptom-made.ts';
import { readTripped } from './frames/tripped.ts';

export interface Surroundings {
  readonly today: LocalDate;
  readonly before: Scene | undefined;
  /** The few clauses before, the nearest last. */
  readonly earlier: readonly Scene[];
  readonly after: Scene | undefined;
  /** The few clauses after, the nearest first. */
  readonly later: readonly Scene[];
}
export interface Frame {
  readonly name: string;
  readonly why: string;
  read(scene: Scene, seen: readonly Seen[], around: Surroundings): Draft[];
}

/** The first that makes anything of the clause takes it whole. */
export const WHOLE_FRAMES: readonly Frame[] = [
  { name: 'ask', why: 'a question writes nothing, whatever deeds it names', read: (scene, _, { earlier, after, today }) => (headsFigures(scene, after) ? [] : readAsk(scene, earlier, today)) },
  { name: 'defer', why: 'names deeds that are put off', read: (scene, _, { earlier, after, today }) => readDefer(scene, { today, earlier, after }) },
  { name: 'claim', why: 'names deeds to come', read: (scene) => readClaim(scene) },
  { name: 'tripped', why: 'before a power cut, which comes from outside', read: (scene) => readTripped(scene) },
  { name: 'gone', why: 'names a trouble that is over', read: (scene, seen, { before }) => readGone(scene, seen, before) },
]; // prettier-ignore

/** "Consumption on rowan: 41.7 m of tpu": names what follows, and asks nothing. */
const headsFigures = (scene: Scene, after: Scene | undefined): boolean =>
  !scene.clause.asked &&
  after?.clause.joint === 'colon' &&
  after.clause.sentence === scene.clause.sentence &&
  after.values.length > 0 &&
  !scene.items.some((item) => isFn(item, 'what', 'how', 'who', 'when', 'why', 'which'));

/** Each may add to what the clause says, unless one before it barred it. */
export const PART_FRAMES: readonly (Frame & { readonly bars: readonly string[] })[] = [
  { name: 'happening', why: 'a power cut or a move is no trouble of a part', bars: ['state', 'usage'], read: (scene) => readHappening(scene) },
  { name: 'swap', why: 'takes its part, reason and spare with it', bars: ['stock', 'done', 'symptom', 'load', 'state'], read: (scene, _, { before, after }) => readSwap(scene, before, after) },
  { name: 'stock', why: 'parts on a shelf are not parts of a machine', bars: ['done', 'usage', 'meter', 'symptom', 'load', 'state'], read: (scene) => readStock(scene) },
  { name: 'meter', why: 'an absolute figure, before it is taken for hours run', bars: ['usage', 'load', 'state'], read: (scene, _, { earlier }) => readMeter(scene, earlier) },
  { name: 'load', why: 'grams of a spool are not grams run', bars: ['usage', 'done', 'symptom'], read: (scene, _, { before }) => readLoad(scene, before) },
  { name: 'done', why: 'a repair absorbs the fault in its own clause', bars: ['symptom', 'usage', 'state'], read: (scene, _, { earlier }) => readDone(scene, earlier) },
  { name: 'state', why: 'the machine as a whole', bars: ['deadsymptom'], read: (scene, _, { before }) => readState(scene, before) },
  { name: 'symptom', why: 'what is wrong with it', bars: [], read: (scene, seen) => (asserted(scene) || onlyNegated(scene) && !scene.mood.hedged ? symptomDrafts(scene, asserted(scene) ? seen : []) : []) },
  { name: 'usage', why: 'what is left of the figures', bars: [], read: (scene, _, { earlier, later }) => readUsage(scene, earlier, later) },
]; // prettier-ignore
const onlyNegated = ({ mood }: Scene): boolean =>
  mood.negated &&
  !mood.question &&
  !mood.planned &&
  !mood.wished &&
  !mood.conditional &&
  !mood.requested &&
  !mood.reported;

/** A look that found trouble keeps both: the check and what it found. */
const looksAt = (drafts: readonly Draft[]): boolean =>
  drafts.some(({ act }) => act.kind === 'done' && act.finding !== undefined);

const isStruck = ({ items }: Scene): boolean =>
  /^(?:cancel|delete|undo|erase|strike|scratch)$/u.test(items[0]?.text ?? '');

export function interpret(scene: Scene, around: Surroundings): Draft[] {
  if (scene.listing !== undefined) return readStock(scene);
  if (isLogHead(scene, around.after)) return [];
  // "cancel yesterday's jam on elm": an entry, and no new one
  const seen = isStruck(scene) ? [] : symptomsIn(scene);
  if (isMadeToSound(scene, around.after)) return [];
  if (namesWhatIsOver(scene, seen, around.after)) return [];
  for (const frame of WHOLE_FRAMES) {
    const drafts = frame.read(scene, seen, around);
    if (drafts.length > 0) return frame.name === 'gone' ? [...drafts, ...readDone(scene)] : drafts;
  }
  if (scene.mood.question) return [];
  const out: Draft[] = [];
  const barred = new Set<string>();
  for (const frame of PART_FRAMES) {
    if (barred.has(frame.name)) continue;
    const drafts = frame.read(scene, seen, around);
    if (drafts.length === 0) continue;
    out.push(...drafts);
    for (const name of frame.bars) if (!(name === 'symptom' && looksAt(drafts))) barred.add(name);
  }
  return out.length === 0 && saysFine(scene) ? [draft(scene, { kind: 'gone' }, 'gone: fine now')] : out;
}
