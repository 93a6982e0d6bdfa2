/**
 * Tasks that no calendar asks for: they are done when something is found or seen. A rule of this file makes no
 * row until it is raised; it is here so that the task can be raised, put off, claimed and asked about.
 */
import { replaceTask } from '../codes.ts';
import type { Part, Symptom, Task } from '../codes.ts';
import { always, hasBelts, hasRails, hasRods, hasScrews, hasTube, hasWheels, when } from './builds.ts';
import { rule } from './rule.ts';
import type { Opening, Rule, RuleRow } from './rule.ts';
import { foundBad, seen } from './words.ts';

interface Replacement {
  applies?: RuleRow['applies'];
  bad?: readonly Task[];
  seen?: readonly Symptom[];
  class?: RuleRow['class'];
  minutes: number;
  opening?: Opening;
  note?: string;
}

const BY_CONDITION: Readonly<Partial<Record<Part, Replacement>>> = {
  sock: {
    applies: (build) => when(build.sock === true),
    minutes: 5,
  },
  'heat-break': { minutes: 30 },
  heater: {
    bad: ['check-heater'],
    class: 'safety',
    minutes: 25,
    note: 'Same rating, strain relief, then the protection test.',
  },
  thermistor: {
    class: 'safety',
    minutes: 20,
    note: 'Same type, strain relief, then the protection test.',
  },
  'hot-end-fan': { minutes: 15 },
  'part-fan': { minutes: 15 },
  'board-fan': { minutes: 20 },
  'feeder-gear': {
    bad: ['check-feeder-gear'],
    seen: ['worn-gear'],
    minutes: 15,
  },
  'tube-fitting': { applies: (build) => when(hasTube(build)), minutes: 10 },
  belt: { applies: (build) => when(hasBelts(build)), minutes: 40 },
  pulley: { applies: (build) => when(hasBelts(build)), minutes: 25 },
  idler: {
    applies: (build) => when(hasBelts(build)),
    bad: ['check-idlers'],
    minutes: 20,
  },
  wheel: {
    applies: (build) => when(hasWheels(build)),
    bad: ['check-wheels'],
    minutes: 20,
  },
  bearing: {
    applies: (build) => when(hasRods(build)),
    bad: ['lubricate-rods', 'wipe-rods'],
    minutes: 45,
  },
  rod: { applies: (build) => when(hasRods(build)), minutes: 60 },
  rail: {
    applies: (build) => when(hasRails(build)),
    bad: ['lubricate-rails'],
    minutes: 60,
  },
  'lead-screw': {
    applies: (build) => when(hasScrews(build)),
    bad: ['grease-ball-screw'],
    minutes: 60,
  },
  'screw-nut': {
    applies: (build) => when(build.zDrive === 'lead-screw'),
    bad: ['grease-screw', 'clean-screw'],
    minutes: 45,
  },
  coupler: { applies: (build) => when(hasScrews(build)), minutes: 30 },
  'bed-spring': { applies: (build) => when(build.bed === 'springs'), minutes: 15 },
  'bed-heater': {
    applies: (build) => when(build.bedHeater !== 'none'),
    class: 'safety',
    minutes: 60,
    note: 'Unplugged and cold; a mains bed only by a qualified person.',
  },
  probe: {
    applies: (build) => when(build.probe === true),
    bad: ['check-probe'],
    minutes: 20,
  },
  'end-stop': { minutes: 15 },
  fastener: { minutes: 5 },
  motor: { minutes: 40 },
  wiring: {
    class: 'safety',
    minutes: 45,
    bad: ['check-wiring'],
    note: 'By a competent person; the mains side by a qualified one.',
  },
  'power-supply': {
    class: 'safety',
    minutes: 45,
    note: 'By a qualified person.',
  },
  'control-board': {
    class: 'safety',
    minutes: 60,
    note: 'By a qualified person; a photo of the wiring before.',
  },
  screen: { class: 'housekeeping', minutes: 20 },
  camera: { class: 'housekeeping', minutes: 10 },
  'spool-holder': { class: 'housekeeping', minutes: 5, opening: 'beside' },
  'filament-sensor': {
    applies: (build) => when(build.filamentSensor === true),
    minutes: 10,
  },
  door: { class: 'safety', minutes: 15, opening: 'beside' },
};

function replacement(part: Part, row: Replacement): Rule {
  return rule({
    task: replaceTask(part),
    part,
    applies: row.applies ?? always,
    raisedBy: [...foundBad(...(row.bad ?? [])), ...seen(...(row.seen ?? []))],
    class: row.class ?? 'print failure',
    minutes: row.minutes,
    spare: part,
    opening: row.opening ?? 'cold-unplugged',
    ...(row.note !== undefined && { note: row.note }),
  });
}

const REPLACEMENTS: readonly Rule[] = (Object.keys(BY_CONDITION) as Part[]).flatMap((part) => {
  const row = BY_CONDITION[part];
  return row ? [replacement(part, row)] : [];
});

/** Cleaning and clearing that waits for a reason. */
const CLEANING: readonly Rule[] = [
  rule({
    task: 'clear-jam',
    applies: always,
    raisedBy: seen('no-extrusion'),
    class: 'print failure',
    minutes: 15,
    opening: 'hot',
    note: "Heat only to the filament's own print temperature; pull slowly.",
  }),
  rule({
    task: 'clean-nozzle',
    applies: always,
    class: 'print quality',
    minutes: 5,
    opening: 'hot',
  }),
  rule({
    task: 'clean-fans',
    applies: always,
    class: 'print failure',
    minutes: 5,
    opening: 'cold-unplugged',
  }),
  rule({
    task: 'clean-enclosure',
    applies: (build) => when(build.enclosed === true),
    class: 'housekeeping',
    minutes: 10,
    opening: 'cold-unplugged',
  }),
  rule({
    task: 'check-filament-path',
    applies: always,
    class: 'print quality',
    minutes: 2,
    opening: 'beside',
  }),
];

export const ON_CONDITION: readonly Rule[] = [...CLEANING, ...REPLACEMENTS];
