/**
 * The codes that entries, readings and rules are made of. Every layer's types derive from these arrays.
 * Trade terms follow EN 13306 and IEC 60050-192 (item, fault, down state) and ISO/ASTM 52900
 * (nozzle, build platform) where those have one.
 */

export const PARTS = [
  'nozzle', 'heat-break', 'liner', 'heater', 'thermistor', 'sock',
  'hot-end-fan', 'part-fan', 'board-fan', 'feeder-gear', 'guide-tube', 'tube-fitting',
  'x-belt', 'y-belt', 'belt', 'pulley', 'idler', 'wheel', 'bearing', 'rod', 'rail', 'lead-screw', 'screw-nut',
  'coupler', 'build-plate', 'bed-spring', 'bed-heater', 'probe', 'end-stop', 'printed-part', 'fastener', 'filter',
  'motor', 'wiring', 'power-supply', 'control-board', 'screen', 'camera', 'spool-holder', 'filament-sensor', 'door',
] as const; // prettier-ignore
export type Part = (typeof PARTS)[number];

/** Counted in the shelf's own unit; never fitted to a machine. */
export const CONSUMABLES = ['oil', 'grease', 'alcohol', 'cloth', 'air-can', 'filament'] as const;
export type Consumable = (typeof CONSUMABLES)[number];
/** What a shelf can hold. */
export type StockItem = Part | Consumable;

const MACHINE_TASKS = [
  'dust-off', 'clear-debris', 'clean-plate', 'clean-feeder', 'clean-fans', 'clean-nozzle', 'clean-screw',
  'clean-enclosure', 'clear-jam',
  'lubricate-rods', 'wipe-rods', 'lubricate-rails', 'grease-screw', 'grease-ball-screw',
  'check-fasteners', 'check-printed-parts', 'check-wheels', 'check-tube', 'check-nozzle', 'check-first-layer',
  'check-wiring', 'check-heater', 'check-fans', 'check-mains-lead', 'check-guards', 'check-probe', 'check-belt',
  'check-idlers', 'check-plate', 'check-liner', 'check-feeder-gear', 'check-filament-path', 'check-notices',
  'test-protection',
  'tighten-pulleys', 'tension-belts', 'level-bed', 'square-gantry', 'calibrate-feeder', 'tune-temperature',
  'trim-tube', 'update-firmware', 'save-settings', 'dry-filament', 'run-in',
] as const; // prettier-ignore
export const ROOM_TASKS = [
  'test-smoke-detector', 'check-extinguisher', 'check-extraction', 'check-solvents', 'check-safety-kit', 'check-dryer',
] as const; // prettier-ignore
export type RoomTask = (typeof ROOM_TASKS)[number];
export type ReplaceTask = `replace-${Part}`;
export const REPLACE_TASKS: readonly ReplaceTask[] = PARTS.map((part): ReplaceTask => `replace-${part}`);
export type Task = (typeof MACHINE_TASKS)[number] | RoomTask | ReplaceTask;
export const TASKS: readonly Task[] = [...MACHINE_TASKS, ...ROOM_TASKS, ...REPLACE_TASKS];

/** One answer that stands before all others, and a hold: see `cautions/`. */
export const SAFETY_SYMPTOMS = [
  'burning-smell',
  'smoke',
  'runaway',
  'shock',
  'bare-wire',
  'hot-connector',
] as const;
export type SafetySymptom = (typeof SAFETY_SYMPTOMS)[number];
export const SYMPTOMS = [
  'no-extrusion', 'under-extrusion', 'over-extrusion', 'feeder-clicking', 'ground-filament', 'tube-slipped',
  'worn-tube', 'worn-gear', 'nozzle-leak', 'worn-nozzle', 'damp-filament',
  'stringing', 'layer-shift', 'layer-split', 'ringing', 'z-banding', 'poor-adhesion', 'first-layer-close',
  'first-layer-far', 'uneven-first-layer', 'rough-surface', 'blobs', 'warping', 'detached-print', 'failed-print',
  'scratched-plate',
  'squeak', 'grinding', 'rattle', 'rough-motion', 'belt-slack', 'worn-belt', 'flat-spot', 'loose-fastener',
  'deformed-part', 'homing-failed', 'crash',
  'temperature-swing', 'no-heat', 'bed-no-heat', 'fan-noise', 'fan-stopped', 'error-shutdown', 'screen-frozen',
  'power-lost', 'settings-lost',
  ...SAFETY_SYMPTOMS,
  'plastic-smell',
  'moved', 'power-cut',
] as const; // prettier-ignore
export type Symptom = (typeof SYMPTOMS)[number];

export const MATERIALS = [
  'pla', 'petg', 'abs', 'asa', 'tpu', 'nylon', 'pc',
  'pla-cf', 'petg-cf', 'nylon-cf', 'nylon-gf', 'pla-glow', 'pla-wood', 'pla-metal',
] as const; // prettier-ignore
export type Material = (typeof MATERIALS)[number];

export const REASONS = ['worn', 'broken', 'planned'] as const;
export type Reason = (typeof REASONS)[number];
export const FINDINGS = ['fine', 'watch', 'bad'] as const;
export type Finding = (typeof FINDINGS)[number];

/** The name under which the room's own things are kept. */
export const ROOM = 'room';

const partSet: ReadonlySet<string> = new Set(PARTS);
const safetySet: ReadonlySet<string> = new Set(SAFETY_SYMPTOMS);
const roomTaskSet: ReadonlySet<string> = new Set(ROOM_TASKS);

export const isPart = (code: string): code is Part => partSet.has(code);
/** Electrical dangers: that it was a false alarm, somebody qualified has to have found. */
const FOUND_FIRST: ReadonlySet<string> = new Set(['shock', 'bare-wire', 'hot-connector']);
export const needsFinding = (code: string): boolean => FOUND_FIRST.has(code);
export const isSafetySymptom = (code: string): code is SafetySymptom => safetySet.has(code);
export const isRoomTask = (code: string): code is RoomTask => roomTaskSet.has(code);

/** The part that a `replace-…` task fits anew; undefined for every other task. */
export function partReplacedBy(task: Task): Part | undefined {
  const code = task.startsWith('replace-') ? task.slice('replace-'.length) : '';
  return isPart(code) ? code : undefined;
}
export const replaceTask = (part: Part): ReplaceTask => `replace-${part}`;
