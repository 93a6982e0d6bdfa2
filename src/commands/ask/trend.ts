/** "Is maple blocking up more than it did?": the last 90 days beside the 90 before, with the hours run in each. */
import { dateOfDay, dayOfDate, type Day } from '../../maintenance/calendar.ts';
import type { Entry } from '../../maintenance/entry/entry.ts';
import { dayMonth } from '../../replies/format/date.ts';
import { count, figure, hours } from '../../replies/format/number.ts';
import { bold, item, type Reply } from '../../replies/reply.ts';
import { machineName, symptomName } from '../../replies/wording/names.ts';
import { told } from './told.ts';
import { hoursBetween } from './usage.ts';
import { machinesOf, type AskScene, type Topic } from './topic.ts';

const SPAN_DAYS = 90;
const READ = 2000;

const isTrouble =
  ({ act }: AskScene) =>
  (entry: Entry): boolean =>
    (entry.kind === 'seen' && (act.symptom === undefined || entry.symptom === act.symptom)) ||
    (entry.kind === 'done' &&
      entry.task === 'clear-jam' &&
      (act.symptom === undefined || act.symptom === 'no-extrusion'));

async function times(scene: AskScene, from: Day, to: Day): Promise<number> {
  const { act, calendar, journal, now } = scene;
  const facts = await told(journal, {
    ...(act.machine === undefined ? {} : { machine: act.machine }),
    from: calendar.at(from, 0),
    to: calendar.at(to + 1, 0),
    asOf: now,
    limit: READ,
  });
  const trouble = facts.filter(isTrouble(scene));
  // a jam told and cleared on one day is one jam
  return new Set(
    trouble.map((entry) => `${'machine' in entry ? entry.machine : ''} ${calendar.dateOf(entry.at)}`),
  ).size;
}

export const trend: Topic = async (scene): Promise<Reply> => {
  const { act, today } = scene;
  const middle = act.from === undefined ? today - SPAN_DAYS + 1 : dayOfDate(act.from);
  const span = today - middle + 1;
  const [now, before] = [await times(scene, middle, today), await times(scene, middle - span, middle - 1)];
  const machines = machinesOf(scene);
  const ran = (from: Day, to: Day): number => machines.reduce((sum, m) => sum + hoursBetween(m, from, to), 0);
  const [ranNow, ranBefore] = [ran(middle, today), ran(middle - span, middle - 1)];
  const what = act.symptom === undefined ? 'trouble' : symptomName(act.symptom);
  const per = (n: number, h: number): string =>
    n > 0 && h > 0 ? `, ${figure((n / h) * 100, 1)} in 100 h` : '';
  const days = (n: number): string => (n === 0 ? 'none' : `on ${count(n, 'day')}`);
  const name = act.machine === undefined ? 'All machines' : machineName(act.machine, scene);
  return {
    title: [bold(`${name}, ${what}`), ':'],
    sections: [
      {
        items: [
          item(`${count(span, 'day')} to today: ${days(now)}${per(now, ranNow)} (${hours(ranNow)} run)`),
          item(
            `${count(span, 'day')} before, from ${dayMonth(dateOfDay(middle - span), dateOfDay(today))}: ${days(before)}${per(before, ranBefore)} (${hours(ranBefore)} run)`,
          ),
          item(
            now + before < 6
              ? 'So few that chance alone can make the difference.'
              : 'By count; hours that nobody logged are spread over their days.',
          ),
        ],
      },
    ],
    buttons: [],
  };
};
