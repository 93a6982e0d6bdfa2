/** The service at work on a fake platform and the demo workshop, at a moment that the test sets. */
import {
  buttonsOf, foldName, openBot, openMemoryStore, openService, plainText,
  type Bot, type Instant, type LogFacts, type Place, type Received, type Service, type Store, type What,
} from '../../src/index.ts'; // prettier-ignore
import { buildDemo, type Demo } from '../../demo-data/build.ts';
import { CHANNEL, fakePlatform, type FakePlatform, type Shown } from './fakePlatform.ts';

/** Wednesday 11 March 2026, 15:40 in the demo's zone: no digest is owed. */
export const AFTERNOON = Date.parse('2026-03-11T15:40:00+01:00');
const SECOND = 1_000;

/** Accounts of the demo's people; the keepers' are written in the workshop file. */
export const ACCOUNTS: Readonly<Record<string, string>> = {
  Ines: 'U1',
  Tomasz: 'U2',
  Priya: 'U3',
  Odd: 'U4',
};

export interface Deed {
  as?: string;
  account?: string;
  key?: string;
  place?: Partial<Place>;
  saidAt?: Instant;
  on?: FakePlatform;
}

export interface Served {
  store: Store;
  bot: Bot;
  service: Service;
  platform: FakePlatform;
  platforms: readonly FakePlatform[];
  now: Instant;
  logged: { event: string; facts: LogFacts }[];
  /** Delivers and lets the service come to rest. */
  deliver(what: What, deed?: Deed): Promise<'stored' | 'known'>;
  /** A message with an id of its own, unless `message` gives it. */
  say(text: string, deed?: Deed & { message?: string; author?: string }): Promise<Shown | undefined>;
  press(post: Shown | undefined, label: string, deed?: Deed): Promise<Shown | undefined>;
  /** The newest post. */
  last(): Shown | undefined;
  settle(): Promise<void>;
  /** Time passes, the timers ring once, and the service comes to rest. */
  pass(ms: number): Promise<void>;
  /** Time passes and the timers ring once; something may still be under way. */
  ring(ms: number): Promise<void>;
  /** The service ends, or is left behind as a crash leaves it; another one begins on the same store. */
  restart(how?: 'stopped' | 'crashed'): Promise<void>;
  stop(): Promise<void>;
  /** Kinds of the entries that chat messages wrote and nobody took back, in order of writing. */
  written(): Promise<readonly string[]>;
}

export interface ServedOptions {
  now?: Instant;
  store?: Store;
  platforms?: readonly FakePlatform[];
  /** Stands between the service and its store, bot and platforms. */
  through?: (store: Store, platforms: readonly FakePlatform[]) => { store: Store; platforms: readonly FakePlatform[] };
} // prettier-ignore

/** Making ten months takes longer than most tests. */
const demos = new Map<Instant, Demo>();

export async function demoStore(now: Instant, change: (json: string) => string = (json) => json): Promise<Store> {
  const store = await openMemoryStore();
  const demo = demos.get(now) ?? buildDemo(now);
  demos.set(now, demo);
  await store.transact(async ({ post, journal }) => {
    for (const person of demo.people) await post.savePerson({ ...person, foldedName: foldName(person.name) });
    await journal.append(demo.entries);
    const workshop = JSON.parse(change(JSON.stringify(demo.workshop)));
    for (const person of workshop.people)
      if (person.role === 'keeper') person.accounts = { slack: ACCOUNTS[person.name] ?? '' };
    await post.saveWorkshop(JSON.stringify(workshop), now);
  });
  return store;
} // prettier-ignore

/** As a person reads it, with its buttons behind it. */
export const read = (post: Shown | undefined): string =>
  post === undefined
    ? '(nothing)'
    : [plainText(post.outgoing.reply), ...buttonsOf(post.outgoing.reply).map(({ label }) => `[${label}]`)].join(' ').replaceAll('\n', ' '); // prettier-ignore

