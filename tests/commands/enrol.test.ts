import { describe, expect, it } from 'vitest';
import { enrolment } from '../../src/commands/enrol.ts';
import type { Enrolment } from '../../src/commands/enrol.ts';
import { openCalendar } from '../../src/maintenance/calendar.ts';
import type { Draft, Entry, EntryFields } from '../../src/maintenance/entry/entry.ts';
import { entryId } from '../../src/maintenance/entry/id.ts';
import { foldShop } from '../../src/maintenance/record/fold.ts';
import { parseWorkshop } from '../../src/workshop.ts';
import type { Workshop } from '../../src/workshop.ts';

const calendar = openCalendar('Europe/Copenhagen');
const at = (when: string): number => Date.parse(`${when}+01:00`);
const NOW = at('2026-03-11T08:00:00');

const BIRCH = `  - name: Birch
    aliases: ['#2']
    startHours: 1560
    build: {feed: bowden, hotEnd: lined, nozzle: {material: brass, boreMm: 0.4}}
    lastDone:
      level-bed: {on: 2026-03-02, hours: 1540}
      check-wiring: {on: 2026-02-01}
    parts:
      nozzle: {fitted: brass 0.4, on: 2026-01-05, hours: 1400}
      liner: {fitted: PTFE}
    intervals:
      check-wiring: {days: 45, source: workshop}
`;
const ROWAN = `  - name: Rowan
    new: true
    inUseSince: 2026-03-09
    build: {feed: direct}
    parts: {nozzle: {fitted: brass 0.4}}
`;
const SHELF = `shelf:
  - {part: nozzle, fitted: brass 0.4, count: 3, deliveryDays: 5, price: 24}
`;
const file = (body: string): Workshop => {
  const parsed = parseWorkshop(`workshop: {name: Test, zone: Europe/Copenhagen}\n${body}`);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.workshop;
};
const WHOLE = `machines:\n${BIRCH}${ROWAN}${SHELF}room:\n  lastDone: {check-dryer: {on: 2026-03-01}}\n  intervals: {check-dryer: {days: 10, source: workshop}}\n`;

/** A journal in memory: enrol the file, say something, look at what is missing now. */
function shop() {
  const entries: Entry[] = [];
  let messages = 0;
  const write = (drafts: readonly Draft[], now: number): void => {
    messages += 1;
    const message = `test:${messages}`;
    for (const [act, draft] of drafts.entries())
      entries.push({
        id: entryId(message, act, 0), v: 1, saidAt: now, writtenAt: now, by: 'ines', platform: 'test', message, act, ...draft,
      }); // prettier-ignore
  };
  const enrol = (workshop: Workshop, now = NOW, before?: Workshop): Enrolment => {
    const moment = { now, calendar, ...(before ? { before } : {}) };
    const result = enrolment(workshop, foldShop(entries, calendar), moment);
    write(result.drafts, now);
    return result;
  };
  const say = (when: string, fields: EntryFields): void =>
    write([{ ...fields, at: at(when), precision: 'instant' }], at(when));
  return { enrol, say, record: () => foldShop(entries, calendar) };
}
const kinds = (result: Enrolment): string[] => result.drafts.map((draft) => draft.kind);

describe('the first time', () => {
  it('everything in the file becomes a fact, machine by machine', () => {
    const { enrol } = shop();
    const first = enrol(file(WHOLE));
    expect(first.added).toEqual(['birch', 'rowan']);
    expect([first.changed, first.unchanged, first.missing, first.notes]).toEqual([[], [], [], []]);
    expect(kinds(first)).toEqual([
      'enrolled', 'stated', 'stated', 'stated', 'stated', 'intervalSet',
      'enrolled', 'stated',
      'stated', 'intervalSet',
      'stockCounted',
    ]); // prettier-ignore
    expect(first.drafts.every((draft) => draft.at === NOW)).toBe(true);
  });

  it('takes the day of enrolment where the file does not say since when', () => {
    const { enrol } = shop();
    expect(enrol(file(WHOLE)).drafts[0]).toMatchObject({
      machine: 'birch',
      inUseSince: '2026-03-11',
      startHours: 1560,
    });
  });

  it('makes the record say what the file says', () => {
    const { enrol, record } = shop();
    enrol(file(WHOLE));
    const birch = record().machines.get('birch');
    expect(birch?.totals.hours).toBe(1560);
    expect(birch?.tasks['level-bed']).toMatchObject({ why: 'stated', totals: { hours: 1540 } });
    expect(birch?.parts.nozzle).toMatchObject({ why: 'stated', ageKnown: true, text: 'brass 0.4' });
    expect(birch?.parts.liner).toMatchObject({ ageKnown: false });
    expect(record().room.tasks['check-dryer']).toMatchObject({ why: 'stated' });
    expect(record().shelf).toMatchObject([
      { part: 'nozzle', fitted: 'brass 0.4', count: 3, deliveryDays: 5 },
    ]);
  });

  it('what is in a new machine has been in it since it started', () => {
    const { enrol, record } = shop();
    expect(enrol(file(WHOLE)).drafts).toContainEqual(
      expect.objectContaining({
        kind: 'stated',
        machine: 'rowan',
        part: 'nozzle',
        on: '2026-03-09',
        hours: 0,
      }),
    );
    expect(record().machines.get('rowan')?.parts.nozzle?.ageKnown).toBe(true);
  });
});

