/** The eight demo machines: what each has besides what all have, written down by hand. */
import { describe, expect, it } from 'vitest';
import { rulesFor } from '../../../src/maintenance/care/index.ts';
import { termsOf } from '../../../src/maintenance/care/rule.ts';
import { BUILDS } from '../../support/builds.ts';
import type { DemoMachine } from '../../support/builds.ts';

/** Tasks that fall due by themselves (an interval), as every machine has them. */
const EVERYBODY =
  'check-wiring test-protection check-mains-lead check-heater check-fans clear-debris dust-off check-fasteners check-notices save-settings clean-feeder check-feeder-gear check-nozzle replace-nozzle tighten-pulleys tension-belts check-belt replace-x-belt replace-y-belt check-idlers clean-plate level-bed check-plate';
const BESIDES: Readonly<Record<DemoMachine, string>> = {
  alder: 'lubricate-rods grease-screw check-tube replace-guide-tube replace-liner check-printed-parts',
  birch: 'check-wheels clean-screw check-tube replace-guide-tube replace-liner',
  cedar: 'lubricate-rails grease-screw check-probe',
  elm: 'lubricate-rods lubricate-rails grease-screw check-probe square-gantry check-guards replace-filter',
  hazel: 'check-wheels clean-screw',
  juniper: 'lubricate-rails grease-ball-screw check-tube replace-guide-tube check-probe square-gantry',
  maple: 'lubricate-rods grease-screw replace-liner check-probe check-printed-parts',
  rowan: 'check-wheels clean-screw check-probe',
};

describe.each(Object.keys(BESIDES) as DemoMachine[])('%s', (name) => {
  const build = BUILDS[name];
  it('has these intervals and no others', () => {
    const facts = { build, nozzle: build.nozzle, tubeTrims: 0 };
    const timed = rulesFor(build).filter(({ rule }) => termsOf(rule, facts).length > 0);
    const expected = `${EVERYBODY} ${BESIDES[name]}`.split(' ');
    expect(timed.map(({ rule }) => rule.task).toSorted()).toEqual(expected.toSorted());
  });
  it('has nothing assumed: its sheet states what the rules ask for', () =>
    expect(rulesFor(build).filter(({ assumed }) => assumed !== undefined)).toEqual([]));
});
