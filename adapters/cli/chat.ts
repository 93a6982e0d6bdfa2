/** `fettle chat`: the conversation in a terminal, on the demo or on a database. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  openBot,
  openSqliteStore,
  parseWorkshop,
  openCalendar,
  type Bot,
  type Instant,
} from '../../src/index.ts';
import { fillWithDemo } from '../../demo-data/fill.ts';
import { converse } from '../terminal/converse.ts';
import type { Command } from './command.ts';
import { failed } from './fault.ts';
import { readMoment } from './moment.ts';
import { existing, readTextFile, withBot, type World } from './session.ts';
import { noWords, type Arguments } from './options.ts';
import { demoTemplate } from '../../demo-data/build.ts';

/** The moment of the run, in the zone of the workshop that this file describes. */
function momentIn(yaml: string, args: Arguments, world: World): Instant {
  const said = args.text('now');
  if (said === undefined) return world.clock();
  const parsed = parseWorkshop(yaml);
  return readMoment(said, '--now', openCalendar(parsed.ok ? parsed.workshop.workshop.zone : 'UTC'));
}

/** The demo lives in a folder of its own that goes when the conversation ends. */
async function onDemo(args: Arguments, world: World): Promise<number> {
  const folder = await mkdtemp(join(tmpdir(), 'fettle-demo-'));
  const store = await openSqliteStore(join(folder, 'demo.sqlite'));
  const bot = openBot(store);
  try {
    const now = momentIn(demoTemplate(), args, world);
    await fillWithDemo(store, now);
    return await talk(
      bot,
      args,
      world,
      'The demo: an invented workshop, its dates moved to today. Nothing here is kept.',
    );
  } finally {
    await bot.close();
    await rm(folder, { recursive: true, force: true });
  }
}

async function talk(bot: Bot, args: Arguments, world: World, opening: string): Promise<number> {
  const calendar = await bot.calendar();
  if (!calendar)
    throw failed(
      'no-workshop',
      'There is no workshop in this database yet. Enrol one first: fettle enrol FILE.',
    );
  const fixed = args.text('now');
  const start = world.clock();
  const from = fixed === undefined ? start : readMoment(fixed, '--now', calendar);
  await converse({
    bot,
    calendar,
    speaker: args.text('as') ?? 'me',
    opening,
    // with --now the clock starts there and runs on
    clock: () => from + (world.clock() - start),
    input: world.input,
    write: (text) => world.output.out(text),
    interactive: world.interactive,
  });
  return 0;
}

export const chat: Command = {
  about: 'talk to the bot in this terminal (without a database: on the demo)',
  usage: 'chat [--workshop FILE] [--as NAME]',
  options: { workshop: { type: 'string' }, as: { type: 'string' } },
  async run(args, world) {
    noWords(args, 'chat');
    const file = args.text('db') ?? world.environment['FETTLE_DB'];
    const workshop = args.text('workshop');
    if (file === undefined)
      return workshop === undefined ? onDemo(args, world) : onFile(args, world, workshop);
    if (workshop === undefined) return withBot(existing(file), (bot) => talk(bot, args, world, ''));
    const yaml = readTextFile(workshop);
    return withBot(file, async (bot) => {
      await bot.enrol({
        yaml,
        now: momentIn(yaml, args, world),
        by: args.text('as') ?? 'me',
        dryRun: false,
      });
      return talk(bot, args, world, '');
    });
  },
};

/** A workshop of one's own without a database: tried out, not kept. */
async function onFile(args: Arguments, world: World, workshop: string): Promise<number> {
  const yaml = readTextFile(workshop);
  const folder = await mkdtemp(join(tmpdir(), 'fettle-trial-'));
  try {
    return await withBot(join(folder, 'trial.sqlite'), async (bot) => {
      await bot.enrol({ yaml, now: momentIn(yaml, args, world), by: args.text('as') ?? 'me', dryRun: false });
      return talk(bot, args, world, 'No database given: nothing of this is kept. (--db FILE keeps it.)');
    });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
