/** What is remembered of a conversation, per speaker and place, for half an hour. Never a fact. */
import { z } from 'zod';
import type { Deed } from '../maintenance/decide/deed.ts';
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Press } from '../replies/reply.ts';
import type { QuestionField } from './message.ts';

export const CONVERSATION_MS = 30 * 60_000;

/** At most one question is open; a message that says something new closes it. */
export interface OpenQuestion {
  id: string;
  /** The message that raised it: what the answer writes carries it as `because`. */
  message: string;
  field: QuestionField;
  text: string;
  options: readonly { value: string; label: string }[];
  /** The acts that wait for it, in the order told. */
  pending: readonly Deed[];
  /** For a question about something written already: the entries that the answer amends. */
  targets?: readonly string[];
  saidAt: Instant;
}

export interface Conversation {
  lastMachine?: string;
  question?: OpenQuestion;
  /** The last reply took the machine for granted: a bare name puts it right. */
  tookMachine?: true;
  /** What the last reply's buttons stand for, in their order. */
  presses?: readonly { label: string; press: Press }[];
}

// The store keeps this as text; a shape from an older version is dropped, not mended.
const shape = z.object({
  lastMachine: z.string().optional(),
  tookMachine: z.literal(true).optional(),
  question: z
    .looseObject({ id: z.string(), pending: z.array(z.looseObject({ kind: z.string() })) })
    .optional(),
  presses: z
    .array(z.looseObject({ label: z.string(), press: z.looseObject({ does: z.string() }) }))
    .optional(),
});

const isConversation = (json: unknown): json is Conversation => shape.safeParse(json).success;

export const parseConversation = (json: unknown): Conversation => (isConversation(json) ? json : {});
