/** One act's way through a message, and what came of it. */
import type { Act, ActReading } from '../language/act.ts';
import type { Decision, WrittenNotes } from '../maintenance/decide/decision.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import type { Entry } from '../maintenance/entry/entry.ts';
import type { Button, Reply } from '../replies/reply.ts';
import type { OpenQuestion } from './conversation.ts';
import type { ActOutcome } from './message.ts';

export interface Step {
  act: Act | Deed;
  outcome: ActOutcome;
  /** What was written, or why not. */
  decision?: Decision;
  notes?: WrittenNotes;
  entries: readonly Entry[];
  /** Misspelt names and the like: field -> what was said. */
  assumed?: ActReading['assumed'];
  /** A refusal, or what is asked, in one sentence. */
  text?: string;
  /** An answer to a question. */
  reply?: Reply;
}

/** A question to be opened, and the step that it is about. */
export interface Asking {
  about: number;
  question: OpenQuestion;
}

export interface Played {
  steps: readonly Step[];
  asking?: Asking;
  /** Further doubts, asked one after the other when the open one is settled. */
  waiting?: readonly Asking[];
  /** Somebody is hurt, or a safety symptom was told: stands first. */
  caution: readonly string[];
  /** Nothing else is said but the caution, the hold and its buttons. */
  grave: boolean;
  /** "Leave it" was chosen, or a hint that belongs to no act. */
  aside?: string;
  /** Buttons that stand for the answers to an aside. */
  offers?: readonly Button[];
  /** The message that further corrections are about. */
  changing?: string;
  /** Neither the open question nor the last buttons are settled by this message. */
  keeps?: true;
}

export const deedsOf = (acts: readonly (Act | Deed)[]): Deed[] =>
  acts.filter((act): act is Deed => act.kind !== 'ask' && act.kind !== 'unclear');
