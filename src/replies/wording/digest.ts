/** The morning's digest for a phone: what not to touch, what needs doing, what to fetch; then the lists. */
import { dayOfDate, weekdayOf, type Day } from '../../maintenance/calendar.ts';
import type { Digest } from '../../maintenance/due/digest.ts';
import { fullDate } from '../format/date.ts';
import { list, shortened } from '../format/list.ts';
import { count, minutes } from '../format/number.ts';
import { bold, item, type Line, type Reply, type Section } from '../reply.ts';
import { fetch } from './digestFetch.ts';
import {
  care,
  leftOver,
  noRecord,
  owed,
  pulled,
  safetyUnknown,
  someNames,
  soon,
  unknownWords,
} from './digestLists.ts';
import { heldFor, machineName, symptomName, todo } from './names.ts';
import { since, type View } from './view.ts';

const MOST_DOWN = 4;

function title(digest: Digest): string {
  const { date, overdue, due, minutes: work } = digest;
  const counts = [
    ...(overdue.length > 0 ? [`${overdue.length} overdue`] : []),
    ...(due.length > 0 ? [`${due.length} due`] : []),
  ];
  const said =
    counts.length > 0
      ? `${counts.join(', ')}${sinceClosed(digest)}, about ${minutes(work)} of work`
      : `Nothing overdue, nothing due${unchecked(digest)}`;
  return `${fullDate(date, date)}. ${said}`;
}

/** Nothing due is not all well where nobody has looked yet. */
function unchecked({ noRecord: { safety } }: Digest): string {
  return safety.length === 0 ? '' : `, but ${count(safety.length, 'safety check')} without a record`;
}

/** " (2 of them over the weekend)": nobody was there to read it on the day itself. */
function sinceClosed({ date, closedBefore, overdue, due }: Digest): string {
  const today = dayOfDate(date);
  const then = [...overdue, ...due].filter(({ forecast }) => {
    const day = forecast?.p50 ?? today;
    return day < today && day >= today - closedBefore;
  });
  if (then.length === 0) return '';
  const which = then.length === overdue.length + due.length ? '' : `${then.length} of them `;
  return ` (${which}${isWeekend(today, closedBefore) ? 'over the weekend' : 'while closed'})`;
}
const isWeekend = (today: Day, closed: number): boolean => closed <= 2 && weekdayOf(today) === 0;

/** Machines that nobody may start, and why: all of them, however many. */
function doNotTouch({ held, open }: Digest, view: View): Line[] {
  const lines = [
    ...held.map(
      (h) =>
        `${machineName(h.machine, view)} is held: ${heldFor(h)} (${view.personName(h.by)}, ${since(h.since, view)})`,
    ),
    ...open.map(
      (o) => `${machineName(o.machine, view)} is open (${view.personName(o.by)}, ${since(o.since, view)})`,
    ),
  ];
  return lines.length === 0 ? [] : [[bold('Do not start: '), lines.join(' · ')]];
}

function outOfUse({ outOfUse: down }: Digest, view: View): Section[] {
  const lines = down.map(({ machine, since: from, before, because }) => {
    const why = because.length > 0 ? `: ${list(because.map(symptomName))}` : '';
    const first = before.length > 0 ? ` (before it starts: ${someNames(before.map(todo))})` : '';
    return `${machineName(machine, view)} since ${since(from, view)}${why}${first}`;
  });
  const { shown, more } = shortened(lines, MOST_DOWN);
  const rest = more > 0 ? [`and ${more} more`] : [];
  return lines.length === 0 ? [] : [{ items: [item(bold('Out of use: '), [...shown, ...rest].join(' · '))] }];
}

const nothingTo = ({ overdue, due, held, open, outOfUse: down, noRecord: unknown }: Digest): boolean =>
  overdue.length + due.length + held.length + open.length + down.length + unknown.safety.length === 0;

/** A quiet day is one line. */
function quiet(digest: Digest): string {
  const { tasks, machines } = digest.noRecord;
  return `${title(digest)}${tasks > 0 ? `; ${unknownWords(tasks, machines)}` : ''}.`;
}

/** Three lines first: what not to touch, what needs doing and how long it takes, what to fetch; then the lists. */
export function digestReply(digest: Digest, view: View): Reply {
  if (nothingTo(digest)) return { title: [bold(quiet(digest))], sections: [], buttons: [] };
  const caution = doNotTouch(digest, view);
  const sections: Section[] = [
    { items: fetch(digest) },
    ...outOfUse(digest, view),
    ...owed(digest, view),
    ...safetyUnknown(digest, view),
    ...soon(digest, view),
    ...pulled(digest, view),
    ...leftOver(digest, view),
    ...noRecord(digest),
    ...care(digest, view),
  ];
  return {
    ...(caution.length > 0 && { caution }),
    title: [bold(title(digest))],
    sections: sections.filter((s) => s.items.length > 0),
    buttons: [],
  };
}
