/** Nozzle, liner, heater and what keeps the cold end cold. */
import { always, isLined, softNozzle, when } from './builds.ts';
import { ABRASIVE, HOT_FOR_PTFE } from './materials.ts';
import { rule } from './rule.ts';
import type { Rule, RuleFacts, Term } from './rule.ts';
import { SECOND_JAM, days, foundBad, grams, hours, runDays, seen, seenAs, swapped, wornBy } from './words.ts';

/** A brass bore is worth a look twice as early: heavy wear was reported after 250 g (reference R-O1, secondary). */
const nozzleLook = ({ nozzle }: RuleFacts): readonly Term[] => [
  runDays(30),
  grams(softNozzle(nozzle.material) ? 250 : 500, ABRASIVE),
];

export const HOT_END: readonly Rule[] = [
  rule({
    task: 'check-nozzle',
    part: 'nozzle',
    applies: always,
    every: nozzleLook,
    faster: { while: ABRASIVE, every: [days(7)] },
    raisedBy: seen('rough-surface', 'scratched-plate', 'crash', 'blobs'),
    remedies: ['replace-nozzle'],
    class: 'print quality',
    minutes: 5,
    opening: 'cold-unplugged',
    note: 'Cold, or by mirror.',
  }),
  rule({
    task: 'replace-nozzle',
    part: 'nozzle',
    applies: (build) =>
      build.nozzle?.material === undefined ? { assumed: 'The nozzle is not stated: taken as brass.' } : 'yes',
    every: ({ nozzle }) =>
      softNozzle(nozzle.material) ? [runDays(180), wornBy('nozzle')] : [wornBy('nozzle')],
    raisedBy: [...seen('worn-nozzle', 'nozzle-leak'), ...foundBad('check-nozzle')],
    class: 'print quality',
    minutes: 15,
    spare: 'nozzle',
    opening: 'hot',
    note: 'Hot tightening only for threaded nozzles, as the manual says; one-piece cold.',
  }),
  rule({
    task: 'check-liner',
    part: 'liner',
    applies: (build) => when(isLined(build)),
    raisedBy: [...swapped('nozzle'), { when: SECOND_JAM }, ...seenAs('safety', 'runaway')],
    remedies: ['replace-liner'],
    class: 'print failure',
    minutes: 5,
    opening: 'cold-unplugged',
    note: 'A look at each nozzle change.',
  }),
  rule({
    task: 'replace-liner',
    part: 'liner',
    applies: (build) => when(isLined(build)),
    every: [days(365), hours(500, HOT_FOR_PTFE), wornBy('liner')],
    faster: { while: HOT_FOR_PTFE, every: [days(180)] },
    raisedBy: [...foundBad('check-liner'), ...seenAs('safety', 'runaway')],
    class: 'print failure',
    minutes: 25,
    spare: 'liner',
    opening: 'cold-unplugged',
    note: 'After an over-temperature check the heater first.',
  }),
  rule({
    task: 'check-heater',
    applies: always,
    every: [days(90), hours(500)],
    raisedBy: [
      ...swapped('nozzle', 'heat-break', 'liner', 'heater', 'thermistor', 'sock'),
      ...seen('nozzle-leak', 'temperature-swing', 'crash', 'runaway'),
    ],
    mendedBy: ['heater', 'thermistor'],
    class: 'safety',
    minutes: 5,
    opening: 'cold-unplugged',
    note: 'Cartridge and sensor held fast.',
  }),
  rule({
    task: 'check-fans',
    applies: always,
    every: [days(30)],
    raisedBy: [
      { when: { symptom: 'fan-noise', part: 'board-fan' }, class: 'safety' },
      { when: { symptom: 'fan-noise', part: 'power-supply' }, class: 'safety' },
      { when: { symptom: 'fan-stopped', part: 'board-fan' }, class: 'safety' },
      { when: { symptom: 'fan-stopped', part: 'power-supply' }, class: 'safety' },
      ...seen('fan-noise', 'fan-stopped', 'error-shutdown'),
      { when: SECOND_JAM },
    ],
    mendedBy: ['hot-end-fan', 'part-fan', 'board-fan', 'power-supply'],
    class: 'print failure',
    minutes: 3,
    opening: 'powered-hands-clear',
    note: 'The hot-end fan turns whenever it is warm; hands off while it does.',
  }),
  rule({
    task: 'tune-temperature',
    applies: always,
    raisedBy: [
      ...swapped('heater', 'thermistor', 'sock', 'heat-break'),
      { when: { symptom: 'temperature-swing', afterTask: 'check-heater', withinDays: 30 } },
    ],
    class: 'print quality',
    minutes: 10,
    opening: 'powered-hands-clear',
  }),
];
