import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { buildDemo, demoTemplate } from '../../demo-data/build.ts';
import type { Demo } from '../../demo-data/build.ts';
import { fillWithDemo } from '../../demo-data/fill.ts';
import { REFERENCE_DAY, shiftDates } from '../../demo-data/shift.ts';
import { enrolment } from '../../src/commands/enrol.ts';
import { openCalendar } from '../../src/maintenance/calendar.ts';
import { dueRows } from '../../src/maintenance/due/rows.ts';
import type { DueRow, State } from '../../src/maintenance/due/row.ts';
import type { EntryKind, Instant } from '../../src/maintenance/entry/entry.ts';
import { ENTRY_SCHEMAS } from '../../src/maintenance/entry/schema.ts';
import { VERSIONS } from '../../src/maintenance/entry/upcast.ts';
import { foldShop } from '../../src/maintenance/record/fold.ts';
import type { ShopRecord } from '../../src/maintenance/record/record.ts';
import { openMemoryStore } from '../../src/store/open.ts';
import { parseWorkshop } from '../../src/workshop.ts';
import { workshopSchema } from '../../src/workshop/schema.ts';

const calendar = openCalendar('Europe/Copenhagen');
const WEDNESDAY = Date.parse('2026-03-11T08:00:00+01:00');

interface Shown {
  demo: Demo;
  shop: ShopRecord;
  rows: DueRow[];
}
function shown(now: Instant): Shown {
  const demo = buildDemo(now);
  const shop = foldShop(demo.entries, calendar);
  const { workingDays, holidays } = demo.workshop.workshop;
  return { demo, shop, rows: dueRows(shop, { now, calendar, workingDays, holidays }) };
}
const rowOf = (rows: readonly DueRow[], machine: string, task: string): DueRow | undefined =>
  rows.find((row) => row.machine === machine && row.task === task);
const inState = (rows: readonly DueRow[], state: State): string[] =>
  rows.filter((row) => row.state === state && !row.idle).map((row) => `${row.machine} ${row.task}`);

const wednesday = shown(WEDNESDAY);

describe('the demo as of its reference day agrees with the examples', () => {
  it('Alder: about 4,100 h, rods 32 h over their 300', () => {
    expect(wednesday.shop.machines.get('alder')?.totals.hours).toBeCloseTo(4100, 6);
    const rods = rowOf(wednesday.rows, 'alder', 'lubricate-rods');
    expect(rods).toMatchObject({ state: 'overdue', trigger: 'hours', interval: 300, since: { why: 'done' } });
    expect(rods?.used).toBeCloseTo(332, 6);
    expect(rods?.since?.hours).toBeCloseTo(3768, 6);
    expect(calendar.dateOf(rods?.since?.at ?? 0)).toBe('2025-12-02');
  });

  it('Birch: 2,311.5 h, a nozzle of 412 h and 166 days', () => {
    const birch = wednesday.shop.machines.get('birch');
    expect(birch?.totals.hours).toBeCloseTo(2311.5, 6);
    expect(birch?.totals.hours).toBeCloseTo((birch?.parts.nozzle?.totals.hours ?? 0) + 412, 6);
    expect(calendar.dayOf(WEDNESDAY) - (birch?.parts.nozzle?.day ?? 0)).toBe(166);
    expect(birch?.symptoms['no-extrusion']?.count).toBeGreaterThanOrEqual(4);
  });

  it('Birch: its tube falls due on Friday', () => {
    expect(rowOf(wednesday.rows, 'birch', 'check-tube')).toMatchObject({
      state: 'coming-up',
      used: 88,
      interval: 90,
    });
  });

  it('Maple: a brass nozzle of 201 of 180 run days', () => {
    expect(rowOf(wednesday.rows, 'maple', 'replace-nozzle')).toMatchObject({
      state: 'overdue', trigger: 'runDays', used: 201, interval: 180,
    }); // prettier-ignore
  });

  it('Cedar is out of use since Monday: no heat; Rowan is three weeks old and new', () => {
    const cedar = wednesday.shop.machines.get('cedar');
    expect(calendar.dateOf(cedar?.down?.at ?? 0)).toBe('2026-03-09');
    expect(cedar?.symptoms['no-heat']?.open).toBeDefined();
    const rowan = wednesday.shop.machines.get('rowan');
    expect(rowan).toMatchObject({ startedNew: true, inUseSince: calendar.dayOf(WEDNESDAY) - 21 });
    expect(wednesday.rows.filter((row) => row.machine === 'rowan' && row.state === 'no-record')).toEqual([]);
  });

  it('Juniper was held and released; nothing is held now', () => {
    expect([...wednesday.shop.machines.values()].filter((machine) => machine.hold)).toEqual([]);
    expect(wednesday.demo.entries).toContainEqual(
      expect.objectContaining({ kind: 'released', falseAlarm: true }),
    );
  });

  it("three are overdue, and one brass nozzle is left, which Maple's swap will take", () => {
    expect(inState(wednesday.rows, 'overdue').toSorted()).toEqual([
      'alder lubricate-rods',
      'hazel check-wheels',
      'maple replace-nozzle',
    ]);
    expect(wednesday.shop.shelf).toContainEqual({
      part: 'nozzle', fitted: 'brass 0.4', count: 1, deliveryDays: 5, price: 24,
    }); // prettier-ignore
  });

  it('has the pieces for every answer: a put-off, a claim, unlogged hours, a nozzle worn by nylon-CF', () => {
    expect(rowOf(wednesday.rows, 'juniper', 'lubricate-rails')).toMatchObject({ state: 'put-off' });
    expect(wednesday.shop.machines.get('hazel')?.claims['check-wheels']).toBeDefined();
    expect(wednesday.shop.machines.get('elm')?.unloggedHours).toBeCloseTo(3, 6);
    const nozzle = rowOf(wednesday.rows, 'cedar', 'replace-nozzle');
    expect(nozzle?.used).toBeGreaterThan(0.6);
    expect(nozzle?.used).toBeLessThan(0.8);
  });
});

