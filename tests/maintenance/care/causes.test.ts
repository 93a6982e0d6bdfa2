/**
 * A technician's table of causes, row by row (judgement and common practice, no source): on a machine to which the cause
 * applies, its usual signs bring up the look that would find it. Causes of settings and filament have no task: the
 * answer sends people to the job and the spool before any of these.
 */
import { describe, expect, it } from 'vitest';
import { looksFor } from '../../../src/maintenance/care/looks.ts';
import type { Symptom, Task } from '../../../src/maintenance/codes.ts';
import { BUILDS, type DemoMachine } from '../../support/builds.ts';
import { demoTalk } from '../../support/talk.ts';

/** Cause, a machine that can have it, the look that finds it, and the symptoms of which it is a usual cause. */
const CAUSES: readonly (readonly [cause: string, on: DemoMachine, look: Task, symptoms: string])[] = [
  ['nozzle-part-clogged', 'alder', 'clean-nozzle', 'under-extrusion feeder-clicking'],
  ['nozzle-blocked', 'alder', 'clear-jam', 'no-extrusion feeder-clicking ground-filament'],
  ['nozzle-bore-worn', 'alder', 'check-nozzle', 'worn-nozzle rough-surface'],
  ['nozzle-joint-gap', 'alder', 'check-nozzle', 'nozzle-leak'],
  ['heat-creep', 'alder', 'check-fans', 'no-extrusion feeder-clicking'],
  ['hot-end-fan-failing', 'alder', 'check-fans', 'fan-stopped fan-noise no-extrusion'],
  ['liner-worn', 'alder', 'check-liner', 'no-extrusion under-extrusion'],
  ['tube-end-gap', 'alder', 'check-tube', 'no-extrusion stringing'],
  ['collet-worn', 'juniper', 'check-tube', 'tube-slipped'],
  ['feeder-gear-packed', 'alder', 'clean-feeder', 'ground-filament under-extrusion'],
  ['feeder-pressure-wrong', 'alder', 'clean-feeder', 'ground-filament'],
  ['feeder-gear-worn', 'alder', 'check-feeder-gear', 'ground-filament under-extrusion'],
  ['feeder-gear-slipping', 'alder', 'tighten-pulleys', 'under-extrusion'],
  ['feeder-motor-weak', 'alder', 'check-wiring', 'feeder-clicking'],
  ['filament-damp', 'cedar', 'dry-filament', 'damp-filament stringing rough-surface'],
  ['steps-per-mm-wrong', 'alder', 'calibrate-feeder', 'over-extrusion under-extrusion'],
  ['sensor-loose-or-failing', 'alder', 'check-heater', 'temperature-swing error-shutdown'],
  ['heater-loose-or-failing', 'alder', 'check-heater', 'no-heat temperature-swing'],
  ['hot-end-lead-fatigue', 'elm', 'check-wiring', 'temperature-swing error-shutdown'],
  ['bed-cable-fatigue', 'maple', 'check-wiring', 'bed-no-heat'],
  ['bed-heater-or-sensor-failed', 'rowan', 'check-wiring', 'bed-no-heat'],
  ['terminal-loose-or-charred', 'alder', 'check-wiring', 'burning-smell hot-connector'],
  ['part-fan-failed-or-duct', 'alder', 'check-fans', 'fan-stopped'],
  ['belt-slack', 'elm', 'tension-belts', 'belt-slack'],
  ['belt-worn-or-frayed', 'elm', 'check-belt', 'layer-shift'],
  ['pulley-screw-loose', 'elm', 'tighten-pulleys', 'layer-shift'],
  ['idler-bearing-worn', 'elm', 'check-idlers', 'squeak'],
  ['rods-dry', 'maple', 'lubricate-rods', 'squeak rough-motion'],
  ['linear-bearing-worn', 'alder', 'replace-bearing', 'grinding rattle'],
  ['rail-dry-or-dirty', 'cedar', 'lubricate-rails', 'rough-motion'],
  ['wheel-loose', 'birch', 'check-wheels', 'rattle ringing'],
  ['wheel-flat-or-worn', 'birch', 'check-wheels', 'flat-spot rough-motion'],
  ['wheel-too-tight', 'birch', 'check-wheels', 'rough-motion'],
  ['z-screw-dry-or-dirty', 'elm', 'grease-screw', 'z-banding'],
  ['z-screw-dirty-or-greased', 'rowan', 'clean-screw', 'z-banding'],
  ['gantry-out-of-square', 'juniper', 'square-gantry', 'uneven-first-layer'],
  ['frame-loose', 'alder', 'check-fasteners', 'ringing rattle loose-fastener'],
  ['printed-part-crept', 'alder', 'check-printed-parts', 'deformed-part'],
  ['nozzle-hit-print', 'alder', 'clear-debris', 'layer-shift detached-print'],
  ['travel-obstructed', 'alder', 'clear-debris', 'layer-shift'],
  ['motor-driver-hot', 'alder', 'check-fans', 'layer-shift'],
  ['bed-out-of-level', 'alder', 'level-bed', 'uneven-first-layer poor-adhesion'],
  ['spring-weak-or-knob-loose', 'hazel', 'level-bed', 'uneven-first-layer'],
  ['z-offset-wrong', 'alder', 'check-first-layer', 'first-layer-close first-layer-far'],
  ['plate-dirty', 'alder', 'clean-plate', 'poor-adhesion detached-print'],
  ['plate-worn-or-damaged', 'alder', 'check-plate', 'scratched-plate'],
  ['probe-dirty-loose-failed', 'cedar', 'check-probe', 'homing-failed'],
  ['end-stop-loose-failed', 'birch', 'check-wiring', 'homing-failed'],
  ['controller-or-firmware-hang', 'alder', 'check-notices', 'screen-frozen'],
  ['screen-or-cable', 'alder', 'check-wiring', 'screen-frozen'],
  ['motor-lead-or-plug-loose', 'alder', 'check-wiring', 'layer-shift'],
]; // prettier-ignore
const never = (): number => 0;
const looks = (symptom: Symptom, on: DemoMachine, share: (task: Task) => number = never): readonly Task[] =>
  looksFor(symptom, BUILDS[on], share).map(({ task }) => task);

