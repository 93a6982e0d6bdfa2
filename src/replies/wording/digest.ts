/** The morning's digest for a phone: what not to touch, what needs doing, what to fetch; then the lists. */
import type { Digest } from '../../maintenance/due/digest.ts';
import type { FetchItem, Shortage } from '../../maintenance/due/fetch.ts';
import type { RoundStop } from '../../maintenance/due/round.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import { fullDate } from '../format/date.ts';
import { list, shortened } from '../format/list.ts';
import { count, figure, minutes } from '../format/number.ts';
import { bold, item, type Item, type Reply, type Section } from '../reply.ts';
import { comingLine, dueLine } from './due.ts';
import { machineInList, machineName, partName, symptomName, todo } from './names.ts';
import { since, type View } from './view.ts';

/** Lines of one list before "and 6 more": what a phone shows without another stroke of the thumb. */
const MOST_LINES = 8;
const MOST_SOON = 5;
const MOST_CAUTIONS = 4;

const at = (row: DueRow): string =>
  row.machines === undefined
    ? machineName(row.machine)
    : `${machineName(row.machine)} (${list(row.machines.map(machineName))})`;

/** "Maple: replace the nozzle (201 of 180 days in use) · oil the rods (332 of 300 h)", one line a machine. */
function byMachine(rows: readonly DueRow[], words: (row: DueRow) => string, most: number): Item[] {
  const groups = new Map<string, DueRow[]>();
  for (const row of rows) groups.set(at(row), [...(groups.get(at(row)) ?? []), row]);
  const { shown, more } = shortened([...groups], most);
  const hidden = [...groups].slice(shown.length).reduce((sum, [, of]) => sum + of.length, 0);
  const lines = shown.map(([name, of]) => item(bold(name), `: ${of.map(words).join(' · ')}`));
  return more > 0 ? [...lines, item(`and ${hidden} more`)] : lines;
}

function title({ date, overdue, due, minutes: work }: Digest): string {
  const counts = [
    ...(overdue.length > 0 ? [`${overdue.length} overdue`] : []),
    ...(due.length > 0 ? [`${due.length} due`] : []),
  ];
  const said =
    counts.length > 0
      ? `${counts.join(', ')}, about ${minutes(work)} of work`
      : 'Nothing overdue, nothing due';
  return `${fullDate(date, date)}. ${said}`;
}

/** Machines that nobody may start, and why. */
function doNotTouch({ held, open }: Digest, view: View): Item[] {
  const lines = [
    ...held.map(
      (h) =>
        `${machineName(h.machine)} is held: ${symptomName(h.symptom)} (${view.personName(h.by)}, ${since(h.since, view)})`,
    ),
    ...open.map(
      (o) => `${machineName(o.machine)} is open (${view.personName(o.by)}, ${since(o.since, view)})`,
    ),
  ];
  return lines.length === 0 ? [] : [item(bold('Do not start: '), lines.join(' · '))];
}

const have = (n: number | undefined): string =>
  n === undefined ? '' : n === 0 ? ' (none on the shelf)' : n === 1 ? ' (the last one)' : '';

function fetchWord(thing: FetchItem): string {
  if (thing.kind === 'tool') return thing.tool;
  if (thing.kind === 'consumable')
    return `${partName(thing.item)}${thing.have === 0 ? ' (none on the shelf)' : ''}`;
  const kind = thing.fitted === undefined ? '' : ` ${thing.fitted}`;
  return `${figure(thing.need)} ${partName(thing.item, thing.need)}${kind}${have(thing.have)}`;
}

function fetch({ fetch: things, shelf }: Digest): Item[] {
  if (things.length === 0) return [];
  const order = shelf.map(shortage);
  return [item(bold('Fetch: '), `${things.map(fetchWord).join(', ')}.`), ...order.map((text) => item(text))];
}

const shortage = ({ item: part, fitted, need, have: left, short, deliveryDays }: Shortage): string => {
  const name = `${partName(part, 2)}${fitted === undefined ? '' : ` ${fitted}`}`;
  const delivery = deliveryDays === undefined ? '' : `, ${count(deliveryDays, 'day')}’ delivery`;
  return short === 'out'
    ? `Order ${name}: ${left} on the shelf, ${need} needed${delivery}.`
    : `Order ${name}: that takes the last${delivery}.`;
};

