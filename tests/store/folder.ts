/** A folder of its own for each test file's databases. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** Gives a fresh path each time; the folder goes when the test file is through. */
export function freshFiles(): () => string {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-store-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  let made = 0;
  return () => join(folder, `${(made += 1)}.sqlite`);
}
