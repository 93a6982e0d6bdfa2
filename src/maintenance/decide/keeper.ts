/**
 * What only a keeper decides, because it silences more than one line of the list or cannot be seen from the machine:
 * that it goes, that all of it counts as done, what it is called, how often a safety task falls due.
 */
import type { DecideContext, Shops } from './context.ts';
import type { Deed } from './deed.ts';
import { refused, type Refused } from './decision.ts';
import { canonicalName } from './scene.ts';

export function keepersOnly(deed: Deed, shops: Shops, context: DecideContext): Refused | undefined {
  if (context.role === 'keeper' || !matters(deed, shops, context)) return undefined;
  const machine = 'machine' in deed ? deed.machine : undefined;
  return refused('not-yours', {
    act: deed.kind,
    keeper: true,
    ...(machine === undefined ? {} : { machine }),
  });
}

function matters(deed: Deed, shops: Shops, context: DecideContext): boolean {
  switch (deed.kind) {
    case 'retire':
      return true;
    case 'state':
      return deed.task === undefined && deed.part === undefined;
    case 'change':
      return deed.set.aliases !== undefined || deed.set.calledAs !== undefined;
    case 'setInterval': {
      const name = deed.machine === undefined ? undefined : canonicalName(deed.machine, shops.latest);
      const machine = name === undefined ? shops.latest.room : shops.latest.machines.get(name);
      // a task with a last day to which it may be put off is a safety task
      return machine !== undefined && context.latestPutOff(deed.task, machine) !== undefined;
    }
    default:
      return false;
  }
}
