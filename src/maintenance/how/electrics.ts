/** Wiring, fans, mains lead, heater protection: mostly looks, and none of them with a cover of the supply open. */
import { movingBed } from './features.ts';
import { only, step } from './recipe.ts';
import type { Recipes } from './recipe.ts';

export const ELECTRICS = {
  'check-wiring': {
    tools: ['torch', 'mirror', 'cable-ties'],
    steps: [
      step('Switch off, pull the plug, keep it in sight.', 'UNPLUG'),
      step(
        'Stay on the low-voltage side; the covers of the supply and of mains terminals stay shut.',
        'MAINS',
      ),
      step(
        'Follow the hot-end leads from block to board: look, do not pull. Bare, brown, brittle or flattened is bad.',
      ),
      only(
        movingBed,
        'Move the bed by hand and watch its cable bend: it must be held at both ends and not rub.',
      ),
      step('Look at every connector you can see: brown, soft, half out or smelling is bad.'),
      step('Replace missing ties; leave slack for the whole travel.'),
      step('Anything bad: leave it unplugged and say so here.'),
    ],
    good: 'Whole insulation, clean connectors, nothing that rubs over the whole travel.',
  },
  'check-fans': {
    tools: ['torch'],
    steps: [
      step('Switch on; fingers, hair and sleeves away from the blades.', 'MOVE'),
      step('Heat the hot end past 50 °C: its own fan must start and keep turning.', 'HOT'),
      step('Run the part fan from the menu, slow and fast.'),
      step('Listen to the board and supply fans from outside: no howl, no tick, air moves.'),
      step('One that starts late, howls or stands still: switch off and clean or replace it.'),
    ],
    good: 'Every fan starts at once, runs evenly and moves air.',
  },
  'check-mains-lead': {
    tools: ['torch'],
    steps: [
      step('Switch off and pull the plug at the wall.', 'UNPLUG'),
      step('From outside only: the plug, the whole lead, the inlet. No cut, crush, kink, brown mark.'),
      step('The plug sits firmly in its socket, and no lead is under a foot, a door or a hot part.'),
      step('Look for the date of the last electrical test; testing is for a competent person.', 'MAINS'),
    ],
    good: 'Whole lead, firm plug, test date in order by your local rule.',
  },
  'test-protection': {
    tools: [],
    steps: [
      step(
        'Find the maker’s own test of the heater-fault shut-down. None there: ask the maker, do not improvise.',
      ),
      step('A keeper does it, nobody else is waiting for the machine, plate empty.'),
      step('Stay beside it with a hand on the switch; know where the plug is.'),
      step('Do the test exactly as described; no lead is pulled with the power on.', 'HOT'),
      step('It must switch the heater off and show the fault within the maker’s time.'),
      step('Log the result with the firmware version; failed means out of use.'),
    ],
    good: 'Heater off and a fault on the screen, in the maker’s time.',
  },
} satisfies Recipes;
