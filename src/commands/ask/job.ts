/** "52 h from Friday 5pm, 810 g": what a question about a job says beyond its reading, and when the job runs. */
import { dayOfDate, weekdayOf, type Day } from '../../maintenance/calendar.ts';
import { jobOf, type Job } from '../../maintenance/due/during.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import type { AskScene } from './topic.ts';

const GRAMS = /(?<![\w.,])(\d+(?:,\d{3})*(?:[.,]\d+)?)\s?(kg|kilos?|kilograms?|g|gr|grams?|grammes?)\b/iu;

/** Grams that the job takes, where they stand beside its hours: the reading of a question keeps one of the two. */
export function gramsSaid(said: string): number | undefined {
  const [, number, unit] = GRAMS.exec(said) ?? [];
  if (number === undefined || unit === undefined) return undefined;
  const plain = /,\d{3}(?!\d)/u.test(number) ? number.replaceAll(',', '') : number.replace(',', '.');
  return Number(plain) * (unit.toLowerCase().startsWith('k') ? 1000 : 1);
}

const TWELVE = /(?<![\d.,:])(1[0-2]|0?[1-9])(?:[:.]([0-5]\d))?\s?([ap])\.?m\b/iu;
const FULL = /(?<![\d.,])([01]?\d|2[0-3]):([0-5]\d)(?!\d)/u;

/** Minutes since midnight, where a time of day was said. */
export function timeSaid(said: string): number | undefined {
  const [, h, m = '0', half] = TWELVE.exec(said) ?? [];
  if (h !== undefined) return ((Number(h) % 12) + (half?.toLowerCase() === 'p' ? 12 : 0)) * 60 + Number(m);
  const [, hour, minute] = FULL.exec(said) ?? [];
  return hour === undefined ? undefined : Number(hour) * 60 + Number(minute);
}

const SATURDAY = 5;

/** The days named; the reading of "all weekend" has none. */
function span({ act, today, said }: AskScene): { from: Day; to: Day } {
  const day = (date: string | undefined): Day | undefined =>
    date === undefined ? undefined : dayOfDate(date);
  if (act.from === undefined && act.to === undefined && /\bweekend\b/iu.test(said)) {
    const saturday = today + Math.max(0, SATURDAY - weekdayOf(today));
    return { from: saturday, to: saturday + 1 };
  }
  const from = Math.max(today, day(act.from) ?? today);
  return { from, to: Math.max(from, day(act.to) ?? from) };
}

/** Without a length the whole span that was named counts: "can it run all weekend?". */
export function jobAsked(scene: AskScene, machine: MachineRecord): Job {
  const { from, to } = span(scene);
  const hours = scene.act.hours ?? (to > from ? (to - from + 1) * 24 : 0);
  return jobOf(machine, scene.today, from, hours, timeSaid(scene.said));
}
