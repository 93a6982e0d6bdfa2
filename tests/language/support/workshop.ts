/** The demo workshop's names, and one whose names are ordinary words. */
import type { Act, KnownNames, SaidAt } from '../../../src/language/act.ts';
import { createReader } from '../../../src/language/read.ts';

const TREES = ['Alder', 'Birch', 'Cedar', 'Elm', 'Hazel', 'Juniper', 'Maple', 'Rowan'];
export const DEMO: KnownNames = {
  machines: TREES.map((name, i) => ({ name, aliases: [`#${i + 1}`] })),
  people: ['Ines', 'Tomasz', 'Priya', 'Odd'],
};
/** Names that are also a month, a fastener, a part number, two words, or carry an accent. */
export const AWKWARD: KnownNames = {
  machines: [
    { name: 'May', aliases: [] },
    { name: 'Bolt', aliases: ['#2'] },
    { name: 'P1-a', aliases: [] },
    { name: 'Big Blue', aliases: ['bb'] },
    { name: 'Éloïse', aliases: ['#5'] },
  ],
  people: ['Odd'],
};
/** Wednesday 2026-03-11, 15:40. */
export const NOW: SaidAt = { date: '2026-03-11', minute: 940 };

export const readDemo = createReader(DEMO);
export const readAwkward = createReader(AWKWARD);
export const actsOf = (text: string): Act[] => readDemo(text, NOW).acts.map(({ act }) => act);
export const awkwardActs = (text: string): Act[] => readAwkward(text, NOW).acts.map(({ act }) => act);
