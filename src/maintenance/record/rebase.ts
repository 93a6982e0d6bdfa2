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
export function rebase(machine: MachineRecord, move: Move): MachineRecord {
  const held = <T extends { mark: Mark }>(item: T): T => ({ ...item, mark: moved(item.mark, move) });
  const putOff = (item: PutOff): PutOff => ({
    ...held(item),
    ...(item.atHours === undefined ? {} : { atHours: move(item.atHours) }),
  });
  const symptom = (item: SymptomRecord): SymptomRecord => ({
    ...item,
    ...(item.open ? { open: moved(item.open, move) } : {}),
    recent: item.recent.map((mark) => moved(mark, move)),
  });
  const { enrolled, retired, anchor, lastUsage, loaded, baseline, hold, down, back, opened } = machine;
  return {
    ...machine,
    ...(enrolled ? { enrolled: moved(enrolled, move) } : {}),
    ...(retired ? { retired: moved(retired, move) } : {}),
    ...(anchor ? { anchor: { hours: move(anchor.hours), mark: moved(anchor.mark, move) } } : {}),
    ...(lastUsage ? { lastUsage: moved(lastUsage, move) } : {}),
    ...(loaded ? { loaded: held(loaded) } : {}),
    ...(baseline ? { baseline: counted(baseline, move) } : {}),
    ...(hold ? { hold: { ...hold, since: moved(hold.since, move) } } : {}),
    ...(down ? { down: moved(down, move) } : {}),
    ...(back ? { back: moved(back, move) } : {}),
    ...(opened ? { opened: moved(opened, move) } : {}),
    ...(machine.putOffAll ? { putOffAll: putOff(machine.putOffAll) } : {}),
    ...(machine.claimAll ? { claimAll: held(machine.claimAll) } : {}),
    tasks: mapRows(machine.tasks, (done) => counted(done, move)),
    parts: mapRows(machine.parts, (part) => counted(part, move)),
    lives: machine.lives.map((life) => ({
      ...life,
      from: moved(life.from, move),
      to: moved(life.to, move),
    })),
    symptoms: mapRows(machine.symptoms, symptom),
    putOffs: mapRows(machine.putOffs, putOff),
    claims: mapRows(machine.claims, held),
    intervals: mapRows(machine.intervals, held),
    notes: machine.notes.map(held),
    found: machine.found.map(held),
  };
}

/** A figure that was stated on the counter itself does not move: it was only waiting for the counter. */
function counted<M extends TaskDone | FittedPart>(mark: M, move: Move): M {
  if (mark.statedHours === undefined) return moved(mark, move);
  const { statedHours, hoursUnknown: _known, ...rest } = mark;
  return { ...rest, totals: { ...mark.totals, hours: statedHours } } as M;
}
