/** The third jam in a short time is no chance: the standard hint gives way to "find the cause". */
import type { Entry, Instant } from '../../maintenance/entry/entry.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { count } from '../format/number.ts';
import { item, type Item } from '../reply.ts';

/** Common practice, no source: three jams within 50 h of running or within 7 days. */
const JAMS = 3;
const WITHIN_HOURS = 50;
const WITHIN_DAYS = 7;

/** Undefined while it is no series. `now`: the jam just told counts. */
export function jamSeries(machine: MachineRecord, now: Instant): { times: number; days: number } | undefined {
  const recent = (machine.symptoms['no-extrusion']?.recent ?? []).filter(({ at }) => at <= now);
  const last = recent.at(-1);
  const first = recent.at(-JAMS);
  if (!last || !first) return undefined;
  const hours = last.totals.hours - first.totals.hours;
  const days = last.day - first.day;
  // hours count only where it ran at all between them
  if (days > WITHIN_DAYS && !(hours > 0 && hours <= WITHIN_HOURS)) return undefined;
  return { times: JAMS, days };
}

/** A look that costs nothing comes first: heat creep and the liner are commoner than a worn nozzle then. */
export const findTheCause = ({ times, days }: { times: number; days: number }): Item[] => [
  item(
    `Jam number ${times} ${days === 0 ? 'today' : `within ${count(days + 1, 'day')}`}: clearing it again is not enough, find the cause before the next long print. ` +
      'Most likely heat creep or the liner, less likely the nozzle.',
  ),
  item(
    'First, hands off: does the hot-end fan spin once the hot end is warm? (about 1 min) Then the liner and the tube end, cold.',
  ),
];

export const isJam = (entry: Entry): boolean =>
  (entry.kind === 'done' && entry.task === 'clear-jam') ||
  (entry.kind === 'seen' && entry.symptom === 'no-extrusion');

/** What the first look of a series found, and where it leads. */
export function fanLooked(entry: Entry): Item[] {
  if (entry.kind === 'seen' && entry.symptom === 'fan-stopped')
    return [item('That explains the jams: no print before the hot-end fan is replaced.')];
  return entry.kind === 'done' && entry.task === 'check-fans' && entry.finding === 'fine'
    ? [
        item(
          'Then it is not the fan. Next, cold: the liner and the tube end; browned, pinched or with a gap, they catch the filament.',
        ),
      ]
    : [];
}
