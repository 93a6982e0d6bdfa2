/** Rods, rails and screws: lubricant where the bearing takes it, and none where it does not. */
import {
  PROP_THEN_OFF, hasBallScrew, hasPlasticNut, lacksGuide, lacksScrews, nutNotStated,
} from './features.ts'; // prettier-ignore
import { firstUnfit, only, step, unfitWhen } from './recipe.ts';
import type { Recipe, Recipes } from './recipe.ts';
import type { Build } from '../machine.ts';

const noRods = unfitWhen(lacksGuide('rods'), 'No axis of this machine runs on rods.');

const greaseNut = (build: Build): Recipe => ({
  tools: ['axis-prop'],
  supplies: [hasPlasticNut(build) ? 'named-lubricant' : 'screw-grease', 'cloth'],
  steps: [
    PROP_THEN_OFF,
    only(nutNotStated, 'Look at the nut: a plastic one gets no grease, wipe its screw clean and stop here.'),
    step('Wipe the old grease and dust off the screw, screw still.', 'MOVE'),
    only((own) => !hasPlasticNut(own), 'Put on a thin film of PTFE or lithium grease, do not mix kinds.'),
    only(
      hasPlasticNut,
      (own) =>
        `Put on a thin film of ${own.screwNutLubricant ?? 'what the nut’s maker names'}, nothing else.`,
    ),
    step('Take the prop out, switch on, run the axis up and down twice.'),
    step('Switch off again and wipe off what the nut pushed to the ends.'),
  ],
  good: 'A thin even film on the thread, a quiet axis, nothing dripping.',
  unfit: firstUnfit(
    unfitWhen(hasBallScrew, 'Z has a ball screw here.', 'grease-ball-screw'),
    unfitWhen(lacksScrews, 'Z runs on a belt here: there is no screw.'),
    unfitWhen(
      (own) => hasPlasticNut(own) && own.screwNutLubricant === undefined,
      'The nut is plastic: grease can attack it and holds grit, unless its maker names one.',
      'clean-screw',
    ),
  ),
});

export const MOTION = {
  'lubricate-rods': {
    tools: [],
    supplies: ['rod-lubricant', 'cloth'],
    steps: [
      step('Switch off; move the axes by hand only.', 'MOVE'),
      only(
        (build) => build.rodBearing === undefined,
        'Look at the bearings: plastic (polymer) ones take no lubricant, wipe the rods dry and stop here.',
      ),
      step(
        'Look and feel: a clear oily film is left alone, and that was the look. Dry, grey or squeaking: go on.',
      ),
      step('Wipe the rods clean with a dry cloth, to both ends.'),
      step(
        'Axis to its near end, a drop of light oil or a trace of light grease on each rod; to the far end, again.',
      ),
      step(
        'Move it end to end ten times, wipe off the rest; none on belts, wheels, plate or plastic parts: oil can crack them.',
      ),
    ],
    good: 'A thin clear film, quiet and even by hand from end to end.',
    unfit: firstUnfit(
      unfitWhen(
        (build) => build.rodBearing === 'polymer',
        'Polymer bearings run dry: no lubricant.',
        'wipe-rods',
      ),
      noRods,
    ),
  },
  'wipe-rods': {
    tools: [],
    supplies: ['cloth'],
    steps: [
      step('Switch off; move the axes by hand only.', 'MOVE'),
      step('Wipe each rod along its length with a dry, lint-free cloth.'),
      step('Axis to the other end, wipe the rest. No lubricant here.'),
      step('Move it end to end by hand and feel for a catch.'),
    ],
    good: 'Dry bright rods and an even glide.',
    unfit: noRods,
  },
  'lubricate-rails': {
    tools: [],
    supplies: ['rail-lubricant', 'cloth'],
    steps: [
      step('Switch off; move the carriage by hand only, never off the rail’s end.', 'MOVE'),
      step('Wipe the whole rail clean, the sides with the ball tracks too.'),
      step(
        'Put a small drop on each track, or into the carriage’s port, of the lubricant the rail’s maker names.',
      ),
      step('Do not mix kinds of grease; unknown old grease is wiped off first.'),
      step('Move it end to end ten times, wipe off the surplus; none on belts, wheels or plate.'),
    ],
    good: 'A faint film on the tracks, an even glide without a notch.',
    unfit: unfitWhen(lacksGuide('rails'), 'No axis of this machine runs on rails.'),
  },
  'grease-screw': greaseNut,
  'grease-ball-screw': {
    tools: ['axis-prop'],
    supplies: ['ball-screw-grease', 'cloth'],
    steps: [
      step('Prop the axis so that it cannot sink, then switch off.', 'DROP'),
      step('Wipe the screw clean along its length; leave the nut on it.', 'MOVE'),
      step('Put on a thin film of the maker’s grease, or use the nut’s port; do not mix kinds.'),
      step('Take the prop out, switch on, run the axis over its whole travel twice.'),
      step('Switch off with the axis propped again and wipe off the surplus at the ends.'),
    ],
    good: 'A thin even film, a smooth quiet run, no grit at the nut’s wipers.',
    unfit: firstUnfit(
      unfitWhen(
        (build) => build.zDrive === 'lead-screw',
        'Z has a lead screw here, not a ball screw.',
        'grease-screw',
      ),
      unfitWhen(lacksScrews, 'Z runs on a belt here: there is no screw.'),
    ),
  },
} satisfies Recipes;
