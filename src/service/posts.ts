/** Our own posts: planned in the transaction that made their answer, with the buttons that they carry. */
import { z } from 'zod';
import type { Instant } from '../maintenance/entry/entry.ts';
import type { Button, Press, Reply } from '../replies/reply.ts';
import { buttonsOf } from '../replies/text.ts';
import type { ButtonRow, PostRow, Traffic } from '../store/traffic.ts';
import { tokenFor } from './identity.ts';
import type { Outgoing, Place, Speaker } from './platform.ts';
import type { SeenRow } from './seen.ts';

/** What a button stands for, and in which talk. */
export interface Pressable {
  label: string;
  press: Press;
  /** Of the conversation in which it was offered. */
  talk: string;
  /** Whom the answer was for; absent for a digest. */
  owner?: Speaker;
  /** In a view that is no message: what it was about, as it was drawn. */
  seen?: readonly SeenRow[];
}

/** What the digest named in the morning: what is no longer owed was done. */
export interface DigestNote {
  date: string;
  rows: readonly { machine: string; task: string }[];
}

/** Who pressed a button that did what it stands for, and when. */
export interface Mark {
  token: string;
  label: string;
  by: string;
  /** Local, `HH:MM`. */
  time: string;
  /** Machine and task that it was about. */
  row?: string;
  /** Nobody pressed it: the message that it would have read anew was changed once more. */
  outdated?: true;
}

export interface PostContent {
  outgoing: Outgoing;
  digest?: DigestNote;
  marks?: readonly Mark[];
  /** Surely not posted, and a digest: it may be tried again. */
  refused?: true;
}

const shape = z.looseObject({
  outgoing: z.looseObject({ id: z.string(), to: z.looseObject({ channel: z.string() }), tokens: z.array(z.string()) }),
}); // prettier-ignore
const isContent = (json: unknown): json is PostContent => shape.safeParse(json).success;
/** Undefined: an older version stored it, or its words were deleted. */
export const contentOf = ({ content }: Pick<PostRow, 'content'>): PostContent | undefined =>
  isContent(content) ? content : undefined;

const pressable = z.looseObject({
  label: z.string(),
  press: z.looseObject({ does: z.string() }),
  talk: z.string(),
});
const isPressable = (json: unknown): json is Pressable => pressable.safeParse(json).success;
export const pressableOf = ({ button }: Pick<ButtonRow, 'button'>): Pressable | undefined =>
  isPressable(button) ? button : undefined;

export const tokensFor = (owner: string, buttons: readonly Button[]): string[] =>
  buttons.map((button) => tokenFor(owner, button));

export interface Plan extends Omit<Outgoing, 'tokens'> {
  platform: string;
  talk: string;
  owner?: Speaker;
  /** Key of what it answers. */
  about?: string;
  digest?: DigestNote;
}

/** Rows of the buttons of a reply that stands in `owner`, a post or a view. */
export function buttonRows(
  reply: Reply,
  owner: string,
  of: Pick<Plan, 'talk' | 'owner'> & { seen?: readonly (readonly SeenRow[])[] },
  at: Instant,
  post?: string,
): ButtonRow[] {
  return buttonsOf(reply).map((button, position) => ({
    token: tokenFor(owner, button),
    ...(post === undefined ? {} : { post }),
    position,
    button: {
      label: button.label,
      press: button.press,
      talk: of.talk,
      ...(of.owner ? { owner: of.owner } : {}),
      ...(of.seen ? { seen: of.seen[position] ?? [] } : {}),
    },
    at,
  }));
}

/** Nothing happens when it is planned already. */
export async function planPost(traffic: Traffic, plan: Plan, now: Instant): Promise<void> {
  const { platform, talk, owner, about, digest, ...said } = plan;
  if (await traffic.post(said.id)) return;
  const outgoing: Outgoing = { ...said, tokens: tokensFor(said.id, buttonsOf(said.reply)) };
  const content: PostContent = { outgoing, ...(digest ? { digest } : {}) };
  await traffic.savePost({
    id: said.id, platform, channel: said.to.channel, state: 'planned', open: true, content, version: 1, shown: 0,
    ...(about === undefined ? {} : { about }), plannedAt: now, tries: 0, notBefore: now,
  }); // prettier-ignore
  await traffic.saveButtons(
    buttonRows(said.reply, said.id, { talk, ...(owner ? { owner } : {}) }, now, said.id),
  );
}

/** Shows something else in the place of a post, once it is there. */
export async function changePost(
  traffic: Traffic,
  row: PostRow,
  content: PostContent,
  now: Instant,
): Promise<void> {
  // what will never be shown is not begun again
  if (row.state === 'left' || JSON.stringify(row.content) === JSON.stringify(content)) return;
  const notBefore = Math.max(now, row.notBefore);
  await traffic.savePost({ ...row, content, version: row.version + 1, open: true, notBefore });
}

/**
 * The conversation that a place belongs to: a speaker's talk goes on below its own message as in the channel. A direct
 * one is a person's own by itself; a platform may name its channel by the account at one time and by an id at another.
 */
export const talkOf = ({ platform, channel, direct }: Place): string =>
  `${platform}:${direct ? 'direct' : channel}`;
