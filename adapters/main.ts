#!/usr/bin/env node
/** The command line: the only place that reads the clock, the environment and the standard streams. */
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { run } from './cli/run.ts';

async function* linesOf(stream: NodeJS.ReadableStream): AsyncGenerator<string> {
  for await (const line of createInterface({ input: stream, crlfDelay: Infinity })) yield line;
}

const words = process.argv.slice(2);
// a reader that has gone away (fettle export | head) is no fault of ours
process.stdout.on('error', () => process.exit(0));
process.exitCode = await run(words, {
  clock: () => Date.now(),
  environment: process.env,
  input: linesOf(process.stdin),
  interactive: process.stdin.isTTY && process.stdout.isTTY,
  output: {
    json: words.includes('--json'),
    out: (text) => void process.stdout.write(text),
    async room() {
      if (process.stdout.writableNeedDrain) await once(process.stdout, 'drain');
    },
    err: (text) => void process.stderr.write(text),
  },
});
