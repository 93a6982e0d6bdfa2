/** Cleaning: dust, scraps, the plate, the screw, the enclosure. */
import { PROP_THEN_OFF, hasBallScrew, hasPlasticNut, lacksScrews } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipes } from './recipe.ts';

export const CLEANING = {
  'dust-off': {
    tools: ['soft-brush', 'vacuum', 'eye-protection'],
    supplies: ['cloth', 'air-can'],
    steps: [
      step('Switch off, pull the plug and let it cool.', 'UNPLUG'),
      step(
        'Brush from the top down and vacuum what falls; dust of filled filament is vacuumed only.',
        'DUST',
      ),
      step('Hold each fan’s blades with a finger and clean blades and grille.'),
      step('Wipe rails, frame and screen with a dry cloth; leave lubricated surfaces for their own job.'),
      step('Look that no strings are left round fans, pulleys or wheels.'),
    ],
    good: 'Blades clean and turning freely by finger, air slots open.',
  },
  'clean-fans': {
    tools: ['soft-brush', 'tweezers', 'vacuum', 'eye-protection'],
    supplies: ['air-can'],
    steps: [
      step('Switch off, pull the plug and let it cool.', 'UNPLUG'),
      step('Pick strings out of the hub with tweezers, blades held still.'),
      step(
        'Brush blades and grille, vacuum close by; air can in short puffs only where nothing else reaches.',
        'DUST',
      ),
      step('Turn each fan by finger: it should run free without a scrape.'),
      step('Plug in, switch on and listen from outside.'),
    ],
    good: 'Every fan starts at once, runs quietly and moves air.',
  },
  'clear-debris': {
    tools: ['soft-brush', 'tweezers', 'eye-protection'],
    steps: [
      step('Wait until nothing moves; cancel what is queued.', 'MOVE'),
      step('Wait until bed and nozzle are below 50 °C.', 'HOT'),
      step(
        'Lift out scraps, skirts and purged bits, also from under the bed and behind the rods or rails.',
        'CUT',
      ),
      step('Look at belts, pulleys and fans for strings.'),
      step('Move bed and head over their whole travel by hand, slowly, power off.'),
    ],
    good: 'Both axes run from end to end without touching anything.',
  },
  'clean-plate': {
    tools: ['scraper'],
    supplies: ['dish-soap', 'cloth', 'alcohol'],
    steps: [
      step('Let the bed cool below 50 °C and take the plate off.', 'HOT'),
      step('Look for chips and cracks before you wipe along an edge.', 'CUT'),
      step('Wash it with dish soap and warm water, rinse, dry with a clean cloth; hold it by the edges.'),
      step(
        'Alcohol only if the surface’s maker allows it, on the bench; acetone only if the maker says so.',
        'SOLV',
      ),
      step('Put it back dry, flat on the bed, with nothing underneath.'),
    ],
    good: 'Water runs off in a film, no finger marks, the plate lies flat.',
  },
  'clean-screw': {
    tools: ['axis-prop', 'stiff-brush'],
    supplies: ['cloth'],
    steps: [
      PROP_THEN_OFF,
      step(
        'Brush dust out of the thread, then hold a dry cloth round the screw and wipe along it, screw still.',
        'MOVE',
      ),
      step('Turn the screw half a turn by hand and wipe again, all the way along.'),
      only(hasPlasticNut, 'Old grease comes off with a clean cloth; put none on: the plastic nut runs dry.'),
      step('Take the prop out, switch on and run the axis once up and down.'),
    ],
    good: 'Bright thread without grit, the axis runs without a squeak.',
    assumes: [
      {
        text: 'Ball screw: wipe only what you can see; grease it as its own job.',
        when: hasBallScrew,
      },
    ],
    unfit: unfitWhen(lacksScrews, 'Z runs on a belt here: there is no screw.'),
  },
  'clean-enclosure': {
    tools: ['vacuum', 'soft-brush'],
    supplies: ['cloth'],
    steps: [
      step('Switch off, pull the plug, let everything cool.', 'UNPLUG'),
      step('Vacuum the floor and the corners; leave the electronics’ covers shut.', 'DUST'),
      step('Wipe the panes with a damp cloth, wrung out, nowhere near electrics.'),
      step('Look at the door seals, the hinges and the vents.'),
    ],
    good: 'Door shuts without a push, vents open, nothing lies about inside.',
    unfit: unfitWhen((build) => build.enclosed === false, 'This machine has no enclosure.'),
  },
} satisfies Recipes;
