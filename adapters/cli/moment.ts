/** `--now` and `--said-at`: RFC 3339 with an offset, a local time without one, or a bare date at 12:00. */
import { dayOfDate, isDate, type Instant, type LocalCalendar } from '../../src/index.ts';
import { usage } from './fault.ts';

const MOMENT = /^(\d{4}-\d{2}-\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?(Z|[+-]\d{2}:\d{2})?)?$/iu;

export function readMoment(text: string, option: string, calendar: LocalCalendar): Instant {
  const match = MOMENT.exec(text.trim());
  const wrong = usage(
    `${option} takes a moment such as 2026-03-11T15:40:00+01:00 or 2026-03-11, not "${text}".`,
  );
  const [, date, hour, minute, second, offset] = match ?? [];
  if (date === undefined || !isDate(date)) throw wrong;
  if (hour === undefined || minute === undefined) return calendar.noon(dayOfDate(date));
  const [h, m, s] = [Number(hour), Number(minute), Number(second ?? 0)];
  if (h > 23 || m > 59 || s > 59) throw wrong;
  if (offset !== undefined) {
    const instant = Date.parse(text.trim().toUpperCase().replace(' ', 'T'));
    if (Number.isNaN(instant)) throw wrong;
    return instant;
  }
  return calendar.at(dayOfDate(date), h * 60 + m) + s * 1000;
}
