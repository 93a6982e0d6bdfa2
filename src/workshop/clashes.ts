/** What no single field shows: names that clash, zones that do not exist, dates that lie ahead. */
import { dayOfDate, isZone, openCalendar } from '../maintenance/calendar.ts';
import type { Instant, LocalDate } from '../maintenance/entry/entry.ts';
import { foldName } from '../maintenance/machine.ts';
import type { Workshop, WorkshopMachine } from './schema.ts';
import { repeats } from './repeats.ts';
import type { Clash } from './repeats.ts';
import type { Path } from './document.ts';
import { shelfClashes } from './shelf-clashes.ts';

/** Words that a message means otherwise: a machine of that name could never be spoken of. */
const RESERVED: ReadonlySet<string> = new Set(['room', 'all', 'both', 'everyone', 'me']);

function* namesOf(workshop: Workshop): Generator<{ path: Path; said: string; machine: number }> {
  for (const [index, { name, aliases }] of workshop.machines.entries()) {
    yield { path: ['machines', index, 'name'], said: name, machine: index };
    for (const [place, alias] of aliases.entries())
      yield { path: ['machines', index, 'aliases', place], said: alias, machine: index };
  }
}

function machineNames(workshop: Workshop): Clash[] {
  const clashes: Clash[] = [];
  const owner = new Map<string, number>();
  for (const { path, said, machine } of namesOf(workshop)) {
    const folded = foldName(said);
    const other = owner.get(folded);
    if (RESERVED.has(folded))
      clashes.push({ path, text: `"${said}" is a word that messages use otherwise; choose another name` });
    else if (other === undefined) owner.set(folded, machine);
    else if (other === machine) clashes.push({ path, text: `"${said}" is given twice` });
    else
      clashes.push({
        path,
        text: `"${said}" is already a name of ${workshop.machines[other]?.name ?? 'another machine'}`,
      });
  }
  return clashes;
}

const peopleNames = ({ people }: Workshop): Clash[] =>
  repeats(
    people,
    (person) => foldName(person.name),
    (person, index) => ({ path: ['people', index, 'name'], text: `"${person.name}" is given twice` }),
  );

/** One account is one person. */
function accountClashes({ people }: Workshop): Clash[] {
  const owners = people.flatMap(({ accounts = {} }, index) =>
    Object.entries(accounts).map(([platform, account]) => ({ platform, account, index })),
  );
  return repeats(
    owners,
    ({ platform, account }) => `${platform} ${account}`,
    ({ platform, account, index }) => ({
      path: ['people', index, 'accounts', platform],
      text: `"${account}" is given to two people`,
    }),
  );
}

function oneMachine(machine: WorkshopMachine, at: Path): Clash[] {
  const clashes: Clash[] = [];
  const { tubeLengthMm, tubeNeededMm } = machine.build;
  if (machine.new && machine.startHours)
    clashes.push({
      path: [...at, 'startHours'],
      text: 'a new machine starts at counter 0: leave out new or startHours',
    });
  if (tubeLengthMm !== undefined && tubeNeededMm !== undefined && tubeNeededMm > tubeLengthMm)
    clashes.push({
      path: [...at, 'build', 'tubeNeededMm'],
      text: 'is longer than the tube itself (tubeLengthMm)',
    });
  for (const [part, said] of Object.entries(machine.parts))
    if (said && `replace-${part}` in machine.lastDone)
      clashes.push({
        path: [...at, 'lastDone', `replace-${part}`],
        text: `says again what parts, ${part} says: keep one of the two`,
      });
  if (machine.new && machine.inUseSince !== undefined) {
    const first = dayOfDate(machine.inUseSince);
    for (const { path, on } of datesOf(machine, at))
      if (dayOfDate(on) < first)
        clashes.push({ path, text: 'lies before the day on which this new machine started' });
  }
  return clashes;
}

function* datesOf(machine: WorkshopMachine, at: Path): Generator<{ path: Path; on: LocalDate }> {
  if (machine.inUseSince !== undefined) yield { path: [...at, 'inUseSince'], on: machine.inUseSince };
  for (const block of ['lastDone', 'parts'] as const)
    for (const [code, held] of Object.entries(machine[block]))
      if (held.on !== undefined) yield { path: [...at, block, code, 'on'], on: held.on };
}

function datesAhead(workshop: Workshop, now: Instant): Clash[] {
  const today = openCalendar(workshop.workshop.zone).dateOf(now);
  const machines = workshop.machines.flatMap((machine, index) => [...datesOf(machine, ['machines', index])]);
  const room = Object.entries(workshop.room.lastDone).map(([task, { on }]) => ({
    path: ['room', 'lastDone', task, 'on'],
    on,
  }));
  return [...machines, ...room]
    .filter(({ on }) => on > today)
    .map(({ path, on }) => ({ path, text: `${on} lies ahead (today is ${today})` }));
}

/** @param now when given, dates are checked against the workshop's own day */
export function clashesIn(workshop: Workshop, now?: Instant): Clash[] {
  const zoneKnown = isZone(workshop.workshop.zone);
  const zone = zoneKnown
    ? []
    : [{ path: ['workshop', 'zone'], text: 'is not a time zone such as Europe/Copenhagen' }];
  return [
    ...zone,
    ...machineNames(workshop),
    ...peopleNames(workshop),
    ...accountClashes(workshop),
    ...shelfClashes(workshop),
    ...workshop.machines.flatMap((machine, index) => oneMachine(machine, ['machines', index])),
    ...(zoneKnown && now !== undefined ? datesAhead(workshop, now) : []),
  ];
}
