/** What a message told that nothing was made of: said back, so that no part of a long log is lost without a word. */
import type { TrailStep } from '../language/act.ts';
import type { ShopRecord } from '../maintenance/record/record.ts';
import { namedIn } from './namedIn.ts';

/** Parts and tools of the trade, as far as a report would name them. */
const PART =
  /\b(?:nozzles?|belts?|rods?|wheels?|rails?|bearings?|feeders?|gears?|tubes?|hot ?ends?|beds?|plates?|fans?|filters?|screws?|brackets?|couplings?|pulleys?|thermistors?|heaters?|sensors?|wiring|wires?|plugs?|liners?|extruders?|firmware|enclosure|door switch)\b/iu;
/** A deed that is over: what is only wished, planned or asked is no loss. */
const DEED =
  /\b(?:clean(?:ed)?|oiled|greased|swapp?e?d|replaced|changed|tightened|tensioned|levell?ed|lvled|checked|cleared|done|fitted|fixed|dusted|wiped|washed|vacuumed|emptied|squared|trimmed|tested|updated|skipped|renewed|new)\b|✅|✓|✔/iu;
const RUN = /\b\d+(?:[.,]\d+)?\s*(?:h|hrs?|hours?)\b/iu;
const NO_REPORT =
  /\?|^\s*(?:if|when|maybe|might|should|could|would|can|will|let['’]?s|someone|somebody|please|pls|need|needs|thanks|thx)\b|\b(?:isn['’]?t|not|never|no|nobody|nothing|want|wants|wish|hope|going to|gonna|need to|needs to|have to|has to|should|would|could|might|maybe|will|['’]ll|tomorrow|said|says|heard|think|guess|joke)\b/iu;

/** A clause that reports work: a deed on a machine or a part, or a run in hours and nothing more. */
export function tellsWork(clause: string, record: ShopRecord): boolean {
  if (NO_REPORT.test(clause)) return false;
  const thing = PART.test(clause) || namedIn(clause, record).length > 0;
  const run = RUN.test(clause) && (thing || clause.trim().replace(RUN, '').replace(/\W/gu, '') === '');
  return run || (thing && DEED.test(clause));
}

interface Stretch {
  text: string;
  from: number;
  to: number;
}

/** Cut at marks only: a figure's own point or comma is none. */
function stretches(text: string): Stretch[] {
  return [...text.matchAll(/(?:[^.,;!?\n]|[.,](?=\d))+[?]?/gu)].map(([said], i, all) => {
    const from = all[i]?.index ?? 0;
    return { text: said.trim(), from, to: from + said.length };
  });
}

/** `trails`: of all acts and orders that were read. In the words of the message, each clause that no rule touched. */
export function notRead(
  text: string,
  trails: readonly (readonly TrailStep[])[],
  record: ShopRecord,
): readonly string[] {
  const spans = trails.flatMap((trail) => trail.map(({ span }) => span));
  return stretches(text)
    .filter(({ from, to }) => !spans.some(([start, end]) => start < to && end > from))
    .filter((stretch) => tellsWork(stretch.text, record))
    .map((stretch) => stretch.text);
}
