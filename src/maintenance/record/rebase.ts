/**
 * When the counter becomes known, or a new one is fitted, its figures start anew; so that the difference of
 * two marks stays what was used in between, the marks made before move by the same amount.
 */
import type { FittedPart, MachineRecord, Mark, PutOff, SymptomRecord, TaskDone } from './record.ts';

type Move = (hours: number) => number;

const moved = <M extends Mark>(mark: M, move: Move): M => ({
  ...mark,
  totals: { ...mark.totals, hours: move(mark.totals.hours) },
});

function mapRows<K extends string, V>(
  rows: Readonly<Partial<Record<K, V>>>,
  change: (value: V) => V,
): Readonly<Partial<Record<K, V>>> {
  const next: Partial<Record<K, V>> = { ...rows };
  for (const key in next) {
    const value = next[key];
    if (value !== undefined) next[key] = change(value);
  }
  return next;
}

/** Every counter figure of the machine's past through `move`; the present totals are the caller's. */
export function rebase(machine: MachineRecord, move: Move): void {
  const held = <T extends { mark: Mark }>(item: T): T => ({ ...item, mark: moved(item.mark, move) });
  if (machine.enrolled) machine.enrolled = moved(machine.enrolled, move);
  if (machine.retired) machine.retired = moved(machine.retired, move);
  if (machine.lastUsage) machine.lastUsage = moved(machine.lastUsage, move);
  if (machine.loaded) machine.loaded = held(machine.loaded);
  if (machine.baseline) machine.baseline = counted(machine.baseline, move);
  if (machine.hold) machine.hold = { ...machine.hold, since: moved(machine.hold.since, move) };
  if (machine.down) machine.down = moved(machine.down, move);
  if (machine.back) machine.back = moved(machine.back, move);
  if (machine.opened) machine.opened = moved(machine.opened, move);
  machine.tasks = mapRows(machine.tasks, (done) => counted(done, move));
  machine.parts = mapRows(machine.parts, (part) => counted(part, move));
  machine.lives = machine.lives.map((life) => ({
    ...life,
    from: moved(life.from, move),
    to: moved(life.to, move),
  }));
  machine.symptoms = mapRows(machine.symptoms, (symptom) => movedSymptom(symptom, move));
  machine.notes = machine.notes.map(held);
  machine.found = machine.found.map(held);
  rebasePlans(machine, move);
}

function rebasePlans(machine: MachineRecord, move: Move): void {
  const held = <T extends { mark: Mark }>(item: T): T => ({ ...item, mark: moved(item.mark, move) });
  const putOff = (item: PutOff): PutOff => ({
    ...held(item),
    ...(item.atHours === undefined ? {} : { atHours: move(item.atHours) }),
  });
  if (machine.putOffAll) machine.putOffAll = putOff(machine.putOffAll);
  if (machine.claimAll) machine.claimAll = held(machine.claimAll);
  machine.putOffs = mapRows(machine.putOffs, putOff);
  machine.claims = mapRows(machine.claims, held);
  machine.intervals = mapRows(machine.intervals, held);
}

const movedSymptom = (item: SymptomRecord, move: Move): SymptomRecord => ({
  ...item,
  ...(item.open ? { open: moved(item.open, move) } : {}),
  recent: item.recent.map((mark) => moved(mark, move)),
  ...(item.byPart ? { byPart: mapRows(item.byPart, (mark) => moved(mark, move)) } : {}),
});

/** A figure that was stated on the counter itself does not move: it was only waiting for the counter. */
function counted<M extends TaskDone | FittedPart>(mark: M, move: Move): M {
  if (mark.statedHours === undefined) return moved(mark, move);
  const { statedHours, hoursUnknown: _known, ...rest } = mark;
  return { ...rest, totals: { ...mark.totals, hours: statedHours } } as M;
}
