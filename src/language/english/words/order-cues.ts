/**
 * What orders about the workshop itself are put together from, one row a cue. Words, not sentences: which order is
 * meant is settled by the rows of `english/orders/`, which cross these with what stands beside them.
 */
import type { OrderCue } from '../../senses.ts';

export const ORDER_WORDS: Readonly<Record<OrderCue, string>> = {
  baseline:
    'baseline, base line, start counting, count from, counts from, starts counting, start the clock, start the clocks, start its clock, start all clocks, fresh start, clean slate, reset the intervals, reset all intervals, reset all the intervals, zero the intervals, reset all counters to, take as done, treat as done, treat everything as done, count everything as done, mark everything as done, mark everything done',
  'start-now':
    'start now, start from now, start from today, start counting now, count from now, count from today',
  'all-well':
    "all fine, all good, all ok, all okay, all in order, all in good order, everything fine, everything 's fine, everything is fine, everything ok, everything is ok, everything good, everything is good, everything in order, everything is in order, all up to date, is up to date, everything up to date, everything is up to date, everything done, everything is done, all done, all tasks done, all serviced, fully serviced, freshly serviced, all checked, everything checked, everything was checked, everything was done, all maintenance done, nothing outstanding",
  'as-of':
    'as of, as from, as at, from today, from today on, from now on, counting from, effective, as per, dated',
  'set-interval':
    'interval, intervals, set the interval, change the interval, interval of, interval for, service interval, set to every, make it every, make that every, schedule for, scheduled every, is to be done every, from now on every, every one of its',
  manual:
    'manual, the manual says, manual says, says its manual, says the manual, its manual, per manual, per the manual, by the manual, according to the manual, according to its manual, maker, its maker, the maker says, says the maker, handbook, data sheet, the book says, manufacturer, the manufacturer says, recommends',
  another:
    'another one, another printer, another machine, one more printer, one more machine, one more, a second one, second one, a further printer, another of the same, a twin, a sibling',
  'new-machine':
    'new printer, new machine, a printer, a machine, printer, machine, a new one, new arrival, newcomer, new member of the fleet, additional printer, additional machine, a ninth printer, third printer, second printer',
  twin: 'like, same as, the same as, identical to, same build as, the same build as, same model as, same kind as, same sort as, copy of, a copy of, clone of, twin of, just like, exactly like, built like',
  call: 'call it, call her, call him, called, named, name it, name her, its name is, the name is, we call it, we named it, we called it, to be called, known as, goes by, name, christened',
  add: 'add, enrol, enroll, register, set up, put on the list, put it on the list, take on, take in, log a new, new entry for',
  'brand-new':
    "brand new, brandnew, factory new, out of the box, fresh from the box, straight from the maker, unused, never used, never run, it 's new, it is new, new from the maker, zero hours, 0 h on it",
  used: 'used, second hand, secondhand, pre owned, preowned, refurbished, refurb, has run, already run, from the other shop, hand me down, old stock',
  converted:
    'converted, convert, upgraded, upgrade, changed over, rebuilt, rebuild, turned into, switched over, switched, modded, retrofitted, was given, has been given, now runs',
  rename: 'rename, renamed, re name, change the name of, new name for, change its name, change name of',
  'called-now':
    'is now called, is called, now called, is now named, will be called, goes by, is to be called, shall be called, gets called, from now on called, is known as, now goes by',
  'gone-for-good':
    'sold, scrapped, retire, retired, retiring, gave away, given away, giving away, donated, decommissioned, decommission, got rid of, get rid of, written off, wrote off, scrapping, selling, skipped, sent to the tip, gone for good, has left us, left the workshop, leaves the workshop, leaving the workshop, out of the workshop for good, taken out of service for good, out of service for good, went to the scrapyard, traded in',
  leaves:
    'goes, leaves, leaving, picked up, collected, gets collected, gets picked up, away, out of the door, handover to the buyer, until, on',
  'false-alarm':
    "false alarm, false alarms, falsealarm, was a false alarm, not a real alarm, no alarm, nothing wrong after all, nothing after all, nothing wrong with it after all, was nothing after all, turned out to be nothing, there was nothing, wasn't the printer, was not the printer, wasn't the machine, was not the machine, not the printer, not the machine, not from the printer, wasn't a printer, was no printer",
  'was-only':
    "was just, was only, were just, were only, 's just, 's only, is just, is only, it was the, it was a, it was my, it was somebody 's, it was someone 's, that was the, that was just, that was only, that was a, that was my, turned out to be, turned out it was, came from the, comes from the, came from a, it came from, was coming from, just the, only the, was nothing but, just somebody, just someone, it was, that was",
  'could-be':
    'could be, could have been, could just be, might be, might have been, may be, may have been, maybe it was, maybe it is, maybe just, maybe the, perhaps the, perhaps it was, probably the, probably just, i think it was, i think it is, possibly the, i guess it was, must have been, must be the',
  'came-back':
    "is back, 's back, back in use, back up, back on, back in service, runs again, running again, works again, working again, ok again, okay again, fine again, safe again, good again, good to go, ready again, up again, can run again, usable again",
  'found-out':
    'found, found a, found the, found that, turned out, cause was, the cause was, because of, culprit, the culprit was, traced to, traced it to, the reason was, it was a, was a, was the, was down to',
  'lift-hold':
    'lift the hold, lifted the hold, lift the hold on, lift hold, release the hold, take the hold off, hold off, remove the hold, clear the hold, end the hold, release, released, cleared for use, free for use, freed, unhold, can be used again',
  'handing-over':
    "handing over, handing over to, hand over, hand over to, handing off, hand off, hand off to, handover, hand-over, handover to, handover for, shift 's yours, over to you, i 'm off, i hand over, i 'm handing over, all yours, my shift is over, my shift ends, end of my shift, passing on to, passing over to",
  'take-over':
    "i take over, taking over, i 'm taking over, i am taking over, i took over, i have taken over, i 've taken over, took over, taken over, i 've got it from here, i got it from here, i have it from here, got it from here, i 'm on shift now, i am on shift now, i 'll take it from here, i will take it from here, i take it from here, handover accepted, hand over accepted, handover received, received the handover, accept the handover",
  note: 'note, note for, note on, note that, note to all, nb, for the record, memo, remark, please note, good to know, take note',
  'stop-telling':
    "stop telling me, stop telling us, stop telling, stop nagging, stop nagging me, stop nagging us, stop reminding, stop reminding me, stop reminding us, stop bugging, stop bugging me, stop bugging us, stop pestering, stop asking, stop going on about, stop mentioning, stop listing, quit telling, quit nagging, quit reminding, quit bugging, don't remind me, do not remind me, don't tell me, do not tell me, don't nag, no more reminders, no reminders, no more nagging, shut up about, enough about, enough of that, enough of the, enough of this, enough of those, enough of these, that 's enough of, i don't want to hear, we don't want to hear, not interested in, leave me alone with, leave us alone with, silence",
  starting:
    "starting, i start, i 'm starting, i am starting, kicking off, kick off, about to start, going to start, gonna start, launching, setting off, sending, start the, start a, started, just started, firing up, running, running a, running the, putting a, will start, i 'll start",
  'starts-work':
    'starting on, start on, started on, starting with, start with, starting from, start from, starting to, start to, started to',
  blame:
    "who broke, who wrecked, who ruined, who killed, who messed up, who screwed up, whose fault, who 's fault, who is to blame, who 's to blame, who to blame, who jammed, who crashed, who did that to, who damaged, who bent, who left",
  caused:
    'cause, caused, causes, make, made, had, has, have, did, do, responsible for, get, got, break, broke, breaks, produce, produced',
  'on-fire': 'on fire',
  'the-lot': 'the lot, the whole lot, everything, them all, all of them, all of it, all of the lot',
  'direct-feed':
    'direct feed, a direct feed, direct drive, direct, direct extruder, a direct extruder, direct drive extruder, a direct drive',
  'bowden-feed':
    'bowden, a bowden, bowden feed, bowden tube, a bowden feed, bowden extruder, bowden drive, bowden setup',
  'all-metal':
    'all metal, all metal hot end, all metal hotend, an all metal hot end, all-metal hot end, full metal hot end, all metal heat break, all metal hot ends',
  'lined-hot-end':
    'lined hot end, ptfe lined hot end, ptfe lined, a lined hot end, ptfe hot end, lined hotend',
  'metal-nut':
    "brass nut, brass z nut, metal nut, metal z nut, bronze nut, bronze z nut, steel nut, brass screw nut, metal screw nut, brass lead screw nut, it 's brass, it is brass, its nut is brass, nut is brass, nut is metal",
  'plastic-nut':
    'plastic nut, plastic z nut, pom nut, pom z nut, polymer nut, polymer z nut, plastic screw nut, plastic lead screw nut, nut is plastic',
  'linear-rails': 'linear rails, linear rail, rails, a rail, linear guides',
  'round-rods': 'round rods, smooth rods, rods, linear rods',
  'v-wheels': 'v wheels, wheels, v slot wheels, rollers',
  'a-probe':
    'a probe, a bed probe, bed probe, a levelling probe, auto levelling, auto leveling, a level probe, an abl probe',
  'rigid-bed':
    'rigid bed, a rigid bed, solid bed mounts, solid mounts, solid spacers, a fixed bed, fixed bed, silicone spacers',
  'sprung-bed': 'sprung bed, a sprung bed, bed on springs, springs under the bed, bed springs',
  'closed-in':
    'an enclosure, enclosed, is enclosed, a cabinet, a hood, a closed chamber, an enclosed chamber',
  'carbon-filter':
    'a carbon filter, carbon filter, charcoal filter, a charcoal filter, activated carbon filter',
  'particle-filter': 'a particle filter, particle filter, a hepa filter, hepa filter',
  'a-sock': 'a sock, a silicone sock, silicone sock',
  'a-filament-sensor': 'a filament sensor, filament sensor, a runout sensor, a run out sensor, runout sensor',
  'a-mains-bed': 'a mains bed, mains bed, mains heated bed, a mains heated bed, mains bed heater',
  'ball-screws': 'ball screw, ball screws, a ball screw, ball screw z',
};
