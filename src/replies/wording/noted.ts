/** One written entry as a short note: "nozzle replaced, worn: lasted 412 h over 166 days". */
import { partReplacedBy, type Task } from '../../maintenance/codes.ts';
import { dayOfDate } from '../../maintenance/calendar.ts';
import type { Entry, EntryKind, EntryOf, Interval } from '../../maintenance/entry/entry.ts';
import { tubeLeftAfterTrims, USUAL_TRIM_MM } from '../../maintenance/figures/tubeLeft.ts';
import type { MachineRecord, PartLife } from '../../maintenance/record/record.ts';
import { dateFromToday } from '../format/date.ts';
import { capital } from '../format/list.ts';
import { count, figure, hours } from '../format/number.ts';
import { didIt, machineName, materialName, partName, symptomName, todo } from './names.ts';
import type { View } from './view.ts';

export interface NoteFacts extends View {
  /** The machine's record with the entry in it. */
  after?: MachineRecord;
  /** Entries that an amendment or a take-back speaks of. */
  target?: Entry;
  /** Where the target is a correction itself: what that one speaks of. */
  beneath?: Entry;
}

type Note<K extends EntryKind> = (entry: EntryOf<K>, facts: NoteFacts) => string;
type Notes = { [K in EntryKind]: Note<K> };

/** Nothing to say of a part that nobody knows and that was hardly used since. */
function lifeOf(life: PartLife): string {
  const used = `${hours(life.hours)} over ${count(life.days, 'day')}`;
  if (life.ageKnown) return `: lasted ${used}`;
  return life.hours >= 1 || life.days > 0 ? `: was in for at least ${used}` : '';
}

const swapped: Note<'swapped'> = (entry, { after }) => {
  const what =
    entry.count === undefined || entry.count === 1
      ? partName(entry.part)
      : `${entry.count} ${partName(entry.part, entry.count)}`;
  const life = after?.lives.findLast((l) => l.to.entry === entry.id);
  const reason =
    entry.reason === undefined ? '' : entry.reason === 'planned' ? ', as planned' : `, ${entry.reason}`;
  const fitted = entry.fitted === undefined ? '' : ` with ${entry.fitted}`;
  return `${what} replaced${fitted}${reason}${life ? lifeOf(life) : ''}`;
};

const usage: Note<'usage'> = (entry, { after }) => {
  const material = entry.material === undefined ? '' : ` of ${materialName(entry.material)}`;
  const run = [
    ...(entry.hours === undefined ? [] : [`${hours(entry.hours)} run`]),
    ...(entry.grams === undefined ? [] : [`${figure(entry.grams)} g${material} printed`]),
    ...(entry.metres === undefined ? [] : [`${figure(entry.metres)} m${material} printed`]),
  ].join(', ');
  const plain = entry.grams === undefined && entry.metres === undefined && entry.material !== undefined;
  const counter =
    entry.hours !== undefined && after?.counterKnown === true ? `, now at ${hours(after.totals.hours)}` : '';
  return `${run}${plain && entry.material ? ` (${materialName(entry.material)})` : ''}${counter}`;
};

const FINDING = { fine: 'fine', watch: 'to be watched', bad: 'not good' } as const;

/** "250 h or 60 days". */
export const intervalWords = (every: Interval): string =>
  [
    every.hours === undefined ? [] : [hours(every.hours)],
    every.days === undefined ? [] : [count(every.days, 'day')],
    every.runDays === undefined ? [] : [count(every.runDays, 'day in use', 'days in use')],
    every.dose === undefined ? [] : [`a dose of ${figure(every.dose, 2)}`],
  ]
    .flat()
    .join(' or ');

