/**
 * What a thing will not do, and what it is not: every way of denying a verb or an adjective is put together here, so
 * that "won't heat", "don't heat", "not heating", "stopped heating" and "refuses to heat" are one row of verbs.
 */
import type { Symptom } from '../../../maintenance/codes.ts';
import type { Complaint } from '../../senses.ts';
import { verbForms } from '../../inflect.ts';

/** What it should do and does not. */
export const REFUSED_COMPLAINTS: Readonly<Partial<Record<Complaint, string>>> = {
  cold: 'become warm, become hot, heat, heat up, warm, warm up, get hot, get warm, get up to heat, reach temperature, reach temp, reach its temperature, get to temperature, get to temp, get up to temperature, get up to temp, come up to temperature, come up to temp, hit temperature, hit its target',
  dead: 'move, spin, turn, turn round, go round, work, function, respond, come on, kick in, blow, spin up, rotate, wake up, do anything, budge',
  jam: 'go in, go through, come out, come through, load',
  'no-stick':
    'stay in, stick, adhere, grip, hold on, stay stuck, stay down, stay put, bond, hold the first layer, hold a first layer, hold the print, hold prints, bond to each other, stick to each other, stick together, fuse, fuse together, hold together',
  misses:
    'trigger, deploy, register, come down, pop out, stow, retract, detect the bed, see the bed, sense the bed',
  frozen:
    'refresh, respond, react, respond to touch, react to touch, react to anything, accept touch, take any input, take touch, take any button, take any touch, show anything, light up',
  swing:
    'hold, hold steady, hold still, stay still, hold temperature, hold its temperature, hold temp, keep its temperature, keep temperature, keep the temperature, hold the temperature, stay steady, stay put, settle, stay stable, settle down',
  'round-lines': 'touch, touch each other, meet, join, join up',
  stiff: 'move smooth, move smoothly, slide freely, move freely, glide, run smooth, run smoothly, move well',
};
export const REFUSED_SYMPTOMS: Readonly<Partial<Record<Symptom, string>>> = {
  'temperature-swing':
    'hold temperature, hold its temperature, hold temp, keep its temperature, keep temperature, keep the temperature, hold the temperature, stay at temperature, stay on target',
  'poor-adhesion':
    'keep the first layer down, keep a first layer down, hold the first layer down, keep the print down, keep prints down, keep hold of the print, keep hold of prints, hold its prints, hold prints down, keep anything down, hold anything down, get it to stick, get pla to stick, get petg to stick, get abs to stick, get asa to stick, get tpu to stick, get nylon to stick, get anything to stick, get prints to stick, get them to stick, get the first layer to stick',
  'screen-frozen': 'get any response from the screen, get any response from its screen',
  'no-extrusion':
    'spit anything out, spit out anything, spit anything, squirt, squirt anything, squirt any plastic, squirt out any plastic, squirt plastic, push anything out, give any plastic, lay anything down, put anything down, lay down any plastic, spit plastic, spit out plastic, deliver plastic, deliver filament, deliver any filament, extrude, feed, push filament, push plastic, push any plastic, push any filament, push the filament, take filament, take the filament, pull filament, pull the filament, grab filament, grab the filament, lay down anything, put down anything, lay down plastic, lay plastic, put out plastic, extrude anything, push anything',
  'homing-failed':
    'know where zero is, know where home is, know its zero, know its home, home, home properly, find home, find its home, find its end stop, find the end stop, find its endstop, find the endstop, find the x end stop, find the y end stop, find the z end stop, find zero, find its zero, find its zero point, find her zero point, find his zero point, find the zero point, find her home, find his home, complete homing, finish homing',
  'power-lost':
    'switch on, turn on, power on, power up, boot, boot up, start up, fire up, come back on, switch back on',
  'settings-lost':
    'remember its settings, remember its offset, remember its z offset, remember the z offset, remember the settings, remember its e steps, remember settings, keep its settings, keep its offset, hold its settings',
  runaway: 'stop heating, stop climbing, stop rising, stop at its target',
  'layer-shift': 'line up, stay in register, keep its place',
  'under-extrusion':
    'push enough, push enough plastic, push out enough plastic, put out enough, put out enough plastic, lay down enough, lay down enough plastic, give enough plastic, deliver enough, deliver enough filament, extrude enough, extrude enough plastic, feed enough, feed enough filament',
  'tube-slipped': 'stay in its fitting, stay in the fitting, stay in its collet, stay in the collet',
};
/** What it should be and is not. */
export const LACKED: Readonly<Partial<Record<Complaint, string>>> = {
  uneven:
    'level, flat, even, levelled, square to the bed, same everywhere, the same everywhere, same all over, the same all over, equal everywhere, uniform',
  flat: 'round, perfectly round',
  loose: 'tight, snug, seated, tightened, done up',
  stiff: 'smooth, moving freely, sliding freely',
  swing: 'steady, stable, constant',
  bent: 'straight, true',
  'round-lines':
    'squished, squashed, pressed down, squished enough, squashed enough, pressed enough, touching, touching each other, joined up, joining up, pressed into the plate',
};

