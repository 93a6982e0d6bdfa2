/** What putting off, running and figures of speech are read from: rows over the items, whatever the words stand in. */
import { describe, expect, it } from 'vitest';
import { actsOf } from './support/workshop.ts';

describe('Putting off', () => {
  it.each([
    ["left birch's belts until friday", 'tension-belts', '2026-03-13'],
    ["can't be bothered today: cba w hazel's screw, kick it to saturday", 'grease-screw', '2026-03-14'],
    ["stop nagging about alder's rods until friday", 'lubricate-rods', '2026-03-13'],
    ['Deferral: Hazel, bed levelling, to 2026-03-20.', 'level-bed', '2026-03-20'],
  ])('%s', (text, task, until) => {
    expect(actsOf(text)).toContainEqual(expect.objectContaining({ kind: 'defer', task, until }));
  });
  it('a thing that was left is no put-off where no time stands beside it', () => {
    expect(actsOf("left birch's belts alone")).toEqual([]);
  });
});

describe('A counter that no word names', () => {
  it.each([
    ['elm climbed to 2350 h', 'elm', 2350],
    ['birch has crept past 2318 h', 'birch', 2318],
    ['Counter reading, Alder, 4,133.2 h.', 'alder', 4133.2],
  ])('%s', (text, machine, hours) => {
    expect(actsOf(text)).toEqual([{ kind: 'meter', machine, hours }]);
  });
  it('a year is no counter', () => {
    expect(actsOf("the clock on the wall says cedar's nozzle was changed in 2019")).not.toContainEqual(
      expect.objectContaining({ kind: 'meter' }),
    );
  });
});

describe('Not meant as it was said', () => {
  it.each([
    'cedar died... of boredom, haha',
    "don't print on birch with the door open",
    'juniper died laughing',
    "a drop of oil on cedar's rods usually helps",
    'watch out, a loose belt on alder can skip teeth',
    'once maple has done 500 hours we swap the belts',
    'she claimed that maple ran 20 h',
    "Juniper's ball screws: greasing prepared, not executed (14 mL of grease drawn, returned).",
    'Lathe 3: spindle bearing replaced, run-out 4 µm.',
  ])('%s', (text) => {
    expect(actsOf(text)).toEqual([]);
  });
  it('a laugh takes no trouble back', () => {
    expect(actsOf('hazel jammed again lol')).toEqual([
      { kind: 'symptom', machine: 'hazel', symptom: 'no-extrusion' },
    ]);
  });
});

describe('Put right within the breath or afterwards', () => {
  it.each([
    ['until Monday, not Friday', { kind: 'amend', until: '2026-03-16' }],
    ['move that to hazel', { kind: 'amend', machine: 'hazel' }],
    ['Erratum: for 640 g read 604 g.', { kind: 'amend', grams: 604 }],
    ['new nozzle on birch - maple I mean', { kind: 'swap', machine: 'maple', part: 'nozzle' }],
    ['ran alder like 4h.. nah wait 5h, pla', { kind: 'usage', machine: 'alder', hours: 5, material: 'pla' }],
  ])('%s', (text, act) => {
    expect(actsOf(text)).toEqual([act]);
  });
  it('moving a machine is no correction', () => {
    expect(actsOf('move hazel to the window')).not.toContainEqual(expect.objectContaining({ kind: 'amend' }));
  });
});
