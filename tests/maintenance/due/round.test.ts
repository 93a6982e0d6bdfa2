/** The day's round: what is done in one opening, what is pulled forward, what is left for want of minutes. */
import { describe, expect, it } from 'vitest';
import { digestOf } from '../../../src/maintenance/due/digest.ts';
import type { DigestContext } from '../../../src/maintenance/due/digest.ts';
import { SET_UP_MINUTES, cutToMinutes, minutesIn } from '../../../src/maintenance/due/round.ts';
import { machineDue } from '../../../src/maintenance/due/rows.ts';
import { CAUTION_LINES } from '../../../src/maintenance/cautions/keys.ts';
import type { Build } from '../../../src/maintenance/machine.ts';
import type { MachineRecord, ShelfItem } from '../../../src/maintenance/record/record.ts';
import { BUILDS } from '../../support/builds.ts';
import { allDone, contextOn, emptyRoom, recordOf, shopOf, sixDaysAWeek } from '../../support/machines.ts';
import type { Story } from '../../support/machines.ts';

/** The room is in order, so that only machines are in the round. */
const ROOM = emptyRoom({ baseline: '2026-03-10' });
const FRESH = '2026-03-10 20:00';
const birch = ({ done, ...story }: Story) =>
  recordOf('birch', BUILDS.birch, {
    ran: sixDaysAWeek(5),
    ...story,
    done: { ...allDone(BUILDS.birch, FRESH), ...done },
  });
const digest = (
  machines: Parameters<typeof shopOf>[0],
  more: Partial<DigestContext> = {},
  shelf: readonly ShelfItem[] = [],
) => digestOf(shopOf(machines, ROOM, shelf), { ...contextOn(), ...more });

describe('one opening', () => {
  it('takes what is due on a machine together, cold before hot', () => {
    const jammed = birch({
      seen: { 'no-extrusion': ['2026-03-11 07:00'] },
      done: { 'clear-jam': '2026-03-11 07:10' },
    });
    const { round, minutes } = digest([jammed]);
    expect(round).toMatchObject([{ machine: 'birch', tasks: ['check-tube', 'clean-feeder'], minutes: 15 }]);
    expect(minutes).toBe(15);
  });
  it('puts a crash’s bundle in its own order within each state', () => {
    const [stop] = digest([birch({ seen: { crash: ['2026-03-11 07:00'] } })]).round;
    const cold = stop?.openings.find(({ opening }) => opening === 'cold-unplugged')?.tasks ?? [];
    const bundle = cold.filter((task) => !['check-belt', 'check-fasteners'].includes(task));
    expect(bundle).toEqual([
      'check-wiring',
      'check-heater',
      'check-nozzle',
      'check-wheels',
      'tighten-pulleys',
    ]);
    expect(stop?.openings.map(({ opening }) => opening)).toEqual(['cold-unplugged', 'hot']);
  });
  it('goes first to the machine with the gravest and latest work', () => {
    const dusty = birch({ done: { 'dust-off': '2026-01-01' } });
    const wiring = recordOf('alder', BUILDS.alder, {
      done: { ...allDone(BUILDS.alder, FRESH), 'check-wiring': '2026-01-09' },
    });
    expect(digest([dusty, wiring]).round.map(({ machine }) => machine)).toEqual(['alder', 'birch']);
  });
});

