/** What holds for any message: nothing throws, a second delivery writes nothing, undo is as if never said. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSafetySymptom } from '../../src/maintenance/codes.ts';
import type { DueRow } from '../../src/maintenance/due/row.ts';
import { demoTalk, NOW, talkIn } from '../support/talk.ts';

const WORKSHOP = `
workshop: { name: Test, zone: Europe/Copenhagen }
people: [{ name: Ines, role: keeper }, { name: Odd, role: member }]
machines:
  - name: Alder
    startHours: 100
    inUseSince: 2026-01-01
    build: { x: rods, y: rods, rodBearing: ball, belts: straight, feed: bowden, hotEnd: lined, nozzle: { material: brass, boreMm: 0.4 } }
  - name: Birch
    startHours: 200
    inUseSince: 2026-01-01
    build: { x: wheels, belts: straight, feed: direct, hotEnd: all-metal, nozzle: { material: brass, boreMm: 0.4 } }
shelf: [{ part: nozzle, fitted: brass 0.4, count: 3 }]
`;

const WORDS = [
  'cleared', 'a', 'jam', 'on', 'alder', 'birch', 'swapped', 'the', 'nozzle', 'worn', 'ran', '6.5 h', '30h', 'yesterday', 'tomorrow',
  'oiled', 'rods', 'not', 'is', 'out of use', 'back', 'undo', 'make that', '12', 'smoke', 'near', 'and', ',', '?', 'no', 'yes', '2',
  'all fine', 'push', 'belts', 'to friday', 'I’ll', 'do', 'why', 'clicking', '#3', '<!here>', 'counter', '4127', 'birch,', 'both',
]; // prettier-ignore
const sentence = fc
  .array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 9 })
  .map((words) => words.join(' '));
const message = fc.oneof(
  { weight: 4, arbitrary: sentence },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 60 }) },
);
const speaker = fc.constantFrom('Ines', 'Odd');

describe('any conversation', () => {
  it('is answered without a fault, and a second delivery of each message writes nothing', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(message, speaker), { minLength: 1, maxLength: 8 }), async (said) => {
        const talk = await talkIn(WORKSHOP);
        for (const [i, [text, as]] of said.entries()) {
          const first = await talk.say(text, { as, key: `m${i}` });
          const again = await talk.say(text, { as, key: `m${i}` });
          expect(again).toEqual({ ...first, outcome: 'repeated', entries: [] });
        }
      }),
      { numRuns: 25 },
    );
  });

  it('leaves the record as it was after undo', async () => {
    await fc.assert(
      fc.asyncProperty(sentence, async (text) => {
        const talk = await talkIn(WORKSHOP);
        const rows = () => talk.bot.due({ now: NOW + 3_600_000 });
        const before = await rows();
        const answer = await talk.say(text);
        // a hold is lifted by a reason, not by undo
        const holds = answer.entries.some((e) => e.kind === 'seen' && isSafetySymptom(e.symptom));
        if (answer.entries.length === 0 || holds) return;
        await talk.say('undo');
        expect(strip(await rows())).toEqual(strip(before));
      }),
      { numRuns: 25 },
    );
  });

  it('writes only from a message that says so: questions and plans leave the journal alone', async () => {
    const talk = await demoTalk();
    for (const text of [
      "what's overdue on alder?",
      'should someone oil the rods on alder?',
      'if birch jams again swap the nozzle',
      'we need to level hazel some time',
      "haven't cleaned the plate on elm",
      'maple syrup on the pancakes, 3 h in the oven',
    ])
      // prettier-ignore
      expect([text, (await talk.say(text)).entries]).toEqual([text, []]);
  });
});

const strip = (rows: readonly DueRow[]): string[] =>
  rows.map(({ machine, task, state, used, share, since }) =>
    [machine, task, state, used, share, since?.at, since?.why].join(' '),
  );
