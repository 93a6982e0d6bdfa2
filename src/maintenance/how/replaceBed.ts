/** Parts of the bed, the covers and the filter, fitted anew. */
import { hasProbe, lacksProbe, rigidBed } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipe, Recipes } from './recipe.ts';
import type { Build } from '../machine.ts';

const filter = ({ filter: kind }: Build): Recipe => ({
  tools: ['dust-mask', 'screwdriver'],
  supplies: ['bag'],
  steps: [
    step('A burning smell or smoke earlier: stop, find its source. A filter is no answer to it.'),
    step('Switch the fan off, pull the plug.', 'UNPLUG'),
    step(
      kind === 'carbon'
        ? 'Open the housing, old filter straight into a bag, bag closed.'
        : 'Gloves and mask on; old filter straight into a bag without knocking it, bag closed.',
      'DUST',
    ),
    step('Wipe the housing, look at the seal.'),
    step('New one in, arrow with the air’s flow, seal all round; date on its edge.'),
    step('Switch on: air is drawn through, nothing whistles past the seal.'),
  ],
  good: 'Draws through the filter and not past it; date on it.',
  unfit: unfitWhen((build) => build.filter === 'none', 'No filter is fitted here.'),
});

export const REPLACE_BED = {
  'replace-build-plate': {
    tools: ['heat-gloves'],
    supplies: ['dish-soap', 'cloth'],
    steps: [
      step('Let it cool below 50 °C.', 'HOT'),
      step('Take the old plate off by the flat; chipped glass goes into thick paper, then the bin.', 'CUT'),
      step('Wipe the bed’s face: no crumbs, magnets or clips in their place.'),
      step('Wash the new one, dry it, lay it on square.'),
      step('Another thickness moves the first layer: set its height before you print.'),
    ],
    good: 'Lies flat and square, first layer even.',
  },
  'replace-bed-spring': {
    tools: ['hex-2.5', 'hex-3'],
    steps: [
      step('Let it cool; note how many turns each knob is in.', 'HOT'),
      step('Switch off; one corner at a time, let the knob out slowly.', 'MOVE'),
      step('Change all four together: one stiff spring among tired ones never holds level.'),
      step('Same number of turns back in, so that each spring is well squeezed.'),
      only(hasProbe, 'Level the bed, then measure the height map again.'),
      only((build) => !hasProbe(build), 'Level the bed.'),
    ],
    good: 'All four squeezed alike, the level holds over a week.',
    unfit: unfitWhen(rigidBed, 'Rigid bed: there are no springs.'),
  },
  'replace-bed-heater': {
    tools: ['hex-2.5', 'hex-3', 'cable-ties', 'phone', 'screwdriver'],
    steps: [
      step('Low-voltage bed only. Switch off, pull the plug.', 'UNPLUG'),
      step(
        'Look at label and leads: any sign of mains voltage, and it is work for a qualified person. Stop.',
        'MAINS',
      ),
      step('Wait until it is cold. Photograph leads, plugs and cable clamp.', 'HOT'),
      step('New one: same voltage, watts and sensor type; not known means stop.'),
      step('Fit it, crimped ends in their old terminals, clamp the cable so that no bend sits at a joint.'),
      step('Move the bed by hand over its whole travel: the cable follows and nothing rubs.'),
      step(
        'Test the heater protection; look at the terminals after an hour hot: brown means stop. Level the bed.',
      ),
    ],
    good: 'Heats evenly, no brown terminal after an hour, protection test passed.',
    unfit: unfitWhen((build) => build.bedHeater === 'none', 'This bed has no heater.'),
  },
  'replace-probe': {
    tools: ['hex-2', 'hex-2.5', 'cable-ties'],
    steps: [
      step('Switch off, pull the plug.', 'UNPLUG'),
      step('Note its height against the nozzle, undo it, unplug it at its connector.'),
      step('New one of the same kind at the same height, lead tied clear of the hot block.'),
      step('Power on, Z well up: trigger it by hand; the screen must show it.'),
      step('Home with a hand on the switch; set its offset, then check the first layer.'),
    ],
    good: 'Triggers every time, ten readings agree, even first layer.',
    unfit: unfitWhen(lacksProbe, 'No probe is fitted here.'),
  },
  'replace-door': {
    tools: ['hex-2.5', 'hex-3', 'screwdriver'],
    steps: [
      step('Switch off.', 'MOVE'),
      step('Two people: one holds the pane while the other undoes the hinges.', 'CUT'),
      step('Hang the new one, line it up, let it close without a push.'),
      step('Put the door switch back exactly as it was; it is never bridged.'),
      step('Power on: opening the door must do what the manual says.'),
    ],
    good: 'Closes by itself to the seal; the door switch works.',
    unfit: unfitWhen((build) => build.enclosed === false, 'This machine has no enclosure.'),
  },
  'replace-filter': filter,
} satisfies Recipes;
