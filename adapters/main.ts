#!/usr/bin/env node
/** The command line: the only place that reads the clock, the environment and the standard streams. */
import { createInterface } from 'node:readline';
import { chat } from './cli/chat.ts';
import type { Command } from './cli/command.ts';
import { digest } from './cli/digest.ts';
import { due } from './cli/due.ts';
import { enrol } from './cli/enrol.ts';
import { exportJournal } from './cli/export.ts';
import { usage } from './cli/fault.ts';
import { importJournal } from './cli/import.ts';
import { readArguments, type Arguments } from './cli/options.ts';
import { read } from './cli/read.ts';
import { say } from './cli/say.ts';
import { asCommandFault, type World } from './cli/session.ts';

const COMMANDS: Readonly<Record<string, Command>> = {
  chat,
  say,
  read,
  due,
  digest,
  enrol,
  export: exportJournal,
  import: importJournal,
};

const SHARED_HELP = `Common to all: --db FILE (or FETTLE_DB), --json, --now MOMENT, --help`;

const overview = (): string =>
  [
    'fettle keeps a workshop’s filament printers in order.',
    '',
    ...Object.values(COMMANDS).map((c) => `  fettle ${c.usage}\n      ${c.about}`),
    '',
    SHARED_HELP,
  ].join('\n');

async function run(words: readonly string[], world: World): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    world.output.out(`${overview()}\n`);
    return name === undefined ? 2 : 0;
  }
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!command) throw usage(`There is no command "${name}". fettle --help lists them.`);
  const args: Arguments = readArguments(rest, command.options);
  if (args.flag('help')) {
    world.output.out(`fettle ${command.usage}\n    ${command.about}\n${SHARED_HELP}\n`);
    return 0;
  }
  return command.run(args, world);
}

async function* linesOf(stream: NodeJS.ReadableStream): AsyncGenerator<string> {
  for await (const line of createInterface({ input: stream, crlfDelay: Infinity })) yield line;
}

async function main(): Promise<void> {
  const words = process.argv.slice(2);
  const json = words.includes('--json');
  const world: World = {
    clock: () => Date.now(),
    environment: process.env,
    input: linesOf(process.stdin),
    interactive: process.stdin.isTTY && process.stdout.isTTY,
    output: {
      json,
      out: (text) => void process.stdout.write(text),
      err: (text) => void process.stderr.write(text),
    },
  };
  // a reader that has gone away (fettle export | head) is no fault of ours
  process.stdout.on('error', () => process.exit(0));
  try {
    process.exitCode = await run(words, world);
  } catch (cause) {
    const fault = asCommandFault(cause);
    world.output.err(`${fault.message}\n`);
    if (json) world.output.out(`${JSON.stringify({ error: { code: fault.code, text: fault.message } })}\n`);
    process.exitCode = fault.exit;
  }
}

await main();
