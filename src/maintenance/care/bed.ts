/** Bed, plate, probe, first layer. */
import { always, when } from './builds.ts';
import { rule } from './rule.ts';
import type { Rule, RuleFacts, Term } from './rule.ts';
import { BACK_AFTER_A_MONTH, days, doneBefore, foundBad, hours, runDays, seen, swapped } from './words.ts';

const FIRST_LAYER = ['first-layer-close', 'first-layer-far', 'uneven-first-layer', 'crash'] as const;

function levelEvery({ build }: RuleFacts): readonly Term[] {
  if (build.bed !== 'rigid') return [runDays(build.probe ? 14 : 7)];
  return [days(build.probe ? 90 : 30)];
}

export const BED: readonly Rule[] = [
  rule({
    task: 'clean-plate',
    applies: always,
    every: [runDays(7), hours(50)],
    raisedBy: seen('poor-adhesion', 'detached-print'),
    class: 'print quality',
    minutes: 5,
    opening: 'beside',
    note: "Dish soap; alcohol only as the surface's maker allows, plate off and cold; no acetone by default.",
  }),
  rule({
    task: 'check-first-layer',
    applies: always,
    raisedBy: [
      ...swapped('nozzle', 'build-plate', 'probe'),
      ...seen(...FIRST_LAYER, 'moved'),
      ...doneBefore('update-firmware'),
      BACK_AFTER_A_MONTH,
    ],
    class: 'print failure',
    minutes: 10,
    opening: 'hot',
    note: 'Hot tightening only for threaded nozzles, as the manual says.',
  }),
  rule({
    task: 'level-bed',
    applies: (build) =>
      build.bed === undefined ? { assumed: 'The bed is not stated: taken as one on springs.' } : 'yes',
    every: levelEvery,
    raisedBy: seen(...FIRST_LAYER, 'moved'),
    class: (build) => (build.bed === 'rigid' ? 'print quality' : 'print failure'),
    minutes: 10,
    opening: 'hot',
    note: 'Watch the skirt at least once a week on springs.',
  }),
  rule({
    task: 'check-probe',
    part: 'probe',
    applies: (build) => when(build.probe === true),
    every: [days(90)],
    raisedBy: seen('homing-failed', ...FIRST_LAYER),
    remedies: ['replace-probe'],
    class: 'print failure',
    minutes: 5,
    opening: 'powered-hands-clear',
  }),
  rule({
    task: 'check-plate',
    part: 'build-plate',
    applies: always,
    every: [days(90)],
    raisedBy: [
      ...seen('scratched-plate'),
      { when: { symptom: 'poor-adhesion', afterTask: 'clean-plate', withinDays: 7 } },
    ],
    remedies: ['replace-build-plate'],
    class: 'print quality',
    minutes: 2,
    opening: 'beside',
    note: 'Chipped glass is scrap.',
  }),
  rule({
    task: 'replace-build-plate',
    part: 'build-plate',
    applies: always,
    raisedBy: foundBad('check-plate'),
    class: 'print quality',
    minutes: 5,
    spare: 'build-plate',
    opening: 'beside',
  }),
];
