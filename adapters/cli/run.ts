/** Finds the subcommand, runs it, and turns every fault into an exit code, a sentence and, with --json, a document. */
import type { Command } from './command.ts';
import { usage } from './fault.ts';
import { readArguments } from './options.ts';
import { asCommandFault, type World } from './session.ts';

/** Loaded when they are called: a command that needs little starts fast. */
const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  chat: async () => (await import('./chat.ts')).chat,
  say: async () => (await import('./say.ts')).say,
  read: async () => (await import('./read.ts')).read,
  due: async () => (await import('./due.ts')).due,
  digest: async () => (await import('./digest.ts')).digest,
  enrol: async () => (await import('./enrol.ts')).enrol,
  forget: async () => (await import('./forget.ts')).forget,
  export: async () => (await import('./export.ts')).exportJournal,
  import: async () => (await import('./import.ts')).importJournal,
  serve: async () => (await import('./serve.ts')).serveCommand,
  check: async () => (await import('./check.ts')).check,
  'register-discord': async () => (await import('./registerDiscord.ts')).registerDiscord,
};

const SHARED_HELP = 'Common to all: --db FILE (or FETTLE_DB), --json, --now MOMENT, --help';

async function overview(): Promise<string> {
  const commands = await Promise.all(Object.values(COMMANDS).map((load) => load()));
  return [
    'fettle keeps a workshop’s filament printers in order.',
    '',
    ...commands.map((c) => `  fettle ${c.usage}\n      ${c.about}`),
    '',
    SHARED_HELP,
    '',
  ].join('\n');
}

const HELP: ReadonlySet<string> = new Set(['--help', '-h', 'help']);

async function dispatch(words: readonly string[], world: World): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined || HELP.has(name)) {
    world.output.out(await overview());
    return name === undefined ? 2 : 0;
  }
  const load = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!load) throw usage(`There is no command "${name}". fettle --help lists them.`);
  const command = await load();
  const args = readArguments(rest, command.options);
  if (!args.flag('help')) return command.run(args, world);
  world.output.out(`fettle ${command.usage}\n    ${command.about}\n${SHARED_HELP}\n`);
  return 0;
}

/** Gives the exit code: 0 handled, 1 could not be done, 2 wrong usage. Never throws. */
export async function run(words: readonly string[], world: World): Promise<number> {
  try {
    return await dispatch(words, world);
  } catch (cause) {
    const fault = asCommandFault(cause);
    world.output.err(`${fault.message}\n`);
    if (world.output.json)
      world.output.out(`${JSON.stringify({ error: { code: fault.code, text: fault.message } })}\n`);
    return fault.exit;
  }
}
