/** What a nozzle is, read from the words that were said when it was fitted: "hardened 0.6". */
import type { Nozzle, NozzleMaterial } from '../machine.ts';
import { bagOf } from './words.ts';

const MATERIAL_OF: Readonly<Record<string, NozzleMaterial>> = {
  brass: 'brass',
  plated: 'plated',
  coated: 'plated',
  nickel: 'plated',
  hardened: 'hardened',
  steel: 'hardened',
  carbide: 'carbide',
  tungsten: 'carbide',
  gem: 'gem',
  ruby: 'gem',
  sapphire: 'gem',
  diamond: 'gem',
};
/** Words order nothing here, so the harder claim wins: a plated brass nozzle is plated, a ruby tip in brass gem. */
const HARDEST_FIRST: readonly NozzleMaterial[] = ['gem', 'carbide', 'hardened', 'plated', 'brass'];

/** The bores that are sold, in mm; a figure outside is something else (a length, a thread). */
const BORE_MM = { least: 0.1, most: 2 };

/** Only what the words say; nothing where they say nothing. */
export function readNozzle(text: string): Nozzle {
  const words = bagOf(text);
  const materials = new Set(words.map((word) => MATERIAL_OF[word]));
  const material = HARDEST_FIRST.find((candidate) => materials.has(candidate));
  const bores = words.map(Number).filter((bore) => bore >= BORE_MM.least && bore <= BORE_MM.most);
  const boreMm = bores.length === 1 ? bores[0] : undefined;
  return { ...(material ? { material } : {}), ...(boreMm === undefined ? {} : { boreMm }) };
}

/** "hardened 0.6"; undefined when nothing is stated. */
export function describeNozzle(nozzle: Nozzle): string | undefined {
  const words = [nozzle.material, nozzle.boreMm === undefined ? undefined : String(nozzle.boreMm)];
  const said = words.filter((word) => word !== undefined);
  return said.length === 0 ? undefined : said.join(' ');
}
