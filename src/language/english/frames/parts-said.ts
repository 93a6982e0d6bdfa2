/** Which part is meant, once its neighbours are looked at: "belt on the x axis", "the pei", "hot end fan". */
import { isPart, type Part } from '../../../maintenance/codes.ts';
import { isFn, isThing } from '../../item.ts';
import type { NounAt, Scene } from '../../scene.ts';
import type { Thing } from '../../senses.ts';

/** A thing that a swap of means a part: the sheet of a bed, the plug of a lead. */
const PART_OF_THING: Readonly<Partial<Record<Thing, Part>>> = {
  bed: 'build-plate', plug: 'wiring', eccentric: 'wheel', 'grub-screw': 'fastener', 'ball-screw': 'lead-screw', 'mains-lead': 'wiring', 'tube-end': 'guide-tube', guard: 'printed-part',
}; // prettier-ignore

export function partOf(scene: Scene, noun: NounAt): Part | undefined {
  if (noun.part === undefined) return PART_OF_THING[noun.code as Thing];
  if (noun.part === 'belt') {
    if (scene.items.some((item) => isThing(item, 'x-axis'))) return 'x-belt';
    if (scene.items.some((item) => isThing(item, 'y-axis'))) return 'y-belt';
  }
  // "ptfe in hot end"
  if (
    noun.part === 'guide-tube' &&
    scene.items.some(
      (item, i) =>
        i > noun.at && isThing(item, 'hot-end') && isFn(scene.items[i - 1], 'in', 'of', 'article', 'its'),
    )
  )
    return 'liner';
  return isPart(noun.part) ? noun.part : undefined;
}

/** Nouns that can only be part of another's name here: "belt on the x axis". */
export const standsAlone = (noun: NounAt): boolean =>
  ![
    'x-axis',
    'y-axis',
    'z-axis',
    'axis',
    'machine',
    'side',
    'corner',
    'job',
    'shelf',
    'entry',
    'hands',
    'service',
    'power',
    'noise',
    'pack',
    'fault',
    'sign',
  ].includes(noun.code);
