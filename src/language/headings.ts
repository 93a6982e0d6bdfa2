/** Headings that say how all that they head is meant: a list of work to come, or the words of another. */
import type { Joint } from './senses.ts';

/** "to do: …", "jobs for tomorrow - …", "note to self, …": what stands behind is not done yet. */
const LISTS_WORK =
  /^(?:my |our |the |your |still |new |quick )*(?:to ?dos?|to do list|todo list|jobs?|tasks?|chores?|plans?|agenda|wish ?list|shopping(?: list)?|reminders?|memo|notes? to self|remember|don't forget|do not forget|next jobs?|needs? doing|wants? doing|wanted|requests?|left to do|still to do|what 's left)(?: (?:for|to|on) [^:]{1,30})?$/u;
/** "queue for tonight: birch 6 h", "bookings: …", "tomorrow's plan: …": figures too are of what is to come. */
const PLANS_RUNS =
  /^(?:(?:my |our |the |your )*(?:queued?|bookings?|schedule|time ?table|rota|roster|line ?up|budget|forecasts?|estimates?|estimated(?: times?)?|instructions?|programme|pipeline|print plan|print queue|job queue|slicer|sliced|eta|etas)(?: (?:for|of|on) [^:]{1,30})?|(?:tomorrow|tonight|next (?:week|month)|the weekend|later)(?: 's)?(?: (?:plans?|jobs?|queue|prints?|runs?|schedule|work|list|to ?dos?))?|(?:plans?|jobs?|prints?|runs?|work) (?:for |of )?(?:tomorrow|tonight|next (?:week|month)|the weekend))$/u;
/** "the manual: …", "sticker: …": what stands behind was written by somebody else. */
const CITES =
  /^(?:from )?(?:the |its |my |a )?(?:manual|docs?|guide|instructions?|data ?sheet|forum|video|sticker|label|quote|rule(?: of thumb)?|tip(?: of the day)?|faq|lesson(?: learned)?|moral|headline|joke|riddle|caption|lyrics?|fun fact|trivia|fact|(?:bad |weird )?(?:dream|nightmare)|movie plot|plot|book club|quiz|quiz question|horoscope|advert|ad|video title|title)(?: last night| today| tonight| of the (?:day|week))?$/u;
const OF_SELF = /\bself$/u;
/** So plainly a list that it may stand on a line of its own. */
const OWN_LINE = /\b(?:list|dos?|todos?)$/u;

export type Heading = 'lists' | 'plans' | 'cites';

/** `joint`: how what follows hangs on it; `near`: in the same sentence. */
export function headingIn(text: string, joint: Joint, near: boolean): Heading | undefined {
  const heads = joint === 'colon' || joint === 'dash' || (joint === 'comma' && OF_SELF.test(text));
  if (near ? !heads : !OWN_LINE.test(text)) return undefined;
  if (near && PLANS_RUNS.test(text)) return 'plans';
  if (LISTS_WORK.test(text)) return 'lists';
  return near && CITES.test(text) ? 'cites' : undefined;
}
/** Longer stretches tell something of their own. */
export const LONGEST_HEADING = 8;
