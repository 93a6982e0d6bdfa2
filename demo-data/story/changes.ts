/** What was put off, promised, told late, put right and taken back; and one machine that was described anew. */
import { dateOfDay } from '../../src/index.ts';
import type { Build, EntryFields } from '../../src/index.ts';
import type { Days } from './days.ts';
import { runName } from './printing.ts';
import type { Run } from './runs.ts';
import type { Telling } from './telling.ts';

/** Juniper's rails wait for the grease, Hazel's wheels for Priya. */
export const plans = (days: Days): Telling[] => [
  {
    at: days.at(days.openDay(1), 15 * 60 + 20),
    by: 'tomasz',
    facts: [
      {
        kind: 'putOff',
        machine: 'juniper',
        task: 'lubricate-rails',
        until: dateOfDay(days.today + 3),
        reason: 'rail grease is on order',
      },
    ],
  },
  {
    at: days.at(days.openDay(1), 15 * 60 + 31),
    by: 'priya',
    facts: [{ kind: 'claimed', machine: 'hazel', task: 'check-wheels' }],
  },
];

const MINUTE = 60_000;

/** Elm's screws, some time last week, Odd thinks. */
export const toldLate = (days: Days): Telling[] => [
  {
    at: days.at(days.openDay(45), 12 * 60),
    precision: 'about',
    saidAt: days.at(days.openDay(40), 13 * 60),
    by: 'odd',
    facts: [{ kind: 'done', machine: 'elm', task: 'clean-enclosure' }],
  },
];

/** One print of the day: only the day was said, three days later. */
export function lateRun(tellings: readonly Telling[], runs: readonly Run[], days: Days): Telling[] {
  const day = days.openDay(11);
  const single = runs
    .filter((run) => run.day <= day && run.day > day - 40)
    .findLast((run, index, all) => isAlone(run, index, all));
  if (!single) return [...tellings];
  const late = {
    precision: 'day' as const,
    at: days.at(single.day, 12 * 60),
    saidAt: days.at(days.openDay(8), 10 * 60),
  };
  return tellings.map((telling) =>
    telling.name === runName('hazel', single) ? { ...telling, ...late } : telling,
  );
}

const isAlone = (run: Run, index: number, all: readonly Run[]): boolean =>
  all[index - 1]?.day !== run.day && all[index + 1]?.day !== run.day;

const TOO_MANY_HOURS = 1.5;
/** Told with too many hours, put right a little later. */
export function amendedRun(tellings: readonly Telling[], runs: readonly Run[], days: Days): Telling[] {
  const run = runs.findLast((each) => each.day <= days.openDay(26));
  if (!run) return [...tellings];
  return tellings.flatMap((telling): Telling[] => {
    const [fact] = telling.facts;
    if (telling.name !== runName('birch', run) || fact?.kind !== 'usage') return [telling];
    const wrong = { ...telling, facts: [{ ...fact, hours: run.hours + TOO_MANY_HOURS }] };
    return [wrong, correction(telling, (target) => ({ kind: 'amended', target, set: { hours: run.hours } }))];
  });
}

function correction(telling: Telling, say: (target: string) => EntryFields): Telling {
  const at = (telling.saidAt ?? telling.at) + 4 * MINUTE;
  return { at, by: telling.by, facts: [], corrects: { name: telling.name ?? '', say } };
}

/** Said of Alder, meant of another machine, taken back at once. */
export function takenBack(days: Days): Telling[] {
  const slip: Telling = {
    at: days.at(days.openDay(17), 22 * 60 - 8),
    by: 'odd',
    name: 'the slip',
    facts: [{ kind: 'usage', machine: 'alder', hours: 2.5, material: 'pla' }],
  };
  return [slip, correction(slip, (target) => ({ kind: 'takenBack', target }))];
}

/** Nobody had said at enrolment that Elm has a sock. */
export function withoutSock(build: Build): Build {
  const { sock: _sock, ...rest } = build;
  return rest;
}
export const describedAnew = (build: Build, days: Days): Telling[] => [
  {
    at: days.at(days.openDay(205), 9 * 60 + 5),
    by: 'tomasz',
    facts: [{ kind: 'changed', machine: 'elm', set: { build } }],
  },
];
