/** Facts that do not fit together are kept beside the record and shown; nothing is repaired by guess. */
import { keepLast } from './mark.ts';
import type { Conflict, MachineRecord } from './record.ts';

/** Enough to show; an import gone wrong must not make every later step slower. */
const KEPT = 50;

/** On the fold's own copy. */
export function noteConflict(machine: MachineRecord, conflict: Conflict): void {
  machine.conflicts = addConflict(machine.conflicts, conflict);
}

export const addConflict = (conflicts: readonly Conflict[], conflict: Conflict): readonly Conflict[] =>
  keepLast(conflicts, conflict, KEPT);
