/** What is kept of the record is a cache: damaged or dated ahead it is left aside, and made anew. */
import { beforeEach, describe, expect, it } from 'vitest';
import { openCalendar } from '../../src/maintenance/calendar.ts';
import {
  checkpointsOf,
  isWorthSaving,
  knownFromCheckpoints,
  WORTH_SAVING,
} from '../../src/commands/checkpoints.ts';
import { catchUp, nothingKnown, type Known } from '../../src/commands/current.ts';
import type { Store } from '../../src/index.ts';
import { demoTalk, NOW } from '../support/talk.ts';

const calendar = openCalendar('Europe/Copenhagen');
const A_YEAR = 365 * 86_400_000;
let store: Store;
beforeEach(async () => {
  ({ store } = await demoTalk());
});

const knownAt = (now: number): Promise<Known> =>
  store.read(({ journal }) => catchUp([nothingKnown(calendar)], journal, now, calendar));
const keep = (known: Known, damage = (json: string) => json): Promise<void> =>
  store.transact(async ({ post }) => {
    await post.dropCheckpoints();
    const rows = checkpointsOf(known, calendar);
    await post.saveCheckpoints(rows.map((row) => ({ ...row, json: damage(row.json) })));
  });
const kept = (): Promise<Known | undefined> => store.read((view) => knownFromCheckpoints(view, calendar));

describe('checkpoints', () => {
  it('give the record back', async () => {
    const known = await knownAt(NOW);
    await keep(known);
    expect((await kept())?.record.machines.get('alder')).toEqual(known.record.machines.get('alder'));
  });

  it.each([
    ['cut off', (json: string) => json.slice(0, json.length / 2)],
    ['emptied', () => ''],
    ['replaced', () => '[1]'],
  ])('that are %s count as none', async (_how, damage) => {
    await keep(await knownAt(NOW), damage);
    expect(await kept()).toBeUndefined();
  });

  it('made by a question about next year serve today as well', async () => {
    await keep(await knownAt(NOW + A_YEAR));
    expect((await kept())?.now).toBeLessThanOrEqual(NOW);
  });

  it('that look ahead of the present are replaced', async () => {
    const known = { ...(await knownAt(NOW)), position: WORTH_SAVING };
    expect(isWorthSaving(known, known)).toBe(false);
    expect(isWorthSaving(known, { ...known, now: known.now + A_YEAR })).toBe(true);
  });
});
