import { dayIn } from './day.ts';
import type { OrderTopic } from './topic.ts';

/** Longer ago than this nobody tells of a sale: a date without a year then lies ahead. */
const LONG_AGO_DAYS = 60;
const DAY_MS = 86_400_000;

export const RETIRE: OrderTopic = {
  kind: 'retire',
  why: 'a machine goes; what goes out of a machine is a part',
  never: ['question', 'wished', 'conditional', 'negated', 'part', 'thing', 'material', 'reported', 'trouble', 'hedged'],
  rows: [{ all: ['gone-for-good', 'machine'] }],
  drops: ['unclear', 'down', 'swap', 'done'],
  make(passage, { today }) {
    const ahead = passage.facts.has('goes') || passage.facts.has('planned') || passage.facts.has('opens:gone-for-good') && !passage.facts.has('worked'); // prettier-ignore
    const back = dayIn(passage, false);
    const stale = back !== undefined && Date.parse(today) - Date.parse(back) > LONG_AGO_DAYS * DAY_MS;
    const on = dayIn(passage, ahead || stale);
    return { kind: 'retire', machines: passage.machines, ...(on === undefined ? {} : { on }) };
  },
}; // prettier-ignore
