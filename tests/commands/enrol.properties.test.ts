import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { enrolment } from '../../src/commands/enrol.ts';
import { dateOfDay, dayOfDate, openCalendar } from '../../src/maintenance/calendar.ts';
import type { Entry } from '../../src/maintenance/entry/entry.ts';
import { entryId } from '../../src/maintenance/entry/id.ts';
import { foldShop } from '../../src/maintenance/record/fold.ts';
import { parseWorkshop } from '../../src/workshop.ts';
import type { Workshop } from '../../src/workshop.ts';

const calendar = openCalendar('Europe/Copenhagen');
const NOW = Date.parse('2026-03-11T08:00:00+01:00');
const DAY = 86_400_000;

const date = fc.integer({ min: dayOfDate('2024-01-01'), max: dayOfDate('2026-03-11') }).map(dateOfDay);
const hours = fc.integer({ min: 0, max: 5000 });
const some = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: undefined });
const block = <Value>(codes: readonly string[], value: fc.Arbitrary<Value>) =>
  fc.dictionary(fc.constantFrom(...codes), value, { maxKeys: 3 });

const machine = fc.record({
  aliases: fc.constantFrom([], ['#1'], ['#1', 'The Old One']),
  build: fc.constantFrom(
    {},
    { feed: 'direct' },
    { hotEnd: 'lined', nozzle: { boreMm: 0.4 }, probe: 'fitted' },
  ),
  startHours: some(hours),
  inUseSince: some(date),
  lastDone: block(['level-bed', 'dust-off', 'replace-nozzle'], fc.record({ on: date, hours: some(hours) })),
  parts: block(
    ['liner', 'guide-tube', 'x-belt'],
    fc.record({ fitted: fc.constantFrom('brass 0.4', 'PTFE'), on: some(date), hours: some(hours) }),
  ),
  intervals: block(
    ['level-bed', 'dust-off'],
    fc.record({ days: fc.integer({ min: 1, max: 90 }), source: fc.constant('manual') }),
  ),
});
const line = fc.record({
  count: fc.integer({ min: 0, max: 9 }),
  price: some(fc.integer({ min: 1, max: 90 })),
});
const sheet = fc.record({ machine, brass: line, hardened: line, oil: line });

/** A machine that is new has neither a counter nor anything from before. */
function file({
  machine: elm,
  brass,
  hardened,
  oil,
}: typeof sheet extends fc.Arbitrary<infer Value> ? Value : never): Workshop {
  const text = stringify({
    workshop: { name: 'Test', zone: 'Europe/Copenhagen' },
    machines: [
      { name: 'Elm', ...elm },
      { name: 'Oak', build: { feed: 'bowden' }, new: true, parts: { nozzle: { fitted: 'brass 0.6' } } },
    ],
    shelf: [
      { part: 'nozzle', fitted: 'brass 0.4', ...brass },
      { part: 'nozzle', fitted: 'hardened 0.6', ...hardened },
      { part: 'oil', ...oil },
    ],
  });
  const parsed = parseWorkshop(text, NOW);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.workshop;
}

function enrolled(workshop: Workshop, entries: readonly Entry[], now: number, before?: Workshop): Entry[] {
  const moment = { now, calendar, ...(before ? { before } : {}) };
  const { drafts } = enrolment(workshop, foldShop(entries, calendar), moment);
  return drafts.map((draft, act) => ({
    ...draft, id: entryId(`enrol:${now}`, act, 0), v: 1, saidAt: now, writtenAt: now, by: 'ines', platform: 'test',
    message: `enrol:${now}`, act,
  })); // prettier-ignore
}

describe('whatever the file says', () => {
  it('enrolling it again adds nothing', () => {
    fc.assert(
      fc.property(sheet, (said) => {
        const workshop = file(said);
        const first = enrolled(workshop, [], NOW);
        expect(enrolled(workshop, first, NOW + DAY)).toEqual([]);
        expect(enrolled(workshop, first, NOW + DAY, workshop)).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  it('a changed file is taken up once', () => {
    fc.assert(
      fc.property(sheet, sheet, (was, becomes) => {
        const [before, after] = [file(was), file(becomes)];
        const first = enrolled(before, [], NOW);
        const second = [...first, ...enrolled(after, first, NOW + DAY, before)];
        expect(enrolled(after, second, NOW + 2 * DAY, after)).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});
