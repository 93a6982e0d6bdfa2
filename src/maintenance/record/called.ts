/** What machines are called now: entries go on naming them by the name that their record began with. */
import { foldName } from '../machine.ts';
import type { MachineRecord, ShopRecord } from './record.ts';

/** Undefined where nobody called it anything else, and for the room. */
export const calledIn =
  ({ machines }: Pick<ShopRecord, 'machines'>) =>
  (machine: string): string | undefined =>
    machines.get(machine)?.calledAs;

type Named = Pick<MachineRecord, 'name' | 'calledAs' | 'aliases'>;

/** All that a machine answers to, folded. */
export const answersTo = ({ name, calledAs, aliases }: Named): string[] => [
  ...new Set([name, ...(calledAs === undefined ? [] : [calledAs]), ...aliases].map(foldName)),
];
