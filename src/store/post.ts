/** The port for what is not fact: changeable, deletable, never exported with the journal. */
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Position } from './journal.ts';

/** The answer that a message got, whatever came of it. */
export interface StoredAnswer {
  /** JSON, as the command layer made it; the reader checks it. */
  answer: unknown;
  at: Instant;
}

export interface HandledReader {
  /** Undefined: this message was not handled yet. */
  handled(key: string): Promise<StoredAnswer | undefined>;
}
export interface HandledWriter {
  /** A message is handled once: throws StoreFault `duplicate` at a key that is there already. */
  recordHandled(key: string, answer: unknown, at: Instant, person?: string): Promise<void>;
  /** Forgets what was handled before this moment: nobody delivers a message again after so long. Gives how many. */
  pruneHandled(before: Instant): Promise<number>;
}

/** What a person said, word for word: kept apart from the facts so that it can go. */
export interface Words {
  message: string;
  /** Opaque person id. */
  person: string;
  text: string;
  at: Instant;
}
export interface WordsReader {
  words(message: string): Promise<Words | undefined>;
  /** Keys of all messages of a person that were handled or whose words are kept. */
  messagesOf(person: string): Promise<readonly string[]>;
}
export interface WordsWriter {
  /** Replaces what this message had. */
  saveWords(words: Words): Promise<void>;
  /**
   * Gives how many messages' words went. The stored answers to the message, or to all that the person said, may
   * quote them and become `null`, a person's conversations go too, and all of it is overwritten on the disk as well.
   */
  deleteWords(whose: { message: string } | { person: string }): Promise<number>;
}

export interface Person {
  /** Opaque and for good; entries carry it. */
  id: string;
  /** Changeable, as written. */
  name: string;
  /** The name as it is looked up: the caller folds it. */
  foldedName: string;
  /** Absent: not stated by the workshop. */
  role?: 'member' | 'keeper';
}
/** Who a platform's account is. */
export interface Account {
  platform: string;
  account: string;
  /** Person id. */
  person: string;
}
export interface PeopleReader {
  person(id: string): Promise<Person | undefined>;
  /** Two people may share a name: by id. */
  peopleByName(foldedName: string): Promise<readonly Person[]>;
  /** By id. */
  people(): Promise<readonly Person[]>;
  personOfAccount(platform: string, account: string): Promise<Person | undefined>;
  accountsOf(person: string): Promise<readonly Account[]>;
}
export interface PeopleWriter {
  /** New, or changed in name and role. */
  savePerson(person: Person): Promise<void>;
  /** Throws StoreFault `unknown-person` when there is no such person. An account belongs to one person: the last. */
  linkAccount(account: Account): Promise<void>;
  unlinkAccount(platform: string, account: string): Promise<void>;
}

export interface WorkshopReader {
  /** The enrolled workshop's settings: JSON text, as it was given. */
  workshop(): Promise<string | undefined>;
}
export interface WorkshopWriter {
  saveWorkshop(json: string, at: Instant): Promise<void>;
}

/** What was last talked about, per speaker and place. */
export interface Conversation {
  place: string;
  /** Person id. */
  person: string;
  /** JSON: the command layer's own shape; the reader checks it. */
  state: unknown;
  expiresAt: Instant;
}
export interface ConversationReader {
  /** Also when it has expired: only the caller has a clock. */
  conversation(place: string, person: string): Promise<Conversation | undefined>;
}
export interface ConversationWriter {
  saveConversation(conversation: Conversation): Promise<void>;
  dropConversation(place: string, person: string): Promise<void>;
  /** Those with `expiresAt` at or before `now`; gives how many. */
  dropExpiredConversations(now: Instant): Promise<number>;
}

/** A machine's folded record, kept to save time: a cache, never the truth. */
export interface Checkpoint {
  machine: string;
  /** Version of the fold that made it; another version's is of no use. */
  foldVersion: number;
  /** The last entry of the journal that it takes in. */
  position: Position;
  json: string;
}
export interface CheckpointReader {
  checkpoint(machine: string): Promise<Checkpoint | undefined>;
  /** All of them, by machine. */
  checkpoints(): Promise<readonly Checkpoint[]>;
}
export interface CheckpointWriter {
  saveCheckpoints(checkpoints: readonly Checkpoint[]): Promise<void>;
  /** Without a machine: all. */
  dropCheckpoints(machine?: string): Promise<void>;
}

export interface PostReader
  extends HandledReader, WordsReader, PeopleReader, WorkshopReader, ConversationReader, CheckpointReader {}

export interface Post
  extends
    PostReader,
    HandledWriter,
    WordsWriter,
    PeopleWriter,
    WorkshopWriter,
    ConversationWriter,
    CheckpointWriter {}
