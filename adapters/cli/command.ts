import type { Arguments, OptionTable } from './options.ts';
import type { World } from './session.ts';

export interface Command {
  /** One line for the list of commands. */
  about: string;
  /** How it is called, after `fettle`. */
  usage: string;
  options: OptionTable;
  /** The exit code. */
  run(args: Arguments, world: World): Promise<number>;
}
