/** The desk of one platform: takes in what arrives, and answers what cannot wait for a message. */
import { foldName } from '../maintenance/machine.ts';
import type { Reply } from '../replies/reply.ts';
import { buttonsOf } from '../replies/text.ts';
import type { IncomingMessage } from '../commands/message.ts';
import { accessTo, listedChannels } from './access.ts';
import { formOfButton, logForm } from './forms.ts';
import { answerId } from './identity.ts';
import type { Works } from './parts.ts';
import type { Card, Desk, Platform, Received, Speaker } from './platform.ts';
import { buttonRows, tokensFor } from './posts.ts';
import { findPressable } from './pressed.ts';
import { rowsOf } from './seen.ts';

const MOST_IN_FORM = 25;

async function machinesInUse({ bot, clock }: Works): Promise<string[]> {
  return (await bot.machines({ now: clock() })).map(({ called }) => foldName(called));
}

/** Those that begin so before those that hold it somewhere. */
async function machines(works: Works, typed: string, most: number): Promise<string[]> {
  const said = foldName(typed);
  const names = await machinesInUse(works);
  const begin = names.filter((name) => foldName(name).startsWith(said));
  const hold = names.filter((name) => !begin.includes(name) && foldName(name).includes(said));
  return [...begin, ...hold].slice(0, most);
}

/** A view of one's own talks in a place of its own. */
const homeMessage = (works: Works, platform: Platform, asker: Speaker): IncomingMessage => ({
  key: `${platform.name}:home:${asker.account}`, platform: platform.name, place: `${platform.name}:home`, direct: true,
  speaker: asker.name, account: asker.account, text: '', saidAt: works.clock(), now: works.clock(), press: { does: 'leave' },
}); // prettier-ignore

async function homeReply(works: Works, platform: Platform, asker: Speaker, machine?: string): Promise<Reply> {
  const now = works.clock();
  if (machine === undefined) return (await works.bot.digest({ now })).reply;
  const said = foldName(machine);
  const known = (await works.bot.machines({ now })).find(({ called }) => foldName(called) === said);
  return works.bot.glance(homeMessage(works, platform, asker), {
    kind: 'ask',
    topic: 'overdue',
    machine: known?.machine ?? said,
  });
}

async function home(
  works: Works,
  platform: Platform,
  asker: Speaker,
  machine?: string,
): Promise<Card | undefined> {
  const workshop = await works.bot.workshop();
  if (!workshop) return undefined;
  const place = { platform: platform.name, space: platform.space() ?? '', channel: '', direct: true };
  const access = await accessTo({ place, account: asker.account }, platform, workshop, works.store);
  if (access !== 'open') return undefined;
  const reply = await homeReply(works, platform, asker, machine);
  const now = works.clock();
  const due = await works.bot.due({ now });
  const seen = buttonsOf(reply).map(({ press }) => rowsOf(press, due));
  const talk = `${platform.name}:home`;
  // what was done since is offered by other buttons: those of an older view stand for what that view showed
  const view = answerId(JSON.stringify([talk, asker.account, seen]));
  const rows = buttonRows(reply, view, { talk, owner: asker, seen }, now);
  if (rows.length > 0) await works.store.transact(({ traffic }) => traffic.saveButtons(rows));
  return { reply, tokens: tokensFor(view, buttonsOf(reply)) };
}

export const openDesk = (
  works: Works,
  platform: Platform,
  receive: (received: Received) => Promise<'stored' | 'known'>,
): Desk => ({
  receive,
  logForm: async (values) => logForm((await machinesInUse(works)).slice(0, MOST_IN_FORM + 1), values),
  formOf: async (token) => {
    const button = await findPressable(works, token);
    return button && formOfButton(token, button);
  },
  home: (asker, machine) => home(works, platform, asker, machine),
  machines: (typed, most) => machines(works, typed, most),
  lastReceived: () => works.store.read(({ traffic }) => traffic.heard(platform.name)),
  channels: async () => {
    const workshop = await works.bot.workshop();
    return workshop ? listedChannels(workshop, platform.name) : [];
  },
});
