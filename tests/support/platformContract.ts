/** The three moments by which the bot is judged: the same facts in the same order wherever they are said. */
import { describe, expect, it } from 'vitest';

/** One place where people talk with the bot, on the demo. */
export interface Venue {
  /** The words that the last message of the bot shows, its buttons' labels among them. */
  say(text: string): Promise<string>;
  /** Presses the button of that label on the last message. */
  press(label: string): Promise<string>;
  /** What the bot showed in the morning. */
  morning: string;
  close(): Promise<void>;
}

/** Half past seven of the demo's day, and the afternoon in which it is spoken to. */
export const MORNING = Date.parse('2026-03-11T07:31:00+01:00');

const LOG =
  'cleared a jam on birch, feeder gear was packed so cleaned that too. swapped the nozzle, worn. ran 6.5h';

const DIGEST_FACTS = [
  'Wednesday 11 March', '3 overdue, 4 due', 'Out of use', 'Cedar', 'no heat', 'Overdue', 'Maple', 'replace the nozzle', 'Alder', 'oil the rods',
  'Due today', 'This week', 'Care',
]; // prettier-ignore
const LOG_FACTS = [
  'Birch', 'noted', 'jam cleared', 'feeder cleaned', 'nozzle replaced, worn', 'lasted', 'over 166 days', '6.5 h run', 'now at',
  'brass 0.4, like the old one', 'Undo', 'Change something',
]; // prettier-ignore
const ASKED_FACTS = ['Alder', '1 overdue', 'oil the rods', 'over its 300 h', 'Done', 'Put off', 'How?'];
const UNDONE_FACTS = ['Birch', 'taken back'];

/** Text as a person reads it: emphasis, escapes, line ends and joiners of no width left out. */
export const bare = (text: string): string =>
  text.replace(/[*_\\`#\u200B-\u200F\u2060]|^-#/gmu, '').replace(/\s+/gu, ' ');

/** All texts inside a message's structure, in reading order. */
export function wordsIn(value: unknown): string {
  if (Array.isArray(value)) return value.map(wordsIn).join(' ');
  if (typeof value !== 'object' || value === null) return '';
  return Object.entries(value)
    .map(([name, inner]) =>
      typeof inner === 'string' ? (/^(text|content|label)$/u.test(name) ? inner : '') : wordsIn(inner),
    )
    .join(' ');
}

/** What the button of that label carries, by the names of the fields on this platform. */
export function buttonIn(value: unknown, label: string, of: (found: Record<string, unknown>) => unknown): unknown {
  if (Array.isArray(value)) return value.map((one) => buttonIn(one, label, of)).find((found) => found !== undefined);
  if (typeof value !== 'object' || value === null) return undefined;
  const found = Object.fromEntries(Object.entries(value));
  const { text, label: own } = found;
  const shown = typeof text === 'object' && text !== null && 'text' in text ? text.text : own;
  if (shown === label && of(found) !== undefined) return of(found);
  return buttonIn(Object.values(found), label, of);
} // prettier-ignore

function inOrder(text: string, facts: readonly string[]): void {
  let from = 0;
  for (const fact of facts) {
    const at = text.indexOf(fact, from);
    expect(at, `“${fact}” after “${text.slice(Math.max(0, from - 40), from)}” in: ${text}`).toBeGreaterThanOrEqual(from);
    from = at + fact.length;
  }
} // prettier-ignore

export function platformContract(name: string, open: () => Promise<Venue>): void {
  describe(`the three moments, ${name}`, () => {
    it('has the same facts in the same order', { timeout: 60_000 }, async () => {
      const venue = await open();
      try {
        inOrder(bare(venue.morning), DIGEST_FACTS);
        inOrder(bare(await venue.say(LOG)), LOG_FACTS);
        inOrder(bare(await venue.press('Undo')), UNDONE_FACTS);
        inOrder(bare(await venue.say("what's overdue on alder?")), ASKED_FACTS);
      } finally {
        await venue.close();
      }
    });
  });
}
