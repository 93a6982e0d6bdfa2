/**
 * What a stored entry must look like, kind by kind. Strict: a field that this build does not know means that
 * the line was written by a newer one (or by hand), and guessing what it meant would falsify the record.
 */
import { z } from 'zod';
import { isDate } from '../calendar.ts';
import { CONSUMABLES, FINDINGS, MATERIALS, PARTS, REASONS, SYMPTOMS, TASKS } from '../codes.ts';
import { amendmentShape, buildShape } from './shapes.ts';
import type { Entry, EntryKind, EntryOf, Stamp } from './entry.ts';

const name = z.string().min(1);
const date = z.string().refine(isDate, { error: 'must be a date, YYYY-MM-DD' });
const amount = z.number().nonnegative();
const count = z.int().nonnegative();
/** Up to the end of the year 9999: what a date with four digits can say. */
const instant = z.int().min(0).max(253_402_300_799_999);
const task = z.enum(TASKS);
const part = z.enum(PARTS);
const stockItem = z.enum([...PARTS, ...CONSUMABLES]);
const material = z.enum(MATERIALS);
const yes = z.literal(true);
const interval = z.strictObject({
  hours: amount.exactOptional(),
  days: amount.exactOptional(),
  runDays: amount.exactOptional(),
  dose: amount.exactOptional(),
});
const machineOnly = { machine: name };

const stamp = {
  id: name,
  v: z.int().positive(),
  at: instant,
  precision: z.enum(['instant', 'day', 'about']),
  saidAt: instant,
  writtenAt: instant,
  by: name,
  platform: name,
  message: name,
  act: count,
  because: name.exactOptional(),
} satisfies Record<keyof Stamp, z.ZodType>;

const entry = <K extends EntryKind, S extends z.ZodRawShape>(kind: K, fields: S) =>
  z.strictObject({ ...stamp, kind: z.literal(kind), ...fields });

/** One schema a kind; a kind without one does not compile. */
export const ENTRY_SCHEMAS = {
  enrolled: entry('enrolled', {
    machine: name,
    calledAs: z.string().exactOptional(),
    aliases: z.array(z.string()).exactOptional(),
    build: buildShape,
    startHours: amount.exactOptional(),
    inUseSince: date,
    new: yes.exactOptional(),
  }),
  changed: entry('changed', {
    machine: name,
    set: z.strictObject({
      calledAs: z.string().exactOptional(),
      aliases: z.array(z.string()).exactOptional(),
      build: buildShape.exactOptional(),
    }),
  }),
  retired: entry('retired', machineOnly),
  usage: entry('usage', {
    machine: name,
    hours: amount.exactOptional(),
    grams: amount.exactOptional(),
    metres: amount.exactOptional(),
    material: material.exactOptional(),
  }),
  meter: entry('meter', { machine: name, hours: amount, newCounter: yes.exactOptional() }),
  loaded: entry('loaded', {
    machine: name,
    material: material.exactOptional(),
    grams: amount.exactOptional(),
  }),
  done: entry('done', { machine: name, task, finding: z.enum(FINDINGS).exactOptional() }),
  swapped: entry('swapped', {
    machine: name,
    part,
    fitted: z.string().exactOptional(),
    reason: z.enum(REASONS).exactOptional(),
    count: count.exactOptional(),
  }),
  seen: entry('seen', { machine: name, symptom: z.enum(SYMPTOMS), part: part.exactOptional() }),
  cleared: entry('cleared', { machine: name, symptom: z.enum(SYMPTOMS).exactOptional() }),
  down: entry('down', machineOnly),
  up: entry('up', machineOnly),
  opened: entry('opened', machineOnly),
  closed: entry('closed', machineOnly),
  putOff: entry('putOff', {
    machine: name,
    task: task.exactOptional(),
    until: date.exactOptional(),
    atHours: amount.exactOptional(),
    reason: z.string().exactOptional(),
  }),
  claimed: entry('claimed', { machine: name, task: task.exactOptional(), on: date.exactOptional() }),
  stockMoved: entry('stockMoved', { part: stockItem, change: z.int(), fitted: z.string().exactOptional() }),
  stockCounted: entry('stockCounted', {
    part: stockItem,
    count,
    fitted: z.string().exactOptional(),
    deliveryDays: amount.exactOptional(),
    price: amount.exactOptional(),
  }),
  intervalSet: entry('intervalSet', {
    machine: name,
    task,
    interval,
    source: z.enum(['manual', 'workshop']),
  }),
  stated: entry('stated', {
    machine: name,
    task: task.exactOptional(),
    part: part.exactOptional(),
    fitted: z.string().exactOptional(),
    on: date.exactOptional(),
    hours: amount.exactOptional(),
    tasks: z.array(task).exactOptional(),
  }),
  noted: entry('noted', { machine: name.exactOptional(), text: z.string() }),
  handedOver: entry('handedOver', { to: z.string().exactOptional() }),
  tookOver: entry('tookOver', { from: z.string().exactOptional() }),
  found: entry('found', { machine: name, text: z.string(), part: part.exactOptional() }),
  released: entry('released', {
    machine: name,
    found: z.string().exactOptional(),
    falseAlarm: yes.exactOptional(),
  }),
  amended: entry('amended', { target: name, set: amendmentShape }),
  takenBack: entry('takenBack', { target: name }),
} satisfies { readonly [K in EntryKind]: z.ZodType<EntryOf<K>> };

const schemas: ReadonlyMap<string, z.ZodType<Entry>> = new Map(Object.entries(ENTRY_SCHEMAS));

/** Undefined for a kind that this build does not know. */
export const schemaOf = (kind: string): z.ZodType<Entry> | undefined => schemas.get(kind);
