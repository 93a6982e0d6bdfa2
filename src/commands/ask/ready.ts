/** "Can elm take an 18 h job?": what the records say. Whether to leave it running is the workshop's rule. */
import { gramsBetween, usualRate } from '../../maintenance/care/dose.ts';
import { dateOfDay } from '../../maintenance/calendar.ts';
import { reachedDuring, type Job, type Reached } from '../../maintenance/due/during.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import { unexplained, type Trouble } from '../../maintenance/due/unexplained.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { list } from '../../replies/format/list.ts';
import { count, figure, hours } from '../../replies/format/number.ts';
import { bold, item, type Reply } from '../../replies/reply.ts';
import { amount, dueLine } from '../../replies/wording/due.ts';
import { spoolWear } from '../../replies/wording/loading.ts';
import { jamSeries } from '../../replies/wording/repeats.ts';
import { machineName, materialName, symptomName, todo } from '../../replies/wording/names.ts';
import { dateWord, since } from '../../replies/wording/view.ts';
import { gramsSaid, jobAsked, timeSaid } from './job.ts';
import { stateWords } from './status.ts';
import { isRoomLine, machinesOf, type AskScene, type Topic } from './topic.ts';

const MOST = 4;
type Falling = { row: DueRow; reached: Reached };

function fallingDue(rows: readonly DueRow[], job: Job): Falling[] {
  return rows.flatMap((row) => {
    const reached = isRoomLine(row) ? undefined : reachedDuring(row, job);
    return reached ? [{ row, reached }] : [];
  });
}

/** "check the wiring, Saturday (90 days)", "oil the rods, after 20 h of it (300 h)". */
function falling({ row, reached }: Falling, scene: AskScene): string {
  if (reached.when === 'now') return dueLine(row);
  const unit = reached.when === 'hours' ? 'h' : undefined;
  const use = row.all.find((each) => unit === undefined || each.unit === unit);
  const every = use ? ` (${amount(use.interval, use.unit)})` : '';
  if (reached.when === 'day') return `${todo(row.task)}, ${dateWord(dateOfDay(reached.day), scene)}${every}`;
  return `${todo(row.task)}, ${reached.into < 1 ? 'by its start' : `after ${hours(reached.into)} of it`}${every}`;
}

function more(words: readonly string[]): string {
  if (words.length <= MOST + 1) return words.join(' · ');
  return `${words.slice(0, MOST).join(' · ')} · and ${words.length - MOST} more`;
}

function dueWords(all: readonly DueRow[], job: Job, scene: AskScene): string[] {
  const found = fallingDue(all, job);
  const safety = found.filter(({ row }) => row.class === 'safety').map((each) => falling(each, scene));
  const blank = all.filter((row) => row.class === 'safety' && row.state === 'no-record' && !isRoomLine(row));
  const checks = [...safety, ...blank.map((row) => `${todo(row.task)} (no record)`)];
  const other = found.filter(({ row }) => row.class !== 'safety');
  const [now, later] = [true, false].map((is) =>
    other.filter(({ reached }) => (reached.when === 'now') === is).map((each) => falling(each, scene)),
  );
  return [
    ...(checks.length > 0
      ? [`${count(checks.length, 'safety check')} open by its end: ${more(checks)}`]
      : []),
    ...(now?.length ? [`Due already: ${more(now)}`] : []),
    ...(later?.length ? [`Falls due before it is over: ${more(later)}`] : []),
  ];
}

function troubleWords(machine: MachineRecord, scene: AskScene): string[] {
  const found = unexplained(machine, scene.today);
  const jam = found.some(({ symptom }) => symptom === 'no-extrusion');
  const series = jam ? jamSeries(machine, scene.now) : undefined;
  const told = ({ symptom, last, times }: Trouble): string =>
    `${symptomName(symptom)} (${times > 1 ? `${times} times, last ` : ''}${since(last.at, scene)})`;
  const open = found.filter((trouble) => trouble.open).map(told);
  const gone = found
    .filter(({ open: is, symptom }) => !is && !(series && symptom === 'no-extrusion'))
    .map(told);
  return [
    ...(open.length > 0 ? [`Noticed and not cleared: ${list(open)}`] : []),
    ...(series
      ? [
          `${count(series.times, 'jam')} ${series.days === 0 ? 'today' : `within ${count(series.days + 1, 'day')}`}, and no cause on record.`,
        ]
      : []),
    ...(gone.length > 0 ? [`Cleared, but no cause on record: ${list(gone)}`] : []),
  ];
}

/** What is left on the spool by the logs, beside what the job takes. */
function spoolWords(machine: MachineRecord, job: number | undefined, scene: AskScene): string[] {
  const { loaded, totals, nozzle } = machine;
  const wants = job === undefined ? '' : `; the job takes ${figure(job, 0)} g`;
  if (!loaded) return job === undefined ? [] : [`No record of what is loaded${wants}`];
  const name = loaded.material ? materialName(loaded.material) : 'a spool of something';
  const wear = loaded.material && job !== undefined ? spoolWear(machine, loaded.material, job, 'this job', scene) : [];
  if (loaded.grams === undefined) return [`Loaded: ${name}, its weight not on record${wants}`, ...wear];
  const ran = loaded.material
    ? gramsBetween(loaded.mark.totals, totals, loaded.material, usualRate(nozzle))
    : 0;
  const left = Math.max(0, loaded.grams - ran);
  const used = ran > 0 ? `, ${left < 1 ? 'nothing' : `about ${figure(left, 0)} g`} left by the logs of ${figure(loaded.grams, 0)} g` : `, ${figure(loaded.grams, 0)} g when it was mounted`;
  const short = job === undefined || job <= left ? '' : job > loaded.grams ? ': more than was mounted' : ': not enough on it';
  return [`Loaded: ${name}${used}${wants}${short}`, ...wear];
} // prettier-ignore

function title(machine: MachineRecord, job: Job, scene: AskScene): string {
  const from = job.from > job.today ? ` from ${dateWord(dateOfDay(job.from), scene)}` : '';
  const to =
    job.to > job.from
      ? ` to ${dateWord(dateOfDay(job.to), scene)}${timeSaid(scene.said) === undefined ? ' at the latest' : ''}`
      : '';
  return `${machineName(machine.name, scene)}${job.hours > 0 ? `, ${hours(job.hours)}` : ''}${from}${to}`;
}

export const ready: Topic = (scene): Reply => {
  const [machine] = machinesOf(scene);
  if (scene.act.machine === undefined || !machine)
    return { sections: [{ items: [item('Which machine, and for how many hours?')] }], buttons: [] };
  const job = jobAsked(scene, machine);
  const open = [
    ...stateWords(machine, scene),
    ...dueWords(scene.rows(machine.name), job, scene),
    ...troubleWords(machine, scene),
  ];
  const lines = [
    ...(open.length > 0 ? open : ['Nothing open in the records.']),
    ...spoolWords(machine, scene.act.grams ?? gramsSaid(scene.said), scene),
    'Whether it may run unattended is your workshop’s rule; I cannot tell you.',
  ];
  return {
    title: [bold(title(machine, job, scene)), ', from the records:'],
    sections: [{ items: lines.map((line) => item(line)) }],
    buttons: [],
  };
};
