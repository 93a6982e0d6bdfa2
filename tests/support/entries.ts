/** Entries for tests: one by hand with few words, and any at all for properties. */
import * as fc from 'fast-check';
import {
  CONSUMABLES,
  FINDINGS,
  MATERIALS,
  PARTS,
  REASONS,
  SYMPTOMS,
  TASKS,
} from '../../src/maintenance/codes.ts';
import type { Entry, EntryFields, EntryKind, EntryOf, Stamp } from '../../src/maintenance/entry/entry.ts';
import type { Build } from '../../src/maintenance/machine.ts';

/** Wednesday 2026-03-11 15:40 in Copenhagen. */
export const NOW = Date.parse('2026-03-11T14:40:00Z');
export const ZONE = 'Europe/Copenhagen';
export const instant = (iso: string): number => Date.parse(iso);

let made = 0;

type StampGiven = Partial<Stamp> & { when?: string };

/**
 * An entry with a stamp of its own: said and written when it happened unless told otherwise.
 * `when`: ISO instant.
 */
export function entry<F extends EntryFields>(fields: F, given: StampGiven = {}): F & Stamp {
  made += 1;
  const { when, ...stamp } = given;
  const at = stamp.at ?? (when === undefined ? NOW : instant(when));
  return {
    id: `e${String(made).padStart(6, '0')}`,
    v: 1,
    at,
    precision: 'instant',
    saidAt: at,
    writtenAt: stamp.saidAt ?? at,
    by: 'ines',
    platform: 'test',
    message: `m${made}`,
    act: 0,
    ...stamp,
    ...fields,
  };
}

/** A machine that is there since New Year, its counter at `startHours`. */
export const enrolment = (machine: string, build: Build = {}, startHours?: number): EntryOf<'enrolled'> =>
  entry(
    {
      kind: 'enrolled',
      machine,
      build,
      inUseSince: '2026-01-01',
      ...(startHours === undefined ? {} : { startHours }),
    },
    { when: '2026-01-01T08:00:00Z' },
  );

const DAY = 86_400_000;
const machine = fc.constantFrom('alder', 'birch', 'room');
const hours = fc.integer({ min: 0, max: 240 }).map((quarters) => quarters / 4);
const date = fc
  .integer({ min: -90, max: 30 })
  .map((days) => new Date(NOW + days * DAY).toISOString().slice(0, 10));
const task = fc.constantFrom(...TASKS);
const part = fc.constantFrom(...PARTS);
const item = fc.constantFrom(...PARTS.slice(0, 3), ...CONSUMABLES);
const material = fc.constantFrom(...MATERIALS);
const fitted = fc.constantFrom('brass 0.4', 'hardened 0.6', '0.6 hardened', '');
const yes = fc.constant(true as const);
/** Ids that may or may not exist, so that targets dangle, repeat and run in rings. */
const id = fc.integer({ min: 0, max: 25 }).map((n) => `e${n}`);
const amendment = fc.record(
  {
    at: fc.integer({ min: NOW - 60 * DAY, max: NOW }),
    precision: fc.constantFrom('instant' as const, 'day' as const, 'about' as const),
    machine,
    hours,
    grams: hours,
    metres: hours,
    material,
    part: item,
    task,
    symptom: fc.constantFrom(...SYMPTOMS),
    finding: fc.constantFrom(...FINDINGS),
    reason: fc.constantFrom(...REASONS),
    fitted,
    change: fc.integer({ min: -5, max: 5 }),
    count: fc.nat(9),
    until: date,
  },
  { requiredKeys: [] },
);
const build: fc.Arbitrary<Build> = fc.record(
  {
    nozzle: fc.record({ material: fc.constantFrom('brass' as const, 'hardened' as const) }),
    filamentMm: fc.constantFrom(1.75 as const, 2.85 as const),
    belts: fc.constantFrom('straight' as const, 'none' as const),
  },
  { requiredKeys: [] },
);

/** Optional fields are there or absent, never undefined. */
const kind = <K extends EntryKind, R extends object, O extends object>(
  name: K,
  required: { [F in keyof R]: fc.Arbitrary<R[F]> },
  optional: { [F in keyof O]: fc.Arbitrary<O[F]> },
) =>
  fc
    .tuple(fc.record<R>(required), fc.record<O, never>(optional, { requiredKeys: [] }))
    .map(([must, may]) => ({ kind: name, ...must, ...may }));

