/** Guides, screws and structural parts fitted anew. */
import { hasBallScrew, hasPlasticNut, lacksGuide, lacksScrews, not } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipe, Recipes } from './recipe.ts';
import type { Build } from '../machine.ts';
import type { Supply } from './tools.ts';

const noRods = unfitWhen(lacksGuide('rods'), 'No axis of this machine runs on rods.');
const noScrew = unfitWhen(lacksScrews, 'Z runs on a belt here: there is no screw.');
const polymer = (build: { rodBearing?: string }): boolean => build.rodBearing === 'polymer';
const ballOrBronze = (build: { rodBearing?: string }): boolean =>
  build.rodBearing === 'ball' || build.rodBearing === 'bronze';
/** Oil is fetched where it is known to be wanted. */
const forRods = (build: Build): readonly Supply[] =>
  ballOrBronze(build) ? ['cloth', 'rod-lubricant'] : ['cloth'];
const forScrew = (build: Build): readonly Supply[] =>
  build.screwNut === 'metal' ? ['cloth', 'screw-grease'] : ['cloth'];

/** The nut of a ball screw never leaves it, so both are changed as one. */
const ballScrew: Recipe = {
  tools: ['hex-1.5', 'hex-2', 'hex-2.5', 'axis-prop', 'square'],
  supplies: ['ball-screw-grease', 'cloth'],
  steps: [
    step('Prop the axis at mid height so that it cannot sink, then switch off.', 'DROP'),
    step('Screw and nut come as a pair: the nut stays on its screw, off it the balls fall out.'),
    step(
      'Undo the nut from its bracket, loosen the coupler and the end bearing, lift both out together.',
      'MOVE',
    ),
    step('Compare: same diameter and lead. The new pair in, nut where it is, bracket screws still loose.'),
    step('Run it by hand top to bottom, then snug bracket, end bearing and coupler; no end squeezed.'),
    step('A thin film of the maker’s grease. Then square the gantry and level the bed.'),
  ],
  good: 'Turns true by hand over the whole travel, no play, axis level.',
};

const leadScrew = (build: Build): Recipe => ({
  tools: ['hex-1.5', 'hex-2', 'hex-2.5', 'axis-prop', 'square'],
  supplies: forScrew(build),
  steps: [
    step('Prop the axis at mid height, then switch off.', 'DROP'),
    step(
      `Loosen the coupler and the top bearing, screw the old one out of its nut${build.zDrive === undefined ? '; a ball nut never comes off: stop' : ''}.`,
      'MOVE',
    ),
    step('Compare: same diameter, pitch and number of starts. Roll the new one on glass: straight.'),
    step('Screw it in; both shafts deep enough in the coupler to be gripped, their ends not touching.'),
    step('Top end only guided, not squeezed: a tight top bearing bends it.'),
    only(hasPlasticNut, 'Leave it clean: the plastic nut gets no grease unless its maker names one.'),
    only(not(hasPlasticNut), 'Metal nut: thin film of grease. Then square the gantry and level the bed.'),
  ],
  good: 'Turns true by hand over the whole travel, axis level.',
  unfit: noScrew,
});

