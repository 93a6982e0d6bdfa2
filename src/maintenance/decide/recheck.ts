/** An entry that was put right is looked at again, as if it had been said that way. */
import { dateOfDay } from '../calendar.ts';
import { ROOM } from '../codes.ts';
import { blankMachine } from '../record/blank.ts';
import type { MachineRecord } from '../record/record.ts';
import type { Fact } from '../record/standing.ts';
import type { DecideContext, Shops } from './context.ts';
import { refused, type Asked, type Refused } from './decision.ts';
import { BORDERS, impossible } from './figures.ts';
import { doubtHours } from './hours.ts';
import { doubtReading } from './meter.ts';
import { cannotWait, notLater, notPlanned } from './plans.ts';
import { impossibleUsage } from './usage.ts';

type Doubt = Refused | Asked | undefined;

/** `before` is what the entry said until now; the record has it in. */
export function doubtAmended(before: Fact, after: Fact, shops: Shops, context: DecideContext): Doubt {
  const { calendar, now } = context;
  if (after.at > now) return refused('in-future', { act: 'amend', on: calendar.dateOf(after.at) });
  if (!('machine' in after) || after.machine === undefined) return doubtCount(after);
  const machine = after.machine === ROOM ? shops.latest.room : shops.latest.machines.get(after.machine);
  const facts = { act: 'amend', machine: after.machine };
  if (after.machine !== ROOM && !machine?.enrolled) return refused('unknown-machine', facts);
  if (machine?.retired && after.at >= machine.retired.at)
    return refused('unknown-machine', { ...facts, retired: true, at: machine.retired.at });
  const known = machine ?? blankMachine(after.machine);
  if (calendar.dayOf(after.at) < known.inUseSince)
    return refused('before-start', {
      ...facts,
      on: calendar.dateOf(after.at),
      date: dateOfDay(known.inUseSince),
    });
  return doubtFields(before, after, known, context);
}

function doubtFields(before: Fact, after: Fact, machine: MachineRecord, context: DecideContext): Doubt {
  const facts = { act: 'amend', machine: machine.name };
  switch (after.kind) {
    case 'usage':
      return impossibleUsage(after, machine.name) ?? doubtUsage(before, after, machine, context);
    case 'meter':
      return doubtMeter(after, machine, context);
    case 'loaded':
      return impossible('grams', after.grams, BORDERS.grams, facts);
    case 'swapped':
      return impossible('count', after.count, BORDERS.pieces, facts);
    case 'claimed':
      return notPlanned(after.task, machine, context);
    case 'putOff':
      return doubtPutOff(after, machine, context);
    default:
      return undefined;
  }
}

/** Judged like a reading that was just taken, against what stood there without it. */
function doubtMeter(after: Fact & { kind: 'meter' }, latest: MachineRecord, context: DecideContext): Doubt {
  const { kind, hours, newCounter, at, precision } = after;
  const machine = context.without?.get(after.id) ?? blankMachine(latest.name);
  const scene = { name: latest.name, machine, latest, at, precision, flags: [] };
  return doubtReading({ kind, hours, ...(newCounter ? { newCounter } : {}) }, scene, context);
}

function doubtUsage(
  before: Fact,
  after: Fact & { kind: 'usage' },
  machine: MachineRecord,
  context: DecideContext,
): Doubt {
  if (after.hours === undefined) return undefined;
  const { at, precision } = after;
  const scene = { name: machine.name, machine, latest: machine, at, precision, flags: [] };
  const stays = before.kind === 'usage' && before.machine === after.machine && before.at === after.at;
  return doubtHours(after.hours, scene, context, { before: stays ? (before.hours ?? 0) : 0 });
}

function doubtPutOff(
  after: Fact & { kind: 'putOff' },
  machine: MachineRecord,
  context: DecideContext,
): Doubt {
  const { until, task } = after;
  const unplanned = notPlanned(task, machine, context);
  if (unplanned) return unplanned;
  if (until !== undefined && notLater(until, context.calendar.dayOf(context.saidAt)))
    return refused('invalid-number', { act: 'amend', machine: machine.name, field: 'until', on: until });
  return cannotWait(task, after, machine, context);
}

function doubtCount(after: Fact): Doubt {
  const facts = { act: 'amend' };
  if (after.kind === 'stockCounted') return impossible('count', after.count, BORDERS.count, facts);
  if (after.kind === 'stockMoved') return impossible('change', Math.abs(after.change), BORDERS.pieces, facts);
  return undefined;
}
