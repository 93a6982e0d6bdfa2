/** Parts of the hot end fitted anew. */
import { hotEndNotStated, isAllMetal, limitClause, mayBeLined } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipe, Recipes, StepLine } from './recipe.ts';
import type { Build } from '../machine.ts';

const takenAsLined = { text: 'Hot end not stated: taken as PTFE-lined.', when: hotEndNotStated };
const firstLayerNext = step(
  'Check the first layer: the tip’s height has changed. Log what went in: material and bore.',
);

const threaded: Recipe = {
  tools: ['nozzle-spanner', 'block-spanner', 'heat-gloves', 'brass-brush', 'eye-protection'],
  steps: [
    step(
      (build) => `Unload, then heat to the last filament’s print temperature${limitClause(build)}.`,
      'HOT',
    ),
    step('Hold the block with one spanner, loosen the nozzle with the other; leads untouched.', 'SHORT'),
    step(
      'Nozzle out; heaters off. Brush the thread clean; a chewed or browned liner end means a new liner.',
      'FUME',
    ),
    only(
      mayBeLined,
      'New one in with the socket turned by finger, liner down on to it, no gap; a sliver of light above its hexagon.',
    ),
    only(
      isAllMetal,
      'New one in with the socket turned by finger until it meets the heat break; a sliver of light above its hexagon.',
    ),
    step(
      (build) =>
        `Heat again as the manual says${limitClause(build)}; snug it, block held, small force; pick up what broke off.`,
      'CUT',
    ),
    firstLayerNext,
  ],
  good: 'Dry above the nozzle after ten minutes hot, even first layer.',
  assumes: [
    takenAsLined,
    {
      text: 'Nozzle mount not stated: taken as threaded. A one-piece or quick-change nozzle is changed cold, as its manual says.',
      when: (build) => build.nozzle?.mount === undefined,
    },
  ],
};

/** Cold work: nothing is tightened hot, and heater and sensor may be part of the piece. */
const coldChange = (steps: readonly StepLine[]): Recipe => ({
  tools: ['hex-1.5', 'hex-2', 'heat-gloves', 'eye-protection'],
  steps: [
    step('Unload hot, then heaters off and wait until it is cold.', 'HOT'),
    ...steps,
    step('Look at the old one’s end: browned PTFE goes in the bin, not back in.', 'FUME'),
    step('No hot tightening on this kind. Look that no lead is pinched or touches the block.', 'SHORT'),
    step('Heat, feed 50 mm, pick up what broke off; look for a leak.', 'CUT'),
    firstLayerNext,
  ],
  good: 'Seated square, no leak, even first layer.',
  assumes: [takenAsLined],
});
const onePiece = coldChange([
  step('Power off before a plug of it is pulled; loosen its clamp screws, draw it straight out.'),
  step('The new one in to the same depth, clamp snug, plugs back before the power comes on.'),
]);
const quickChange = coldChange([
  step('Power off, release the latch, draw it out; the new one in until it seats and the latch closes.'),
]);

function nozzle(build: Build): Recipe {
  if (build.nozzle?.mount === 'one-piece') return onePiece;
  return build.nozzle?.mount === 'quick-change' ? quickChange : threaded;
}

const afterHeatParts = step('Test the heater protection and tune the temperature before the next print.');

const fan = (where: string): Recipe => ({
  tools: ['hex-2', 'screwdriver', 'cutters', 'cable-ties'],
  steps: [
    step('Switch off, pull the plug.', 'UNPLUG'),
    step('Wait until the hot end is cold.', 'HOT'),
    step('Compare the labels: same voltage and size, same plug; not known means stop.'),
    step('Note which way the air blows, undo the screws, unplug the old one at its connector.'),
    step(`Fit the new one the same way round, lead tied along its old path, clear of ${where}.`),
    step('Plug in, switch on: it starts at once and blows the right way.'),
  ],
  good: 'Starts at once, quiet, air where it should go.',
});

