/** A shelf on which every thing can be told from every other. */
import { foldName } from '../maintenance/machine.ts';
import { repeats } from './repeats.ts';
import type { Clash } from './repeats.ts';
import type { Workshop } from './schema.ts';

const shelfItems = ({ shelf }: Workshop): Clash[] =>
  repeats(
    shelf,
    (item) => `${item.part} ${foldName(item.fitted ?? '')}`,
    (item, index) => ({
      path: ['shelf', index, 'part'],
      text: `${item.part}${item.fitted ? ` ${item.fitted}` : ''} is on the shelf twice`,
    }),
  );

const words = (fitted = ''): ReadonlySet<string> =>
  new Set(
    foldName(fitted)
      .split(/[^\p{L}\p{N}.]+/u)
      .filter(Boolean),
  );
const saysNoMore = (one: ReadonlySet<string>, other: ReadonlySet<string>): boolean =>
  [...one].every((word) => other.has(word));

/** "nozzle" beside "nozzle brass 0.4": nobody could say which of the two a swap took. */
function shelfInDoubt({ shelf }: Workshop): Clash[] {
  return shelf.flatMap((item, index) => {
    const said = words(item.fitted);
    const other = shelf.find((rival, place) => {
      if (place === index || rival.part !== item.part) return false;
      const theirs = words(rival.fitted);
      return theirs.size !== said.size && saysNoMore(said, theirs);
    });
    if (!other) return [];
    const text = `could also be the ${other.part} "${other.fitted ?? ''}": say in fitted what sets this one apart`;
    return [{ path: ['shelf', index, 'part'], text }];
  });
}

export const shelfClashes = (workshop: Workshop): Clash[] => [
  ...shelfItems(workshop),
  ...shelfInDoubt(workshop),
];