/** ": about 475 mm left, 9 more trims"; nothing where the sheet does not state the lengths. */
function tubeLeftWords({ build, tubeTrims = 0 }: MachineRecord): string {
  const { tubeLengthMm, tubeNeededMm } = build;
  if (tubeLengthMm === undefined || tubeNeededMm === undefined) return '';
  const cutsMm = Array.from({ length: tubeTrims }, () => USUAL_TRIM_MM);
  const left = tubeLeftAfterTrims({ fittedMm: tubeLengthMm, neededMm: tubeNeededMm, cutsMm });
  if (!left.ok) return '';
  const { leftMm, trimsLeft } = left.value;
  const more = trimsLeft === 0 ? 'the next bad end means a new tube' : count(trimsLeft, 'more trim');
  return `: about ${figure(leftMm, 0)} mm left, ${more}`;
}

const what = (task: Task | undefined): string => (task === undefined ? 'everything' : todo(task));

const NOTES: Notes = {
  enrolled: (e) => (e.new ? 'enrolled, new' : 'enrolled'),
  changed: ({ set }) =>
    set.calledAs === undefined ? 'its sheet is changed' : `called ${set.calledAs} from now on`,
  retired: () => 'retired',
  usage,
  meter: (e, { after }) => {
    const unlogged = after?.unloggedHours ?? 0;
    return `counter read: ${hours(e.hours)}${unlogged >= 1 ? ` (${hours(unlogged)} in all that nobody logged)` : ''}`;
  },
  loaded: (e) =>
    `${e.material ? materialName(e.material) : 'a spool'} loaded${e.grams === undefined ? '' : `, ${figure(e.grams)} g`}`,
  done: (e, { after }) => {
    const part = partReplacedBy(e.task);
    const left = e.task === 'trim-tube' && after ? tubeLeftWords(after) : '';
    const said = part === undefined ? `${didIt(e.task)}${left}` : `${partName(part)} replaced`;
    return e.finding === undefined ? said : `${said}: ${FINDING[e.finding]}`;
  },
  swapped,
  seen: (e) => {
    if (e.symptom === 'moved') return symptomName(e.symptom);
    const name = symptomName(e.symptom);
    const part = e.part && !name.includes(partName(e.part)) ? ` (${partName(e.part)})` : '';
    return `${name}${part} noted`;
  },
  cleared: (e) => (e.symptom ? `${symptomName(e.symptom)}: gone` : 'runs well again'),
  down: () => 'out of use',
  up: (entry, { after, calendar }) => {
    const spell = after?.downSpells.at(-1);
    const days = spell?.to === entry.at ? calendar.dayOf(spell.to) - calendar.dayOf(spell.from) : 0;
    return days > 0 ? `back in use after ${count(days, 'day')}` : 'back in use';
  },
  opened: () => 'open: hands are in it',
  closed: () => 'put together again',
  putOff: (e, { calendar, today }) => {
    const until =
      e.until !== undefined
        ? `until ${dateFromToday(e.until, calendar.dateOf(calendar.noon(today)))}`
        : `until ${hours(e.atHours ?? 0)} on the counter`;
    return `${e.task === undefined ? 'everything but its safety checks' : what(e.task)}: put off ${until}${e.reason ? ` (${e.reason})` : ''}`;
  },
  claimed: (e, { calendar, today }) =>
    `${what(e.task)}: taken on${e.on === undefined ? '' : `, ${dateFromToday(e.on, calendar.dateOf(calendar.noon(today)))}`}`,
  stockMoved: (e) => {
    const item = `${figure(Math.abs(e.change))} ${partName(e.part, Math.abs(e.change))}`;
    return `${item}${e.fitted ? ` (${e.fitted})` : ''} ${e.change >= 0 ? 'added to' : 'taken from'} the shelf`;
  },
  stockCounted: (e) =>
    `${figure(e.count)} ${partName(e.part, e.count)}${e.fitted ? ` (${e.fitted})` : ''} on the shelf`,
  intervalSet: (e) =>
    `${todo(e.task)}: every ${intervalWords(e.interval)}, ${e.source === 'manual' ? 'says its manual' : 'set here'}`,
  stated: (e, { calendar, today }) => {
    const since =
      e.on === undefined ? '' : ` as of ${dateFromToday(e.on, calendar.dateOf(calendar.noon(today)))}`;
    if (e.part !== undefined)
      return `${partName(e.part)} in${since}${e.fitted === undefined ? '' : `: ${e.fitted}`}`;
    if (e.tasks !== undefined)
      return `all but its safety checks${since || ' fine'}, stated for ${e.tasks.length} tasks`;
    return e.task === undefined ? `all fine${since}, stated for all its tasks` : `${didIt(e.task)}${since}`;
  },
  noted: (e) => `note: ${e.text}`,
  handedOver: (e) => `handed over${e.to ? ` to ${capital(e.to)}` : ''}`,
  tookOver: (e) => `taken over${e.from ? ` from ${capital(e.from)}` : ''}`,
  found: (e) => `found: ${e.text}`,
  released: (e) =>
    e.falseAlarm
      ? `no longer held: false alarm${e.found ? `, ${e.found}` : ''}`
      : `no longer held${e.found ? `: ${e.found}` : ''}`,
  amended: (e, facts) => `put right: ${amendment(e, facts)}`,
  takenBack: (_, facts) =>
    facts.target ? `taken back: ${plainNote(facts.target, oneDeeper(facts))}` : 'taken back',
};

