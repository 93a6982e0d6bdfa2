/** What a lead screw's nut is, read from the words that were said when it was fitted: "brass". */
import type { Build } from '../machine.ts';
import { bagOf } from './words.ts';

const METALS: ReadonlySet<string> = new Set(['brass', 'bronze', 'metal', 'steel', 'copper']);
const PLASTICS: ReadonlySet<string> = new Set(['plastic', 'pom', 'polymer', 'nylon', 'acetal']);

/** Nothing where the words say nothing, or both. */
export function readNut(text: string): Pick<Build, 'screwNut'> {
  const words = bagOf(text);
  const [metal, plastic] = [METALS, PLASTICS].map((known) => words.some((word) => known.has(word)));
  if (metal === plastic) return {};
  return { screwNut: metal ? 'metal' : 'plastic' };
}
