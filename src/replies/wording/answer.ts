/** What was written, refused and taken for granted in one message, as one reply. */
import type { Flag, WrittenNotes } from '../../maintenance/decide/decision.ts';
import { BUNDLES } from '../../maintenance/care/bundles.ts';
import type { DueRow } from '../../maintenance/due/row.ts';
import type { Entry } from '../../maintenance/entry/entry.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { minutes } from '../format/number.ts';
import { capital, list, shortened } from '../format/list.ts';
import { bold, item, type Item, type Section } from '../reply.ts';
import { remark } from './flags.ts';
import { machineName, todo } from './names.ts';
import { dayBeside, note, type NoteFacts } from './noted.ts';
import { happening } from './due.ts';
import type { View } from './view.ts';

export interface WrittenEntry {
  entry: Entry;
  /** What an amendment or a take-back speaks of. */
  target?: Entry;
  /** Where the target is a correction itself: what that one speaks of. */
  beneath?: Entry;
  flags: readonly Flag[];
  notes: WrittenNotes;
  /** The machine's record with the entry in it. */
  after?: MachineRecord;
}

const factsOf = (written: WrittenEntry, view: View): NoteFacts => ({
  ...view,
  ...(written.after ? { after: written.after } : {}),
  ...(written.target ? { target: written.target } : {}),
  ...(written.beneath ? { beneath: written.beneath } : {}),
});

/** "nozzle replaced, worn: lasted 412 h over 166 days, on Monday". */
export function noteLine(written: WrittenEntry, view: View): string {
  const { entry, target, beneath } = written;
  // what is taken back is shown with its own day: an undo may reach further back than was meant
  const dated = entry.kind === 'takenBack' ? (beneath ?? target ?? entry) : entry;
  const facts = factsOf(written, view);
  return note(entry, facts) + dayBeside(dated, facts);
}

/** The machine that an entry is about; for a correction that of its target. */
export function machineOf({ entry, target, beneath }: WrittenEntry): string | undefined {
  if (entry.kind === 'amended' && entry.set.machine !== undefined) return entry.set.machine;
  if ('machine' in entry && entry.machine !== undefined) return entry.machine;
  const about = target?.kind === 'amended' ? beneath : target;
  return about && 'machine' in about ? about.machine : undefined;
}

type Verb = 'noted' | 'taken back' | 'put right';
const verbOf = ({ entry }: WrittenEntry): Verb =>
  entry.kind === 'takenBack' ? 'taken back' : entry.kind === 'amended' ? 'put right' : 'noted';

/** "taken back: rods oiled" under the heading "taken back" is "rods oiled". */
const bare = (text: string, verb: Verb): string =>
  text.startsWith(`${verb}: `) ? text.slice(verb.length + 2) : text;

/** One section a machine: "Birch: noted." and what. */
export function writtenSections(all: readonly WrittenEntry[], view: View): Section[] {
  const groups = new Map<string, WrittenEntry[]>();
  for (const written of all) {
    const key = `${machineOf(written) ?? ''}\n${verbOf(written)}`;
    groups.set(key, [...(groups.get(key) ?? []), written]);
  }
  const alike = new Map<string, (readonly WrittenEntry[])[]>();
  for (const group of groups.values()) {
    const key = group.map((written) => `${verbOf(written)} ${noteLine(written, view)}`).join('\n');
    alike.set(key, [...(alike.get(key) ?? []), group]);
  }
  if (alike.size >= MANY && isOneEach([...groups.values()])) return lineEach([...groups.values()], view);
  return [...alike.values()].flatMap((same) =>
    same.length < MANY ? same.flatMap((group) => sectionOf(group, view)) : together(same, view),
  );
}

/** From so many machines on, the same words about each are said once. */
const MANY = 3;

function together(same: readonly (readonly WrittenEntry[])[], view: View): Section[] {
  const [first, ...others] = same;
  const [head, ...notes] = first ? sectionOf(first, view) : [];
  const names = same.flatMap((group) => group[0] && (machineOf(group[0]) ?? []));
  if (!first?.[0] || !head || names.length < same.length) return [first ?? [], ...others].flatMap((group) => sectionOf(group, view)); // prettier-ignore
  const title = item(bold(list(names.filter((n) => n !== undefined).map((name) => machineName(name, view)))), `: ${verbOf(first[0])}.`); // prettier-ignore
  return [{ ...head, items: [title] }, ...notes];
}

/** Of each machine one thing, and all of them noted, or all taken back. */
const isOneEach = (groups: readonly (readonly WrittenEntry[])[]): boolean =>
  groups.every(([first, ...more]) => first && more.length === 0 && machineOf(first) !== undefined) &&
  new Set(groups.map(([first]) => first && verbOf(first))).size === 1;

