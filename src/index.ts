/** The one door for adapters. */
export { openBot, type AndAlso, type Bot, type Called } from './bot.ts';
export type { Enrolled, EnrolRequest } from './commands/applyWorkshop.ts';
export type { Answer, IncomingMessage, Question } from './commands/message.ts';
export { answerDocument, replyText, wantsFigure } from './commands/document.ts';
export { RequestFault } from './commands/fault.ts';
export { newPersonId } from './commands/people.ts';
export { createReader } from './language/read.ts';
export type { Act, KnownNames, Reading, SaidAt } from './language/act.ts';
export {
  dateOfDay, dayOfDate, isDate, openCalendar, weekdayOf, type Day, type LocalCalendar,
} from './maintenance/calendar.ts'; // prettier-ignore
export type { Draft, Entry, EntryFields, EntryKind, Instant, LocalDate } from './maintenance/entry/entry.ts';
export { entryDocument } from './maintenance/entry/document.ts';
export { entryId } from './maintenance/entry/id.ts';
export { VERSIONS } from './maintenance/entry/upcast.ts';
export type { Material, Part, Symptom, Task } from './maintenance/codes.ts';
export { foldName } from './maintenance/machine.ts';
export { digestJson } from './maintenance/due/digestJson.ts';
export { dueJson } from './maintenance/due/json.ts';
export { dueList } from './replies/wording/due.ts';
export { buttonsOf, plainText, textOf, type TextStyle } from './replies/text.ts';
export type { Button, Item, Line, Press, Reply, Section, Span } from './replies/reply.ts';
export { listedChannels } from './service/access.ts';
export { PlatformFault } from './service/fault.ts';
export { type InTurn, openTurns } from './service/inTurn.ts';
export { dropLease, LEASE_MS, takeLease } from './service/lease.ts';
export type { ServiceParts } from './service/parts.ts';
export { openService, type Service, type ServiceState } from './service/service.ts';
export type {
  Audience, Card, CheckLine, Desk, Form, FormField, FormName, Log, LogFacts, Outgoing, Place, Platform, PlatformModule,
  PlatformState, PlatformTools, PostRef, Received, SendResult, Speaker, What, WhatKind,
} from './service/platform.ts'; // prettier-ignore
export { openMemoryStore, openSqliteStore } from './store/open.ts';
export { StoreFault } from './store/fault.ts';
export type { Store } from './store/store.ts';
export { parseWorkshop, type Workshop } from './workshop.ts';

// for the demo, whose keepers follow the rules
export { enrolment } from './commands/enrol.ts';
export { doseBetween, gramsBetween, usualRate } from './maintenance/care/dose.ts';
export { roomRules, ruleOf, rulesFor } from './maintenance/care/index.ts';
export { termsOf, type Event, type Raise, type Rule, type Term } from './maintenance/care/rule.ts';
export { partReplacedBy, ROOM, type Reason, type StockItem } from './maintenance/codes.ts';
export type { Interval, Precision } from './maintenance/entry/entry.ts';
export type { Build, Nozzle } from './maintenance/machine.ts';
export { foldShop } from './maintenance/record/fold.ts';
export type { Totals } from './maintenance/record/record.ts';
export type { WorkshopMachine } from './workshop.ts';
