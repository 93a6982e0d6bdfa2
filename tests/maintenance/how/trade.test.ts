/** What the trade knows and a hurried hand gets wrong. Common practice, no source, unless one is named. */
import { describe, expect, it } from 'vitest';
import type { Task } from '../../../src/maintenance/codes.ts';
import { howTo } from '../../../src/maintenance/how/howTo.ts';
import type { HowTo, NoSteps } from '../../../src/maintenance/how/howTo.ts';
import type { Build } from '../../../src/maintenance/machine.ts';

const steps = (task: Task, build: Build = {}): HowTo => {
  const answer = howTo(task, build);
  if (answer.kind !== 'steps') throw new Error(`${task} has no steps: ${answer.because}`);
  return answer;
};
const noSteps = (task: Task, build: Build = {}): NoSteps => {
  const answer = howTo(task, build);
  if (answer.kind !== 'no-steps') throw new Error(`${task} has steps`);
  return answer;
};
const text = (task: Task, build: Build = {}): string =>
  steps(task, build)
    .steps.map((line) => line.text)
    .join('\n');

describe('lubricant', () => {
  it('never goes on wheels', () => {
    const { supplies } = steps('check-wheels');
    expect(supplies).toEqual([]);
    expect(text('check-wheels')).toContain('no lubricant');
    expect(text('replace-wheel')).toContain('No lubricant');
  });

  it('never goes on a plastic nut whose maker names none: the screw is wiped instead', () => {
    const answer = noSteps('grease-screw', { zDrive: 'lead-screw', screwNut: 'plastic' });
    expect(answer.instead).toBe('clean-screw');
    expect(text('clean-screw', { screwNut: 'plastic' })).toContain('put none on');
    expect(steps('clean-screw', { screwNut: 'plastic' }).supplies).not.toContain('screw-grease');
  });

  it('is the named one, and only that, where the plastic nut’s maker names it', () => {
    const build: Build = { screwNut: 'plastic', screwNutLubricant: 'silicone grease' };
    expect(text('grease-screw', build)).toContain('silicone grease, nothing else');
    expect(text('grease-screw', build)).not.toContain('lithium');
  });

  it('waits for a look where the nut is not stated', () => {
    expect(text('grease-screw')).toContain('a plastic one gets no grease');
    expect(text('grease-screw', { screwNut: 'metal' })).not.toContain('plastic');
  });

  it('never goes on rods with polymer bearings (dry-running: plastic-bearing maker’s note)', () => {
    expect(noSteps('lubricate-rods', { x: 'rods', rodBearing: 'polymer' }).instead).toBe('wipe-rods');
    expect(text('wipe-rods', { rodBearing: 'polymer' })).toContain('No lubricant');
    expect(text('lubricate-rods', { x: 'rods' })).toContain('polymer');
    expect(text('replace-bearing', { rodBearing: 'polymer' })).toContain('runs dry');
    expect(text('replace-rod', { rodBearing: 'ball' })).toContain('thin film');
  });

  it('on a ball screw is that screw’s own job, with the axis propped', () => {
    expect(noSteps('grease-screw', { zDrive: 'ball-screw' }).instead).toBe('grease-ball-screw');
    expect(noSteps('grease-ball-screw', { zDrive: 'lead-screw' }).instead).toBe('grease-screw');
    expect(steps('grease-ball-screw').steps[0]?.cautions[0]?.key).toBe('DROP');
  });
});

describe('the hot end', () => {
  it('is heated to the filament’s temperature and not above a lined one’s limit', () => {
    expect(text('clear-jam', { hotEnd: 'lined' })).toContain('not above 240 °C');
    expect(text('clear-jam', { hotEnd: 'all-metal', hotEndMaxC: 290 })).toContain('not above 290 °C');
    expect(text('clear-jam', { hotEnd: 'all-metal' })).toContain('own limit');
  });

  it('that is not stated is taken as lined, and the answer says so', () => {
    expect(steps('clear-jam').assumed.join()).toContain('PTFE-lined');
    expect(steps('clear-jam', { hotEnd: 'lined' }).assumed).toEqual([]);
  });

  it('leaves no gap at the nozzle when it is lined', () => {
    expect(text('replace-nozzle', { hotEnd: 'lined' })).toContain('no gap');
    expect(text('replace-liner', { hotEnd: 'lined' })).toContain('no gap');
    expect(text('trim-tube', { feed: 'bowden', hotEnd: 'lined' })).toContain('no gap');
    expect(text('trim-tube', { feed: 'bowden', hotEnd: 'all-metal' })).not.toContain('nozzle');
  });

  it('is tightened hot for a threaded nozzle only, as its manual says', () => {
    expect(text('replace-nozzle', { nozzle: { mount: 'threaded' } })).toContain(
      'Heat again as the manual says',
    );
    for (const mount of ['one-piece', 'quick-change'] as const) {
      expect(text('replace-nozzle', { nozzle: { mount } })).toContain('No hot tightening');
      expect(text('replace-nozzle', { nozzle: { mount } })).not.toContain('Heat again as the manual says');
    }
    expect(steps('replace-nozzle').assumed.join()).toContain('taken as threaded');
  });

  it('without a liner has none to replace', () => {
    expect(noSteps('replace-liner', { hotEnd: 'all-metal' }).why).toBe('unfit');
  });

  it('gets its protection tested after a new heater or sensor', () => {
    expect(text('replace-heater')).toContain('protection');
    expect(text('replace-thermistor')).toContain('protection');
    expect(text('update-firmware')).toContain('protection');
  });
});

