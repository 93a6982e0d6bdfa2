/**
 * The default care rules written down a second time, by hand, from the workshop's table: what the code says is
 * held against it, both ways. Common practice, no single source, unless a row says otherwise.
 * `every`: on which builds (see `BUILDS` and the variants below) which intervals hold. `raisedBy`: symptoms by
 * their code, "done …", "bad …", "new <part>", "back", "second jam", and what else the table names.
 */
export interface TableRow {
  task: string;
  /** Builds of the list below on which the task is planned. */
  on: readonly string[];
  /** By build; `*` for all others it is planned on. */
  every: Readonly<Record<string, string>>;
  raisedBy: string;
  class: string | Readonly<Record<string, string>>;
  minutes: number | Readonly<Record<string, number>>;
}

const ALL = 'alder birch cedar elm hazel juniper maple rowan'.split(' ');
const names = (text: string): readonly string[] => text.split(' ');
const MOVING = '60 days | 500 h';

export const TABLE: readonly TableRow[] = [
  {
    task: 'clear-debris', on: ALL, every: { '*': '1 runDays' },
    raisedBy: 'failed-print detached-print', class: 'housekeeping', minutes: 2,
  },
  {
    task: 'clean-plate', on: ALL, every: { '*': '7 runDays | 50 h' },
    raisedBy: 'poor-adhesion detached-print', class: 'print quality', minutes: 5,
  },
  {
    task: 'dust-off', on: ALL, every: { '*': '30 days; 14 days while pla-cf' },
    raisedBy: 'fan-noise fan-stopped error-shutdown back', class: 'print failure', minutes: 10,
  },
  {
    task: 'lubricate-rods', on: names('alder elm maple'), every: { '*': '300 h | 180 days; look 150 h' },
    raisedBy: 'squeak rough-motion new-bearing back', class: 'print quality', minutes: 10,
  },
  {
    task: 'wipe-rods', on: names('polymer'), every: { '*': '90 days' },
    raisedBy: 'squeak rough-motion back', class: 'print quality', minutes: 5,
  },
  {
    task: 'lubricate-rails', on: names('cedar elm juniper'), every: { '*': '300 h | 180 days' },
    raisedBy: 'squeak rough-motion grinding new-rail back', class: 'print quality', minutes: 15,
  },
  {
    task: 'grease-screw', on: names('alder cedar elm maple'), every: { '*': '500 h | 180 days' },
    raisedBy: 'z-banding squeak rough-motion new-lead-screw back', class: 'print quality', minutes: 10,
  },
  {
    task: 'grease-ball-screw', on: names('juniper'), every: { '*': '500 h | 180 days' },
    raisedBy: 'rough-motion grinding back', class: 'print quality', minutes: 15,
  },
  {
    task: 'clean-screw', on: names('birch hazel rowan'), every: { '*': '90 days' },
    raisedBy: 'z-banding squeak done-grease-screw done-grease-ball-screw', class: 'print quality', minutes: 5,
  },
  {
    task: 'check-wheels', on: names('birch hazel rowan'), every: { '*': '30 days | 200 h; once 20 h' },
    raisedBy: 'layer-shift rough-motion flat-spot ringing rattle squeak crash back',
    class: 'print quality', minutes: 5,
  },
  {
    task: 'tighten-pulleys', on: ALL, every: { '*': '90 days; once 20 h' },
    raisedBy: 'layer-shift z-banding ringing rattle homing-failed crash', class: 'print failure', minutes: 10,
  },
  {
    task: 'check-fasteners', on: ALL, every: { '*': '90 days; once 20 h' },
    raisedBy: 'rattle ringing loose-fastener crash', class: 'print quality', minutes: 15,
  },
  {
    task: 'tension-belts', on: ALL, every: { '*': '90 days | 500 h; once 50 h' },
    raisedBy: 'layer-shift ringing belt-slack', class: 'print quality', minutes: { elm: 20, '*': 10 },
  },
  {
    task: 'check-belt', on: ALL, every: { '*': '180 days | 1000 h' },
    raisedBy: 'worn-belt 2x-layer-shift-in-30-days crash', class: 'print failure', minutes: 5,
  },
  {
    task: 'replace-x-belt', on: ALL, every: { '*': '1095 days | 3000 h' },
    raisedBy: 'worn-belt bad-check-belt', class: 'print failure', minutes: { elm: 90, '*': 40 },
  },
  {
    task: 'replace-y-belt', on: ALL, every: { '*': '1095 days | 3000 h' },
    raisedBy: 'worn-belt bad-check-belt', class: 'print failure', minutes: { elm: 90, '*': 40 },
  },
  {
    task: 'check-idlers', on: ALL, every: { '*': '180 days' },
    raisedBy: 'grinding squeak worn-belt', class: 'print failure', minutes: 5,
  },
  {
    task: 'clean-feeder', on: ALL, every: { '*': '250 h | 60 days; 100 h while pla-cf' },
    raisedBy: 'no-extrusion ground-filament under-extrusion feeder-clicking abrasive-spool',
    class: 'print failure', minutes: 10,
  },
  {
    task: 'check-feeder-gear', on: ALL, every: { '*': '1000 h | dose feeder-gear' },
    raisedBy: '2x-ground-filament-after-clean-feeder worn-gear', class: 'print failure', minutes: 5,
  },
  {
    task: 'calibrate-feeder', on: ALL, every: {},
    raisedBy: 'new-feeder-gear new-motor new-control-board done-update-firmware settings-lost over-extrusion',
    class: 'print quality', minutes: 15,
  },
  {
    task: 'check-tube', on: names('alder birch juniper guided'),
    every: { guided: '180 days', '*': '90 days | 500 h' },
    raisedBy: 'tube-slipped no-extrusion stringing under-extrusion worn-tube', class: 'print failure', minutes: 5,
  },
  {
    task: 'trim-tube', on: names('alder birch juniper'), every: {},
    raisedBy: 'tube-slipped bad-check-tube', class: 'print failure', minutes: 10,
  },
  {
    task: 'replace-guide-tube', on: names('alder birch juniper guided'),
    every: {
      alder: '365 days | dose guide-tube; 180 days while abs',
      birch: '365 days | dose guide-tube; 180 days while abs', '*': '365 days | dose guide-tube',
    },
    raisedBy: 'worn-tube tube-slipped bad-check-tube', class: 'print failure', minutes: 20,
  },
  {
    task: 'check-liner', on: names('alder birch maple'), every: {},
    raisedBy: 'new-nozzle second-jam runaway', class: 'print failure', minutes: 5,
  },
  {
    task: 'replace-liner', on: names('alder birch maple'),
    every: { '*': '365 days | 500 h of hot | dose liner; 180 days while abs' },
    raisedBy: 'bad-check-liner runaway', class: 'print failure', minutes: 25,
  },
  {
    task: 'check-nozzle', on: ALL,
    every: { cedar: '30 runDays | 500 g; 7 days while pla-cf', '*': '30 runDays | 250 g; 7 days while pla-cf' },
    raisedBy: 'rough-surface scratched-plate crash blobs', class: 'print quality', minutes: 5,
  },
  {
    task: 'replace-nozzle', on: ALL, every: { cedar: 'dose nozzle', '*': '180 runDays | dose nozzle' },
    raisedBy: 'worn-nozzle nozzle-leak bad-check-nozzle', class: 'print quality', minutes: 15,
  },
  {
    task: 'check-first-layer', on: ALL, every: {},
    raisedBy:
      'new-nozzle new-build-plate new-probe first-layer-close first-layer-far uneven-first-layer crash moved done-update-firmware back',
    class: 'print failure', minutes: 10,
  },
  {
    task: 'level-bed', on: ALL,
    every: {
      alder: '7 runDays', birch: '7 runDays', hazel: '7 runDays', rowan: '14 runDays', 'rigid, no probe': '30 days',
      '*': '90 days',
    },
    raisedBy: 'first-layer-close first-layer-far uneven-first-layer crash moved',
    class: {
      alder: 'print failure', birch: 'print failure', hazel: 'print failure', rowan: 'print failure',
      '*': 'print quality',
    },
    minutes: 10,
  },
  {
    task: 'check-probe', on: names('cedar elm juniper maple rowan'), every: { '*': '90 days' },
    raisedBy: 'homing-failed first-layer-close first-layer-far uneven-first-layer crash',
    class: 'print failure', minutes: 5,
  },
  {
    task: 'square-gantry', on: names('elm juniper'), every: { '*': '180 days' },
    raisedBy: 'crash moved power-cut uneven-first-layer', class: 'print quality', minutes: 10,
  },
  {
    task: 'check-plate', on: ALL, every: { '*': '90 days' },
    raisedBy: 'scratched-plate poor-adhesion-after-clean-plate', class: 'print quality', minutes: 2,
  },
  {
    task: 'check-printed-parts', on: names('alder maple'), every: { alder: '30 days', '*': '90 days' },
    raisedBy: 'deformed-part-of-printed-part deformed-part layer-shift uneven-first-layer crash',
    class: 'print failure', minutes: 10,
  },
  {
    task: 'check-wiring', on: ALL, every: { 'not stated': '90 days; once 50 h', '*': `${MOVING}; once 50 h` },
    raisedBy:
      'temperature-swing no-heat bed-no-heat error-shutdown power-lost homing-failed crash burning-smell smoke runaway shock bare-wire hot-connector',
    class: 'safety', minutes: 15,
  },
  {
    task: 'check-heater', on: ALL, every: { '*': '90 days | 500 h' },
    raisedBy:
      'new-nozzle new-heat-break new-liner new-heater new-thermistor new-sock nozzle-leak temperature-swing crash runaway',
    class: 'safety', minutes: 5,
  },
  {
    task: 'check-fans', on: ALL, every: { '*': '30 days' },
    raisedBy:
      'fan-noise-of-board-fan fan-noise-of-power-supply fan-stopped-of-board-fan fan-stopped-of-power-supply fan-noise fan-stopped error-shutdown second-jam',
    class: 'print failure', minutes: 3,
  },
  {
    task: 'test-protection', on: ALL, every: { '*': '365 days' },
    raisedBy: 'enrolled-new done-update-firmware new-control-board new-heater new-thermistor',
    class: 'safety', minutes: 10,
  },
  {
    task: 'check-mains-lead', on: ALL, every: { '*': '365 days' },
    raisedBy: 'moved shock power-lost', class: 'safety', minutes: 5,
  },
  {
    task: 'check-guards', on: names('elm'), every: { '*': '90 days' },
    raisedBy: 'new-wiring new-power-supply new-control-board new-board-fan new-door', class: 'safety', minutes: 3,
  },
  {
    task: 'replace-filter', on: names('elm particle'),
    every: { elm: '180 days | 300 h of fumes; 90 days while abs', particle: '365 days | 1000 h' },
    raisedBy: 'plastic-smell', class: 'safety', minutes: 5,
  },
  {
    task: 'check-notices', on: ALL, every: { '*': '90 days' },
    raisedBy: 'error-shutdown-after-30-days', class: 'housekeeping', minutes: 10,
  },
  {
    task: 'update-firmware', on: ALL, every: {},
    raisedBy: 'bad-check-notices', class: 'housekeeping', minutes: 20,
  },
  {
    task: 'save-settings', on: ALL, every: { '*': '180 days' }, raisedBy: '', class: 'housekeeping', minutes: 3,
  },
  {
    task: 'run-in', on: ALL, every: { '*': 'once 20 h; once 50 h' }, raisedBy: '', class: 'safety', minutes: 30,
  },
  {
    task: 'dry-filament', on: ALL, every: {},
    raisedBy: 'thirsty-spool damp-filament', class: 'print quality', minutes: 5,
  },
  {
    task: 'tune-temperature', on: ALL, every: {},
    raisedBy: 'new-heater new-thermistor new-sock new-heat-break temperature-swing-after-check-heater',
    class: 'print quality', minutes: 10,
  },
  { task: 'test-smoke-detector', on: ['room'], every: { '*': '30 days' }, raisedBy: '', class: 'safety', minutes: 3 },
  { task: 'check-extinguisher', on: ['room'], every: { '*': '30 days' }, raisedBy: '', class: 'safety', minutes: 2 },
  { task: 'check-solvents', on: ['room'], every: { '*': '30 days' }, raisedBy: '', class: 'safety', minutes: 2 },
  { task: 'check-safety-kit', on: ['room'], every: { '*': '30 days' }, raisedBy: '', class: 'safety', minutes: 3 },
  { task: 'check-dryer', on: ['room'], every: { '*': '30 days' }, raisedBy: '', class: 'safety', minutes: 2 },
  { task: 'check-extraction', on: ['room'], every: { '*': '90 days' }, raisedBy: '', class: 'safety', minutes: 3 },
]; // prettier-ignore

/** `crash` raises these as one bundle, in this order. */
export const CRASH_BUNDLE = names(
  'check-wiring check-heater check-nozzle check-probe check-wheels tighten-pulleys square-gantry level-bed check-first-layer',
);
/** After a month of standing still. "A look at lubricants" is whichever of them the build has. */
export const STANDING_BUNDLE = names(
  'dust-off check-wheels lubricate-rods wipe-rods lubricate-rails grease-screw grease-ball-screw check-first-layer',
);
