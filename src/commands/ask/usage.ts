/** "How many hours has elm got?": the counter, recent running and filament by material. */
import { dateOfDay, dayOfDate, type Day } from '../../maintenance/calendar.ts';
import { MATERIALS, type Material } from '../../maintenance/codes.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import { dateFromToday } from '../../replies/format/date.ts';
import { list } from '../../replies/format/list.ts';
import { count, figure, hours } from '../../replies/format/number.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { machineName, materialName } from '../../replies/wording/names.ts';
import { machinesOf, todayOf, type AskScene, type Topic } from './topic.ts';

/** Hours run on local days from..to, both inclusive, as far back as the record reaches. */
export function hoursBetween({ runByDay }: MachineRecord, from: Day, to: Day): number {
  const first = runByDay.lastDay - runByDay.hours.length + 1;
  return runByDay.hours.reduce((sum, h, i) => (first + i >= from && first + i <= to ? sum + h : sum), 0);
}

const grams = (machine: MachineRecord, material: Material | undefined): string[] =>
  MATERIALS.filter((m) => material === undefined || m === material).flatMap((m) => {
    const weight = machine.totals.gramsOf[m] ?? 0;
    return weight > 0 ? [`${figure(weight, 0)} g of ${materialName(m)}`] : [];
  });

function period(scene: AskScene): { from: Day; to: Day; words: string } | undefined {
  const { act, today } = scene;
  if (act.from === undefined && act.to === undefined) return undefined;
  const from = act.from === undefined ? today : dayOfDate(act.from);
  const to = act.to === undefined ? today : dayOfDate(act.to);
  const word = (day: Day): string => dateFromToday(dateOfDay(day), todayOf(scene)).replace(/^on /u, '');
  return { from, to, words: from === to ? word(from) : `${word(from)} to ${word(to)}` };
}

function lineOf(machine: MachineRecord, scene: AskScene): Item {
  const { today } = scene;
  const asked = period(scene);
  const counter = machine.counterKnown
    ? `${hours(machine.totals.hours)} on its counter`
    : `${hours(machine.totals.hours)} logged, counter never read`;
  const recent = asked
    ? `${hours(hoursBetween(machine, asked.from, asked.to))} ${asked.words}`
    : `${hours(hoursBetween(machine, today - 6, today))} in the last 7 days`;
  const filament = scene.act.machine === undefined ? [] : grams(machine, scene.act.material);
  const unlogged = machine.unloggedHours >= 1 ? [`${hours(machine.unloggedHours)} that nobody logged`] : [];
  const ran = machine.lastUsage ? [] : ['no run on record'];
  const words = [
    recent,
    counter,
    ...unlogged,
    ...ran,
    ...(filament.length > 0 ? [`weighed: ${list(filament)}`] : []),
  ];
  return item(bold(machineName(machine.name, scene)), `: ${words.join(' · ')}`);
}

export const usage: Topic = (scene): Reply => {
  const machines = machinesOf(scene);
  const asked = period(scene);
  const total = machines.reduce(
    (sum, m) =>
      sum + (asked ? hoursBetween(m, asked.from, asked.to) : hoursBetween(m, scene.today - 6, scene.today)),
    0,
  );
  const all =
    machines.length > 1 ? [item(`Together ${hours(total)} on ${count(machines.length, 'machine')}.`)] : [];
  return { sections: [{ items: [...machines.map((m) => lineOf(m, scene)), ...all] }], buttons: [] };
};
