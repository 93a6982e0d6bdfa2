/** Facts in the order in which they are folded, sorted out by what they are about. */
import { dayOfDate, type LocalCalendar } from '../calendar.ts';
import type { Entry, EntryOf, Instant } from '../entry/entry.ts';
import { byOrder } from './order.ts';
import type { MachineFact } from './reducers/byKind.ts';
import { standing, type Fact } from './standing.ts';

/** What is about the workshop and no machine of it. */
export type FloorFact =
  | EntryOf<'stockMoved'>
  | EntryOf<'stockCounted'>
  | EntryOf<'handedOver'>
  | EntryOf<'tookOver'>
  | EntryOf<'noted'>;

export interface Timeline {
  /** By machine, each in order. The room is one of them. */
  machines: ReadonlyMap<string, readonly MachineFact[]>;
  floor: readonly FloorFact[];
}

type Enrolment = Extract<MachineFact, { kind: 'enrolled' }>;

const isMachineFact = (fact: Fact): fact is MachineFact => 'machine' in fact && fact.machine !== undefined;

/** `until`: facts that happened later stay out, after their amendments. */
export function timelineOf(entries: readonly Entry[], calendar: LocalCalendar, until?: Instant): Timeline {
  const machines = new Map<string, MachineFact[]>();
  const floor: FloorFact[] = [];
  const add = (fact: MachineFact): void => {
    if (until !== undefined && fact.at > until) return;
    const facts = machines.get(fact.machine);
    if (facts) facts.push(fact);
    else machines.set(fact.machine, [fact]);
  };
  for (const fact of standing(entries)) {
    if (isMachineFact(fact)) {
      if (fact.kind === 'enrolled') for (const step of stepsOf(fact, calendar)) add(step);
      else add(fact);
    } else if (until === undefined || fact.at <= until) floor.push(fact);
  }
  for (const facts of machines.values()) facts.sort(byOrder);
  return { machines, floor: floor.sort(byOrder) };
}

/**
 * An enrolment takes two places: the machine is there from the first moment of the day since which it is in
 * use, so that what is logged for the days before enrolment finds it; the counter figure it came with is a
 * reading at the moment of enrolment.
 */
function stepsOf(fact: Enrolment, calendar: LocalCalendar): readonly MachineFact[] {
  const inUse = calendar.at(dayOfDate(fact.inUseSince), 0);
  const there: MachineFact = { ...fact, at: Math.min(fact.at, inUse) };
  if (fact.startHours === undefined) return [there];
  const { id, v, at, precision, saidAt, writtenAt, by, platform, message, act, machine } = fact;
  const stamp = { id, v, at, precision, saidAt, writtenAt, by, platform, message, act };
  return [there, { ...stamp, kind: 'meter', machine, hours: fact.startHours }];
}
