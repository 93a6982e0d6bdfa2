/** The digest in the shape of `fettle digest`, without its text. */
import type { LocalCalendar } from '../calendar.ts';
import type { Digest } from './digest.ts';
import { dueJson } from './json.ts';
import type { DueRow } from './row.ts';

const withTime = <T extends { since: number }>(line: T, calendar: LocalCalendar) => ({
  ...line,
  since: calendar.format(line.since),
});

export function digestJson(digest: Digest, calendar: LocalCalendar) {
  const row = (of: DueRow) => ({ ...dueJson(of, calendar), ...(of.machines && { machines: of.machines }) });
  return {
    date: digest.date,
    held: digest.held.map((line) => withTime(line, calendar)),
    outOfUse: digest.outOfUse.map((line) => withTime(line, calendar)),
    open: digest.open.map((line) => withTime(line, calendar)),
    overdue: digest.overdue.map(row),
    due: digest.due.map(row),
    comingUp: digest.comingUp.map(row),
    noRecord: {
      tasks: digest.noRecord.tasks,
      machines: digest.noRecord.machines,
      safety: digest.noRecord.safety.map(({ machine, task }) => ({ machine, task })),
    },
    round: digest.round.map(({ machine, tasks, minutes, pulledForward, openings }) => ({
      machine,
      tasks,
      minutes,
      pulledForward,
      openings,
    })),
    fetch: digest.fetch,
    shelf: digest.shelf,
    cautions: digest.cautions,
    minutes: digest.minutes,
    left: digest.left.map(({ machine, task, minutes }) => ({ machine, task, minutes })),
  };
}
