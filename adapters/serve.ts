/** Serving: platforms opened, the lease held, the service at work until somebody says stop or it cannot go on. */
import { randomUUID } from 'node:crypto';
import { hostname } from 'node:os';
import { setTimeout as sleep } from 'node:timers/promises';
import {
  LEASE_MS, openBot, openService, openSqliteStore, PlatformFault, RequestFault, takeLease,
  type Instant, type Log, type Platform, type Service, type Store,
} from '../src/index.ts'; // prettier-ignore
import { readServing } from './running/environment.ts';
import { serveHealth, type Health } from './running/health.ts';
import { openLog } from './running/log.ts';
import { wantedPlatforms } from './running/platforms.ts';
import { watch } from './running/watch.ts';
import { releaseYoung } from './running/young.ts';

export interface ServeParts {
  file: string;
  environment: Readonly<Record<string, string | undefined>>;
  clock: () => Instant;
  /** Resolves when the process is asked to stop, with the signal's name. */
  stopped: Promise<string>;
  log?: Log;
}

const every = (ms: number, tick: () => void): (() => void) => {
  const timer = setInterval(tick, ms);
  return () => clearInterval(timer);
};

/** Another process may just be ending, or have died without giving its lease back. False: told to stop meanwhile. */
async function takeTurn(
  store: Store,
  holder: string,
  { clock, stopped }: ServeParts,
  log: Log,
): Promise<boolean> {
  const first = await takeLease(store, holder, clock());
  if (first.taken) return true;
  log.warn('lease.waiting', { seconds: Math.ceil((first.until - clock()) / 1000) });
  const over = sleep(Math.min(LEASE_MS, Math.max(0, first.until - clock())) + 100, 'over' as const);
  if ((await Promise.race([over, stopped])) !== 'over') return false;
  const second = await takeLease(store, holder, clock());
  if (!second.taken)
    throw new RequestFault(
      'already-serving',
      'Another fettle serve is at work on this database. Stop it first: two would answer twice.',
    );
  return true;
}

async function openPlatforms({ environment, clock }: ServeParts, log: Log): Promise<Platform[]> {
  const wanted = wantedPlatforms(environment);
  const opened: Platform[] = [];
  const faults: string[] = [];
  for (const { load } of wanted) {
    try {
      opened.push(await (await load()).open({ environment, clock, log }));
    } catch (fault) {
      if (!(fault instanceof PlatformFault)) throw fault;
      faults.push(fault.message);
    }
  }
  if (faults.length > 0) throw new PlatformFault('serve', faults.join('\n'));
  return opened;
}

/** Gives the exit code: 0 when it was asked to stop, 1 when it could not go on and should be started again. */
export async function serve(parts: ServeParts): Promise<number> {
  const { environment, clock, file } = parts;
  const serving = readServing(environment);
  const log = parts.log ?? openLog(serving.logLevel);
  const platforms = await openPlatforms(parts, log);
  const holder = `${hostname()}:${process.pid}:${randomUUID()}`;
  const store = await openSqliteStore(file);
  const bot = openBot(store);
  let health: Health | undefined;
  let service: Service | undefined;
  let drain = true;
  try {
    if (!(await bot.workshop()))
      throw new RequestFault(
        'no-workshop',
        'There is no workshop in this database yet. Enrol one first: fettle enrol FILE.',
      );
    if (!(await takeTurn(store, holder, parts, log))) return 0;
    const opened = openService({ store, bot, platforms, clock, log, every, holder });
    const lost = new Promise<'lease-lost'>((resolve) => opened.onLost(() => resolve('lease-lost')));
    service = opened;
    // told to stop while a platform is still being reached: that counts as well
    const early = await Promise.race([opened.start().then(() => undefined), parts.stopped]);
    if (early !== undefined) return 0;
    if (serving.healthPort !== undefined)
      health = await serveHealth(serving.healthPort, () => opened.state());
    releaseYoung();
    log.info('serving', { platforms: platforms.map(({ name }) => name).join(','), health: health?.port });
    const watching = watch({ state: () => opened.state(), clock, log, every });
    const why = await Promise.race([parts.stopped, lost, watching.tooLong.then(() => 'away')]);
    watching.end();
    log.info('stopping', { why });
    drain = why !== 'lease-lost';
    return why === 'lease-lost' || why === 'away' ? 1 : 0;
  } finally {
    // also when it could not start: sockets and timers must not outlive the database
    await service?.stop({ drain }).catch(() => log.error('stop.failed'));
    await health?.close();
    await bot.close();
  }
}
