/** What a thing does that it should not, as bare verbs: bent here once, so that "hums", "hummed" and "does not hum" are one word. */
import type { Complaint } from '../../senses.ts';

export const TROUBLE_VERBS: Readonly<Partial<Record<Complaint, string>>> = {
  click: 'thunk, click, clack, tick, knock, thump, clunk, clonk, tock',
  jam: 'jam, clog, choke, clog up, jam up, block up, plug up, gum up, bung up',
  loose: 'back out, come loose, work loose, come undone, fall off, dangle, shake loose, rattle loose',
  slack: 'twang, flap, lose tension, lose its tension',
  dead: 'seize, seize up, stall, cut out',
  stuck: 'judder, snag, jerk, stutter, snatch, lurch, stumble, hesitate',
  noisy: 'whine, howl, screech, scream, buzz, hum, drone, roar, whirr, whistle, moan, growl, wail, shriek, groan',
  squeak: 'peep, cheep, squeak, squeal, squawk, chirp, tweet, creak, yelp',
  grind: 'grate, grind, graunch, crunch, scrunch, gnash, rasp',
  rattle: 'shiver, jingle, clank, clang, tremble, quiver, rattle, vibrate, clatter, jangle, shudder, chatter, judder about',
  leak: 'leak, seep, weep, drip',
  slip: 'slip, skip, lose steps, miss steps, skip steps',
  wet: 'hiss, crackle, sizzle, fizz',
  swing: 'swing, overshoot, drift, fluctuate, oscillate, bounce, bounce around, wander, jump around, jump about',
  frozen: 'freeze, freeze up, flicker, lock up, glitch, black out',
  wobble: 'wobble, rock, wiggle, jiggle',
  lifting: 'lift, peel, peel off, curl, curl up, flake, flake off, lift off, lift up, peel up',
  crashed: 'crash, ram, slam, collide, bash into, bang into, smash into, drive into, crash into, slam into, plough into, nosedive',
  chewed: 'chew, gnaw, munch, chew up',
  frayed: 'fray, shred, unravel, delaminate',
  shock: 'tingle, prickle, zap',
}; // prettier-ignore
