/** What comes in from any platform, and what goes back: both free of platform words. */
import type { Act } from '../language/act.ts';
import type { Entry, Instant } from '../maintenance/entry/entry.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import type { AskedField, Flag, RefusalCode } from '../maintenance/decide/decision.ts';
import type { Button, Press, Reply } from '../replies/reply.ts';

export interface IncomingMessage {
  /** The message's identity on its platform: the same key is handled once. */
  key: string;
  platform: string;
  /** A channel, a thread or a direct conversation: a conversation belongs to a speaker and a place. */
  place: string;
  /** Said to the bot alone: it offers help where it would be silent in a channel. */
  direct: boolean;
  /** The speaker's name in this workshop, any case. */
  speaker: string;
  /** The speaker's account on `platform`: then the account says who it is, and a name alone makes nobody a keeper. */
  account?: string;
  /** Somebody else noted what the speaker had said: either may take it back. */
  notedBy?: { account: string; name: string };
  text: string;
  saidAt: Instant;
  now: Instant;
  /** A button was pressed instead: what it stands for. */
  press?: Press;
}

export type ActOutcome = 'written' | 'refused' | 'asked' | 'answered';
export type MessageOutcome = 'written' | 'partly' | 'refused' | 'asked' | 'answered' | 'silent' | 'repeated';

export interface ActResult {
  /** Index into the answer's acts. */
  act: number;
  outcome: ActOutcome;
  entries: readonly string[];
  flags: readonly Flag[];
  code?: RefusalCode;
  text: string;
}

export interface AskedOption {
  value: string;
  label: string;
}
export interface Question {
  id: string;
  /** Index into the answer's acts. */
  about: number;
  field: QuestionField;
  text: string;
  options: readonly AskedOption[];
}
/** What a question is about; a bare answer fills this field of every act that waits for it. */
export type QuestionField =
  AskedField | 'reason' | 'finding' | 'sweep' | 'found' | 'later' | 'far' | 'many' | 'change' | 'name';

export interface Answer {
  now: Instant;
  /** The speaker's name, lower case. */
  by: string;
  message: string;
  outcome: MessageOutcome;
  /** After context: with the machine that the conversation supplied. */
  acts: readonly (Act | Deed)[];
  results: readonly ActResult[];
  /** Exactly what this call appended. */
  entries: readonly Entry[];
  question: Question | null;
  reply: Reply;
  /** The buttons in the order in which they are numbered. */
  buttons: readonly Button[];
  /** Person id of who noted it for the speaker. */
  notedBy?: string;
}
