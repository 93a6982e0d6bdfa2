/** What is stated about a machine without having been seen here: baselines and intervals of its own. */
import { isDate } from '../calendar.ts';
import { isRoomTask, ROOM } from '../codes.ts';
import type { DecideContext, Shops } from './context.ts';
import type { SetIntervalDeed, StateOfDeed } from './deed.ts';
import { refused, written, type Decision } from './decision.ts';
import { BORDERS, impossible } from './figures.ts';
import { notPlanned } from './plans.ts';
import { isScene, sceneOf } from './scene.ts';

/** The date may lie before the machine's enrolment: that is what baselines are for. */
export function decideStateOf(deed: StateOfDeed, shops: Shops, context: DecideContext): Decision {
  const { on, task, part, fitted, hours, tasks } = deed;
  const { calendar, now } = context;
  const where = task && isRoomTask(task) ? { ...deed, machine: ROOM } : deed;
  const { on: _about, ...present } = where;
  const scene = sceneOf(present, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision } = scene;
  const facts = { act: 'state', machine, ...(task ? { task } : {}) };
  if (on !== undefined && !isDate(on)) return refused('invalid-number', { ...facts, field: 'on' });
  if (on !== undefined && on > calendar.dateOf(now)) return refused('in-future', { ...facts, on });
  const wrong = impossible('hours', hours, BORDERS.counter, facts);
  if (wrong) return wrong;
  const said = {
    ...(task ? { task } : {}),
    ...(part ? { part } : {}),
    ...(fitted === undefined ? {} : { fitted }),
    ...(on === undefined ? {} : { on }),
    ...(hours === undefined ? {} : { hours }),
    ...(tasks === undefined ? {} : { tasks }),
  };
  return written([{ kind: 'stated', machine, ...said, at, precision }]);
}

export function decideSetInterval(deed: SetIntervalDeed, shops: Shops, context: DecideContext): Decision {
  const { task, interval, source } = deed;
  const scene = sceneOf(isRoomTask(task) ? { ...deed, machine: ROOM } : deed, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision } = scene;
  const unplanned = notPlanned(task, scene.latest, context);
  if (unplanned) return unplanned;
  const facts = { act: 'setInterval', machine, task };
  const terms = Object.entries(interval);
  if (terms.length === 0) return refused('invalid-number', { ...facts, field: 'interval' });
  for (const [field, figure] of terms) {
    const wrong = impossible(field, figure, BORDERS.hours, facts);
    if (wrong) return wrong;
  }
  return written([{ kind: 'intervalSet', machine, task, interval, source, at, precision }]);
}
