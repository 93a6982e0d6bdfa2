/** "Why?" to a list, "why the rods on alder?": what each line rests on, in one sentence. */
import { ROOM } from '../maintenance/codes.ts';
import type { DueRow } from '../maintenance/due/row.ts';
import { dueRows, machineDue } from '../maintenance/due/rows.ts';
import { capital } from '../replies/format/list.ts';
import { bold, item } from '../replies/reply.ts';
import { dueLine, why } from '../replies/wording/due.ts';
import { machineName, todo } from '../replies/wording/names.ts';
import { isRoomLine } from './ask/topic.ts';
import { namedIn } from './namedIn.ts';
import { dueContext, type Scene } from './scene.ts';
import type { Played } from './step.ts';

const ASKS_WHY = /^(?:(?:but|and|so|ok|okay|hm+)[ ,]+)*why\b/iu;
/** Nothing of its own: it is about what was just shown. */
const BARE =
  /^(?:(?:but|and|so|ok|okay|hm+)[ ,]+)*why(?: (?:so|now|that|this|those|these|is (?:that|this|it)|are (?:they|those|these)))?(?: (?:due|overdue|late|on the list))?[?.! ]*$/iu;
const DUE_WORD = /\b(?:due|overdue|late|list|listed|needed|necessary|again)\b/iu;
const MOST = 3;

/** Undefined when the message asks for the cause of trouble, or for nothing that is on a list. */
export function playWhy(scene: Scene): Played | undefined {
  const { reading, message } = scene;
  const text = message.text.trim();
  const others = reading.acts.some(
    ({ act }) => act.kind !== 'ask' || act.symptom !== undefined || act.topic === 'next',
  );
  if (!ASKS_WHY.test(text) || others || reading.safety.length > 0 || reading.injury) return undefined;
  const rows = BARE.test(text) ? shownRows(scene) : rowsMeant(scene, text);
  if (rows.length === 0) return undefined;
  const items = rows
    .slice(0, MOST)
    .map((row) =>
      item(bold(machineName(row.machine, scene)), `: ${row.raised ? todo(row.task) : dueLine(row)}. ${capital(why(row, scene))}`),
    );
  const [first] = rows;
  const act = { kind: 'ask', topic: 'next', ...(first ? { machine: first.machine, task: first.task } : {}) } as const;
  return {
    steps: [{ act, outcome: 'answered', entries: [], reply: { sections: [{ items }], buttons: [] } }],
    caution: [],
    grave: false,
    keeps: true,
  };
} // prettier-ignore

function rowsOf(scene: Scene, machine: string): readonly DueRow[] {
  const { record } = scene;
  if (machine === ROOM) return dueRows(record, dueContext(scene)).filter((row) => row.machine === ROOM);
  const own = record.machines.get(machine);
  return own ? machineDue(own, dueContext(scene), record.room) : [];
}

/** The lines that carried buttons in the last reply. */
function shownRows(scene: Scene): DueRow[] {
  const shown = (scene.conversation.presses ?? []).flatMap(({ press }) =>
    press.does === 'deeds'
      ? press.deeds.flatMap((deed) => (deed.kind === 'done' && deed.machine !== undefined ? [deed] : []))
      : [],
  );
  return shown.flatMap(({ machine, task }) =>
    rowsOf(scene, machine ?? '').filter((row) => row.task === task),
  );
}

/** Of the machine that is named, or was spoken of: the tasks whose words are said; none said, what is late or due. */
function rowsMeant(scene: Scene, text: string): DueRow[] {
  const named = namedIn(text, scene.record);
  const spoken = scene.conversation.lastMachine;
  const machines = named.length > 0 ? named : spoken === undefined ? [] : [spoken];
  const rows = machines.flatMap((machine) => rowsOf(scene, machine));
  const scored = rows.map((row) => ({ row, score: wordsShared(todo(row.task), text) }));
  const best = Math.max(0, ...scored.map(({ score }) => score));
  const owed = (row: DueRow): boolean => row.state === 'overdue' || row.state === 'due';
  if (best > 0) {
    const meant = scored.filter(({ score }) => score === best).map(({ row }) => row);
    return meant.some(owed) ? meant.filter(owed) : meant;
  }
  const listed = DUE_WORD.test(text) || (named.length > 0 && text.split(/\s+/u).length <= 2);
  return listed ? rows.filter((row) => owed(row) && !isRoomLine(row)) : [];
}

/** "Check" and "replace" name no task of their own. */
const COMMON: ReadonlySet<string> = new Set(['check', 'clean', 'replace', 'test', 'look', 'with', 'over']);
const stems = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length >= 3 && word !== 'the' && word !== 'and')
    .map((word) => word.replace(/(?:ing|es|s)$/u, ''));

/** A word of the thing counts; the verb only decides between two of the same thing. */
function wordsShared(task: string, text: string): number {
  const said = new Set(stems(text));
  const shared = stems(task).filter((word) => said.has(word));
  const things = shared.filter((word) => !COMMON.has(word));
  return things.length === 0 ? 0 : things.length + (shared.length - things.length) / 10;
}
