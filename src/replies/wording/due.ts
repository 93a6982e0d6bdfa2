/** One task of one machine in one line, and why. */
import { partReplacedBy, type Symptom, type Task } from '../../maintenance/codes.ts';
import type { Event } from '../../maintenance/care/rule.ts';
import { dateOfDay } from '../../maintenance/calendar.ts';
import type { DueRow, TriggerUse } from '../../maintenance/due/row.ts';
import { forecastDate } from '../format/date.ts';
import { capital } from '../format/list.ts';
import { count, figure, hours } from '../format/number.ts';
import { didIt, machineName, materialName, partName, symptomName, todo } from './names.ts';
import { dateWord, since, type View } from './view.ts';

/** "300 h", "180 days in use". */
export function amount(value: number, unit: TriggerUse['unit']): string {
  switch (unit) {
    case 'h':
      return hours(value);
    case 'days':
      return count(Math.round(value), 'day');
    case 'runDays':
      return count(Math.round(value), 'day in use', 'days in use');
    case 'dose':
      return `${figure(value * 100, 0)} %`;
    case 'g':
      return `${figure(value, 0)} g`;
    case 'times':
      return count(Math.round(value), 'time');
  }
}

const used = ({ used: u, interval, unit }: TriggerUse, task: Task): string => {
  if (unit === 'dose') return wear(u, task);
  if (unit === 'h') return `${figure(u, u < 100 ? 1 : 0)} of ${hours(interval)}`;
  if (unit === 'g') return `${figure(u, 0)} of ${figure(interval, 0)} g`;
  return `${figure(u, 0)} of ${amount(interval, unit)}`;
};

const wear = (share: number, task: Task): string => {
  const part = partReplacedBy(task);
  const whose = part === undefined ? 'its life' : `this ${partName(part)}’s life`;
  return `about ${figure(share * 100, 0)} % of ${whose} used by filled filament`;
};

/** What happened, after "because of": "the jam", "a new X belt". */
export function happening(event: Event): string {
  if ('symptom' in event) return symptomWords(event.symptom, event.times);
  if ('done' in event)
    return event.finding === undefined
      ? `“${didIt(event.done)}”`
      : `what the look found: ${didIt(event.done)}, not good`;
  if ('swapped' in event) return `the new ${partName(event.swapped)}`;
  if ('started' in event) return 'the first start';
  if ('backAfterDays' in event) return `having stood still for ${event.backAfterDays} days or more`;
  const [material] = 'loaded' in event ? event.loaded : event.spoolEnded;
  return material === undefined
    ? 'the spool'
    : 'loaded' in event
      ? `the spool of ${materialName(material)}`
      : 'the filled spool that ran';
}
const symptomWords = (symptom: Symptom, times = 1): string =>
  times > 1 ? `${symptomName(symptom)}, ${times} times` : `“${symptomName(symptom)}”`;

/** It is the event that makes it due, not what was used up. */
const byEvent = (row: DueRow, lead: TriggerUse | undefined): boolean =>
  (row.share ?? 0) < 1 || lead === undefined || lead.unit === 'times';

const leading = (row: DueRow): TriggerUse | undefined =>
  row.all.find((t) => t.trigger === row.trigger) ?? row.all[0];

/** How it stands, for a bracket: "332 of 300 h", "because of “jam”". */
export function standing(row: DueRow): string {
  if (row.state === 'no-record') return 'no record';
  const lead = leading(row);
  if (row.raised && byEvent(row, lead)) return `because of ${happening(row.raised.event)}`;
  return lead ? used(lead, row.task) : '';
}

/** "oil the rods (332 of 300 h)". */
export function dueLine(row: DueRow): string {
  const detail = standing(row);
  return detail === '' ? todo(row.task) : `${todo(row.task)} (${detail})`;
}

/** "oil the rods: 32 h over its 300 h". */
export function overdueLine(row: DueRow): string {
  const lead = leading(row);
  if (row.raised && byEvent(row, lead)) return `${todo(row.task)}: because of ${happening(row.raised.event)}`;
  if (!lead || lead.unit === 'dose' || lead.unit === 'times') return dueLine(row);
  return `${todo(row.task)}: ${amount(lead.used - lead.interval, lead.unit === 'runDays' ? 'days' : lead.unit)} over its ${amount(lead.interval, lead.unit)}`;
}

