/** The home view: the room at a glance or one machine, a list to choose another, and the log form. */
import type { types } from '@slack/bolt';
import type { Card } from '../../../src/index.ts';
import { render } from './blocks.ts';
import { button, plain } from './buttons.ts';
import { LIMITS } from './limits.ts';
import { lines, pieces } from './rich.ts';

export const HOME = { machine: 'home:machine', room: 'home:room', log: 'home:log' } as const;

const STRANGER =
  'Here you see the room and its printers once you have written to Fettle in one of its channels. Mention it there, and open this page again.';
/** The blocks that stand before the card. */
const OWN_BLOCKS = 2;

export const homeView = (card: Card | undefined, machine: string | undefined): types.HomeView => ({
  type: 'home',
  blocks: card
    ? [
        chooser(machine),
        { type: 'divider' },
        ...render(card.reply, card.tokens, LIMITS.viewBlocks - OWN_BLOCKS).blocks,
      ]
    : [{ type: 'rich_text', elements: [lines([pieces([STRANGER], LIMITS.stretch)])] }],
});

const chooser = (machine: string | undefined): types.ActionsBlock => ({
  type: 'actions',
  elements: [
    {
      type: 'external_select',
      action_id: HOME.machine,
      min_query_length: 0,
      placeholder: plain('Show a machine', LIMITS.placeholder),
      ...(machine === undefined ? {} : { initial_option: machineOption(machine) }),
    },
    ...(machine === undefined ? [] : [button('The whole room', HOME.room)]),
    button('Log something', HOME.log),
  ],
});

export const machineOption = (name: string): types.PlainTextOption => ({
  text: plain(name, LIMITS.label),
  value: name.slice(0, LIMITS.label),
});
