/** What a subcommand works with: an open bot, the moment of the run, and where to print. */
import { existsSync, readFileSync } from 'node:fs';
import {
  openBot,
  openCalendar,
  openMemoryStore,
  openSqliteStore,
  RequestFault,
  StoreFault,
  type Bot,
  type Instant,
  type LocalCalendar,
  type Store,
} from '../../src/index.ts';
import type { Arguments } from './options.ts';
import { CommandFault, failed, usage } from './fault.ts';
import { readMoment } from './moment.ts';
import type { Output } from './output.ts';

/** What only the front door may know: clock, environment, streams. */
export interface World {
  clock: () => Instant;
  environment: Readonly<Record<string, string | undefined>>;
  input: AsyncIterable<string>;
  output: Output;
  /** Is somebody typing at it? */
  interactive: boolean;
  /** Resolves, once asked for, when the process is told to stop: with the signal's name. */
  stopped?: () => Promise<string>;
}

export interface Session {
  bot: Bot;
  calendar: LocalCalendar;
  now: Instant;
}

export function databaseFile(args: Arguments, { environment }: World): string {
  const file = args.text('db') ?? environment['FETTLE_DB'];
  if (file === undefined || file === '')
    throw usage('Which database? Give --db FILE or set FETTLE_DB. (fettle chat alone opens the demo.)');
  return file;
}

/** A misspelt name must not leave an empty database behind. */
export function existing(file: string): string {
  if (existsSync(file)) return file;
  throw failed(
    'no-workshop',
    `There is no database ${file}. Is the name right? fettle enrol FILE makes a new one.`,
  );
}

/** Opens the database for the length of `work`. */
export async function withBot<T>(file: string, work: (bot: Bot) => Promise<T>): Promise<T> {
  return withStore(await openSqliteStore(file), work);
}

/** The same on a store that is gone afterwards. */
export const withTrial = async <T>(work: (bot: Bot) => Promise<T>): Promise<T> =>
  withStore(await openMemoryStore(), work);

async function withStore<T>(store: Store, work: (bot: Bot) => Promise<T>): Promise<T> {
  const bot = openBot(store);
  try {
    return await work(bot);
  } finally {
    await bot.close();
  }
}

/** A session on a database with an enrolled workshop. */
export const withSession = <T>(
  args: Arguments,
  world: World,
  work: (session: Session) => Promise<T>,
): Promise<T> => {
  // a moment that is none is wrong usage, whatever the database holds
  momentOf(args, world, openCalendar('UTC'));
  return withBot(existing(databaseFile(args, world)), async (bot) => {
    const calendar = await bot.calendar();
    if (!calendar)
      throw failed(
        'no-workshop',
        'There is no workshop in this database yet. Enrol one first: fettle enrol FILE.',
      );
    return work({ bot, calendar, now: momentOf(args, world, calendar) });
  });
};

export function momentOf(args: Arguments, world: World, calendar: LocalCalendar): Instant {
  const said = args.text('now');
  return said === undefined ? world.clock() : readMoment(said, '--now', calendar);
}

export function readTextFile(path: string): string {
  try {
    // some editors put a byte order mark before the first line
    return readFileSync(path, 'utf8').replace(/^\uFEFF/u, '');
  } catch (cause) {
    throw failed('no-file', `${path} cannot be read${isCoded(cause) ? ` (${cause.code})` : ''}.`, cause);
  }
}

const isCoded = (cause: unknown): cause is { code: string } =>
  typeof cause === 'object' && cause !== null && 'code' in cause && typeof cause.code === 'string';

/** Any fault as exit code, code word and sentence. */
export function asCommandFault(cause: unknown): CommandFault {
  if (cause instanceof CommandFault) return cause;
  if (cause instanceof RequestFault)
    return new CommandFault(cause.code.startsWith('unknown-') ? 2 : 1, cause.code, cause.message, cause);
  if (cause instanceof StoreFault) return failed(cause.code, cause.message, cause);
  const text = cause instanceof Error ? cause.message : String(cause);
  return failed('fault', `That could not be done: ${text}`, cause);
}
