/** The command line in this process: what it printed and how it ended. */
import { run } from '../../adapters/cli/run.ts';

export interface Ended {
  code: number;
  out: string;
  err: string;
  /** stdout as one JSON document. */
  json(): Record<string, unknown>;
}

export async function fettle(
  words: readonly string[],
  input: readonly string[] = [],
  now = NOON,
  environment: Readonly<Record<string, string>> = {},
): Promise<Ended> {
  let [out, err] = ['', ''];
  const code = await run(words, {
    clock: () => now,
    environment,
    input: (async function* () {
      yield* input;
    })(),
    interactive: false,
    output: {
      json: words.includes('--json'),
      out: (text) => void (out += text),
      err: (text) => void (err += text),
    },
  });
  return { code, out, err, json: () => JSON.parse(out) };
}

/** Wednesday 11 March 2026, 12:00 in Copenhagen. */
export const NOON = Date.parse('2026-03-11T12:00:00+01:00');
