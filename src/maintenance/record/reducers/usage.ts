/** Operating time and filament. The commonest entry by far: it copies only what it changes. */
import type { Day, LocalCalendar } from '../../calendar.ts';
import type { Material } from '../../codes.ts';
import type { EntryOf } from '../../entry/entry.ts';
import { markOf, withRow } from '../mark.ts';
import type { MachineRecord, Totals } from '../record.ts';
import { addHours, hoursByDay, hoursOn, type DayShare } from '../runs.ts';
import { tidy } from '../tidy.ts';
import { weigh } from '../weight.ts';
import type { Reducer } from './reducer.ts';

export const usage: Reducer<'usage'> = (machine, entry, calendar) => {
  const shares = hoursByDay(entry, entry.hours ?? 0, calendar);
  machine.totals = added(machine, entry, newRunDays(machine, entry, shares, calendar));
  machine.loggedSinceAnchor = tidy(machine.loggedSinceAnchor + (entry.hours ?? 0));
  machine.loggedHours = tidy(machine.loggedHours + (entry.hours ?? 0));
  const mark = markOf(entry, machine.totals, calendar);
  machine.lastUsage = mark;
  machine.runByDay = addHours(machine.runByDay, shares);
  const oldest = shares.at(-1)?.day ?? mark.day;
  machine.firstRunDay = Math.min(machine.firstRunDay ?? oldest, oldest);
  if (shares.length === 0) machine.unmeasuredDay = mark.day;
};

/** Filament without hours ran too: its day counts, once. */
function newRunDays(
  machine: MachineRecord,
  entry: EntryOf<'usage'>,
  shares: readonly DayShare[],
  calendar: LocalCalendar,
): number {
  if (shares.length === 0) return isNewRunDay(machine, calendar.dayOf(entry.at)) ? 1 : 0;
  let days = 0;
  for (const { day } of shares) if (isNewRunDay(machine, day)) days += 1;
  return days;
}

const isNewRunDay = (machine: MachineRecord, day: Day): boolean =>
  machine.unmeasuredDay !== day && hoursOn(machine.runByDay, day) === 0;

function added(machine: MachineRecord, entry: EntryOf<'usage'>, runDays: number): Totals {
  const { totals } = machine;
  const hours = entry.hours ?? 0;
  const sums = { hours: tidy(totals.hours + hours), runDays: totals.runDays + runDays };
  const { hoursOf, gramsOf, unweighedHoursOf } = totals;
  const material = entry.material ?? machine.loaded?.material;
  if (!material) return { ...sums, hoursOf, gramsOf, unweighedHoursOf };
  const grams = weighed(machine, entry, material);
  const unweighed = grams === undefined && hours > 0;
  return {
    hours: sums.hours,
    runDays: sums.runDays,
    hoursOf: hours > 0 ? plus(hoursOf, material, hours) : hoursOf,
    gramsOf: grams === undefined ? gramsOf : plus(gramsOf, material, grams),
    unweighedHoursOf: unweighed ? plus(unweighedHoursOf, material, hours) : unweighedHoursOf,
  };
}

const weighed = (machine: MachineRecord, entry: EntryOf<'usage'>, material: Material): number | undefined =>
  entry.grams ??
  (entry.metres === undefined ? undefined : weigh(entry.metres, material, machine.build.filamentMm));

type Sums = Readonly<Partial<Record<Material, number>>>;
const plus = (sums: Sums, material: Material, amount: number): Sums =>
  withRow(sums, material, tidy((sums[material] ?? 0) + amount));