describe('the same file again', () => {
  it('adds nothing', () => {
    const { enrol } = shop();
    enrol(file(WHOLE));
    const again = enrol(file(WHOLE), at('2026-03-12T08:00:00'));
    expect(again.drafts).toEqual([]);
    expect(again.unchanged).toEqual(['birch', 'rowan']);
    expect([again.added, again.changed]).toEqual([[], []]);
  });

  it('adds nothing after a month of work: what was done since stands', () => {
    const { enrol, say } = shop();
    const workshop = file(WHOLE);
    enrol(workshop);
    say('2026-03-12T16:00:00', { kind: 'usage', machine: 'birch', hours: 6, material: 'pla' });
    say('2026-03-13T09:00:00', { kind: 'done', machine: 'birch', task: 'level-bed' });
    say('2026-03-13T09:10:00', { kind: 'swapped', machine: 'birch', part: 'nozzle', reason: 'worn' });
    say('2026-03-13T09:20:00', { kind: 'swapped', machine: 'birch', part: 'liner', reason: 'planned' });
    say('2026-03-14T09:00:00', { kind: 'meter', machine: 'birch', hours: 1570 });
    expect(enrol(workshop, at('2026-04-11T08:00:00'), workshop).drafts).toEqual([]);
  });
});

describe('a changed file', () => {
  const after = (changed: string, was = WHOLE): Enrolment => {
    const { enrol } = shop();
    enrol(file(was));
    const result = enrol(file(changed), at('2026-03-20T08:00:00'), file(was));
    expect(enrol(file(changed), at('2026-03-21T08:00:00'), file(changed)).drafts).toEqual([]);
    return result;
  };

  it('describes the machine anew: aliases and build, and only what differs', () => {
    const result = after(
      WHOLE.replace("['#2']", "['#2', the old one]").replace('hotEnd: lined', 'hotEnd: all-metal'),
    );
    expect(result.changed).toEqual(['birch']);
    expect(result.drafts).toMatchObject([
      {
        kind: 'changed',
        machine: 'birch',
        set: { aliases: ['#2', 'the old one'], build: { hotEnd: 'all-metal' } },
      },
    ]);
  });

  it('does not care in which order the features stand', () => {
    const turned = 'build: {nozzle: {boreMm: 0.4, material: brass}, hotEnd: lined, feed: bowden}';
    expect(after(WHOLE.replace(/build: \{feed: bowden.*/u, turned)).drafts).toEqual([]);
  });

  it('adds a machine', () => {
    const result = after(
      WHOLE,
      `machines:\n${BIRCH}${SHELF}room:\n  lastDone: {check-dryer: {on: 2026-03-01}}\n  intervals: {check-dryer: {days: 10, source: workshop}}\n`,
    );
    expect([result.added, result.unchanged]).toEqual([['rowan'], ['birch']]);
  });

  it('sets an interval anew', () => {
    expect(after(WHOLE.replace('days: 45', 'days: 40')).drafts).toMatchObject([
      { kind: 'intervalSet', task: 'check-wiring', interval: { days: 40 }, source: 'workshop' },
    ]);
  });

  it('states a later day, and puts the hours of the same day right', () => {
    expect(after(WHOLE.replace('on: 2026-02-01', 'on: 2026-02-05')).drafts).toMatchObject([
      { kind: 'stated', task: 'check-wiring', on: '2026-02-05' },
    ]);
    expect(after(WHOLE.replace('hours: 1540', 'hours: 1544')).drafts).toMatchObject([
      { kind: 'stated', task: 'level-bed', hours: 1544 },
    ]);
  });

  it('tells when a day was put back, which the record does not take', () => {
    const result = after(WHOLE.replace('on: 2026-03-02', 'on: 2026-02-27'));
    expect(result.drafts).toEqual([]);
    expect(result.notes).toEqual([expect.stringContaining('level-bed is on record as of 2026-03-02')]);
  });

  it('does not take a new counter for a change of the file', () => {
    const { enrol, say } = shop();
    enrol(file(WHOLE));
    say('2026-03-12T09:00:00', { kind: 'meter', machine: 'birch', hours: 3, newCounter: true });
    expect(enrol(file(WHOLE), at('2026-03-20T08:00:00'), file(WHOLE)).drafts).toEqual([]);
    expect(enrol(file(WHOLE), at('2026-03-21T08:00:00')).drafts).toEqual([]);
  });

  it('counts the shelf again only where its figure was changed in the file', () => {
    expect(after(WHOLE.replace('count: 3', 'count: 8')).drafts).toMatchObject([
      { kind: 'stockCounted', count: 8 },
    ]);
  });

  it('keeps the running count when only the price changes', () => {
    const { enrol, say } = shop();
    enrol(file(WHOLE));
    say('2026-03-13T09:10:00', { kind: 'swapped', machine: 'birch', part: 'nozzle', reason: 'worn' });
    const dearer = file(WHOLE.replace('price: 24', 'price: 26'));
    expect(enrol(dearer, at('2026-03-20T08:00:00'), file(WHOLE)).drafts).toMatchObject([
      { kind: 'stockCounted', count: 2, price: 26 },
    ]);
  });

  it('never overwrites a running count when nobody knows what the file said before', () => {
    const { enrol, say } = shop();
    enrol(file(WHOLE));
    say('2026-03-13T09:10:00', { kind: 'stockMoved', part: 'nozzle', fitted: 'brass 0.4', change: 4 });
    expect(enrol(file(WHOLE), at('2026-03-20T08:00:00')).drafts).toEqual([]);
  });

  it('retires nobody: a machine that is gone from the file is named', () => {
    const result = after(
      `machines:\n${BIRCH}${SHELF}room:\n  lastDone: {check-dryer: {on: 2026-03-01}}\n  intervals: {check-dryer: {days: 10, source: workshop}}\n`,
    );
    expect(result.missing).toEqual(['rowan']);
    expect(result.drafts).toEqual([]);
  });

  it('says that a retired machine does not come back under its old name', () => {
    const { enrol, say } = shop();
    enrol(file(WHOLE));
    say('2026-03-15T10:00:00', { kind: 'retired', machine: 'birch' });
    const result = enrol(file(WHOLE), at('2026-03-20T08:00:00'));
    expect(result.notes).toEqual([expect.stringContaining('Birch was retired on 2026-03-15')]);
    expect([result.drafts, result.missing, result.added]).toEqual([[], [], []]);
  });

  it('says that a name is still in use by a machine that is gone from the file', () => {
    const { enrol } = shop();
    enrol(file(WHOLE));
    const given = file(`machines:\n${ROWAN.replace('    new: true', '    aliases: [birch]\n    new: true')}`);
    expect(enrol(given, at('2026-03-20T08:00:00')).notes).toEqual([
      expect.stringContaining('birch is an alias of Rowan now, and still the name of a machine on record'),
    ]);
  });

  it('renames a machine that has its old name among its aliases: its record goes on', () => {
    const { enrol } = shop();
    enrol(file(WHOLE));
    const renamed = file(WHOLE.replace('name: Birch', 'name: Willow').replace("['#2']", "['#2', birch]"));
    const result = enrol(renamed, at('2026-03-20T08:00:00'), file(WHOLE));
    expect([result.changed, result.added, result.missing, result.notes]).toEqual([['birch'], [], [], []]);
    expect(result.drafts).toMatchObject([{ kind: 'changed', machine: 'birch', set: { calledAs: 'Willow' } }]);
    expect(enrol(renamed, at('2026-03-21T08:00:00'), renamed).drafts).toEqual([]);
    // and back
    const back = enrol(file(WHOLE), at('2026-03-22T08:00:00'), renamed);
    expect(back.drafts).toMatchObject([{ kind: 'changed', machine: 'birch', set: { calledAs: 'Birch' } }]);
  });

  it('lets a name that was given in the chat stand against a file that says what it said before', () => {
    const { enrol, say } = shop();
    enrol(file(WHOLE));
    say('2026-03-15T10:00:00', { kind: 'changed', machine: 'birch', set: { calledAs: 'Willow' } });
    expect(enrol(file(WHOLE), at('2026-03-20T08:00:00'), file(WHOLE)).drafts).toEqual([]);
  });

  it('takes a machine of another name with another’s number for a new one', () => {
    const { enrol } = shop();
    enrol(file(WHOLE));
    const result = enrol(file(WHOLE.replace('name: Birch', 'name: Willow')), at('2026-03-20T08:00:00'));
    expect([result.added, result.missing]).toEqual([['willow'], ['birch']]);
  });

  it('keeps a name as its owner writes it', () => {
    const { enrol } = shop();
    const { drafts } = enrol(
      file('machines:\n  - {name: MK2 left, build: {}}\n  - {name: Oak, build: {}}\n'),
    );
    expect(drafts).toMatchObject([{ machine: 'mk2 left', calledAs: 'MK2 left' }, { machine: 'oak' }]);
    expect(drafts[1]).not.toHaveProperty('calledAs');
  });

  it('says that the first day of a machine is settled at enrolment', () => {
    const result = after(WHOLE.replace('inUseSince: 2026-03-09', 'inUseSince: 2026-03-08'));
    expect(result.notes).toEqual([expect.stringContaining('Rowan is on record since 2026-03-09')]);
  });
});
