/**
 * Can these hours be true? Three borders, from strange to impossible:
 * - more than a local day has left, or more than 24 h at once ("30 h since this morning"): asked;
 * - more than the clock allows since the machine's last usage (of the same day: since that day began, less what is
 *   noted of it), +10 % + 1 h for rough figures: asked;
 * - more than twice that and more than a day, or more than since the machine is here: refused, because no
 *   answer of "yes, really" could make it true.
 */
import { dateOfDay, type LocalCalendar } from '../calendar.ts';
import type { MachineRecord } from '../record/record.ts';
import { hoursByDay, hoursOn, MS_AN_HOUR } from '../record/runs.ts';
import type { DecideContext } from './context.ts';
import { asked, refused, type Asked, type Refused } from './decision.ts';
import type { Scene } from './scene.ts';

const ROUGHLY = 1.1;
const SLACK_HOURS = 1;
const A_DAY = 24;

/** `again`: the same figure was told shortly before. `before`: hours that this deed replaces, for an amendment; they are in the record already. */
export function doubtHours(
  hours: number,
  scene: Scene,
  context: DecideContext,
  options: { before?: number; repeats?: boolean; again?: boolean } = {},
): Asked | Refused | undefined {
  const { calendar, now } = context;
  const end = scene.precision === 'instant' ? scene.at : endOfDay(scene.at, now, calendar);
  const facts = { act: 'usage', machine: scene.name, field: 'hours', given: hours };
  const since = lastRun(scene, options);
  const isToday = since !== undefined && !options.again && calendar.dayOf(since) === calendar.dayOf(scene.at);
  const clock =
    since === undefined ? Infinity : isToday ? leftToday(end, scene, calendar) : allowed(end - since);
  const life = allowed(end - calendar.at(scene.latest.inUseSince, 0));
  const most = Math.min(life, Math.max(A_DAY, 2 * clock));
  if (hours > most) return refused('too-many-hours', { ...facts, limit: most, border: 'absurd' });
  if (context.confirmed) return undefined;
  if (hours > clock && since !== undefined)
    return asked('hours', {
      ...facts,
      limit: clock,
      ...(isToday ? { border: 'today' } : { border: 'clock', at: since }),
    });
  if (hours > A_DAY) return asked('hours', { ...facts, limit: A_DAY, border: 'day' });
  return fullDay(hours, scene, calendar, options.before ?? 0);
}

/**
 * Two logs of one day tell of that day, not of the time between them: hours told in the evening are all of the day's.
 * What the day has had so far, less what is noted of it.
 */
const leftToday = (end: number, scene: Scene, calendar: LocalCalendar): number => {
  const day = calendar.dayOf(scene.at);
  return Math.max(0, allowed(end - calendar.at(day, 0)) - hoursOn(scene.machine.runByDay, day));
};

const allowed = (ms: number): number => Math.max(0, ms / MS_AN_HOUR) * ROUGHLY + SLACK_HOURS;

const endOfDay = (at: number, now: number, calendar: LocalCalendar): number =>
  Math.min(now, calendar.at(calendar.dayOf(at) + 1, 0));

/**
 * Not for an amendment (the last usage may be the very one), not beside a usage of the same moment (one
 * message that tells of two spools), and not for a repetition, which is flagged as that.
 */
function lastRun(scene: Scene, options: { before?: number; repeats?: boolean }): number | undefined {
  const last = scene.machine.lastUsage;
  if (!last || options.before !== undefined || options.repeats || last.at >= scene.at) return undefined;
  return last.at;
}

/** A local day has 24 h, or 23 or 25 when the clocks change. */
function fullDay(hours: number, scene: Scene, calendar: LocalCalendar, before: number): Asked | undefined {
  const run = recordOfThatDay(scene).runByDay;
  for (const { day, hours: here } of hoursByDay(scene, hours, calendar)) {
    const length = (calendar.at(day + 1, 0) - calendar.at(day, 0)) / MS_AN_HOUR;
    const left = Math.max(0, length - Math.max(0, hoursOn(run, day) - before));
    if (here <= left + 1e-9) continue;
    return asked('hours', {
      act: 'usage',
      machine: scene.name,
      field: 'hours',
      given: hours,
      limit: left,
      border: 'day',
      on: dateOfDay(day),
    });
  }
  return undefined;
}

/** A later reading has laid unlogged hours on the day, which this very usage may explain: look before it. */
const recordOfThatDay = ({ machine, latest, at }: Scene): MachineRecord =>
  latest.anchor && latest.anchor.mark.at > at ? machine : latest;
