/**
 * Keeping a record up to date without folding everything again. Facts that come after all that a machine
 * has are folded on top; a late fact, an amendment, a take-back or an enrolment refolds its machine, before
 * and after an amendment that moves it both. The result equals a full fold.
 */
import type { LocalCalendar } from '../calendar.ts';
import { ROOM } from '../codes.ts';
import type { Entry, Instant } from '../entry/entry.ts';
import { blankMachine } from './blank.ts';
import { assembleShop, foldMachine, putOnTop } from './fold.ts';
import { byOrder } from './order.ts';
import type { MachineRecord, ShopRecord } from './record.ts';
import type { MachineFact } from './reducers/byKind.ts';
import { isCorrection } from './standing.ts';
import { timelineOf } from './timeline.ts';

/**
 * Where entries are read again. Each answer holds raw entries, amendments and take-backs among them at any
 * depth; more than asked for does no harm, and the new entries may be among them or not.
 */
export interface EntrySource {
  /** These entries, what corrects them, and what they themselves correct, at any depth. */
  familyOf(ids: readonly string[]): Promise<readonly Entry[]>;
  /** All that this machine's record can be folded from, also what an amendment moved to it. */
  ofMachine(machine: string): Promise<readonly Entry[]>;
  /** The same for entries that name no machine. */
  ofNoMachine(): Promise<readonly Entry[]>;
}

/** What new entries ask of a record. */
export interface Extension {
  /** Machines to fold again from all their entries. */
  refold: ReadonlySet<string>;
  /** By machine: facts that come after all that it has, in order. */
  onTop: ReadonlyMap<string, readonly MachineFact[]>;
  /** Is anything about the shelf, a hand-over or a note of no machine? */
  floor: boolean;
}

/** `families`: the added entries with all that corrects them and all that they correct. */
export function planExtension(
  record: ShopRecord,
  added: readonly Entry[],
  families: readonly Entry[],
  calendar: LocalCalendar,
): Extension {
  const { machines, floor, corrected } = whatCorrectionsTouch([...families, ...added]);
  const plain = timelineOf(
    added.filter((entry) => !isCorrection(entry) && !corrected.has(entry.id)),
    calendar,
  );
  const refold = new Set(machines);
  const onTop = new Map<string, readonly MachineFact[]>();
  for (const [name, facts] of plain.machines) {
    if (refold.has(name)) continue;
    if (comesOnTop(machineIn(record, name), facts)) onTop.set(name, facts);
    else refold.add(name);
  }
  return { refold, onTop, floor: floor || plain.floor.length > 0 };
}

/** The machines before and after amendments, and the ids of the entries that are corrected. */
function whatCorrectionsTouch(entries: readonly Entry[]): {
  machines: ReadonlySet<string>;
  floor: boolean;
  corrected: ReadonlySet<string>;
} {
  const corrections = entries.filter(isCorrection);
  const corrected = new Set(corrections.map((entry) => entry.target));
  const facts = entries.filter((entry) => !isCorrection(entry) && corrected.has(entry.id));
  const machines = new Set<string>();
  let floor = false;
  for (const fact of facts) {
    if ('machine' in fact && fact.machine !== undefined) machines.add(fact.machine);
    else floor = true;
  }
  for (const entry of corrections)
    if (entry.kind === 'amended' && entry.set.machine) machines.add(entry.set.machine);
  return { machines, floor, corrected };
}

/** An enrolment changes how everything before it is seen. */
function comesOnTop(machine: MachineRecord, facts: readonly MachineFact[]): boolean {
  const first = facts[0];
  if (!first || facts.some((fact) => fact.kind === 'enrolled')) return false;
  return machine.position === undefined || byOrder(machine.position, first) < 0;
}

const machineIn = (record: ShopRecord, name: string): MachineRecord =>
  (name === ROOM ? record.room : record.machines.get(name)) ?? blankMachine(name);

/** The record with `added` in it. `source` is the journal, before or after it took them in. */
export async function extendShop(
  record: ShopRecord,
  added: readonly Entry[],
  source: EntrySource,
  calendar: LocalCalendar,
): Promise<ShopRecord> {
  const families = await source.familyOf(added.map((entry) => entry.id));
  const targets = added.filter(isCorrection).map((entry) => entry.target);
  const further = targets.length === 0 ? [] : await source.familyOf(targets);
  const plan = planExtension(record, added, [...families, ...further], calendar);
  const changed = new Map<string, MachineRecord | undefined>();
  for (const [name, facts] of plan.onTop)
    changed.set(name, putOnTop(machineIn(record, name), facts, calendar));
  for (const name of plan.refold) {
    const folded = foldMachine(name, unite(await source.ofMachine(name), added), calendar);
    changed.set(name, folded.position ? folded : undefined);
  }
  if (!plan.floor && [...changed].every(([name, now]) => leavesTheShelf(record, plan, name, now)))
    return inPlace(record, changed);
  const machines = new Map(record.machines).set(ROOM, record.room);
  for (const [name, now] of changed)
    if (now) machines.set(name, now);
    else machines.delete(name);
  const floor = timelineOf(unite(await source.ofNoMachine(), added), calendar).floor;
  return assembleShop([...machines.values()], floor);
}

/** Known before, and took nothing from the shelf: then all around it stays as it is. */
function leavesTheShelf(
  record: ShopRecord,
  { refold }: Extension,
  name: string,
  now: MachineRecord | undefined,
): boolean {
  if (!now || (name !== ROOM && !record.machines.has(name))) return false;
  const before = machineIn(record, name).draws.length;
  // after a refold as many draws may be other draws
  return now.draws.length === before && (before === 0 || !refold.has(name));
}

function inPlace(record: ShopRecord, changed: ReadonlyMap<string, MachineRecord | undefined>): ShopRecord {
  const machines = new Map(record.machines);
  for (const [name, now] of changed) if (now && name !== ROOM) machines.set(name, now);
  return { ...record, machines, room: changed.get(ROOM) ?? record.room };
}

/** Both, each entry once. */
function unite(entries: readonly Entry[], added: readonly Entry[]): readonly Entry[] {
  const known = new Set(entries.map((entry) => entry.id));
  return [...entries, ...added.filter((entry) => !known.has(entry.id))];
}

/**
 * The record with this machine as it was at `until`, by all that is known now: what a deed of that moment is
 * decided against. The others and the shelf stay as they are.
 */
export async function shopAt(
  record: ShopRecord,
  machine: string,
  until: Instant,
  source: EntrySource,
  calendar: LocalCalendar,
): Promise<ShopRecord> {
  const now = machineIn(record, machine);
  if (!now.position || now.position.at <= until) return record;
  const then = foldMachine(machine, await source.ofMachine(machine), calendar, until);
  if (machine === ROOM) return { ...record, room: then };
  return { ...record, machines: new Map(record.machines).set(machine, then) };
}
