/**
 * The eight machines of the demo as its file states them: what each has besides what all have, and how often,
 * written down by hand. Where the file sets an interval itself, that one stands and says who set it.
 */
import { describe, expect, it } from 'vitest';
import { buildDemo } from '../../../demo-data/build.ts';
import { openCalendar } from '../../../src/maintenance/calendar.ts';
import { rulesFor } from '../../../src/maintenance/care/index.ts';
import { minutesOf } from '../../../src/maintenance/care/rule.ts';
import type { Term } from '../../../src/maintenance/care/rule.ts';
import { factsOf, termsNow } from '../../../src/maintenance/due/measure.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import type { MachineRecord } from '../../../src/maintenance/record/record.ts';
import { BUILDS } from '../../support/builds.ts';

const WEDNESDAY = Date.parse('2026-03-11T08:00:00+01:00');
const shop = foldShop(buildDemo(WEDNESDAY).entries, openCalendar('Europe/Copenhagen'));
const recordOf = (name: string): MachineRecord => {
  const record = shop.machines.get(name);
  if (!record) throw new Error(`no ${name} in the demo`);
  return record;
};

/** Tasks that fall due by themselves, as every machine of the eight has them. */
const EVERYBODY: Readonly<Record<string, string>> = {
  'clear-debris': '1 runDays',
  'clean-plate': '7 runDays, 50 hours',
  'dust-off': '30 days',
  'tighten-pulleys': '90 days',
  'check-fasteners': '90 days',
  'tension-belts': '90 days, 500 hours',
  'check-belt': '180 days, 1000 hours',
  'replace-x-belt': '1095 days, 3000 hours',
  'replace-y-belt': '1095 days, 3000 hours',
  'check-idlers': '180 days',
  'clean-feeder': '250 hours, 60 days',
  'check-feeder-gear': '1000 hours, 1 dose',
  'check-nozzle': '30 runDays, 250 dose',
  'replace-nozzle': '180 runDays, 1 dose',
  'check-plate': '90 days',
  'check-wiring': '60 days, 500 hours',
  'check-heater': '90 days, 500 hours',
  'check-fans': '30 days',
  'test-protection': '365 days',
  'check-mains-lead': '365 days',
  'check-notices': '90 days',
  'save-settings': '180 days',
};
const TUBE_OF_BOWDEN = { 'check-tube': '90 days, 500 hours', 'replace-guide-tube': '365 days, 1 dose' };
const LINER = { 'replace-liner': '365 days, 500 hours, 1 dose' };
const RODS = { 'lubricate-rods': '300 hours, 180 days' };
const RAILS = { 'lubricate-rails': '300 hours, 180 days' };
const WHEELS = { 'check-wheels': '30 days, 200 hours' };
const METAL_NUT = { 'grease-screw': '500 hours, 180 days' };
const PLASTIC_NUT = { 'clean-screw': '90 days' };
const PROBE = { 'check-probe': '90 days' };
const GANTRY = { 'square-gantry': '180 days' };

