/**
 * Terms of the standards, and what a cautions page may defer to (reference V-O1, V-O2).
 * Sources: EN 13306 and IEC 60050-192 (item, failure, preventive, corrective, operating time, up and down state),
 * ISO/ASTM 52900 (nozzle, build platform, extruder head, feedstock), in public excerpts; OSHA 29 CFR 1910.147.
 */
import { describe, expect, it } from 'vitest';
import { CAUTION_LINES } from '../../src/maintenance/cautions/keys.ts';
import { DEFER } from '../../src/maintenance/how/howTo.ts';
import { demoTalk } from '../support/talk.ts';

describe('V-O1: who speaks by the standards is understood', () => {
  it.each([
    ['material extrusion’s nozzle', 'swapped the extrusion nozzle on birch, worn', { kind: 'swapped', part: 'nozzle' }],
    ['build platform', 'replaced the build platform on elm', { kind: 'swapped', part: 'build-plate' }],
    ['feedstock', 'loaded pla feedstock on elm, 1 kg', { kind: 'loaded', material: 'pla', grams: 1000 }],
    ['fault', 'fault on elm: no heat', { kind: 'seen', symptom: 'no-heat' }],
    ['preventive', 'preventive maintenance on alder: oiled the rods', { kind: 'done', task: 'lubricate-rods' }],
    ['corrective', 'corrective maintenance: replaced the heater on elm', { kind: 'swapped', part: 'heater' }],
  ])('%s: “%s”', async (_, said, entry) => {
    const { entries } = await (await demoTalk()).say(said);
    expect(entries).toMatchObject([entry]);
  }); // prettier-ignore
});

describe('V-O2: what the cautions defer to', () => {
  it('is the manual, local rules and licensed practice, in every answer that tells how', async () => {
    expect(DEFER).toBe('The machine’s manual, local rules and licensed practice come first.');
    expect(await (await demoTalk()).hear('how do I check the wiring on elm?')).toContain(DEFER);
  });
  it('asks for the plug under the exclusive control of whoever does the work (29 CFR 1910.147 (a)(2)(iii)(A))', () =>
    expect(CAUTION_LINES.UNPLUG).toMatch(/pull the plug and keep it in sight or in your pocket/iu));
  it('keeps isopropyl alcohol from heat and air moving (NIOSH Pocket Guide: class IB flammable liquid)', () =>
    expect(CAUTION_LINES.SOLV).toMatch(/vapour catches fire: cold machine, window open/u));
});
