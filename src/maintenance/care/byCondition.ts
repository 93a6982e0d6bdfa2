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
  cautions: RuleRow['cautions'];
  tools?: readonly string[];
  note?: string;
}

const BY_CONDITION: Readonly<Partial<Record<Part, Replacement>>> = {
  sock: {
    applies: (build) => when(build.sock === true),
    minutes: 5,
    cautions: ['HOT'],
  },
  'heat-break': { minutes: 30, cautions: ['HOT', 'SHORT'], tools: ['spanner for the block'] },
  heater: {
    bad: ['check-heater'],
    class: 'safety',
    minutes: 25,
    cautions: ['UNPLUG', 'HOT'],
    tools: ['hex key 1.5 mm'],
    note: 'Same rating, strain relief, then the protection test.',
  },
  thermistor: {
    class: 'safety',
    minutes: 20,
    cautions: ['UNPLUG', 'HOT'],
    tools: ['hex key 1.5 mm'],
    note: 'Same type, strain relief, then the protection test.',
  },
  'hot-end-fan': { minutes: 15, cautions: ['UNPLUG'], tools: ['hex key 2 mm'] },
  'part-fan': { minutes: 15, cautions: ['UNPLUG'], tools: ['hex key 2 mm'] },
  'board-fan': { minutes: 20, cautions: ['UNPLUG', 'MAINS'], tools: ['hex key 2 mm'] },
  'feeder-gear': {
    bad: ['check-feeder-gear'],
    seen: ['worn-gear'],
    minutes: 15,
    cautions: ['MOVE'],
    tools: ['hex key 1.5 mm', 'hex key 2 mm'],
  },
  'tube-fitting': { applies: (build) => when(hasTube(build)), minutes: 10, cautions: ['HOT', 'KNIFE'] },
  belt: { applies: (build) => when(hasBelts(build)), minutes: 40, cautions: ['MOVE', 'DROP'] },
  pulley: { applies: (build) => when(hasBelts(build)), minutes: 25, cautions: ['MOVE', 'DROP'] },
  idler: {
    applies: (build) => when(hasBelts(build)),
    bad: ['check-idlers'],
    minutes: 20,
    cautions: ['MOVE', 'DROP'],
  },
  wheel: {
    applies: (build) => when(hasWheels(build)),
    bad: ['check-wheels'],
    minutes: 20,
    cautions: ['MOVE', 'DROP'],
  },
  bearing: {
    applies: (build) => when(hasRods(build)),
    bad: ['lubricate-rods', 'wipe-rods'],
    minutes: 45,
    cautions: ['MOVE', 'DROP'],
  },
  rod: { applies: (build) => when(hasRods(build)), minutes: 60, cautions: ['MOVE', 'DROP'] },
  rail: {
    applies: (build) => when(hasRails(build)),
    bad: ['lubricate-rails'],
    minutes: 60,
    cautions: ['MOVE', 'DROP'],
  },
  'lead-screw': {
    applies: (build) => when(hasScrews(build)),
    bad: ['grease-ball-screw'],
    minutes: 60,
    cautions: ['MOVE', 'DROP'],
  },
  'screw-nut': {
    applies: (build) => when(build.zDrive === 'lead-screw'),
    bad: ['grease-screw', 'clean-screw'],
    minutes: 45,
    cautions: ['MOVE', 'DROP'],
  },
  coupler: { applies: (build) => when(hasScrews(build)), minutes: 30, cautions: ['DROP', 'MOVE'] },
  'bed-spring': { applies: (build) => when(build.bed === 'springs'), minutes: 15, cautions: ['HOT'] },
  'bed-heater': {
    applies: (build) => when(build.bedHeater !== 'none'),
    class: 'safety',
    minutes: 60,
    cautions: ['MAINS', 'UNPLUG'],
    note: 'Unplugged and cold; a mains bed only by a qualified person.',
  },
  probe: {
    applies: (build) => when(build.probe === true),
    bad: ['check-probe'],
    minutes: 20,
    cautions: ['UNPLUG'],
  },
  'end-stop': { minutes: 15, cautions: ['UNPLUG'] },
  fastener: { minutes: 5, cautions: ['MOVE', 'DROP'] },
  motor: { minutes: 40, cautions: ['UNPLUG', 'DROP'] },
  wiring: {
    class: 'safety',
    minutes: 45,
    cautions: ['UNPLUG', 'MAINS'],
    bad: ['check-wiring'],
    note: 'By a competent person; the mains side by a qualified one.',
  },
  'power-supply': {
    class: 'safety',
    minutes: 45,
    cautions: ['MAINS', 'UNPLUG'],
    note: 'By a qualified person.',
  },
  'control-board': {
    class: 'safety',
    minutes: 60,
    cautions: ['MAINS', 'UNPLUG'],
    note: 'By a qualified person; a photo of the wiring before.',
  },
  screen: { class: 'housekeeping', minutes: 20, cautions: ['UNPLUG'] },
  camera: { class: 'housekeeping', minutes: 10, cautions: ['UNPLUG'] },
  'spool-holder': { class: 'housekeeping', minutes: 5, opening: 'beside', cautions: [] },
  'filament-sensor': {
    applies: (build) => when(build.filamentSensor === true),
    minutes: 10,
    cautions: ['UNPLUG'],
  },
  door: { class: 'safety', minutes: 15, cautions: [], opening: 'beside' },
};

function replacement(part: Part, row: Replacement): Rule {
  return rule({
    task: replaceTask(part),
    part,
    applies: row.applies ?? always,
    raisedBy: [...foundBad(...(row.bad ?? [])), ...seen(...(row.seen ?? []))],
    class: row.class ?? 'print failure',
    minutes: row.minutes,
    tools: row.tools ?? [],
    spare: part,
    opening: row.opening ?? 'cold-unplugged',
    cautions: row.cautions,
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
    tools: ['cleaning needle', 'side cutters'],
    opening: 'hot',
    cautions: ['HOT', 'FUME'],
    note: "Heat only to the filament's own print temperature; pull slowly.",
  }),
  rule({
    task: 'clean-nozzle',
    applies: always,
    class: 'print quality',
    minutes: 5,
    tools: ['long brass brush'],
    opening: 'hot',
    cautions: ['HOT', 'SHORT'],
  }),
  rule({
    task: 'clean-fans',
    applies: always,
    class: 'print failure',
    minutes: 5,
    tools: ['soft brush', 'vacuum cleaner'],
    consumables: ['air-can'],
    opening: 'cold-unplugged',
    cautions: ['UNPLUG', 'DUST'],
  }),
  rule({
    task: 'clean-enclosure',
    applies: (build) => when(build.enclosed === true),
    class: 'housekeeping',
    minutes: 10,
    consumables: ['cloth'],
    opening: 'cold-unplugged',
    cautions: ['UNPLUG', 'DUST'],
  }),
  rule({
    task: 'check-filament-path',
    applies: always,
    class: 'print quality',
    minutes: 2,
    opening: 'beside',
    cautions: ['MOVE', 'CUT'],
  }),
];

export const ON_CONDITION: readonly Rule[] = [...CLEANING, ...REPLACEMENTS];
