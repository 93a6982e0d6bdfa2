/** What arrives together is stored together, and acknowledged only then. */
import { describe, expect, it } from 'vitest';
import { openMemoryStore, type Store } from '../../src/index.ts';
import { openIntake } from '../../src/service/intake.ts';
import type { Received } from '../../src/service/platform.ts';
import { AFTERNOON, placeIn } from '../support/served.ts';

const message = (n: number): Received => ({
  key: `slack:Ev${n}`, platform: 'slack', place: placeIn('C1'), account: 'U1', accountName: 'Ines', saidAt: AFTERNOON,
  audience: 'place', what: { kind: 'said', text: 'ran 2 h on alder', message: `h${n}` },
}); // prettier-ignore

interface Counted {
  receive: (received: Received) => Promise<'stored' | 'known'>;
  commits: () => number;
}
async function counted(fails = false): Promise<Counted> {
  const store = await openMemoryStore();
  let commits = 0;
  const counting: Store = {
    ...store,
    transact: (work) => {
      commits += 1;
      return fails ? Promise.reject(new Error('the disk is full')) : store.transact(work);
    },
  };
  return { receive: openIntake(counting, () => AFTERNOON, () => undefined), commits: () => commits }; // prettier-ignore
}

describe('the intake', () => {
  it('stores all that arrives in one turn of the event loop in one commit', async () => {
    const { receive, commits } = await counted();
    const outcomes = await Promise.all([1, 2, 3, 4, 5].map((n) => receive(message(n))));
    expect(outcomes).toEqual(Array(5).fill('stored'));
    expect(commits()).toBe(1);
  });

  it('begins another one for what arrives in a later turn', async () => {
    const { receive, commits } = await counted();
    await receive(message(1));
    await receive(message(2));
    expect(commits()).toBe(2);
  });

  it('knows a message that comes twice in one turn', async () => {
    const { receive } = await counted();
    expect(await Promise.all([receive(message(1)), receive(message(1))])).toEqual(['stored', 'known']);
  });

  it('acknowledges nothing of a turn that could not be stored', async () => {
    const { receive } = await counted(true);
    const outcomes = await Promise.allSettled([receive(message(1)), receive(message(2))]);
    expect(outcomes.map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  });
});
