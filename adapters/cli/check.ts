/** `fettle check`: database, workshop, zone, tokens, scopes and channels, each with what to mend. Posts nothing. */
import {
  listedChannels, openBot, openSqliteStore, PlatformFault, StoreFault, type CheckLine, type Workshop,
} from '../../src/index.ts'; // prettier-ignore
import { readServing } from '../running/environment.ts';
import { openLog } from '../running/log.ts';
import { PLATFORMS, platformsOf } from '../running/platforms.ts';
import type { Command } from './command.ts';
import { noWords } from './options.ts';
import { print } from './output.ts';
import { databaseFile, existing, type World } from './session.ts';

const line = (what: string, ok: boolean, text: string): CheckLine => ({ what, ok, text });

async function database(file: string): Promise<{ lines: CheckLine[]; workshop?: Workshop }> {
  try {
    const bot = openBot(await openSqliteStore(file));
    try {
      const workshop = await bot.workshop();
      const opened = line('database', true, `${file} opens.`);
      if (workshop) return { lines: [opened, ...workshopLines(workshop)], workshop };
      return { lines: [opened, line('workshop', false, 'No workshop is enrolled: fettle enrol FILE.')] };
    } finally {
      await bot.close();
    }
  } catch (fault) {
    if (!(fault instanceof StoreFault)) throw fault;
    return { lines: [line('database', false, fault.message)] };
  }
}

const workshopLines = ({ workshop, machines }: Workshop): CheckLine[] => [
  line('workshop', true, `${workshop.name}, ${machines.length} machines.`),
  line('zone', true, `${workshop.zone}: the digest comes at ${workshop.digestAt} there.`),
];

/** Who may lift a hold is known by account only. */
function keepers(workshop: Workshop, platform: string): CheckLine {
  const known = workshop.people.filter(
    ({ role, accounts }) => role === 'keeper' && Object.keys(accounts ?? {}).includes(platform),
  );
  return known.length > 0
    ? line('keepers', true, `${known.map(({ name }) => name).join(', ')} may lift holds on ${platform}.`)
    : line('keepers', false, `No keeper has an account on ${platform} in the workshop file, so that nobody can lift a hold there: add accounts: {${platform}: …} to a keeper.`); // prettier-ignore
}

async function platformLines(world: World, workshop: Workshop | undefined): Promise<CheckLine[]> {
  const { environment, clock } = world;
  const wanted = platformsOf(environment);
  if (wanted.length === 0)
    return [
      line('platforms', false, `No token is set: ${PLATFORMS.map(({ token }) => token).join(' or ')}.`),
    ];
  const lines: CheckLine[] = [];
  for (const { name, load } of wanted) {
    const channels = workshop ? listedChannels(workshop, name) : [];
    if (workshop && channels.length === 0)
      lines.push(line(`${name}: channels`, false, `The workshop file names no channel for ${name}: add channels: {${name}: …}.`)); // prettier-ignore
    const found = await (await load()).check({ environment, clock, log: openLog('silent') }, channels);
    lines.push(...found.map((one) => ({ ...one, what: `${name}: ${one.what}` })));
    if (workshop) lines.push({ ...keepers(workshop, name), what: `${name}: keepers` });
  }
  return lines;
}

function settings(world: World): CheckLine {
  try {
    readServing(world.environment);
    return line('settings', true, 'FETTLE_HEALTH_PORT and FETTLE_LOG are fine.');
  } catch (fault) {
    if (!(fault instanceof PlatformFault)) throw fault;
    return line('settings', false, fault.message.replaceAll('\n', ' '));
  }
}

export const check: Command = {
  about: 'test database, workshop, tokens, scopes and channels, and say what to mend; posts nothing',
  usage: 'check',
  options: {},
  async run(args, world) {
    noWords(args, 'check');
    const { lines, workshop } = await database(existing(databaseFile(args, world)));
    lines.push(settings(world), ...(await platformLines(world, workshop)));
    const ok = lines.every((one) => one.ok);
    const text = lines.map((one) => `${one.ok ? 'ok   ' : 'MEND '} ${one.what}: ${one.text}`).join('\n');
    print(world.output, { ok, lines }, text);
    return ok ? 0 : 1;
  },
};
