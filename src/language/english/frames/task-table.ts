/** Verb class x what it is done to -> task. One row a pair; a pair that stands nowhere is asked about, never guessed. */
import type { StockItem, Task } from '../../../maintenance/codes.ts';
import type { Thing, VerbClass } from '../../senses.ts';

type Object_ = StockItem | Thing;
type Row = Readonly<Partial<Record<Object_, Task>>>;

const CLEAN: Row = {
  nozzle: 'clean-nozzle', 'hot-end': 'clean-nozzle', sock: 'clean-nozzle', 'build-plate': 'clean-plate', bed: 'clean-plate', glue: 'clean-plate',
  'feeder-gear': 'clean-feeder', feeder: 'clean-feeder', plastic: 'clean-feeder', fan: 'clean-fans', 'hot-end-fan': 'clean-fans', 'part-fan': 'clean-fans',
  'board-fan': 'clean-fans', grille: 'clean-fans', 'lead-screw': 'clean-screw', 'ball-screw': 'clean-screw', 'screw-nut': 'clean-screw', 'z-axis': 'clean-screw', rod: 'wipe-rods', enclosure: 'clean-enclosure',
  door: 'clean-enclosure', jam: 'clear-jam', 'heat-break': 'clear-jam', debris: 'clear-debris', underbed: 'clear-debris', floor: 'clear-debris', dust: 'dust-off', 'control-board': 'dust-off',
  'power-supply': 'dust-off', frame: 'dust-off', machine: 'dust-off', screen: 'dust-off', gantry: 'dust-off', gunk: 'clean-nozzle', guard: 'clean-enclosure', fastener: 'clean-screw', solvents: 'check-solvents',
  bearing: 'wipe-rods', probe: 'check-probe', wheel: 'check-wheels', extraction: 'check-extraction', wiring: 'dust-off', camera: 'dust-off', dryer: 'check-dryer', carriage: 'dust-off', motor: 'dust-off', print: 'clear-debris',
}; // prettier-ignore
const OIL: Row = {
  rod: 'lubricate-rods', bearing: 'lubricate-rods', rail: 'lubricate-rails', 'lead-screw': 'grease-screw', 'screw-nut': 'grease-screw', fastener: 'grease-screw', 'z-axis': 'grease-screw',
  'ball-screw': 'grease-ball-screw', 'x-axis': 'lubricate-rods', 'y-axis': 'lubricate-rods', carriage: 'lubricate-rods',
}; // prettier-ignore
const CHECK: Row = {
  nozzle: 'check-nozzle', 'build-plate': 'check-plate', bed: 'check-plate', belt: 'check-belt', 'x-belt': 'check-belt', 'y-belt': 'check-belt', wheel: 'check-wheels', eccentric: 'check-wheels', play: 'check-wheels',
  'guide-tube': 'check-tube', 'tube-fitting': 'check-tube', 'tube-end': 'check-tube', fastener: 'check-fasteners', frame: 'check-fasteners', 'printed-part': 'check-printed-parts', wiring: 'check-wiring', plug: 'check-wiring',
  heater: 'check-heater', thermistor: 'check-heater', fan: 'check-fans', 'hot-end-fan': 'check-fans', 'part-fan': 'check-fans', 'board-fan': 'check-fans', grille: 'check-fans', 'mains-lead': 'check-mains-lead', guard: 'check-guards',
  door: 'check-guards', probe: 'check-probe', 'end-stop': 'check-probe', idler: 'check-idlers', pulley: 'tighten-pulleys', coupler: 'tighten-pulleys', 'grub-screw': 'tighten-pulleys', liner: 'check-liner', 'feeder-gear': 'check-feeder-gear', feeder: 'check-feeder-gear', 'filament-path': 'check-filament-path',
  'spool-holder': 'check-filament-path', spool: 'check-filament-path', 'filament-sensor': 'check-filament-path', firmware: 'check-notices', notices: 'check-notices', 'first-layer': 'check-first-layer', offset: 'check-first-layer', protection: 'test-protection', 'level-noun': 'level-bed',
  mesh: 'level-bed', 'smoke-detector': 'test-smoke-detector', extinguisher: 'check-extinguisher', extraction: 'check-extraction', solvents: 'check-solvents', 'safety-kit': 'check-safety-kit', dryer: 'check-dryer', 'tension-noun': 'check-belt',
  crack: 'check-printed-parts', gantry: 'square-gantry', esteps: 'calibrate-feeder', 'bed-heater': 'check-wiring', 'power-supply': 'check-wiring', 'control-board': 'check-wiring', sock: 'check-nozzle', 'hot-end': 'check-heater', 'bed-spring': 'level-bed', temperature: 'tune-temperature',
  alcohol: 'check-solvents', pressure: 'check-feeder-gear', rod: 'wipe-rods',
}; // prettier-ignore
const TIGHTEN: Row = {
  pulley: 'tighten-pulleys', coupler: 'tighten-pulleys', 'grub-screw': 'tighten-pulleys', belt: 'tension-belts', 'x-belt': 'tension-belts', 'y-belt': 'tension-belts', 'tension-noun': 'tension-belts', 'belts-all': 'tension-belts', fastener: 'check-fasteners',
  frame: 'check-fasteners', gantry: 'check-fasteners', wheel: 'check-wheels', eccentric: 'check-wheels', play: 'check-wheels', 'printed-part': 'check-printed-parts', wiring: 'check-wiring', plug: 'check-wiring', heater: 'check-heater', thermistor: 'check-heater', 'bed-spring': 'level-bed',
  nozzle: 'check-nozzle', 'hot-end': 'check-fasteners', motor: 'check-fasteners', 'tube-fitting': 'check-tube', 'feeder-gear': 'tighten-pulleys', rail: 'check-fasteners', carriage: 'check-wheels', bed: 'check-fasteners', machine: 'check-fasteners', 'mains-lead': 'check-mains-lead', 'power-supply': 'check-wiring',
}; // prettier-ignore
const ADJUST: Row = {
  wheel: 'check-wheels', eccentric: 'check-wheels', play: 'check-wheels', belt: 'tension-belts', 'x-belt': 'tension-belts', 'y-belt': 'tension-belts', 'tension-noun': 'tension-belts', bed: 'level-bed', 'bed-spring': 'level-bed', 'level-noun': 'level-bed', mesh: 'level-bed', 'build-plate': 'level-bed',
  offset: 'check-first-layer', 'first-layer': 'check-first-layer', gantry: 'square-gantry', esteps: 'calibrate-feeder', feeder: 'calibrate-feeder', temperature: 'tune-temperature', 'hot-end': 'tune-temperature', heater: 'tune-temperature', probe: 'check-probe', 'end-stop': 'check-probe', 'z-axis': 'square-gantry', pulley: 'tighten-pulleys', coupler: 'tighten-pulleys', 'grub-screw': 'tighten-pulleys', fastener: 'check-fasteners', carriage: 'check-wheels', frame: 'square-gantry', corner: 'level-bed',
}; // prettier-ignore
const LEVEL: Row = {
  bed: 'level-bed',
  'build-plate': 'level-bed',
  'bed-spring': 'level-bed',
  mesh: 'level-bed',
  'level-noun': 'level-bed',
  gantry: 'square-gantry',
  machine: 'level-bed',
  'z-axis': 'square-gantry',
  probe: 'level-bed',
  paper: 'level-bed',
  corner: 'level-bed',
};

