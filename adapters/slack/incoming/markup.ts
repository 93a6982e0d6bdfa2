/**
 * Slack's text as somebody typed it: entities undone, links, people and channels by name, the bot's own mention gone.
 * Emphasis and strike-through stay: the reader knows that what is struck through was not said.
 */
import type { Names } from '../names.ts';

const REFERENCE = /<([^<>]*)>/gu;
/** More people than that are not looked up for one message. */
const MOST_NAMES = 10;

export async function plainOf(text: string, own: string, names: Names): Promise<string> {
  const known = await namesIn(text, own, names);
  const plain = text.replaceAll(REFERENCE, (_, inner: string) => unwrapped(inner, own, known));
  return tidy(withoutEntities(plain));
}

export const mentions = (text: string, account: string): boolean =>
  account !== '' && [`<@${account}>`, `<@${account}|`].some((start) => text.includes(start));

/** Where the bot's own mention stood: a character without a meaning of its own. */
const GONE = '\ue000';

/** What stood round the mention goes with it: "@fettle: undo" is "undo". */
const tidy = (text: string): string =>
  text
    .replace(/^[\s\ue000]*\ue000\s*[,:;]?\s*/u, '')
    .replaceAll(/[ \t]*\ue000[ \t]*/gu, ' ')
    .trim();

const withoutEntities = (text: string): string =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');

async function namesIn(text: string, own: string, names: Names): Promise<ReadonlyMap<string, string>> {
  const ids = [...text.matchAll(/<([@#])([A-Z0-9]+)>/gu)]
    .map(([, mark = '', id = '']) => mark + id)
    .filter((id) => id !== `@${own}`);
  const found = await Promise.all(
    [...new Set(ids)].slice(0, MOST_NAMES).map(async (id): Promise<[string, string]> => {
      const bare = id.slice(1);
      return [id, id.startsWith('@') ? await names.person(bare) : ((await names.channel(bare)) ?? bare)];
    }),
  );
  return new Map(found);
}

function unwrapped(inner: string, own: string, known: ReadonlyMap<string, string>): string {
  const bar = inner.indexOf('|');
  const [target, label] = bar < 0 ? [inner, ''] : [inner.slice(0, bar), inner.slice(bar + 1)];
  const bare = target.slice(1);
  switch (target.charAt(0)) {
    case '@':
      return bare === own ? GONE : label || (known.get(target) ?? bare);
    case '#':
      return `#${label || (known.get(target) ?? bare)}`;
    case '!':
      return label || `@${bare.split('^')[0]}`;
    default:
      return label || target.replace(/^(?:mailto|tel):/u, '');
  }
}
