/** Every task there is a word for: how, with what, how long, what can hurt, when to stop, and who comes first. */
import { describe, expect, it } from 'vitest';
import { ruleOf } from '../../../src/maintenance/care/index.ts';
import { minutesOf } from '../../../src/maintenance/care/rule.ts';
import { cautionRow } from '../../../src/maintenance/cautions/forBuild.ts';
import { TASKS, isRoomTask, partReplacedBy } from '../../../src/maintenance/codes.ts';
import type { Task } from '../../../src/maintenance/codes.ts';
import { howTo } from '../../../src/maintenance/how/howTo.ts';
import { TOOLS } from '../../../src/maintenance/how/tools.ts';
import type { Build } from '../../../src/maintenance/machine.ts';
import { BUILDS } from '../../support/builds.ts';

const SAMPLES: readonly Build[] = [
  ...Object.values(BUILDS),
  { x: 'rods', rodBearing: 'polymer' },
  { filter: 'particle' },
  { sock: true, filamentSensor: true, bedHeater: 'low-voltage' },
];
/** Nobody is given steps for these, on any build. */
const CLOSED = ['replace-power-supply', 'replace-control-board'];
/** What a hurried reader would not miss: nothing hot, sharp, live, heavy or moving is touched. */
const HARMLESS = [
  'check-filament-path', 'check-notices', 'save-settings', 'check-safety-kit', 'replace-spool-holder',
]; // prettier-ignore

const answers = (task: Task) => SAMPLES.map((build) => howTo(task, build));

describe.each(TASKS)('%s', (task) => {
  it('has steps on some machine, or none on any with the reason, whom to ask, and what a member may do', () => {
    const given = answers(task).filter((answer) => answer.kind === 'steps');
    if (!CLOSED.includes(task)) return expect(given.length).toBeGreaterThan(0);
    for (const answer of answers(task))
      expect(answer).toMatchObject({
        kind: 'no-steps', why: 'never', because: expect.stringMatching(/\w/u), ask: expect.stringMatching(/qualified/u),
        before: expect.arrayContaining([expect.stringMatching(/[Pp]ull the plug/u)]),
        after: expect.arrayContaining([expect.stringMatching(/heater protection/u)]),
      }); // prettier-ignore
  });
  it('takes between one minute and an hour and a half of hands-on work', () => {
    for (const build of SAMPLES) {
      const minutes = minutesOf(ruleOf(task), build);
      expect(minutes).toBeGreaterThanOrEqual(1);
      expect(minutes).toBeLessThanOrEqual(90);
    }
  });
  it('says what can hurt and when to stop, or that no caution is needed', () => {
    const row = cautionRow(task);
    if (HARMLESS.includes(task)) return expect(row).toBe('none needed');
    expect(row).toMatchObject({ line: expect.stringMatching(/\w/u), stopWhen: expect.stringMatching(/\w/u) });
  });
  it('says what good looks like, when to stop, and that manual, local rules and licensed practice come first', () => {
    for (const answer of answers(task)) {
      expect(answer.defer).toMatch(/manual.*local rules.*licensed practice/u);
      if (answer.kind !== 'steps') continue;
      expect(answer.good).toMatch(/\.$/u);
      if (!HARMLESS.includes(task)) expect(answer.stopWhen).toMatch(/\w/u);
    }
  });
  it('names the part that a replacement fits', () => {
    for (const answer of answers(task))
      if (answer.kind === 'steps') expect(answer.spare).toBe(partReplacedBy(task));
  });
  it('is a task of the room or of a machine, as its rule says', () =>
    expect(ruleOf(task).place).toBe(isRoomTask(task) ? 'room' : 'machine'));
});

describe('tools', () => {
  it('of which sizes differ name theirs', () => {
    const sized = Object.entries(TOOLS).filter(([code]) => /^hex|spanner|screwdriver/u.test(code));
    expect(sized.length).toBeGreaterThan(7);
    for (const [code, text] of sized) expect([code, text]).toEqual([code, expect.stringMatching(/\d/u)]);
  });
  /** Words of a step, and the tools one of which must be on the list with it. */
  const NEEDS: readonly (readonly [RegExp, string])[] = [
    [/\bprop (?:the|what|Z|it)\b/iu, 'axis-prop'],
    [/magnifier/u, 'magnifier'],
    [/mirror/u, 'mirror'],
    [/vacuum/iu, 'vacuum'],
    [/\bbrush (?:the|it|dust|from|blades|out)/iu, 'stiff-brush soft-brush brass-brush vacuum'],
    [/\bmay jump|spring off slowly/u, 'eye-protection'],
    [/with (?:one|two) spanners?/u, 'block-spanner'],
    [/thermometer/u, 'thermometer'],
    [/pluck/iu, 'pitch-meter'],
    [/\bcut (?:the new one|2)/iu, 'tube-cutter'],
    [/check with the square/iu, 'square'],
    [/\btie the lead|tied along|lead tied|missing ties|, tied\b/iu, 'cable-ties'],
    [/grub screws?\b.*(?:loosen|nip|snug)|(?:loosen|nip|snug).*grub screw/iu, 'hex-1.5 hex-2'],
    [/thread-lock on|drop of thread-lock/iu, 'thread-lock'],
    [/\b(?:dry|lint-free|clean|damp) cloth/iu, 'cloth'],
    [/photograph/iu, 'phone memory-card'],
  ];
  it('that a step asks for are on its list', () => {
    const missing = TASKS.flatMap((task) =>
      answers(task).flatMap((answer) => {
        if (answer.kind !== 'steps') return [];
        const text = answer.steps.map((step) => step.text).join('\n');
        const listed: readonly string[] = [...answer.tools, ...answer.supplies];
        return NEEDS.filter(
          ([words, any]) => words.test(text) && !any.split(' ').some((tool) => listed.includes(tool)),
        ).map(([, any]) => `${task}: ${any}`);
      }),
    );
    expect([...new Set(missing)]).toEqual([]);
  });
});
