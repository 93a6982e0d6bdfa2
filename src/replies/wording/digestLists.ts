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

/** Of these nobody knows whether they were ever done: they stand with what is due. */
export const safetyUnknown = ({ noRecord: { safety } }: Digest, names: Names): Section[] =>
  safety.length === 0
    ? []
    : [{ items: [item(bold('Safety checks without a record: '), safetyWords(safety, names))] }];

export const noRecord = ({ noRecord: { tasks, machines } }: Digest): Section[] =>
  tasks === 0
    ? []
    : [
        {
          items: [
            item(`${unknownWords(tasks, machines)}: say when last done, or “all fine on … as of today”.`),
          ],
        },
      ];

/** By task, so that one check on all machines is one entry; checks of the same machines name them once. */
function safetyWords(rows: readonly DueRow[], view: Names): string {
  const machinesOf = grouped(
    rows,
    (row) => todo(row.task),
    (row) => machineInList(row.machine, view),
  );
  const { shown, more } = shortened([...machinesOf], MOST_LINES);
  const tasksAt = grouped(
    shown,
    ([, machines]) => someNames(machines),
    ([task]) => task,
  );
  const words = [...tasksAt].map(([where, tasks]) => `${list(tasks)} (${where})`);
  return [...words, ...(more > 0 ? [`and ${more} more`] : [])].join(' · ');
}

function grouped<T, V>(all: readonly T[], key: (one: T) => string, value: (one: T) => V): Map<string, V[]> {
  const groups = new Map<string, V[]>();
  for (const one of all) groups.set(key(one), [...(groups.get(key(one)) ?? []), value(one)]);
  return groups;
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

const OWED = { lines: MOST_LINES, tasks: MOST_TASKS };
export const owed = (digest: Digest, view: View): Section[] => [
  { heading: 'Overdue', items: byMachine(digest.overdue, dueLine, OWED, view) },
  { heading: 'Due today', items: byMachine(digest.due, dueLine, OWED, view) },
];

const SOON = { lines: MOST_SOON, tasks: MOST_SOON_TASKS };
export const soon = (digest: Digest, view: View): Section[] => [
  {
    heading: 'This week',
    items: byMachine(soonestFirst(digest.comingUp), (row) => comingShort(row, view), SOON, view),
  },
];
const soonestFirst = (rows: readonly DueRow[]): DueRow[] =>
  rows.toSorted((a, b) => (a.forecast?.p50 ?? Infinity) - (b.forecast?.p50 ?? Infinity));

export function leftOver({ left }: Digest, view: Names): Section[] {
  if (left.length === 0) return [];
  const words = left.map((row) => `${machineName(row.machine, view)} ${todo(row.task)}`);
  return [
    {
      items: [
        item(
          `More than today’s minutes: ${count(left.length, 'task')} left for another day: ${someNames(words)}.`,
        ),
      ],
    },
  ];
}
