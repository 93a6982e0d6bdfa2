/** Parts of the feed fitted anew. */
import { isBowden, lacksTube, mayBeLined, not } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipes } from './recipe.ts';
import type { Build } from '../machine.ts';

const noTube = unfitWhen(lacksTube, 'Direct feed without a guide tube: there is no tube.');
const linedBowden = (build: Build): boolean => isBowden(build) && mayBeLined(build);

export const REPLACE_FEED = {
  'replace-feeder-gear': {
    tools: ['hex-1.5', 'hex-2', 'hex-2.5', 'stiff-brush', 'eye-protection'],
    steps: [
      step('Unload hot, heaters off, switch off.', 'HOT'),
      step('Let the idler arm’s spring off slowly, open the arm.', 'MOVE'),
      step('Brush the dust out; loosen the grub screw and draw the gear off.', 'DUST'),
      step('New gear on: teeth in line with the filament’s path, grub screw on the shaft’s flat, snug.'),
      step('A pair of gears is changed as a pair.'),
      step('Set the spring: light, even marks on the filament. Then check the feeder’s steps.'),
    ],
    good: 'Filament runs straight through the middle of the teeth, no slip on the shaft.',
  },
  'replace-guide-tube': {
    tools: ['tube-cutter', 'ruler'],
    steps: [
      step('Unload hot, heaters off, wait until it is cold.', 'HOT'),
      step('Push the collets’ rings in and draw the old tube out.'),
      step('Cut the new one to the old one’s first length, not to the trimmed one; ends square.', 'KNIFE'),
      step('Look at the push-fits: a collet that bit or let go is changed with the tube.'),
      only(linedBowden, 'Push it in until it stands on the nozzle, no gap; pull the rings out to lock.'),
      only(not(linedBowden), 'Push both ends to their stops; pull the rings out to lock.'),
      step('Move the head to every corner: no pull, no kink. Log the tube’s length.'),
    ],
    good: 'Locked at both ends, slack in every corner, filament slides.',
    unfit: noTube,
  },
  'replace-tube-fitting': {
    tools: ['fitting-spanner', 'tube-cutter'],
    steps: [
      step('Unload hot, heaters off, wait until it is cold.', 'HOT'),
      step(
        'Push the ring in, draw the tube out; trim an end that the collet has bitten, on the bench.',
        'KNIFE',
      ),
      step('Unscrew the old fitting; same thread and bore for the new one.'),
      step('Screw it in by hand, then a little with the spanner: threads in plastic and aluminium strip.'),
      only(linedBowden, 'Tube in until it stands on the nozzle, no gap; ring out, clip on.'),
      only(not(linedBowden), 'Tube in to its stop; ring out, clip on.'),
    ],
    good: 'The tube does not creep when pulled, and the fitting sits straight.',
    unfit: noTube,
  },
  'replace-filament-sensor': {
    tools: ['hex-2', 'hex-2.5', 'cable-ties'],
    steps: [
      step('Unload, switch off, pull the plug.', 'UNPLUG'),
      step('Note how it sits, undo it, unplug it at its connector.'),
      step('Fit the new one, filament path in line, lead tied.'),
      step('Plug in, switch on: it must notice filament going in and coming out.'),
    ],
    good: 'It reports filament and no filament, each time.',
    unfit: unfitWhen((build) => build.filamentSensor === false, 'No filament sensor is fitted here.'),
  },
  'replace-spool-holder': {
    tools: ['hex-2.5'],
    steps: [
      step('Machine idle, spool off.'),
      step('Undo the old holder, fit the new one on the same points.'),
      step('Hang a full spool: it turns by a light pull and the machine does not lean.'),
    ],
    good: 'The spool turns lightly and stays put.',
  },
} satisfies Recipes;
