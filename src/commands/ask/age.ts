/** "How long has juniper been on that nozzle?" */
import type { Part } from '../../maintenance/codes.ts';
import { isPart, partReplacedBy } from '../../maintenance/codes.ts';
import type { FittedPart, MachineRecord } from '../../maintenance/record/record.ts';
import { dayMonth } from '../../replies/format/date.ts';
import { count, hours } from '../../replies/format/number.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { machineName, nozzleName, partName } from '../../replies/wording/names.ts';
import { machinesOf, todayOf, type AskScene, type Topic } from './topic.ts';

const partAsked = ({ act }: AskScene): Part | undefined => {
  if (act.part !== undefined) return isPart(act.part) ? act.part : undefined;
  return act.task === undefined ? undefined : partReplacedBy(act.task);
};

const candidates = (part: Part): readonly Part[] => (part === 'belt' ? ['x-belt', 'y-belt', 'belt'] : [part]);

function ageOf(machine: MachineRecord, fitted: FittedPart, part: Part, scene: AskScene): Item {
  const used = Math.max(0, machine.totals.hours - fitted.totals.hours);
  const days = scene.today - fitted.day;
  const kind = part === 'nozzle' ? nozzleName(machine.nozzle) : (fitted.text ?? '');
  const since = dayMonth(scene.calendar.dateOf(fitted.at), todayOf(scene));
  const known = fitted.ageKnown
    ? `${hours(used)} over ${count(days, 'day')}, in since ${since}`
    : `in since before ${since}, at least ${hours(used)} and ${count(days, 'day')}`;
  return item(bold(machineName(machine.name)), ` ${partName(part)}${kind ? ` (${kind})` : ''}: ${known}`);
}

export const age: Topic = (scene): Reply => {
  const part = partAsked(scene);
  if (part === undefined) return { sections: [{ items: [item('Which part do you mean?')] }], buttons: [] };
  const found = machinesOf(scene).flatMap((machine) =>
    candidates(part).flatMap((p) => {
      const fitted = machine.parts[p];
      return fitted ? [{ at: fitted.day, line: ageOf(machine, fitted, p, scene) }] : [];
    }),
  );
  const oldestFirst = found.sort((a, b) => a.at - b.at).map((f) => f.line);
  const none = item(
    `No record of when the ${partName(part)} went in. Say when, such as “new ${partName(part)} last Monday”.`,
  );
  return { sections: [{ items: oldestFirst.length > 0 ? oldestFirst : [none] }], buttons: [] };
};
