/** Belts, pulleys, idlers, and the squareness of a gantry that belts or screws hold up. */
import { crossedBelts, lacksBelts, severalScrews } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipe, Recipes } from './recipe.ts';
import type { Build } from '../machine.ts';

const noBelts = unfitWhen(lacksBelts, 'This machine has no belts.');

const straight: Recipe = {
  tools: ['hex-2', 'hex-2.5', 'pitch-meter', 'ruler'],
  steps: [
    step('Switch off and let the belt come to rest; fingers away from the pulleys.', 'MOVE'),
    step('Look at tensioner, clamps and belt first: a crack or fuzz means parts, not turns.'),
    step(
      'Where the manual or the machine’s sheet gives a pitch or gauge reading, set that: pluck the span, read it.',
    ),
    step('No figure: firm, no sag, a low note, and the carriage still runs free by hand.'),
    step('Tighten in small turns, move the carriage end to end, feel again.'),
    only(
      (build) => build.printedParts === 'none',
      'Old way where nothing in the tensioner is printed: tighten until it binds, then slacken until it runs free.',
    ),
    step('Lock the tensioner and print something with sharp corners.'),
  ],
  good: 'No sag, no binding from end to end, sharp corners without ripples.',
  unfit: noBelts,
};

const crossed: Recipe = {
  tools: ['hex-2', 'hex-2.5', 'pitch-meter', 'ruler', 'square'],
  steps: [
    step('Switch off; gantry to the middle, fingers away from the pulleys.', 'MOVE'),
    step('Look at both tensioners, clamps and belts first: a crack or fuzz means parts, not turns.'),
    step('Pluck the same length of span on both belts and read the pitch.'),
    step(
      'Bring both to the same pitch, alternating small turns: the manual’s figure, else firm without sag.',
    ),
    step('Push the gantry to its end stop blocks: both sides must touch together.'),
    step('Not square: slacken the belt that pulls it askew a little and bring both back to one pitch.'),
    step('Lock, move end to end by hand: free and even.'),
  ],
  good: 'Both belts at one pitch, gantry square, carriage free by hand.',
  unfit: noBelts,
};

export const BELTS = {
  'tension-belts': (build: Build): Recipe => (crossedBelts(build) ? crossed : straight),
  'check-belt': {
    tools: ['torch', 'magnifier'],
    steps: [
      step('Switch off; move the carriage by hand.', 'MOVE'),
      step('Follow the whole belt: cracks at the tooth roots, fuzzy edges, missing teeth.'),
      step('Look at the back: hard and shiny means it has slipped or aged.'),
      step('Look at its clamps: no tooth may have crept.'),
      step('Look for black dust under the pulleys: the belt rubs there.'),
    ],
    good: 'Whole teeth, clean edges, clamps that have not let go.',
    unfit: noBelts,
  },
  'check-idlers': {
    tools: ['torch'],
    steps: [
      step('Switch off.', 'MOVE'),
      step('Turn each idler by finger: quiet, smooth, no wobble on its axle.'),
      step('Move the carriage and watch the belt: it runs in the middle and does not climb an edge.'),
      step('Look for dust or strings wound round the axle.'),
    ],
    good: 'Every idler spins quietly and the belt stays in its middle.',
    unfit: noBelts,
  },
  'tighten-pulleys': {
    tools: ['hex-1.5', 'hex-2', 'axis-prop'],
    supplies: ['thread-lock'],
    steps: [
      step('Switch off; prop the axis before you touch a Z coupler.', 'DROP'),
      step(
        'Turn each drive pulley until you see its grub screws; one should sit on the shaft’s flat.',
        'MOVE',
      ),
      step('Hold the pulley and try to turn it on the shaft: no play.'),
      step('Nip each grub screw up with the short key, no force; key fully in, or the socket rounds.'),
      step('Do the same at the screw couplers and at the feeder gear.'),
      step('One that keeps loosening: out, a drop of thread-lock, back in; none on plastic parts.'),
    ],
    good: 'No pulley or coupler turns on its shaft.',
  },
  'square-gantry': {
    tools: ['axis-prop', 'square', 'ruler', 'hex-2.5'],
    steps: [
      step('Prop the gantry level, then switch off.', 'DROP'),
      step('Measure the height at both ends from the frame, at the same points.'),
      only(severalScrews, 'Turn one screw by hand until both ends read the same.', 'MOVE'),
      only(
        (build) => !severalScrews(build),
        'Turn or slide the low side until both ends read the same.',
        'MOVE',
      ),
      only(
        crossedBelts,
        'Push the gantry against both end blocks: they must touch together, else even the belts out.',
      ),
      step('Check with the square that the gantry stands at right angles to its uprights.'),
      step('Take the prop out, home, and level the bed after it.'),
    ],
    good: 'Both ends at one height, square to the frame, homes without a judder.',
    unfit: unfitWhen(
      (build) => build.zScrews === 1 && build.belts !== 'crossed' && build.belts !== undefined,
      'One Z screw and straight belts: nothing to bring square here.',
    ),
  },
} satisfies Recipes;
