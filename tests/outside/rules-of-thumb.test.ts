/**
 * What people who keep such machines say, held against the default rules.
 * Source of every check: common practice, no source; the nozzle's also a maker's test cited second-hand
 * ("heavy wear of a 0.4 mm brass nozzle after 250 g of carbon filled filament").
 */
import { describe, expect, it } from 'vitest';
import { hotLimit } from '../../src/maintenance/cautions/hotLimit.ts';
import { doseOf } from '../../src/maintenance/care/dose.ts';
import { ruleOf, rulesFor } from '../../src/maintenance/care/index.ts';
import { termsOf } from '../../src/maintenance/care/rule.ts';
import type { Term } from '../../src/maintenance/care/rule.ts';
import type { Task } from '../../src/maintenance/codes.ts';
import { kitFor } from '../../src/maintenance/how/kit.ts';
import { SUPPLIES } from '../../src/maintenance/how/tools.ts';
import type { Build } from '../../src/maintenance/machine.ts';
import { BUILDS } from '../support/builds.ts';
import { contextOn, recordOf, sixDaysAWeek } from '../support/machines.ts';
import { dueRow } from '../../src/maintenance/due/rows.ts';

const tasksOf = (build: Build): readonly Task[] => rulesFor(build).map(({ rule }) => rule.task);
const every = (task: Task, build: Build): readonly Term[] =>
  termsOf(ruleOf(task), { build, nozzle: build.nozzle ?? {}, tubeTrims: 0 });
const interval = (task: Task, build: Build, trigger: Term['trigger']): number | undefined =>
  every(task, build).find((term) => term.trigger === trigger)?.interval;

describe('nozzles (common practice, no source)', () => {
  it('1 kg of carbon filled nylon uses up three to four brass 0.4 nozzles', () => {
    const dose = doseOf('nozzle', { material: 'brass', boreMm: 0.4 }, 'nylon-cf', 1000);
    expect(dose).toBeGreaterThan(3);
    expect(dose).toBeLessThan(4);
  });
  it('and well under one of hardened steel', () => {
    expect(doseOf('nozzle', { material: 'hardened', boreMm: 0.4 }, 'nylon-cf', 1000)).toBeLessThan(0.5);
  });
  it('heavy wear of brass 0.4 after 250 g of carbon filled: most of its life, not a fraction', () => {
    const dose = doseOf('nozzle', { material: 'brass', boreMm: 0.4 }, 'pla-cf', 250);
    expect(dose).toBeGreaterThan(0.5);
    expect(dose).toBeLessThan(1.1);
  });
  it('100 kg of plain filament on brass use up less than one', () => {
    for (const plain of ['pla', 'petg', 'abs', 'asa'] as const)
      expect(doseOf('nozzle', { material: 'brass', boreMm: 0.4 }, plain, 100_000)).toBeLessThan(1);
  });
  it('brass lasts about six months of regular use', () => {
    expect(interval('replace-nozzle', BUILDS.alder, 'runDays')).toBe(180);
    const used = recordOf('alder', BUILDS.alder, {
      ran: sixDaysAWeek(6),
      swapped: { nozzle: '2025-08-12' },
    });
    expect(dueRow(used, 'replace-nozzle', contextOn())?.state).toBe('due');
  });
});

describe('looks and cleaning (common practice, no source)', () => {
  it('dust monthly', () => expect(interval('dust-off', BUILDS.alder, 'days')).toBe(30));
  it('printed parts about every three months', () =>
    expect(interval('check-printed-parts', BUILDS.maple, 'days')).toBe(90));
  it('on springs the bed is looked at weekly', () =>
    expect(interval('level-bed', BUILDS.alder, 'runDays')).toBe(7));
  it('the feeder is cleaned after a jam', () => {
    const jammed = recordOf('birch', BUILDS.birch, {
      done: { 'clean-feeder': '2026-03-01' },
      seen: { 'no-extrusion': ['2026-03-10'] },
    });
    expect(dueRow(jammed, 'clean-feeder', contextOn())).toMatchObject({ state: 'due', trigger: 'raised' });
  });
  it('belt tension is looked at regularly, and belts are replaced in time', () => {
    expect(interval('tension-belts', BUILDS.alder, 'days')).toBe(90);
    expect(interval('replace-x-belt', BUILDS.alder, 'hours')).toBe(3000);
  });
  it('firmware is looked at when trouble comes, unless that was done lately', () => {
    const trouble = (last: string) =>
      dueRow(
        recordOf('elm', BUILDS.elm, {
          done: { 'check-notices': last },
          seen: { 'error-shutdown': ['2026-03-10'] },
        }),
        'check-notices',
        contextOn(),
      )?.state;
    expect(trouble('2026-01-20')).toBe('due');
    expect(trouble('2026-03-01')).toBe('fine');
  });
});

describe('lubricants (common practice; dry plastic bushings: their makers say so)', () => {
  const used = (task: Task, build: Build) => kitFor(task, build).supplies.map((of) => SUPPLIES[of].item);
  it('wheels take none', () => {
    expect(used('check-wheels', BUILDS.birch)).not.toContain('oil');
    expect(used('check-wheels', BUILDS.birch)).not.toContain('grease');
    const lubricated = tasksOf(BUILDS.birch).filter((task) => /^(lubricate|grease)/u.test(task));
    expect(lubricated).toEqual([]);
  });
  it('rods take oil, lead screws grease, plastic nuts no grease', () => {
    expect(used('lubricate-rods', BUILDS.alder)).toContain('oil');
    expect(used('grease-screw', BUILDS.alder)).toContain('grease');
    expect(used('clean-screw', BUILDS.birch)).toEqual(['cloth']);
    expect(tasksOf(BUILDS.alder)).toContain('grease-screw');
    expect(tasksOf(BUILDS.birch)).toContain('clean-screw');
    expect(tasksOf(BUILDS.birch)).not.toContain('grease-screw');
  });
  it('polymer bearings are wiped, never lubricated', () => {
    const polymer: Build = { x: 'rods', rodBearing: 'polymer' };
    expect(tasksOf(polymer)).toContain('wipe-rods');
    expect(tasksOf(polymer)).not.toContain('lubricate-rods');
  });
});

describe('PTFE (general notes on it: 260 °C in continuous use, fume fever from 300 °C; the 240 °C are common practice)', () => {
  it('a lined hot end stays below the limit that is printed for it, one of which nothing is stated too', () => {
    for (const build of [{ hotEnd: 'lined' }, { hotEnd: 'lined', hotEndMaxC: 300 }, {}] as const) {
      const { limitC = Infinity } = hotLimit(build);
      expect(limitC).toBeLessThan(260);
      expect(limitC).toBe(240);
    }
  });
});