const shapes = {
  enrolled: kind('enrolled', { machine, build, inUseSince: date }, { startHours: hours, new: yes }),
  changed: kind('changed', { machine, set: fc.record({ build }, { requiredKeys: [] }) }, {}),
  retired: kind('retired', { machine }, {}),
  usage: kind('usage', { machine }, { hours, grams: hours, metres: hours, material }),
  meter: kind('meter', { machine, hours }, { newCounter: yes }),
  loaded: kind('loaded', { machine }, { material, grams: hours }),
  done: kind('done', { machine, task }, { finding: fc.constantFrom(...FINDINGS) }),
  swapped: kind(
    'swapped',
    { machine, part },
    { fitted, reason: fc.constantFrom(...REASONS), count: fc.nat(4) },
  ),
  seen: kind('seen', { machine, symptom: fc.constantFrom(...SYMPTOMS) }, { part }),
  cleared: kind('cleared', { machine }, { symptom: fc.constantFrom(...SYMPTOMS) }),
  down: kind('down', { machine }, {}),
  up: kind('up', { machine }, {}),
  opened: kind('opened', { machine }, {}),
  closed: kind('closed', { machine }, {}),
  putOff: kind('putOff', { machine }, { task, until: date, atHours: hours, reason: fc.string() }),
  claimed: kind('claimed', { machine }, { task, on: date }),
  stockMoved: kind('stockMoved', { part: item, change: fc.integer({ min: -5, max: 5 }) }, { fitted }),
  stockCounted: kind('stockCounted', { part: item, count: fc.nat(9) }, { fitted, price: hours }),
  intervalSet: kind(
    'intervalSet',
    { machine, task, interval: fc.record({ days: hours }), source: fc.constant('manual' as const) },
    {},
  ),
  stated: kind('stated', { machine }, { task, part, fitted, on: date, hours }),
  noted: kind('noted', { text: fc.string() }, { machine }),
  handedOver: kind('handedOver', {}, { to: fc.string() }),
  tookOver: kind('tookOver', {}, { from: fc.string() }),
  found: kind('found', { machine, text: fc.string() }, { part }),
  released: kind('released', { machine }, { found: fc.string(), falseAlarm: yes }),
  amended: kind('amended', { target: id, set: amendment }, {}),
  takenBack: kind('takenBack', { target: id }, {}),
};

/** Any fields, kind by kind; a kind that is missing does not compile. */
export const FIELDS_OF: { readonly [K in EntryKind]: fc.Arbitrary<Extract<EntryFields, { kind: K }>> } =
  shapes;

const fields: fc.Arbitrary<EntryFields> = fc.oneof(...Object.values(FIELDS_OF));

/** A stamp for the nth entry. Times are coarse, so that many entries share them and the tie-breaks count. */
const stampOf = (n: number): fc.Arbitrary<Stamp> =>
  fc
    .record({
      days: fc.integer({ min: 0, max: 60 }),
      lateDays: fc.integer({ min: 0, max: 3 }),
      precision: fc.constantFrom('instant' as const, 'day' as const, 'about' as const),
      by: fc.constantFrom('ines', 'odd'),
      act: fc.nat(2),
    })
    .map(({ days, lateDays, precision, by, act }) => {
      const at = NOW - days * DAY;
      const saidAt = at + lateDays * DAY;
      return {
        id: `e${n}`,
        v: 1,
        at,
        precision,
        saidAt,
        writtenAt: saidAt,
        by,
        platform: 'test',
        message: `m${n}`,
        act,
      };
    });

const stamped = (n: number, of: fc.Arbitrary<EntryFields>): fc.Arbitrary<Entry> =>
  fc.tuple(stampOf(n), of).map(([stamp, said]): Entry => ({ ...stamp, ...said }));

/** Up to 24 entries of any kinds: enrolled or not, corrected, late, contradicting one another. */
export const anyEntries: fc.Arbitrary<Entry[]> = fc
  .nat(24)
  .chain((count) => fc.tuple(...Array.from({ length: count }, (_, n) => stamped(n, fields))));

/** One entry of a kind, under an id that no other entry of `anyEntries` has. */
export const oneOf = (kind: EntryKind, n: number): fc.Arbitrary<Entry> => stamped(n, FIELDS_OF[kind]);

export const KINDS = Object.keys(FIELDS_OF) as readonly EntryKind[];
