/** What is due, from entries to rows: the whole way through the fold. */
import { describe, expect, it } from 'vitest';
import { digestOf } from '../../../src/maintenance/due/digest.ts';
import { dueJson } from '../../../src/maintenance/due/json.ts';
import { dueRow, dueRows } from '../../../src/maintenance/due/rows.ts';
import type { Entry } from '../../../src/maintenance/entry/entry.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import { BUILDS } from '../../support/builds.ts';
import type { DemoMachine } from '../../support/builds.ts';
import { enrolment, entry } from '../../support/entries.ts';
import { calendar, contextOn } from '../../support/machines.ts';

const day = (date: string, clock = '11:00'): string => `${date}T${clock}:00Z`;
const there = (machine: DemoMachine, startHours = 4000) => enrolment(machine, BUILDS[machine], startHours);
const shop = (...entries: Entry[]) => foldShop(entries, calendar);
const rowOf = (
  entries: Entry[],
  machine: DemoMachine,
  task: Parameters<typeof dueRow>[1],
  date = '2026-03-11',
) => {
  const record = foldShop(entries, calendar).machines.get(machine);
  return record && dueRow(record, task, contextOn(date));
};

describe('a quick log after a jam', () => {
  const log = [
    there('birch'),
    entry({ kind: 'done', machine: 'birch', task: 'clear-jam' }, { when: day('2026-03-10') }),
    entry({ kind: 'done', machine: 'birch', task: 'clean-feeder' }, { when: day('2026-03-10'), act: 1 }),
    entry(
      { kind: 'swapped', machine: 'birch', part: 'nozzle', reason: 'worn' },
      { when: day('2026-03-10'), act: 2 },
    ),
  ];
  it('leaves the tube to be looked at, because of the jam', () => {
    const row = rowOf(log, 'birch', 'check-tube');
    expect(row).toMatchObject({ state: 'due', trigger: 'raised', raisedBy: log[1]?.id, minutes: 5 });
  });
  it('does not ask for the feeder that was cleaned in the same breath', () =>
    expect(rowOf(log, 'birch', 'clean-feeder')).toMatchObject({ state: 'fine', raisedBy: null }));
  it('counts the new nozzle from its swap, and asks for the first layer', () => {
    expect(rowOf(log, 'birch', 'replace-nozzle')).toMatchObject({ since: { why: 'swapped' }, used: 0 });
    expect(rowOf(log, 'birch', 'check-first-layer')?.raisedBy).toBe(log[3]?.id);
  });
});

describe('oil that was told with its counter', () => {
  const entries = [
    there('alder', 3900),
    entry({ kind: 'stated', machine: 'alder', task: 'lubricate-rods', on: '2025-12-02', hours: 3768 }, { when: day('2026-01-01', '08:30') }),
    entry({ kind: 'meter', machine: 'alder', hours: 4100 }, { when: day('2026-03-10') }),
  ]; // prettier-ignore
  it('is overdue by its hours, as JSON', () => {
    const row = rowOf(entries, 'alder', 'lubricate-rods');
    expect(row && dueJson(row, calendar)).toMatchObject({
      machine: 'alder', task: 'lubricate-rods', state: 'overdue', idle: false, class: 'print quality', share: 1.1067,
      trigger: 'hours', used: 332, interval: 300, unit: 'h', grace: 30,
      since: { at: '2025-12-02T12:00:00+01:00', hours: 3768, why: 'stated' },
      source: 'common practice', raisedBy: null, putOff: null, minutes: 10,
    }); // prettier-ignore
  });
});

describe('taken back', () => {
  it('a jam that was not raises nothing', () => {
    const jam = entry(
      { kind: 'seen', machine: 'birch', symptom: 'no-extrusion' },
      { when: day('2026-03-10') },
    );
    const entries = [there('birch'), jam];
    expect(rowOf(entries, 'birch', 'check-tube')?.state).toBe('due');
    const undone = [
      ...entries,
      entry({ kind: 'takenBack', target: jam.id }, { when: day('2026-03-10', '12:00') }),
    ];
    expect(rowOf(undone, 'birch', 'check-tube')?.state).toBe('no-record');
  });
});

describe('a machine that came back', () => {
  const standing = (back: string) => [
    there('birch'),
    entry({ kind: 'stated', machine: 'birch' }, { when: day('2026-01-02') }),
    entry({ kind: 'usage', machine: 'birch', hours: 3 }, { when: day('2026-01-20') }),
    entry({ kind: 'down', machine: 'birch' }, { when: day('2026-01-21') }),
    entry({ kind: 'up', machine: 'birch' }, { when: day(back) }),
  ];
  const bundle = (back: string) =>
    dueRows(shop(...standing(back)), contextOn())
      .filter((row) => row.raised?.bundle === 'standing')
      .map(({ task }) => task);
  it('after 30 days is looked over, after 29 it is not', () => {
    expect(bundle('2026-02-20')).toContain('check-wheels');
    expect(bundle('2026-02-19')).toEqual([]);
  });
});

describe('a new shop', () => {
  it('is nothing overdue: safety is listed, the rest is a count', () => {
    const digest = digestOf(shop(there('alder'), there('birch'), there('elm')), contextOn());
    expect(digest.overdue).toEqual([]);
    expect(digest.due).toEqual([]);
    expect(digest.noRecord.machines).toBe(3);
    expect(new Set(digest.noRecord.safety.map(({ machine }) => machine))).toEqual(
      new Set(['alder', 'birch', 'elm', 'room']),
    );
  });
  it('smoke holds, and the wiring is on top of everything', () => {
    const smoke = entry(
      { kind: 'seen', machine: 'elm', symptom: 'smoke' },
      { when: day('2026-03-10', '21:40') },
    );
    const digest = digestOf(shop(there('elm'), smoke), contextOn());
    expect(digest.held).toMatchObject([{ machine: 'elm', symptom: 'smoke', entry: smoke.id }]);
    expect(digest.overdue[0]).toMatchObject({ machine: 'elm', task: 'check-wiring', raisedBy: smoke.id });
  });
});
