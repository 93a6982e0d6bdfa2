/** "Can elm take an 18 h job?": what the records say. Whether to leave it running is the workshop's rule. */
import type { DueRow } from '../../maintenance/due/row.ts';
import { list } from '../../replies/format/list.ts';
import { count, figure, hours } from '../../replies/format/number.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { dueLine } from '../../replies/wording/due.ts';
import { machineName, materialName } from '../../replies/wording/names.ts';
import { openSymptoms, stateWords } from './status.ts';
import { machinesOf, type Topic } from './topic.ts';

/** Due now, or within the hours that the job would run. */
const reached = (row: DueRow, run: number): boolean =>
  row.state === 'overdue' ||
  row.state === 'due' ||
  row.all.some((use) => use.unit === 'h' && use.used + run >= use.interval);

export const ready: Topic = (scene): Reply => {
  const [machine] = machinesOf(scene);
  if (scene.act.machine === undefined || !machine)
    return { sections: [{ items: [item('Which machine, and for how many hours?')] }], buttons: [] };
  const run = scene.act.hours ?? 0;
  const rows = scene.rows(machine.name);
  const open = openSymptoms(machine);
  const stops = stateWords(machine, scene);
  const safety = rows.filter(
    (row) => row.class === 'safety' && (reached(row, run) || row.state === 'no-record'),
  );
  const other = rows.filter((row) => row.class !== 'safety' && reached(row, run));
  const loaded = machine.loaded;
  const items: Item[] = [
    ...stops.map((text) => item(text)),
    ...(safety.length > 0
      ? [item(`${count(safety.length, 'safety check')} open: ${list(safety.map(dueLine))}`)]
      : []),
    ...(open.length > 0 ? [item(`Noticed and not cleared: ${list(open)}`)] : []),
    ...(other.length > 0
      ? [
          item(
            `Due by the end of it: ${list(other.slice(0, 4).map(dueLine))}${other.length > 4 ? ` and ${other.length - 4} more` : ''}`,
          ),
        ]
      : []),
    ...(loaded?.material
      ? [
          item(
            `Loaded: ${materialName(loaded.material)}${loaded.grams === undefined ? '' : `, ${figure(loaded.grams, 0)} g when it was mounted`}`,
          ),
        ]
      : []),
  ];
  const nothing = items.length === 0 ? [item('Nothing open in the records.')] : [];
  return {
    title: [
      bold(machineName(machine.name)),
      run > 0 ? `, ${hours(run)}, from the records:` : ', from the records:',
    ],
    sections: [
      {
        items: [
          ...items,
          ...nothing,
          item('Whether it may run unattended is your workshop’s rule; I cannot tell you.'),
        ],
      },
    ],
    buttons: [],
  };
};
