/** Buttons as Slack's, or as a list to choose from where they would fill a phone's screen. */
import type { types } from '@slack/bolt';
import { LIMITS } from './limits.ts';
import { cut, harmless } from './text.ts';

export interface LabelledToken {
  label: string;
  token: string;
}

/** The action of a list of buttons; the chosen option carries the button's token. */
export const CHOOSE = 'choose';
const CHOOSE_LABEL = 'Choose';

export const plain = (text: string, most: number): types.PlainTextElement => ({
  type: 'plain_text',
  text: cut(harmless(text), most) || '?',
  emoji: false,
});

/** `about`: what it acts on, for those who hear the label without the line above it. */
export const button = (label: string, token: string, about?: string): types.Button => ({
  type: 'button',
  text: plain(label, LIMITS.label),
  ...(about === undefined ? {} : { accessibility_label: cut(harmless(`${label}: ${about}`), LIMITS.label) }),
  action_id: token,
  value: token,
});

export function buttonBlocks(buttons: readonly LabelledToken[], about?: string): types.ActionsBlock[] {
  if (buttons.length === 0) return [];
  if (buttons.length <= LIMITS.row)
    return [{ type: 'actions', elements: buttons.map(({ label, token }) => button(label, token, about)) }];
  const options = buttons
    .slice(0, LIMITS.options)
    .map(({ label, token }) => ({ text: plain(label, LIMITS.label), value: token }));
  const list: types.StaticSelect = {
    type: 'static_select',
    action_id: CHOOSE,
    placeholder: plain(CHOOSE_LABEL, LIMITS.placeholder),
    options,
  };
  return [{ type: 'actions', elements: [list] }];
}