export const placeIn = (channel: string, more: Partial<Place> = {}): Place => ({
  platform: 'slack', space: 'T1', channel, direct: false, ...more,
}); // prettier-ignore

export async function serveDemo(options: ServedOptions = {}): Promise<Served> {
  const { now = AFTERNOON, platforms = [fakePlatform()] } = options;
  const store = options.store ?? (await demoStore(now));
  const [platform] = platforms;
  if (!platform) throw new Error('A service needs a platform.');
  let ticks: (() => void)[] = [];
  let count = 0;

  const begin = async (): Promise<{ service: Service; bot: Bot }> => {
    ticks = [];
    const behind = options.through?.(store, platforms) ?? { store, platforms };
    const bot = openBot(behind.store);
    const note = (event: string, facts: LogFacts = {}): void => void served.logged.push({ event, facts });
    const service = openService({
      ...behind, bot, clock: () => served.now, log: { info: note, warn: note, error: note }, holder: 'test',
      every: (_ms, tick) => {
        ticks.push(tick);
        return () => void (ticks = ticks.filter((one) => one !== tick));
      },
    }); // prettier-ignore
    await service.start();
    return { service, bot };
  };

  const received = (what: What, deed: Deed): Received => {
    const { as = 'Ines', saidAt = served.now, on = platform } = deed;
    count += 1;
    return {
      key: deed.key ?? `${on.name}:Ev${count}`,
      platform: on.name,
      place: placeIn(CHANNEL, { platform: on.name, ...deed.place }),
      account: deed.account ?? ACCOUNTS[as] ?? `U-${as}`,
      accountName: as,
      saidAt,
      audience: 'place',
      what,
    };
  };

  const served: Served = {
    store, platform, platforms, now, logged: [],
    bot: openBot(store),
    service: undefined as never,
    async deliver(what, deed = {}) {
      served.now += SECOND;
      const outcome = await (deed.on ?? platform).deliver(received(what, deed));
      await served.settle();
      return outcome;
    },
    async say(text, { message, author, ...deed } = {}) {
      const before = served.last();
      await served.deliver(
        {
          kind: 'said', text, message: message ?? `h${count}.${served.now}`,
          ...(author === undefined ? {} : { author: { account: ACCOUNTS[author] ?? `U-${author}`, name: author } }),
        },
        deed,
      );
      return served.last() === before ? undefined : served.last();
    },
    async press(post, label, deed) {
      if (!post) throw new Error(`There is no message with [${label}].`);
      const at = buttonsOf(post.outgoing.reply).findIndex((button) => button.label === label);
      const before = served.last();
      const on = { platform: platform.name, channel: post.channel, id: post.id, ...(post.below === undefined ? {} : { thread: post.below }) };
      await served.deliver({ kind: 'pressed', token: post.outgoing.tokens[at] ?? 'v1:none', on }, deed);
      return served.last()?.id === before?.id ? undefined : served.last();
    },
    last: () => platform.posts().at(-1),
    async settle() {
      for (let round = 0; round < 3; round += 1) await served.service.settled();
    },
    async pass(ms) {
      await served.ring(ms);
      await served.settle();
    },
    async ring(ms) {
      served.now += ms;
      for (const tick of ticks) tick();
      await new Promise((resolve) => { setImmediate(resolve); });
    },
    async restart(how = 'stopped') {
      if (how === 'stopped') await served.service.stop();
      Object.assign(served, await begin());
      await served.settle();
    },
    stop: () => served.service.stop(),
    async written() {
      const lines: string[] = [];
      await served.bot.exportLines((line) => void lines.push(line));
      const entries = lines.map((line) => JSON.parse(line) as { id: string; kind: string; message?: string; target?: string });
      const gone = new Set(entries.filter((e) => e.kind === 'takenBack').map((e) => e.target));
      return entries.filter((e) => e.kind !== 'takenBack' && !gone.has(e.id) && /^(slack|discord):/u.test(e.message ?? '')).map((e) => e.kind);
    },
  }; // prettier-ignore
  Object.assign(served, await begin());
  await served.settle();
  return served;
}
