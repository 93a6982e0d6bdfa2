/** The room, the shelf, the notes between shifts. */
import { ROOM, roomRules, ruleOf } from '../../src/index.ts';
import type { Rule, StockItem, Task, Term, Workshop } from '../../src/index.ts';
import { chanceFor } from '../random.ts';
import type { Days } from './days.ts';
import type { Telling } from './telling.ts';

const done = (task: Task) => ({ kind: 'done', machine: ROOM, task }) as const;

/** Each morning the scraps of the day before; today nobody has yet. */
export function debris(days: Days): Telling[] {
  const tellings: Telling[] = [];
  for (let day = days.first + 1; day < days.today; day += 1)
    if (days.isOpen(day))
      tellings.push({
        at: days.at(day, 6 * 60 + 20),
        by: day % 2 === 0 ? 'priya' : 'odd',
        facts: [done('clear-debris')],
      });
  return tellings;
}

/** The room's own looks and the notices of the makers, each in its turn. */
export function roomCare(workshop: Workshop, days: Days): Telling[] {
  const rules = [...roomRules().map(({ rule }) => rule), ruleOf('check-notices')];
  return rules.flatMap((rule) => {
    const interval = daysOf(rule, workshop);
    const chance = chanceFor(`room ${rule.task}`);
    const tellings: Telling[] = [];
    for (
      let ago = Math.round(interval * (0.15 + 0.5 * chance()));
      days.today - ago > days.first;
      ago += Math.round(interval * 0.93)
    )
      tellings.push({ at: days.at(days.openDay(ago), 6 * 60 + 30), by: 'tomasz', facts: [done(rule.task)] });
    return tellings;
  });
}

const MONTH = 30;
function daysOf(rule: Rule, { room }: Workshop): number {
  const own = Object.entries(room.intervals).find(([task]) => task === rule.task)?.[1];
  const terms: readonly Term[] = typeof rule.every === 'function' ? [] : rule.every;
  return own?.days ?? terms.find((term) => term.trigger === 'days')?.interval ?? MONTH;
}

const DELIVERIES: readonly (readonly [daysAgo: number, part: StockItem, change: number, fitted?: string])[] =
  [
    [281, 'cloth', -10],
    [224, 'nozzle', 4, 'brass 0.4'],
    [197, 'liner', 3, 'PTFE'],
    [185, 'guide-tube', 2, 'PTFE 4 x 2 mm'],
    [171, 'air-can', -1],
    [133, 'filter', 2, 'carbon'],
    [118, 'nozzle', 4, 'brass 0.4'],
    [92, 'nozzle', 1, 'brass 0.8'],
    [77, 'nozzle', 2, 'hardened 0.6'],
    [64, 'alcohol', 2],
    [51, 'oil', -1],
    [15, 'cloth', 20],
  ];

/** Deliveries, things used up, and a count a week ago: the last brass nozzle. */
export const shelf = (days: Days): Telling[] => [
  ...DELIVERIES.map(([daysAgo, part, change, fitted]): Telling => ({
    at: days.at(days.openDay(daysAgo), 9 * 60),
    by: 'ines',
    facts: [{ kind: 'stockMoved', part, change, ...(fitted === undefined ? {} : { fitted }) }],
  })),
  {
    at: days.at(days.openDay(7), 9 * 60 + 10),
    by: 'ines',
    facts: [
      { kind: 'stockCounted', part: 'nozzle', fitted: 'brass 0.4', count: 1 },
      { kind: 'stockCounted', part: 'liner', fitted: 'PTFE', count: 2 },
      { kind: 'stockCounted', part: 'cloth', count: 32 },
    ],
  },
];

/** Minutes until the next shift has read it. */
const TAKEN_AFTER = 6;
const HANDOVER = 14 * 60 + 5;
export function notes(days: Days): Telling[] {
  const handovers = [1, 3, 5, 8, 10].flatMap((daysAgo): Telling[] => [
    {
      at: days.at(days.openDay(daysAgo), HANDOVER),
      by: 'ines',
      facts: [{ kind: 'handedOver', to: 'Tomasz' }],
    },
    {
      at: days.at(days.openDay(daysAgo), HANDOVER + TAKEN_AFTER),
      by: 'tomasz',
      facts: [{ kind: 'tookOver', from: 'Ines' }],
    },
  ]);
  const said = (daysAgo: number, by: string, text: string, machine?: string): Telling => ({
    at: days.at(days.openDay(daysAgo), HANDOVER - 3),
    by,
    facts: [{ kind: 'noted', text, ...(machine === undefined ? {} : { machine }) }],
  });
  return [
    ...handovers,
    said(41, 'tomasz', 'the second drawer sticks: lift it'),
    said(9, 'priya', 'door switch is slow when the room is cold', 'elm'),
    said(5, 'ines', 'premiere next week: keep Juniper free for the big masks'),
  ];
}
