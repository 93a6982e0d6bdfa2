import { describe, expect, it } from 'vitest';
import { createReader } from '../../src/index.ts';
import { actsOf, awkwardActs } from './support/workshop.ts';

const machines = (acts: readonly object[]): unknown[] =>
  acts.map((act) => ('machine' in act ? act.machine : undefined));

describe('a machine is named', () => {
  it.each(['birch jammed', 'the Birch jammed', '#2 jammed', 'printer 2 jammed', 'no 2 jammed', 'no. 2 jammed', 'number two jammed', 'machine 2 jammed', 'BIRCH jammed', 'brich jammed'])(
    '%s',
    (text) => expect(machines(actsOf(text))).toEqual(['birch']),
  );
  it('in lists, ranges and exceptions', () => {
    expect(machines(actsOf('oiled the rods on alder, birch and cedar'))).toEqual(['alder', 'birch', 'cedar']);
    expect(machines(actsOf('checked the belts on #1 to #3'))).toEqual(['alder', 'birch', 'cedar']);
    expect(machines(actsOf('washed the plates on all but cedar'))).toHaveLength(7);
    expect(machines(actsOf('alder, birch and cedar: belts tensioned'))).toEqual(['alder', 'birch', 'cedar']);
  });
  it('names that disagree, and names that nobody bears, are asked about', () => {
    for (const text of ['#3 alder 5h', 'oak ran 4 h', 'printer 12 jammed', 'swapped a nozzle on 2 or 5']) expect(actsOf(text).map(({ kind }) => kind), text).toEqual(['unclear']);
  });
}); // prettier-ignore

describe('a name in its ordinary sense is no machine', () => {
  it.each([
    'maple veneer arrived',
    'rowan berries make a terrible jam',
    'alder wood is soft',
    'she has hazel eyes',
    'hazel said she is late',
    'elm street is closed',
    'cut three sheets of birch',
    'juniper gin for everyone',
    'rowan is on holiday',
  ])('%s', (text) => expect(actsOf(text)).toEqual([]));
});

describe('a machine called after a tree that is everyday English', () => {
  const read = createReader({
    machines: ['willow', 'oak', 'ash', 'cherry'].map((name) => ({ name, aliases: [] })),
    people: [],
  });
  const named = (text: string): unknown[] =>
    machines(read(text, { date: '2026-03-11', minute: 900 }).acts.map(({ act }) => act));
  it.each([
    ['status willow', ['willow']],
    ['history oak', ['oak']],
    ['can willow run 20 h?', ['willow']],
    ['oiled the rods willow', ['willow']],
    ['ash and cherry dusted', ['ash', 'cherry']],
  ])('%s', (text, expected) => expect(named(text)).toEqual(expected));
  it.each([
    'cherry juice all over the bench',
    'an oak table for the office',
    'oak veneer arrived',
    'cut the ash planks',
  ])('%s names none', (text) => expect(named(text)).toEqual([]));
});

describe('a workshop whose names are words', () => {
  it.each([
    ['cleared a jam on may', 'may'],
    ['bolt: plate cleaned', 'bolt'],
    ["bolt's belts tensioned", 'bolt'],
    ['P1-a ran 5 h', 'p1-a'],
    ['oiled the rods on big blue', 'big blue'],
    ['bb jammed', 'big blue'],
    ['éloïse is down', 'éloïse'],
    ['E\u0301loi\u0308se is down', 'éloïse'],
  ])('%s', (text, machine) => expect(machines(awkwardActs(text))).toEqual([machine]));

  it.each([
    'may need a new belt soon',
    'you may clean it',
    'see you on 3 May',
    'a bolt came loose on the trolley',
    'the sky is big blue and clear',
  ])('%s names none', (text) =>
    expect(machines(awkwardActs(text)).filter((name) => name !== undefined)).toEqual([]),
  );
  it('"Odd noticed an odd noise" names one person', () =>
    expect(actsOf('Odd noticed an odd noise')).toEqual([]));
});