describe.each(CAUSES)('%s on %s', (_, on, look, symptoms) => {
  it.each(symptoms.split(' '))(`is looked for by “${look}” after %s`, (symptom) =>
    expect(looks(symptom as Symptom, on)).toContain(look),
  );
});

describe('the order of the looks', () => {
  it('has safety first, unplugged and from outside, whatever is likelier', () => {
    for (const symptom of [
      'temperature-swing',
      'no-heat',
      'bed-no-heat',
      'error-shutdown',
      'power-lost',
    ] as const)
      expect(['check-wiring', 'check-heater', 'check-mains-lead']).toContain(looks(symptom, 'elm')[0]);
    expect(looks('under-extrusion', 'elm')[0]).toBe('clean-feeder');
  });
  it('then what is longest neglected', () => {
    const late = (task: Task): number => (task === 'check-wheels' ? 2 : 0.1);
    expect(looks('ringing', 'birch', late)[0]).toBe('check-wheels');
    expect(looks('ringing', 'birch')[0]).not.toBe('check-wheels');
  });
  it('has setting the feeder’s steps last: never the first answer to under-extrusion', () =>
    expect(looks('under-extrusion', 'alder').at(-1)).toBe('calibrate-feeder'));
  it('names nothing twice, and nothing that the machine is not built with', () => {
    for (const on of Object.keys(BUILDS) as DemoMachine[])
      for (const [, , , symptoms] of CAUSES)
        for (const symptom of symptoms.split(' ')) {
          const found = looks(symptom as Symptom, on);
          expect(new Set(found).size).toBe(found.length);
        }
    expect(looks('no-extrusion', 'cedar')).not.toContain('check-liner');
    expect(looks('ringing', 'elm')).not.toContain('check-wheels');
  });
});

describe('who asks what it could be', () => {
  it('is sent to what costs nothing first, then to the looks', async () => {
    const told = await (await demoTalk()).hear('birch is under-extruding, what could it be?');
    expect(told).toMatch(
      /First what costs nothing: the job’s settings, the spool, scraps in the way\.\n1\. clean the feeder/u,
    );
  });
  it.each([
    'why does elm smell of burning?',
    'elm smells of burning, what could it be?',
    'what would cause a hot connector on birch?',
  ])('of a danger has the stop answer and nothing to work through: “%s”', async (said) => {
    const told = await (await demoTalk()).hear(said);
    expect(told).toMatch(/^Stop\. Cut the power at the wall/u);
    expect(told).not.toMatch(/look in this order|check the wiring/u);
  });
});
