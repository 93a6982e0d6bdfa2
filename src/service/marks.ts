/** Afterwards the message shows who pressed what and when, and offers it no more. */
import { item, type Button, type Press, type Reply } from '../replies/reply.ts';
import { buttonsOf } from '../replies/text.ts';
import { clock } from '../replies/format/date.ts';
import type { LocalCalendar } from '../maintenance/calendar.ts';
import type { Instant } from '../maintenance/entry/entry.ts';
import type { ReadView, Transaction } from '../store/store.ts';
import type { PostRow, Traffic } from '../store/traffic.ts';
import type { Works } from './parts.ts';
import type { Received } from './platform.ts';
import { changePost, contentOf, type Mark, type Pressable } from './posts.ts';

/** Buttons that make no sense any more once one of them was pressed. */
function isOver({ press }: Button, pressed: Press): boolean {
  if (JSON.stringify(press) === JSON.stringify(pressed)) return true;
  if (pressed.does === 'answer') return press.does === 'answer' && press.question === pressed.question;
  if (pressed.does === 'undo')
    return (press.does === 'undo' || press.does === 'change') && press.message === pressed.message;
  return (
    (pressed.does === 'reread' || pressed.does === 'leave') &&
    (press.does === 'reread' || press.does === 'leave')
  );
}

/** Done, put off and how? of one row go together; a row of its own answers for itself. */
const rowIsOver = (buttons: readonly Button[], pressed: Press): boolean =>
  (pressed.does === 'deeds' || pressed.does === 'ask') &&
  buttons.some(({ press }) => JSON.stringify(press) === JSON.stringify(pressed));

export function withMark(reply: Reply, press: Press, { label, by, time }: Mark): Reply {
  const left = (buttons: readonly Button[]): Button[] => buttons.filter((button) => !isOver(button, press));
  const sections = reply.sections.map((section) => ({
    ...section,
    items: section.items.map(({ buttons = [], ...rest }) => {
      const over = buttons.length > 0 && rowIsOver(buttons, press);
      const kept = over ? [] : left(buttons);
      return {
        text: over ? [...rest.text, ` (${label}: ${by}, ${time})`] : rest.text,
        ...(kept.length > 0 ? { buttons: kept } : {}),
      };
    }),
  }));
  const inRow = reply.sections.some((s) => s.items.some((i) => rowIsOver(i.buttons ?? [], press)));
  const mark = inRow ? [] : [{ items: [item(`${label}: ${by}, ${time}`)] }];
  return { ...reply, sections: [...sections, ...mark], buttons: left(reply.buttons) };
}

/** What a press was about, as the digest names its rows. */
function rowOf(press: Press): Pick<Mark, 'row'> {
  const deed = press.does === 'deeds' ? press.deeds[0] : press.does === 'ask' ? press.about : undefined;
  if (!deed || !('machine' in deed) || !('task' in deed)) return {};
  return { row: `${deed.machine} ${deed.task}` };
}

/** The mark that a button already bears. */
export async function markOn(
  { traffic }: Pick<ReadView, 'traffic'>,
  token: string,
): Promise<Mark | undefined> {
  const row = await traffic.button(token);
  const post = row?.post === undefined ? undefined : await traffic.post(row.post);
  return post && contentOf(post)?.marks?.find((mark) => mark.token === token);
}

/** The button says what it would do, the mark what was done. */
const doneBy = ({ press, label }: Pick<Pressable, 'press' | 'label'>): string =>
  press.does === 'undo' ? 'Taken back' : press.does === 'leave' ? 'Left as it is' : label;

/** In the transaction that did what the button stands for. */
export async function markPressed(
  works: Works,
  { traffic }: Transaction,
  { accountName, saidAt }: Received,
  token: string,
  button: Pressable,
  calendar: LocalCalendar,
): Promise<void> {
  const row = await traffic.button(token);
  const post = row?.post === undefined ? undefined : await traffic.post(row.post);
  const { press } = button;
  const mark: Mark = {
    token,
    label: doneBy(button),
    by: accountName,
    time: clock(calendar.minuteOf(saidAt)),
    ...rowOf(press),
  };
  if (post) await putMark(traffic, post, press, mark, works.clock());
}

/** What was offered when a message was changed is over when it is changed again: the button holds what it said then. */
export async function markOutdated(
  works: Works,
  { traffic }: Transaction,
  about: string,
  { accountName, saidAt }: Received,
  calendar: LocalCalendar,
): Promise<void> {
  const time = clock(calendar.minuteOf(saidAt));
  for (const post of await traffic.postsAbout(about)) {
    const { reply, tokens = [] } = contentOf(post)?.outgoing ?? {};
    const buttons = reply ? buttonsOf(reply) : [];
    const at = buttons.findIndex(({ press }) => press.does === 'reread');
    const [button, token] = [buttons[at], tokens[at]];
    if (!button || token === undefined) continue;
    const mark: Mark = { token, label: 'Changed again', by: accountName, time, outdated: true };
    await putMark(traffic, post, button.press, mark, works.clock());
  }
}

async function putMark(
  traffic: Traffic,
  post: PostRow,
  press: Press,
  mark: Mark,
  now: Instant,
): Promise<void> {
  const content = contentOf(post);
  if (!content) return;
  const { outgoing, marks = [] } = content;
  const reply = withMark(outgoing.reply, press, mark);
  const tokens = tokensOfKept(outgoing.reply, outgoing.tokens, reply);
  const changed = { ...content, outgoing: { ...outgoing, reply, tokens }, marks: [...marks, mark] };
  await changePost(traffic, post, changed, now);
}

/** The buttons that are left keep what they carry. */
function tokensOfKept(before: Reply, tokens: readonly string[], after: Reply): string[] {
  const known = buttonsOf(before).map((button, at) => ({
    json: JSON.stringify(button),
    token: tokens[at] ?? '',
  }));
  return buttonsOf(after).map(
    (button) => known.find(({ json }) => json === JSON.stringify(button))?.token ?? '',
  );
}
