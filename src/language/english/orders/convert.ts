import type { Build, Guide } from '../../../maintenance/machine.ts';
import { isThing } from '../../item.ts';
import type { OrderCue } from '../../senses.ts';
import type { Passage } from './passage.ts';
import type { OrderTopic } from './topic.ts';

/** What each feature says of the build. */
const FEATURES: Readonly<Partial<Record<OrderCue, Build>>> = {
  'direct-feed': { feed: 'direct' },
  'bowden-feed': { feed: 'bowden' },
  'all-metal': { hotEnd: 'all-metal' },
  'lined-hot-end': { hotEnd: 'lined' },
  'metal-nut': { screwNut: 'metal' },
  'plastic-nut': { screwNut: 'plastic' },
  'a-probe': { probe: true },
  'rigid-bed': { bed: 'rigid' },
  'sprung-bed': { bed: 'springs' },
  'closed-in': { enclosed: true },
  'carbon-filter': { filter: 'carbon' },
  'particle-filter': { filter: 'particle' },
  'a-sock': { sock: true },
  'a-filament-sensor': { filamentSensor: true },
  'a-mains-bed': { bedHeater: 'mains' },
  'ball-screws': { zDrive: 'ball-screw' },
};
const GUIDES: Readonly<Partial<Record<OrderCue, Guide>>> = {
  'linear-rails': 'rails',
  'round-rods': 'rods',
  'v-wheels': 'wheels',
};
const FEATURE_CUES = [...Object.keys(FEATURES), ...Object.keys(GUIDES)] as OrderCue[];

function guideIn({ facts }: Passage): Guide | undefined {
  const cue = (Object.keys(GUIDES) as OrderCue[]).find((code) => facts.has(code));
  return cue === undefined ? undefined : GUIDES[cue];
}

/** A guide belongs to the axes that are named; to none, where none is. */
function guidesIn(passage: Passage): Build {
  const { scene } = passage;
  const guide = guideIn(passage);
  if (guide === undefined) return {};
  const on = (axis: 'x' | 'y' | 'z'): boolean =>
    scene.items.some((item) => isThing(item, `${axis}-axis`) || item.text === axis);
  return {
    ...(on('x') ? { x: guide } : {}),
    ...(on('y') ? { y: guide } : {}),
    ...(on('z') ? { z: guide } : {}),
  };
}

export const CONVERT: OrderTopic = {
  kind: 'convert',
  why: 'says how a machine is built now; a swap in the same words stays a swap',
  never: ['question', 'negated', 'wished', 'planned', 'conditional', 'trouble', 'reported', 'span', 'hedged', 'every'],
  rows: [
    { any: FEATURE_CUES, all: ['now'], with: ['machine', 'it'], none: ['worked'] },
    { any: FEATURE_CUES, all: ['converted', 'machine'] },
  ],
  make(passage) {
    const said = FEATURE_CUES.filter((code) => passage.facts.has(code));
    const build = said.reduce<Build>((whole, code) => ({ ...whole, ...FEATURES[code] }), guidesIn(passage));
    const known = { kind: 'convert', machines: passage.machines, build } as const;
    if (Object.keys(build).length > 0) return known;
    const guide = guideIn(passage);
    return guide === undefined ? undefined : { ...known, guide };
  },
}; // prettier-ignore