export const REPLACE_HOT_END = {
  'replace-nozzle': nozzle,
  'replace-heat-break': {
    tools: ['nozzle-spanner', 'block-spanner', 'hex-1.5', 'hex-2', 'heat-gloves', 'phone'],
    steps: [
      step(
        'Take the nozzle out hot, as for a new nozzle, then heaters off and wait until all is cold.',
        'HOT',
      ),
      step('Pull the plug; photograph how fan, heatsink and leads sit.', 'UNPLUG'),
      step('Loosen the heatsink’s grub screw and draw it off; turn the block, not the thin tube.', 'SHORT'),
      step('New heat break in by hand; thermal paste only on the cold side, and only if its maker says so.'),
      only(mayBeLined, 'Put liner or tube back down to the nozzle’s seat: no gap.'),
      step('Put it together as photographed; heater and sensor fast, leads tied.'),
      step('Heat, snug the nozzle as the manual says, look for a leak, then check the first layer.'),
    ],
    good: 'No leak after ten minutes hot, cold side stays hand-warm with its fan running.',
    assumes: [takenAsLined],
  },
  'replace-liner': {
    tools: ['tube-cutter', 'hex-2', 'ruler'],
    steps: [
      step('Unload hot, then heaters off and wait until it is cold.', 'HOT'),
      step(
        'Take the old liner out as the manual shows and put it in the bin: not heated, not burnt.',
        'FUME',
      ),
      step('Brown or black: look at heater and sensor before anything is heated again.'),
      step('Cut the new one to the manual’s length, ends square, on the bench.', 'KNIFE'),
      step('Push it in until it stands on the nozzle: no gap, no bulge.'),
      step((build) => `Put it together, heat${limitClause(build)}, feed 50 mm and look for a leak.`),
    ],
    good: 'Even strand, no leak, no gap at the nozzle.',
    assumes: [takenAsLined],
    unfit: unfitWhen(isAllMetal, 'All-metal hot end: there is no liner.'),
  },
  'replace-heater': {
    tools: ['hex-1.5', 'hex-2', 'screwdriver', 'cable-ties', 'phone'],
    steps: [
      step('Switch off, pull the plug.', 'UNPLUG'),
      step('Wait until the block is cold. Photograph the leads and their plugs.', 'HOT'),
      step('Compare old and new: same voltage, same watts, same size. Not known, or mains voltage: stop.'),
      step('Loosen the clamp and slide the old one out; do not pull by its leads.'),
      step('New one in to full depth, clamp snug, leads off the block and clear of the sensor’s.', 'SHORT'),
      step('Same plug or terminal as before, crimped ends, strain relief on.'),
      afterHeatParts,
    ],
    good: 'Neither cartridge nor leads move by a gentle tug; protection test passed.',
  },
  'replace-thermistor': {
    tools: ['hex-1.5', 'hex-2', 'cable-ties', 'phone'],
    steps: [
      step('Switch off, pull the plug.', 'UNPLUG'),
      step('Wait until the block is cold. Photograph the lead’s path and plug.', 'HOT'),
      step('Compare: the same sensor type as the firmware is set to. Not known: stop.'),
      step('Loosen its screw, draw the old one out, clean the hole of plastic.'),
      step('New one in, screw just snug: a crushed bead reads wrong. Leads off the block.', 'SHORT'),
      step('Tie the lead along its old path. Cold, the screen should read room temperature.'),
      afterHeatParts,
    ],
    good: 'Room temperature when cold, sits fast, protection test passed.',
  },
  'replace-sock': {
    tools: ['tweezers'],
    steps: [
      step('Wait until the block is cold.', 'HOT'),
      step('Pull the old sock off; look for plastic on the block and round the leads.'),
      step('Push the new one on until it sits flush, tip free, leads in their slot.'),
      step('Swings in temperature afterwards: tune the temperature with the sock on.'),
    ],
    good: 'Flush all round, the tip stands out, nothing pinched.',
    unfit: unfitWhen((build) => build.sock === false, 'No sock is fitted here.'),
  },
  'replace-hot-end-fan': fan('the hot block'),
  'replace-part-fan': fan('the hot block and the nozzle'),
} satisfies Recipes;
