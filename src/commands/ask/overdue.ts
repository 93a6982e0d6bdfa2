/** "What's overdue on alder?": what is late, and what comes next. */
import { ROOM } from '../../maintenance/codes.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import { count } from '../../replies/format/number.ts';
import { list, shortened } from '../../replies/format/list.ts';
import { bold, item, type Button, type Item, type Reply, type Section } from '../../replies/reply.ts';
import { comingLine, overdueLine, dueLine } from '../../replies/wording/due.ts';
import { machineName, todo } from '../../replies/wording/names.ts';
import { moreOf } from '../../replies/wording/refusals.ts';
import { byMachine, rowItem } from './rows.ts';
import { isRoomLine, notAsked, type AskScene, type Topic } from './topic.ts';

const MOST_LATE = 8;
const MOST_NEXT = 3;
const MOST_UNKNOWN = 4;

const inState = (rows: readonly DueRow[], ...states: readonly DueRow['state'][]): DueRow[] =>
  rows.filter((row) => states.includes(row.state));

/** "1 overdue, 2 coming up", naming only what there is. */
export function tally(rows: readonly DueRow[]): string {
  const parts = [
    [inState(rows, 'overdue').length, 'overdue'],
    [inState(rows, 'due').length, 'due'],
    [inState(rows, 'coming-up').length, 'coming up'],
    [inState(rows, 'put-off').length, 'put off'],
  ] as const;
  const said = parts.flatMap(([n, word]) => (n > 0 ? [`${n} ${word}`] : []));
  return said.length > 0 ? said.join(', ') : 'nothing overdue, nothing due';
}

/** For one machine with the button that makes today the baseline of all its tasks. */
function noRecord(rows: readonly DueRow[], machine?: string): Item[] {
  const n = inState(rows, 'no-record').length;
  if (n === 0) return [];
  const text = [`${count(n, 'task')} without a record: say when last done.`];
  if (machine === undefined || machine === ROOM) return [{ text }];
  const safety = inState(rows, 'no-record').filter((row) => row.class === 'safety');
  const { shown, more } = shortened(safety, MOST_UNKNOWN);
  const first = [...shown.map((row) => todo(row.task)), ...(more > 0 ? [`${more} more`] : [])];
  const baseline: Button = {
    label: 'All fine as of today',
    press: { does: 'deeds', deeds: [{ kind: 'state', machine }] },
  };
  if (n === safety.length && first.length > 0)
    return [
      {
        text: [`${count(n, 'safety check')} without a record: ${list(first)}. Say when last done.`],
        buttons: [baseline],
      },
    ];
  return [
    ...(first.length > 0 ? [item(`First, for safety, nothing on record: ${list(first)}.`)] : []),
    { text, buttons: [baseline] },
  ];
}

/** What is done in one go for the whole room is a line of its own beside a machine's list. */
function roomLines(rows: readonly DueRow[]): Item[] {
  const late = rows.filter((row) => isRoomLine(row) && row.state === 'overdue');
  return late.length === 0 ? [] : [item(`With the whole room: ${late.map(dueLine).join(' · ')}`)];
}

function oneMachine(name: string, all: readonly DueRow[], scene: AskScene): Reply {
  const rows = all.filter((row) => !isRoomLine(row));
  const late = inState(rows, 'overdue');
  const { shown: next, more: further } = shortened(
    [...inState(rows, 'due'), ...inState(rows, 'coming-up')],
    MOST_NEXT,
  );
  const { shown, more } = shortened(late, MOST_LATE);
  const lateItems = shown.map((row, i) => rowItem([overdueLine(row)], row, i));
  const nextItems = next.map((row, i) => {
    if (row.state === 'due') return rowItem([`due now: ${dueLine(row)}`], row, i + late.length);
    const isFirst = next[i - 1]?.state !== 'coming-up';
    return rowItem([`${isFirst ? 'next: ' : ''}${comingLine(row, scene)}`], row, i + late.length);
  });
  const sections: Section[] = [
    {
      items: [
        ...lateItems,
        ...(more > 0 ? [item(moreOf(more))] : []),
        ...nextItems,
        ...(further > 0 ? [item(moreOf(further))] : []),
      ],
    },
    { items: roomLines(all) },
    { items: noRecord(rows, name) },
  ];
  return { title: [bold(machineName(name, scene)), `: ${tally(rows)}.`], sections, buttons: [] };
}

function wholeRoom(rows: readonly DueRow[], scene: AskScene): Reply {
  const late = inState(rows, 'overdue');
  if (late.length === 0)
    return { title: ['Nothing is overdue.'], sections: [{ items: noRecord(rows) }], buttons: [] };
  const groups = byMachine(late);
  const { shown, more } = shortened([...groups], MOST_LATE);
  const items = shown.map(([machine, of]) =>
    item(bold(machineName(machine, scene)), `: ${of.map(dueLine).join(' · ')}`),
  );
  return {
    title: [bold(`${late.length} overdue`), ` on ${count(groups.size, 'machine')}.`],
    sections: [{ items: [...items, ...(more > 0 ? [item(moreOf(more))] : [])] }, { items: noRecord(rows) }],
    buttons: [],
  };
}

export const overdue: Topic = (scene): Reply => {
  const { machine } = scene.act;
  const rows = scene.rows(machine).filter((row) => !notAsked(scene.act, row.task));
  return machine === undefined
    ? wholeRoom(
        rows.filter((row) => !isRoomLine(row)),
        scene,
      )
    : oneMachine(machine, rows, scene);
};
