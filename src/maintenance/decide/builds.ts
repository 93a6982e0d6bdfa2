/**
 * What a build has not. Only what is stated to be otherwise counts: a feature that nobody stated may be there.
 * The deed is recorded all the same and flagged; what may be *planned* is the care rules' business.
 */
import { isPart, partReplacedBy, type Part, type Task } from '../codes.ts';
import type { Build, Guide } from '../machine.ts';

/** True: stated as fitted; false: stated as something else; undefined: not stated. */
type Stated = boolean | undefined;
type Has = (build: Build) => Stated;

const isNot = <T>(value: T | undefined, absent: T): Stated =>
  value === undefined ? undefined : value !== absent;

const onAnAxis =
  (guide: Guide): Has =>
  ({ x, y, z }) => {
    const axes = [x, y, z];
    if (axes.includes(guide)) return true;
    return axes.includes(undefined) ? undefined : false;
  };
const belts: Has = ({ belts }) => isNot(belts, 'none');
const screw: Has = ({ zDrive }) => isNot(zDrive, 'belt');
/** A direct feed may still be led by a tube, where that is stated. */
const tube: Has = ({ feed, guideTube }) => guideTube || isNot(feed, 'direct');
const liner: Has = ({ hotEnd }) => isNot(hotEnd, 'all-metal');
const probe: Has = ({ probe }) => probe;
const printed: Has = ({ printedParts }) => isNot<Build['printedParts']>(printedParts, 'none');
const rods = onAnAxis('rods');
const rails = onAnAxis('rails');
const wheels = onAnAxis('wheels');

const PARTS_BY_BUILD: Readonly<Partial<Record<Part, Has>>> = {
  liner,
  sock: ({ sock }) => sock,
  'guide-tube': tube,
  'tube-fitting': tube,
  'x-belt': belts,
  'y-belt': belts,
  belt: belts,
  idler: belts,
  wheel: wheels,
  rod: rods,
  rail: rails,
  'lead-screw': screw,
  'screw-nut': screw,
  coupler: screw,
  'bed-spring': ({ bed }) => isNot(bed, 'rigid'),
  'bed-heater': ({ bedHeater }) => isNot(bedHeater, 'none'),
  probe,
  'printed-part': printed,
  filter: ({ filter }) => isNot(filter, 'none'),
  'filament-sensor': ({ filamentSensor }) => filamentSensor,
  door: ({ enclosed }) => enclosed,
};

const TASKS_BY_BUILD: Readonly<Partial<Record<Task, Has>>> = {
  'lubricate-rods': rods,
  'wipe-rods': rods,
  'lubricate-rails': rails,
  'check-wheels': wheels,
  'grease-screw': screw,
  'clean-screw': screw,
  'grease-ball-screw': ({ zDrive }) => (zDrive === undefined ? undefined : zDrive === 'ball-screw'),
  'check-tube': tube,
  'trim-tube': ({ feed }) => isNot(feed, 'direct'),
  'check-liner': liner,
  'tension-belts': belts,
  'check-belt': belts,
  'check-idlers': belts,
  'check-probe': probe,
  'check-printed-parts': printed,
  'check-guards': ({ guards }) => guards,
  'clean-enclosure': ({ enclosed }) => enclosed,
};

export const lacksPart = (part: string, build: Build): boolean =>
  isPart(part) && PARTS_BY_BUILD[part]?.(build) === false;

export function lacksTask(task: Task, build: Build): boolean {
  const part = partReplacedBy(task);
  return part ? lacksPart(part, build) : TASKS_BY_BUILD[task]?.(build) === false;
}

/** Grease can attack a plastic nut and holds grit, unless its maker names one and the workshop states it. */
export const greasesPlasticNut = (task: Task, build: Build): boolean =>
  task === 'grease-screw' && build.screwNut === 'plastic' && build.screwNutLubricant === undefined;
