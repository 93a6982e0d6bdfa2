/** What a spool will use up, told when it is mounted and before it is printed. */
import { doseOf } from '../../maintenance/care/dose.ts';
import { HOT_FOR_PTFE } from '../../maintenance/care/materials.ts';
import type { Material } from '../../maintenance/codes.ts';
import { hotLimit } from '../../maintenance/cautions/hotLimit.ts';
import type { EntryOf } from '../../maintenance/entry/entry.ts';
import type { MachineRecord, ShelfItem } from '../../maintenance/record/record.ts';
import { figure } from '../format/number.ts';
import { list } from '../format/list.ts';
import { item, type Item } from '../reply.ts';
import { machineName, nozzleName, partName } from './names.ts';
import type { Names } from './view.ts';

/** A spool whose weight nobody said is taken as a usual one. */
export const USUAL_SPOOL_G = 1000;
/** Less than a tenth of a nozzle is not worth a line. */
const WORTH_TELLING = 0.1;

export function loadingHints(
  { material, grams }: Pick<EntryOf<'loaded'>, 'material' | 'grams'>,
  machine: MachineRecord,
  shelf: readonly ShelfItem[],
  names: Names,
): Item[] {
  if (material === undefined) return [];
  const dose = doseOf('nozzle', machine.nozzle, material, grams ?? USUAL_SPOOL_G);
  const wears = [
    ...spoolWear(machine, material, grams ?? USUAL_SPOOL_G, grams === undefined ? 'a spool of 1 kg' : 'this spool', names).map((text) => item(`${text}.`)),
    ...(dose < WORTH_TELLING ? [] : harder(dose, machine, shelf)),
  ]; // prettier-ignore
  const hot = HOT_FOR_PTFE.includes(material) ? hotEnd(machine) : [];
  return [...wears, ...hot];
}

/** "Hazel has brass 0.4: this spool uses up about 3.6 nozzles’ worth"; nothing where it hardly wears. */
export function spoolWear(
  machine: MachineRecord,
  material: Material,
  grams: number,
  what: string,
  names: Names,
): readonly string[] {
  const dose = doseOf('nozzle', machine.nozzle, material, grams);
  if (dose < WORTH_TELLING) return [];
  const has = nozzleName(machine.nozzle);
  const nozzle = has === '' ? 'a nozzle that is not stated (taken as brass)' : has;
  const share =
    dose >= 1
      ? `about ${figure(dose, 1)} nozzles’ worth`
      : `about ${figure(dose * 100, 0)} % of this nozzle’s life`;
  return [`${machineName(machine.name, names)} has ${nozzle}: ${what} uses up ${share}`];
}

/** What the shelf has that bears more. */
function harder(dose: number, machine: MachineRecord, shelf: readonly ShelfItem[]): Item[] {
  if (dose < 1 || machine.nozzle.material === 'hardened') return [];
  const found = shelf.filter(
    (s) => s.part === 'nozzle' && s.count > 0 && /hardened|carbide|ruby|gem/iu.test(s.fitted ?? ''),
  );
  if (found.length === 0) return [item('No harder nozzle is on the shelf, by the records.')];
  return [
    item(
      `On the shelf: ${list(found.map((s) => `${s.count} ${partName('nozzle', s.count)} ${s.fitted ?? ''}`))}. Swap it first?`,
    ),
  ];
}

function hotEnd({ build }: MachineRecord): Item[] {
  if (build.hotEnd === 'all-metal') return [];
  const { limitC, stated } = hotLimit(build);
  const what = stated ? 'Its hot end is PTFE-lined' : 'Its hot end is not stated, so taken as PTFE-lined';
  return [
    item(
      `${what}: do not print above ${limitC ?? 240} °C on it. What wants more than that does not go on this machine.`,
    ),
  ];
}
