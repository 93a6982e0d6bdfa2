/**
 * What is known, kept as text so that the next start need not fold the whole journal. A cache: when anything about
 * it is in doubt it is left aside, and the entries are folded again.
 */
import { z } from 'zod';
import type { LocalCalendar } from '../maintenance/calendar.ts';
import { ROOM } from '../maintenance/codes.ts';
import { dehydrate, FOLD_VERSION, hydrate } from '../maintenance/record/checkpoint.ts';
import type { MachineRecord, ShopRecord } from '../maintenance/record/record.ts';
import type { Checkpoint } from '../store/post.ts';
import type { ReadView } from '../store/store.ts';
import type { Known } from './current.ts';

/** No machine can be called this: names are folded and trimmed. */
const WHOLE = '(whole)';
/** Saving is worth it when a start would otherwise fold more than this many entries. */
export const WORTH_SAVING = 2000;

/** Also in place of one that looks ahead of the present and is passed over at every start. */
export const isWorthSaving = (known: Known, saved: Known): boolean =>
  known.position - saved.position >= WORTH_SAVING ||
  (saved.now > known.now && known.position >= WORTH_SAVING && known.waiting.length < WORTH_SAVING);

type Rest = Omit<ShopRecord, 'machines' | 'room'>;

const wholeShape = z.object({
  zone: z.string(),
  now: z.number(),
  waiting: z.array(z.string()),
  lastSaid: z.number(),
  machines: z.array(z.string()),
  rest: z.unknown(),
});
const list = z.array(z.looseObject({}));
const restShape = z.looseObject({ shelf: list, notes: list, conflicts: list });
// what this very version of the fold wrote needs no second look at every field
const isRest = (json: unknown): json is Rest => restShape.safeParse(json).success;

export function checkpointsOf(
  { record, position, now, waiting, lastSaid }: Known,
  calendar: LocalCalendar,
): Checkpoint[] {
  const { machines, room, ...rest } = record;
  const whole = {
    zone: calendar.zone,
    now,
    waiting: waiting.map((entry) => entry.id),
    lastSaid,
    machines: [...machines.keys()],
    rest,
  };
  const row = (machine: string, json: string): Checkpoint => ({
    machine,
    foldVersion: FOLD_VERSION,
    position,
    json,
  });
  return [
    ...[...machines.values(), room].map((machine) => row(machine.name, dehydrate(machine))),
    row(WHOLE, JSON.stringify(whole)),
  ];
}

/** Undefined when there is none that can be used. */
export async function knownFromCheckpoints(
  { journal, post }: ReadView,
  calendar: LocalCalendar,
): Promise<Known | undefined> {
  const rows = new Map((await post.checkpoints()).map((row) => [row.machine, row]));
  const whole = rows.get(WHOLE);
  if (
    !whole ||
    [...rows.values()].some((r) => r.foldVersion !== FOLD_VERSION || r.position !== whole.position)
  )
    return undefined;
  const parsed = wholeShape.safeParse(readJson(whole.json));
  if (!parsed.success || parsed.data.zone !== calendar.zone || !isRest(parsed.data.rest)) return undefined;
  const { machines: names, waiting, now, lastSaid } = parsed.data;
  const { rest } = parsed.data;
  const machines = names.map((name) => recordOf(rows.get(name)));
  const room = recordOf(rows.get(ROOM));
  if (!room || !machines.every((machine) => machine !== undefined)) return undefined;
  return {
    record: {
      ...rest,
      machines: new Map(machines.map((m) => [m.name, m])),
      room,
    },
    position: whole.position,
    now,
    waiting: await journal.byIds(waiting),
    lastSaid,
  };
}

function recordOf(row: Checkpoint | undefined): MachineRecord | undefined {
  try {
    return row && hydrate(row.json);
  } catch {
    // a damaged cache row is a missing one
    return undefined;
  }
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
