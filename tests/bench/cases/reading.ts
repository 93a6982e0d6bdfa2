/** Reading alone: the messages of the open sample, then hostile lengths. */
import { readFileSync } from 'node:fs';
import { createReader, parseWorkshop } from '../../../src/index.ts';
import { demoTemplate } from '../../../demo-data/build.ts';
import type { Figures } from '../case.ts';

const SAID = { date: '2026-03-11', minute: 15 * 60 + 40 };
const ROUNDS = 60;

export async function run(): Promise<Figures> {
  const parsed = parseWorkshop(demoTemplate());
  if (!parsed.ok) throw new Error('the demo workshop does not parse');
  const { machines, people } = parsed.workshop;
  const read = createReader({ machines, people: people.map((p) => p.name) });
  const texts = readFileSync('tests/language/corpus/open-sample.jsonl', 'utf8')
    .split('\n')
    .filter(Boolean)
    .map((line): unknown => JSON.parse(line).text)
    .filter((text): text is string => typeof text === 'string' && text.length < 500);
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1)
    for (const text of texts) {
      const from = performance.now();
      read(text, SAID);
      if (round > ROUNDS / 3) times.push(performance.now() - from);
    }
  times.sort((a, b) => a - b);
  const long = (length: number): number => {
    const text = 'greased the z screw on alder and birch, 3 h at 12:30 yesterday '
      .repeat(length / 60)
      .slice(0, length);
    const from = performance.now();
    read(text, SAID);
    return performance.now() - from;
  };
  long(4000);
  return {
    'reading, mean, microseconds': (times.reduce((a, b) => a + b, 0) / times.length) * 1000,
    'reading, p99, microseconds': (times[Math.floor(times.length * 0.99)] ?? NaN) * 1000,
    'a message of 4,000 characters, ms': long(4000),
    'a message of 40,000 characters, ms': long(40_000),
  };
}
