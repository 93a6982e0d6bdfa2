/**
 * The default care rules written down a second time, by hand, from the technician's table: what the code says is
 * held against it, both ways. Common practice, no single source, unless a row says otherwise.
 * `every`: on which builds (see `BUILDS` and the variants below) which intervals hold. `raisedBy`: symptoms by
 * their code, "done …", "bad …", "new <part>", "back", "second jam", and what else the table names.
 */
import type { Task } from '../../../src/maintenance/codes.ts';

export interface TableRow {
  task: Task;
  /** Builds of the list below on which the task is planned. */
  on: readonly string[];
  /** By build; `*` for all others it is planned on. */
  every: Readonly<Record<string, string>>;
  raisedBy: string;
  class: string | Readonly<Record<string, string>>;
  minutes: number | Readonly<Record<string, number>>;
  /** What raises it beyond the technician's row, and why. */
  besides?: Readonly<Record<string, string>>;
  /** Where it departs from the technician's row, and why. */
  departs?: string;
  /** Tools and supplies that the row names, by their codes; `-` before what must not be among them. */
  kit?: string;
  /** What else the row says, as its note, its steps or its caution must have it; on the first of its builds. */
  says?: readonly RegExp[];
}

const IDLE_MONTH = 'after 30 idle days, as one line when it is back in use';
const BAD_LOOK = 'a look that found it bad raises its remedy';
const WITH_FIRMWARE = 'new firmware raises it';
const BY_DOSE = 'what slid through it counts as wear too (dose of tube and liner)';
/** A maker's abrasive test, cited second-hand. */
const HEAVY_WEAR =
  'brass and plated are looked at after 250 g, not 500: heavy wear of brass 0.4 was reported by then';
