/** What Slack sends over its socket, as small as it works. */
import { BOT, TEAM, type Arguments } from './fakeSlack.ts';

let envelopes = 0;
const enveloped = (type: string, payload: Arguments): Arguments & { envelope_id: string } => ({
  envelope_id: `E${++envelopes}`,
  type,
  accepts_response_payload: type !== 'events_api',
  payload,
});

export const SAID_AT = 1_773_239_400;
export const ts = (n: number): string => `${SAID_AT + n}.000100`;

export const event = (id: string, inner: Arguments) =>
  enveloped('events_api', {
    type: 'event_callback',
    token: 'secret-verification-token',
    team_id: TEAM,
    api_app_id: 'A1',
    event_id: id,
    event_time: SAID_AT,
    event: inner,
  });

export const mention = (id: string, text: string, more: Arguments = {}) =>
  event(id, {
    type: 'app_mention', user: 'U1', text: `<@${BOT}> ${text}`, ts: ts(1), channel: 'C0000001', event_ts: ts(1), ...more,
  }); // prettier-ignore

export const direct = (id: string, text: string, more: Arguments = {}) =>
  event(id, {
    type: 'message', user: 'U1', text, ts: ts(1), channel: 'D0000001', channel_type: 'im', event_ts: ts(1), ...more,
  }); // prettier-ignore

const PERSON = { id: 'U1', name: 'ines', username: 'ines', team_id: TEAM };

export const command = (text: string, more: Arguments = {}) =>
  enveloped('slash_commands', {
    token: 'secret-verification-token', command: '/fettle', text, team_id: TEAM, channel_id: 'C0000001',
    channel_name: 'print-room', user_id: 'U1', user_name: 'ines', trigger_id: 'trigger-secret', ...more,
  }); // prettier-ignore

export const click = (token: string, more: Arguments = {}) =>
  enveloped('interactive', {
    type: 'block_actions', token: 'secret-verification-token', user: PERSON, team: { id: TEAM, domain: 'playhouse' },
    channel: { id: 'C0000001', name: 'print-room' },
    message: { type: 'message', user: BOT, ts: ts(2), text: 'Birch: noted.', thread_ts: ts(1) },
    container: { type: 'message', message_ts: ts(2), channel_id: 'C0000001', is_ephemeral: false },
    trigger_id: 'trigger-secret',
    actions: [{ type: 'button', action_id: token, block_id: 'b', value: token, text: { type: 'plain_text', text: 'Undo' }, action_ts: ts(3) }],
    ...more,
  }); // prettier-ignore

export const homeAction = (action: Arguments) =>
  enveloped('interactive', {
    type: 'block_actions', token: 'secret-verification-token', user: PERSON, team: { id: TEAM, domain: 'playhouse' },
    view: { id: 'V0', type: 'home' }, container: { type: 'view', view_id: 'V0' }, trigger_id: 'trigger-secret',
    actions: [{ block_id: 'b', action_ts: ts(3), ...action }],
  }); // prettier-ignore

export const suggestion = (value: string) =>
  enveloped('interactive', {
    type: 'block_suggestion', action_id: 'home:machine', block_id: 'b', value, user: PERSON, team: { id: TEAM, domain: 'playhouse' },
    container: { type: 'view', view_id: 'V0' },
  }); // prettier-ignore

export const noteShortcut = (message: Arguments, more: Arguments = {}) =>
  enveloped('interactive', {
    type: 'message_action', callback_id: 'note_message', token: 'secret-verification-token', user: PERSON,
    team: { id: TEAM, domain: 'playhouse' }, channel: { id: 'C0000001', name: 'print-room' }, message_ts: ts(5),
    action_ts: ts(9), trigger_id: 'trigger-secret', message: { type: 'message', ts: ts(5), ...message }, ...more,
  }); // prettier-ignore

export const logShortcut = () =>
  enveloped('interactive', {
    type: 'shortcut', callback_id: 'log_form', token: 'secret-verification-token', user: PERSON,
    team: { id: TEAM, domain: 'playhouse' }, trigger_id: 'trigger-secret', action_ts: ts(4),
  }); // prettier-ignore

/** `view`: as it was opened; the values are by field. */
export const filled = (view: Arguments, values: Readonly<Record<string, string>>, id = 'V1') =>
  enveloped('interactive', {
    type: 'view_submission', token: 'secret-verification-token', user: PERSON, team: { id: TEAM, domain: 'playhouse' },
    trigger_id: 'trigger-secret',
    view: {
      id, type: 'modal', callback_id: view['callback_id'], private_metadata: view['private_metadata'],
      state: { values: Object.fromEntries(Object.entries(values).map(([name, value]) => [name, { value: { type: 'plain_text_input', value } }])) },
    },
  }); // prettier-ignore
