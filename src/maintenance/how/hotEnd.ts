/** The hot end: nozzle, jam, liner, heater and sensor held fast, temperature tuning. */
import { hasSock, hotEndNotStated, isAllMetal, isBowden, limitClause, mayBeLined, not } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipes } from './recipe.ts';

const takenAsLined = { text: 'Hot end not stated: taken as PTFE-lined.', when: hotEndNotStated };
const noLiner = unfitWhen(isAllMetal, 'All-metal hot end: there is no liner.');

export const HOT_END = {
  'clean-nozzle': {
    tools: ['brass-brush', 'heat-gloves'],
    supplies: ['cloth'],
    steps: [
      step(
        (build) =>
          `Heat to the print temperature of the plastic in it${limitClause(build)}, then heaters off.`,
        'HOT',
      ),
      step('Brush the tip with short strokes away from the heater and sensor leads.', 'SHORT'),
      only(hasSock, 'Look into the sock: no plastic between it and the block.'),
      step('Let it cool; wipe the last trace off with a folded dry cloth.'),
    ],
    good: 'Bare, even tip, nothing on the block, leads untouched.',
    assumes: [takenAsLined],
  },
  'clear-jam': {
    tools: ['heat-gloves', 'cutters', 'stiff-brush', 'bore-needle', 'eye-protection'],
    supplies: ['clean-filament'],
    steps: [
      step(
        (build) => `Heat to the print temperature of the plastic that is in it${limitClause(build)}.`,
        'HOT',
      ),
      step(
        'Wait 5 minutes, open the feeder’s arm and push filament by hand: it should flow out straight.',
        'MOVE',
      ),
      step('No flow: pull it back out slowly and cut off the chewed or swollen end.', 'CUT'),
      only(isBowden, 'Look at the tube’s ends: pinched, browned, or drawn back from the nozzle.'),
      step(
        'Cold pull: clean filament in hot, heaters off, let it firm up (PLA near 90 °C), pull slowly, face away.',
        'FUME',
      ),
      step('Repeat until the pulled tip is clean, three times at most; a needle only up through the nozzle.'),
      step('Clean the feeder gear, load, and feed 50 mm.'),
    ],
    good: 'An even, straight strand and no clicking from the feeder.',
    assumes: [takenAsLined],
  },
  'check-nozzle': {
    tools: ['magnifier', 'mirror', 'torch'],
    steps: [
      step('Let it cool, or keep your face away and use the mirror.', 'HOT'),
      step('Look at the bore: round and centred, not oval or opened up.'),
      step('Look at the tip: flat ring all round, not rounded or scratched.'),
      step('Look above the nozzle: plastic creeping out there is a leak.'),
      step('In doubt, measure a single printed line against its set width: a quarter wider counts as worn.'),
    ],
    good: 'Round bore, flat tip, dry above the nozzle.',
  },
  'check-liner': {
    tools: ['torch', 'magnifier', 'hex-2'],
    steps: [
      step('Unload hot, then heaters off and wait until the hot end is cold.', 'HOT'),
      step('Take the liner out the way the manual shows.'),
      step('Look at its end: brown, black, pinched or funnel-shaped means a new one.', 'FUME'),
      step('Push a piece of filament through: it should slide without a catch.'),
      step('Put it back down to the nozzle, square end first, no gap.'),
    ],
    good: 'White, square end, filament slides through, no gap at the nozzle.',
    assumes: [takenAsLined],
    unfit: noLiner,
  },
  'check-heater': {
    tools: ['torch', 'hex-1.5', 'hex-2'],
    steps: [
      step('Switch off and pull the plug.', 'UNPLUG'),
      step('Wait until the block is cold.', 'HOT'),
      only(hasSock, 'Take the sock off and look for plastic underneath.'),
      step('Tug gently at the heater cartridge and at the sensor: neither may move.'),
      step('Look at both leads where they leave the block: no bare, brown or brittle spot, tie in place.'),
      step(
        'Anything loose, melted, brown or bare: leave it unplugged and say so; refit it as the manual says.',
      ),
    ],
    good: 'Cartridge and sensor sit fast, leads whole and tied.',
  },
  'tune-temperature': {
    tools: [],
    steps: [
      step('Put the sock on, set the part fan as it prints, start from cold.'),
      step(
        (build) => `Run the controller’s own tuning at your usual print temperature${limitClause(build)}.`,
        'HOT',
      ),
      step('Stay in the room and watch the reading rise and settle.', 'FUME'),
      step('Save the new values.'),
      step('Hold that temperature for 10 minutes and watch.'),
    ],
    good: 'The reading stays within about 2 °C of the target (common practice).',
    assumes: [
      takenAsLined,
      { text: 'The manual’s own way goes first where it names one.', when: not(mayBeLined) },
    ],
  },
} satisfies Recipes;
