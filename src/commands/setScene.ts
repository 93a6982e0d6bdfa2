/** All that a message can see, gathered once. */
import type { Reading } from '../language/act.ts';
import type { LocalCalendar } from '../maintenance/calendar.ts';
import type { Instant } from '../maintenance/entry/entry.ts';
import { foldName } from '../maintenance/machine.ts';
import { calledIn } from '../maintenance/record/called.ts';
import type { ShopRecord } from '../maintenance/record/record.ts';
import type { Transaction } from '../store/store.ts';
import type { Workshop } from '../workshop.ts';
import { CONVERSATION_MS, parseConversation } from './conversation.ts';
import type { IncomingMessage } from './message.ts';
import { newPersonId, personNamed, personOfAccount, type Role } from './people.ts';
import type { Scene } from './scene.ts';

/** What the workshop as a whole lends to a message. */
export interface Surroundings {
  workshop: Workshop;
  calendar: LocalCalendar;
  record: ShopRecord;
  lastSaid: Instant;
  read: (text: string, said: { date: string; minute: number }) => Reading;
}

/** A pressed button has no words. */
const NOTHING_READ: Reading = {
  acts: [],
  orders: [],
  safety: [],
  injury: false,
  doubts: [],
  nearMisses: [],
  trail: [],
};

export async function setScene(
  transaction: Transaction,
  message: IncomingMessage,
  around: Surroundings,
): Promise<Scene> {
  const { workshop, calendar, record, lastSaid, read } = around;
  const { post } = transaction;
  const person = await asFarAsBothMay(
    await speaker(transaction, message, workshop),
    transaction,
    message,
    workshop,
  );
  const names = new Map((await post.people()).map((p) => [p.id, p.name]));
  const { place, kept } = await talkOf(transaction, message, person.id);
  const readAt = (text: string, at: Instant): Reading =>
    read(text, { date: calendar.dateOf(at), minute: calendar.minuteOf(at) });
  const reading = ({ press, text, saidAt }: IncomingMessage): Reading => {
    if (!press) return readAt(text, saidAt);
    return press.does === 'reread' ? readAt(press.text, press.saidAt) : NOTHING_READ;
  };
  const scene: Scene = {
    transaction,
    message,
    workshop,
    calendar,
    today: calendar.dayOf(message.now),
    person,
    personName: (id) => names.get(id) ?? (id === person.id ? person.name : 'someone'),
    place,
    conversation: kept && isCurrent(kept.expiresAt, message.now) ? parseConversation(kept.state) : {},
    reading: reading(message),
    saidAt: message.press?.does === 'reread' ? message.press.saidAt : message.saidAt,
    record,
    // asked of the record as it grows: a machine that is renamed is spoken of by its new name at once
    calledAs: (machine) => calledIn(scene.record)(machine),
    lastSaid,
    entries: [],
  };
  return scene;
}

/** What is said as of an earlier moment is a talk of its own: it must not cut short the one of the present. */
async function talkOf({ post }: Transaction, { place, now }: IncomingMessage, person: string) {
  const present = await post.conversation(place, person);
  if (!present || present.expiresAt - CONVERSATION_MS <= now) return { place, kept: present };
  const past = `${place} (as of)`;
  return { place: past, kept: await post.conversation(past, person) };
}

/** Neither over nor, for a run that was set back, still to come. */
const isCurrent = (expiresAt: Instant, now: Instant): boolean =>
  now < expiresAt && expiresAt - CONVERSATION_MS <= now;

/** What somebody noted for a colleague is done with what both of them may do: a keeper's words lend nobody their role. */
async function asFarAsBothMay(
  author: Scene['person'],
  { post }: Transaction,
  { notedBy, platform }: IncomingMessage,
  workshop: Workshop,
): Promise<Scene['person']> {
  if (!notedBy || author.role === 'member') return author;
  const { role } = await personOfAccount(post, { platform, ...notedBy }, workshop);
  return { ...author, role };
}

/** By account where there is one; else known by name, or new: a name that the workshop does not list is a member. */
async function speaker(
  { post }: Transaction,
  { speaker: name, platform, account }: IncomingMessage,
  workshop: Workshop,
): Promise<Scene['person']> {
  if (account !== undefined) return personOfAccount(post, { platform, account, name }, workshop);
  const foldedName = foldName(name);
  const listed = workshop.people.find((p) => foldName(p.name) === foldedName);
  const role: Role = listed?.role ?? 'member';
  const known = await personNamed(post, name);
  if (known) return { id: known.id, name: known.name, role };
  const person = { id: newPersonId(name), name: listed?.name ?? name, foldedName, role };
  await post.savePerson(person);
  return { id: person.id, name: person.name, role };
}
