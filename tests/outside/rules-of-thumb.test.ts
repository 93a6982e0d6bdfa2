/**
 * What people who keep such machines say, held against the default rules (reference R-O1 to R-O4).
 * Source of every check: common practice, no source; the nozzle's also a maker's test cited second-hand
 * ("heavy wear of a 0.4 mm brass nozzle after 250 g of carbon filled filament").
 */
import { describe, expect, it } from 'vitest';
import { CAUTION_LINES } from '../../src/maintenance/cautions/keys.ts';
import { hotLimit } from '../../src/maintenance/cautions/hotLimit.ts';
import { DOSE_SETTINGS, doseOf } from '../../src/maintenance/care/dose.ts';
import { ruleOf, rulesFor } from '../../src/maintenance/care/index.ts';
import { HOT_FOR_PTFE, SOFTENS_FROM_C } from '../../src/maintenance/care/materials.ts';
import { termsOf } from '../../src/maintenance/care/rule.ts';
import type { Term } from '../../src/maintenance/care/rule.ts';
import type { Task } from '../../src/maintenance/codes.ts';
import { howTo } from '../../src/maintenance/how/howTo.ts';
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

const stepsOf = (task: Task, build: Build): string => {
  const answer = howTo(task, build);
  return answer.kind === 'steps' ? answer.steps.map(({ text }) => text).join('\n') : '';
};

describe('R-O1: nozzles (common practice, no source)', () => {
  it('wear in the order brass, plated, hardened, carbide and gem', () => {
    const { brass, plated, hardened, carbide, gem } = DOSE_SETTINGS.resistance;
    expect(brass).toBeLessThan(plated);
    expect(plated).toBeLessThan(hardened);
    expect(hardened).toBeLessThan(carbide);
    expect(carbide).toBe(gem);
  });
  it('get shorter as they wear, and so does a new one’s first layer change: it is checked after each swap', () => {
    const raised = ruleOf('check-first-layer').raisedBy.map(({ when }) => when);
    expect(raised).toContainEqual({ swapped: 'nozzle' });
    expect(stepsOf('check-nozzle', BUILDS.alder)).toMatch(/tip: flat ring all round, not rounded/u);
  });
  it('of brass are looked at by the time that heavy wear was reported, others later', () => {
    const grams = (build: Build) => every('check-nozzle', build).find((term) => 'gramsOf' in term)?.interval;
    expect(grams(BUILDS.alder)).toBe(250);
    expect(grams(BUILDS.cedar)).toBe(500);
  });
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

describe('R-O4: lubricants (common practice; dry plastic bushings: their makers say so)', () => {
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

describe('R-O4: a lubricant may attack plastic', () => {
  it('so that none goes on plastic parts, and a plastic nut gets only what its maker names', () => {
    expect(stepsOf('lubricate-rods', BUILDS.alder)).toMatch(/none on .*plastic parts: oil can crack them/u);
    expect(ruleOf('clean-screw').note).toMatch(/can degrade the plastic.*unless the nut's maker names one/u);
  });
  it('and screws get PTFE or lithium grease as a thin film', () => {
    expect(SUPPLIES['screw-grease'].text).toBe('PTFE or lithium grease');
    expect(stepsOf('grease-screw', BUILDS.alder)).toMatch(/thin film of PTFE or lithium grease/u);
  });
});

describe('R-O3: printed brackets (data sheets: PLA softens at 55 to 60 °C, PETG at 75 to 85)', () => {
  /** From data sheets; ABS, ASA and PC from memory of them. Loaded brackets stay 15 to 20 °C below. */
  const SOFTENS = { pla: [55, 60], petg: [75, 85], abs: [100, 105], asa: [95, 105], pc: [110, 150] } as const;
  const bracketsOf = (material: keyof typeof SOFTENS, more: Partial<Build> = {}): number | undefined =>
    interval('check-printed-parts', { printedParts: { material }, ...more }, 'days');

  it.each(Object.entries(SOFTENS))(
    '%s softens within %j °C by the project’s own table',
    (material, [from, to]) => {
      expect(SOFTENS_FROM_C[material]).toBeGreaterThanOrEqual(from);
      expect(SOFTENS_FROM_C[material]).toBeLessThanOrEqual(to);
    },
  );
  it('of PLA are looked at monthly in an open machine, of the others every three months', () => {
    const days = (Object.keys(SOFTENS) as (keyof typeof SOFTENS)[]).map((of) => bracketsOf(of));
    expect(days).toEqual([30, 90, 90, 90, 90]);
  });
  it('are looked at monthly of whatever plastic, near heat or in a closed machine', () => {
    for (const material of Object.keys(SOFTENS) as (keyof typeof SOFTENS)[]) {
      expect(bracketsOf(material, { enclosed: true })).toBe(30);
      expect(bracketsOf(material, { printedParts: { material, nearHeat: true } })).toBe(30);
    }
  });
});

describe('R-O2: PTFE (general notes on it: 260 °C in continuous use, fume fever from 300 °C; the 240 °C are common practice)', () => {
  it('a lined hot end stays below the limit that is printed for it, one of which nothing is stated too', () => {
    for (const build of [{ hotEnd: 'lined' }, { hotEnd: 'lined', hotEndMaxC: 300 }, {}] as const) {
      const { limitC = Infinity } = hotLimit(build);
      expect(limitC).toBeLessThan(260);
      expect(limitC).toBe(240);
    }
  });
  it('kills birds with its fumes, and the fumes’ own line says so', () =>
    expect(CAUTION_LINES.FUME).toMatch(/PTFE.*kill birds: air the room/u));
  it('ages faster above 230 °C: a tube or liner is replaced in half the time, not below', () => {
    expect(HOT_FOR_PTFE).toEqual(expect.arrayContaining(['petg', 'abs', 'pc']));
    expect(HOT_FOR_PTFE).not.toContain('pla');
    expect(HOT_FOR_PTFE).not.toContain('tpu');
    expect(ruleOf('replace-liner').faster?.every).toEqual([{ trigger: 'days', interval: 180 }]);
  });
});

describe('what a burning smell never raises', () => {
  it('is a filter', () => {
    const smelt = recordOf('elm', BUILDS.elm, {
      swapped: { filter: '2026-02-20' },
      seen: { 'burning-smell': ['2026-03-10'] },
    });
    expect(dueRow(smelt, 'replace-filter', contextOn())?.state).toBe('fine');
    expect(dueRow(smelt, 'check-wiring', contextOn())).toMatchObject({ trigger: 'raised', class: 'safety' });
  });
  it('but a smell of plastic does, where there is carbon', () => {
    const smelt = recordOf('elm', BUILDS.elm, {
      swapped: { filter: '2026-02-20' },
      seen: { 'plastic-smell': ['2026-03-10'] },
    });
    expect(dueRow(smelt, 'replace-filter', contextOn())?.trigger).toBe('raised');
  });
});
