/** Low-voltage parts that sit on a plug. Supply, board wiring and mains beds are never given as steps. */
import { step } from './recipe.ts';
import type { Recipe, Recipes } from './recipe.ts';

const onAPlug = (thing: string, good: string): Recipe => ({
  tools: ['hex-2', 'hex-2.5', 'phone', 'cable-ties'],
  steps: [
    step('Switch off, pull the plug.', 'UNPLUG'),
    step('Photograph how it sits and which way round its plug is.'),
    step(`Undo it; take the plug by its housing, not by the wires; fit the new ${thing} the same way round.`),
    step('Lead along its old path, tied, no cover pinching it.'),
    step('Plug in and switch on; anything warm or smelling: off again at the plug.'),
  ],
  good,
});

export const REPLACE_ELECTRICS = {
  'replace-board-fan': {
    tools: ['hex-2', 'screwdriver', 'cable-ties'],
    steps: [
      step('Switch off, pull the plug, wait 2 minutes.', 'UNPLUG'),
      step('The fan inside the supply, or mains terminals open beside it: stop, qualified person.', 'MAINS'),
      step('Compare the labels: same voltage and size; note which way it blows.'),
      step('Unplug it by its housing, undo it, fit the new one the same way round.'),
      step('Tie the lead clear of the blades, cover back on before the plug goes in.'),
      step('Switch on: it starts when it should and air comes out of the slots.'),
    ],
    good: 'Air through the slots, quiet, cover on.',
  },
  'replace-wiring': {
    tools: ['cutters', 'cable-ties', 'phone', 'torch'],
    steps: [
      step('Switch off, pull the plug, keep it in sight.', 'UNPLUG'),
      step(
        'Low-voltage lead with plugs at both ends only. Mains, supply or a mains-heated bed: stop, qualified person.',
        'MAINS',
      ),
      step('Find out why it failed: rubbed, bent too tight, loose plug, too hot.'),
      step('The maker’s own lead, or one of the same gauge, length and heat rating with crimped ends.'),
      step('Photograph, then change one lead at a time, same path, tied, slack for the whole travel.'),
      step('Move the axis by hand: nothing pulls or rubs. Covers on, then plug in.'),
      step('Heater or sensor lead: test the heater protection before the next print.'),
    ],
    good: 'No bare copper, no twisted joint, free over the whole travel.',
  },
  'replace-screen': onAPlug('screen', 'Picture, touch or knob and card all work.'),
  'replace-camera': onAPlug('camera', 'Clear picture of the whole plate, lead out of the travel.'),
} satisfies Recipes;
