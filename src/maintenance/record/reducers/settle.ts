/** A put-off or a claim stands until its task is done. */
import type { Task } from '../../codes.ts';
import { without } from '../mark.ts';
import type { MachineRecord, TaskDone } from '../record.ts';

/** A statement about the past never replaces what was done since. */
export function withTask(machine: MachineRecord, task: Task, done: TaskDone): MachineRecord {
  const before = machine.tasks[task];
  return before && before.at > done.at ? machine : { ...machine, tasks: { ...machine.tasks, [task]: done } };
}

/** Who said "I'll see to birch" and then did any of it, has. */
export function settle(machine: MachineRecord, task: Task, by: string): MachineRecord {
  const { claimAll, ...rest } = machine;
  return {
    ...(claimAll && claimAll.mark.by === by ? rest : machine),
    putOffs: without(machine.putOffs, task),
    claims: without(machine.claims, task),
  };
}