interface Machine {
  has: Readonly<Record<string, string>>;
  /** What a technician who knows it would be surprised to be told. */
  never: string;
  /** `<minutes> <task>`, where another build takes longer. */
  takes: string;
}
const MACHINES: Readonly<Record<string, Machine>> = {
  alder: {
    has: {
      ...RODS, ...METAL_NUT, ...TUBE_OF_BOWDEN, ...LINER, 'level-bed': '7 runDays', 'check-printed-parts': '30 days',
      'check-fasteners': '600 hours, 80 days by the manual',
    },
    never: 'check-wheels lubricate-rails check-probe square-gantry replace-filter',
    takes: '40 replace-x-belt',
  },
  birch: {
    has: {
      ...WHEELS, ...PLASTIC_NUT, ...TUBE_OF_BOWDEN, ...LINER, 'level-bed': '7 runDays',
      'clean-plate': '45 hours, 6 runDays by the workshop',
    },
    never: 'lubricate-rods wipe-rods lubricate-rails grease-screw grease-ball-screw check-printed-parts',
    takes: '10 tension-belts',
  },
  cedar: {
    has: {
      ...METAL_NUT, ...PROBE, 'level-bed': '90 days', 'check-nozzle': '30 runDays, 500 dose', 'check-tube': '180 days',
      'replace-guide-tube': '365 days, 1 dose', 'lubricate-rails': '350 hours, 150 days by the manual',
      'replace-nozzle': '0.9 dose by the workshop',
    },
    never: 'lubricate-rods check-wheels replace-liner trim-tube square-gantry',
    takes: '15 lubricate-rails',
  },
  elm: {
    has: {
      ...RODS, ...RAILS, ...METAL_NUT, ...PROBE, ...GANTRY, 'level-bed': '90 days', 'check-guards': '90 days',
      'replace-filter': '180 days, 300 hours',
    },
    never: 'check-wheels check-tube replace-liner check-printed-parts',
    takes: '90 replace-y-belt',
  },
  hazel: {
    has: { ...WHEELS, ...PLASTIC_NUT, 'level-bed': '7 runDays' },
    never: 'grease-screw lubricate-rods replace-liner check-liner check-probe check-tube',
    takes: '5 clean-screw',
  },
  juniper: {
    has: {
      ...RAILS, ...TUBE_OF_BOWDEN, ...PROBE, ...GANTRY, 'grease-ball-screw': '500 hours, 180 days', 'level-bed': '90 days',
    },
    never: 'grease-screw clean-screw replace-liner replace-screw-nut check-printed-parts',
    takes: '15 grease-ball-screw',
  },
  maple: {
    has: { ...RODS, ...METAL_NUT, ...LINER, ...PROBE, 'level-bed': '90 days', 'check-printed-parts': '90 days' },
    never: 'check-wheels check-tube trim-tube square-gantry',
    takes: '25 replace-liner',
  },
  rowan: {
    has: { ...WHEELS, ...PLASTIC_NUT, ...PROBE, 'level-bed': '14 runDays' },
    never: 'grease-screw lubricate-rods replace-liner check-tube check-printed-parts',
    takes: '5 check-wheels',
  },
}; // prettier-ignore

const termText = (term: Term): string => `${term.interval} ${term.trigger}`;
const BY = { manual: ' by the manual', workshop: ' by the workshop' } as const;

function timed(record: MachineRecord): Record<string, string> {
  const scene = { record, facts: factsOf(record) };
  return Object.fromEntries(
    rulesFor(record.build).flatMap(({ rule }) => {
      const { terms } = termsNow(rule, scene, undefined);
      const source = record.intervals[rule.task]?.source;
      const text = terms.map(termText).join(', ') + (source === undefined ? '' : BY[source]);
      return terms.length > 0 ? [[rule.task, text]] : [];
    }),
  );
}

describe('the demo’s machines', () => {
  it('are these eight', () =>
    expect([...shop.machines.keys()].toSorted()).toEqual(Object.keys(MACHINES).toSorted()));
});

describe.each(Object.entries(MACHINES))('%s', (name, { has, never, takes }) => {
  const record = recordOf(name);
  const planned = rulesFor(record.build);

  it('has these intervals and no others', () => expect(timed(record)).toEqual({ ...EVERYBODY, ...has }));
  it('is never told to do what it is not built for', () => {
    const tasks: readonly string[] = planned.map(({ rule }) => rule.task);
    expect(never.split(' ').filter((task) => tasks.includes(task))).toEqual([]);
  });
  it('takes as long as its build does', () => {
    const [minutes, task] = takes.split(' ');
    const rule = planned.find((known) => known.rule.task === task)?.rule;
    expect(rule && minutesOf(rule, record.build)).toBe(Number(minutes));
  });
  it('has nothing assumed: its sheet states what the rules ask for', () =>
    expect(planned.filter(({ assumed }) => assumed !== undefined)).toEqual([]));
  it('is in the tests as the demo’s file has it, in every feature that they state', () =>
    expect(record.build).toMatchObject(BUILDS[name as keyof typeof BUILDS]));
});