/** "level the bed, tomorrow", "set the belt tension, about 24 March (between 19 and 31)". */
export function comingLine(row: DueRow, view: View): string {
  const { forecast } = row;
  if (!forecast || forecast.p50 === null) return dueLine(row);
  const date = (day: number | null): string | null => (day === null ? null : dateOfDay(day));
  const when = forecastDate(
    date(forecast.p10),
    dateOfDay(forecast.p50),
    date(forecast.p90),
    dateOfDay(view.today),
  );
  return `${todo(row.task)}, ${when}`;
}

/** "level the bed, about Monday": for a list that is skimmed; the band is told when somebody asks. */
export function comingShort(row: DueRow, view: View): string {
  const { forecast } = row;
  if (!forecast || forecast.p50 === null) return dueLine(row);
  const sure = forecast.p10 === forecast.p50 && forecast.p90 === forecast.p50;
  return `${todo(row.task)}, ${sure ? '' : 'about '}${dateWord(dateOfDay(forecast.p50), view)}`;
}

const SOURCE = {
  'common practice': 'common practice',
  manual: 'its manual',
  workshop: 'this workshop’s own setting',
} as const;

/** Why it is due and where the interval comes from, in one sentence. */
export function why(row: DueRow, view: View): string {
  const lead = leading(row);
  const last = row.since === null ? 'no record of when it was last done' : sinceWords(row, view);
  const raised = row.raised
    ? [`raised by ${happening(row.raised.event)}, ${since(row.raised.mark.at, view)}`]
    : [];
  return `${[...raised, ...intervalOf(row, lead), last].join('; ')}.`;
}

/** A single look after an event has none, and one without a record counts from nowhere. */
function intervalOf({ source, watched, faster }: DueRow, lead: TriggerUse | undefined): string[] {
  if (!lead || lead.unit === 'times') return [];
  const every = `every ${amount(lead.interval, lead.unit)} by ${SOURCE[source]}`;
  const halved = watched ? ', halved because the last look said to watch it' : '';
  return [`${every}${halved}${faster ? ', shorter while filled filament runs' : ''}`];
}

function sinceWords({ since }: DueRow, view: View): string {
  if (!since) return '';
  const date = dateWord(view.calendar.dateOf(since.at), view).replace(/^on /u, '');
  const at = since.hours === undefined ? '' : ` at ${hours(since.hours)}`;
  const verb = { done: 'last done', swapped: 'fitted', started: 'new', stated: 'stated for' }[since.why];
  return `${verb} ${date}${at}`;
}

/** What calls for something, the worst first; of one machine all rows. What is left out is counted. */
export function dueList(rows: readonly DueRow[], view: View, inFull: boolean): string {
  const shown = SHOWN.flatMap((state) => rows.filter((row) => row.state === state));
  const rest = inFull ? rows.filter((row) => !shown.includes(row)) : [];
  const left = rows.length - shown.length - rest.length;
  const more = left > 0 ? [`${count(left, 'more task')} fine or without a record (--json has all).`] : [];
  return [...[...shown, ...rest].map((row) => dueText(row, view)), ...more].join('\n');
}
const SHOWN = ['overdue', 'due', 'coming-up', 'put-off'] as const;

/** One row: machine, state, task and figures. */
function dueText(row: DueRow, view: View): string {
  const detail = row.state === 'fine' || row.state === 'coming-up' ? comingLine(row, view) : dueLine(row);
  return `${machineName(row.machine, view)}, ${STATE_WORDS[row.state]}${row.idle ? ', out of use' : ''}: ${detail}${putOffWords(row, view)}`;
}

/** ", until Friday, by Odd (waiting for parts)". */
export function putOffWords({ state, putOff }: DueRow, view: View): string {
  if (state !== 'put-off' || !putOff) return '';
  const { until, atHours, by, reason } = putOff;
  const when =
    until === undefined
      ? atHours === undefined
        ? ''
        : `, until ${hours(atHours)} on the counter`
      : `, until ${dateWord(until, view).replace(/^on /u, '')}`;
  return `${when}, by ${capital(view.personName(by))}${reason === undefined ? '' : ` (${reason})`}`;
}

const STATE_WORDS: Readonly<Record<DueRow['state'], string>> = {
  'no-record': 'no record',
  'put-off': 'put off',
  overdue: 'overdue',
  due: 'due',
  'coming-up': 'coming up',
  fine: 'fine',
};
