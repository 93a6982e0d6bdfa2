/**
 * The port between the service and a chat platform: types only. An adapter translates: what its platform sends
 * becomes a `Received`, an `Outgoing` becomes blocks or components. It decides nothing and remembers nothing that
 * must outlive the process.
 *
 * Whatever is short-lived on a platform (a response address, an interaction token, a trigger) stays in the adapter's
 * memory under the `key` of the Received it came with; an Outgoing names that key in `answers`. After a restart there
 * is none, and the adapter posts with its bot token instead.
 */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Reply } from '../replies/reply.ts';

/** Where something is said. All ids are the platform's own, as text. */
export interface Place {
  /** `slack`, `discord`: also the name of its block under `channels` in the workshop file. */
  platform: string;
  /** Workspace or guild; '' where the platform names none (a direct conversation). */
  space: string;
  channel: string;
  /**
   * A thread inside the channel that is not a channel by itself (Slack's `thread_ts`). On Discord a thread is a
   * channel: `channel` is the thread's id and `parent` the channel that it hangs below.
   */
  thread?: string;
  /** The channel that rules for who may speak here, when `channel` is a thread's own id. */
  parent?: string;
  /** Only the person and the bot are here. */
  direct: boolean;
}

/** A message that the bot posted. */
export interface PostRef {
  platform: string;
  channel: string;
  id: string;
  thread?: string;
}

export interface Speaker {
  account: string;
  /** As the platform shows it just now. */
  name: string;
}

/** Everybody who reads the place, or only the one who asked. */
export type Audience = 'place' | 'asker';

/**
 * What came in, as our own message: plain JSON without tokens or addresses of the platform. It is stored before the
 * platform is told that it arrived.
 */
export interface Received {
  /**
   * The delivery's identity: the same key is stored once, for at least 7 days. Begins with the platform's name:
   * `slack:<event_id>`, `discord:<interaction id>`. Not the envelope's id, which a repeated delivery may change.
   */
  key: string;
  platform: string;
  place: Place;
  /** Who did it. */
  account: string;
  accountName: string;
  /** The platform's own time of it, not that of arrival. */
  saidAt: Instant;
  what: What;
  /** Who should see the answer. A platform that has to settle that at once (an interaction) settles it here. */
  audience: Audience;
}

/**
 * `text` is plain: the bot's own mention stripped, markup and entities undone, people and channels by name.
 * `message` is the platform's id of a human message in `place.channel`: together they are a second identity, so that
 * one message delivered as two events is one.
 */
export type What =
  /** `author`: a message shortcut noted a colleague's message: said by its author, noted by `account`. */
  | { kind: 'said'; text: string; message: string; author?: Speaker }
  /** A command: words without a message of their own. */
  | { kind: 'command'; text: string }
  /** `text` is the whole new text. `account` is the author. */
  | { kind: 'edited'; message: string; text: string; editedAt?: Instant }
  | { kind: 'deleted'; message: string }
  /** `on`: the message that carries the button. `home`: pressed in the person's home view; the answer goes to them. */
  | { kind: 'pressed'; token: string; on?: PostRef; home?: true }
  /** A form that `Desk.logForm` or `Desk.formOf` gave, filled in; empty fields left out. `token`: of the button that opened it. */
  | { kind: 'form'; form: FormName; fields: Readonly<Record<string, string>>; token?: string; on?: PostRef };
export type WhatKind = What['kind'];

/** `log`: a log by fields. The others stand for a button: until when, what was found, which one is in, what should be different. */
export type FormName = 'log' | 'until' | 'found' | 'fitted' | 'change';

/** At most 5 fields; title at most 24 characters, labels 45, placeholders 100, options 25 of at most 75. */
export interface Form {
  form: FormName;
  title: string;
  /** The word on the button that sends it. */
  submit: string;
  fields: readonly FormField[];
  /** To be given back with the filled form. */
  token?: string;
}
export interface FormField {
  name: string;
  label: string;
  /** `line` and `text` are typed, `choice` is one of `options` (as typed text where a platform has no choice). */
  kind: 'line' | 'text' | 'choice';
  required: boolean;
  placeholder?: string;
  /** What stands in it already. */
  value?: string;
  options?: readonly { value: string; label: string }[];
}

export interface Outgoing {
  /**
   * Identity for not sending twice: 22 characters of A-Z a-z 0-9 - _. Discord: `nonce` with `enforceNonce`;
   * Slack: in the message's metadata. `find` looks it up.
   */
  id: string;
  to: Place;
  /** The message in `to.channel` that this answers: thread under it, or reply to it. */
  replyTo?: string;
  audience: Audience;
  /** The account to show it to when `audience` is `asker`. */
  asker?: string;
  /** Key of the Received that it answers: short-lived handles that are still in memory may be used. */
  answers?: string;
  reply: Reply;
  /**
   * One for each of `buttonsOf(reply)`, in that order: `v1:` and 22 characters. This is what the button carries; what
   * it stands for is in the database.
   */
  tokens: readonly string[];
}

