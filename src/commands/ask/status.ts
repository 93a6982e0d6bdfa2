/** "Status #2": one machine as it stands, or all in a line each. */
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { SYMPTOMS, type Symptom } from '../../maintenance/codes.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import { list } from '../../replies/format/list.ts';
import { count, figure, hours } from '../../replies/format/number.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { dueLine } from '../../replies/wording/due.ts';
import {
  heldFor,
  machineName,
  materialName,
  nozzleName,
  symptomName,
  todo,
} from '../../replies/wording/names.ts';
import { since, dateWord } from '../../replies/wording/view.ts';
import { leavingWords } from './leaving.ts';
import { tally } from './overdue.ts';
import { isRoomLine, machinesOf, type AskScene, type Topic } from './topic.ts';

/** What keeps a machine from being used, gravest first; empty when nothing does. */
export function stateWords(machine: MachineRecord, view: AskScene): string[] {
  const { hold } = machine;
  const held = hold
    ? [
        `held since ${since(hold.since.at, view)}: ${heldFor(hold)}, told by ${view.personName(hold.since.by)}`,
      ]
    : [];
  return [...held, ...stateBesideHold(machine, view)];
}

/** Where the hold stands on top of the answer. */
function stateBesideHold({ down, opened, retired }: MachineRecord, view: AskScene): string[] {
  return [
    ...(retired ? ['retired'] : []),
    ...(down ? [`out of use since ${since(down.at, view)}`] : []),
    ...(opened ? [`open since ${since(opened.at, view)}: ${view.personName(opened.by)}`] : []),
  ];
}

/** What a hold stands for is said with the hold. */
export const openSymptoms = ({ symptoms, hold }: MachineRecord): string[] =>
  SYMPTOMS.filter((s) => symptoms[s]?.open && s !== hold?.symptom && !HAPPENED.has(s)).map(symptomName);

/** Over as soon as it happened; what it asks for is in the list. */
const HAPPENED: ReadonlySet<Symptom> = new Set<Symptom>(['moved', 'power-cut']);

function claims(machine: MachineRecord, view: AskScene): string[] {
  return Object.entries(machine.claims).flatMap(([task, claim]) =>
    claim
      ? [
          `${todo(task as keyof typeof machine.claims)}: ${view.personName(claim.mark.by)}${claim.on === undefined ? '' : `, ${dateWord(claim.on, view)}`}`,
        ]
      : [],
  );
}

function inFull(machine: MachineRecord, scene: AskScene, leaving: readonly string[]): Item[] {
  const rows = scene.rows(machine.name).filter((row) => !isRoomLine(row));
  const now = [...stateBesideHold(machine, scene), ...leaving];
  const nozzle = nozzleName(machine.nozzle);
  const loaded = machine.loaded?.material;
  const weight = machine.loaded?.grams;
  const open = openSymptoms(machine);
  const claimed = claims(machine, scene);
  const late = rows.filter((row) => row.state === 'overdue').slice(0, 3);
  return [
    ...(now.length > 0 ? [item(now.join(' · '))] : machine.hold ? [] : [item('in use')]),
    item(
      [
        machine.counterKnown
          ? `${hours(machine.totals.hours)} on the counter`
          : `${hours(machine.totals.hours)} logged`,
        ...(nozzle ? [`nozzle ${nozzle}`] : []),
        ...(loaded
          ? [`${materialName(loaded)} loaded${weight === undefined ? '' : `, ${figure(weight, 0)} g`}`]
          : []),
      ].join(' · '),
    ),
    ...(open.length > 0 ? [item(`Noticed and still open: ${list(open)}`)] : []),
    ...(claimed.length > 0 ? [item(`Somebody has it: ${claimed.join(' · ')}`)] : []),
    item(
      `Care: ${tally(rows)}${unchecked(rows)}${late.length > 0 ? `. ${late.map(dueLine).join(' · ')}` : ''}`,
    ),
  ];
}

/** A machine of which nobody knows whether it was ever looked at is not fine. */
function unchecked(rows: readonly DueRow[]): string {
  const n = rows.filter((row) => row.state === 'no-record' && row.class === 'safety').length;
  return n > 0 ? `, ${count(n, 'safety check')} without a record` : '';
}

function inShort(machine: MachineRecord, scene: AskScene, leaving: readonly string[]): Item {
  const now = [...stateWords(machine, scene), ...leaving];
  const rows = scene.rows(machine.name).filter((row) => !isRoomLine(row));
  const open = openSymptoms(machine);
  const words = [
    ...now,
    ...(open.length > 0 ? [`noticed: ${list(open)}`] : []),
    `${tally(rows)}${unchecked(rows)}`,
  ];
  return item(bold(machineName(machine.name, scene)), `: ${words.join(' · ')}`);
}

export const status: Topic = async (scene): Promise<Reply> => {
  const machines = machinesOf(scene);
  const leaves = await leavingWords(scene);
  const leaving = ({ name }: MachineRecord): string[] => [leaves.get(name) ?? []].flat();
  const [only] = machines;
  if (scene.act.machine !== undefined && only)
    return {
      title: [bold(machineName(only.name, scene))],
      sections: [{ items: inFull(only, scene, leaving(only)) }],
      buttons: [],
    };
  return {
    title: [bold(count(machines.length, 'machine')), '.'],
    sections: [{ items: machines.map((m) => inShort(m, scene, leaving(m))) }],
    buttons: [],
  };
};
