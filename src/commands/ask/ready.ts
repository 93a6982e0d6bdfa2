/** "Can elm take an 18 h job?": what the records say. Whether to leave it running is the workshop's rule. */
import { dateOfDay, dayOfDate, type Day } from '../../maintenance/calendar.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import { list } from '../../replies/format/list.ts';
import { count, figure, hours } from '../../replies/format/number.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { dueLine } from '../../replies/wording/due.ts';
import { machineName, materialName } from '../../replies/wording/names.ts';
import { jamSeries } from '../../replies/wording/repeats.ts';
import { dateWord } from '../../replies/wording/view.ts';
import { openSymptoms, stateWords } from './status.ts';
import { machinesOf, type AskScene, type Topic } from './topic.ts';

/** The job as asked about: its hours, and the days on which it would begin and end. */
interface Job {
  run: number;
  begins: Day;
  ends: Day;
}
function jobOf({ act, today }: AskScene): Job {
  const run = act.hours ?? 0;
  const begins = act.from === undefined ? today : Math.max(today, dayOfDate(act.from));
  return { run, begins, ends: begins + Math.floor(run / 24) };
}

/** Due now, within the hours that the job would run, or by the days that go by until it begins. */
function reached(row: DueRow, { run, begins, ends }: Job, today: Day): boolean {
  if (row.state === 'overdue' || row.state === 'due') return true;
  if (row.all.some((use) => use.unit === 'h' && use.used + run >= use.interval)) return true;
  const day = row.forecast?.p50 ?? null;
  return begins > today && day !== null && row.state !== 'put-off' && day <= ends;
}

/** More than the whole spool held when it was mounted. */
const tooLittle = (mounted: number | undefined, wanted: number | undefined): Item[] =>
  mounted !== undefined && wanted !== undefined && wanted > mounted
    ? [item(`The job wants ${figure(wanted, 0)} g: more than was mounted.`)]
    : [];

export const ready: Topic = (scene): Reply => {
  const [machine] = machinesOf(scene);
  if (scene.act.machine === undefined || !machine)
    return { sections: [{ items: [item('Which machine, and for how many hours?')] }], buttons: [] };
  const job = jobOf(scene);
  const { run } = job;
  const series = jamSeries(machine, scene.now);
  const rows = scene.rows(machine.name);
  const open = openSymptoms(machine);
  const stops = stateWords(machine, scene);
  const safety = rows.filter(
    (row) => row.class === 'safety' && (reached(row, job, scene.today) || row.state === 'no-record'),
  );
  const other = rows.filter((row) => row.class !== 'safety' && reached(row, job, scene.today));
  const loaded = machine.loaded;
  const items: Item[] = [
    ...stops.map((text) => item(text)),
    ...(safety.length > 0
      ? [item(`${count(safety.length, 'safety check')} open: ${list(safety.map(dueLine))}`)]
      : []),
    ...(open.length > 0 ? [item(`Noticed and not cleared: ${list(open)}`)] : []),
    ...(series
      ? [
          item(
            `${count(series.times, 'jam')} ${series.days === 0 ? 'today' : `within ${count(series.days + 1, 'day')}`}, and no cause on record.`,
          ),
        ]
      : []),
    ...(other.length > 0
      ? [
          item(
            `Due by the end of it: ${list(other.slice(0, 4).map(dueLine))}${other.length > 4 ? ` and ${other.length - 4} more` : ''}`,
          ),
        ]
      : []),
    ...(loaded?.material
      ? [
          item(
            `Loaded: ${materialName(loaded.material)}${loaded.grams === undefined ? '' : `, ${figure(loaded.grams, 0)} g when it was mounted`}`,
          ),
        ]
      : []),
    ...tooLittle(loaded?.grams, scene.act.grams),
  ];
  const nothing = items.length === 0 ? [item('Nothing open in the records.')] : [];
  return {
    title: [
      bold(machineName(machine.name)),
      `${run > 0 ? `, ${hours(run)}` : ''}${job.begins > scene.today ? ` from ${dateWord(dateOfDay(job.begins), scene).replace(/^on /u, '')}` : ''}, from the records:`,
    ],
    sections: [
      {
        items: [
          ...items,
          ...nothing,
          item('Whether it may run unattended is your workshop’s rule; I cannot tell you.'),
        ],
      },
    ],
    buttons: [],
  };
};
