import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NOW, readDemo } from './support/workshop.ts';

const WORDS = ['alder', '#2', 'maple', 'swapped', 'nozzle', 'the', 'and', ',', '.', 'not', '6.5h', 'jammed', 'no', 'make that', '3', 'yesterday', 'why', '?', 'all but', 'same on', 'worn', 'I\'ll', '\n', '"', '>', '`', '<@U1>', 'monday', '4 march', '\ud800', 'é']; // prettier-ignore
const telegram = fc.array(fc.constantFrom(...WORDS), { maxLength: 60 }).map((words) => words.join(' '));

describe('any message', () => {
  it('is read without a fault, whatever characters it holds', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (text) => readDemo(text, NOW).acts.length >= 0), { numRuns: 300 });
    fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 200 }), (units) => readDemo(String.fromCharCode(...units), NOW).acts.length >= 0), { numRuns: 300 });
  });
  it('gives spans inside the message and a doubt for each unclear act', () => {
    fc.assert(
      fc.property(telegram, (text) => {
        const reading = readDemo(text, NOW);
        for (const { trail } of reading.acts) for (const { span } of trail) expect(span[0] >= 0 && span[1] <= text.length && span[0] <= span[1]).toBe(true);
        expect(reading.doubts).toHaveLength(reading.acts.filter(({ act }) => act.kind === 'unclear').length);
      }),
      { numRuns: 400 },
    );
  });
  it('holds only finite figures and known machines', () => {
    fc.assert(
      fc.property(telegram, (text) => {
        for (const { act } of readDemo(text, NOW).acts) {
          for (const value of Object.values(act)) if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
          if ('machine' in act) expect(['alder', 'birch', 'cedar', 'elm', 'hazel', 'juniper', 'maple', 'rowan', 'room']).toContain(act.machine);
        }
      }),
      { numRuns: 400 },
    );
  });
  it('reads the same twice', () => {
    fc.assert(fc.property(telegram, (text) => {
        expect(readDemo(text, NOW)).toEqual(readDemo(text, NOW));
      }), { numRuns: 100 });
  });
}); // prettier-ignore

it('over 40,000 units nothing is read', () => {
  expect(readDemo('a'.repeat(40_001), NOW).acts.map(({ act }) => act)).toEqual([
    { kind: 'unclear', why: 'too long' },
  ]);
});
