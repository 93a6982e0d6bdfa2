/**
 * `npx tsx tests/language/score.ts [--fails N] [FILE ...]`: how a corpus is read, by the rules of the comparison;
 * without a file all of `corpus/` but what is kept unseen. Each failure is printed with the trail that made the reading.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { type Label, matches, mustBeQuiet, writes } from './support/compare.ts';
import { NOW, readDemo } from './support/workshop.ts';

const args = process.argv.slice(2);
const at = args.indexOf('--fails');
const fails = at < 0 ? 0 : Number(args.splice(at, 2)[1]);
const folder = new URL('./corpus/', import.meta.url);
const all = [...readdirSync(folder), ...readdirSync(new URL('fresh/', folder)).map((f) => `fresh/${f}`)];
const files =
  args.length > 0 ? args : all.filter((f) => f.endsWith('.jsonl')).map((f) => new URL(f, folder).pathname);

for (const file of files) {
  const labels = readFileSync(file, 'utf8')
    .split('\n')
    .filter(Boolean)
    .map((line): Label => JSON.parse(line));
  let [exact, quiet, written, shown] = [0, 0, 0, 0];
  const lines: string[] = [];
  for (const label of labels) {
    const text =
      typeof label.text === 'string' ? label.text : label.text.repeat[0].repeat(label.text.repeat[1]);
    const reading = readDemo(text, NOW);
    const acts = reading.acts.map(({ act }) => ({ ...act }));
    const right = matches(label, acts);
    if (right) exact += 1;
    if (mustBeQuiet(label)) quiet += 1;
    const isFalse = mustBeQuiet(label) && writes(acts);
    if (isFalse) written += 1;
    if (right || (shown += 1) > fails) continue;
    const trail = reading.acts.map((r) => r.trail.map((t) => t.rule).join(' < ')).join(' | ');
    lines.push(
      `${label.id}${isFalse ? ' FALSE WRITE' : ''} ${JSON.stringify(text.slice(0, 300))}\n  want ${JSON.stringify(label.acts)}\n  got  ${JSON.stringify(acts)}\n  by   ${trail}`,
    );
  }
  console.log(
    `${file.split('/').slice(-2).join('/')}: ${exact}/${labels.length} exact (${((100 * exact) / labels.length).toFixed(1)} %), false writes ${written} of ${quiet}`,
  );
  for (const line of lines) console.log(line);
}