function outOfUse({ outOfUse: lines }: Digest, view: View): Section[] {
  const items = lines.map(({ machine, since: from, before, because }) => {
    const why = because.length > 0 ? `: ${list(because.map(symptomName))}` : '';
    const first =
      before.length > 0
        ? `. Before it starts again: ${list(before.slice(0, 4).map(todo))}${before.length > 4 ? ` and ${before.length - 4} more` : ''}`
        : '';
    return item(bold(machineName(machine)), ` since ${since(from, view)}${why}${first}`);
  });
  return items.length > 0 ? [{ heading: 'Out of use', items }] : [];
}

function pulled({ round }: Digest): Section[] {
  const items = round
    .filter((stop: RoundStop) => stop.pulledForward.length > 0)
    .map((stop) =>
      item(
        bold(`While you’re at ${machineName(stop.machine)}`),
        `: also ${list(stop.pulledForward.map(todo))}; saves opening it twice`,
      ),
    );
  const { shown, more } = shortened(items, 3);
  return shown.length > 0
    ? [{ items: [...shown, ...(more > 0 ? [item(`and on ${count(more, 'more machine')}`)] : [])] }]
    : [];
}

function noRecord({ noRecord: unknown }: Digest): Section[] {
  const { tasks, machines, safety } = unknown;
  const items: Item[] = [];
  if (safety.length > 0) items.push(item(bold('Safety checks without a record: '), safetyWords(safety)));
  if (tasks > 0)
    items.push(
      item(
        `${count(tasks, 'task')} on ${count(machines, 'machine')} ${tasks === 1 ? 'has' : 'have'} no record: say when last done, or ask what is overdue on one: its list has a button for all of them.`,
      ),
    );
  return items.length > 0 ? [{ items }] : [];
}

/** By task, so that one check on all machines is one entry. */
function safetyWords(rows: readonly DueRow[]): string {
  const groups = new Map<string, string[]>();
  for (const row of rows)
    groups.set(todo(row.task), [...(groups.get(todo(row.task)) ?? []), machineName(row.machine)]);
  return [...groups].map(([task, machines]) => `${task} (${list(machines)})`).join(' · ');
}

function care({ cautions, round }: Digest): Section[] {
  const shown = cautions.slice(0, MOST_CAUTIONS).map(({ line, for: tasks }) => {
    const machines = [...new Set(tasks.map((t) => machineInList(t.machine)))];
    return item(`${line} (${list(machines)})`);
  });
  if (round.length === 0 || shown.length === 0) return [];
  return [
    { heading: 'Care', items: [...shown, item('The manual, local rules and licensed practice come first.')] },
  ];
}

const lists = (digest: Digest, view: View): Section[] => [
  { heading: 'Overdue', items: byMachine(digest.overdue, dueLine, MOST_LINES) },
  { heading: 'Due today', items: byMachine(digest.due, dueLine, MOST_LINES) },
  { heading: 'This week', items: byMachine(digest.comingUp, (row) => comingLine(row, view), MOST_SOON) },
];

const leftOver = ({ left }: Digest): Section[] =>
  left.length === 0
    ? []
    : [
        {
          items: [
            item(
              `More than today’s minutes: ${count(left.length, 'task')} left for another day, ${list(left.slice(0, 3).map((row) => `${machineName(row.machine)} ${todo(row.task)}`))}${left.length > 3 ? ` and ${left.length - 3} more` : ''}.`,
            ),
          ],
        },
      ];

const nothingTo = ({ overdue, due, held, open, outOfUse: down }: Digest): boolean =>
  overdue.length + due.length + held.length + open.length + down.length === 0;

export function digestReply(digest: Digest, view: View): Reply {
  const head = [bold(title(digest))];
  if (nothingTo(digest)) return { title: head, sections: [...noRecord(digest)], buttons: [] };
  const sections: Section[] = [
    { items: [...doNotTouch(digest, view), ...fetch(digest)] },
    ...outOfUse(digest, view),
    ...lists(digest, view),
    ...pulled(digest),
    ...leftOver(digest),
    ...noRecord(digest),
    ...care(digest),
  ];
  return { title: head, sections: sections.filter((s) => s.items.length > 0), buttons: [] };
}
