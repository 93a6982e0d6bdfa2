/** A put-off or a claim stands until its task is done. */
import type { Task } from '../../codes.ts';
import { withRow, without } from '../mark.ts';
import type { MachineRecord, TaskDone } from '../record.ts';

/** A statement about the past never replaces what was done since. */
export function noteTask(machine: MachineRecord, task: Task, done: TaskDone): void {
  const before = machine.tasks[task];
  if (!before || before.at <= done.at) machine.tasks = withRow(machine.tasks, task, done);
}

/** Who said "I'll see to birch" and then did any of it, has. */
export function settle(machine: MachineRecord, task: Task, by: string): void {
  if (machine.claimAll?.mark.by === by) delete machine.claimAll;
  machine.putOffs = without(machine.putOffs, task);
  machine.claims = without(machine.claims, task);
}