/** Sixty days over three years: month ends, leap day, Sundays, the days round both changes of the clock. */
const SPECIAL = [
  '2024-02-29T09:00:00+01:00', '2028-02-29T23:59:00+01:00', '2026-03-28T08:00:00+01:00',
  '2026-03-29T00:01:00+01:00', '2026-03-29T08:00:00+02:00', '2026-03-30T08:00:00+02:00',
  '2026-10-24T08:00:00+02:00', '2026-10-25T02:30:00+02:00', '2026-10-25T02:30:00+01:00',
  '2026-10-26T08:00:00+01:00', '2026-12-31T23:30:00+01:00', '2027-01-01T00:30:00+01:00',
  '2026-05-25T08:00:00+02:00', '2026-11-25T00:00:00+01:00', '2026-11-29T12:00:00+01:00',
]; // prettier-ignore
const DAY = 86_400_000;
const SPREAD = Array.from({ length: 45 }, (_, index) => WEDNESDAY + index * 17 * DAY);
const TODAYS = [...SPECIAL.map((when) => Date.parse(when)), ...SPREAD];

describe('whatever today is', () => {
  it.each(TODAYS.map((now) => [calendar.format(now), now] as const))('%s', (_, now) => {
    const { demo, shop, rows } = shown(now);
    // nothing lies ahead, and ids are distinct
    expect(demo.entries.filter((entry) => Math.max(entry.at, entry.saidAt, entry.writtenAt) > now)).toEqual(
      [],
    );
    expect(new Set(demo.entries.map((entry) => entry.id)).size).toBe(demo.entries.length);
    // nothing contradicts anything
    expect([...shop.machines.values()].flatMap((machine) => machine.conflicts)).toEqual([]);
    expect(shop.conflicts).toEqual([]);
    // something of everything
    for (const state of ['overdue', 'due', 'coming-up', 'no-record', 'fine', 'put-off'] as const)
      expect(inState(rows, state).length, state).toBeGreaterThan(0);
    expect(inState(rows, 'overdue').length).toBeLessThanOrEqual(6);
    expect(shop.machines.get('cedar')?.down).toBeDefined();
    expect(rowOf(rows, 'alder', 'lubricate-rods')?.used).toBeCloseTo(332, 6);
    expect(rowOf(rows, 'maple', 'replace-nozzle')?.used).toBe(201);
    // the file says what the record says
    expect(parseWorkshop(demo.workshopText, now).ok).toBe(true);
    expect(enrolment(demo.workshop, shop, { now, calendar }).drafts).toEqual([]);
  });
});

