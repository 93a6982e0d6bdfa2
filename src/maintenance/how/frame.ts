/** Frame, wheels, printed parts, covers and doors: what holds the machine together and hands out. */
import { lacksGuide } from './features.ts';
import { step, unfitWhen } from './recipe.ts';
import type { Recipes } from './recipe.ts';

export const FRAME = {
  'check-fasteners': {
    tools: ['hex-2', 'hex-2.5', 'hex-3', 'axis-prop'],
    steps: [
      step('Switch off.', 'MOVE'),
      step('Prop the gantry before you touch a screw that carries it.', 'DROP'),
      step('Go round in one direction: feet, frame corners, uprights, gantry, motors, bed, hot-end carrier.'),
      step('Nip up what is loose; snug is enough, more strips threads in plastic and soft metal.'),
      step('Push the frame gently from two sides: no creak, no rocking on the table.'),
    ],
    good: 'Nothing turns by finger, and the machine stands on all its feet.',
  },
  'check-printed-parts': {
    tools: ['torch'],
    steps: [
      step('Switch off and let it cool.', 'HOT'),
      step(
        'Look at holders, tensioners, motor and hot-end mounts: sag, cracks, layers opening, white stress marks.',
        'MOVE',
      ),
      step('Look where a printed part comes near the hot block: a gap all round.'),
      step('Press by finger: nothing may give. A part that has gone soft is replaced before the next print.'),
    ],
    good: 'Straight, hard parts, and air between them and the hot block.',
    unfit: unfitWhen((build) => build.printedParts === 'none', 'This machine has no printed parts.'),
  },
  'check-wheels': {
    tools: ['eccentric-spanner', 'hex-2.5', 'axis-prop'],
    steps: [
      step('Switch off.', 'MOVE'),
      step('Vertical axis: prop it first.', 'DROP'),
      step(
        'Hold the carriage and turn each wheel by finger: it turns with a little drag, not freely, not stuck.',
      ),
      step('Too loose or too tight: turn its eccentric a little and try again.'),
      step('Roll the carriage slowly from end to end: a thump once a turn is a flat spot, fit a new wheel.'),
      step('Wipe the track dry. Wheels and their tracks take no lubricant.'),
    ],
    good: 'No rocking, a little drag at each wheel, an even roll.',
    unfit: unfitWhen(lacksGuide('wheels'), 'No axis of this machine runs on wheels.'),
  },
  'check-guards': {
    tools: [],
    steps: [
      step('Look at doors, covers and their screws: all there, none cracked.'),
      step('With the machine idle and powered, open the door: it must report it or refuse to start.', 'MOVE'),
      step(
        'Start a harmless move with the door shut, then open it the way the manual tests it: it must stop.',
      ),
      step('It does not: out of use, tell the keeper.'),
    ],
    good: 'Every guard is on, and the door switch does what the manual says.',
    unfit: unfitWhen((build) => build.guards === false, 'No guards or door switch are fitted here.'),
  },
} satisfies Recipes;