/** Endings of the third person and bare auxiliaries, each denied. */
const BARE =
  "doesn't want to, does not want to, don't want to, didn't want to, doesn't really want to, doesn't like to, won't ever, just won't, simply won't, still won't, won't properly, doesn't properly, reluctant to, declines to, is not able to, isn't able to, won't, doesn't, don't, does not, do not, will not, didn't, did not, wouldn't, would not, couldn't, could not, can't, cannot, can not, not, never, refuses to, refused to, refusing to, fails to, failed to, failing to, struggles to, struggled to, struggling to, unable to, hardly".split(', '); // prettier-ignore
const GERUND =
  "ain't, aint, hasn't been, has not been, haven't been, have not been, hadn't been, isn't, aren't, wasn't, weren't, not, stopped, stops, has stopped, have stopped, keeps not, quit, quits, has quit, have quit, is barely, barely, hardly, ceased, has ceased, gave up, has given up".split(', '); // prettier-ignore
const THIRD = 'no longer, never, barely, hardly, scarcely, only just'.split(', ');
const PAST = 'never, barely, hardly, scarcely, only just'.split(', ');
const ADJECTIVE =
  "ain't, aint, not, isn't, aren't, wasn't, weren't, no longer, not very, not quite, not really, not so, not properly, not at all, never, not even, nowhere near".split(', '); // prettier-ignore

/** Said after the verb by those whose own language does so: "finds not its zero", "heats no more". */
const LAST = ['not', 'not more', 'no more', 'not anymore', 'not any more'];
const deniedAfter = (third: string, no: string): string => {
  const [verb = '', ...rest] = third.split(' ');
  return [verb, no, ...rest].join(' ');
};

/** All denials of one verb. */
export function refusals(verb: string): string[] {
  const forms = verbForms(verb);
  const [head = '', ...rest] = verb.split(' ');
  const third = [head.replace(/(?:ch|sh|s|x|z|o)$/u, '$&e').replace(/([^aeiou])y$/u, '$1ie') + 's', ...rest].join(' '); // prettier-ignore
  const ing = forms.filter(({ form }) => form === 'ing').map(({ words }) => words);
  const past = forms.filter(({ form }) => form === 'past').map(({ words }) => words);
  return [
    ...BARE.map((no) => `${no} ${verb}`),
    ...ing.flatMap((word) => GERUND.map((no) => `${no} ${word}`)),
    ...THIRD.map((no) => `${no} ${third}`),
    ...past.flatMap((word) => PAST.map((no) => `${no} ${word}`)),
    ...LAST.map((no) => deniedAfter(third, no)),
  ];
}
export const lacks = (adjective: string): string[] => ADJECTIVE.map((no) => `${no} ${adjective}`);

/** Said by those who leave the participle out: "the nozzle is block", "was melt". */
export const BARE_PARTICIPLES: Readonly<Partial<Record<Complaint, string>>> = {
  jam: 'block, clog, jam, plug',
  broken: 'break, snap, burst',
  bent: 'bend, deform, sag, droop, twist',
  melted: 'melt, soften',
  cracked: 'crack, split',
  worn: 'wear, wear out, use up',
  frozen: 'freeze, hang, block',
  scratched: 'scratch',
  kinked: 'kink, pinch',
};
const BE = ['is', 'are', 'was', 'were', 'be', 'get', 'got', 'gets', 'has', 'have'];
export const bareParticiples = (verb: string): string[] => BE.map((be) => `${be} ${verb}`);

/** A denial that may be of the speaker's own deed: "don't", "couldn't", "never"; not "won't", "doesn't", "refuses". */
export const MAY_BE_OWN = /^(?:don't|do not|didn't|did not|couldn't|could not|can't|cannot|can not|never|not|unable to|failed to|struggled to|struggling to|hardly|gave up|stopped|quit|wouldn't)\b/u; // prettier-ignore
