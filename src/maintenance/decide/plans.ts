/** Put off, and promised. Planning is refused where there is nothing to plan; safety work does not wait. */
import { dateOfDay, dayOfDate, isDate } from '../calendar.ts';
import { isRoomTask, ROOM, type Task } from '../codes.ts';
import type { LocalDate } from '../entry/entry.ts';
import type { MachineRecord } from '../record/record.ts';
import { taskHere } from '../record/taskHere.ts';
import type { DecideContext, Shops } from './context.ts';
import type { ClaimDeed, DeferDeed } from './deed.ts';
import { asked, refused, written, type Asked, type Decision, type Refused } from './decision.ts';
import { BORDERS, impossible } from './figures.ts';
import { isScene, sceneOf, type Scene } from './scene.ts';

export function decideDefer(deed: DeferDeed, shops: Shops, context: DecideContext): Decision {
  const scene = sceneOf(inItsPlace(deed), shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision, latest } = scene;
  const task = deed.task && taskHere(deed.task, latest.build);
  const unplanned = notPlanned(task, latest, context);
  if (unplanned) return unplanned;
  const term = termOf(deed, scene, context);
  if ('outcome' in term) return term;
  const unsafe = cannotWait(task, term, latest, context);
  if (unsafe) return unsafe;
  const said = { ...(task ? { task } : {}), ...(deed.reason === undefined ? {} : { reason: deed.reason }) };
  return written([{ kind: 'putOff', machine, ...said, ...term, at, precision }]);
}

export function decideClaim(deed: ClaimDeed, shops: Shops, context: DecideContext): Decision {
  const { on, ...now } = inItsPlace(deed);
  const scene = sceneOf(now, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision, latest } = scene;
  if (on !== undefined && !isDate(on))
    return refused('invalid-number', { act: 'claim', machine, field: 'on' });
  const task = deed.task && taskHere(deed.task, latest.build);
  const unplanned = notPlanned(task, latest, context);
  if (unplanned) return unplanned;
  const said = { ...(task ? { task } : {}), ...(on === undefined ? {} : { on }) };
  const before = task && latest.claims[task];
  const draft = { kind: 'claimed', machine, ...said, at, precision } as const;
  if (!before || before.mark.by === context.by) return written([draft]);
  const claim = { by: before.mark.by, ...(before.on === undefined ? {} : { on: before.on }) };
  return written([draft], ['claimed-by-other'], { claim });
}

/** The room's tasks are the room's, whichever machine was spoken of. */
const inItsPlace = <D extends DeferDeed | ClaimDeed>(deed: D): D =>
  deed.task && isRoomTask(deed.task) ? { ...deed, machine: ROOM } : deed;

export const notPlanned = (
  task: Task | undefined,
  machine: MachineRecord,
  context: DecideContext,
): Refused | undefined =>
  task === undefined || context.planned(task, machine)
    ? undefined
    : refused('not-planned-here', { machine: machine.name, task });

interface Term {
  until?: LocalDate;
  atHours?: number;
}

/** A put-off must lead somewhere: today or earlier is no later time. */
function termOf(deed: DeferDeed, scene: Scene, context: DecideContext): Term | Refused | Asked {
  const { name: machine, latest } = scene;
  const { days, hours, task } = deed;
  const facts = { act: 'defer', machine, ...(task ? { task } : {}) };
  const wrong =
    impossible('days', days, BORDERS.days, facts) ?? impossible('hours', hours, BORDERS.hours, facts);
  if (wrong) return wrong;
  const today = context.calendar.dayOf(context.saidAt);
  const until = deed.until ?? (days === undefined ? undefined : dateOfDay(today + days));
  if (until !== undefined)
    return notLater(until, today)
      ? refused('invalid-number', { ...facts, field: 'until', on: until })
      : { until };
  if (hours !== undefined && machine === ROOM)
    return refused('invalid-number', { ...facts, field: 'hours', given: hours });
  if (hours !== undefined) return { atHours: latest.totals.hours + hours };
  const limit = task && context.latestPutOff(task, latest);
  return asked('until', { ...facts, ...(limit ? { date: limit } : {}) });
}

export const notLater = (until: LocalDate, today: number): boolean =>
  !isDate(until) || dayOfDate(until) <= today;

/** Hours of running cannot be held against a date: a safety task is put off to a date or not at all. */
export function cannotWait(
  task: Task | undefined,
  term: { until?: LocalDate },
  machine: MachineRecord,
  context: DecideContext,
): Refused | undefined {
  const limit = task && context.latestPutOff(task, machine);
  if (!task || limit === undefined || (term.until !== undefined && term.until <= limit)) return undefined;
  const down = machine.down ? ({ down: true } as const) : {};
  return refused('safety-cannot-wait', { machine: machine.name, task, date: limit, ...down });
}
