/** Firmware, settings and notices, and the bundle for a new, moved or rebuilt machine. */
import { lacksBelts, lacksGuide, not } from './features.ts';
import { only, step } from './recipe.ts';
import type { Recipes } from './recipe.ts';

export const FIRMWARE = {
  'check-notices': {
    tools: [],
    steps: [
      step('Note the machine’s exact model and firmware version.'),
      step('Read the maker’s page of safety notices and recalls for that model.'),
      step('Read the release notes since your version: look for heater, protection and motion mends.'),
      step('A safety notice: tell the keeper today. A new release: decide, one machine first.'),
    ],
    good: 'Version noted, notices read, a decision written down.',
  },
  'update-firmware': {
    tools: ['memory-card'],
    steps: [
      step('Save the settings to a file and note the old version; keep the old firmware at hand.'),
      step('Read the release notes; take the file for this exact board and model.'),
      step('Machine cold, heaters off, nothing printing; one machine first.', 'HOT'),
      step('Load it and stay beside it; do not cut the power half way.'),
      step('Load the settings back and compare them with the file.'),
      step('Test the heater protection, then the feeder’s steps and the first layer.'),
    ],
    good: 'New version on the screen, settings as before, protection test passed.',
  },
  'save-settings': {
    tools: ['memory-card'],
    steps: [
      step('Export the settings, or photograph each page of the menu.'),
      step('Note firmware version, feeder steps, first-layer height and probe offset with it.'),
      step('Put it where the others find it, with machine and date in the name.'),
    ],
    good: 'A file that somebody else could load tomorrow.',
  },
  'run-in': {
    tools: ['hex-1.5', 'hex-2', 'hex-2.5', 'torch', 'axis-prop'],
    steps: [
      step('Unplugged: look along the wiring and every connector.', 'UNPLUG'),
      step('Power off: go round the frame’s screws, then the pulleys’ and couplers’ grub screws.', 'MOVE'),
      step('Prop the axis for its couplers and screws.', 'DROP'),
      only(not(lacksBelts), 'Check the belts: new ones give a little in the first 50 h.'),
      only(not(lacksGuide('wheels')), 'Wheels, where fitted: a little drag at each, no lubricant.'),
      step('Look that heater and sensor sit fast in the cold block.'),
      step('Power on: fans, homing, bed level, first layer.'),
    ],
    good: 'Nothing has worked loose, and the first layer is as on day one.',
  },
} satisfies Recipes;
