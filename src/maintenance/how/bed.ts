/** Bed, plate, probe and first layer. */
import { hasProbe, lacksProbe, limitClause, rigidBed, sprungBed } from './features.ts';
import { only, step, unfitWhen } from './recipe.ts';
import type { Recipe, Recipes } from './recipe.ts';
import type { Build } from '../machine.ts';

const heatBed = step(
  'Clean tip and plate; heat the bed to its usual temperature and let it settle for 5 minutes.',
  'HOT',
);
const motorsOff = step('Home, then motors off so that the head moves by hand.', 'MOVE');
const skirt = step('Print a skirt or a large first layer and watch it all round.');
const saveMap = 'Let it measure its height map again and save it.';

const sprung: Recipe = {
  tools: ['paper', 'axis-prop'],
  supplies: ['test-filament'],
  steps: [
    heatBed,
    motorsOff,
    step('If Z could drop with the motors off, prop it.', 'DROP'),
    step('At each corner turn the knob until a sheet of paper drags lightly under the nozzle.'),
    step('Go round again, each corner moves its neighbours; stop when none changes.'),
    only(hasProbe, saveMap),
    skirt,
  ],
  good: 'The same light drag everywhere and a skirt of one width all round.',
};

const probed: Recipe = {
  tools: ['hex-2.5', 'axis-prop'],
  supplies: ['test-filament'],
  steps: [
    heatBed,
    step('Power off: look that the bed’s screws sit fast and nothing lies under the plate.', 'MOVE'),
    step('Prop Z where it could drop while the power is off.', 'DROP'),
    step('Power on, home; more than one Z screw: run the machine’s own gantry levelling first.'),
    step(saveMap),
    step(
      'More than about 0.5 mm between corners (common practice): bring gantry or bed screws right as the manual says.',
    ),
    skirt,
  ],
  good: 'A flat height map and a first layer of one width all over.',
};

const rigidByHand: Recipe = {
  tools: ['paper', 'hex-2.5', 'axis-prop'],
  supplies: ['test-filament'],
  steps: [
    heatBed,
    motorsOff,
    step('If Z could drop with the motors off, prop it.', 'DROP'),
    step('Feel the drag of a sheet of paper at four corners and in the middle; note which are high and low.'),
    step('Correct at the bed’s screws or with shims, only as the manual says; do not bend the bed.'),
    step('Set the first-layer height again.'),
    skirt,
  ],
  good: 'The same drag at all five places and an even first layer.',
};

function levelBed(build: Build): Recipe {
  if (sprungBed(build)) return sprung;
  if (rigidBed(build)) return hasProbe(build) ? probed : rigidByHand;
  const base = hasProbe(build) ? probed : sprung;
  return {
    ...base,
    assumes: [
      {
        text: 'Springs or rigid bed not stated: where there are no knobs, do as the manual says.',
        when: () => true,
      },
    ],
  };
}

export const BED = {
  'level-bed': levelBed,
  'check-first-layer': {
    tools: ['magnifier', 'caliper'],
    supplies: ['test-filament'],
    steps: [
      step((build) => `Clean plate; heat bed and nozzle to print temperature${limitClause(build)}.`, 'HOT'),
      step('Home with hands off and one finger on the switch.', 'MOVE'),
      step('Print one large single-layer patch and watch the first lines.'),
      step('Round lines with gaps: nozzle lower by 0.02 mm. See-through or ridged: higher by 0.02 mm.'),
      step('Thick on one side only: level the bed, not the height.'),
      step('Let it cool, peel it and measure: one layer’s height, the same in every corner.'),
    ],
    good: 'Lines just joined, smooth, one thickness all over.',
  },
  'check-probe': {
    tools: ['soft-brush', 'hex-2'],
    steps: [
      step('Power off, nozzle cold: brush the probe clean, look at its screws and its cable.', 'HOT'),
      step(
        'Power on with Z well up: trigger it by finger or a metal tip, as its kind needs; the screen shows it.',
        'MOVE',
      ),
      step('Home with one finger on the switch.'),
      step('Probe one point ten times: a spread below about 0.05 mm is usual (common practice).'),
      step('Check the first layer after any change at the probe.'),
    ],
    good: 'It triggers every time, and ten readings agree.',
    unfit: unfitWhen(lacksProbe, 'No probe is fitted here.'),
  },
  'check-plate': {
    tools: ['torch', 'ruler'],
    supplies: ['cloth'],
    steps: [
      step('Let it cool and take the plate off.', 'HOT'),
      step('Look along the surface against the light: scratches, blisters, peeling, bare spots.'),
      step('Look along the edges for chips and cracks before a finger goes near them.', 'CUT'),
      step('Lay a ruler across, both ways: no gap of light under it.'),
    ],
    good: 'Flat, whole surface, whole edges.',
  },
} satisfies Recipes;