/** What the entry says now, and what it said before: "12 h run (was: 6.5 h run)". */
function amendment(entry: EntryOf<'amended'>, { target, ...facts }: NoteFacts): string {
  const { set } = entry;
  if (!target) return 'an entry';
  const now = correctedBy(target, set);
  const [before, after] = [plainNote(target, facts), plainNote(now, facts)];
  const moved =
    'machine' in target && set.machine !== undefined && set.machine !== target.machine
      ? [`was on ${machineName(target.machine ?? '', facts)}`]
      : [];
  const dated = set.at === undefined ? [] : [dayChange(target, now, facts)];
  const changed = before === after ? [] : [`was: ${before}`];
  const was = [...moved, ...dated, ...changed];
  return `${after}${was.length > 0 ? ` (${was.join('; ')})` : ''}`;
}

function dayChange(target: Entry, now: Entry, facts: NoteFacts): string {
  const [before, after] = [dayWord(target, facts), dayWord(now, facts)];
  return before === after && target.precision === 'about'
    ? `${after}, for sure now`
    : `was ${before}, now ${after}`;
}

/** As far as this kind of entry has the fields; the fold is strict about it, a sentence need not be. */
const correctedBy = (target: Entry, set: EntryOf<'amended'>['set']): Entry =>
  ({ ...target, ...set }) as Entry;

const dayWord = (entry: Entry, { calendar, today }: NoteFacts): string =>
  dateFromToday(calendar.dateOf(entry.at), calendar.dateOf(calendar.noon(today)));

/** The facts as the target sees them. */
function oneDeeper({ target: _target, beneath, ...facts }: NoteFacts): NoteFacts {
  return beneath ? { ...facts, target: beneath } : facts;
}

/** The note without what only makes sense at the moment of writing: no counter, no life. */
function plainNote(entry: Entry, { after: _left, ...facts }: NoteFacts): string {
  return note(entry, facts);
}

/** What an entry says, as people read it; the date beside it when it is not today's. */
export function note(entry: Entry, facts: NoteFacts): string {
  const word = NOTES[entry.kind] as (e: Entry, f: NoteFacts) => string;
  return word(entry, facts);
}

/** ", on Monday" for a deed of another day; "" for today's. */
export function dayBeside(entry: Entry, { calendar, today }: NoteFacts): string {
  const date = calendar.dateOf(entry.at);
  if (dayOfDate(date) === today) return '';
  const when = dateFromToday(date, calendar.dateOf(calendar.noon(today)));
  return entry.precision === 'about' ? `, about ${when.replace(/^on /u, '')}` : `, ${when}`;
}
