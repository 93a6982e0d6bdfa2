/** The digest's lists: what is late, due and coming, by machine, each cut where a phone's screen ends. */
import type { CautionKey } from '../../maintenance/cautions/keys.ts';
import type { Digest } from '../../maintenance/due/digest.ts';
import type { RoundStop } from '../../maintenance/due/round.ts';
import type { CautionAt } from '../../maintenance/due/roundCautions.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import { list, shortened } from '../format/list.ts';
import { count } from '../format/number.ts';
import { bold, item, type Item, type Section } from '../reply.ts';
import { comingShort, dueLine } from './due.ts';
import { machineInList, machineName, todo } from './names.ts';
import type { Names, View } from './view.ts';

/** Lines of one list before "and 6 more": all lists together fill one to two screens of a phone. */
const MOST_LINES = 6;
const MOST_SOON = 4;
const MOST_TASKS = 3;
const MOST_SOON_TASKS = 2;
const MOST_NAMES = 3;
const MOST_CAUTIONS = 3;

/** "Alder, Birch and Elm", "Alder, Birch, Elm and 4 more". */
export function someNames(names: readonly string[], most = MOST_NAMES): string {
  const { shown, more } = shortened(names, most);
  return list(more > 0 ? [...shown, `${more} more`] : shown);
}

const at = (row: DueRow, view: Names): string =>
  row.machines === undefined
    ? machineName(row.machine, view)
    : `${machineName(row.machine, view)} (${someNames(row.machines.map((name) => machineName(name, view)))})`;

/** "Maple: replace the nozzle (201 of 180 days in use) · oil the rods (332 of 300 h)", one line a machine. */
function byMachine(
  rows: readonly DueRow[],
  words: (row: DueRow) => string,
  most: { lines: number; tasks: number },
  names: Names,
): Item[] {
  const groups = new Map<string, DueRow[]>();
  for (const row of rows) groups.set(at(row, names), [...(groups.get(at(row, names)) ?? []), row]);
  const { shown, more } = shortened([...groups], most.lines);
  const hidden = [...groups].slice(shown.length).reduce((sum, [, of]) => sum + of.length, 0);
  const lines = shown.map(([name, of]) => item(bold(name), `: ${tasksOf(of, words, most.tasks)}`));
  return more > 0 ? [...lines, item(`and ${hidden} more on ${count(more, 'other machine')}`)] : lines;
}

function tasksOf(rows: readonly DueRow[], words: (row: DueRow) => string, most: number): string {
  const { shown, more } = shortened(rows, most);
  return [...shown.map(words), ...(more > 0 ? [`and ${more} more`] : [])].join(' · ');
}

export const unknownWords = (tasks: number, machines: number): string =>
  `${count(tasks, 'task')} on ${count(machines, 'machine')} ${tasks === 1 ? 'has' : 'have'} no record`;

export function pulled({ round }: Digest, view: Names): Section[] {
  const items = round
    .filter((stop: RoundStop) => stop.pulledForward.length > 0)
    .map((stop) =>
      item(
        bold(`While you’re at ${machineName(stop.machine, view)}`),
        `: also ${list(stop.pulledForward.map(todo))}; saves opening it twice`,
      ),
    );
  const { shown, more } = shortened(items, 2);
  return shown.length > 0
    ? [{ items: [...shown, ...(more > 0 ? [item(`and on ${count(more, 'more machine')}`)] : [])] }]
    : [];
}

export function noRecord({ noRecord: unknown }: Digest, names: Names): Section[] {
  const { tasks, machines, safety } = unknown;
  const items: Item[] = [];
  if (safety.length > 0)
    items.push(item(bold('Safety checks without a record: '), safetyWords(safety, names)));
  if (tasks > 0)
    items.push(item(`${unknownWords(tasks, machines)}: say when last done, or “all fine on … as of today”.`));
  return items.length > 0 ? [{ items }] : [];
}

/** By task, so that one check on all machines is one entry. */
function safetyWords(rows: readonly DueRow[], view: Names): string {
  const groups = new Map<string, string[]>();
  for (const row of rows)
    groups.set(todo(row.task), [...(groups.get(todo(row.task)) ?? []), machineInList(row.machine, view)]);
  const { shown, more } = shortened([...groups], MOST_LINES);
  const words = shown.map(([task, machines]) => `${task} (${someNames(machines)})`);
  return [...words, ...(more > 0 ? [`and ${more} more`] : [])].join(' · ');
}

/** What kills or maims before what burns, what burns before what chokes or cuts. Judgement of our own. */
const BY_GRAVITY: readonly CautionKey[] = [
  'MAINS', 'UNPLUG', 'DROP', 'SOLV', 'HOT', 'MOVE', 'FUME', 'SHORT', 'OVEN', 'DUST', 'CUT', 'KNIFE',
]; // prettier-ignore
const gravity = ({ key }: CautionAt): number => BY_GRAVITY.indexOf(key);

export function care({ cautions, round }: Digest, view: Names): Section[] {
  const gravest = cautions.toSorted((a, b) => gravity(a) - gravity(b)).slice(0, MOST_CAUTIONS);
  if (round.length === 0 || gravest.length === 0) return [];
  const lines = gravest.map(({ line, for: tasks }) => {
    const machines = [...new Set(tasks.map((t) => machineInList(t.machine, view)))];
    return item(`${line} (${someNames(machines)})`);
  });
  const rest = item('Each step has its caution; the manual, local rules and licensed practice come first.');
  return [{ heading: 'Care', items: [...lines, rest] }];
}

export const lists = (digest: Digest, view: View): Section[] => {
  const owed = { lines: MOST_LINES, tasks: MOST_TASKS };
  const soon = { lines: MOST_SOON, tasks: MOST_SOON_TASKS };
  return [
    { heading: 'Overdue', items: byMachine(digest.overdue, dueLine, owed, view) },
    { heading: 'Due today', items: byMachine(digest.due, dueLine, owed, view) },
    {
      heading: 'This week',
      items: byMachine(soonestFirst(digest.comingUp), (row) => comingShort(row, view), soon, view),
    },
  ];
};
const soonestFirst = (rows: readonly DueRow[]): DueRow[] =>
  rows.toSorted((a, b) => (a.forecast?.p50 ?? Infinity) - (b.forecast?.p50 ?? Infinity));

export const leftOver = ({ left }: Digest, view: Names): Section[] =>
  left.length === 0
    ? []
    : [
        {
          items: [
            item(
              `More than today’s minutes: ${count(left.length, 'task')} left for another day, ${list(left.slice(0, 3).map((row) => `${machineName(row.machine, view)} ${todo(row.task)}`))}${left.length > 3 ? ` and ${left.length - 3} more` : ''}.`,
            ),
          ],
        },
      ];
