import { describe, expect, it } from 'vitest';
import { describeNozzle, readNozzle } from '../../../src/maintenance/record/nozzle.ts';
import { byOrder } from '../../../src/maintenance/record/order.ts';
import { bagOf, bagWithin, sameBag } from '../../../src/maintenance/record/words.ts';

describe('the order of the fold', () => {
  const base = { at: 10, saidAt: 10, act: 1, id: 'b' };

  it.each([
    ['when it happened', { at: 9, saidAt: 99, act: 9, id: 'z' }],
    ['when it was said', { at: 10, saidAt: 9, act: 9, id: 'z' }],
    ['its place in the message', { at: 10, saidAt: 10, act: 0, id: 'z' }],
    ['its id', { at: 10, saidAt: 10, act: 1, id: 'a' }],
  ])('goes by %s before all that follows', (_what, earlier) => {
    expect(byOrder(earlier, base)).toBeLessThan(0);
    expect(byOrder(base, earlier)).toBeGreaterThan(0);
  });
});

describe('the words for what was fitted', () => {
  it('are the same in any order and writing', () => {
    expect(sameBag(bagOf('Hardened 0,6 mm'), bagOf('0.60 hardened'))).toBe(true);
    expect(sameBag(bagOf('hardened 0.6'), bagOf('hardened 0.4'))).toBe(false);
  });

  it('may say less of the same', () => {
    expect(bagWithin(bagOf('hardened 0.6'), bagOf('hardened steel 0.6'))).toBe(true);
    expect(bagWithin(bagOf('brass 0.6'), bagOf('hardened steel 0.6'))).toBe(false);
  });
});

describe('a nozzle', () => {
  it.each([
    ['hardened 0.6', { material: 'hardened', boreMm: 0.6 }],
    ['0,4mm brass', { material: 'brass', boreMm: 0.4 }],
    ['plated brass', { material: 'plated' }],
    ['a ruby tip', { material: 'gem' }],
    ['.8', { boreMm: 0.8 }],
    ['the old one', {}],
    // a thread is no bore, and two figures are none
    ['M6', {}],
    ['0.4 or 0.6', {}],
    ['', {}],
  ])('read from %j', (text, nozzle) => expect(readNozzle(text)).toEqual(nozzle));

  it('is described as it is read', () => {
    expect(describeNozzle({ material: 'hardened', boreMm: 0.6, mount: 'threaded' })).toBe('hardened 0.6');
    expect(describeNozzle({})).toBeUndefined();
  });
});
