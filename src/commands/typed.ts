/** A button's own words, or its number, typed instead of pressed. */
import { foldName } from '../maintenance/machine.ts';
import { capital } from '../replies/format/list.ts';
import type { Button, Press } from '../replies/reply.ts';
import { machineName, todo } from '../replies/wording/names.ts';
import type { Names } from '../replies/wording/view.ts';
import { wantsFigure } from './answering.ts';
import type { Conversation } from './conversation.ts';
import type { IncomingMessage } from './message.ts';

/** In a channel a bare number is a button's only while its list is still in everybody's eye. */
const RIGHT_AFTER_MS = 3 * 60_000;

export type Typed =
  | { press: Press }
  /** The words are on several buttons: which one? */
  | { which: readonly Button[] }
  /** A bare number that is an answer's number as well as a figure. */
  | { unsure: number };

export function typedPress(
  message: IncomingMessage,
  conversation: Conversation,
  names: Names,
): Typed | undefined {
  const { presses = [], question } = conversation;
  const said = folded(message.text.replace(/[.!)\]]+$|^[[(]+/gu, ''));
  const named = presses.filter((p) => folded(p.label) === said);
  const [only, ...more] = named;
  if (only && more.length === 0) return { press: only.press };
  if (only) return { which: named.map(({ label, press }) => ({ label: apart(label, press, names), press })) };
  if (!/^\d{1,2}$/u.test(said)) return undefined;
  const number = Number(said);
  if (question && wantsFigure(question))
    return number >= 1 && number <= question.options.length ? { unsure: number } : undefined;
  const press = presses[number - 1]?.press;
  return press && isMeant(message, conversation) ? { press } : undefined;
}

/** Phones write either apostrophe. */
const folded = (text: string): string => foldName(text.replace(/[’`´]/gu, "'"));

const isMeant = ({ direct, now }: IncomingMessage, { at }: Conversation): boolean =>
  direct || (at !== undefined && now - at <= RIGHT_AFTER_MS);

/** "Done" of the third line: "Done: level the bed on Alder". */
function apart(label: string, press: Press, scene: Names): string {
  const deed = press.does === 'deeds' ? press.deeds[0] : press.does === 'ask' ? press.about : undefined;
  const task = deed && 'task' in deed ? deed.task : undefined;
  const machine = deed && 'machine' in deed ? deed.machine : undefined;
  const what = task === undefined ? '' : todo(task);
  const where = machine === undefined || machine === 'room' ? '' : machineName(machine, scene);
  const said = [what, where].filter((word) => word !== '').join(what === '' ? '' : ' on ');
  return said === '' ? label : `${capital(label)}: ${said}`;
}
