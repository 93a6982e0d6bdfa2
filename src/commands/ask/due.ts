/** "What's due this week?": due and coming up, to the end of the span that was named. */
import { dayOfDate } from '../../maintenance/calendar.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import { fullDate } from '../../replies/format/date.ts';
import { shortened } from '../../replies/format/list.ts';
import { count, minutes } from '../../replies/format/number.ts';
import { bold, item, type Reply } from '../../replies/reply.ts';
import { comingLine, dueLine } from '../../replies/wording/due.ts';
import { machineName, todo } from '../../replies/wording/names.ts';
import { moreOf } from '../../replies/wording/refusals.ts';
import { rowItem } from './rows.ts';
import { isRoomLine, notAsked, todayOf, type AskScene, type Topic } from './topic.ts';

const MOST = 12;

/** Does it fall due within the span (late ones from today on)? Without a span: due now or coming up. */
function falls(row: DueRow, { act, today }: AskScene): boolean {
  const now = row.state === 'overdue' || row.state === 'due';
  if (act.from === undefined && act.to === undefined) return now || row.state === 'coming-up';
  const from = act.from === undefined ? today : dayOfDate(act.from);
  const to = act.to === undefined ? from : dayOfDate(act.to);
  if (now) return from <= today && today <= to;
  const day = row.forecast?.p50 ?? null;
  return day !== null && row.state !== 'put-off' && day >= from && day <= to;
}

function spanWords(scene: AskScene): string {
  const { act } = scene;
  const today = todayOf(scene);
  const from = act.from ?? act.to;
  const to = act.to ?? act.from;
  if (from === undefined || to === undefined) return 'Due and coming up';
  return from === to ? fullDate(from, today) : `${fullDate(from, today)} to ${fullDate(to, today)}`;
}

/** "I've got 20 mins": the most urgent that fits, then what still fits beside it. */
function withinTime(rows: readonly DueRow[], time: number, scene: AskScene): Reply {
  const chosen: DueRow[] = [];
  let left = time;
  for (const row of rows)
    if (row.minutes <= left && chosen.length < MOST) {
      chosen.push(row);
      left -= row.minutes;
    }
  const title = [bold(`In ${minutes(time)}`)];
  const [first] = rows;
  if (!first) return { title: [...title, ': nothing is due.'], sections: [], buttons: [] };
  if (chosen.length === 0) {
    const shortest = rows.reduce((a, b) => (b.minutes < a.minutes ? b : a));
    return {
      title: [
        ...title,
        `: nothing fits; the shortest is ${todo(shortest.task)} on ${machineName(shortest.machine, scene)}, about ${minutes(shortest.minutes)}.`,
      ],
      sections: [],
      buttons: [],
    };
  }
  const items = chosen.map((row, i) =>
    rowItem(
      [bold(machineName(row.machine, scene)), `: ${lineOf(row, scene)}, about ${minutes(row.minutes)}`],
      row,
      i,
    ),
  );
  const tooLong = rows.filter(
    (row) => row.state === 'overdue' && row.class === 'safety' && !chosen.includes(row),
  );
  const note = tooLong.map((row) =>
    item(
      `Takes longer, and should not wait: ${todo(row.task)} on ${machineName(row.machine, scene)} (about ${minutes(row.minutes)}).`,
    ),
  );
  return {
    title: [...title, `: ${count(chosen.length, 'task')}, about ${minutes(time - left)}.`],
    sections: [{ items: [...items, ...note] }],
    buttons: [],
  };
}
const lineOf = (row: DueRow, scene: AskScene): string => {
  const line = row.state === 'coming-up' || row.state === 'fine' ? comingLine(row, scene) : dueLine(row);
  return row.state === 'overdue' ? `${line}, overdue` : line;
};

/** What is late, then what is due now, then what comes; within each in list order. */
const turn = ({ state }: DueRow): number => (state === 'overdue' ? 0 : state === 'due' ? 1 : 2);

export const due: Topic = (scene): Reply => {
  const { machine } = scene.act;
  const rows = scene
    .rows(machine)
    .filter((row) => !notAsked(scene.act, row.task) && !isRoomLine(row) && falls(row, scene))
    .toSorted((a, b) => turn(a) - turn(b));
  const where = machine === undefined ? '' : `${machineName(machine, scene)}, `;
  const heading = `${where}${machine === undefined ? spanWords(scene) : spanWords(scene).replace(/^D/u, 'd')}`;
  if (rows.length === 0) return { title: [bold(heading), ': nothing.'], sections: [], buttons: [] };
  if (scene.act.minutes !== undefined) return withinTime(rows, scene.act.minutes, scene);
  const { shown, more } = shortened(rows, MOST);
  const items = shown.map((row, i) => {
    const line = lineOf(row, scene);
    return rowItem(
      machine === undefined ? [bold(machineName(row.machine, scene)), `: ${line}`] : [line],
      row,
      i,
    );
  });
  const work = rows.reduce((sum, row) => sum + row.minutes, 0);
  return {
    title: [bold(heading), `: ${count(rows.length, 'task')}, about ${minutes(work)}.`],
    sections: [{ items: [...items, ...(more > 0 ? [item(moreOf(more))] : [])] }],
    buttons: [],
  };
};
