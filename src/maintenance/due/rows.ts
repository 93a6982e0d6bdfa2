/** Every task of every machine as it stands: the list that `due`, the digest and the round are made of. */
import { minutesOf } from '../care/rule.ts';
import { roomRules, rulesFor } from '../care/index.ts';
import type { PlannedRule } from '../care/index.ts';
import type { Rule } from '../care/rule.ts';
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
import { isFarOff } from './soon.ts';
import { isReached, standingOf, topUse } from './standing.ts';
import type { Standing } from './standing.ts';

type Which = 'all' | 'near';
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

function rowOf(planned: PlannedRule, scene: MachineScene, which: Which): DueRow | undefined {
  const { rule } = planned;
  const { record } = scene;
  const standing = standingOf(rule, scene);
  if (!standing) return undefined;
  const unknown = isUnknown(standing);
  if (which === 'near' && !unknown && isFarOff(standing, scene)) return undefined;
  const top = topUse(standing.uses);
  const dates = unknown ? NO_DATES : datesOf(standing, top, scene);
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
  const extras = extrasOf(planned, standing, scene);
  return extras || unknown ? { ...row, ...(unknown && unknownFigures(standing)), ...extras } : row;
}

/** A retired machine needs nothing any more. */
function unordered(
  record: MachineRecord,
  context: DueContext,
  room?: MachineRecord,
  which: Which = 'all',
): DueRow[] {
  if (record.retired) return [];
  const scene = sceneOf(record, context, room);
  const rules = record.name === ROOM ? roomRules() : rulesFor(record.build);
  return rules.flatMap((planned) => rowOf(planned, scene, which) ?? []);
}

/**
 * The tasks of one machine (or of the room) in list order. `room` holds what was done for all machines at
 * once ("cleared the debris").
 */
export const machineDue = (record: MachineRecord, context: DueContext, room?: MachineRecord): DueRow[] =>
  unordered(record, context, room).sort(inListOrder);

/** The tasks of all machines and of the room, machine by machine; `near` leaves out what is fine and far off. */
export const rowsByMachine = (shop: ShopRecord, context: DueContext, which: Which): DueRow[] => [
  ...[...shop.machines.values()].flatMap((record) => unordered(record, context, shop.room, which)),
  ...unordered(shop.room, context, undefined, which),
];

/** The tasks of all machines and of the room in list order. */
export const dueRows = (shop: ShopRecord, context: DueContext): DueRow[] =>
  rowsByMachine(shop, context, 'all').sort(inListOrder);

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
  return planned && rowOf(planned, sceneOf(record, context, room), 'all');
}
