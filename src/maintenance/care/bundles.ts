/** Happenings that raise several tasks at once; they are told as one bundle, in this order. */
import type { Task } from '../codes.ts';

/** What a crash can have shaken loose: leads first, then what carries the head, then where it stands. */
export const AFTER_A_CRASH: readonly Task[] = [
  'check-wiring', 'check-heater', 'check-nozzle', 'check-probe', 'check-wheels', 'tighten-pulleys',
  'square-gantry', 'level-bed', 'check-first-layer',
]; // prettier-ignore

/** What a machine needs that stood still for a month. */
export const AFTER_STANDING: readonly Task[] = [
  'dust-off', 'check-wheels', 'lubricate-rods', 'wipe-rods', 'lubricate-rails', 'grease-screw',
  'grease-ball-screw', 'check-first-layer',
]; // prettier-ignore

/** What the run-in stands for: done with it, they count as done. */
export const RUN_IN_PARTS: readonly Task[] = [
  'check-wiring', 'check-heater', 'tighten-pulleys', 'check-fasteners', 'check-wheels', 'tension-belts',
  'level-bed',
]; // prettier-ignore

export type BundleName = 'crash' | 'standing';
export const BUNDLES: Readonly<Record<BundleName, readonly Task[]>> = {
  crash: AFTER_A_CRASH,
  standing: AFTER_STANDING,
};