export const REPLACE_MOTION = {
  'replace-wheel': {
    tools: ['eccentric-spanner', 'hex-2.5', 'hex-3', 'axis-prop', 'eye-protection'],
    steps: [
      step('Switch off.', 'MOVE'),
      step('Vertical axis: prop it.', 'DROP'),
      step(
        'Back the eccentric off, undo the wheel; keep the order of shims and spacers, a ring may jump.',
        'CUT',
      ),
      step('New wheel in the same order; change the wheels of one carriage together where they wear alike.'),
      step('Set the eccentric: turns by finger with a little drag. No lubricant.'),
      step('Roll end to end by hand; look again after 20 h.'),
    ],
    good: 'No rocking, no thump, a little drag at each wheel.',
    unfit: unfitWhen(lacksGuide('wheels'), 'No axis of this machine runs on wheels.'),
  },
  'replace-bearing': (build: Build): Recipe => ({
    tools: ['hex-2', 'hex-2.5', 'axis-prop', 'cutters', 'eye-protection'],
    supplies: forRods(build),
    steps: [
      step('Switch off; let the belt off this axis.', 'MOVE'),
      step('Prop what hangs on the axis.', 'DROP'),
      step('Free the rod, slide the carriage off, take ties, clamps or rings out: they may jump.', 'CUT'),
      step(
        'New bearing of the same kind and size, wiped clean; slide it on straight, balls fall out if it tilts.',
      ),
      only(polymer, 'Polymer bearing: it runs dry, no lubricant on the rod.'),
      only(
        not(polymer),
        'Ball or bronze: a little light grease or oil as its maker says; polymer stays dry.',
      ),
      step('Clamp it without squeezing, belt back on, move end to end by hand.'),
    ],
    good: 'Glides evenly, no play sideways, no grinding.',
    unfit: noRods,
  }),
  'replace-rod': (build: Build): Recipe => ({
    tools: ['hex-2', 'hex-2.5', 'axis-prop', 'ruler', 'eye-protection'],
    supplies: forRods(build),
    steps: [
      step('Switch off; let the belt off this axis.', 'MOVE'),
      step('Prop what hangs on the rod.', 'DROP'),
      step('Loosen the rod’s clamps, draw it out of its bearings slowly and straight.', 'CUT'),
      step(
        'New rod: same diameter and length, ends without burr, wiped; roll it on glass to see that it is straight.',
      ),
      step('Slide it in straight, clamp one end, move the carriage to the other, clamp that.'),
      only(ballOrBronze, 'A thin film of light oil or grease, then the belt back on.'),
      only(
        not(ballOrBronze),
        'Polymer bearings stay dry, ball or bronze get a thin film; then the belt back on.',
      ),
    ],
    good: 'Glides by its own weight or a light push, the same all along.',
    unfit: noRods,
  }),
  'replace-rail': {
    tools: ['hex-2', 'hex-2.5', 'axis-prop', 'square', 'eye-protection'],
    supplies: ['rail-lubricant', 'cloth'],
    steps: [
      step('Switch off; let the belt off this axis.', 'MOVE'),
      step('Prop what hangs on the rail.', 'DROP'),
      step(
        'Undo the carriage’s load; keep the carriage on its rail, or slide it on to the keeper bar: balls fall out.',
        'CUT',
      ),
      step('Undo the rail from the middle outward; clean its seat.'),
      step('New rail with its carriage: screws in loosely, line it up, tighten from the middle outward.'),
      step('Lubricate as its maker says, load and belt back on, move end to end by hand.'),
      step('Check squareness and the first layer.'),
    ],
    good: 'Even glide without a tight spot.',
    unfit: unfitWhen(lacksGuide('rails'), 'No axis of this machine runs on rails.'),
  },
  'replace-lead-screw': (build: Build): Recipe => (hasBallScrew(build) ? ballScrew : leadScrew(build)),
  'replace-screw-nut': (build: Build): Recipe => ({
    tools: ['hex-1.5', 'hex-2', 'hex-2.5', 'axis-prop'],
    supplies: forScrew(build),
    steps: [
      step(
        'Prop the axis at mid height, then switch off. A ball nut stays on its screw: change the pair.',
        'DROP',
      ),
      step(
        'Undo the nut from its bracket, its spring held if it has one; loosen the coupler, screw the screw out.',
        'MOVE',
      ),
      step('New nut: same thread, pitch and starts. Say here whether it is metal or plastic.'),
      step('Wipe the screw bright first: old grease can attack a plastic nut.'),
      step('Screw it on, leave its bracket screws loose, run by hand top to bottom, then snug them.'),
      only(hasPlasticNut, 'Plastic: no grease unless its maker names one.'),
      only(not(hasPlasticNut), 'Metal: thin film of grease; plastic: none. Then level the bed.'),
    ],
    good: 'No play up and down, no tight spot.',
    unfit: noScrew,
  }),
  'replace-coupler': {
    tools: ['hex-1.5', 'hex-2', 'axis-prop'],
    steps: [
      step('Prop the axis, then switch off.', 'DROP'),
      step('Loosen both halves, lift the screw a little, take the old one out.', 'MOVE'),
      step('New one: same two bores; each shaft in to half way less a gap, so that they do not touch.'),
      step('Snug all screws with the key fully in; turn by hand: true, no wobble.'),
      step('More than one Z screw: square the gantry. Then level the bed.'),
    ],
    good: 'Screw and shaft turn as one, without wobble.',
    unfit: noScrew,
  },
  'replace-printed-part': {
    tools: ['hex-2', 'hex-2.5', 'axis-prop'],
    steps: [
      step('Switch off and let it cool.', 'HOT'),
      step('Prop or hold what the part carries.', 'DROP'),
      step('Change one part at a time, same screws back in the same holes.', 'MOVE'),
      step('Near heat or in an enclosure: not in PLA; take what the maker names.'),
      step(
        'Look for air between it and the hot block; then belts, squareness or first layer as it touches them.',
      ),
    ],
    good: 'Straight, hard, snug screws, clear of the hot block.',
  },
  'replace-fastener': {
    tools: ['hex-1.5', 'hex-2', 'hex-2.5', 'hex-3', 'axis-prop'],
    supplies: ['thread-lock'],
    steps: [
      step('Switch off.', 'MOVE'),
      step('Prop or hold what the screw carries.', 'DROP'),
      step('One at a time; new one of the same thread, length and head.'),
      step('Start it by hand, then snug; thread-lock only metal in metal.'),
    ],
    good: 'Snug, full thread in, nothing squeezed.',
  },
} satisfies Recipes;
