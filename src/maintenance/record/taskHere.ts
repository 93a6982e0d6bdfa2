/** "Greased the Z screw" is said of any screw; which kind it is, the build knows. */
import type { Task } from '../codes.ts';
import type { Build } from '../machine.ts';

export const taskHere = (task: Task, build: Build): Task =>
  task === 'grease-screw' && build.zDrive === 'ball-screw' ? 'grease-ball-screw' : task;
