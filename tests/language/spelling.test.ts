import { describe, expect, it } from 'vitest';
import { createSpeller, distance, indexSpelling } from '../../src/language/spelling.ts';
import { actsOf, NOW, readDemo } from './support/workshop.ts';

describe('distance: optimal string alignment', () => {
  it.each([
    ['hazle', 'hazel', 1], // a transposition is one slip (Damerau)
    ['nozel', 'nozzle', 2],
    ['kitten', 'sitting', 3], // Levenshtein's own example
    ['', 'abc', 3],
  ])('%s to %s is %i', (a, b, far) => expect(distance(a, b)).toBe(far));
});

describe('a speller', () => {
  const speller = createSpeller([indexSpelling(new Map([['thermistor', 0]])), indexSpelling(new Map([['hazel', 0], ['maple', 0]]))], (word) => word === 'staple'); // prettier-ignore
  it('forgives one slip in a short word and two in a long one', () => {
    expect(speller('hazle')?.meant).toBe('hazel');
    expect(speller('thremistr')?.meant).toBe('thermistor');
  });
  it('leaves plain words, far words and short words alone', () => {
    for (const word of ['staple', 'hzl', 'haelz', 'map', 'xyzzy'])
      expect(speller(word), word).toBeUndefined();
  });
});

describe('in a message', () => {
  it('a misspelt machine is read, and the reading says so', () => {
    const reading = readDemo('Hazle nozel chnaged for hardend 0.6', NOW);
    expect(reading.acts[0]?.act).toMatchObject({ kind: 'swap', machine: 'hazel', part: 'nozzle' });
    expect(reading.acts[0]?.assumed).toEqual({ machine: { from: 'spelling', said: 'hazle' } });
  });
  it.each(['socket set is back', 'hazy day', 'a staple in the script', 'bear with me', 'elk in scene two'])(
    '%s has nothing put right into a part or a machine',
    (text) => expect(actsOf(text)).toEqual([]),
  );
  it('what was near a known word and came to nothing is offered', () => {
    expect(readDemo('nozzel guard?', NOW).acts).toEqual([]);
    expect(readDemo('nozzzle guard?', NOW).nearMisses).toContainEqual({ said: 'nozzzle', meant: 'nozzle' });
  });
});
