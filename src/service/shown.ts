/** How a post stands after a try to show it, or to show something else in its place. */
import type { PostRow } from '../store/traffic.ts';
import type { PostRef } from './platform.ts';

/** Nothing more is tried; what is shown already stays as it is. */
export const left = (row: PostRow): PostRow => ({
  ...row,
  state: row.shown > 0 ? 'sent' : 'left',
  open: false,
});

/** Without a reference it was shown once and cannot be changed any more. */
export const shownAs = (row: PostRow, version: number, ref: PostRef | undefined): PostRow => ({
  ...row,
  state: 'sent',
  shown: version,
  open: ref !== undefined && row.version > version,
  tries: 0,
  // changes need not wait for what the claim waited for
  notBefore: row.plannedAt,
  ...(ref ? whereShown(row, ref) : {}),
});

const whereShown = (row: PostRow, { id, channel, thread }: PostRef): Partial<PostRow> => ({
  message: id,
  ...(channel === row.channel ? {} : { shownIn: channel }),
  ...(thread === undefined ? {} : { thread }),
});

/** Undefined: it was not shown, or cannot be reached any more. */
export const refOf = ({ platform, channel, shownIn, message, thread }: PostRow): PostRef | undefined =>
  message === undefined
    ? undefined
    : { platform, channel: shownIn ?? channel, id: message, ...(thread === undefined ? {} : { thread }) };
