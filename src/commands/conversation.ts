/** What is remembered of a conversation, per speaker and place, for half an hour. Never a fact. */
import { z } from 'zod';
import type { Order } from '../language/act.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Press } from '../replies/reply.ts';
import type { QuestionField } from './message.ts';

export const CONVERSATION_MS = 30 * 60_000;

/** At most one question is open, others wait for it; a message that says something new closes them all. */
export interface OpenQuestion {
  id: string;
  /** The message that raised it: what the answer writes carries it as `because`. */
  message: string;
  field: QuestionField;
  text: string;
  options: readonly { value: string; label: string }[];
  /** The acts that wait for it, in the order told. */
  pending: readonly Deed[];
  /** The messages whose entries a correction is about. */
  batches?: readonly string[];
  saidAt: Instant;
  /** The order that is carried on with the answer. */
  order?: Order & { confirmed?: true };
}

export interface Conversation {
  /** When the last reply was given. */
  at?: Instant;
  lastMachine?: string;
  question?: OpenQuestion;
  /** Asked when the open question is settled, in this order. */
  waiting?: readonly OpenQuestion[];
  /** "Change something" was pressed about this message: a bare day, figure or name is a correction of it. */
  changing?: string;
  /** The last reply took the machine for granted: a bare name puts it right. */
  tookMachine?: true;
  /** The last message told of work and wrote nothing: "undo" does not reach past it without a word. */
  unwritten?: true;
  /** What the last reply's buttons stand for, in their order. */
  presses?: readonly { label: string; press: Press }[];
}

// The store keeps this as text; a shape from an older version is dropped, not mended.
const questionShape = z.looseObject({
  id: z.string(),
  pending: z.array(z.looseObject({ kind: z.string() })),
});
const shape = z.object({
  at: z.number().optional(),
  lastMachine: z.string().optional(),
  tookMachine: z.literal(true).optional(),
  unwritten: z.literal(true).optional(),
  question: questionShape.optional(),
  waiting: z.array(questionShape).optional(),
  changing: z.string().optional(),
  presses: z
    .array(z.looseObject({ label: z.string(), press: z.looseObject({ does: z.string() }) }))
    .optional(),
});

const isConversation = (json: unknown): json is Conversation => shape.safeParse(json).success;

export const parseConversation = (json: unknown): Conversation => (isConversation(json) ? json : {});