describe('pulling forward', () => {
  const open: Story = {
    seen: { 'no-extrusion': ['2026-03-11 07:00'] },
    done: { 'clear-jam': '2026-03-11 07:10' },
  };
  const withTask = (task: 'check-wheels' | 'check-plate' | 'level-bed' | 'dust-off', on: string) =>
    digest([birch({ ...open, done: { ...open.done, [task]: on } })]).round[0]?.pulledForward;

  it('takes a short look that is due in two days along: 5 min x 2/30 is less than 5 min of set-up', () => {
    expect(SET_UP_MINUTES['cold-unplugged']).toBe(5);
    expect(withTask('check-wheels', '2026-02-11')).toEqual(['check-wheels']);
  });
  it('leaves what is not due for long', () => expect(withTask('check-wheels', '2026-03-01')).toEqual([]));
  it('leaves what needs no opening', () => expect(withTask('check-plate', '2025-12-15')).toEqual([]));
  it('leaves what needs another state of the machine', () =>
    expect(withTask('level-bed', '2026-03-03 20:00')).toEqual([]));
  it('leaves a spare whose price or whose hour nobody stated', () => {
    const near: Story = {
      ...open,
      done: { ...open.done, 'replace-guide-tube': '2025-03-13' },
      from: '2025-03-01',
    };
    const shelf = (price?: number): ShelfItem[] => [
      { part: 'guide-tube', count: 2, ...(price !== undefined && { price }) },
    ];
    const pulled = (items: ShelfItem[], hourlyRate?: number) =>
      digest([birch(near)], hourlyRate === undefined ? {} : { hourlyRate }, items).round[0]?.pulledForward;
    expect(pulled(shelf(), 40)).toEqual([]);
    expect(pulled(shelf(12))).toEqual([]);
    // (20 min + 12 / 40 h) x 2/365 days: a fifth of a minute
    expect(pulled(shelf(12), 40)).toEqual(['replace-guide-tube']);
    // (20 min + 900 / 40 h) x 2/365 days: more than seven minutes
    expect(pulled(shelf(900), 40)).toEqual([]);
  });
  it('opens no machine for it', () => {
    expect(digest([birch({ done: { 'check-wheels': '2026-02-11' } })]).round).toEqual([]);
  });
});

describe('minutes a day', () => {
  const busy = birch({ done: allDone(BUILDS.birch, '2026-01-20') });
  const owed = machineDue(busy, contextOn()).filter(({ state }) => state === 'overdue' || state === 'due');

  it('cut the list by class and lateness, and say what was left', () => {
    const { round, left, minutes } = digest([busy], { minutesADay: 30 });
    const kept = round.flatMap(({ rows }) => rows);
    expect(minutes).toBeLessThanOrEqual(30);
    expect(left.length).toBeGreaterThan(0);
    expect(kept.length + left.length).toBe(owed.length);
    expect(minutesIn(kept) + minutesIn(left)).toBe(minutesIn(owed));
  });
  it('never leave a safety task', () => {
    const safety = owed.map((row) => ({ ...row, class: 'safety' as const }));
    expect(cutToMinutes(safety, 1)).toEqual({ kept: safety, left: [] });
  });
  it('unset, leave nothing', () => expect(digest([busy]).left).toEqual([]));
});

