/** Every task of every machine as it stands: the list that `due`, the digest and the round are made of. */
import { roomRules, rulesFor } from '../care/index.ts';
import type { PlannedRule } from '../care/index.ts';
import { ROOM, isRoomTask } from '../codes.ts';
import type { Task } from '../codes.ts';
import type { MachineRecord, ShopRecord } from '../record/record.ts';
import type { DueContext } from './context.ts';
import { sceneOf } from './machine.ts';
import type { MachineScene } from './machine.ts';
import { inListOrder } from './order.ts';
import type { DueRow } from './row.ts';
import { rowOf } from './rowOf.ts';
import type { Which } from './rowOf.ts';
import { isQuiet } from './standing.ts';

/** What of a record's rules can make a row at all is worked out once: most wait for something that never happened. */
const kept = new WeakMap<MachineRecord, readonly PlannedRule[]>();
function wakeful(scene: MachineScene): readonly PlannedRule[] {
  const { record } = scene;
  const known = kept.get(record);
  if (known) return known;
  const rules = record.name === ROOM ? roomRules() : rulesFor(record.build);
  const awake = rules.filter(({ rule }) => !isQuiet(rule, scene));
  kept.set(record, awake);
  return awake;
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
  const rows: DueRow[] = [];
  for (const planned of wakeful(scene)) {
    const row = rowOf(planned, scene, which);
    if (row) rows.push(row);
  }
  return rows;
}

/**
 * The tasks of one machine (or of the room) in list order. `room` holds what was done for all machines at
 * once ("cleared the debris").
 */
export const machineDue = (record: MachineRecord, context: DueContext, room?: MachineRecord): DueRow[] =>
  unordered(record, context, room).sort(inListOrder);

/** What was raised on one machine and still stands, in list order; without forecasts, which nobody asks for then. */
export const raisedRows = (record: MachineRecord, context: DueContext, room?: MachineRecord): DueRow[] =>
  unordered(record, context, room, 'raised').sort(inListOrder);

/** The tasks of all machines and of the room, machine by machine. */
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
