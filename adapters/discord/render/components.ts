/**
 * A reply as Discord's components: every message is made of them (flag IS_COMPONENTS_V2), so that buttons stand
 * below what they belong to, a post can be edited into any other, and each carries a mark by which it is found again.
 */
import { createHash } from 'node:crypto';
import {
  ButtonStyle,
  ComponentType,
  MessageFlags,
  type APIActionRowComponent,
  type APIComponentInMessageActionRow,
  type APIMessageTopLevelComponent,
} from 'discord.js';
import type { Reply } from '../../../src/index.ts';
import { blocksOf, type Key, type Row } from './blocks.ts';
import { harmless } from './escape.ts';
import {
  BUTTONS_A_ROW,
  cut,
  MOST_ANSWER_BUTTONS,
  MOST_BUTTONS,
  MOST_COMPONENTS,
  MOST_CUSTOM_ID,
  MOST_LABEL,
  MOST_OPTION_LABEL,
  OPTIONS_A_SELECT,
} from './limits.ts';

type ActionRow = APIActionRowComponent<APIComponentInMessageActionRow>;
export interface MessageBody {
  flags: number;
  components: APIMessageTopLevelComponent[];
  /** Nobody is ever pinged, whatever the text says. */
  allowed_mentions: { parse: []; replied_user: false };
}

/** A dull red edge: stop, and what can hurt. */
const CAUTION_COLOUR = 0xb3_3a_2e;
const EMPTY = 'Nothing to show.';

/** A number from 1 to 2^31 - 1 that stands for an outgoing message on its first component. */
export const markOf = (id: string): number =>
  createHash('sha256').update(id).digest().readUInt32BE(0) >>> 1 || 1;

export function renderReply(reply: Reply, tokens: readonly string[], id: string): MessageBody {
  const { caution, rows, keys } = blocksOf(reply, tokens.map(usable));
  const below = rowsOfKeys(keys.filter(isKey), MOST_COMPONENTS / 2);
  const own = caution.length > 0 ? 2 : 0;
  const middle = middleOf(rows, MOST_COMPONENTS - own - count(below));
  const components: APIMessageTopLevelComponent[] = [
    ...(caution.length > 0 ? [cautionOf(caution)] : []),
    ...middle,
    ...below,
  ];
  return {
    flags: MessageFlags.IsComponentsV2,
    components: marked(components.length > 0 ? components : [text(EMPTY)], markOf(id)),
    allowed_mentions: { parse: [], replied_user: false },
  };
}

/** A line of our own, for what the adapter itself has to say. */
export const plainBody = (line: string, id: string): MessageBody =>
  renderReply({ title: [line], sections: [], buttons: [] }, [], id);

// Discord refuses a message with an empty or overlong id: such a button is left out, the sentence still works
const usable = (token: string): string => (token.length <= MOST_CUSTOM_ID ? token : '');
const isKey = ({ token }: Key): boolean => token !== '';

const text = (content: string): APIMessageTopLevelComponent => ({ type: ComponentType.TextDisplay, content });
const cautionOf = (lines: readonly string[]): APIMessageTopLevelComponent => ({
  type: ComponentType.Container,
  accent_color: CAUTION_COLOUR,
  components: [{ type: ComponentType.TextDisplay, content: lines.join('\n') }],
});
const marked = (components: APIMessageTopLevelComponent[], id: number): APIMessageTopLevelComponent[] =>
  components.map((component, place) => (place === 0 ? { ...component, id } : component));

const count = (rows: readonly ActionRow[]): number =>
  rows.reduce((sum, row) => sum + 1 + row.components.length, 0);

/** Texts, each followed by the buttons of its last line, as long as there is room for them. */
function middleOf(rows: readonly Row[], room: number): APIMessageTopLevelComponent[] {
  const made: APIMessageTopLevelComponent[] = [];
  let lines: string[] = [];
  // one component is kept for the text that follows the last buttons
  let left = room - 1;
  const flush = (): void => {
    const content = lines.join('\n').trim();
    if (content !== '') made.push(text(content));
    lines = [];
  };
  for (const row of rows) {
    lines.push(row.text);
    const beside = rowsOfKeys(row.keys.filter(isKey), left - 1);
    if (beside.length === 0) continue;
    flush();
    made.push(...beside);
    left -= 1 + count(beside);
  }
  flush();
  return made;
}

/** Rows of buttons; many answers to one question become a list to pick from. Never more than `room` components. */
function rowsOfKeys(keys: readonly Key[], room: number): ActionRow[] {
  const distinct = [...new Map(keys.map((key) => [key.token, key])).values()];
  const answers = distinct.filter(({ button }) => button.press.does === 'answer');
  const many = distinct.length > MOST_BUTTONS ? distinct : [];
  const listed = answers.length > MOST_ANSWER_BUTTONS ? answers : many;
  const beside = distinct.filter((key) => !listed.includes(key));
  const rows = [
    ...chunks(listed, OPTIONS_A_SELECT).map(selectOf),
    ...chunks(beside, BUTTONS_A_ROW).map(buttonRow),
  ];
  return rows.filter((_, place) => count(rows.slice(0, place + 1)) <= room);
}

const chunks = <T>(all: readonly T[], most: number): T[][] =>
  Array.from({ length: Math.ceil(all.length / most) }, (_, n) => all.slice(n * most, (n + 1) * most));

const labelOf = (label: string, most: number): string => cut(harmless(label).trim(), most) || '…';

const selectOf = (keys: readonly Key[], place: number): ActionRow => ({
  type: ComponentType.ActionRow,
  components: [
    {
      type: ComponentType.StringSelect,
      custom_id: `pick:${place}:${keys[0]?.token.slice(0, 80) ?? ''}`,
      placeholder: 'Pick one',
      options: keys.map(({ button, token }) => ({
        label: labelOf(button.label, MOST_OPTION_LABEL),
        value: token,
      })),
    },
  ],
});

const buttonRow = (keys: readonly Key[]): ActionRow => ({
  type: ComponentType.ActionRow,
  components: keys.map(({ button, token }, place) => ({
    type: ComponentType.Button,
    style: place === 0 && reportsWork(button.press) ? ButtonStyle.Primary : ButtonStyle.Secondary,
    label: labelOf(button.label, MOST_LABEL),
    custom_id: token,
  })),
});

/** One button of a row may stand out: the one that says that the work is done. */
const reportsWork = (press: Key['button']['press']): boolean =>
  press.does === 'deeds' && press.deeds.every((deed) => deed.kind !== 'ask');