export type SendResult =
  /** Without `ref`: it was shown, but cannot be edited later (a private answer). */
  | { outcome: 'sent'; ref?: PostRef }
  /** It may have been posted: no answer, a lost connection, a server's own fault. Never sent again before `find`. */
  | { outcome: 'unknown'; why: string }
  /** Surely not posted; worth another try, not before `afterMs`. */
  | { outcome: 'later'; why: string; afterMs?: number }
  /** Surely not posted, and never will be: no such channel, no permission, too long. */
  | { outcome: 'refused'; why: string };

export interface PlatformState {
  connected: boolean;
  /** When `connected` last changed. */
  since?: Instant;
  /** Any sign of life of the connection, such as a heartbeat. */
  lastEventAt?: Instant;
  /** A short word for an operator: `connecting`, `resumed`, `3 sockets`. Never a token or a text. */
  note?: string;
}

/** One platform, connected. None of the calls throws for what the platform answers: outcomes are values. */
export interface Platform {
  readonly name: string;
  /** Shortest time between two posts to one channel. */
  readonly everyMs: number;
  /** How many items of one post may carry buttons. */
  readonly itemsWithButtons: number;
  /** Connects; what arrives goes to the desk. Rejects with one clear sentence (a PlatformFault) when it cannot. */
  start(desk: Desk): Promise<void>;
  /** Takes nothing new, lets `receive` calls under way finish, closes its connections. Sending still works until then. */
  stop(): Promise<void>;
  /** The one workspace or guild that it serves; undefined before it is known. */
  space(): string | undefined;
  /** A channel as the workshop file names it (an id, or a name such as #print-room) -> its id. */
  channelId(named: string): Promise<string | undefined>;
  /** Tries once; retries of its SDK are off, because they double messages. */
  send(outgoing: Outgoing): Promise<SendResult>;
  /** Puts another reply in the place of a post. Doing it twice is harmless. `refused`: it is gone or not ours. */
  edit(ref: PostRef, outgoing: Outgoing): Promise<SendResult>;
  /**
   * Was this posted? Rejects when that cannot be told just now. Undefined: surely not posted. `private`: nobody but
   * the asker could see it, so that it can never be told. `since`: it was not sent before then.
   */
  find(outgoing: Outgoing, since: Instant): Promise<PostRef | 'private' | undefined>;
  state(): PlatformState;
  /** Something that the person's home view shows has changed. */
  refreshHome?(account: string): Promise<void>;
}

/** A reply with the tokens of its buttons, for a view that is not a message. */
export interface Card {
  reply: Reply;
  tokens: readonly string[];
}

/** What the service gives an adapter. */
export interface Desk {
  /**
   * Resolves only after the commit (all of one turn of the event loop share it): acknowledge then. `known`: it was
   * stored before; acknowledge as well. Rejects when it could not be stored: do not acknowledge.
   */
  receive(received: Received): Promise<'stored' | 'known'>;
  /** Fast, so that a form can be opened while its trigger lives: from memory or one indexed read. */
  logForm(values?: Readonly<Record<string, string>>): Promise<Form>;
  /** The form that a button opens; undefined: it has none, `receive` it as pressed. */
  formOf(token: string): Promise<Form | undefined>;
  /** The room at a glance, or one machine. Undefined: this account may not see it. */
  home(asker: Speaker, machine?: string): Promise<Card | undefined>;
  /** Names of the machines in use that begin with, or hold, what was typed. At most `most`. */
  machines(typed: string, most: number): Promise<readonly string[]>;
  /** The last human message that was received in each channel, for asking a platform what came since. */
  lastReceived(): Promise<readonly { channel: string; message: string; saidAt: Instant; direct: boolean }[]>;
  /** The channels that the workshop file lists for this platform, as it names them. */
  channels(): Promise<readonly string[]>;
}

/** What an adapter is opened with. */
export interface PlatformTools {
  environment: Readonly<Record<string, string | undefined>>;
  clock: () => Instant;
  log: Log;
}

/** Facts are names, counts, ids and codes: never a text that somebody wrote, never a secret. */
export type LogFacts = Readonly<Record<string, string | number | boolean | undefined>>;
export interface Log {
  info(event: string, facts?: LogFacts): void;
  warn(event: string, facts?: LogFacts): void;
  error(event: string, facts?: LogFacts): void;
}

/** One line of `fettle check`: what was looked at, how it stands, and what to mend. */
export interface CheckLine {
  /** `environment`, `token`, `scopes`, `channel #print-room`, … */
  what: string;
  ok: boolean;
  text: string;
}

/** What `adapters/<platform>/index.ts` exports. */
export interface PlatformModule {
  /** Throws a PlatformFault with one clear sentence a fault of the environment. Connects nothing yet. */
  open(tools: PlatformTools): Promise<Platform>;
  /** Looks, posts nothing. `channels`: as the workshop file names them, the digest's first. Never throws. */
  check(tools: PlatformTools, channels: readonly string[]): Promise<readonly CheckLine[]>;
}
