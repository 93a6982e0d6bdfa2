/** Which fields an amendment may set, kind by kind. What is not listed cannot be put right, only taken back. */
import { isPart } from '../codes.ts';
import type { Amendment, EntryKind } from '../entry/entry.ts';

export type AmendableField = keyof Amendment;

const WHEN: readonly AmendableField[] = ['at', 'precision'];
const PLACED: readonly AmendableField[] = [...WHEN, 'machine'];

export const AMENDABLE: Readonly<Record<EntryKind, readonly AmendableField[]>> = {
  enrolled: [],
  changed: [],
  retired: WHEN,
  usage: [...PLACED, 'hours', 'grams', 'metres', 'material'],
  meter: [...PLACED, 'hours'],
  loaded: [...PLACED, 'material', 'grams'],
  done: [...PLACED, 'task', 'finding'],
  swapped: [...PLACED, 'part', 'fitted', 'reason', 'count'],
  seen: [...PLACED, 'symptom', 'part'],
  cleared: [...PLACED, 'symptom'],
  down: PLACED,
  up: PLACED,
  opened: PLACED,
  closed: PLACED,
  putOff: [...PLACED, 'task', 'until'],
  claimed: [...PLACED, 'task'],
  stockMoved: [...WHEN, 'part', 'change', 'fitted'],
  stockCounted: [...WHEN, 'part', 'count', 'fitted'],
  intervalSet: ['task'],
  stated: ['machine', 'task', 'part', 'fitted', 'hours'],
  noted: PLACED,
  handedOver: WHEN,
  tookOver: WHEN,
  found: [...PLACED, 'part'],
  released: WHEN,
  amended: [],
  takenBack: [],
};

const CONSUMABLES_TOO: ReadonlySet<EntryKind> = new Set(['stockMoved', 'stockCounted']);
const sets = new Map<string, ReadonlySet<string>>(
  Object.entries(AMENDABLE).map(([kind, fields]) => [kind, new Set(fields)]),
);

/** Can this kind of entry have that value in that field? A machine has no oil can fitted. */
export function fits(kind: EntryKind, field: string, value: unknown): boolean {
  if (value === undefined || !sets.get(kind)?.has(field)) return false;
  return field !== 'part' || CONSUMABLES_TOO.has(kind) || (typeof value === 'string' && isPart(value));
}
