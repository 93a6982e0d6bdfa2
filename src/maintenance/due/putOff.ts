/** Putting a task off: until a date or a counter. A new event, or the deed itself, ends it. */
import { dayOfDate } from '../calendar.ts';
import type { Day } from '../calendar.ts';
import type { Task } from '../codes.ts';
import type { MachineRecord, Mark, PutOff } from '../record/record.ts';
import type { PutOffShown } from './row.ts';

const stands = (putOff: PutOff, record: MachineRecord, today: Day): boolean => {
  const { until, atHours } = putOff;
  const untilThen = until !== undefined && today < dayOfDate(until);
  const untilHours = atHours !== undefined && record.totals.hours < atHours;
  return until === undefined ? untilHours : untilThen && (atHours === undefined || untilHours);
};

/** The put-off that holds now, of the task or, where `general`, of the machine as a whole: a safety check stays then. */
export function putOffOf(
  task: Task,
  record: MachineRecord,
  today: Day,
  ends: readonly (Mark | undefined)[],
  general: boolean,
): PutOff | undefined {
  if (!record.putOffs[task] && !record.putOffAll) return undefined;
  const ended = (putOff: PutOff): boolean =>
    ends.some((mark) => mark !== undefined && mark.at > putOff.mark.at);
  return [record.putOffs[task], general ? record.putOffAll : undefined].find(
    (putOff): putOff is PutOff => putOff !== undefined && !ended(putOff) && stands(putOff, record, today),
  );
}

export const putOffShown = ({ until, atHours, reason, mark }: PutOff): PutOffShown => ({
  ...(until !== undefined && { until }),
  ...(atHours !== undefined && { atHours }),
  by: mark.by,
  ...(reason !== undefined && { reason }),
});
