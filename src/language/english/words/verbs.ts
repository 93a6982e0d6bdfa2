/**
 * Verb classes. One row a class; forms (-s, -ed, -ing) are made, irregular ones stand in IRREGULAR. In a verb of
 * several words the first is bent ("nip up", "nipped up"). A word may stand in several classes: the frames choose.
 */
import type { VerbClass } from '../../senses.ts';

export const VERB_WORDS: Readonly<Record<VerbClass, string>> = {
  clean:
    'rake, rake out, rake off, bath, bathe, shampoo, clean, clean out, clean up, clean off, wash, wash down, scrub, rinse, degrease, de grease, brush, brush out, brush off, brush down, scrape, scrape off, scour, polish, vacuum, vacuum out, hoover, hoover out, hoover up, blow out, blow through, pick, pick out, pick off, swab, decontaminate, purge, sweep, sweep up, sweep out, freshen up, dig out, dig, chip off, chip, ipa, alcohol, unclog, peel off, rub down, flush, descale, wet wipe, sponge, burn off, deglue, de glue, cleanse, get the dust out of, scrape clean, wipe clean, wire brush, brass brush, toothbrush, buff, tidy, tidy up, iso, swish',
  wipe: 'wipe, wipe down, wipe off, wipe over, mop, dab, rub, give a wipe',
  dust: 'dust, blast of air, puff of air, shot of air, dust off, dust out, dust down, de dust, air can, dedust, blow the dust off, blow the dust out, blow off, blow down, blow dust, air dust, blow over, feather dust',
  oil: 'oil, grease, oily cloth, oily rag, lube, lube up, lubricate, re lube, relube, relubricate, re oil, regrease, re grease, grease up, oil up, reoil, lubed',
  tighten:
    'tighten, retighten, re tighten, tighten up, tighten down, nip up, nip, snug, snug up, snug down, torque, torque up, threadlock, thread lock, cinch, cinch up, lock down, secure, screw down, loctite, pinch up, retorque, re torque, firm up, do up, spanner, allen key, hex key, wrench, screwdriver',
  tension:
    'bring to the same tension, bring to tension, bring up to tension, bring back to tension, set to the same tension, tension, retension, re tension, tauten, take up the slack, tension up, pluck, take up slack, tauten up, take in, tighten up the slack, pluck tune',
  level:
    'level, re level, relevel, tram, re tram, retram, level up, mesh, remesh, re mesh, level out, bed level',
  square:
    'square, square up, realign, re square, align, re align, resquare, true up, true, straighten, sync, synchronise, synchronize, rack, derack, de rack, deracked',
  swap: 'renewal, swap, swap out, swap over, change, change out, change over, chnage, replace, renew, exchange, switch, switch out, switch over, substitute, re place, swop, swop out, retire, supersede, upgrade the, change for, replaced out, rebelt, re belt, renozzle',
  fit: 'set in, fit, refit, re fit, mount, put in, put on, stick in, pop in, pop on, slip on, slip in, slot in, bung in, whack in, stick on, thread in, drop in, press in, chuck in, slap on',
  install:
    'install, instal, put fresh, put new, put a new, put a fresh, stick a new, stick a fresh, pop a new, fit a new, pop a fresh, throw in a new, throw a new, slap a new, whack a new, bung a new, shove a new, slip a new',
  remove:
    'remove, take out, take off, pull out, pull off, unscrew, rip out, take away, detach, unbolt, strip out, whip out, whip off, yank, yank out, unmount, dismount, disassemble, dismantle, lift out, lift off, get out, get off, take apart, strip, strip down',
  look: 'inspection, look at, look over, look, check, control, revise, check over, check out, check on, inspect, examine, eyeball, eye, view, go over, go round, go around, look round, look through, measure, have a look, have a look at, took a look at, take a look at, take a look, review, verify, look into, look for, feel, wiggle, waggle, spin, spin by hand, survey, scan, give a once over, recheck, re check, double check, go through, glance at, audit, poke, tug, follow, trace, read through, read up on, go along, inspect for, peer at, look in on, run over, peek at, look up',
  test: 'test, provoke, try out, test fire, trip, prove, exercise, press, retest, re test, pressed',
  adjust:
    'adjust, readjust, re adjust, set, reset, re set, tweak, dial in, trim in, fine tune, tune, tune up, retune, re tune, correct, set up, rejig, take out the play, turn, shim, nudge, redo, re do, take the play out, take play out, dial',
  calibrate:
    'determine, re determine, redetermine, calibrate, recalibrate, re calibrate, cal, autotune, pid tune, pid, recal, auto tune',
  trim: 'cut away, take away from the end, trim, cut, cut off, snip, snip off, shorten, recut, re cut, square off, lop, lop off, cut back, trim back, trim off, slice off, crop, slice, nip off, clip off, chop, chop off, shave, shave off, cut square, re trim, retrim, cut down, take off the end, re square the end',
  clear:
    'clear, clear out, empty, empty out, unjam, un jam, unblock, unclog, un clog, free, free up, clear up, declog, de clog, dislodge, unplug the nozzle, poke out, poke, push through, get it flowing, get it flowing again, get flowing again, get it going, drill out, dejam, de jam, sort the jam, burn out, de clogged, fish out, unstick, ream, ream out, shift the jam, got it feeding again, winkle out, tease out, evict, extract, get the flow back, purge through',
  pull: 'cold pull, atomic pull, hot pull, coldpull, nylon pull, cold pulls',
  dry: 'condition, dry, dry out, bake, dehydrate, redry, re dry, bake out, oven dry, pre dry, predry',
  update:
    'bring up to the latest, bring to the latest, update, upgrade, flash, reflash, re flash, patch, bring up to date, bump to, flash up',
  save: 'save, back up, backup, store to eeprom, store to memory, save to memory, write to memory, commit to memory, write to eeprom, export, saved off, archive, note down, stash, copy off, write down',
  run: 'run, manage, go into, clock, clock, run for, go for, print for, clock up, rack up, log up, notch up, crank out, churn for, churn out, grind out, put through, chew through, eat through, get through, go through, burn through, print off, run off, run through, do another, put in a shift, print away, pump out, knock out, munch through, use up, swallow, turn out, gobble, plough through, rattle off, pile on',
  print: 'print, reprint, 3d print, extrude',
  did: 'do, finish, complete, sort, sort out, see to, tackle, carry out, perform, take care of, service, handle, attend to, wrap up, maintain, deal with, get done, tick off, polish off',
  read: 'read, show, stand at, sit at, tick over, say, clock, display, tell, roll over, register, hit, reach, pass, creep past, turn over, tick past, go past, roll past, be at, climb to, stand on, cross',
  count: 'count, recount, make it, tot up, re count, tally, stock take, stocktake',
  arrive:
    'sign for, unpack, unbox, donate, arrive, get a delivery, have a delivery, get a parcel, have a parcel, come in, come, deliver, land, turn up, show up, get in, restock, top up, receive, re stock, take delivery of, replenish, add, stock up, drop off',
  use: 'use, use up, snag, grab, consume, draw, nick, pinch, help myself to, take from, borrow, swipe, raid, burn',
  load: 'load, load up, mount, hang, spool up, put on, put in, thread, feed in, switch to, change to, swap to, put up, stick on, pop on, reload, re load, slot on, change over to, set up with, fill up with, swap over to',
  order: 'order, reorder, re order, request, requisition, send off for',
  'put-off':
    'deferral, postponement, cba w, cba with, postpone, defer, delay, snooze, knock back, punt, put off, put back, push, push back, push out, hold off, hold off on, skip, leave, wait, move, shift, reschedule, re schedule, bump, kick, shelve, park, slide, move back, shove, hang fire on, extend, stretch, push on, hold over, suspend, bring back, leave off, carry over, put on hold, let slide, kick down the road, rain check, remind me, remind me again, adjourn, put aside, put on ice, nudge, hold, table, stall, reprieve, ignore, drop, pause, skip over',
  bump: 'bump, knock, whack, clout, hit, bash, jog, drop',
  move: 'hump, humph, schlep, trundle, heave, manhandle, move, relocate, shift, carry, wheel, transport, re locate, lug, haul, rehome, cart, re home, shunt, swap places',
  start: 'start, begin, kick off, launch, set off, queue, set going, send, fire up',
  stop: 'stop, cease, quit, halt, abort, cancel, end, die, pack up, conk out, give up, give out, disappear, vanish, go away, pack in, fade, settle down, subside, die down, clear',
  undo: 'undo, revert, cancel, scratch, scrap, delete, strike, forget, ignore, take back, disregard, remove, erase, wipe, unlog, retract, drop, scrub, roll back, withdraw, kill, bin, rub out, void, discard, un log, un do, annul, nix, rescind, un record, unrecord, back out',
  amend: 'amend, correct, make it, make that, change it to, change that to, edit, revise, put right',
  fix: 'fix, repair, mend, sort, sort out, cure, rectify, resolve, patch up, get going again, heal, bodge, glue, solder, resolder, re solder, crimp, recrimp, re crimp, superglue, re terminate',
  take: 'take, took, have',
  put: 'put, stick, pop, place, set, chuck, whack, bung, shove, slap, throw, stash, drop, pile, dump, clock up',
  get: 'get, obtain, pick up, fetch, got',
  give: 'give, gave',
  bin: 'bin, throw away, throw out, trash, chuck, chuck out, toss, toss out, lose, junk, scrap, waste, write off, ditch, snap, break, skip, dispose of, wreck, drop down the drain, misplace, sacrifice, ruin',
  work: 'work, function, operate, behave, perform, trigger, respond, beep, sound, spin, chirp, fire, kick in, cut out, cut, cut off, trip, suck, pull, draw, hold, light up, shut off, shut down, seal, close properly, latch, beeped, ring, scream',
  open: 'open, open up, strip down, take apart, pull apart, dismantle, disassemble, strip, tear down, gut',
  close:
    'close up, close, reassemble, re assemble, put back together, put together, button up, screw together, bolt back together, bolt together, rebuild, re build, box up, screw back together, box back up, seal up, get back together, go back together, come back together, shut up again, build back up, piece together, put back in one piece, bolt up, build back together, stitch back together, assemble',
  plug: 'unplug, pull the plug, pull its plug, pull the plug on, pull the mains, switch off, turn off, power off, power down, tag out, tag, lock out, take out of service, take out of use, put out of service, take offline, take out of action, hang a sign, tag off, isolate, put out of use, shut down, take down, stand down, take off line, retire, shut off, quarantine, mothball, disconnect, decommission, tape off, withdraw from service, lock off, pull from service, pull off the line, bench',
  log: 'log, record, note, enter, track, write down, put down, report, add, jot, file, capture, mark',
  leave: 'leave, keep',
  find: 'find, spot, notice, see, hear, smell, discover, come across, detect, observe, sniff, catch, feel, clock, get, have',
  try: 'try, attempt, want, struggle, plan, intend, mean, hope',
  forget:
    'forget, fail, omit, neglect, miss, skip, avoid, run out of time, not get round to, refuse, not get to',
  last: 'last, hold, survive, live, endure',
  buy: 'buy, purchase, source',
  say: 'say, tell, ask, write, think, reckon, claim, mention, wonder, mutter, insist, swear, joke, message, text, call, shout, suggest, read, promise, announce, complain, explain, warn',
  hand: 'lend, lend out, loan, sell, sell off, give away, hand over, hand, pass on, pass over, brief, hand off',
  reset: 'reset, re set, zero, set back, roll over, replace the counter, wipe, clear, swap the counter',
  runin: 'run in, break in, bed in, commission, shake down, burn in, running in, shakedown',
  need: 'need, require, want, could do with, be due, call for, deserve, warrant, be crying out for',
  keep: 'look after, keep, keep on, carry on',
  make: 'make, have',
  apply:
    'apply, smear, squirt, spread, drip, dribble, pump, work in, work into, work some, rub in, dab on, smear on, spray, treat',
};

