/**
 * The port for what comes from chat platforms and goes to them: received and not handled yet, answers on their way,
 * buttons that still answer, digests that were claimed. Not fact: it may all go without a loss to the journal.
 */
import type { Instant } from '../maintenance/entry/entry.ts';

/** Something received, until it is handled. */
export interface InboxRow {
  /** Identity of the delivery. */
  key: string;
  /** A second identity: another delivery of the same thing has another key and the same `same`. */
  same?: string;
  platform: string;
  channel: string;
  /** Rows of one lane are handled one after the other, in order of arrival. */
  lane: string;
  /** JSON; the reader checks it. Null once it was handled. */
  received: unknown;
  receivedAt: Instant;
  tries: number;
  /** Not handled before then. */
  notBefore: Instant;
}
export interface InboxReader {
  /** The first of each lane that is not handled yet: who may go first, then by arrival; also those that have to wait. */
  waiting(limit: number): Promise<readonly InboxRow[]>;
  /** Of one lane, in order of arrival; also those that have to wait. */
  waitingIn(lane: string, limit: number): Promise<readonly InboxRow[]>;
  waitingCount(): Promise<number>;
}
export interface InboxWriter {
  /** False: that key, or that `same`, was received before; nothing is written. */
  receive(row: InboxRow): Promise<boolean>;
  postpone(key: string, notBefore: Instant): Promise<void>;
  /** Its content goes; that it was received stays. False: it was finished before. */
  finish(key: string, at: Instant): Promise<boolean>;
  /** Forgets what was finished at or before then; gives how many. */
  pruneInbox(until: Instant): Promise<number>;
}

/** The last human message of a channel. */
export interface Heard {
  platform: string;
  channel: string;
  message: string;
  saidAt: Instant;
  direct: boolean;
}
/** An account that wrote where it may. */
export interface Seen {
  platform: string;
  account: string;
  name: string;
  at: Instant;
}
export interface HeardReader {
  /** By channel. */
  heard(platform: string): Promise<readonly Heard[]>;
  seen(platform: string, account: string): Promise<Seen | undefined>;
}
export interface HeardWriter {
  /** Kept when nothing later is there. */
  saveHeard(heard: Heard): Promise<void>;
  saveSeen(seen: Seen): Promise<void>;
}

export const POST_STATES = ['planned', 'sending', 'unknown', 'sent', 'left'] as const;
export type PostState = (typeof POST_STATES)[number];

/** A message of ours, from the plan to send it until long after. */
export interface PostRow {
  id: string;
  platform: string;
  channel: string;
  state: PostState;
  /** There is work left: to send it, to look it up, or to bring what is shown up to date. */
  open: boolean;
  /** What it should show: JSON; the reader checks it. */
  content: unknown;
  /** Counts the changes of `content`. */
  version: number;
  /** The version that is shown; 0 while none is. */
  shown: number;
  /** The platform's id of the message. */
  message?: string;
  /** The channel that it stands in, where the platform calls that otherwise than `channel`. */
  shownIn?: string;
  thread?: string;
  /** Key of the message that it answers. */
  about?: string;
  plannedAt: Instant;
  /** When it was last sent: a look-up has found nothing of the tries before. */
  triedAt?: Instant;
  tries: number;
  notBefore: Instant;
}
export interface PostsReader {
  post(id: string): Promise<PostRow | undefined>;
  /** Open ones that were never shown: the first of each channel, who may go first; also those that have to wait. */
  unsent(limit: number): Promise<readonly PostRow[]>;
  /** Open ones of one channel that were never shown, in the order of their plan; also those that have to wait. */
  unsentOf(place: Pick<PostRow, 'platform' | 'channel'>, limit: number): Promise<readonly PostRow[]>;
  /** Open ones that are shown and should show something else, by plan. */
  unedited(limit: number): Promise<readonly PostRow[]>;
  postsAbout(key: string): Promise<readonly PostRow[]>;
  openPosts(): Promise<number>;
}
export interface PostsWriter {
  /** New or changed; a new one comes last in its channel. */
  savePost(post: PostRow): Promise<void>;
  /** What they show and what their buttons stand for goes: it may quote the message. Posts with work left are left undone. */
  emptyPostsAbout(key: string): Promise<void>;
  /** Forgets posts planned at or before then that have no work left, with their buttons; gives how many. */
  prunePosts(until: Instant): Promise<number>;
}

export interface ButtonRow {
  token: string;
  /** The post that carries it; absent in a view that is no message. */
  post?: string;
  /** Its place among the post's buttons. */
  position: number;
  /** JSON; the reader checks it. */
  button: unknown;
  at: Instant;
}
export interface ButtonsReader {
  button(token: string): Promise<ButtonRow | undefined>;
}
export interface ButtonsWriter {
  /** Those that are there already stay as they are. */
  saveButtons(rows: readonly ButtonRow[]): Promise<void>;
}

/** The digest of one platform and local day: posted (its post), or left. */
export interface DigestClaim {
  platform: string;
  /** Local date. */
  date: string;
  post?: string;
  at: Instant;
}
export interface DigestsReader {
  digestClaim(platform: string, date: string): Promise<DigestClaim | undefined>;
}
export interface DigestsWriter {
  /** False: somebody claimed it before; nothing is written. */
  claimDigest(claim: DigestClaim): Promise<boolean>;
}

export interface Lease {
  name: string;
  holder: string;
  until: Instant;
}
export interface LeasesReader {
  lease(name: string): Promise<Lease | undefined>;
}
export interface LeasesWriter {
  saveLease(lease: Lease): Promise<void>;
  dropLease(name: string): Promise<void>;
}

export interface TrafficReader
  extends InboxReader, HeardReader, PostsReader, ButtonsReader, DigestsReader, LeasesReader {}
export interface Traffic
  extends TrafficReader, InboxWriter, HeardWriter, PostsWriter, ButtonsWriter, DigestsWriter, LeasesWriter {}
