/**
 * The technician's caution table, row by row, written down a second time by hand (judgement and common practice, no
 * source): what the line of a task must name, which hazards go with it, what must end the work. And the stop list.
 */
import { describe, expect, it } from 'vitest';
import { cautionRow } from '../../../src/maintenance/cautions/forBuild.ts';
import { FIRST_AID, injuryLines } from '../../../src/maintenance/cautions/injury.ts';
import { CAUTION_KEYS, CAUTION_LINES, type CautionKey } from '../../../src/maintenance/cautions/keys.ts';
import { NEVER_TOPICS } from '../../../src/maintenance/cautions/never.ts';
import { neverSteps } from '../../../src/maintenance/cautions/neverSteps.ts';
import { stopLines } from '../../../src/maintenance/cautions/stop.ts';
import { SAFETY_SYMPTOMS } from '../../../src/maintenance/codes.ts';
import type { Task } from '../../../src/maintenance/codes.ts';
import { howTo } from '../../../src/maintenance/how/howTo.ts';

interface Row {
  tasks: string;
  /** What is said of it: the caution's line, or a step where it is met. */
  says: readonly RegExp[];
  keys?: string;
  stop?: readonly RegExp[];
}

const ROWS: readonly Row[] = [
  { tasks: 'dust-off clean-fans', says: [/off.*cool/iu, /vacuum/iu, /blades/iu, /upright/iu, /away from hot parts|no spray on hot parts/iu], stop: [/carbon dust.*board/iu] },
  { tasks: 'clear-debris', says: [/stands still/iu, /below 50 °C/u, /no blade on a warm bed/iu], stop: [/round a lead.*power off/iu] },
  { tasks: 'clean-plate', says: [/off and cold/iu, /alcohol away from heat/iu, /no acetone unless.*maker/iu], stop: [/chipped/iu] },
  { tasks: 'clean-feeder', says: [/unload first/iu, /motors off/iu, /brush/iu, /eye protection/iu] },
  { tasks: 'clean-nozzle', says: [/hot tip/iu, /long brass brush/iu, /heaters off/iu, /clear of the leads/iu], stop: [/crept up to the heater or sensor leads/iu] },
  { tasks: 'clean-screw', says: [/screw that is not turning/iu], keys: 'DROP' },
  { tasks: 'clean-enclosure', says: [/cold and unplugged/iu, /nothing wet near the electrics/iu] },
  { tasks: 'clear-jam', says: [/filament’s own print temperature/iu, /face away/iu, /pull slowly/iu, /never a flame/iu], keys: 'HOT FUME', stop: [/hot end’s limit/iu, /burning/iu, /three tries/iu] },
  { tasks: 'lubricate-rods', says: [/power off/iu, /by hand/iu, /drop/iu, /none on belts, wheels or plate/iu], stop: [/polymer/iu] },
  { tasks: 'lubricate-rails', says: [/power off/iu, /by hand/iu, /drop/iu, /none on belts, wheels or plate/iu] },
  { tasks: 'grease-screw', says: [/power off/iu, /thin film/iu, /wipe off the rest/iu], keys: 'DROP', stop: [/nut is plastic and its maker names no lubricant/iu] },
  { tasks: 'grease-ball-screw', says: [/prop/iu, /power goes off/iu, /thin film/iu], keys: 'DROP' },
  { tasks: 'tighten-pulleys', says: [/power off/iu, /short key, no force/iu, /off plastics/iu], stop: [/grub screw is rounded: fit a new one/iu] },
  { tasks: 'tension-belts', says: [/motors off/iu, /fingers clear/iu, /not as tight as it will go/iu, /free by hand/iu], stop: [/tensioner is cracked/iu, /frayed/iu] },
  { tasks: 'check-fasteners', says: [/off/iu, /weight of the gantry before a frame screw/iu], keys: 'DROP', stop: [/cracked/iu] },
  { tasks: 'check-printed-parts', says: [/cold/iu, /near the hot block/iu], stop: [/soft, or touches the hot block/iu] },
  { tasks: 'check-wheels', says: [/off/iu, /by hand/iu], stop: [/split/iu] },
  { tasks: 'check-tube trim-tube', says: [/cold, filament/iu], keys: 'KNIFE', stop: [/brown or black/iu] },
  { tasks: 'replace-liner', says: [/cold/iu, /bin/iu, /never heated or burnt/iu], stop: [/overheated.*heater/iu] },
  { tasks: 'check-nozzle', says: [/cold, or with a mirror/iu, /no face near a hot tip/iu], stop: [/above the nozzle/iu] },
  { tasks: 'replace-nozzle', says: [/two spanners/iu, /heaters off/iu, /one-piece or quick-change: cold/iu], keys: 'HOT SHORT', stop: [/heat break turns or bends/iu, /will not seat/iu] },
  { tasks: 'check-first-layer', says: [/hands off while it homes/iu, /finger on the switch/iu], stop: [/scrapes.*stop the job/iu] },
  { tasks: 'check-heater', says: [/unplugged/iu, /cold/iu, /gentle tug/iu], stop: [/loose, melted, brown or bare/iu] },
  { tasks: 'test-protection', says: [/keeper/iu, /stays beside it/iu, /hand on the switch/iu], stop: [/keeps rising: off at the plug, out of use/iu] },
  { tasks: 'check-wiring', says: [/look, do not pull/iu], keys: 'UNPLUG MAINS', stop: [/bare, brown, soft or smells/iu, /mains lead is loose/iu, /fuse has gone again/iu] },
  { tasks: 'replace-heater replace-thermistor', says: [/unplugged/iu, /same voltage and watts/iu, /strain relief/iu, /test the heater protection/iu], stop: [/rating is not known/iu, /mains voltage/iu] },
  { tasks: 'replace-hot-end-fan replace-part-fan', says: [/unplugged/iu, /same voltage/iu], stop: [/voltage is not known/iu] },
  { tasks: 'replace-power-supply replace-control-board', says: [/qualified/iu], keys: 'MAINS', stop: [/always/iu] },
  { tasks: 'replace-bed-heater', says: [/unplugged and cold/iu, /mains-heated bed is for a qualified person/iu], keys: 'MAINS', stop: [/heated from the mains/iu] },
  { tasks: 'level-bed', says: [/paper under a hot nozzle burns fingers/iu, /motors off/iu], keys: 'DROP HOT', stop: [/cracked/iu] },
  { tasks: 'calibrate-feeder', says: [/hot/iu, /hands clear/iu, /do this last/iu] },
  { tasks: 'update-firmware', says: [/settings saved/iu, /attended/iu, /heaters off/iu, /power not cut/iu, /test the heater protection after/iu], stop: [/protection test fails/iu] },
  { tasks: 'dry-filament', says: [/stay by unless the dryer is made to run alone/iu], keys: 'OVEN', stop: [/smells/iu] },
  { tasks: 'replace-filter', says: [/off/iu, /bag/iu, /gloves and mask for a particle filter/iu], stop: [/smoke/iu] },
  { tasks: 'replace-belt replace-x-belt replace-y-belt replace-idler replace-bearing replace-wheel replace-rod', says: [/power off/iu, /eye protection/iu], keys: 'DROP MOVE CUT' },
  { tasks: 'replace-rail', says: [/power off/iu], keys: 'DROP MOVE' },
  { tasks: 'replace-lead-screw replace-screw-nut', says: [/prop bed or gantry/iu], keys: 'DROP MOVE' },
]; // prettier-ignore

