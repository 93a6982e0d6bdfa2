/** What codes are called when people read them. One line a code; the compiler lists what is missing. */
import {
  isPart, partReplacedBy, type Consumable, type Material, type Part, type StockItem, type Symptom, type Task,
} from '../../maintenance/codes.ts'; // prettier-ignore
import type { Build } from '../../maintenance/machine.ts';
import type { Hold } from '../../maintenance/record/record.ts';
import { reasonsOf } from '../../maintenance/record/reasons.ts';
import { capital, list } from '../format/list.ts';
import type { Names } from './view.ts';

interface Name {
  one: string;
  many: string;
}
const named = (one: string, many = `${one}s`): Name => ({ one, many });

const PARTS: Readonly<Record<Part, Name>> = {
  nozzle: named('nozzle'),
  'heat-break': named('heat break'),
  liner: named('hot-end liner'),
  heater: named('heater'),
  thermistor: named('temperature sensor'),
  sock: named('silicone sock'),
  'hot-end-fan': named('hot-end fan'),
  'part-fan': named('part fan'),
  'board-fan': named('board fan'),
  'feeder-gear': named('feeder gear'),
  'guide-tube': named('tube'),
  'tube-fitting': named('push-fit'),
  'x-belt': named('X belt'),
  'y-belt': named('Y belt'),
  belt: named('belt'),
  pulley: named('pulley'),
  idler: named('idler'),
  wheel: named('wheel'),
  bearing: named('bearing'),
  rod: named('rod'),
  rail: named('rail'),
  'lead-screw': named('Z screw'),
  'screw-nut': named('Z nut'),
  coupler: named('coupler'),
  'build-plate': named('build plate'),
  'bed-spring': named('bed spring'),
  'bed-heater': named('bed heater'),
  probe: named('probe'),
  'end-stop': named('end stop'),
  'printed-part': named('printed part'),
  fastener: named('screw'),
  filter: named('filter'),
  motor: named('motor'),
  wiring: named('wiring', 'wiring'),
  'power-supply': named('power supply', 'power supplies'),
  'control-board': named('control board'),
  screen: named('screen'),
  camera: named('camera'),
  'spool-holder': named('spool holder'),
  'filament-sensor': named('filament sensor'),
  door: named('door'),
};
const CONSUMABLES: Readonly<Record<Consumable, Name>> = {
  oil: named('bottle of light machine oil', 'bottles of light machine oil'),
  grease: named('tube of grease', 'tubes of grease'),
  alcohol: named('bottle of alcohol', 'bottles of alcohol'),
  cloth: named('lint-free cloth'),
  'air-can': named('can of air', 'cans of air'),
  filament: named('spool of filament', 'spools of filament'),
};

export const partName = (part: StockItem, n = 1): string => {
  const name = isPart(part) ? PARTS[part] : CONSUMABLES[part];
  return n === 1 ? name.one : name.many;
};

interface TaskName {
  /** What to do, as a short order: "oil the rods". */
  todo: string;
  /** What was done, as a note: "rods oiled". */
  done: string;
}
const task = (todo: string, done: string): TaskName => ({ todo, done });

const TASKS: Readonly<Record<Exclude<Task, `replace-${Part}`>, TaskName>> = {
  'dust-off': task('dust off', 'dusted off'),
  'clear-debris': task('clear the scraps', 'scraps cleared'),
  'clean-plate': task('clean the plate', 'plate cleaned'),
  'clean-feeder': task('clean the feeder', 'feeder cleaned'),
  'clean-fans': task('clean the fans', 'fans cleaned'),
  'clean-nozzle': task('clean the nozzle', 'nozzle cleaned'),
  'clean-screw': task('wipe the Z screw', 'Z screw wiped'),
  'clean-enclosure': task('clean the enclosure', 'enclosure cleaned'),
  'clear-jam': task('clear the jam', 'jam cleared'),
  'lubricate-rods': task('oil the rods', 'rods oiled'),
  'wipe-rods': task('wipe the rods', 'rods wiped'),
  'lubricate-rails': task('grease the rails', 'rails greased'),
  'grease-screw': task('grease the Z screw', 'Z screw greased'),
  'grease-ball-screw': task('grease the ball screw', 'ball screw greased'),
  'check-fasteners': task('go round the screws', 'screws checked'),
  'check-printed-parts': task('check the printed parts', 'printed parts checked'),
  'check-wheels': task('check the wheels', 'wheels checked'),
  'check-tube': task('check the tube', 'tube checked'),
  'check-nozzle': task('check the nozzle', 'nozzle checked'),
  'check-first-layer': task('check the first layer', 'first layer checked'),
  'check-wiring': task('check the wiring', 'wiring checked'),
  'check-heater': task('check heater and sensor', 'heater and sensor checked'),
  'check-fans': task('check the fans', 'fans checked'),
  'check-mains-lead': task('check the mains lead', 'mains lead checked'),
  'check-guards': task('check door switch and guards', 'door switch and guards checked'),
  'check-probe': task('check the probe', 'probe checked'),
  'check-belt': task('look the belts over', 'belts looked over'),
  'check-idlers': task('check the idlers', 'idlers checked'),
  'check-plate': task('check the plate', 'plate checked'),
  'check-liner': task('check the hot-end liner', 'hot-end liner checked'),
  'check-feeder-gear': task('check the feeder gear', 'feeder gear checked'),
  'check-filament-path': task('check the filament path', 'filament path checked'),
  'check-notices': task('look for maker’s notices', 'maker’s notices looked for'),
  'test-protection': task('test the heater-fault shut-down', 'heater-fault shut-down tested'),
  'tighten-pulleys': task('tighten pulleys and couplers', 'pulleys and couplers tightened'),
  'tension-belts': task('set the belt tension', 'belts tensioned'),
  'level-bed': task('level the bed', 'bed levelled'),
  'square-gantry': task('square the gantry', 'gantry squared'),
  'calibrate-feeder': task('calibrate the feeder', 'feeder calibrated'),
  'tune-temperature': task('tune the temperature control', 'temperature control tuned'),
  'trim-tube': task('trim the tube', 'tube trimmed'),
  'update-firmware': task('update the firmware', 'firmware updated'),
  'save-settings': task('save the settings', 'settings saved'),
  'dry-filament': task('dry the filament', 'filament dried'),
  'run-in': task('go over the run-in list', 'run-in list done'),
  'test-smoke-detector': task('test the smoke detector', 'smoke detector tested'),
  'check-extinguisher': task('check the extinguisher', 'extinguisher checked'),
  'check-extraction': task('check the extraction', 'extraction checked'),
  'check-solvents': task('check the solvents', 'solvents checked'),
  'check-safety-kit': task('check the safety kit', 'safety kit checked'),
  'check-dryer': task('check the filament dryer', 'filament dryer checked'),
};

