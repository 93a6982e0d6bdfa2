/** An Outgoing as one request to Discord, tried once. */
import { MessageFlags, Routes, type APIChannel, type APIMessage, type REST } from 'discord.js';
import type { Outgoing, PostRef, SendResult } from '../../src/index.ts';
import { PLATFORM } from './environment.ts';
import type { Live, LiveInteractions } from './live.ts';
import { plainBody, renderReply, type MessageBody } from './render/components.ts';
import { CODE, codeOf, outcomeOf } from './rest.ts';

export interface Sender {
  rest: REST;
  live: LiveInteractions;
  application: () => string;
}

const bodyOf = ({ reply, tokens, id }: Outgoing): MessageBody => renderReply(reply, tokens, id);
const refOf = ({ id, channel_id }: Pick<APIMessage, 'id' | 'channel_id'>): PostRef => ({
  platform: PLATFORM,
  channel: channel_id,
  id,
});

export async function send(sender: Sender, outgoing: Outgoing): Promise<SendResult> {
  const live = await sender.live.of(outgoing.answers);
  if (!live) return afresh(sender, outgoing);
  const waits = live.how === 'reply' && !live.used;
  if (waits && fits(live, outgoing)) return fillIn(sender, outgoing, live);
  if (outgoing.audience === 'asker') {
    // Discord shows what comes after a "thinking" for all in its place, for all: it has to be gone before
    if (waits) await withdraw(sender, live);
    return whisper(sender, outgoing, live);
  }
  const result = await post(sender, outgoing, live.message);
  if (waits && result.outcome === 'sent') await withdraw(sender, live);
  return result;
}

/** What waits for the asker alone cannot become an answer for all, nor the other way round where others read. */
const fits = (live: Live, outgoing: Outgoing): boolean =>
  outgoing.audience === 'asker' ? live.hidden || outgoing.to.direct : !live.hidden;

/** Without the interaction that it answers. */
const afresh = (sender: Sender, outgoing: Outgoing, below?: string): Promise<SendResult> =>
  outgoing.audience === 'asker' && !outgoing.to.direct
    ? toAsker(sender, outgoing)
    : post(sender, outgoing, below);

const LEFT_OUT =
  'An answer for one person alone could not be shown to them, and was left out here. Whoever waits for it: ask again.';

/** In the direct conversation; where that is closed, a word in the place that says nothing of the answer. */
async function toAsker(sender: Sender, outgoing: Outgoing): Promise<SendResult> {
  const { asker, to, replyTo: _elsewhere, ...rest } = outgoing;
  if (asker === undefined) return { outcome: 'refused', why: 'nobody to show it to' };
  const result = await directly(sender, asker, (channel) =>
    post(sender, { ...rest, to: { platform: PLATFORM, space: '', channel, direct: true } }),
  );
  if (result.outcome !== 'refused') return result;
  // an identity of its own, and no reference: no later edit puts the answer in its place
  const id = `${outgoing.id}-p`;
  const body = { ...plainBody(LEFT_OUT, id), nonce: id, enforce_nonce: true };
  return sender.rest.post(Routes.channelMessages(to.channel), { body }).then(
    (): SendResult => ({ outcome: 'sent' }),
    (cause: unknown) => outcomeOf(cause, false),
  );
}

/** Opening a direct conversation that is open gives the same one. */
async function directly(
  { rest }: Sender,
  account: string,
  send: (channel: string) => Promise<SendResult>,
): Promise<SendResult> {
  let opened: Pick<APIChannel, 'id'>;
  try {
    opened = (await rest.post(Routes.userChannels(), { body: { recipient_id: account } })) as APIChannel;
  } catch (cause) {
    return outcomeOf(cause, true);
  }
  return send(opened.id);
}

/** A message of its own: the nonce lets Discord drop a second one, for some minutes. */
async function post(sender: Sender, outgoing: Outgoing, below?: string): Promise<SendResult> {
  const replyTo = outgoing.replyTo ?? below;
  const reference =
    replyTo === undefined ? {} : { message_reference: { message_id: replyTo, fail_if_not_exists: false } };
  const body = bodyOf(outgoing);
  const once = (more: object): Promise<unknown> =>
    sender.rest.post(Routes.channelMessages(outgoing.to.channel), {
      body: { ...body, nonce: outgoing.id, enforce_nonce: true, ...more },
    });
  try {
    return sent(await once(reference));
  } catch (cause) {
    if (codeOf(cause) !== CODE.noReplyWithoutHistory || replyTo === undefined) return outcomeOf(cause, false);
  }
  // without the right to read back Discord takes no answer to a message, but a message
  return once({}).then(sent, (cause: unknown) => outcomeOf(cause, false));
}

const withFlag = (body: MessageBody, flag: MessageFlags): MessageBody => ({
  ...body,
  flags: body.flags | flag,
});
const sent = (answer: unknown): SendResult => ({ outcome: 'sent', ref: refOf(answer as APIMessage) });

/** Replaces "is thinking". Doing it twice is harmless. */
async function fillIn(sender: Sender, outgoing: Outgoing, live: Live): Promise<SendResult> {
  const route = Routes.webhookMessage(sender.application(), live.token);
  try {
    const message = (await sender.rest.patch(route, { body: bodyOf(outgoing), auth: false })) as APIMessage;
    live.used = true;
    return live.hidden ? { outcome: 'sent' } : { outcome: 'sent', ref: refOf(message) };
  } catch (cause) {
    return isOver(cause) ? afresh(sender, outgoing) : outcomeOf(cause, true);
  }
}

/** To the asker alone. It has no nonce, and nobody can look it up later. */
async function whisper(sender: Sender, outgoing: Outgoing, live: Live): Promise<SendResult> {
  const body = withFlag(bodyOf(outgoing), MessageFlags.Ephemeral);
  try {
    await sender.rest.post(Routes.webhook(sender.application(), live.token), { body, auth: false });
    return { outcome: 'sent' };
  } catch (cause) {
    return isOver(cause) ? afresh(sender, outgoing, live.message) : outcomeOf(cause, false);
  }
}

async function withdraw(sender: Sender, live: Live): Promise<void> {
  live.used = true;
  // a "thinking" that stays for a while is no loss
  await sender.rest
    .delete(Routes.webhookMessage(sender.application(), live.token), { auth: false })
    .catch(() => undefined);
}

const OVER: ReadonlySet<number | undefined> = new Set([
  CODE.unknownWebhook, CODE.unknownInteraction, CODE.invalidToken, CODE.unknownMessage,
]); // prettier-ignore
const isOver = (cause: unknown): boolean => OVER.has(codeOf(cause));

/** What an edit changes: text and buttons, and still nobody is pinged. */
export async function edit(sender: Sender, ref: PostRef, outgoing: Outgoing): Promise<SendResult> {
  const live = await sender.live.of(outgoing.answers);
  const body = bodyOf(outgoing);
  // a message for one person alone can be reached through the press on it, and in no other way
  if (live?.message === ref.id) {
    const route = Routes.webhookMessage(sender.application(), live.token);
    const result = await sender.rest.patch(route, { body, auth: false }).then(
      (): SendResult => ({ outcome: 'sent', ref }),
      (cause: unknown): SendResult | undefined => (isOver(cause) ? undefined : outcomeOf(cause, true)),
    );
    if (result) return result;
  }
  return sender.rest.patch(Routes.channelMessage(ref.channel, ref.id), { body }).then(
    (): SendResult => ({ outcome: 'sent', ref }),
    (cause: unknown) => outcomeOf(cause, true),
  );
}
