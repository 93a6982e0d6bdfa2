/**
 * Entries become the record. Total and pure: any set of entries, in any order of arrival, gives the same
 * record; nothing is refused here (that was decided at writing), what does not fit is marked as a conflict.
 */
import type { LocalCalendar } from '../calendar.ts';
import { ROOM } from '../codes.ts';
import type { Entry, Instant } from '../entry/entry.ts';
import { blankMachine } from './blank.ts';
import { noteConflict } from './conflict.ts';
import { foldFloor } from './floor.ts';
import { positionOf } from './order.ts';
import type { Conflict, MachineRecord, ShopRecord } from './record.ts';
import { reduce, type MachineFact } from './reducers/byKind.ts';
import { timelineOf, type FloorFact } from './timeline.ts';

/** `until`: only what happened up to then, by all that is known about it now. */
export function foldShop(entries: readonly Entry[], calendar: LocalCalendar, until?: Instant): ShopRecord {
  const { machines, floor } = timelineOf(entries, calendar, until);
  const folded = [...machines].map(([name, facts]) => foldFacts(name, facts, calendar));
  return assembleShop(folded, floor);
}

/** One machine (or the room) from all entries that touch it; entries about others are passed over. */
export function foldMachine(
  name: string,
  entries: readonly Entry[],
  calendar: LocalCalendar,
  until?: Instant,
): MachineRecord {
  return foldFacts(name, timelineOf(entries, calendar, until).machines.get(name) ?? [], calendar);
}

/** Facts in order. */
function foldFacts(name: string, facts: readonly MachineFact[], calendar: LocalCalendar): MachineRecord {
  const awaited = facts.some((fact) => fact.kind === 'enrolled');
  return putOnTop(blankMachine(name), facts, calendar, awaited);
}

/**
 * The machine with further facts, in order and after all that it has; the one given stays as it was.
 * `awaited`: an enrolment of this machine is known, though it may come later in the order.
 */
export function putOnTop(
  machine: MachineRecord,
  facts: readonly MachineFact[],
  calendar: LocalCalendar,
  awaited = false,
): MachineRecord {
  const { lastDay, hours } = machine.runByDay;
  const own = { ...machine, runByDay: { lastDay, hours: [...hours] } };
  for (const fact of facts) {
    const what = doubt(own, fact, awaited);
    if (what) noteConflict(own, { entry: fact.id, at: fact.at, what });
    reduce(own, fact, calendar);
  }
  const last = facts.at(-1);
  if (last) own.position = positionOf(last);
  return own;
}

function doubt(machine: MachineRecord, fact: MachineFact, awaited: boolean): Conflict['what'] | undefined {
  if (fact.kind === 'enrolled' || machine.name === ROOM) return undefined;
  if (machine.retired) return 'after-retirement';
  if (machine.enrolled) return undefined;
  if (awaited) return 'before-enrolment';
  // once is enough: it is true of every entry of that machine
  return machine.conflicts.some((conflict) => conflict.what === 'not-enrolled') ? undefined : 'not-enrolled';
}

/** Machines, the room among them, and what is about no machine, put together. */
export function assembleShop(machines: readonly MachineRecord[], floor: readonly FloorFact[]): ShopRecord {
  const byName = machines.filter((machine) => machine.name !== ROOM).toSorted(byMachineName);
  const room = machines.find((machine) => machine.name === ROOM) ?? blankMachine(ROOM);
  const draws = [...byName, room].flatMap((machine) => machine.draws);
  return {
    machines: new Map(byName.map((machine) => [machine.name, machine])),
    room,
    ...foldFloor(floor, draws),
  };
}

const byMachineName = (a: MachineRecord, b: MachineRecord): number =>
  a.name < b.name ? -1 : a.name > b.name ? 1 : 0;
