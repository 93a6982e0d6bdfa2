/** What a workshop file changes, said for its writer: the old figure beside the new one. */
import { ROOM } from '../../maintenance/codes.ts';
import type { LocalCalendar } from '../../maintenance/calendar.ts';
import type { Entry, EntryOf, Instant } from '../../maintenance/entry/entry.ts';
import type { Build } from '../../maintenance/machine.ts';
import { calledIn } from '../../maintenance/record/called.ts';
import type { MachineRecord, ShopRecord } from '../../maintenance/record/record.ts';
import { findItem } from '../../maintenance/record/shelf.ts';
import { intervalWords, note } from '../../replies/wording/noted.ts';
import { titled } from '../../replies/wording/names.ts';
import type { Workshop } from '../../workshop.ts';
import { sameContent } from './facts.ts';

/** `of`: a machine by its name, `room`, `shelf`, `people` or `workshop`. */
export interface Change {
  of: string;
  what: readonly string[];
}

interface Before {
  shop: ShopRecord;
  /** The file as it was applied last, if it ever was. */
  file?: Workshop;
  now: Instant;
  calendar: LocalCalendar;
}

/** Machines that the file adds are not among it: all of them is new. */
export function changesOf(workshop: Workshop, entries: readonly Entry[], before: Before): Change[] {
  const added = new Set(entries.flatMap((e) => (e.kind === 'enrolled' ? [e.machine] : [])));
  const groups = new Map<string, string[]>();
  for (const entry of entries) {
    const of = 'machine' in entry && entry.machine !== undefined ? entry.machine : 'shelf';
    if (added.has(of)) continue;
    groups.set(of, [...(groups.get(of) ?? []), ...wordsOf(entry, before)]);
  }
  return [
    ...[...groups].map(([of, what]) => ({ of, what })),
    ...(before.file ? settingChanges(workshop, before.file) : []),
  ];
}

function wordsOf(entry: Entry, before: Before): string[] {
  if (entry.kind === 'changed') return factWords(entry, before.shop.machines.get(entry.machine));
  const today = before.calendar.dayOf(before.now);
  const said = note(entry, {
    calendar: before.calendar,
    today,
    personName: (id) => id,
    calledAs: calledIn(before.shop),
  });
  return [`${said}${wasWords(entry, before.shop)}`];
}

function wasWords(entry: Entry, shop: ShopRecord): string {
  if (entry.kind === 'intervalSet') {
    const record = entry.machine === ROOM ? shop.room : shop.machines.get(entry.machine ?? '');
    const own = record?.intervals[entry.task];
    return own ? ` (was every ${intervalWords(own.interval)})` : ' (was common practice)';
  }
  if (entry.kind !== 'stockCounted') return '';
  const known = shop.shelf[findItem(shop.shelf, entry.part, entry.fitted)];
  return known ? ` (was ${known.count})` : ' (new)';
}

function factWords({ set }: EntryOf<'changed'>, record: MachineRecord | undefined): string[] {
  const aliases = set.aliases ? [`aliases: ${shown(record?.aliases)} -> ${shown(set.aliases)}`] : [];
  const called =
    set.calledAs === undefined
      ? []
      : [`name: ${record?.calledAs ?? titled(record?.name ?? '')} -> ${set.calledAs}`];
  return [...called, ...(set.build ? buildWords(record?.build ?? {}, set.build) : []), ...aliases];
}

/** Feature by feature: "feed: bowden -> direct". */
function buildWords(was: Build, is: Build): string[] {
  const features = new Set([...Object.keys(was), ...Object.keys(is)] as (keyof Build)[]);
  return [...features]
    .filter((feature) => !sameContent(was[feature], is[feature]))
    .map((feature) => `${feature}: ${shown(was[feature])} -> ${shown(is[feature])}`);
}

function shown(value: unknown): string {
  if (value === undefined) return 'not stated';
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(shown).join(', ');
  if (typeof value === 'object' && value !== null) return Object.values(value).map(shown).join(' ');
  if (typeof value === 'boolean') return value ? 'fitted' : 'not fitted';
  return typeof value === 'string' ? value : JSON.stringify(value);
}

/** What is no entry: who may what, and the workshop's own hours and minutes. */
function settingChanges(is: Workshop, was: Workshop): Change[] {
  const settings = Object.keys({ ...was.workshop, ...is.workshop }) as (keyof Workshop['workshop'])[];
  const changed = settings
    .filter((key) => !sameContent(was.workshop[key], is.workshop[key]))
    .map((key) => `${key}: ${shown(was.workshop[key])} -> ${shown(is.workshop[key])}`);
  const people = peopleWords(is.people, was.people);
  return [
    ...(changed.length > 0 ? [{ of: 'workshop', what: changed }] : []),
    ...(people.length > 0 ? [{ of: 'people', what: people }] : []),
  ];
}

function peopleWords(is: Workshop['people'], was: Workshop['people']): string[] {
  const role = (list: Workshop['people'], name: string) => list.find((of) => of.name === name)?.role;
  const names = new Set([...was, ...is].map(({ name }) => name));
  return [...names].flatMap((name) => {
    const [before, now] = [role(was, name), role(is, name)];
    if (before === now) return [];
    if (now === undefined) return [`${name}: not in the file any more`];
    return [before === undefined ? `${name}: ${now}, new` : `${name}: ${before} -> ${now}`];
  });
}
