/** The feed: gear, guide tube, filament path, steps, drying. */
import { isBowden, lacksTube, limitClause, mayBeLined, not } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipes } from './recipe.ts';

const noTube = unfitWhen(lacksTube, 'Direct feed without a guide tube: there is no tube.');
const linedBowden = (build: Parameters<typeof isBowden>[0]): boolean => isBowden(build) && mayBeLined(build);

export const FEED = {
  'clean-feeder': {
    tools: ['stiff-brush', 'vacuum', 'tweezers', 'hex-2', 'eye-protection'],
    steps: [
      step('Unload the filament hot, then heaters off.', 'HOT'),
      step('Switch off, then open the feeder’s arm.', 'MOVE'),
      step('Brush the teeth clean all round, turning the gear by hand; pick out what is packed.'),
      step('Vacuum the dust up; dust of filled filament is never blown.', 'DUST'),
      step('Look at the teeth: sharp is good, polished flat is worn. Try the grub screw on the shaft.'),
      step('Close the arm and set the spring: light, even tooth marks on the filament, not flattened.'),
      step('Load and feed 50 mm.'),
    ],
    good: 'Bright teeth, even marks on the filament, no clicking.',
  },
  'check-feeder-gear': {
    tools: ['stiff-brush', 'magnifier', 'torch', 'eye-protection'],
    steps: [
      step('Unload, switch off, open the arm.', 'MOVE'),
      step('Brush the gear clean first: packed dust looks like worn teeth.', 'DUST'),
      step('Look all round with the magnifier: sharp tips, no bright flat band where the filament runs.'),
      step('Hold the shaft and try to turn the gear on it: it must not slip.'),
    ],
    good: 'Sharp teeth all round and a gear that sits fast.',
  },
  'check-filament-path': {
    tools: ['soft-brush'],
    steps: [
      step('Look at the spool: does it turn freely, is a loop caught under another?'),
      step('Follow the filament to the feeder: no sharp bend, nothing that rubs or snags.'),
      step('Pull half a metre off by hand: it should come with a light, even pull.'),
      only(
        (build) => build.filamentSensor === true,
        'Brush out the filament sensor and see that it notices filament.',
      ),
    ],
    good: 'Filament comes off the spool by a light pull, all the way.',
  },
  'check-tube': {
    tools: ['torch', 'ruler'],
    steps: [
      step('Unload hot, heaters off, wait until it is cold.', 'HOT'),
      step('Pull gently at each end: the collet must not let the tube creep out.'),
      step('Push the collet’s ring in and take the tube out; look at both ends: round, square, white.'),
      step('Push a piece of filament through: no catch, no scored bore, no kink along the way.'),
      only(linedBowden, 'Put it back until it stands on the nozzle: no gap in a lined hot end.'),
      only(not(linedBowden), 'Put it back to its stop.'),
      step('A bad end is trimmed on the bench, never in the machine.', 'KNIFE'),
    ],
    good: 'Round white ends, filament slides, the collet holds.',
    unfit: noTube,
  },
  'trim-tube': {
    tools: ['tube-cutter', 'ruler'],
    steps: [
      step('Unload hot, heaters off, wait until it is cold; take the tube out.', 'HOT'),
      step('Measure it: what is left after the cut must still reach over the whole travel.'),
      step('Cut 2 to 5 mm off, square, in one stroke.', 'KNIFE'),
      step('Look at the end: round, not squeezed, no burr in the bore.'),
      only(
        linedBowden,
        'Push it in until it stands on the nozzle, no gap; then pull the collet’s ring out to lock.',
      ),
      only(not(linedBowden), 'Push it in to its stop, then pull the collet’s ring out to lock.'),
      step('Move the head to every corner: the tube must not pull tight. Log the length taken off.'),
    ],
    good: 'A square end, locked, with slack in every corner of the travel.',
    unfit: noTube,
  },
  'calibrate-feeder': {
    tools: ['ruler', 'caliper', 'felt-pen'],
    supplies: ['test-filament'],
    steps: [
      step(
        'Do this last: first rule out a part-blocked nozzle, a packed or slipping gear, drag and a wrong profile.',
      ),
      step((build) => `Heat to print temperature${limitClause(build)} and load.`, 'HOT'),
      step('Mark the filament 120 mm above the feeder’s inlet.'),
      step('Feed 100 mm slowly, hands clear.', 'MOVE'),
      step('Measure from inlet to mark: fed = 120 minus that. Do it three times.'),
      step('New steps per mm = old x 100 / fed. More than 10 % off: look for a fault instead.'),
      step('Save it and feed 100 mm again.'),
    ],
    good: '100 mm asked gives 99 to 101 mm fed, three times over (common practice).',
  },
  'dry-filament': {
    tools: ['dryer'],
    steps: [
      step('Look up the drying temperature and time that the filament’s maker gives.'),
      step('Put the spool in a filament dryer at that temperature, not higher.', 'OVEN'),
      step('Stay by it unless the dryer is made to run alone; turn the spool half way through.'),
      step('Let it cool in the dryer or in a box with desiccant, then close it up or print from it.'),
    ],
    good: 'No popping or steam at the nozzle, and a smooth strand.',
  },
} satisfies Recipes;
