/**
 * The care that the demo's keepers gave: each task again and again in step with its rule, so that the shop is
 * in fair order, except where the story wants it late. It reads the care rules, so it follows when they change.
 */
import { foldName, partReplacedBy, rulesFor, termsOf } from '../../src/index.ts';
import type { Day, Interval, Rule, Task, Term, WorkshopMachine } from '../../src/index.ts';
import { chanceFor } from '../random.ts';
import type { Days } from './days.ts';
import type { Ledger } from './ledger.ts';

export interface CareDay {
  day: Day;
  task: Task;
  /** Share of its interval that was used when it was done. */
  used: number;
}

type Shares = Readonly<Record<string, Readonly<Partial<Record<Task, number>>>>>;
/** How much of the interval is used today, where the story wants a figure. 1 is due, more is late. */
const STANDS_AT: Shares = {
  alder: { 'lubricate-rods': 332 / 300, 'tension-belts': 85 / 90 },
  birch: { 'check-tube': 88 / 90, 'level-bed': 1, 'replace-guide-tube': 0.6 },
  cedar: { 'replace-nozzle': 0.77 },
  elm: { 'dust-off': 1 },
  hazel: { 'check-wheels': 34 / 30 },
  juniper: { 'check-plate': 1, 'lubricate-rails': 1.02 },
  maple: { 'replace-nozzle': 201 / 180 },
};
/** Nobody ever said that these were done. */
const NEVER_TOLD: Readonly<Record<string, readonly Task[]>> = {
  cedar: ['save-settings'],
  elm: ['check-guards'],
  hazel: ['check-feeder-gear'],
  juniper: ['check-idlers'],
  maple: ['save-settings'],
};
/** Told in `events.ts`. */
const TOLD_ELSEWHERE: Readonly<Record<string, readonly Task[]>> = { birch: ['replace-nozzle'] };
/** Replaced in turn; other parts go when they break. */
const REPLACED_IN_TURN: ReadonlySet<Task> = new Set<Task>([
  'replace-nozzle', 'replace-liner', 'replace-guide-tube', 'replace-filter',
]); // prettier-ignore
/** Done for the whole room at once: see `room.ts`. */
const FOR_THE_ROOM: ReadonlySet<Task> = new Set<Task>(['clear-debris', 'check-notices']);
/** Figures come out of divisions. */
const ROUNDING = 1e-9;

export function careOf(machine: WorkshopMachine, ledger: Ledger, from: Day, days: Days): CareDay[] {
  const name = foldName(machine.name);
  const silent = new Set([...(NEVER_TOLD[name] ?? []), ...(TOLD_ELSEWHERE[name] ?? [])]);
  return rulesFor(machine.build)
    .map(({ rule }) => rule)
    .filter((rule) => !silent.has(rule.task) && !FOR_THE_ROOM.has(rule.task) && inTurn(rule))
    .flatMap((rule) => turnsOf(rule, machine, ledger, from, days));
}

const inTurn = (rule: Rule): boolean =>
  partReplacedBy(rule.task) === undefined || REPLACED_IN_TURN.has(rule.task);

/** From today backwards: the last time is where the story wants it, those before it in step. */
function turnsOf(rule: Rule, machine: WorkshopMachine, ledger: Ledger, from: Day, days: Days): CareDay[] {
  const name = foldName(machine.name);
  const chance = chanceFor(`care ${name} ${rule.task}`);
  const terms = allTerms(rule, machine, ledger);
  if (terms.length === 0) return [];
  const turns: CareDay[] = [];
  let until = days.today;
  let wanted = STANDS_AT[name]?.[rule.task] ?? 0.12 + 0.56 * chance();
  for (;;) {
    const turn = latestDay(
      until,
      from,
      days,
      (day) => shareOf(terms, machine, ledger, day, until) + ROUNDING >= wanted,
    );
    const later = turns.at(-1);
    if (later) later.used = shareOf(terms, machine, ledger, turn ?? from, until);
    if (turn === undefined) return turns;
    turns.push({ day: turn, task: rule.task, used: 1 });
    until = turn;
    wanted = 0.82 + 0.2 * chance();
  }
}

/** The later the day, the less is used since: so the latest that fits is found by halving. */
function latestDay(before: Day, from: Day, days: Days, fits: (day: Day) => boolean): Day | undefined {
  let [fitting, tooLate] = [from - 1, before];
  while (tooLate - fitting > 1) {
    const middle = Math.floor((fitting + tooLate) / 2);
    if (fits(middle)) fitting = middle;
    else tooLate = middle;
  }
  while (fitting >= from && !days.isOpen(fitting)) fitting -= 1;
  return fitting >= from ? fitting : undefined;
}

const shareOf = (
  terms: readonly Term[],
  machine: WorkshopMachine,
  ledger: Ledger,
  from: Day,
  to: Day,
): number => Math.max(...terms.map((term) => ledger.share(term, machine.build.nozzle ?? {}, from, to)));

/** The machine's own interval, or the rule's; with filament that calls for it, the shorter one too. */
function allTerms(rule: Rule, { build, intervals }: WorkshopMachine, ledger: Ledger): Term[] {
  const nozzle = build.nozzle ?? {};
  const usual = termsOf(rule, { build, nozzle, tubeTrims: 0 });
  const own = intervals[rule.task];
  if (own) return ownTerms(own, usual);
  const { faster } = rule;
  const applies =
    faster && (faster.only?.(build) ?? true) && faster.while.some((of) => ledger.materials.has(of));
  return [...usual, ...(applies ? faster.every : [])];
}

const ownTerms = (own: Interval, usual: readonly Term[]): Term[] => [
  ...(own.hours === undefined ? [] : [{ trigger: 'hours' as const, interval: own.hours }]),
  ...(own.days === undefined ? [] : [{ trigger: 'days' as const, interval: own.days }]),
  ...(own.runDays === undefined ? [] : [{ trigger: 'runDays' as const, interval: own.runDays }]),
  ...(own.dose === undefined
    ? []
    : usual.flatMap((term) => (term.trigger === 'dose' ? [{ ...term, interval: own.dose ?? 1 }] : []))),
];
