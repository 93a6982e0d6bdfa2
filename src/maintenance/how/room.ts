/** The room's own things. Local rules decide who does these and how often. */
import { step } from './recipe.ts';
import type { Recipes } from './recipe.ts';

export const ROOM_CARE = {
  'test-smoke-detector': {
    tools: ['steps-ladder'],
    steps: [
      step('Tell the room, and whoever watches the fire panel, that it is a test.'),
      step('Stand on firm steps and press the test button until it sounds.'),
      step('Look that nothing covers it, that it is not painted over and not past its date.'),
      step('Log it; silent or past its date: tell the person responsible today.'),
    ],
    good: 'Loud at once, clean, within its date.',
  },
  'check-extinguisher': {
    tools: [],
    steps: [
      step('It hangs in its place, in sight, and nothing stands in front of it.'),
      step('Pin and seal are there, the gauge is in the green, hose and body are whole.'),
      step('The service date is not past, and its kind suits electrical fires.'),
      step('Do not try it out. Anything wrong: tell the person responsible today.'),
    ],
    good: 'In its place, sealed, in the green, in date.',
  },
  'check-extraction': {
    tools: ['paper', 'vacuum'],
    supplies: ['cloth'],
    steps: [
      step('Run it and hold a strip of paper at each hood or enclosure outlet: it is drawn in.'),
      step('Listen: no howl, no scrape; look along the hose for kinks and holes.'),
      step('Switch it off at the plug before a grille comes out.', 'UNPLUG'),
      step('Wipe or vacuum grille and pre-filter, look at the filter’s date.', 'DUST'),
    ],
    good: 'Paper held at every hood, quiet run, filter in date.',
  },
  'check-solvents': {
    tools: [],
    steps: [
      step('Count the bottles: caps on, labels legible, none leaking.', 'SOLV'),
      step('They stand in their cabinet, away from heat, sun and the machines.'),
      step('On the bench only what the day needs; soaked cloths in the lidded bin.'),
      step('The data sheets are where people can find them.'),
    ],
    good: 'Closed, labelled, in the cabinet, sheets at hand.',
  },
  'check-safety-kit': {
    tools: [],
    steps: [
      step('First-aid box: complete, in date, burn dressing and eye wash there.'),
      step('Heat gloves, eye protection and masks: whole, clean, enough for those who work.'),
      step('Emergency number, first-aider and address hang where all can read them.'),
      step('Put what is missing on the order list today.'),
    ],
    good: 'Nothing missing, nothing out of date.',
  },
  'check-dryer': {
    tools: ['soft-brush', 'thermometer'],
    steps: [
      step('Pull its plug and let it cool.', 'UNPLUG'),
      step('Look at lead, plug and lid; brush the vents and the fan free.', 'HOT'),
      step(
        'Plug in, set the usual temperature, compare with a thermometer inside after half an hour.',
        'OVEN',
      ),
      step('More than 5 °C over its setting: out of use.'),
    ],
    good: 'Free vents, whole lead, temperature as set.',
  },
} satisfies Recipes;
