#!/usr/bin/env node
/** The command line: the only place that reads the clock, the environment and the standard streams. */
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { holdYoung } from './running/young.ts';

async function* linesOf(stream: NodeJS.ReadableStream): AsyncGenerator<string> {
  for await (const line of createInterface({ input: stream, crlfDelay: Infinity })) yield line;
}

const SIGNALS = ['SIGTERM', 'SIGINT'] as const;
/** From the first call on a signal ends the work in hand, not the process. */
const stopped = (): Promise<string> => {
  // a fault in a library's background work is logged by kind; what matters is stored before it is acknowledged
  process.on('unhandledRejection', (fault) => {
    const kind = fault instanceof Error ? fault.name : typeof fault;
    process.stderr.write(`${JSON.stringify({ level: 'error', msg: 'unhandledRejection', kind })}\n`);
  });
  return new Promise((resolve) => {
    for (const signal of SIGNALS) process.once(signal, () => resolve(signal));
  });
};

const words = process.argv.slice(2);
// has to be said before the modules are loaded
if (words[0] === 'serve') holdYoung();
const { run } = await import('./cli/run.ts');
// a reader that has gone away (fettle export | head) is no fault of ours
process.stdout.on('error', () => process.exit(0));
const exitCode = await run(words, {
  clock: () => Date.now(),
  environment: process.env,
  input: linesOf(process.stdin),
  interactive: process.stdin.isTTY && process.stdout.isTTY,
  stopped,
  output: {
    json: words.includes('--json'),
    out: (text) => void process.stdout.write(text),
    async room() {
      if (process.stdout.writableNeedDrain) await once(process.stdout, 'drain');
    },
    err: (text) => void process.stderr.write(text),
  },
});
process.exitCode = exitCode;
// a connection that was still being opened must not keep a process that was told to stop
if (words[0] === 'serve') process.exit(exitCode);