describe('screws and rods fitted anew', () => {
  it('never has a ball nut come off its screw: the pair is changed as one', () => {
    expect(text('replace-lead-screw', { zDrive: 'ball-screw' })).toMatch(/pair: the nut stays on its screw/u);
    expect(text('replace-lead-screw', { zDrive: 'ball-screw' })).not.toContain('out of its nut');
    expect(text('replace-lead-screw')).toContain('a ball nut never comes off: stop');
    expect(text('replace-lead-screw', { zDrive: 'lead-screw' })).toMatch(/out of its nut\.$/mu);
  });
  it('has grease or oil fetched where the build is known to take it, and not where it is not', () => {
    expect(steps('replace-lead-screw', { zDrive: 'lead-screw', screwNut: 'metal' }).supplies).toContain(
      'screw-grease',
    );
    expect(steps('replace-screw-nut', { screwNut: 'plastic' }).supplies).toEqual(['cloth']);
    expect(steps('replace-bearing', { x: 'rods', rodBearing: 'ball' }).supplies).toContain('rod-lubricant');
    expect(steps('replace-rod', { x: 'rods', rodBearing: 'polymer' }).supplies).toEqual(['cloth']);
  });
  it('puts nobody’s fingers on a block that was heated to loosen its nozzle', () => {
    for (const hotEnd of ['lined', 'all-metal'] as const) {
      expect(text('replace-nozzle', { hotEnd })).toContain('with the socket turned by finger');
      expect(text('replace-nozzle', { hotEnd })).not.toContain('in by hand');
    }
  });
});

describe('electrics', () => {
  it('never has a motor plugged in or out under power', () => {
    expect(text('replace-motor')).toContain('never plugged in or out with the power on');
  });

  it('has no steps for the supply or the board, but what may be done before and after', () => {
    expect(noSteps('replace-power-supply').ask).toContain('electrician');
    expect(noSteps('replace-control-board').before?.length).toBeGreaterThan(0);
  });

  it('has steps for a low-voltage bed heater only', () => {
    expect(noSteps('replace-bed-heater').notStated).toContain('mains');
    expect(noSteps('replace-bed-heater', { bedHeater: 'mains' }).why).toBe('never');
    expect(text('replace-bed-heater', { bedHeater: 'low-voltage' })).toContain('Low-voltage bed only');
    expect(noSteps('replace-bed-heater', { bedHeater: 'none' }).why).toBe('unfit');
  });

  it('pulls no lead in a protection test', () => {
    expect(text('test-protection')).toContain('no lead is pulled with the power on');
  });

  it('answers a burning smell with its source, not with a filter', () => {
    expect(steps('replace-filter').steps[0]?.text).toContain('no answer to it');
  });
});

describe('an axis that may drop', () => {
  it('is propped for greasing unless it is stated to stay up', () => {
    expect(text('grease-screw')).toContain('Prop the axis');
    expect(text('grease-screw', { zHolds: true })).not.toContain('Prop the axis');
  });

  it('is propped for a new coupler even where it stays up by itself: the coupler is what holds it', () => {
    expect(text('replace-coupler', { zHolds: true })).toContain('Prop the axis');
  });
});

describe('belts and bed', () => {
  it('brings crossed belts to one pitch and then checks square', () => {
    expect(text('tension-belts', { belts: 'crossed' })).toMatch(/same pitch[\s\S]*square/u);
    expect(text('tension-belts', { belts: 'straight' })).not.toContain('both');
  });

  it('keeps the bind-and-slacken way to machines without printed tensioners', () => {
    expect(text('tension-belts', { printedParts: 'none' })).toContain('until it binds');
    expect(text('tension-belts', { printedParts: { material: 'pla' } })).not.toContain('until it binds');
    expect(text('tension-belts')).not.toContain('until it binds');
  });

  it('levels springs by knob, a probed rigid bed by its map', () => {
    expect(text('level-bed', { bed: 'springs' })).toContain('knob');
    expect(text('level-bed', { bed: 'rigid', probe: true })).toContain('height map');
    expect(text('level-bed', { bed: 'rigid', probe: true })).not.toContain('knob');
    expect(text('level-bed', { bed: 'rigid' })).toContain('do not bend');
  });

  it('uses acetone on a plate only where its maker says so', () => {
    expect(text('clean-plate')).toContain('acetone only if the maker says so');
  });

  it('finds nothing to square with one screw and straight belts, but does not guess where nothing is stated', () => {
    expect(noSteps('square-gantry', { zScrews: 1, belts: 'straight' }).why).toBe('unfit');
    expect(steps('square-gantry').steps.length).toBeGreaterThan(3);
  });

  it('calls wheels absent only where all axes are stated', () => {
    expect(noSteps('check-wheels', { x: 'rods', y: 'rods', z: 'rods' }).why).toBe('unfit');
    expect(steps('check-wheels', { x: 'rods', y: 'rods' }).kind).toBe('steps');
  });

  it('calibrates the feeder last, after the real causes are ruled out', () => {
    expect(steps('calibrate-feeder').steps[0]?.text).toContain('Do this last');
  });
});
