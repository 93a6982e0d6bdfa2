/** The filament's way to the hot end: feeder, gear, tube. */
import { always, canTrim, hasTube, isBowden, tubeInHotZone, when } from './builds.ts';
import { ABRASIVE, FILLED_WOOD_OR_SOFT, HOT_FOR_PTFE } from './materials.ts';
import { rule } from './rule.ts';
import type { Rule, RuleFacts } from './rule.ts';
import { days, doneBefore, foundBad, hours, seen, swapped, wornBy } from './words.ts';

export const FEED: readonly Rule[] = [
  rule({
    task: 'clean-feeder',
    applies: always,
    every: [hours(250), days(60)],
    faster: { while: FILLED_WOOD_OR_SOFT, every: [hours(100)] },
    raisedBy: [
      ...seen('no-extrusion', 'ground-filament', 'under-extrusion', 'feeder-clicking'),
      { when: { spoolEnded: ABRASIVE } },
    ],
    class: 'print failure',
    minutes: 10,
    opening: 'cold-unplugged',
    note: 'Unload first, motors off.',
  }),
  rule({
    task: 'check-feeder-gear',
    part: 'feeder-gear',
    applies: always,
    every: [hours(1000), wornBy('feeder-gear')],
    raisedBy: [
      { when: { symptom: 'ground-filament', times: 2, afterTask: 'clean-feeder' } },
      ...seen('worn-gear'),
    ],
    remedies: ['replace-feeder-gear'],
    class: 'print failure',
    minutes: 5,
    opening: 'cold-unplugged',
    note: 'Polished teeth are worn teeth.',
  }),
  rule({
    task: 'calibrate-feeder',
    applies: always,
    raisedBy: [
      ...swapped('feeder-gear', 'motor', 'control-board'),
      ...doneBefore('update-firmware'),
      ...seen('settings-lost', 'over-extrusion'),
    ],
    class: 'print quality',
    minutes: 15,
    opening: 'hot',
    note: 'Never the first answer to under-extrusion.',
  }),
  rule({
    task: 'check-tube',
    part: 'guide-tube',
    applies: (build) => when(hasTube(build)),
    every: ({ build }) => (isBowden(build) ? [days(90), hours(500)] : [days(180)]),
    raisedBy: seen('tube-slipped', 'no-extrusion', 'stringing', 'under-extrusion', 'worn-tube'),
    remedies: ['trim-tube', 'replace-guide-tube'],
    class: 'print failure',
    minutes: 5,
    opening: 'cold-unplugged',
    note: 'Pinched end, bore, browning.',
  }),
  rule({
    task: 'trim-tube',
    part: 'guide-tube',
    applies: (build) => when(isBowden(build)),
    raisedBy: [...seen('tube-slipped'), ...foundBad('check-tube')].map((raise) => ({
      ...raise,
      only: canTrim,
    })),
    class: 'print failure',
    minutes: 10,
    opening: 'cold-unplugged',
    note: '2 to 5 mm; no gap at the nozzle in a lined hot end.',
  }),
  rule({
    task: 'replace-guide-tube',
    part: 'guide-tube',
    applies: (build) => when(hasTube(build)),
    every: [days(365), wornBy('guide-tube')],
    faster: { while: HOT_FOR_PTFE, every: [days(180)], only: tubeInHotZone },
    raisedBy: [
      ...seen('worn-tube'),
      ...[...seen('tube-slipped'), ...foundBad('check-tube')].map((raise) => ({
        ...raise,
        only: (facts: RuleFacts) => !canTrim(facts),
      })),
    ],
    class: 'print failure',
    minutes: 20,
    spare: 'guide-tube',
    opening: 'cold-unplugged',
    note: 'The push-fit too if it bit the tube.',
  }),
];