/** Safety for notices, else housekeeping: which of the two it is, only the one who reads it knows. */
const NOTICE = 'housekeeping; a safety notice goes to the keeper the same day, as the steps say';

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
    kit: 'dish-soap alcohol', says: [/alcohol only (if|as)/iu, /plate off/iu, /cold|cool/iu, /acetone/iu],
  },
  {
    task: 'dust-off', on: ALL, every: { '*': '30 days; 14 days while pla-cf' },
    raisedBy: 'fan-noise fan-stopped error-shutdown', class: 'print failure', minutes: 10,
    besides: { back: IDLE_MONTH }, kit: 'soft-brush vacuum air-can', says: [/off.*cool/iu, /brush.*vacuum/iu, /only where nothing else reaches|where no(thing| brush)/iu, /blades/iu],
  },
  {
    task: 'lubricate-rods', on: names('alder elm maple'), every: { '*': '300 h | 180 days; look 150 h' },
    raisedBy: 'squeak rough-motion new-bearing', class: 'print quality', minutes: 10,
    besides: { back: IDLE_MONTH }, kit: 'rod-lubricant', says: [/only if dry/iu, /by hand/iu, /minimum.*maximum/iu],
  },
  {
    task: 'wipe-rods', on: names('polymer'), every: { '*': '90 days' },
    raisedBy: 'squeak rough-motion', class: 'print quality', minutes: 5,
    besides: { back: IDLE_MONTH }, kit: 'cloth -light-oil -rod-lubricant', says: [/no lubricant/iu],
  },
  {
    task: 'lubricate-rails', on: names('cedar elm juniper'), every: { '*': '300 h | 180 days' },
    raisedBy: 'squeak rough-motion grinding', class: 'print quality', minutes: 15,
    besides: { 'new-rail': 'once at fitting', back: IDLE_MONTH }, kit: 'rail-lubricant cloth', says: [/wipe first/iu, /not mix/iu],
  },
  {
    task: 'grease-screw', on: names('alder cedar elm maple'), every: { '*': '500 h | 180 days' },
    raisedBy: 'z-banding squeak rough-motion', class: 'print quality', minutes: 10,
    besides: { 'new-lead-screw': 'a new screw is fitted dry', back: IDLE_MONTH }, kit: 'screw-grease cloth', says: [/wipe/iu, /thin film/iu],
  },
  {
    task: 'grease-ball-screw', on: names('juniper'), every: { '*': '500 h | 180 days' },
    raisedBy: 'rough-motion grinding', class: 'print quality', minutes: 15,
    besides: { back: IDLE_MONTH }, says: [/prop/iu],
  },
  {
    task: 'clean-screw', on: names('birch hazel rowan'), every: { '*': '90 days' },
    raisedBy: 'z-banding squeak done-grease-screw done-grease-ball-screw', class: 'print quality', minutes: 5,
    kit: 'cloth -screw-grease -named-lubricant', says: [/no grease/iu, /grit/iu, /maker names/iu],
  },
  {
    task: 'check-wheels', on: names('birch hazel rowan'), every: { '*': '30 days | 200 h; once 20 h' },
    raisedBy: 'layer-shift rough-motion flat-spot ringing rattle squeak crash',
    class: 'print quality', minutes: 5,
    besides: { back: IDLE_MONTH }, kit: '-light-oil -rod-lubricant -screw-grease', says: [/no lubricant/iu, /little drag/iu, /flat spot/iu],
  },
  {
    task: 'tighten-pulleys', on: ALL, every: { '*': '90 days; once 20 h' },
    raisedBy: 'layer-shift z-banding ringing rattle homing-failed crash', class: 'print failure', minutes: 10,
    says: [/pulley/iu, /coupler/iu, /first screws to look at/iu],
  },
  {
    task: 'check-fasteners', on: ALL, every: { '*': '90 days; once 20 h' },
    raisedBy: 'rattle ringing loose-fastener crash', class: 'print quality', minutes: 15,
  },
  {
    task: 'tension-belts', on: ALL, every: { '*': '90 days | 500 h; once 50 h' },
    raisedBy: 'layer-shift ringing belt-slack', class: 'print quality', minutes: { elm: 20, '*': 10 },
    kit: 'pitch-meter', says: [/firm, no sag/iu, /free by hand/iu],
  },
  {
    task: 'check-belt', on: ALL, every: { '*': '180 days | 1000 h' },
    raisedBy: 'worn-belt 2x-layer-shift-in-30-days crash', class: 'print failure', minutes: 5,
    says: [/tooth root/iu, /fuzz/iu, /hard.*shiny/iu, /clamps/iu],
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
    says: [/unload.*first|unload the filament/iu, /motors off|switch off/iu],
  },
  {
    task: 'check-feeder-gear', on: ALL, every: { '*': '1000 h | dose feeder-gear' },
    raisedBy: '2x-ground-filament-after-clean-feeder worn-gear', class: 'print failure', minutes: 5,
    says: [/polished teeth are worn/iu],
  },
  {
    task: 'calibrate-feeder', on: ALL, every: {},
    raisedBy: 'new-feeder-gear new-motor new-control-board done-update-firmware settings-lost over-extrusion',
    class: 'print quality', minutes: 15,
    says: [/never the first answer to under-extrusion/iu],
  },
  {
    task: 'check-tube', on: names('alder birch juniper guided'),
    every: { guided: '180 days', '*': '90 days | 500 h' },
    raisedBy: 'tube-slipped no-extrusion stringing under-extrusion worn-tube', class: 'print failure', minutes: 5,
    says: [/pinched/iu, /bore/iu, /brown/iu],
  },
  {
    task: 'trim-tube', on: names('alder birch juniper'), every: {},
    raisedBy: 'tube-slipped bad-check-tube', class: 'print failure', minutes: 10,
    kit: 'tube-cutter', says: [/2 to 5 mm/iu, /no gap/iu],
  },
  {
    task: 'replace-guide-tube', on: names('alder birch juniper guided'),
    every: {
      alder: '365 days | dose guide-tube; 180 days while abs',
      birch: '365 days | dose guide-tube; 180 days while abs', '*': '365 days | dose guide-tube',
    },
    raisedBy: 'worn-tube tube-slipped bad-check-tube', class: 'print failure', minutes: 20,
    departs: BY_DOSE, says: [/push-fit/iu],
  },
  {
    task: 'check-liner', on: names('alder birch maple'), every: {},
    raisedBy: 'new-nozzle second-jam runaway', class: 'print failure', minutes: 5,
  },
  {
    task: 'replace-liner', on: names('alder birch maple'),
    every: { '*': '365 days | 500 h of hot | dose liner; 180 days while abs' },
    raisedBy: 'bad-check-liner runaway', class: 'print failure', minutes: 25,
    departs: BY_DOSE,
  },
  {
    task: 'check-nozzle', on: ALL,
    every: { cedar: '30 runDays | 500 g; 7 days while pla-cf', '*': '30 runDays | 250 g; 7 days while pla-cf' },
    raisedBy: 'rough-surface scratched-plate crash blobs', class: 'print quality', minutes: 5,
    departs: HEAVY_WEAR, kit: 'magnifier mirror', says: [/cold, or (by|with a) mirror/iu],
  },
  {
    task: 'replace-nozzle', on: ALL, every: { cedar: 'dose nozzle', '*': '180 runDays | dose nozzle' },
    raisedBy: 'worn-nozzle nozzle-leak', class: 'print quality', minutes: 15,
    besides: { 'bad-check-nozzle': BAD_LOOK },
  },
  {
    task: 'check-first-layer', on: ALL, every: {},
    raisedBy:
      'new-nozzle new-build-plate new-probe first-layer-close first-layer-far uneven-first-layer crash moved',
    class: 'print failure', minutes: 10,
    besides: { 'done-update-firmware': WITH_FIRMWARE, back: IDLE_MONTH }, says: [/only for threaded nozzles, as the manual says/iu],
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
    says: [/skirt at least once a week/iu],
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
    says: [/chipped glass is scrap/iu],
  },
  {
    task: 'check-printed-parts', on: names('alder maple'), every: { alder: '30 days', '*': '90 days' },
    raisedBy: 'deformed-part-of-printed-part deformed-part layer-shift uneven-first-layer crash',
    class: 'print failure', minutes: 10,
    says: [/creep/iu, /holders, tensioners, motor and hot-end mounts/iu, /touches the (hot )?block/iu],
  },
  {
    task: 'check-wiring', on: ALL, every: { 'not stated': '90 days; once 50 h', '*': `${MOVING}; once 50 h` },
    raisedBy:
      'temperature-swing no-heat bed-no-heat error-shutdown power-lost homing-failed crash burning-smell smoke runaway shock bare-wire hot-connector',
    class: 'safety', minutes: 15,
    says: [/unplugged/iu, /look, do not pull/iu, /brown.*soft.*|soft.*brown/iu],
  },
  {
    task: 'check-heater', on: ALL, every: { '*': '90 days | 500 h' },
    raisedBy:
      'new-nozzle new-heat-break new-liner new-heater new-thermistor new-sock nozzle-leak temperature-swing crash runaway',
    class: 'safety', minutes: 5,
    says: [/cartridge and sensor/iu, /fast/iu],
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
    says: [/maker/iu, /attended|stays beside/iu, /keeper/iu],
  },
  {
    task: 'check-mains-lead', on: ALL, every: { '*': '365 days' },
    raisedBy: 'moved shock power-lost', class: 'safety', minutes: 5,
    says: [/from outside only/iu, /competent person/iu],
  },
  {
    task: 'check-guards', on: names('elm'), every: { '*': '90 days' },
    raisedBy: 'new-wiring new-power-supply new-control-board new-board-fan new-door', class: 'safety', minutes: 3,
  },
  {
    task: 'replace-filter', on: names('elm particle'),
    every: { elm: '180 days | 300 h of fumes; 90 days while abs', particle: '365 days | 1000 h' },
    raisedBy: 'plastic-smell', class: 'safety', minutes: 5,
    kit: 'bag', says: [/bag/iu, /never raised by a burning smell/iu],
  },
  {
    task: 'check-notices', on: ALL, every: { '*': '90 days' },
    raisedBy: 'error-shutdown-after-30-days', class: 'housekeeping', minutes: 10,
    departs: NOTICE, says: [/safety notice.*(keeper today|not put off)/iu],
  },
  {
    task: 'update-firmware', on: ALL, every: {},
    raisedBy: 'bad-check-notices', class: 'housekeeping', minutes: 20,
    says: [/save (the )?settings/iu, /one machine first/iu, /attended/iu],
  },
  {
    task: 'save-settings', on: ALL, every: { '*': '180 days' }, raisedBy: '', class: 'housekeeping', minutes: 3,
    besides: { 'bad-check-notices': 'before firmware work' }, says: [/before firmware or board work/iu],
  },
  {
    task: 'run-in', on: ALL, every: { '*': 'once 20 h; once 50 h' }, raisedBy: '', class: 'safety', minutes: 30,
    says: [/one line/iu],
  },
  {
    task: 'dry-filament', on: ALL, every: {},
    raisedBy: 'thirsty-spool damp-filament', class: 'print quality', minutes: 5,
    kit: 'dryer', says: [/maker/iu],
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

/**
 * What no calendar asks for: done when it is found or seen. The technician's table names a few ("where fitted, by
 * condition"); the others follow from the parts that machines have.
 */
export interface OnConditionRow {
  task: Task;
  on: readonly string[];
  raisedBy: string;
  class: string;
  minutes: number;
}
const condition = (
  task: Task,
  on: readonly string[],
  raisedBy: string,
  minutes: number,
  consequence = 'print failure',
): OnConditionRow => ({ task, on, raisedBy, class: consequence, minutes });
const BOWDENS = names('alder birch juniper');
const WHEELED = names('birch hazel rowan');
const RODDED = names('alder elm maple');
const PROBED = names('cedar elm juniper maple rowan');
const LEAD_SCREWS = names('alder birch cedar elm hazel maple rowan');

export const ON_CONDITION_TABLE: readonly OnConditionRow[] = [
  condition('clear-jam', ALL, 'no-extrusion', 15),
  condition('clean-nozzle', ALL, '', 5, 'print quality'),
  condition('clean-fans', ALL, '', 5),
  condition('clean-enclosure', ['elm'], '', 10, 'housekeeping'),
  condition('check-filament-path', ALL, '', 2, 'print quality'),
  condition('replace-sock', [], '', 5),
  condition('replace-heat-break', ALL, '', 30),
  condition('replace-heater', ALL, 'bad-check-heater', 25, 'safety'),
  condition('replace-thermistor', ALL, '', 20, 'safety'),
  condition('replace-hot-end-fan', ALL, '', 15),
  condition('replace-part-fan', ALL, '', 15),
  condition('replace-board-fan', ALL, '', 20),
  condition('replace-feeder-gear', ALL, 'bad-check-feeder-gear worn-gear', 15),
  condition('replace-tube-fitting', BOWDENS, '', 10),
  condition('replace-belt', ALL, '', 40),
  condition('replace-pulley', ALL, '', 25),
  condition('replace-idler', ALL, 'bad-check-idlers', 20),
  condition('replace-wheel', WHEELED, 'bad-check-wheels', 20),
  condition('replace-bearing', RODDED, 'bad-lubricate-rods bad-wipe-rods', 45),
  condition('replace-rod', RODDED, '', 60),
  condition('replace-rail', names('cedar elm juniper'), 'bad-lubricate-rails', 60),
  condition('replace-lead-screw', ALL, 'bad-grease-ball-screw', 60),
  condition('replace-screw-nut', LEAD_SCREWS, 'bad-grease-screw bad-clean-screw', 45),
  condition('replace-coupler', ALL, '', 30),
  condition('replace-build-plate', ALL, 'bad-check-plate', 5, 'print quality'),
  condition('replace-bed-spring', names('alder birch hazel rowan'), '', 15),
  condition('replace-bed-heater', ALL, '', 60, 'safety'),
  condition('replace-probe', PROBED, 'bad-check-probe', 20),
  condition('replace-end-stop', ALL, '', 15),
  condition('replace-printed-part', names('alder maple'), 'bad-check-printed-parts', 30),
  condition('replace-fastener', ALL, '', 5),
  condition('replace-motor', ALL, '', 40),
  condition('replace-wiring', ALL, 'bad-check-wiring', 45, 'safety'),
  condition('replace-power-supply', ALL, '', 45, 'safety'),
  condition('replace-control-board', ALL, '', 60, 'safety'),
  condition('replace-screen', ALL, '', 20, 'housekeeping'),
  condition('replace-camera', ALL, '', 10, 'housekeeping'),
  condition('replace-spool-holder', ALL, '', 5, 'housekeeping'),
  condition('replace-filament-sensor', [], '', 10),
  condition('replace-door', ALL, '', 15, 'safety'),
];

/** `crash` raises these as one bundle, in this order. */
export const CRASH_BUNDLE = names(
  'check-wiring check-heater check-nozzle check-probe check-wheels tighten-pulleys square-gantry level-bed check-first-layer',
);
/** After a month of standing still. "A look at lubricants" is whichever of them the build has. */
export const STANDING_BUNDLE = names(
  'dust-off check-wheels lubricate-rods wipe-rods lubricate-rails grease-screw grease-ball-screw check-first-layer',
);
