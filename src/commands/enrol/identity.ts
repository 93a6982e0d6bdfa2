/**
 * Which record a machine of the file is: a record keeps the name that it began with, the file has the name of today.
 * A machine that is called otherwise in the file names its old name among its aliases.
 */
import { answersTo } from '../../maintenance/record/called.ts';
import { foldName } from '../../maintenance/machine.ts';
import type { MachineRecord, ShopRecord } from '../../maintenance/record/record.ts';
import type { Workshop, WorkshopMachine } from '../../workshop.ts';

export type RecordNames = ReadonlyMap<WorkshopMachine, string>;

/** The name of the record of each machine of the file; two machines never share one. */
export function recordNames({ machines }: Pick<Workshop, 'machines'>, shop: ShopRecord): RecordNames {
  const names = new Map(machines.map((machine) => [machine, foldName(machine.name)]));
  const taken = new Set([...names.values()].filter((name) => shop.machines.has(name)));
  for (const machine of machines) {
    if (shop.machines.has(foldName(machine.name))) continue;
    const known = [machine.name, ...machine.aliases].map((said) => holder(foldName(said), shop, taken));
    const record = known.find((one) => one !== undefined);
    if (!record) continue;
    names.set(machine, record.name);
    taken.add(record.name);
  }
  return names;
}

/** A machine in use that answers to the name and that no machine of the file has for its own. */
const holder = (name: string, shop: ShopRecord, taken: ReadonlySet<string>): MachineRecord | undefined =>
  [...shop.machines.values()].find(
    (record) =>
      record.enrolled && !record.retired && !taken.has(record.name) && ownNames(record).includes(name),
  );

/** What it is called and was called; other aliases are too weak a sign: a number goes to the next machine. */
const ownNames = (record: MachineRecord): string[] =>
  answersTo({
    name: record.name,
    aliases: [],
    ...(record.calledAs === undefined ? {} : { calledAs: record.calledAs }),
  });
