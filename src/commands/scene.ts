/** One message on its way: what it can see, and what has come of it so far. */
import type { Reading } from '../language/act.ts';
import { type Day, type LocalCalendar } from '../maintenance/calendar.ts';
import type { DueContext } from '../maintenance/due/context.ts';
import type { Entry, Instant } from '../maintenance/entry/entry.ts';
import type { ShopRecord } from '../maintenance/record/record.ts';
import type { View } from '../replies/wording/view.ts';
import type { Transaction } from '../store/store.ts';
import type { Workshop } from '../workshop.ts';
import type { Conversation } from './conversation.ts';
import type { IncomingMessage } from './message.ts';
import type { Role } from './people.ts';

export interface Scene extends View {
  transaction: Transaction;
  message: IncomingMessage;
  workshop: Workshop;
  calendar: LocalCalendar;
  today: Day;
  person: { id: string; name: string; role: Role };
  /** Where the conversation is kept. */
  place: string;
  conversation: Conversation;
  reading: Reading;
  /** When what is being decided was said: an answer speaks of the time of its question. */
  saidAt: Instant;
  /** The message whose question this one answers. */
  because?: string;
  /** Grows with each act of the message, so that the next is decided with it. */
  record: ShopRecord;
  /** When anybody last said something that was written, before this message. */
  lastSaid: Instant;
  /** What this message appended so far. */
  entries: Entry[];
}

export const dueContext = ({ message, calendar, workshop }: Scene): DueContext => ({
  now: message.now,
  calendar,
  workingDays: workshop.workshop.workingDays,
  holidays: workshop.workshop.holidays,
});
