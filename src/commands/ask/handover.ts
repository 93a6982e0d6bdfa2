/** "What do I pass on?": what is held, down, open, claimed, put off and noticed. */
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { list, shortened } from '../../replies/format/list.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { dueLine } from '../../replies/wording/due.ts';
import { machineName, todo } from '../../replies/wording/names.ts';
import { note } from '../../replies/wording/noted.ts';
import { moreOf } from '../../replies/wording/refusals.ts';
import type { Fact } from '../../maintenance/record/standing.ts';
import type { Task } from '../../maintenance/codes.ts';
import { leavingWords } from './leaving.ts';
import { openSymptoms, stateWords } from './status.ts';
import { told as factsTold } from './told.ts';
import { machinesOf, type AskScene, type Topic } from './topic.ts';

const claimsOf = (machine: MachineRecord, scene: AskScene): string[] =>
  Object.entries(machine.claims).flatMap(([task, claim]) =>
    claim ? [`${todo(task as Task)}: ${scene.personName(claim.mark.by)}`] : [],
  );

function lineOf(machine: MachineRecord, scene: AskScene, leaves: string | undefined): Item[] {
  const open = openSymptoms(machine);
  const claims = claimsOf(machine, scene);
  const putOff = scene.rows(machine.name).filter((row) => row.state === 'put-off');
  const safety = scene.rows(machine.name).filter((row) => row.state === 'overdue' && row.class === 'safety');
  const words = [
    ...stateWords(machine, scene),
    ...(leaves === undefined ? [] : [leaves]),
    ...(open.length > 0 ? [`noticed: ${list(open)}`] : []),
    ...claims,
    ...(putOff.length > 0 ? [`put off: ${list(putOff.map((row) => todo(row.task)))}`] : []),
    ...safety.map(dueLine),
  ];
  return words.length === 0 ? [] : [item(bold(machineName(machine.name, scene)), `: ${words.join(' · ')}`)];
}

const MOST_TODAY = 12;

/** What is still so is in the list of what is open; it need not be told a second time. */
const OPEN_KINDS: ReadonlySet<Fact['kind']> = new Set(['down', 'opened', 'claimed', 'putOff']);
function standsAbove(fact: Fact, { record }: AskScene): boolean {
  if (fact.kind !== 'seen') return OPEN_KINDS.has(fact.kind);
  return record.machines.get(fact.machine)?.symptoms[fact.symptom]?.open !== undefined;
}

/** What was written since this morning, so that the next shift reads it too. */
async function today(scene: AskScene): Promise<Item[]> {
  const { journal, calendar, now } = scene;
  const facts = await factsTold(journal, { from: calendar.at(scene.today, 0), asOf: now, limit: 200 });
  const { shown, more } = shortened(
    facts.filter((fact) => 'machine' in fact && fact.machine !== undefined && !standsAbove(fact, scene)),
    MOST_TODAY,
  );
  const items = shown.map((fact) => {
    const machine =
      'machine' in fact && fact.machine !== undefined ? `${machineName(fact.machine, scene)}: ` : '';
    return item(`${machine}${note(fact, scene)} (${scene.personName(fact.by)})`);
  });
  return more > 0 ? [...items, item(moreOf(more))] : items;
}

/** What was told with the last hand-over; without one, today. */
function notes({ record, calendar, today: day, now, personName }: AskScene): Item[] {
  const from = record.handedOver?.at ?? calendar.at(day, 0);
  return record.notes
    .filter(({ at }) => at >= from && at <= now)
    .map(({ text, by }) => item(`${text} (${personName(by)})`));
}

export const NOTES = 'Notes';

export const handover: Topic = async (scene): Promise<Reply> => {
  const leaves = await leavingWords(scene);
  const open = machinesOf(scene).flatMap((machine) => lineOf(machine, scene, leaves.get(machine.name)));
  const [told, done] = [notes(scene), await today(scene)];
  return {
    title: [bold('To pass on'), ':'],
    sections: [
      { items: open.length > 0 ? open : [item('Nothing is held, down, open, claimed or put off.')] },
      ...(told.length > 0 ? [{ heading: NOTES, items: told }] : []),
      ...(done.length > 0 ? [{ heading: 'Written today', items: done }] : []),
    ],
    buttons: [],
  };
};
