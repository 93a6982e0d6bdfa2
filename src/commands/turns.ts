/** One question at a time: what holds work back comes first, and each doubt has its turn. */
import type { OpenQuestion } from './conversation.ts';
import type { Asking, Played } from './step.ts';

/** A doubt that holds work back is asked before one that only completes what is written. */
const rank = ({ question }: Asking): number => (isCompleting(question) ? 1 : 0);

/** It is about an entry that is written: nothing waits for the answer. */
export const isCompleting = ({ field, pending }: OpenQuestion): boolean =>
  field === 'reason' || field === 'finding' || (field === 'fitted' && pending[0]?.kind === 'amend');

/** In their order, each once; one hangs on many acts when they wait for the same word. */
export function inTurn(asks: readonly (Asking | undefined)[]): Pick<Played, 'asking' | 'waiting'> {
  const all = asks.filter((ask) => ask !== undefined);
  const once = [...new Map(all.toReversed().map((ask) => [ask.question.id, ask])).values()].toReversed();
  const [asking, ...waiting] = once.toSorted((a, b) => rank(a) - rank(b));
  return { ...(asking ? { asking } : {}), ...(waiting.length > 0 ? { waiting } : {}) };
}

/** What an answer leaves: its own doubts, then those that were waiting for their turn. */
export const thenAsk = (played: Played, waiting: readonly OpenQuestion[] = []): Played => {
  const { asking, waiting: own = [], ...rest } = played;
  const others = waiting.map((question) => ({ about: 0, question }));
  return { ...rest, ...inTurn([asking, ...own, ...others]) };
};
