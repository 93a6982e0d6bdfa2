import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { transcript, withTranscript } from './support/transcript.ts';

const readme = readFileSync('README.md', 'utf8');
const scripts: unknown = JSON.parse(readFileSync('package.json', 'utf8')).scripts;

describe('the README', () => {
  it('shows the conversation that the program holds today (npm run readme writes it anew)', async () => {
    expect(withTranscript(readme, await transcript())).toBe(readme);
  });

  it('names only scripts that exist', () => {
    const named = [...readme.matchAll(/npm (?:run )?(?!ci)([\w:]+)/gu)].map(([, name]) => name);
    expect(named.length).toBeGreaterThan(2);
    for (const name of named) expect(scripts).toHaveProperty([name ?? '']);
  });

  it('links only to files that exist', () => {
    for (const [, path = ''] of readme.matchAll(/\]\((?!http)([^)]+)\)/gu))
      expect(() => readFileSync(path)).not.toThrow();
  });
});
