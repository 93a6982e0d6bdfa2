/** A machine comes, is described anew, and goes. */
import { dayOfDate, isDate } from '../calendar.ts';
import { ROOM } from '../codes.ts';
import type { Draft } from '../entry/entry.ts';
import { foldName } from '../machine.ts';
import { answersTo } from '../record/called.ts';
import type { DecideContext, Shops } from './context.ts';
import type { ChangeDeed, EnrolDeed, RetireDeed } from './deed.ts';
import { refused, written, type Decision } from './decision.ts';
import { BORDERS, impossible } from './figures.ts';
import { isScene, machineScene } from './scene.ts';

/** Enrolling a machine that is there says how it is now: that is a change, and its counter goes on. */
export function decideEnrol(deed: EnrolDeed, shops: Shops, context: DecideContext): Decision {
  const name = foldName(deed.machine);
  const { aliases, build, startHours, inUseSince } = deed;
  const facts = { act: 'enrol', machine: name };
  if (name === '' || name === ROOM) return refused('unknown-machine', facts);
  const known = shops.latest.machines.get(name);
  if (belongsToAnother(name, name, shops))
    return refused('unknown-machine', { ...facts, taken: deed.machine });
  if (known?.enrolled && !known.retired) {
    const set = { build, ...(aliases ? { aliases } : {}) };
    return decideChange({ kind: 'change', machine: name, set }, shops, context);
  }
  const today = context.calendar.dateOf(context.saidAt);
  if (inUseSince !== undefined && !isDate(inUseSince))
    return refused('invalid-number', { ...facts, field: 'inUseSince' });
  if (inUseSince !== undefined && inUseSince > today)
    return refused('in-future', { ...facts, on: inUseSince });
  const wrong = impossible('startHours', startHours, BORDERS.counter, facts);
  return wrong ?? written([enrolmentDraft(name, deed, today, context)]);
}

function enrolmentDraft(name: string, deed: EnrolDeed, today: string, context: DecideContext): Draft {
  const { build, aliases, startHours } = deed;
  return {
    kind: 'enrolled',
    machine: name,
    build,
    ...(aliases ? { aliases } : {}),
    ...(startHours === undefined ? {} : { startHours }),
    inUseSince: deed.inUseSince ?? today,
    ...(deed.new ? { new: true } : {}),
    at: Math.min(context.saidAt, context.now),
    precision: 'instant',
  };
}

export function decideChange(deed: ChangeDeed, shops: Shops, context: DecideContext): Decision {
  const scene = machineScene(deed, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision } = scene;
  const { calledAs, aliases = [] } = deed.set;
  const names = [...(calledAs === undefined ? [] : [calledAs]), ...aliases];
  const taken = names.find((name) => belongsToAnother(name, machine, shops));
  if (taken !== undefined) return refused('unknown-machine', { act: 'change', machine, taken });
  return written([{ kind: 'changed', machine, set: deed.set, at, precision }]);
}

/** A name or an alias of another machine that is in use. */
const belongsToAnother = (alias: string, machine: string, { latest }: Shops): boolean =>
  [...latest.machines.values()].some(
    (other) => other.name !== machine && !other.retired && answersTo(other).includes(foldName(alias)),
  );

export function decideRetire(deed: RetireDeed, shops: Shops, context: DecideContext): Decision {
  const { on, ...today } = deed;
  const scene = machineScene(
    on === undefined || on <= context.calendar.dateOf(context.now) ? deed : today,
    shops,
    context,
  );
  if (!isScene(scene)) return scene;
  const { name: machine, flags } = scene;
  // a day to come is no report of a deed but the day from which on nothing is asked of the machine
  const ahead = on !== undefined && isDate(on) && on > context.calendar.dateOf(context.now);
  const { at, precision } = ahead
    ? { at: context.calendar.at(dayOfDate(on), 0), precision: 'day' as const }
    : scene;
  return written([{ kind: 'retired', machine, at, precision }], flags);
}
