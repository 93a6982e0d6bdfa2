/** Home views: what each person looks at just now is kept in memory, so that a change can be shown. */
import type { Desk, Log } from '../../src/index.ts';
import type { Clients } from './clients.ts';
import type { Names } from './names.ts';
import { homeView } from './outgoing/home.ts';
import { wordOf } from './slackError.ts';

const MOST_KEPT = 2_000;

export interface Homes {
  /** `machine`: undefined for the whole room. */
  show(account: string, machine?: string): Promise<void>;
  /** What the person looks at, anew; nothing for who did not open it since the start. */
  refresh(account: string): Promise<void>;
}

export function openHomes(desk: Desk, clients: Clients, names: Names, log: Log): Homes {
  const looksAt = new Map<string, string | undefined>();
  const show = async (account: string, machine?: string): Promise<void> => {
    looksAt.delete(account);
    looksAt.set(account, machine);
    const [oldest] = looksAt.keys();
    if (looksAt.size > MOST_KEPT && oldest !== undefined) looksAt.delete(oldest);
    const card = await desk.home({ account, name: await names.person(account) }, machine);
    try {
      await clients.views.views.publish({ user_id: account, view: homeView(card, machine) });
    } catch (fault) {
      log.warn('slack.home', { why: wordOf(fault) });
    }
  };
  // who never opened it has nothing that could be out of date; opening it shows it anew
  const refresh = async (account: string): Promise<void> => {
    if (looksAt.has(account)) await show(account, looksAt.get(account));
  };
  return { show, refresh };
}
