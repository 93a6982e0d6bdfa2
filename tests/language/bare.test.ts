import { describe, expect, it } from 'vitest';
import { NOW, readDemo } from './support/workshop.ts';

const bare = (text: string) => readDemo(text, NOW).bare;

describe('a message that can answer an open question', () => {
  it.each([
    ['alder', { machine: 'alder', machines: ['alder'] }],
    ['on #2', { machine: 'birch' }],
    ['alder and elm', { machines: ['alder', 'elm'] }],
    ['5', { number: 5 }],
    ['6.5 h', { number: 6.5, unit: 'hours' }],
    ['yes', { yes: true }],
    ['nope', { yes: false }],
    ['worn', { reason: 'worn' }],
    ['it was planned', { reason: 'planned' }],
    ['the first one', { ordinal: 1 }],
    ['these two', { choice: 'these' }],
    ['all', { choice: 'all' }],
    ['yesterday', { date: '2026-03-10' }],
    ['friday', { date: '2026-03-06', dateAhead: '2026-03-13' }],
    ['the part fan', { part: 'part-fan' }],
  ])('%s', (text, answer) => expect(bare(text)).toMatchObject({ text, ...answer }));

  it.each(['cleared a jam on birch and swapped its nozzle', 'hmm', 'the copier is out of toner', ''])('"%s" answers nothing', (text) =>
    expect(bare(text)).toBeUndefined(),
  );
}); // prettier-ignore