const taskName = (code: Task): TaskName => {
  const part = partReplacedBy(code);
  if (part !== undefined) {
    const name = partName(part);
    return { todo: `replace the ${name}`, done: `${name} replaced` };
  }
  return TASKS[code as keyof typeof TASKS];
};
/** "oil the rods". */
export const todo = (code: Task): string => taskName(code).todo;
/** "rods oiled". */
export const didIt = (code: Task): string => taskName(code).done;

const SYMPTOMS: Readonly<Record<Symptom, string>> = {
  'no-extrusion': 'jam',
  'under-extrusion': 'too little plastic',
  'over-extrusion': 'too much plastic',
  'feeder-clicking': 'feeder clicking',
  'ground-filament': 'filament ground down',
  'tube-slipped': 'tube slipped',
  'worn-tube': 'worn tube',
  'worn-gear': 'worn feeder gear',
  'nozzle-leak': 'nozzle leaking',
  'worn-nozzle': 'worn nozzle',
  'damp-filament': 'damp filament',
  stringing: 'stringing',
  'layer-shift': 'layers shifted',
  'layer-split': 'layers split',
  ringing: 'ringing',
  'z-banding': 'banding in Z',
  'poor-adhesion': 'prints not sticking',
  'first-layer-close': 'first layer too close',
  'first-layer-far': 'first layer too far',
  'uneven-first-layer': 'first layer uneven',
  'rough-surface': 'rough surface',
  blobs: 'blobs',
  warping: 'warping',
  'detached-print': 'print came off the plate',
  'failed-print': 'print failed',
  'scratched-plate': 'scratched plate',
  squeak: 'squeak',
  grinding: 'grinding noise',
  rattle: 'rattle',
  'rough-motion': 'rough motion',
  'belt-slack': 'slack belt',
  'worn-belt': 'worn belt',
  'flat-spot': 'flat spot on a wheel',
  'loose-fastener': 'something loose',
  'deformed-part': 'part out of shape',
  'homing-failed': 'homing failed',
  crash: 'crash',
  'temperature-swing': 'temperature swinging',
  'no-heat': 'no heat',
  'bed-no-heat': 'bed does not heat',
  'fan-noise': 'fan noise',
  'fan-stopped': 'fan stopped',
  'error-shutdown': 'stopped with an error',
  'screen-frozen': 'screen frozen',
  'power-lost': 'no power',
  'settings-lost': 'settings lost',
  'burning-smell': 'burning smell',
  smoke: 'smoke',
  runaway: 'temperature out of control',
  shock: 'electric shock',
  'bare-wire': 'bare wire',
  'hot-connector': 'hot or scorched connector',
  'plastic-smell': 'smell of plastic',
  moved: 'moved to another place',
  'power-cut': 'power cut',
};
export const symptomName = (symptom: Symptom): string => SYMPTOMS[symptom];
/** All that a machine is held for. */
export const heldFor = (hold: Pick<Hold, 'symptom' | 'also'>): string =>
  list(reasonsOf(hold).map(symptomName));

const MATERIALS: Readonly<Record<Material, string>> = {
  pla: 'PLA', petg: 'PETG', abs: 'ABS', asa: 'ASA', tpu: 'TPU', nylon: 'nylon', pc: 'PC',
  'pla-cf': 'carbon-filled PLA', 'petg-cf': 'carbon-filled PETG', 'nylon-cf': 'carbon-filled nylon',
  'nylon-gf': 'glass-filled nylon', 'pla-glow': 'glow PLA', 'pla-wood': 'wood-filled PLA', 'pla-metal': 'metal-filled PLA',
}; // prettier-ignore
export const materialName = (material: Material): string => MATERIALS[material];

/** "Alder"; "the room" for the room's own things. */
export const machineName = (name: string, { calledAs }: Names): string =>
  name === 'room' ? 'The room' : (calledAs(name) ?? titled(name));

/** A name as it is written at the head of a line. */
export const titled = (name: string): string => name.split(' ').map(capital).join(' ');

/** "brass 0.4", what is known of it; "" when nothing is. */
export const nozzleName = (nozzle: Build['nozzle']): string =>
  [nozzle?.material, nozzle?.boreMm === undefined ? undefined : String(nozzle.boreMm)]
    .filter(Boolean)
    .join(' ');

/** In the middle of a sentence: "Birch, Maple and the room". */
export const machineInList = (name: string, names: Names): string =>
  name === 'room' ? 'the room' : machineName(name, names);
