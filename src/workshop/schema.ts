/** The whole workshop file, block by block. */
import * as z from 'zod';
import { CONSUMABLES, isRoomTask, PARTS, ROOM_TASKS, TASKS } from '../maintenance/codes.ts';
import type { StockItem, Task } from '../maintenance/codes.ts';
import { buildSchema } from './build-schema.ts';
import {
  amount,
  byCode,
  date,
  listOf,
  name,
  positive,
  section,
  text,
  timeOfDay,
  word,
  yesOrNo,
} from './fields.ts';
import { workingDays } from './working-days.ts';

const MAX_HOURS = 1_000_000;
const MAX_DAYS = 36_500;
const MAX_MONEY = 1_000_000;
const MAX_COUNT = 1_000_000;
const MINUTES_A_DAY = 1440;

const CHANNEL_PLATFORMS = ['slack', 'discord'] as const;
const channel = z.union(
  [
    text.transform((digest) => ({ digest })),
    /** `space`: the workspace or guild, where the bot is in several. */
    section({ digest: text, listen: listOf(text).exactOptional(), space: text.exactOptional() }),
  ],
  { error: 'must be a channel, or a block with digest and listen' },
);
const channels = z.union(
  [z.tuple([]).transform(() => ({})), byCode('platform', CHANNEL_PLATFORMS, channel)],
  {
    error: 'must name a channel for each platform',
  },
);

const workshop = section({
  name: text,
  /** An IANA time zone; whether it exists is asked after the shapes fit. */
  zone: text,
  workingDays: workingDays.default([0, 1, 2, 3, 4]),
  holidays: listOf(date).default([]),
  digestAt: timeOfDay.default('07:30'),
  /** Hands-on minutes that the shop has a day: the round is cut to it. */
  minutesADay: positive(MINUTES_A_DAY).exactOptional(),
  hourlyRate: amount(MAX_MONEY).exactOptional(),
  channels: channels.default({}),
});

/** Account ids on the chat platforms, which make one person of several accounts. A name alone never does. */
const accounts = byCode('platform', CHANNEL_PLATFORMS, text);
const person = section({ name, role: word(['member', 'keeper']), accounts: accounts.exactOptional() });

const machineTasks: readonly Task[] = TASKS.filter((task) => !isRoomTask(task));
const ofTheRoom = (task: string): string | undefined =>
  isRoomTask(task) ? `"${task}" belongs to the room, not to a machine: put it under room` : undefined;
const roomTasks = [...ROOM_TASKS, 'clear-debris', 'check-notices'] as const;

const doneLast = section({ on: date, hours: amount(MAX_HOURS).exactOptional() });
const interval = section({
  hours: positive(MAX_HOURS).exactOptional(),
  days: positive(MAX_DAYS).exactOptional(),
  runDays: positive(MAX_DAYS).exactOptional(),
  dose: positive(100).exactOptional(),
  source: word(['manual', 'workshop']),
}).refine(
  (given) => ['hours', 'days', 'runDays', 'dose'].some((unit) => unit in given),
  'must give at least one of: hours, days, runDays, dose',
);
const partIn = section({
  fitted: text.exactOptional(),
  on: date.exactOptional(),
  hours: amount(MAX_HOURS).exactOptional(),
}).refine((part) => Object.keys(part).length > 0, 'must say what is fitted, or since when');

const machine = section({
  name,
  aliases: listOf(name).default([]),
  build: buildSchema,
  startHours: amount(MAX_HOURS).exactOptional(),
  inUseSince: date.exactOptional(),
  new: yesOrNo.exactOptional(),
  lastDone: byCode('task', machineTasks, doneLast, ofTheRoom).default({}),
  parts: byCode('part', PARTS, partIn).default({}),
  intervals: byCode('task', machineTasks, interval, ofTheRoom).default({}),
});

const room = section({
  lastDone: byCode('task of the room', roomTasks, section({ on: date })).default({}),
  intervals: byCode('task of the room', ROOM_TASKS, interval).default({}),
});

const STOCK: readonly StockItem[] = [...PARTS, ...CONSUMABLES];
const shelfItem = section({
  part: word(STOCK),
  fitted: text.exactOptional(),
  count: amount(MAX_COUNT).int('must be a whole number'),
  deliveryDays: amount(MAX_DAYS).exactOptional(),
  price: amount(MAX_MONEY).exactOptional(),
});

export const workshopSchema = section({
  workshop,
  people: listOf(person).default([]),
  room: room.default({ lastDone: {}, intervals: {} }),
  machines: listOf(machine),
  shelf: listOf(shelfItem).default([]),
});

/** The checked file: plain JSON, every list and block there even when the file left it out. */
export type Workshop = z.output<typeof workshopSchema>;
export type WorkshopMachine = Workshop['machines'][number];
export type ShelfLine = Workshop['shelf'][number];
export type Person = Workshop['people'][number];
