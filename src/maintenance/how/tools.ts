/** What is taken to the machine. Sizes are the usual ones on desktop machines: common practice, no source. */
import type { Consumable } from '../codes.ts';

export const TOOLS = {
  'hex-1.5': 'hex key 1.5 mm',
  'hex-2': 'hex key 2 mm',
  'hex-2.5': 'hex key 2.5 mm',
  'hex-3': 'hex key 3 mm',
  'nozzle-spanner': 'nozzle spanner or socket (usually 6 or 7 mm)',
  'block-spanner': 'spanner for the heater block (adjustable, or usually 16 mm)',
  'fitting-spanner': 'spanner for the push-fit (usually 8 or 10 mm)',
  'eccentric-spanner': 'spanner for the eccentric (usually 8 or 10 mm)',
  screwdriver: 'screwdriver (cross-head, usually size 1 or 2)',
  'axis-prop': 'block to prop the axis',
  'heat-gloves': 'heat gloves',
  'eye-protection': 'eye protection',
  'dust-mask': 'dust mask and gloves',
  'stiff-brush': 'small stiff brush',
  'soft-brush': 'soft brush',
  'brass-brush': 'long brass brush',
  vacuum: 'vacuum cleaner',
  tweezers: 'tweezers',
  cutters: 'flush cutters',
  'tube-cutter': 'tube cutter or a new blade',
  'bore-needle': 'needle thinner than the bore',
  magnifier: 'magnifier',
  mirror: 'small mirror',
  torch: 'torch',
  paper: 'sheet of paper',
  ruler: 'steel ruler',
  caliper: 'caliper',
  thermometer: 'thermometer',
  square: 'engineer’s square',
  'pitch-meter': 'tuner or phone that shows hertz',
  'felt-pen': 'felt pen',
  'cable-ties': 'cable ties',
  phone: 'phone camera',
  'memory-card': 'memory card or cable',
  dryer: 'filament dryer',
  scraper: 'plastic scraper',
  'steps-ladder': 'firm steps',
} as const;
export type Tool = keyof typeof TOOLS;

/** What lies on every bench or in a pocket: named in the steps, fetched by nobody. */
const EVERYDAY: ReadonlySet<Tool> = new Set<Tool>([
  'paper',
  'ruler',
  'torch',
  'tweezers',
  'felt-pen',
  'phone',
]);
export const isEveryday = (tool: Tool): boolean => EVERYDAY.has(tool);

/** What guards the one who does it: never the thing that is left out of a long list. */
const GUARDS: readonly Tool[] = ['heat-gloves', 'eye-protection', 'dust-mask', 'axis-prop'];
const guardNames: ReadonlySet<string> = new Set(GUARDS.map((tool) => TOOLS[tool]));
export const isGuard = (name: string): boolean => guardNames.has(name);

/** What gets used up. */
interface SupplyFacts {
  text: string;
  /** Its code on the shelf, where it is counted there. */
  item?: Consumable;
  /** Not fetched for a round: the spool that is on serves, or the plate's maker decides. */
  ifNeeded?: true;
}
const SUPPLY_FACTS = {
  'light-oil': { text: 'light machine oil', item: 'oil' },
  'screw-grease': { text: 'PTFE or lithium grease', item: 'grease' },
  'named-lubricant': { text: 'the lubricant that the nut’s maker names', item: 'grease' },
  'ball-screw-grease': { text: 'the ball screw maker’s grease', item: 'grease' },
  'rail-lubricant': { text: 'the rail maker’s oil or grease', item: 'grease' },
  'rod-lubricant': { text: 'light machine oil or light grease', item: 'oil' },
  cloth: { text: 'lint-free cloth', item: 'cloth' },
  alcohol: { text: 'alcohol, only if the surface’s maker allows it', item: 'alcohol', ifNeeded: true },
  'air-can': { text: 'air can for where no brush reaches', item: 'air-can' },
  'clean-filament': { text: 'a metre of clean filament', item: 'filament' },
  'test-filament': { text: 'filament for a test print', item: 'filament', ifNeeded: true },
  'dish-soap': { text: 'dish soap and warm water' },
  'thread-lock': { text: 'thread-lock, medium strength' },
  bag: { text: 'bag that closes' },
} as const satisfies Record<string, SupplyFacts>;
export type Supply = keyof typeof SUPPLY_FACTS;
export const SUPPLIES: Readonly<Record<Supply, SupplyFacts>> = SUPPLY_FACTS;

const HEX = 'hex-';
const joined = (sizes: readonly string[]): string =>
  sizes.length < 2 ? sizes.join('') : `${sizes.slice(0, -1).join(', ')} and ${sizes.at(-1)}`;

export const isHexKey = (tool: Tool): boolean => tool.startsWith(HEX);

/** "hex keys 1.5 and 2 mm": several sizes in one breath; other tools among them are passed over. */
export function hexKeys(tools: Iterable<Tool>): string {
  const sizes = [...new Set(tools)].filter(isHexKey).map((tool) => tool.slice(HEX.length));
  sizes.sort((a, b) => Number(a) - Number(b));
  return `hex key${sizes.length > 1 ? 's' : ''} ${joined(sizes)} mm`;
}

/** A tool's name without its usual sizes: enough for a list of what to fetch. */
export const shortName = (tool: Tool): string => TOOLS[tool].replace(/ \(.*\)$/u, '');

/** The tools of one or more tasks as one list: each once, hex keys drawn together with their sizes. */
export function toolList(tools: readonly Tool[]): readonly string[] {
  const keys = tools.some(isHexKey) ? [`${hexKeys(tools)} (usual sizes)`] : [];
  const others = [...new Set(tools)].filter((tool) => !isHexKey(tool));
  return [...keys, ...others.map((tool) => TOOLS[tool])];
}
