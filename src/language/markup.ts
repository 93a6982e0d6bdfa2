/** Chat markup of both platforms at one place of a message: what plain text it stands for, and where it ends. */

interface Markup {
  plain: string;
  end: number;
}
/** Openers that have no closer further on; remembered so that each is searched for only once. */
export interface Blind {
  fence: boolean;
  tick: boolean;
  strike: boolean;
  bar: boolean;
  quote: boolean;
}

const MASKED = ' \uFFFC ';
const MENTIONED = ' \uFFF9 ';
const ENTITIES: readonly (readonly [code: string, plain: string])[] = [
  ['&amp;', '&'], ['&lt;', '<'], ['&gt;', '>'], ['&nbsp;', ' '], ['&#39;', "'"], ['&quot;', '"'],
]; // prettier-ignore

/** `<@U1>`, `<#C1|name>`, `<!here>`, `<url|label>`, `<:emoji:1>`; at most 300 characters. */
function angle(sent: string, at: number): Markup | undefined {
  const close = sent.slice(at, at + 300).indexOf('>');
  if (close < 2) return undefined;
  const body = sent.slice(at + 1, at + close);
  if (body.includes('\n') || body.includes('<')) return undefined;
  const end = at + close + 1;
  const lead = body.charAt(0);
  if (lead === '@') return { plain: MENTIONED, end };
  if (lead === '!' || lead === '#' || lead === ':' || /^a?:|^t:/u.test(body)) return { plain: ' ', end };
  if (/^[a-z]+:/iu.test(body)) return { plain: ` ${body.split('|')[1] ?? '\uFFFC'} `, end };
  return undefined;
}

function between(sent: string, at: number, mark: string, blind: Blind, key: keyof Blind): number {
  if (blind[key]) return -1;
  const close = sent.indexOf(mark, at + mark.length);
  if (close < 0) blind[key] = true;
  return close;
}

const atLineStart = (sent: string, at: number): boolean => at === 0 || sent.charAt(at - 1) === '\n';
const lineEnd = (sent: string, at: number): number => {
  const end = sent.indexOf('\n', at);
  return end < 0 ? sent.length : end;
};

function masked(sent: string, at: number, mark: string, blind: Blind, key: keyof Blind): Markup | undefined {
  const close = between(sent, at, mark, blind, key);
  return close > at + mark.length ? { plain: MASKED, end: close + mark.length } : undefined;
}

/** What was struck out was not said. */
const struck = (mark: Markup | undefined): Markup | undefined => (mark ? { ...mark, plain: ' ' } : undefined);

/** "Tomasz goes "…"", "she shouted: "…"": however few the words, they are another's. */
const SAYING =
  /\b(?:goes|went|go|says?|said|like|shouts?|shouted|yells?|yelled|screams|screamed|asks?|asked|replies|replied|writes|wrote|typed|texts|texted|messaged|claims?|claimed|announced|joked|jokes|whispered|muttered|quote|titled|called|named|labelled|marked|reads)\s*[:,]?\s*$/iu;
const LONGEST_SAYING = 16;
/** Said by someone else: three words or more between double quotes. Single quoted words stay. */
function quoted(sent: string, at: number, blind: Blind): Markup | undefined {
  if (blind.quote) return undefined;
  const rest = sent.slice(at + 1, at + 400);
  const close = rest.search(/["\u201C\u201D\n]/u);
  if (close < 0 || rest.charAt(close) === '\n') return undefined;
  const words = rest.slice(0, close).trim().split(/\s+/u).length;
  const whole = at === 0 && at + close + 2 >= sent.trimEnd().length;
  const told = SAYING.test(sent.slice(Math.max(0, at - LONGEST_SAYING), at));
  return (words >= 3 || told) && !whole
    ? { plain: MASKED, end: at + close + 2 }
    : { plain: ` ${rest.slice(0, close)} `, end: at + close + 2 };
}

export function readMarkup(sent: string, at: number, blind: Blind): Markup | undefined {
  switch (sent.charAt(at)) {
    case '<':
      return angle(sent, at);
    case '&': {
      const hit = ENTITIES.find(([code]) => sent.startsWith(code, at));
      return hit ? quoteLine(sent, at, hit) : undefined;
    }
    case '`':
      return sent.startsWith('```', at)
        ? masked(sent, at, '```', blind, 'fence')
        : masked(sent, at, '`', blind, 'tick');
    case '~':
      if (sent.startsWith('~~', at)) return struck(masked(sent, at, '~~', blind, 'strike'));
      return /[\s\d]/u.test(sent.charAt(at + 1)) ? undefined : struck(masked(sent, at, '~', blind, 'strike'));
    case '|':
      return sent.startsWith('||', at) ? { plain: ' ', end: at + 2 } : undefined;
    case '*':
      if (atLineStart(sent, at) && sent.charAt(at + 1) === ' ')
        return sent.includes('\n') ? { plain: '\u2022', end: at + 1 } : undefined;
      if (isLoneStar(sent, at)) return { plain: ' * ', end: at + 1 };
      if (/\d/u.test(sent.charAt(at - 1))) return { plain: ' x ', end: at + 1 };
      return { plain: '', end: at + 1 };
    case '_':
      return { plain: ' ', end: at + 1 };
    case '>':
      return atLineStart(sent, at) ? { plain: MASKED, end: lineEnd(sent, at) } : undefined;
    case '"':
    case '\u201C':
    case '\u201D':
      return quoted(sent, at, blind);
    default:
      return undefined;
  }
}

/** "*450 g", "maple*": the one star of a message, at its edge, says that a word before was meant otherwise. */
const isLoneStar = (sent: string, at: number): boolean =>
  sent.length <= LONGEST_STARRED &&
  sent.indexOf('*') === at &&
  sent.lastIndexOf('*') === at &&
  (sent.slice(0, at).trim() === '' || sent.slice(at + 1).trim() === '');
const LONGEST_STARRED = 60;
/** Slack sends a block quote as `&gt;` at the start of a line. */
function quoteLine(sent: string, at: number, hit: readonly [string, string]): Markup {
  if (hit[1] === '>' && atLineStart(sent, at)) return { plain: MASKED, end: lineEnd(sent, at) };
  return { plain: hit[1], end: at + hit[0].length };
}
