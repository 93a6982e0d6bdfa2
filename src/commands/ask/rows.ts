/** Rows of the list as items of a reply, with the buttons that do what a sentence would. */
import type { DueRow } from '../../maintenance/due/row.ts';
import type { Button, Item, Line } from '../../replies/reply.ts';

export function rowButtons(row: DueRow): Button[] {
  const { machine, task } = row;
  const putOff: Button = {
    label: 'Put off',
    press: { does: 'ask', about: { kind: 'defer', machine, task }, field: 'until' },
  };
  return [
    { label: 'Done', press: { does: 'deeds', deeds: [{ kind: 'done', machine, task }] } },
    putOff,
    {
      label: 'How?',
      press: {
        does: 'deeds',
        deeds: [{ kind: 'ask', topic: 'how', task, ...(machine === 'room' ? {} : { machine }) }],
      },
    },
  ];
}

/** Only the first few rows of a list carry buttons: more of them would bury the list. */
export const MOST_WITH_BUTTONS = 3;

export const rowItem = (text: Line, row: DueRow, index: number): Item =>
  index < MOST_WITH_BUTTONS ? { text, buttons: rowButtons(row) } : { text };

/** Rows of machines in the order in which the rows first name them. */
export function byMachine(rows: readonly DueRow[]): Map<string, DueRow[]> {
  const groups = new Map<string, DueRow[]>();
  for (const row of rows) {
    const group = groups.get(row.machine);
    if (group) group.push(row);
    else groups.set(row.machine, [row]);
  }
  return groups;
}