/** "Noted." and a line a machine, where the words differ from machine to machine. */
function lineEach(groups: readonly (readonly WrittenEntry[])[], view: View): Section[] {
  const all = groups.flat();
  const [first] = all;
  if (!first) return [];
  const lines = all.map((written) =>
    item(
      bold(machineName(machineOf(written) ?? '', view)),
      `: ${bare(noteLine(written, view), verbOf(written))}`,
    ),
  );
  return [{ items: [item(bold(`${capital(verbOf(first))}.`))] }, { items: lines }];
}

function sectionOf(group: readonly WrittenEntry[], view: View): Section[] {
  const [first] = group;
  if (!first) return [];
  const machine = machineOf(first);
  const verb = verbOf(first);
  const head: Item =
    machine === undefined
      ? item(bold(`${capital(verb)}.`))
      : item(bold(machineName(machine, view)), `: ${verb}.`);
  const notes = group.map((written) => item(bare(noteLine(written, view), verb)));
  return [{ items: [head] }, { items: notes, run: true }];
}

/** What was taken for granted or does not fit, each said once. */
export function remarks(all: readonly WrittenEntry[], view: View): Item[] {
  const said = all.flatMap(({ entry, flags, notes }) =>
    flags.flatMap((flag) => {
      const text = remark(flag, { entry, notes }, view);
      return text === undefined ? [] : [text];
    }),
  );
  return [...new Set(said)].map((text) => item(text));
}

/** Why a thing that just happened calls for more, where there is more to say than that it does. */
const HINTS: Readonly<Partial<Record<string, string>>> = {
  'no-extrusion check-tube': 'After a jam the tube end is often pinched',
  'no-extrusion clean-feeder': 'After a jam the feeder gear is often packed',
  'no-extrusion check-liner': 'After a second jam in so short a time the liner is often the cause',
};

/** What the entries just written have raised, by cause: a jam's follow-up says more than a new part's. */
export function followUps(rows: readonly DueRow[], written: readonly WrittenEntry[]): Item[] {
  const ids = new Set(written.map(({ entry }) => raises(entry)));
  const causes = new Map<string, DueRow[]>();
  for (const row of rows) {
    if (row.raisedBy === null || !row.raised || !ids.has(row.raisedBy) || row.state === 'put-off') continue;
    const cause = causeOf(row);
    causes.set(cause, [...(causes.get(cause) ?? []), row]);
  }
  return [...causes]
    .toSorted(([a], [b]) => Number(b in AFTER) - Number(a in AFTER))
    .slice(0, MOST_CAUSES)
    .map(([cause, of]) =>
      item(
        inBundle(cause, of) ??
          `${cause}: ${list(of.slice(0, 2).map((row) => `${todo(row.task)} (about ${minutes(row.minutes)})`))}.`,
      ),
    );
}

/** What one happening asks for together is told whole, in the order in which it is gone over. */
function inBundle(cause: string, rows: readonly DueRow[]): string | undefined {
  const bundle = rows.find((row) => row.raised?.bundle !== undefined)?.raised?.bundle;
  const place = (row: DueRow): number => (bundle === undefined ? -1 : BUNDLES[bundle].indexOf(row.task));
  const own = rows.filter((row) => place(row) >= 0).toSorted((a, b) => place(a) - place(b));
  if (bundle === undefined || own.length < 3) return undefined;
  const work = own.reduce((sum, row) => sum + row.minutes, 0);
  return `${cause}, in this order: ${list(own.map((row) => todo(row.task)))} (about ${minutes(work)}).`;
}

/** A finding told after its look raises what the look raises. */
const raises = (entry: Entry): string =>
  entry.kind === 'amended' && entry.set.finding !== undefined ? entry.target : entry.id;

const MOST_CAUSES = 2;

const causeOf = (row: DueRow): string => {
  const event = row.raised?.event;
  if (!event) return '';
  const symptom = 'symptom' in event ? event.symptom : '';
  if ('backAfterDays' in event) return `It stood still for ${event.backAfterDays} days or more`;
  return HINTS[`${symptom} ${row.task}`] ?? `Because of ${happening(event)}`;
};

const AFTER: Readonly<Record<string, true>> = Object.fromEntries(
  Object.values(HINTS).flatMap((hint) => (hint === undefined ? [] : [[hint, true] as const])),
);

const MOST_OWED = 4;

/** What a machine that comes back into use still owes: safety, and what happened to it. */
export function owedBeforeStart(rows: readonly DueRow[]): Item[] {
  const owed = rows.filter(
    (row) =>
      ((row.state === 'overdue' || row.state === 'due') &&
        (row.class === 'safety' || row.raised !== undefined)) ||
      (row.state === 'no-record' && row.class === 'safety'),
  );
  if (owed.length === 0) return [];
  const { shown, more } = shortened(owed, MOST_OWED);
  const tasks = [...shown.map((row) => todo(row.task)), ...(more > 0 ? [`${more} more`] : [])];
  return [item(`Still to do before it starts: ${list(tasks)}.`)];
}
