/** One task of one machine as a row: its state, its figures, its dates. */
import type { PlannedRule } from '../care/index.ts';
import { minutesOf } from '../care/rule.ts';
import type { Rule } from '../care/rule.ts';
import type { Task } from '../codes.ts';
import type { MachineRecord, PutOff, TaskDone } from '../record/record.ts';
import { LOOK_AHEAD_DAYS } from './context.ts';
import { datesOf } from './dates.ts';
import type { Dates } from './dates.ts';
import { isOverdue, latenessOf } from './lateness.ts';
import type { MachineScene } from './machine.ts';
import { graceOf } from './measure.ts';
import { putOffOf, putOffShown } from './putOff.ts';
import type { DueRow, Since, State } from './row.ts';
import { isFarOff } from './soon.ts';
import { isReached, standingOf, topUse } from './standing.ts';
import type { Standing } from './standing.ts';

/** `near` leaves out what is fine and far off; `raised` takes only what an event raised, and reckons no dates. */
export type Which = 'all' | 'near' | 'raised';
const NO_DATES: Dates = { shown: null, likely: null };

/** Nobody knows since when: nothing was ever recorded, and no event makes it due. */
const isUnknown = (standing: Standing): boolean =>
  standing.since === undefined && standing.terms.length > 0 && !isReached(standing);

function stateOf(standing: Standing, dates: Dates, putOff: PutOff | undefined, scene: MachineScene): State {
  if (isUnknown(standing)) return 'no-record';
  if (putOff) return 'put-off';
  if (isOverdue(standing)) return 'overdue';
  if (isReached(standing)) return 'due';
  const ahead = scene.context.lookAheadDays ?? LOOK_AHEAD_DAYS;
  return dates.likely !== null && dates.likely - scene.today <= ahead ? 'coming-up' : 'fine';
}

/** A safety task cannot be put off beyond its grace. */
function putOffNow(task: Task, standing: Standing, { record, today }: MachineScene): PutOff | undefined {
  if (standing.class === 'safety' && isOverdue(standing)) return undefined;
  return putOffOf(task, record, today, [standing.since, standing.raised?.last], standing.class !== 'safety');
}

const sourceOf = (task: Task, record: MachineRecord): DueRow['source'] =>
  record.intervals[task]?.source ?? 'common practice';

const sinceShown = ({ at, hoursUnknown, totals, why }: TaskDone): Since =>
  hoursUnknown ? { at, why } : { at, hours: totals.hours, why };

/** Without a record there is an interval, but nothing used of it. */
function unknownFigures({ terms }: Standing): Partial<DueRow> {
  const [term] = terms;
  if (!term) return {};
  const unit = term.trigger === 'hours' ? 'h' : 'gramsOf' in term ? 'g' : term.trigger;
  const { trigger, interval } = term;
  return { trigger, interval, unit, grace: graceOf(interval, unit), share: null, used: null, all: [] };
}

function lookPays({ lookFromHours }: Rule, since: TaskDone | undefined, record: MachineRecord): boolean {
  if (lookFromHours === undefined || !since || since.hoursUnknown) return false;
  return record.totals.hours - since.totals.hours >= lookFromHours;
}

/** What most rows have nothing of; undefined then, because thousands of rows are made. */
function extrasOf({ rule, assumed }: PlannedRule, standing: Standing, { record }: MachineScene) {
  const { since, raised, faster } = standing;
  const watched = since?.finding === 'watch';
  const pays = lookPays(rule, since, record);
  if (!raised && assumed === undefined && !watched && !pays && !faster) return undefined;
  return {
    ...(raised && { raised }),
    ...(assumed !== undefined && { assumed }),
    ...(watched && { watched: true as const }),
    ...(pays && { lookPays: true as const }),
    ...(faster && { faster: true as const }),
  };
}

/** One task as it stands; undefined where nothing asks for it, or it is none of those wanted. */
export function rowOf(planned: PlannedRule, scene: MachineScene, which: Which): DueRow | undefined {
  const { rule } = planned;
  const { record } = scene;
  const standing = standingOf(rule, scene);
  if (!standing || (which === 'raised' && !standing.raised)) return undefined;
  const unknown = isUnknown(standing);
  if (which === 'near' && !unknown && isFarOff(standing, scene)) return undefined;
  const top = topUse(standing.uses);
  const dates = unknown || which === 'raised' ? NO_DATES : datesOf(standing, top, scene);
  const putOff = putOffNow(rule.task, standing, scene);
  const row: DueRow = {
    machine: record.name,
    task: rule.task,
    state: stateOf(standing, dates, putOff, scene),
    idle: scene.idle,
    class: standing.class,
    share: top?.share ?? null,
    trigger: top?.trigger ?? null,
    used: top?.used ?? null,
    interval: top?.interval ?? null,
    unit: top?.unit ?? null,
    grace: top?.grace ?? null,
    since: standing.since ? sinceShown(standing.since) : null,
    all: standing.uses,
    source: sourceOf(rule.task, record),
    raisedBy: standing.raised?.mark.entry ?? null,
    putOff: putOff ? putOffShown(putOff) : null,
    minutes: minutesOf(rule, record.build),
    forecast: dates.shown,
    rule,
    lateness: latenessOf(standing),
  };
  if (unknown) Object.assign(row, unknownFigures(standing));
  return Object.assign(row, extrasOf(planned, standing, scene));
}