const EACH = ROWS.flatMap((row) => row.tasks.split(' ').map((task) => [task as Task, row] as const));

/** The line, and the steps of a build that states a low-voltage bed: what is told to somebody who asks how. */
function told(task: Task): { said: string; keys: readonly string[]; stopWhen: string } {
  const row = cautionRow(task);
  if (row === 'none needed') throw new Error(`${task} has no caution`);
  const answer = howTo(task, { bedHeater: 'low-voltage' });
  const steps = answer.kind === 'steps' ? answer.steps.map(({ text }) => text) : [];
  return { said: [row.line, ...steps].join('\n'), keys: row.keys, stopWhen: row.stopWhen ?? '' };
}

describe.each(EACH)('%s', (task, { says, keys, stop }) => {
  it('says what the table asks for, with its hazards, and when to stop', () => {
    const { said, keys: found, stopWhen } = told(task);
    for (const words of says) expect(said).toMatch(words);
    for (const key of keys?.split(' ') ?? []) expect(found).toContain(key);
    for (const words of stop ?? []) expect(stopWhen).toMatch(words);
  });
});

describe('the hazards’ own lines', () => {
  const SAYS: Readonly<Record<CautionKey, readonly RegExp[]>> = {
    HOT: [/below 50 °C/u, /heat gloves/u, /no gloves near turning/u],
    UNPLUG: [/plug/iu, /in sight or in your pocket/u, /2 minutes/u],
    MAINS: [/mains side and the power supply/u, /qualified person only/u],
    MOVE: [/power off/iu, /belts, wheels/u, /queued jobs cancelled/u],
    DROP: [/prop the bed or gantry first/iu, /motors are off/u],
    SHORT: [/second spanner/u, /heater or sensor leads/u],
    SOLV: [/alcohol/iu, /cold machine/u, /window open/u, /cap on/u, /cloth left on the bed/u],
    FUME: [/ptfe/iu, /air the room/u, /do not lean in/u, /do not heat it again/u],
    DUST: [/carbon and glass/iu, /vacuum/u, /do not blow/u, /eye protection/u, /wash hands/u],
    CUT: [/broken filament/iu, /glass/u, /swarf/u, /eye protection/u, /gloves out of the machine/u],
    KNIFE: [/away from the hand/u, /bench/u, /never while it is in the machine/u],
    OVEN: [/maker’s temperature/u, /never an oven used for food/u, /below where the plastic softens/u],
  };
  it.each(CAUTION_KEYS)('%s names the real thing', (key) => {
    for (const words of SAYS[key]) expect(CAUTION_LINES[key]).toMatch(words);
  });
});

