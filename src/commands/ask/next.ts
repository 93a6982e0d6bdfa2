/** "When should alder's brackets be looked at next?": one task's date, and what it rests on. */
import { isPart, replaceTask, type Part, type Task } from '../../maintenance/codes.ts';
import { listed } from '../../maintenance/due/plan.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import { shortened } from '../../replies/format/list.ts';
import { moreOf } from '../../replies/wording/refusals.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { comingLine, dueLine, overdueLine, why } from '../../replies/wording/due.ts';
import { machineName, partName, todo } from '../../replies/wording/names.ts';
import { dateWord } from '../../replies/wording/view.ts';
import { rowItem } from './rows.ts';
import { isRoomLine, type AskScene, type Topic } from './topic.ts';

const MOST = 3;

/** Belts are two, and a belt that is not named is either. */
const replacing = (part: Part): readonly Task[] =>
  part === 'belt' ? [replaceTask('x-belt'), replaceTask('y-belt'), replaceTask('belt')] : [replaceTask(part)];

export function tasksAsked({ act }: Pick<AskScene, 'act'>): readonly Task[] {
  if (act.task !== undefined) return [listed(act.task)];
  return act.part !== undefined && isPart(act.part) ? replacing(act.part) : [];
}

function lineOf(row: DueRow, scene: AskScene): string {
  switch (row.state) {
    case 'no-record':
      return `${todo(row.task)}: no record, so no date. Say when it was last done.`;
    case 'put-off':
      return `${todo(row.task)}: put off${row.putOff?.until === undefined ? '' : ` until ${dateWord(row.putOff.until, scene)}`}`;
    case 'overdue':
      return overdueLine(row);
    case 'due':
      return `${dueLine(row)}, due now`;
    case 'coming-up':
    case 'fine':
      return comingLine(row, scene);
  }
}

export const next: Topic = (scene): Reply => {
  const tasks = tasksAsked(scene);
  if (tasks.length === 0) return overall(scene);
  const rows = askedRows(scene, tasks);
  if (rows.length === 0) return { sections: [{ items: [nothingPlanned(scene, tasks)] }], buttons: [] };
  const items = rows.map((row, i): Item =>
    rowItem([bold(machineName(row.machine, scene)), `: ${lineOf(row, scene)}`], row, i),
  );
  const [only, ...others] = rows;
  const because = only && others.length === 0 ? [item(`Why: ${why(only, scene)}`)] : [];
  return { sections: [{ items: [...items, ...because] }], buttons: [] };
};

/** A part that is replaced by its condition has a date for the looks at it. */
function askedRows({ rows, act }: AskScene, tasks: readonly Task[]): readonly DueRow[] {
  const all = rows(act.machine);
  const own = all.filter((row) => tasks.includes(row.task));
  return own.length > 0 || act.part === undefined ? own : all.filter((row) => row.rule.part === act.part);
}

const nothingPlanned = (scene: AskScene, tasks: readonly Task[]): Item => {
  const { act } = scene;
  const what = act.part !== undefined ? partName(act.part) : tasks[0] === undefined ? 'that' : todo(tasks[0]);
  const where = act.machine === undefined ? 'No machine here' : machineName(act.machine, scene);
  return item(`${where} has no planned date for “${what}”: it is done when its condition asks for it.`);
};

/** What is late or due stands before all that is to come. */
const dayOf = ({ state, forecast }: DueRow): number =>
  state === 'overdue' || state === 'due' ? 0 : (forecast?.p50 ?? Number.MAX_SAFE_INTEGER);

/** No task named: the first few dates that come. */
function overall(scene: AskScene): Reply {
  const rows = scene
    .rows(scene.act.machine)
    .filter((row) => row.state !== 'no-record' && row.state !== 'put-off' && !isRoomLine(row))
    .toSorted((a, b) => dayOf(a) - dayOf(b));
  const { shown, more } = shortened(rows, MOST);
  const items = shown.map((row, i) =>
    rowItem([bold(machineName(row.machine, scene)), `: ${lineOf(row, scene)}`], row, i),
  );
  return {
    sections: [
      {
        items:
          items.length > 0
            ? [...items, ...(more > 0 ? [item(moreOf(more))] : [])]
            : [item('Nothing ahead on record.')],
      },
    ],
    buttons: [],
  };
}
