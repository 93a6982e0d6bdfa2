/** Headings that say how all that they head is meant: a list of work to come, or the words of another. */
import type { Joint } from './senses.ts';

/** "to do: …", "jobs for tomorrow - …", "note to self, …": what stands behind is not done yet. */
const LISTS_WORK =
  /^(?:my |our |the |your |still |new |quick )*(?:to ?dos?|to do list|todo list|jobs?|tasks?|chores?|plans?|agenda|wish ?list|shopping(?: list)?|reminders?|memo|notes? to self|remember|don't forget|do not forget|next jobs?|needs? doing|wants? doing|wanted|requests?|left to do|still to do|what 's left)(?: (?:for|to|on) [^:]{1,30})?$/u;
/** "the manual: …", "sticker: …": what stands behind was written by somebody else. */
const CITES =
  /^(?:from )?(?:the |its |my |a )?(?:manual|docs?|guide|instructions?|data ?sheet|forum|video|sticker|label|quote|rule(?: of thumb)?|tip(?: of the day)?|faq|lesson(?: learned)?|moral|headline|joke|riddle|caption|lyrics?|fun fact|trivia|fact)$/u;
const OF_SELF = /\bself$/u;
/** So plainly a list that it may stand on a line of its own. */
const OWN_LINE = /\b(?:list|dos?|todos?)$/u;

export type Heading = 'lists' | 'cites';

/** `joint`: how what follows hangs on it; `near`: in the same sentence. */
export function headingIn(text: string, joint: Joint, near: boolean): Heading | undefined {
  const heads = joint === 'colon' || joint === 'dash' || (joint === 'comma' && OF_SELF.test(text));
  if (near ? !heads : !OWN_LINE.test(text)) return undefined;
  if (LISTS_WORK.test(text)) return 'lists';
  return near && CITES.test(text) ? 'cites' : undefined;
}
/** Longer stretches tell something of their own. */
export const LONGEST_HEADING = 8;
