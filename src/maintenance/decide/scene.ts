/** The machine that a deed is about and the moment when it was done, once both are found to be possible. */
import { dateOfDay, isDate } from '../calendar.ts';
import { ROOM } from '../codes.ts';
import { foldName } from '../machine.ts';
import { blankMachine } from '../record/blank.ts';
import { answersTo } from '../record/called.ts';
import type { MachineRecord, ShopRecord } from '../record/record.ts';
import type { DecideContext, Shops } from './context.ts';
import type { Deed } from './deed.ts';
import { asked, refused, type Asked, type Flag, type Refused } from './decision.ts';
import { momentOf, type Moment } from './moment.ts';

export interface Scene extends Moment {
  /** Canonical name. */
  name: string;
  /** As of the deed. */
  machine: MachineRecord;
  latest: MachineRecord;
  /** What the moment itself calls for. */
  flags: readonly Flag[];
}

export type MachineDeed = Extract<Deed, { machine?: string }>;
export const isScene = (value: Scene | Refused | Asked): value is Scene => !('outcome' in value);

/** The name that a machine is kept under, for its name or one of its aliases in any writing. */
export function canonicalName(said: string, shop: ShopRecord): string {
  const name = foldName(said);
  if (name === ROOM || shop.machines.has(name)) return name;
  const called = [...shop.machines.values()].filter((machine) => answersTo(machine).includes(name));
  return called.length === 1 ? (called[0]?.name ?? name) : name;
}

/** `at` is clamped to now: a platform's clock may run a little ahead of ours. */
export function sceneOf(deed: MachineDeed, shops: Shops, context: DecideContext): Scene | Refused | Asked {
  if (deed.machine === undefined) return asked('machine', { act: deed.kind });
  const name = canonicalName(deed.machine, shops.latest);
  if ('on' in deed && deed.on !== undefined && !isDate(deed.on))
    return refused('invalid-number', { act: deed.kind, machine: name, field: 'on' });
  const { at, precision } = momentOf(deed, context.saidAt, context.calendar);
  const moment = { at: precision === 'instant' ? Math.min(at, context.now) : at, precision };
  if (moment.at > context.now)
    return refused('in-future', { act: deed.kind, machine: name, on: context.calendar.dateOf(at) });
  const flags: readonly Flag[] = precision === 'about' ? ['about-that-day'] : [];
  if (name === ROOM) return { ...moment, name, machine: shops.asOf.room, latest: shops.latest.room, flags };
  const latest = shops.latest.machines.get(name);
  const problem = cannotTake(name, latest, moment, deed, context);
  if (problem || !latest) return problem ?? refused('unknown-machine', { machine: name });
  const machine = shops.asOf.machines.get(name) ?? blankMachine(name);
  return { ...moment, name, machine, latest, flags };
}

/** Unknown here, gone, or not here yet. A late word about the time before it left is taken. */
function cannotTake(
  name: string,
  latest: MachineRecord | undefined,
  moment: Moment,
  deed: Deed,
  context: DecideContext,
): Refused | undefined {
  const facts = { act: deed.kind, machine: name };
  if (!latest?.enrolled) return refused('unknown-machine', facts);
  if (latest.retired && moment.at >= latest.retired.at)
    return refused('unknown-machine', { ...facts, retired: true, at: latest.retired.at });
  if (context.calendar.dayOf(moment.at) >= latest.inUseSince) return undefined;
  const on = context.calendar.dateOf(moment.at);
  return refused('before-start', { ...facts, on, date: dateOfDay(latest.inUseSince) });
}

/** The same, for what only a machine can have: running hours, parts, hands in it. */
export function machineScene(
  deed: MachineDeed,
  shops: Shops,
  context: DecideContext,
): Scene | Refused | Asked {
  const scene = sceneOf(deed, shops, context);
  return isScene(scene) && scene.name === ROOM ? asked('machine', { act: deed.kind, machine: ROOM }) : scene;
}
