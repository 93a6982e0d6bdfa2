import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { TASKS } from '../../../src/maintenance/codes.ts';
import { RECIPES } from '../../../src/maintenance/how/index.ts';

const folder = new URL('../../../src/maintenance/how/', import.meta.url);
const sources = readdirSync(folder).map((name) => readFileSync(new URL(name, folder), 'utf8'));
/** A recipe's own line in its subsystem's table: two spaces, the code, a colon. */
const tableLines = (task: string): number =>
  sources
    .join('\n')
    .split('\n')
    .filter((line) => line.startsWith(`  '${task}': `)).length;

describe('the list of recipes', () => {
  it('holds every task but the two that are always closed', () => {
    const missing = TASKS.filter((task) => !(task in RECIPES));
    expect(missing.toSorted()).toEqual(['replace-control-board', 'replace-power-supply']);
  });

  it('holds each task once, so that no table silently overrides another', () => {
    for (const task of Object.keys(RECIPES)) expect(tableLines(task), task).toBe(1);
  });
});
