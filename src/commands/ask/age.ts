/** "How long has juniper been on that nozzle?" */
import { doseBetween, doseOf } from '../../maintenance/care/dose.ts';
import type { DoseItem } from '../../maintenance/care/rule.ts';
import type { Material, Part } from '../../maintenance/codes.ts';
import { isPart, partReplacedBy } from '../../maintenance/codes.ts';
import type { FittedPart, MachineRecord } from '../../maintenance/record/record.ts';
import { dayMonth } from '../../replies/format/date.ts';
import { count, figure, hours } from '../../replies/format/number.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { machineName, materialName, nozzleName, partName } from '../../replies/wording/names.ts';
import { gramsSaid } from './job.ts';
import { machinesOf, todayOf, type AskScene, type Topic } from './topic.ts';

const partAsked = ({ act }: AskScene): Part | undefined => {
  if (act.part !== undefined) return isPart(act.part) ? act.part : undefined;
  return act.task === undefined ? undefined : partReplacedBy(act.task);
};

const candidates = (part: Part): readonly Part[] => (part === 'belt' ? ['x-belt', 'y-belt', 'belt'] : [part]);

const WORN_BY: ReadonlySet<Part> = new Set<Part>([
  'nozzle',
  'feeder-gear',
  'guide-tube',
  'liner',
] satisfies DoseItem[]);
const isWornBy = (part: Part): part is DoseItem => WORN_BY.has(part);
/** Less is not worth a word. */
const WORTH_TELLING = 0.01;

/** "about 70 % of its life used by filled filament": what the logs say, and what was asked about on top. */
function wearOf(machine: MachineRecord, fitted: FittedPart, part: Part, { act, said }: AskScene): string {
  if (!isWornBy(part)) return '';
  const dose = doseBetween(part, machine.nozzle, fitted.totals, machine.totals);
  const share = (value: number): string =>
    value >= 2 ? `about ${figure(value, 1)} times its life` : `about ${figure(value * 100, 0)} % of its life`;
  const so = dose < WORTH_TELLING && fitted.ageKnown ? '; hardly any filled filament on record' : '';
  const now =
    dose < WORTH_TELLING
      ? so
      : `; ${share(dose)} used by filament, by the logs${fitted.ageKnown ? '' : ' kept here'}`;
  const grams = act.grams ?? gramsSaid(said);
  const [material, name] = act.material ? [act.material, materialName(act.material)] : (fillIn(said) ?? []);
  if (grams === undefined || material === undefined) return now;
  const more = doseOf(part, machine.nozzle, material, grams);
  return `${now}; ${figure(grams, 0)} g of ${name} use up ${share(more)}`;
}

/** What it is filled with, where the base is not said: the filling does the wearing. */
const FILLED: readonly (readonly [RegExp, Material, string])[] = [
  [/\b(?:cf|carbon)\b/iu, 'nylon-cf', 'carbon-filled filament'],
  [/\b(?:gf|glass)\b/iu, 'nylon-gf', 'glass-filled filament'],
  [/\bglow\b/iu, 'pla-glow', 'glow filament'],
];
function fillIn(said: string): readonly [Material, string] | undefined {
  const found = FILLED.find(([words]) => words.test(said));
  return found && [found[1], found[2]];
}

function ageOf(machine: MachineRecord, fitted: FittedPart, part: Part, scene: AskScene): Item {
  const used = Math.max(0, machine.totals.hours - fitted.totals.hours);
  const days = scene.today - fitted.day;
  const kind = part === 'nozzle' ? nozzleName(machine.nozzle) : (fitted.text ?? '');
  const doubt = fitted.precision === 'about' ? 'about ' : '';
  const since = `${doubt}${dayMonth(scene.calendar.dateOf(fitted.at), todayOf(scene))}`;
  const known = fitted.ageKnown
    ? `${doubt}${hours(used)} over ${count(days, 'day')}, in since ${since}`
    : `in since before ${since}, at least ${hours(used)} and ${count(days, 'day')}`;
  return item(
    bold(machineName(machine.name, scene)),
    ` ${partName(part)}${kind ? ` (${kind})` : ''}: ${known}${wearOf(machine, fitted, part, scene)}`,
  );
}

export const age: Topic = (scene): Reply => {
  const part = partAsked(scene);
  if (part === undefined) return { sections: [{ items: [item('Which part do you mean?')] }], buttons: [] };
  const found = machinesOf(scene).flatMap((machine) =>
    candidates(part).flatMap((p) => {
      const fitted = machine.parts[p];
      return fitted ? [{ at: fitted.day, line: ageOf(machine, fitted, p, scene) }] : [];
    }),
  );
  const oldestFirst = found.sort((a, b) => a.at - b.at).map((f) => f.line);
  const none = item(
    `No record of when the ${partName(part)} went in. Say when, such as “new ${partName(part)} last Monday”.`,
  );
  return { sections: [{ items: oldestFirst.length > 0 ? oldestFirst : [none] }], buttons: [] };
};
