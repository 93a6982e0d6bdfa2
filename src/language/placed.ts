/** A draft with its machine and day put to it: what the rules after placing work on. */
import type { Act } from './act.ts';
import type { Draft } from './scene.ts';

export interface Placed {
  readonly draft: Draft;
  readonly act: Act;
  readonly trail: readonly { rule: string; span: readonly [number, number] }[];
  readonly assumed?: {
    readonly machine?: { from: 'spelling'; said: string } | { from: 'neighbour' } | { from: 'conversation' };
  };
}