describe('the stop list', () => {
  it.each(SAFETY_SYMPTOMS)('%s: one answer, in this order, and nothing asked', (symptom) => {
    const lines = stopLines(symptom, { tell: 'Ines', machine: 'Cedar' });
    expect(lines[0]).toBe(
      'Stop. Cut the power at the wall if you can reach it without passing smoke or fire; do not touch the machine.',
    );
    expect(lines[1]).toMatch(
      /^Flames, or smoke that does not stop: warn the others, get out, shut the door, call the fire service\. Extinguisher only if you are trained and your way out is behind you\.$/u,
    );
    expect(lines.slice(-2)).toEqual(['Tell Ines.', 'Cedar is now held.']);
    expect(lines.length).toBeLessThanOrEqual(5);
    expect(lines.join(' ')).not.toMatch(/\?|\bsafe\b|noted/iu);
  });
  it('sends what is live to a qualified person', () => {
    for (const symptom of ['shock', 'bare-wire', 'hot-connector'] as const)
      expect(stopLines(symptom).join(' ')).toMatch(/qualified person/u);
    expect(stopLines('burning-smell').join(' ')).not.toMatch(/qualified person/u);
  });
});

describe('an injury', () => {
  it('is met with first aid, and with nothing else', () => {
    expect(injuryLines('burn')).toEqual([
      'First aid first; the emergency number if it is serious.',
      FIRST_AID.burn,
      'Tell your first-aider.',
    ]);
    expect(FIRST_AID.burn).toMatch(/cool running water for 20 minutes/u);
  });
});

describe('what is never given as steps', () => {
  /** As the technician lists it; the board's wiring comes from the row of the parts above. */
  const LISTED: Readonly<Record<(typeof NEVER_TOPICS)[number], RegExp>> = {
    'open-power-supply': /opening or changing a power supply/u,
    'board-wiring': /control board/u,
    'mains-bed-wiring': /wiring of a mains-heated bed/u,
    'bridge-protection': /bridging a door switch, thermal fuse or other protection/u,
    'raise-maximum': /raising the maximum temperature/u,
    'flame-on-nozzle': /cleaning a nozzle with a flame/u,
    'food-oven': /drying filament in an oven used for food/u,
    'lined-too-hot': /PTFE-lined hot end above its limit/u,
    'powered-wiring': /wiring with the power on/u,
    'run-bare-or-unguarded': /running with a bare wire or without a guard/u,
    'bigger-fuse': /fuse by a bigger one/u,
  };
  it.each(NEVER_TOPICS)('%s has its reason and somebody to ask, on every build', (topic) => {
    for (const build of [{}, { bedHeater: 'low-voltage', hotEnd: 'all-metal' }] as const)
      expect(neverSteps(topic, build)).toMatchObject({
        about: expect.stringMatching(LISTED[topic]),
        because: expect.stringMatching(/\w/u),
        ask: expect.stringMatching(/qualified|keeper|maker/u),
      });
  });
});
