/** Every task of every machine as it stands: the list that `due`, the digest and the round are made of. */
import { minutesOf } from '../care/rule.ts';
import { roomRules, rulesFor } from '../care/index.ts';
import type { PlannedRule } from '../care/index.ts';
import { ROOM, isRoomTask } from '../codes.ts';
import type { Task } from '../codes.ts';
import type { MachineRecord, PutOff, ShopRecord, TaskDone } from '../record/record.ts';
import { LOOK_AHEAD_DAYS } from './context.ts';
import type { DueContext } from './context.ts';
import { datesOf } from './dates.ts';
import type { Dates } from './dates.ts';
import { isOverdue, latenessOf } from './lateness.ts';
import { sceneOf } from './machine.ts';
import type { MachineScene } from './machine.ts';
import { inListOrder } from './order.ts';
import { putOffOf, putOffShown } from './putOff.ts';
import type { DueRow, Since, State } from './row.ts';
import { graceOf } from './measure.ts';
import { isReached, standingOf, topUse } from './standing.ts';
import type { Standing } from './standing.ts';

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
  return putOffOf(task, record, today, [standing.since, standing.raised?.last]);
}

const sourceOf = (task: Task, record: MachineRecord): DueRow['source'] =>
  record.intervals[task]?.source ?? 'common practice';

const sinceShown = (since: TaskDone): Since => ({
  at: since.at,
  ...(!since.hoursUnknown && { hours: since.totals.hours }),
  why: since.why,
});

type Figures = Pick<
  DueRow,
  'share' | 'trigger' | 'used' | 'interval' | 'unit' | 'grace' | 'since' | 'all' | 'forecast'
>;

/** Without a record there is an interval, but nothing used of it. */
function unknownFigures({ terms }: Standing): Figures {
  const [term] = terms;
  const unit = term && (term.trigger === 'hours' ? 'h' : 'gramsOf' in term ? 'g' : term.trigger);
  return {
    share: null,
    trigger: term?.trigger ?? null,
    used: null,
    interval: term?.interval ?? null,
    unit: unit ?? null,
    grace: term && unit ? graceOf(term.interval, unit) : null,
    since: null,
    all: [],
    forecast: null,
  };
}

function figuresOf(standing: Standing, dates: Dates): Figures {
  if (isUnknown(standing)) return unknownFigures(standing);
  const top = topUse(standing.uses);
  return {
    share: top?.share ?? null,
    trigger: top?.trigger ?? null,
    used: top?.used ?? null,
    interval: top?.interval ?? null,
    unit: top?.unit ?? null,
    grace: top?.grace ?? null,
    since: standing.since ? sinceShown(standing.since) : null,
    all: standing.uses,
    forecast: dates.shown,
  };
}

function rowOf({ rule, assumed }: PlannedRule, scene: MachineScene): DueRow | undefined {
  const { record } = scene;
  const standing = standingOf(rule, scene);
  if (!standing) return undefined;
  const { since, raised } = standing;
  const dates = isUnknown(standing) ? NO_DATES : datesOf(standing, topUse(standing.uses), scene);
  const putOff = putOffNow(rule.task, standing, scene);
  const looked = rule.lookFromHours !== undefined && since && !since.hoursUnknown;
  const lookPays = looked && record.totals.hours - since.totals.hours >= (rule.lookFromHours ?? Infinity);
  return {
    machine: record.name,
    task: rule.task,
    state: stateOf(standing, dates, putOff, scene),
    idle: scene.idle,
    class: standing.class,
    ...figuresOf(standing, dates),
    source: sourceOf(rule.task, record),
    raisedBy: raised?.mark.entry ?? null,
    putOff: putOff ? putOffShown(putOff) : null,
    minutes: minutesOf(rule, record.build),
    rule,
    lateness: latenessOf(standing),
    ...(raised && { raised }),
    ...(assumed !== undefined && { assumed }),
    ...(since?.finding === 'watch' && { watched: true }),
    ...(lookPays && { lookPays: true }),
    ...(standing.faster && { faster: true }),
  };
}

/** A retired machine needs nothing any more. */
function unordered(record: MachineRecord, context: DueContext, room?: MachineRecord): DueRow[] {
  if (record.retired) return [];
  const scene = sceneOf(record, context, room);
  const rules = record.name === ROOM ? roomRules() : rulesFor(record.build);
  return rules.flatMap((planned) => rowOf(planned, scene) ?? []);
}

/**
 * The tasks of one machine (or of the room) in list order. `room` holds what was done for all machines at
 * once ("cleared the debris").
 */
export const machineDue = (record: MachineRecord, context: DueContext, room?: MachineRecord): DueRow[] =>
  unordered(record, context, room).sort(inListOrder);

/** The tasks of all machines and of the room in list order. */
export const dueRows = (shop: ShopRecord, context: DueContext): DueRow[] =>
  [
    ...[...shop.machines.values()].flatMap((record) => unordered(record, context, shop.room)),
    ...unordered(shop.room, context),
  ].sort(inListOrder);

/** One task of one machine; undefined where the machine does not have it, or nothing asks for it. */
export function dueRow(
  record: MachineRecord,
  task: Task,
  context: DueContext,
  room?: MachineRecord,
): DueRow | undefined {
  if (record.retired || isRoomTask(task) !== (record.name === ROOM)) return undefined;
  const rules = record.name === ROOM ? roomRules() : rulesFor(record.build);
  const planned = rules.find(({ rule }) => rule.task === task);
  return planned && rowOf(planned, sceneOf(record, context, room));
}
