/** Messages, their edits and their deletion. */
import type { types } from '@slack/bolt';
import type { Received } from '../../../src/index.ts';
import { mentions, plainOf } from './markup.ts';
import { momentOf, placeOf, type Scene } from './scene.ts';

/** What a message in a channel and one to the bot alone have in common. */
export interface Written {
  channel: string;
  user: string;
  text: string;
  ts: string;
  thread_ts?: string | undefined;
  team?: string | undefined;
  edited?: { ts: string } | undefined;
}

/** `key`: the delivery's; `space`: the workspace that it was delivered for. */
export interface Delivery {
  key: string;
  space: string;
  direct: boolean;
}

const base = async ({ key, space, direct }: Delivery, written: Written, { names }: Scene) => ({
  key,
  platform: 'slack',
  place: placeOf(written.team ?? space, written.channel, direct, written.thread_ts),
  account: written.user,
  accountName: await names.person(written.user),
  audience: 'place' as const,
});

export async function said(delivery: Delivery, written: Written, scene: Scene): Promise<Received> {
  const [common, text] = await Promise.all([
    base(delivery, written, scene),
    plainOf(written.text, scene.me.botUserId, scene.names),
  ]);
  return { ...common, saidAt: momentOf(written.ts), what: { kind: 'said', message: written.ts, text } };
}

/** `at`: when it was edited. */
export async function edited(
  delivery: Delivery,
  written: Written,
  at: string,
  scene: Scene,
): Promise<Received> {
  const [common, text] = await Promise.all([
    base(delivery, written, scene),
    plainOf(written.text, scene.me.botUserId, scene.names),
  ]);
  const what = { kind: 'edited' as const, message: written.ts, text, editedAt: momentOf(at) };
  return { ...common, saidAt: momentOf(written.ts), what };
}

/** A mention in a channel. Undefined: it is none of ours. An edit that adds the mention, or follows it, comes as a mention too. */
export async function ofMention(
  event: types.AppMentionEvent,
  delivery: Delivery,
  scene: Scene,
): Promise<Received | undefined> {
  const { user } = event;
  if (user === undefined || event.bot_id !== undefined || user === scene.me.botUserId) return undefined;
  const written = { ...event, user, team: event.user_team ?? event.team };
  return event.edited ? edited(delivery, written, event.edited.ts, scene) : said(delivery, written, scene);
}

/** A message to the bot alone; undefined: it is none of ours. */
export async function ofMessage(
  event: types.AllMessageEvents,
  delivery: Delivery,
  scene: Scene,
): Promise<Received | undefined> {
  if (event.channel_type !== 'im') return undefined;
  switch (event.subtype) {
    case undefined:
    case 'file_share':
    case 'me_message':
    case 'thread_broadcast': {
      const written = humanOf(event, event.channel, scene);
      return written && said(delivery, written, scene);
    }
    case 'message_changed':
      return ofChange(event, delivery, scene);
    case 'message_deleted':
      return ofDeletion(event, delivery, scene);
    default:
      return undefined;
  }
}

/** Slack tells of previews that unfold as of changes: only another text is an edit. */
async function ofChange(
  { message, previous_message: before, channel, event_ts }: types.MessageChangedEvent,
  delivery: Delivery,
  scene: Scene,
): Promise<Received | undefined> {
  const written = humanOf(message, channel, scene);
  if (!written || !('text' in before) || written.text === (before.text ?? '')) return undefined;
  return edited(delivery, written, written.edited?.ts ?? event_ts, scene);
}

async function ofDeletion(
  { previous_message: before, channel, deleted_ts, event_ts }: types.MessageDeletedEvent,
  delivery: Delivery,
  scene: Scene,
): Promise<Received | undefined> {
  const written = humanOf(before, channel, scene);
  if (!written) return undefined;
  const common = await base(delivery, written, scene);
  return { ...common, saidAt: momentOf(event_ts), what: { kind: 'deleted', message: deleted_ts } };
}

/** Only what a person wrote: answers to other bots would go round for ever. */
function humanOf(message: types.AllMessageEvents, channel: string, { me }: Scene): Written | undefined {
  if (!('user' in message) || message.user === undefined || message.user === me.botUserId) return undefined;
  if ('bot_id' in message && message.bot_id !== undefined) return undefined;
  const { user, ts } = message;
  const text = 'text' in message ? (message.text ?? '') : '';
  return {
    channel,
    user,
    ts,
    text,
    ...('thread_ts' in message ? { thread_ts: message.thread_ts } : {}),
    ...('team' in message ? { team: message.team } : {}),
    ...('edited' in message ? { edited: message.edited } : {}),
  };
}

export const isForUs = (text: string, direct: boolean, { me }: Scene): boolean =>
  direct || mentions(text, me.botUserId);
