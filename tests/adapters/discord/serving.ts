/** The adapter with the real discord.js on a fake Discord, and a desk that writes down what it is given. */
import type { Desk, Form, LogFacts, Outgoing, Platform, Received, Reply } from '../../../src/index.ts';
import { open } from '../../../adapters/discord/index.ts';
import { ID, startFakeDiscord, type FakeDiscord, type Json } from '../../support/fakeDiscord.ts';

export const TOKEN = 'MTAwMDAwMDAwMDAwMDAwMDAx.GfakeT.not-a-real-token-only-for-tests';

export interface Serving {
  discord: FakeDiscord;
  platform: Platform;
  received: Received[];
  logged: { event: string; facts?: LogFacts }[];
  desk: TestDesk;
  said: () => Promise<Received>;
  stop: () => Promise<void>;
}
export interface TestDesk extends Desk {
  forms: Map<string, Form>;
  last: Awaited<ReturnType<Desk['lastReceived']>>;
  listed: string[];
  failing: number;
  /** What was stored, by its keys. */
  known: Set<string>;
}

export function openDesk(received: Received[]): TestDesk {
  const keys = new Set<string>();
  const desk: TestDesk = {
    known: keys,
    forms: new Map(),
    last: [],
    listed: ['#print-room'],
    failing: 0,
    async receive(one) {
      if (desk.failing > 0) {
        desk.failing -= 1;
        throw new Error('the database is busy');
      }
      const second =
        one.what.kind === 'said' ? `${one.place.channel}:${one.what.message}` : one.key;
      if (keys.has(one.key) || keys.has(second)) return 'known';
      keys.add(one.key).add(second);
      received.push(one);
      return 'stored';
    },
    logForm: (values) => Promise.resolve(logForm(values?.['machine'])),
    formOf: (token) => Promise.resolve(desk.forms.get(token)),
    home: () => Promise.resolve(undefined),
    machines: (typed) => Promise.resolve(['Alder', 'Birch', 'Maple'].filter((name) => name.toLowerCase().startsWith(typed))),
    lastReceived: () => Promise.resolve(desk.last),
    channels: () => Promise.resolve(desk.listed),
  }; // prettier-ignore
  return desk;
}

export const logForm = (machine?: string): Form => ({
  form: 'log',
  title: 'Log maintenance',
  submit: 'Log',
  fields: [
    { name: 'machine', label: 'Machine', kind: 'line', required: true, ...(machine === undefined ? {} : { value: machine }) },
    { name: 'work', label: 'What was done', kind: 'text', required: false },
  ],
}); // prettier-ignore

export interface ServingOptions {
  environment?: Readonly<Record<string, string>>;
  guilds?: readonly Json[];
  heartbeat?: number;
  asleep?: readonly Json[];
  prepare?: (discord: FakeDiscord, desk: TestDesk) => void;
  now?: number;
}

export async function serveDiscord(options: ServingOptions = {}): Promise<Serving> {
  const { environment = {}, prepare, now, ...fake } = options;
  const discord = await startFakeDiscord(fake);
  const received: Received[] = [];
  const logged: Serving['logged'] = [];
  const note = (event: string, facts?: LogFacts): void =>
    void logged.push({ event, ...(facts ? { facts } : {}) });
  const desk = openDesk(received);
  prepare?.(discord, desk);
  const platform = await open({
    environment: { DISCORD_BOT_TOKEN: TOKEN, DISCORD_API_URL: discord.api, ...environment },
    clock: () => now ?? Date.now(),
    log: { info: note, warn: note, error: note },
  });
  const stop = async (): Promise<void> => {
    await platform.stop();
    await discord.close();
  };
  try {
    await platform.start(desk);
  } catch (fault) {
    await stop();
    throw fault;
  }
  return {
    discord, platform, received, logged, desk, stop,
    said: () => discord.until(() => received[0]),
  }; // prettier-ignore
}

export const NOTED: Reply = {
  title: [{ bold: 'Birch' }, ': noted.'],
  sections: [{ items: [{ text: ['jam cleared'] }, { text: ['6.5 h run'] }], run: true }],
  buttons: [{ label: 'Undo', press: { does: 'undo', message: 'm1' } }],
};
export const token = (n: number): string => `v1:${String(n).padStart(22, '0')}`;
let outbox = 0;
export const outgoing = (more: Partial<Outgoing> = {}): Outgoing => ({
  id: `out${String((outbox += 1)).padStart(19, '0')}`,
  to: { platform: 'discord', space: ID.guild, channel: ID.channel, direct: false },
  audience: 'place',
  reply: NOTED,
  tokens: [token(1)],
  ...more,
});
