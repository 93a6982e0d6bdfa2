/** The whole machine: dust, debris, screws, printed parts, firmware, the run-in. */
import { always, creepsEarly, hasPrintedParts, when } from './builds.ts';
import { CARBON_OR_GLASS, THIRSTY } from './materials.ts';
import { rule } from './rule.ts';
import type { Rule } from './rule.ts';
import {
  BACK_AFTER_A_MONTH,
  NEW_OR_MOVED,
  days,
  foundBad,
  hoursAfterSwap,
  newOrMoved,
  seen,
} from './words.ts';

/** Fitting one of these is a rebuild: what was screwed anew settles. */
const rebuilt = (after: number) => hoursAfterSwap(after, 'rod', 'rail', 'lead-screw');
const theRunIn = (after: number) => [
  ...NEW_OR_MOVED.map((event) => ({ after: event, hours: after })),
  ...rebuilt(after),
];

export const UPKEEP: readonly Rule[] = [
  rule({
    task: 'run-in',
    applies: always,
    once: [...theRunIn(20), ...theRunIn(50)],
    class: 'safety',
    minutes: 30,
    opening: 'cold-unplugged',
    note: 'One line for wheels, pulleys, fasteners, belts, wiring, heater and bed. Its class is the highest of its parts.',
  }),
  rule({
    task: 'clear-debris',
    oneLine: true,
    applies: always,
    every: [{ trigger: 'runDays', interval: 1, fromNextDay: true }],
    raisedBy: seen('failed-print', 'detached-print'),
    class: 'housekeeping',
    minutes: 2,
    opening: 'beside',
    note: 'Each day after a day with printing.',
  }),
  rule({
    task: 'dust-off',
    applies: always,
    every: [days(30)],
    faster: { while: CARBON_OR_GLASS, every: [days(14)] },
    raisedBy: [...seen('fan-noise', 'fan-stopped', 'error-shutdown'), BACK_AFTER_A_MONTH],
    class: 'print failure',
    minutes: 10,
    opening: 'cold-unplugged',
    note: 'Off and cool; brush and vacuum first, canned air where nothing else reaches, blades held.',
  }),
  rule({
    task: 'check-fasteners',
    applies: always,
    every: [days(90)],
    once: newOrMoved(20),
    raisedBy: seen('rattle', 'ringing', 'loose-fastener', 'crash'),
    mendedBy: ['fastener'],
    class: 'print quality',
    minutes: 15,
    opening: 'cold-unplugged',
  }),
  rule({
    task: 'check-printed-parts',
    applies: (build) => when(hasPrintedParts(build)),
    every: ({ build }) => [days(creepsEarly(build) ? 30 : 90)],
    raisedBy: [
      { when: { symptom: 'deformed-part', part: 'printed-part' }, class: 'safety' },
      ...seen('deformed-part', 'layer-shift', 'uneven-first-layer', 'crash'),
    ],
    remedies: ['replace-printed-part'],
    class: 'print failure',
    minutes: 10,
    opening: 'cold-unplugged',
    note: 'Creep: holders, tensioners, motor and hot-end mounts; a soft part that touches the block is a danger.',
  }),
  rule({
    task: 'check-notices',
    oneLine: true,
    applies: always,
    every: [days(90)],
    raisedBy: [{ when: { symptom: 'error-shutdown', ifOlderThanDays: 30 } }],
    remedies: ['update-firmware'],
    class: 'housekeeping',
    minutes: 10,
    opening: 'beside',
    note: 'Firmware: releases and safety notices. A safety notice is not put off.',
  }),
  rule({
    task: 'update-firmware',
    applies: always,
    raisedBy: foundBad('check-notices'),
    class: 'housekeeping',
    minutes: 20,
    opening: 'powered-hands-clear',
    note: 'By decision. Save settings, one machine first, attended.',
  }),
  rule({
    task: 'save-settings',
    applies: always,
    every: [days(180)],
    raisedBy: foundBad('check-notices'),
    class: 'housekeeping',
    minutes: 3,
    opening: 'beside',
    note: 'Before firmware or board work too.',
  }),
  rule({
    task: 'dry-filament',
    applies: always,
    raisedBy: [{ when: { loaded: THIRSTY } }, ...seen('damp-filament')],
    class: 'print quality',
    minutes: 5,
    opening: 'beside',
    note: "Dryer, at the maker's temperature.",
  }),
  rule({
    task: 'replace-printed-part',
    part: 'printed-part',
    applies: (build) => when(hasPrintedParts(build)),
    raisedBy: foundBad('check-printed-parts'),
    class: 'print failure',
    minutes: 30,
    spare: 'printed-part',
    opening: 'cold-unplugged',
  }),
];
