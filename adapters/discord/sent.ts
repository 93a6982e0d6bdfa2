/** Our own messages as the gateway tells of them, by the identity that they were sent with. */
import type { PostRef } from '../../src/index.ts';

export interface SentMessages {
  note(id: string, ref: PostRef): void;
  of(id: string): PostRef | undefined;
}

const MOST = 1000;

export function openSent(): SentMessages {
  const seen = new Map<string, PostRef>();
  return {
    note(id, ref) {
      seen.set(id, ref);
      const [oldest] = seen.keys();
      if (seen.size > MOST && oldest !== undefined) seen.delete(oldest);
    },
    of: (id) => seen.get(id),
  };
}
