import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautionsFor } from '../../../src/maintenance/cautions/forBuild.ts';
import { hotWorkRefused } from '../../../src/maintenance/cautions/hotWork.ts';
import { NEVER, NEVER_TOPICS } from '../../../src/maintenance/cautions/never.ts';
import { neverSteps } from '../../../src/maintenance/cautions/neverSteps.ts';
import { TASKS } from '../../../src/maintenance/codes.ts';
import type { Build } from '../../../src/maintenance/machine.ts';

const keys = (task: (typeof TASKS)[number], build: Build): readonly string[] =>
  cautionsFor(task, build).map((caution) => caution.key);
const line = (task: (typeof TASKS)[number], build: Build, key: string): string | undefined =>
  cautionsFor(task, build).find((caution) => caution.key === key)?.line;

describe('cautions for a build', () => {
  it('props an axis that drops, and one of which nothing is stated, and says which of the two', () => {
    expect(line('grease-screw', { zHolds: false }, 'DROP')).toContain('drops when the power goes off');
    expect(line('grease-screw', {}, 'DROP')).toContain('not stated');
  });

  it('does not prop an axis that is stated to hold', () => {
    expect(keys('grease-screw', { zHolds: true })).toEqual(['MOVE']);
  });

  it('props it all the same where the work loosens what holds it up', () => {
    expect(line('replace-screw-nut', { zHolds: true }, 'DROP')).toContain('loosens what holds it up');
    expect(line('tighten-pulleys', { zHolds: true }, 'DROP')).toContain('loosens');
  });

  it('gives the lined hot end its limit with the fumes', () => {
    expect(line('clear-jam', { hotEnd: 'lined' }, 'FUME')).toContain('240 °C');
    expect(line('clear-jam', { hotEnd: 'lined', hotEndMaxC: 230 }, 'FUME')).toContain('230 °C');
  });

  it('does not let a sheet raise the liner’s limit', () => {
    expect(line('clear-jam', { hotEnd: 'lined', hotEndMaxC: 290 }, 'FUME')).toContain('240 °C');
  });

  it('takes a hot end that is not stated as lined, and says so; an all-metal one has no liner to speak of', () => {
    expect(line('clear-jam', {}, 'FUME')).toMatch(/not stated.*240 °C/u);
    expect(line('clear-jam', { hotEnd: 'all-metal' }, 'FUME')).not.toContain('240');
  });

  it('names the mains-heated bed where hands come near its leads', () => {
    expect(line('check-wiring', { bedHeater: 'mains' }, 'MAINS')).toContain('heated from the mains');
    expect(keys('check-fasteners', { bedHeater: 'mains' })[0]).toBe('MAINS');
    expect(keys('check-fasteners', { bedHeater: 'low-voltage' })).not.toContain('MAINS');
  });

  it('does not ask for the power to be off where the work needs it on', () => {
    expect(line('clear-jam', {}, 'MOVE')).toMatch(/^Motors off/u);
    expect(line('tension-belts', {}, 'MOVE')).toMatch(/^Power off/u);
  });

  it('never repeats a hazard within one task', () => {
    const build = fc.record(
      {
        zHolds: fc.boolean(),
        hotEnd: fc.constantFrom('lined' as const, 'all-metal' as const),
        bedHeater: fc.constantFrom('mains' as const, 'low-voltage' as const, 'none' as const),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.constantFrom(...TASKS), build, (task, some) => {
        const found = keys(task, some);
        expect(new Set(found).size).toBe(found.length);
      }),
    );
  });
});

describe('what is never given as steps', () => {
  it('is a reason of about six words and somebody to ask', () => {
    for (const topic of NEVER_TOPICS) {
      const words = NEVER[topic].because.split(' ').length;
      expect(words, NEVER[topic].because).toBeGreaterThanOrEqual(5);
      expect(words, NEVER[topic].because).toBeLessThanOrEqual(7);
      expect(neverSteps(topic, {})?.ask).toBe(NEVER[topic].ask);
    }
  });

  it('closes the power supply on every build, by task and by part', () => {
    expect(neverSteps('replace-power-supply', { bedHeater: 'low-voltage' })?.topic).toBe('open-power-supply');
    expect(neverSteps('power-supply', {})?.topic).toBe('open-power-supply');
  });

  it('leaves the control board’s wiring to a qualified person but gives what goes before and after', () => {
    const answer = neverSteps('replace-control-board', {});
    expect(answer?.topic).toBe('board-wiring');
    expect(answer?.before?.join(' ')).toContain('photograph');
    expect(answer?.after?.join(' ')).toContain('heater protection');
  });

  it('closes a mains bed, and one of which nothing is stated, and opens a low-voltage one', () => {
    expect(neverSteps('replace-bed-heater', { bedHeater: 'mains' })?.notStated).toBeUndefined();
    expect(neverSteps('replace-bed-heater', {})?.notStated).toContain('heated from the mains');
    expect(neverSteps('replace-bed-heater', { bedHeater: 'low-voltage' })).toBeUndefined();
  });

  it('closes the leads of a machine whose bed is heated from the mains', () => {
    expect(neverSteps('wiring', { bedHeater: 'mains' })?.topic).toBe('mains-bed-wiring');
    expect(neverSteps('wiring', {})).toBeUndefined();
  });

  it('does not close a nozzle', () => {
    expect(neverSteps('replace-nozzle', {})).toBeUndefined();
  });

  it('refuses hot work above the limit only', () => {
    expect(hotWorkRefused(240, { hotEnd: 'lined' })).toBeUndefined();
    expect(hotWorkRefused(241, { hotEnd: 'lined' })?.topic).toBe('lined-too-hot');
    expect(hotWorkRefused(260, {})?.notStated).toContain('PTFE');
    expect(hotWorkRefused(280, { hotEnd: 'all-metal' })).toBeUndefined();
    expect(hotWorkRefused(310, { hotEnd: 'all-metal', hotEndMaxC: 300 })?.topic).toBe('raise-maximum');
  });
});