const ORDER = ['part', 'consumable', 'tool'];
describe('what to fetch', () => {
  const worn = birch({ seen: { 'worn-nozzle': ['2026-03-11 07:00'] } });
  const nozzles = (count: number): ShelfItem[] => [
    { part: 'nozzle', fitted: 'brass 0.4', count, deliveryDays: 5 },
    { part: 'nozzle', fitted: 'hardened 0.6', count: 4 },
  ];
  const part = (count: number) => {
    const { fetch, shelf } = digest([worn], {}, nozzles(count));
    return { fetched: fetch.find(({ kind }) => kind === 'part'), shelf };
  };

  it('names the spare as it is in the machine, and its tools', () => {
    expect(part(3).fetched).toMatchObject({ item: 'nozzle', fitted: 'brass 0.4', need: 1, have: 3 });
    const { fetch } = digest([worn], {}, nozzles(3));
    expect(fetch.filter(({ kind }) => kind === 'tool').length).toBeGreaterThan(0);
    expect(part(3).shelf).toEqual([]);
  });
  it('tells the last one, and the one that is not there', () => {
    expect(part(1).shelf).toMatchObject([{ item: 'nozzle', have: 1, short: 'last', deliveryDays: 5 }]);
    expect(part(0).shelf).toMatchObject([{ item: 'nozzle', have: 0, short: 'out' }]);
  });
  it('says nothing of what the shelf does not keep', () => {
    const { fetch, shelf } = digest([worn]);
    expect(fetch.find(({ kind }) => kind === 'part')).not.toHaveProperty('have');
    expect(shelf).toEqual([]);
  });
  it('names spares first, then what the shelf counts, then tools, each once', () => {
    const dusty = recordOf('alder', BUILDS.alder, {
      done: { ...allDone(BUILDS.alder, FRESH), 'dust-off': '2026-01-01', 'lubricate-rods': '2025-06-05' },
    });
    const { fetch } = digest([worn, dusty], {}, nozzles(3));
    const kinds = fetch.map(({ kind }) => kind);
    expect(kinds).toEqual(kinds.toSorted((a, b) => ORDER.indexOf(a) - ORDER.indexOf(b)));
    expect(new Set(kinds)).toEqual(new Set(ORDER));
    const names = fetch.map((thing) => (thing.kind === 'tool' ? thing.tool : thing.item));
    expect(names).toEqual([...new Set(names)]);
    // the cloth of both tasks is one cloth
    expect(fetch.find((thing) => thing.kind === 'consumable' && thing.item === 'cloth')?.for).toEqual([
      { machine: 'alder', task: 'dust-off' },
      { machine: 'alder', task: 'lubricate-rods' },
    ]);
  });
  it('draws the sizes of hex keys together and leaves other sizes to the steps', () => {
    const crashed = birch({ seen: { crash: ['2026-03-11 07:00'], 'worn-nozzle': ['2026-03-11 07:00'] } });
    const tools = digest([crashed]).fetch.flatMap((of) => (of.kind === 'tool' ? [of.tool] : []));
    expect(tools.filter((tool) => tool.includes('hex key'))).toEqual(['hex keys 1.5, 2, 2.5 and 3 mm']);
    expect(tools).toContain('nozzle spanner or socket');
    expect(tools.filter((tool) => tool.includes('usually'))).toEqual([]);
  });
  it('fetches what this build takes: the named lubricant’s grease or none at all', () => {
    const squeaky = (build: Build) =>
      recordOf('m', build, { done: allDone(build, FRESH), seen: { 'z-banding': ['2026-03-11 07:00'] } });
    const items = (build: Build) =>
      digest([squeaky(build)]).fetch.flatMap((of) => (of.kind === 'consumable' ? [of.item] : []));
    expect(items(BUILDS.alder)).toContain('grease');
    expect(items(BUILDS.birch)).not.toContain('grease');
  });
  it('leaves out what lies on every bench: the steps name it', () => {
    const dark = birch({ done: { 'check-mains-lead': '2025-01-01', 'check-wiring': '2026-01-01' } });
    const { fetch, round } = digest([dark]);
    expect(round[0]?.tasks.toSorted()).toEqual(['check-mains-lead', 'check-wiring']);
    expect(fetch.map((of) => of.kind === 'tool' && of.tool)).toEqual(['small mirror', 'cable ties']);
  });
  it('fetches no alcohol for a plate: its maker decides', () => {
    const greasy = birch({ seen: { 'poor-adhesion': ['2026-03-11 07:00'] } });
    const { fetch, round } = digest([greasy]);
    expect(round[0]?.tasks).toContain('clean-plate');
    expect(JSON.stringify(fetch)).not.toContain('alcohol');
    expect(fetch).toContainEqual({
      kind: 'tool', tool: 'dish soap and warm water', for: [{ machine: 'birch', task: 'clean-plate' }],
    }); // prettier-ignore
  });
  it('brings each caution once, with where it is met', () => {
    const { cautions } = digest([worn]);
    expect(cautions.map(({ key }) => key)).toEqual(['HOT', 'SHORT', 'FUME', 'CUT']);
    expect(cautions[0]?.for).toEqual([{ machine: 'birch', task: 'replace-nozzle' }]);
  });
  it('words a caution for the build, and as usual where builds differ', () => {
    const fumes = (...machines: readonly MachineRecord[]) =>
      digest(machines).cautions.find(({ key }) => key === 'FUME');
    expect(fumes(worn)?.line).toMatch(/PTFE-lined hot end: not above \d+ °C/u);
    const hazel = recordOf('hazel', BUILDS.hazel, {
      done: allDone(BUILDS.hazel, FRESH),
      seen: { 'worn-nozzle': ['2026-03-11 07:00'] },
    });
    expect(fumes(worn, hazel)).toMatchObject({
      line: CAUTION_LINES.FUME,
      for: [{ machine: 'birch' }, { machine: 'hazel' }],
    });
  });
});
