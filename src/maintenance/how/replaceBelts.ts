/** Belts, pulleys, idlers and what moves them, fitted anew. */
import { crossedBelts, lacksBelts } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipe, Recipes } from './recipe.ts';

const noBelts = unfitWhen(lacksBelts, 'This machine has no belts.');

const belt: Recipe = {
  tools: ['hex-2', 'hex-2.5', 'cutters', 'axis-prop', 'phone', 'eye-protection'],
  steps: [
    step('Switch off; photograph the belt’s path and how its ends are clamped.', 'MOVE'),
    step('Prop the axis if the belt holds it up.', 'DROP'),
    step('Let the tensioner off, open the clamps, draw the belt out; a spring may jump.', 'CUT'),
    step('New belt: same pitch and width, cut to the old one’s number of teeth.'),
    only(crossedBelts, 'Crossed belts: fit both new, the same number of teeth on each.'),
    step(
      'Thread it by the photograph, teeth on the toothed pulleys, back on smooth idlers; clamp full teeth.',
    ),
    step('Tension it, move end to end by hand; again after 50 h: new belts give.'),
  ],
  good: 'Runs in the middle of every pulley, ends clamped by whole teeth, no sag.',
  unfit: noBelts,
};

export const REPLACE_BELTS = {
  'replace-belt': belt,
  'replace-x-belt': belt,
  'replace-y-belt': belt,
  'replace-pulley': {
    tools: ['hex-1.5', 'hex-2', 'ruler', 'axis-prop', 'eye-protection'],
    supplies: ['thread-lock'],
    steps: [
      step('Switch off; prop the axis if this belt holds it up.', 'DROP'),
      step('Let the belt off; measure how far the pulley sits on the shaft.', 'MOVE'),
      step('Loosen its grub screws and draw it off; do not lever against the motor.', 'CUT'),
      step('New one: same teeth, same bore, same height, one grub screw on the shaft’s flat.'),
      step('A drop of thread-lock on the screws, none on the belt or plastics. Tension the belt.'),
    ],
    good: 'Belt runs straight, the pulley does not turn on its shaft.',
    unfit: noBelts,
  },
  'replace-idler': {
    tools: ['hex-2', 'hex-2.5', 'axis-prop', 'eye-protection'],
    steps: [
      step('Switch off; prop the axis if this belt holds it up.', 'DROP'),
      step('Let the belt off.', 'MOVE'),
      step('Undo the axle; note the order of washers and spacers; a ring may jump.', 'CUT'),
      step('New one in, same order; toothed where teeth run, smooth where the back runs.'),
      step('Snug the axle so that it spins free without wobble; tension the belt.'),
    ],
    good: 'Spins freely, the belt runs in its middle.',
    unfit: noBelts,
  },
  'replace-motor': {
    tools: ['hex-1.5', 'hex-2', 'hex-2.5', 'axis-prop', 'phone', 'cable-ties'],
    steps: [
      step('Prop the axis that this motor holds.', 'DROP'),
      step('Switch off, pull the plug: a motor is never plugged in or out with the power on.', 'UNPLUG'),
      step('Let it cool: a motor can be as hot as a bed.', 'HOT'),
      step('Photograph the plug and the wires’ order; let the belt or coupler off, undo the screws.'),
      step('New one: same current rating, shaft and plug order; not known means stop.'),
      step('Pulley or coupler to the old height, grub screw on the flat; tie the lead.'),
      step(
        'Power on, move 10 mm with a hand on the switch: right way, no judder. Then check steps and squareness.',
      ),
    ],
    good: 'Turns the right way, quiet, no hotter than its neighbours.',
  },
  'replace-end-stop': {
    tools: ['hex-2', 'hex-2.5', 'cable-ties'],
    steps: [
      step('Switch off, pull the plug.', 'UNPLUG'),
      step('Note where it sits, undo it, unplug it at its connector.'),
      step('New one of the same kind on the same spot, lead tied clear of the travel.'),
      step('Power on, press it by hand with nothing moving: the screen must show it.'),
      step('Home with a hand on the switch, then check the first layer if it was the Z stop.'),
    ],
    good: 'Homes three times to the same place.',
  },
} satisfies Recipes;
