/** What is done to the bot without writing a message: commands, buttons, shortcuts, filled forms. */
import type {
  BlockAction, ButtonAction, GlobalShortcut, MessageShortcut, SlashCommand, StaticSelectAction, ViewSubmitAction,
} from '@slack/bolt'; // prettier-ignore
import type { PostRef, Received } from '../../../src/index.ts';
import { plainOf } from './markup.ts';
import { isDirect, keyOfTrigger, momentOf, placeOf, placeOfPerson, type Scene } from './scene.ts';
import { fieldsOf, originOf } from '../outgoing/form.ts';

export type Pressing = BlockAction<ButtonAction | StaticSelectAction>;

/** `/fettle …`: the answer is for the asker, as the command itself is. */
export async function ofCommand(command: SlashCommand, { names, me, clock }: Scene): Promise<Received> {
  const { channel_id: channel, user_id: account, team_id: space } = command;
  const [accountName, text] = await Promise.all([
    names.person(account, command.user_name),
    plainOf(command.text, me.botUserId, names),
  ]);
  return {
    key: keyOfTrigger(command.trigger_id),
    platform: 'slack',
    place: placeOf(space, channel, isDirect(channel)),
    account,
    accountName,
    saidAt: clock(),
    audience: 'asker',
    what: { kind: 'command', text },
  };
}

/** The token of the button, or of the choice in a list of buttons. */
export const tokenOf = (action: ButtonAction | StaticSelectAction): string =>
  action.type === 'static_select' ? action.selected_option.value : (action.value ?? action.action_id);

const spaceOf = (body: { user: { team_id?: string }; team: { id: string } | null }): string =>
  body.user.team_id ?? body.team?.id ?? '';

/** Undefined: the message is shown to one person only, and cannot be edited. */
export function postOf(body: BlockAction): PostRef | undefined {
  if (!body.message || !body.channel || body.container['is_ephemeral'] === true) return undefined;
  const { ts, thread_ts: thread } = body.message;
  return {
    platform: 'slack',
    channel: body.channel.id,
    id: ts,
    ...(typeof thread === 'string' && thread !== ts ? { thread } : {}),
  };
}

export async function ofPress(
  body: Pressing,
  action: ButtonAction | StaticSelectAction,
  { names }: Scene,
): Promise<Received> {
  const space = spaceOf(body);
  const { id: account } = body.user;
  const on = postOf(body);
  const home = body.channel === undefined;
  const where = on?.id ?? body.view?.id ?? String(body.container['message_ts'] ?? '');
  return {
    key: `slack:press:${body.channel?.id ?? ''}:${where}:${tokenOf(action)}:${account}:${action.action_ts}`,
    platform: 'slack',
    place: body.channel
      ? placeOf(space, body.channel.id, isDirect(body.channel.id), threadOf(body))
      : placeOfPerson(space, account),
    account,
    accountName: await names.person(account, body.user.name ?? body.user.username),
    saidAt: momentOf(action.action_ts),
    audience: on || home ? 'place' : 'asker',
    what: {
      kind: 'pressed',
      token: tokenOf(action),
      ...(on ? { on } : {}),
      ...(home ? { home: true as const } : {}),
    },
  };
}

/** The thread that a pressed message is in; pressing one outside a thread is answered below it. */
export function threadOf(body: BlockAction): string | undefined {
  const thread: unknown = body.message?.['thread_ts'] ?? body.container['thread_ts'];
  if (typeof thread === 'string') return thread;
  return body.channel && isDirect(body.channel.id) ? undefined : postOf(body)?.id;
}

/** Somebody notes what a colleague wrote. Undefined: no person wrote it. */
export async function ofShortcut(
  shortcut: MessageShortcut,
  { names, me }: Scene,
): Promise<Received | undefined> {
  const { message, user, channel } = shortcut;
  const author = message.user;
  if (author === undefined || message['bot_id'] !== undefined || author === me.botUserId) return undefined;
  const [accountName, authorName, text] = await Promise.all([
    names.person(user.id, user.username ?? user.name),
    names.person(author),
    plainOf(message.text ?? '', me.botUserId, names),
  ]);
  const thread: unknown = message['thread_ts'];
  return {
    // of two people who note it each gets the answer
    key: `slack:note:${channel.id}:${shortcut.message_ts}:${user.id}`,
    platform: 'slack',
    place: placeOf(
      spaceOf(shortcut),
      channel.id,
      isDirect(channel.id),
      typeof thread === 'string' ? thread : undefined,
    ),
    account: user.id,
    accountName,
    saidAt: momentOf(shortcut.message_ts),
    audience: 'place',
    what: {
      kind: 'said',
      text,
      message: shortcut.message_ts,
      ...(author === user.id ? {} : { author: { account: author, name: authorName } }),
    },
  };
}

/** Where a form that was opened from no channel belongs: the conversation with the person. */
export const placeOfShortcut = (shortcut: GlobalShortcut) =>
  placeOfPerson(spaceOf(shortcut), shortcut.user.id);
export const placeOfPress = (body: Pressing) =>
  body.channel
    ? placeOf(spaceOf(body), body.channel.id, isDirect(body.channel.id), threadOf(body))
    : placeOfPerson(spaceOf(body), body.user.id);

/** Undefined: the form is none of ours. One view is sent once. */
export async function ofForm(body: ViewSubmitAction, { names, clock }: Scene): Promise<Received | undefined> {
  const origin = originOf(body.view.private_metadata);
  if (!origin) return undefined;
  const { form, token, on, place } = origin;
  return {
    key: `slack:form:${body.view.id}`,
    platform: 'slack',
    place,
    account: body.user.id,
    accountName: await names.person(body.user.id, body.user.name),
    saidAt: clock(),
    audience: origin.audience,
    what: {
      kind: 'form',
      form,
      fields: fieldsOf(body.view.state.values),
      ...(token === undefined ? {} : { token }),
      ...(on === undefined ? {} : { on }),
    },
  };
}
