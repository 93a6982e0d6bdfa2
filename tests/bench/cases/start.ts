/** A fresh process to the printed digest: the demo conversation, and a database of one's own. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Figures } from '../case.ts';

const RUNS = 7;
const MAIN = 'dist/adapters/main.js';

function timed(args: readonly string[], input = ''): number {
  const times = Array.from({ length: RUNS }, () => {
    const from = performance.now();
    const { status, stderr } = spawnSync(process.execPath, [MAIN, ...args], { input, encoding: 'utf8' });
    if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}: ${stderr}`);
    return performance.now() - from;
  });
  return times.toSorted((a, b) => a - b)[RUNS >> 1] ?? NaN;
}

export async function run(): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'));
  try {
    const db = join(folder, 'shop.sqlite');
    timed(['enrol', '--db', db, 'demo-data/workshop.yaml']);
    return {
      'fettle chat on the demo, to its end, s': timed(['chat']) / 1000,
      'fettle digest on a database, s': timed(['digest', '--db', db]) / 1000,
      'node alone, s': spawnMs() / 1000,
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function spawnMs(): number {
  const from = performance.now();
  spawnSync(process.execPath, ['-e', '0']);
  return performance.now() - from;
}
