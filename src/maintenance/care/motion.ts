/** Guides, belts, pulleys: what carries the axes. */
import { crossed, hasBelts, hasRails, hasRods, hasScrews, hasWheels, when } from './builds.ts';
import { rule } from './rule.ts';
import type { Raise, Rule } from './rule.ts';
import {
  BACK_AFTER_A_MONTH,
  days,
  foundBad,
  hours,
  hoursAfterSwap,
  newOrMoved,
  seen,
  swapped,
} from './words.ts';

const afterMotorWork = (after: number) => hoursAfterSwap(after, 'motor', 'pulley', 'coupler');
const WORN_BELT: readonly Raise[] = [...seen('worn-belt'), ...foundBad('check-belt')];

const replaceBelt = (axis: 'x' | 'y'): Rule =>
  rule({
    task: `replace-${axis}-belt`,
    part: `${axis}-belt`,
    applies: (build) => when(hasBelts(build)),
    every: [days(3 * 365), hours(3000)],
    raisedBy: WORN_BELT,
    class: 'print failure',
    minutes: (build) => (crossed(build) ? 90 : 40),
    spare: `${axis}-belt`,
    opening: 'cold-unplugged',
  });

export const MOTION: readonly Rule[] = [
  rule({
    task: 'lubricate-rods',
    applies: (build) =>
      when(hasRods(build) && (build.rodBearing === 'ball' || build.rodBearing === 'bronze')),
    every: [hours(300), days(180)],
    lookFromHours: 150,
    raisedBy: [...seen('squeak', 'rough-motion'), ...swapped('bearing'), BACK_AFTER_A_MONTH],
    remedies: ['replace-bearing'],
    class: 'print quality',
    minutes: 10,
    opening: 'cold-unplugged',
    note: 'Oil or light grease only if dry. Axes to their minimum, apply, to the maximum, apply again.',
  }),
  rule({
    task: 'wipe-rods',
    applies: (build) => {
      if (!hasRods(build)) return 'no';
      if (build.rodBearing === undefined)
        return { assumed: 'The bearings are not stated: taken as polymer, wiped without lubricant.' };
      return when(build.rodBearing === 'polymer');
    },
    every: [days(90)],
    raisedBy: [...seen('squeak', 'rough-motion'), BACK_AFTER_A_MONTH],
    remedies: ['replace-bearing'],
    class: 'print quality',
    minutes: 5,
    opening: 'cold-unplugged',
    note: 'No lubricant: makers of plastic bushings say dry-running (reference R-O4).',
  }),
  rule({
    task: 'lubricate-rails',
    applies: (build) => when(hasRails(build)),
    every: [hours(300), days(180)],
    raisedBy: [...swapped('rail'), ...seen('squeak', 'rough-motion', 'grinding'), BACK_AFTER_A_MONTH],
    remedies: ['replace-rail'],
    class: 'print quality',
    minutes: 15,
    opening: 'cold-unplugged',
    source: 'manual',
    note: 'Wipe first, do not mix greases.',
  }),
  rule({
    task: 'check-wheels',
    applies: (build) => when(hasWheels(build)),
    every: [days(30), hours(200)],
    once: newOrMoved(20).filter((once) => 'started' in once.after),
    raisedBy: [
      ...seen('layer-shift', 'rough-motion', 'flat-spot', 'ringing', 'rattle', 'squeak', 'crash'),
      BACK_AFTER_A_MONTH,
    ],
    remedies: ['replace-wheel'],
    class: 'print quality',
    minutes: 5,
    opening: 'cold-unplugged',
    note: 'No lubricant. Turns by finger with a little drag; replace on flat spots or when it does not turn smoothly.',
  }),
  rule({
    task: 'tighten-pulleys',
    applies: (build) => when(hasBelts(build) || hasScrews(build)),
    every: [days(90)],
    once: [...newOrMoved(20).filter((once) => 'started' in once.after), ...afterMotorWork(20)],
    raisedBy: seen('layer-shift', 'z-banding', 'ringing', 'rattle', 'homing-failed', 'crash'),
    mendedBy: ['pulley', 'coupler'],
    class: 'print failure',
    minutes: 10,
    opening: 'cold-unplugged',
    note: 'Drive pulleys and screw couplers are the first screws to look at when there is trouble.',
  }),
  rule({
    task: 'tension-belts',
    applies: (build) => when(hasBelts(build)),
    every: [days(90), hours(500)],
    once: hoursAfterSwap(50, 'x-belt', 'y-belt', 'belt'),
    raisedBy: seen('layer-shift', 'ringing', 'belt-slack'),
    class: 'print quality',
    minutes: (build) => (crossed(build) ? 20 : 10),
    opening: 'cold-unplugged',
    note: 'By pitch or gauge where stated; else firm, no sag, carriage free by hand. Crossed belts: both to the same pitch, then check square.',
  }),
  rule({
    task: 'check-belt',
    applies: (build) => when(hasBelts(build)),
    every: [days(180), hours(1000)],
    raisedBy: [...seen('worn-belt', 'crash'), { when: { symptom: 'layer-shift', times: 2, withinDays: 30 } }],
    remedies: ['replace-x-belt', 'replace-y-belt'],
    class: 'print failure',
    minutes: 5,
    opening: 'cold-unplugged',
    note: 'Cracks at the tooth root, fuzz, hard shiny back, slip at its clamps.',
  }),
  replaceBelt('x'),
  replaceBelt('y'),
  rule({
    task: 'check-idlers',
    applies: (build) => when(hasBelts(build)),
    every: [days(180)],
    raisedBy: seen('grinding', 'squeak', 'worn-belt'),
    remedies: ['replace-idler'],
    class: 'print failure',
    minutes: 5,
    opening: 'cold-unplugged',
  }),
  rule({
    task: 'square-gantry',
    applies: (build) => when((build.zScrews ?? 0) >= 2 || crossed(build)),
    every: [days(180)],
    raisedBy: seen('crash', 'moved', 'power-cut', 'uneven-first-layer'),
    class: 'print quality',
    minutes: 10,
    opening: 'cold-unplugged',
  }),
];