/** base: past, and the participle where it differs. */
export const IRREGULAR: Readonly<Record<string, readonly [past: string, participle?: string]>> = {
  control: ['controlled'], sweep: ['swept'], ring: ['rang', 'rung'], blow: ['blew', 'blown'], stick: ['stuck'], put: ['put'], set: ['set'], cut: ['cut'], fit: ['fitted', 'fit'],
  take: ['took', 'taken'], pull: ['pulled'], go: ['went', 'gone'], look: ['looked'], feel: ['felt'], spin: ['spun'], do: ['did', 'done'],
  give: ['gave', 'given'], see: ['saw', 'seen'], run: ['ran', 'run'], read: ['read'], show: ['showed', 'shown'], stand: ['stood'],
  sit: ['sat'], say: ['said'], tell: ['told'], hit: ['hit'], make: ['made'], come: ['came', 'come'], get: ['got', 'gotten'], grab: ['grabbed'],
  draw: ['drew', 'drawn'], hang: ['hung'], feed: ['fed'], send: ['sent'], hold: ['held'], leave: ['left'], let: ['let'], bring: ['brought'],
  slide: ['slid'], begin: ['began', 'begun'], quit: ['quit'], forget: ['forgot', 'forgotten'], strike: ['struck', 'stricken'],
  rub: ['rubbed'], throw: ['threw', 'thrown'], lose: ['lost'], lend: ['lent'], sell: ['sold'], write: ['wrote', 'written'], break: ['broke', 'broken'],
  tear: ['tore', 'torn'], rebuild: ['rebuilt'], build: ['built'], shut: ['shut'], lie: ['lay'], find: ['found'], hear: ['heard'],
  smell: ['smelt', 'smelled'], catch: ['caught'], buy: ['bought'], think: ['thought'], swear: ['swore', 'sworn'], mean: ['meant'],
  dig: ['dug'], chip: ['chipped'], dry: ['dried'], recut: ['recut'], unstick: ['unstuck'], redo: ['redid', 'redone'], reset: ['reset'],
  eat: ['ate', 'eaten'], burn: ['burnt', 'burned'], grind: ['ground'], creep: ['crept'], die: ['died'], wet: ['wet'], drop: ['dropped'],
  wind: ['wound'], light: ['lit'], keep: ['kept'], undo: ['undid', 'undone'], withdraw: ['withdrew', 'withdrawn'], hand: ['handed'],
  notch: ['notched'], refit: ['refitted', 'refit'], swap: ['swapped'], ipa: ["ipa 'd", 'ipaed'], pid: ["pid 'd", 'pid tuned'], shave: ['shaved'], be: ['was', 'been'],
  freshen: ['freshened'], tighten: ['tightened'], loosen: ['loosened'], retighten: ['retightened'], level: ['levelled', 'leveled'], relevel: ['relevelled', 'releveled'],
  cal: ["cal 'd"], cancel: ['cancelled', 'canceled'], have: ['had'], deal: ['dealt'], forgo: ['forwent'], ream: ['reamed'], register: ['registered'], deliver: ['delivered'], trigger: ['triggered'],
  order: ['ordered'], reorder: ['reordered'], enter: ['entered'], open: ['opened'], defer: ['deferred'], alter: ['altered'], solder: ['soldered'], resolder: ['resoldered'], discover: ['discovered'],
  tension: ['tensioned'], retension: ['retensioned'], mention: ['mentioned'], commission: ['commissioned'], decommission: ['decommissioned'], function: ['functioned'], requisition: ['requisitioned'], button: ['buttoned'],
  hoover: ['hoovered'], rejig: ['rejigged'], polish: ['polished'], inspect: ['inspected'], edit: ['edited'], exit: ['exited'], wonder: ['wondered'], gather: ['gathered'], examine: ['examined'],
  vacuum: ['vacuumed'], rack: ['racked'], sync: ['synced'], unclog: ['unclogged'], declog: ['declogged'], backup: ['backed up'], tauten: ['tautened'], straighten: ['straightened'], mutter: ['muttered'], shim: ['shimmed'],
  swallow: ['swallowed'], munch: ['munched'], tram: ['trammed'], retram: ['retrammed'], pat: ['patted'], renew: ['renewed'], review: ['reviewed'], snow: ['snowed'], survey: ['surveyed'], relay: ['relayed'], screw: ['screwed'], unscrew: ['unscrewed'],
  view: ['viewed'], plough: ['ploughed'], wear: ['wore', 'worn'], sniff: ['sniffed'], lube: ['lubed'], relube: ['relubed'], visit: ['visited'], handle: ['handled'], total: ['totalled'], wiggle: ['wiggled'], extract: ['extracted'], borrow: ['borrowed'], follow: ['followed'],
  narrow: ['narrowed'], disappear: ['disappeared'], clear: ['cleared'], unclear: ['unclear'], tweak: ['tweaked'], clean: ['cleaned', 'cleaned'], oil: ['oiled'], re: ['re'], repair: ['repaired'], appear: ['appeared'], mail: ['mailed'], reload: ['reloaded'], load: ['loaded'], spool: ['spooled'], bolt: ['bolted'], instal: ['installed'], rinse: ['rinsed'],
}; // prettier-ignore
