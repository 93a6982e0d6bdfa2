/** The order of the fold: properties of the entries themselves, none of their arrival. */
import type { Entry } from '../entry/entry.ts';
import type { Position } from './record.ts';

/** By when it happened, then when it was said, then place in the message, then id. */
export const byOrder = (a: Position, b: Position): number =>
  a.at - b.at || a.saidAt - b.saidAt || a.act - b.act || byText(a.id, b.id);

/** By when it was said, then id: the order in which amendments apply, whatever day they are about. */
export const bySaid = (a: Entry, b: Entry): number => a.saidAt - b.saidAt || byText(a.id, b.id);

/** By code units, so that no locale has a say. */
const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export const positionOf = (entry: Position): Position => ({
  at: entry.at,
  saidAt: entry.saidAt,
  act: entry.act,
  id: entry.id,
});
