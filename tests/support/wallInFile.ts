/** Posts of a platform in a file, a line each: they stay when the process that posted is killed. */
import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import type { Outgoing } from '../../src/index.ts';
import type { Shown, Wall } from './fakePlatform.ts';

type Written = { added: Shown } | { changed: string; outgoing: Outgoing };

export function wallInFile(file: string): Wall {
  const posts = new Map<string, Shown>();
  const take = (written: Written): void => {
    if ('added' in written) posts.set(written.added.id, written.added);
    else {
      const before = posts.get(written.changed);
      if (before) posts.set(before.id, { ...before, outgoing: written.outgoing, edits: before.edits + 1 });
    }
  };
  const text = existsSync(file) ? readFileSync(file, 'utf8') : '';
  for (const line of text.split('\n').slice(0, -1)) take(JSON.parse(line));
  const write = (written: Written): void => {
    appendFileSync(file, `${JSON.stringify(written)}\n`);
    take(written);
  };
  return {
    add: (added) => write({ added }),
    change(changed, outgoing) {
      if (!posts.has(changed)) return false;
      write({ changed, outgoing });
      return true;
    },
    all: () => [...posts.values()],
  };
}