describe('the journal', () => {
  it('is the same every time', () => {
    expect(JSON.stringify(buildDemo(WEDNESDAY))).toBe(JSON.stringify(wednesday.demo));
  });

  it('is the same at any hour of the day', () => {
    expect(buildDemo(WEDNESDAY - 7 * 3_600_000).entries).toEqual(wednesday.demo.entries);
    expect(buildDemo(WEDNESDAY + 15 * 3_600_000).entries).toEqual(wednesday.demo.entries);
  });

  it('holds entries as the journal takes them', () => {
    for (const entry of wednesday.demo.entries)
      expect(ENTRY_SCHEMAS[entry.kind].safeParse(entry).error?.message ?? 'fits').toBe('fits');
  });

  it('tells of everything but a machine that left', () => {
    const kinds = new Set<EntryKind>(wednesday.demo.entries.map((entry) => entry.kind));
    expect(Object.keys(VERSIONS).filter((kind) => ![...kinds].some((told) => told === kind))).toEqual([
      'retired',
    ]);
  });

  it('has a late entry, an unsure one, an amendment and a take-back', () => {
    const { entries } = wednesday.demo;
    expect(entries.some((entry) => entry.precision === 'day' && entry.saidAt - entry.at > 2 * DAY)).toBe(
      true,
    );
    expect(entries.some((entry) => entry.precision === 'about')).toBe(true);
    const corrected = entries.flatMap((entry) =>
      entry.kind === 'amended' || entry.kind === 'takenBack' ? [entry.target] : [],
    );
    expect(corrected).toHaveLength(2);
    expect(entries.filter((entry) => corrected.includes(entry.id)).map((entry) => entry.kind)).toEqual([
      'usage',
      'usage',
    ]);
  });

  it('prints on open days only, and never more than the day has', () => {
    const perDay = new Map<string, number>();
    for (const entry of wednesday.demo.entries) {
      if (entry.kind !== 'usage') continue;
      const day = `${entry.machine} ${calendar.dateOf(entry.at)}`;
      perDay.set(day, (perDay.get(day) ?? 0) + (entry.hours ?? 0));
    }
    expect(Math.max(...perDay.values())).toBeLessThan(16);
    const { holidays } = wednesday.demo.workshop.workshop;
    const closed = [...perDay.keys()].filter(
      (key) => holidays.includes(key.slice(-10)) || new Date(`${key.slice(-10)}T00:00:00Z`).getUTCDay() === 0,
    );
    expect(closed).toEqual([]);
  });

  it('is written by the people of the file', () => {
    const known = new Set(wednesday.demo.people.map((person) => person.id));
    expect(wednesday.demo.entries.filter((entry) => !known.has(entry.by))).toEqual([]);
  });

  it('goes into an empty database whole', async () => {
    const store = await openMemoryStore();
    await fillWithDemo(store, WEDNESDAY);
    const found = await store.read(async ({ journal, post }) => ({
      position: await journal.position(),
      people: (await post.people()).map((person) => person.name).toSorted(),
      workshop: await post.workshop(),
    }));
    expect(found.position).toBe(wednesday.demo.entries.length);
    expect(found.people).toEqual(['Ines', 'Odd', 'Priya', 'Tomasz']);
    expect(JSON.parse(found.workshop ?? '')).toEqual(wednesday.demo.workshop);
    await store.close();
  });
});

/** Field names of all blocks of a JSON schema; codes (tasks, parts) are keys of another kind. */
function fieldsIn(schema: unknown, found = new Set<string>()): Set<string> {
  if (typeof schema !== 'object' || schema === null) return found;
  for (const [key, value] of Object.entries(schema)) {
    if (key === 'properties') for (const field of Object.keys(value)) found.add(field);
    fieldsIn(value, found);
  }
  return found;
}

describe('the workshop file', () => {
  it('moves every date by the same number of days', () => {
    expect(shiftDates('on 2026-03-11, not 2026-02-30', '2028-02-29')).toBe('on 2028-02-29, not 2026-02-30');
    expect(shiftDates(demoTemplate(), REFERENCE_DAY)).toBe(demoTemplate());
    expect(shiftDates(shiftDates(demoTemplate(), '2026-10-25'), REFERENCE_DAY)).not.toBe(demoTemplate());
    expect(demoTemplate()).toContain(`Wednesday ${REFERENCE_DAY}`);
  });

  it('shows every field that a workshop file can have', () => {
    const text = demoTemplate();
    const fields = fieldsIn(z.toJSONSchema(workshopSchema, { io: 'input' }));
    expect(fields.size).toBeGreaterThan(60);
    expect([...fields].filter((field) => !new RegExp(`(?:^|[\\s{])${field}:`, 'mu').test(text))).toEqual([]);
  });
});