export const TASKS_OF: Readonly<Partial<Record<VerbClass, Row>>> = {
  clean: CLEAN,
  wipe: CLEAN,
  dust: { fan: 'clean-fans', 'hot-end-fan': 'clean-fans', 'part-fan': 'clean-fans', 'board-fan': 'clean-fans', grille: 'clean-fans', machine: 'dust-off', dust: 'dust-off', frame: 'dust-off', 'control-board': 'dust-off', 'power-supply': 'dust-off', enclosure: 'clean-enclosure', feeder: 'clean-feeder', 'feeder-gear': 'clean-feeder', screen: 'dust-off', 'hot-end': 'dust-off', gantry: 'dust-off' },
  oil: OIL,
  tighten: TIGHTEN,
  tension: { belt: 'tension-belts', 'x-belt': 'tension-belts', 'y-belt': 'tension-belts', 'tension-noun': 'tension-belts', 'belts-all': 'tension-belts', 'x-axis': 'tension-belts', 'y-axis': 'tension-belts', idler: 'tension-belts' },
  level: LEVEL,
  square: { motor: 'square-gantry', gantry: 'square-gantry', 'z-axis': 'square-gantry', frame: 'square-gantry', bed: 'level-bed', 'x-axis': 'square-gantry', 'tube-end': 'trim-tube', 'guide-tube': 'trim-tube', rail: 'square-gantry', machine: 'square-gantry' },
  look: CHECK,
  test: { ...CHECK, probe: 'check-probe', heater: 'test-protection', esteps: 'calibrate-feeder', 'filament-sensor': 'check-filament-path', fan: 'check-fans' },
  work: { 'smoke-detector': 'test-smoke-detector', guard: 'check-guards', protection: 'test-protection', extraction: 'check-extraction' },
  adjust: ADJUST,
  calibrate: { esteps: 'calibrate-feeder', feeder: 'calibrate-feeder', 'feeder-gear': 'calibrate-feeder', bed: 'level-bed', mesh: 'level-bed', 'level-noun': 'level-bed', temperature: 'tune-temperature', 'hot-end': 'tune-temperature', heater: 'tune-temperature', probe: 'check-probe', offset: 'check-first-layer', 'build-plate': 'level-bed', 'bed-heater': 'tune-temperature', thermistor: 'tune-temperature', machine: 'calibrate-feeder' },
  trim: { 'guide-tube': 'trim-tube', 'tube-end': 'trim-tube', 'tube-fitting': 'trim-tube', liner: 'trim-tube' },
  clear: { jam: 'clear-jam', nozzle: 'clear-jam', 'hot-end': 'clear-jam', 'heat-break': 'clear-jam', liner: 'clear-jam', 'guide-tube': 'clear-jam', debris: 'clear-debris', underbed: 'clear-debris', bed: 'clear-debris', 'build-plate': 'clear-debris', feeder: 'clear-jam', 'feeder-gear': 'clean-feeder', plastic: 'clean-feeder', grille: 'clean-fans', fan: 'clean-fans', 'hot-end-fan': 'clean-fans', 'part-fan': 'clean-fans', 'board-fan': 'clean-fans', gunk: 'clean-nozzle', dust: 'dust-off', floor: 'clear-debris', print: 'clear-debris', machine: 'clear-jam', heater: 'clear-jam' },
  read: { notices: 'check-notices' },
  pull: { jam: 'clear-jam', nozzle: 'clear-jam', 'hot-end': 'clear-jam' },
  dry: { filament: 'dry-filament', spool: 'dry-filament' },
  update: { firmware: 'update-firmware', 'control-board': 'update-firmware', machine: 'update-firmware' },
  save: { settings: 'save-settings', offset: 'save-settings', esteps: 'save-settings', temperature: 'save-settings', mesh: 'save-settings' },
  run: { mesh: 'level-bed', 'level-noun': 'level-bed', esteps: 'calibrate-feeder', protection: 'test-protection', 'first-layer': 'check-first-layer', temperature: 'tune-temperature', probe: 'check-probe' },
  print: { 'first-layer': 'check-first-layer', temperature: 'tune-temperature', esteps: 'calibrate-feeder' },
  make: { temperature: 'tune-temperature', mesh: 'level-bed', 'level-noun': 'level-bed', esteps: 'calibrate-feeder', settings: 'save-settings', protection: 'test-protection' },
  install: { firmware: 'update-firmware' },
  put: { firmware: 'update-firmware' },
  get: { firmware: 'update-firmware' },
  runin: { machine: 'run-in' },
  did: {
    belt: 'tension-belts', 'x-belt': 'tension-belts', 'y-belt': 'tension-belts', 'tension-noun': 'tension-belts', rod: 'lubricate-rods', bearing: 'lubricate-rods', rail: 'lubricate-rails', 'lead-screw': 'grease-screw', 'z-axis': 'grease-screw', 'ball-screw': 'grease-ball-screw', bed: 'level-bed', 'level-noun': 'level-bed', mesh: 'level-bed',
    wheel: 'check-wheels', eccentric: 'check-wheels', 'feeder-gear': 'clean-feeder', feeder: 'clean-feeder', pulley: 'tighten-pulleys', coupler: 'tighten-pulleys', 'grub-screw': 'tighten-pulleys', wiring: 'check-wiring', plug: 'check-wiring', 'guide-tube': 'check-tube', 'build-plate': 'clean-plate', fastener: 'check-fasteners', 'printed-part': 'check-printed-parts',
    firmware: 'update-firmware', settings: 'save-settings', esteps: 'calibrate-feeder', temperature: 'tune-temperature', 'first-layer': 'check-first-layer', offset: 'check-first-layer', probe: 'check-probe', idler: 'check-idlers', fan: 'clean-fans', grille: 'clean-fans', gantry: 'square-gantry', enclosure: 'clean-enclosure', dust: 'dust-off', debris: 'clear-debris',
    'mains-lead': 'check-mains-lead', guard: 'check-guards', door: 'check-guards', protection: 'test-protection', notices: 'check-notices', 'filament-path': 'check-filament-path', 'smoke-detector': 'test-smoke-detector', extinguisher: 'check-extinguisher', extraction: 'check-extraction', solvents: 'check-solvents', 'safety-kit': 'check-safety-kit', dryer: 'check-dryer', 'hot-end-fan': 'clean-fans', 'part-fan': 'clean-fans', 'board-fan': 'clean-fans', 'tube-end': 'trim-tube', 'belts-all': 'tension-belts', corner: 'level-bed', jam: 'clear-jam', heater: 'check-heater', thermistor: 'check-heater',
  },
}; // prettier-ignore

/** Verb classes that are tasks of their own, whatever stands beside them. */
export const TASK_ALONE: Readonly<Partial<Record<VerbClass, Task>>> = {
  tension: 'tension-belts', level: 'level-bed', pull: 'clear-jam', runin: 'run-in', dust: 'dust-off',
}; // prettier-ignore

/** The room's own tasks need no machine. */
export const ROOM_THINGS: ReadonlySet<string> = new Set([
  'smoke-detector',
  'extinguisher',
  'extraction',
  'solvents',
  'safety-kit',
  'dryer',
]);
