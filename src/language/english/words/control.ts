/** What entries are taken back and put right with. One row a class; read across the main layer (`phrases.ts`). */

export const CONTROL_WORDS = {
  /** Said of entries alone, so that anything known may follow: "undo the nozzle". */
  undo: 'undo, un do, unlog, un log, revert, retract, rescind, annul, unsay, unrecord, un record, roll back, disregard, take back, back out, reverse, withdraw, undone, undoing',
  /** Said of things too: only an entry, or a word that points at one, may follow. */
  bin: "nvm, nvmd, delete, remove, erase, cancel, scratch, strike, scrap, kill, wipe, drop, ignore, forget, bin, nix, scrub, discard, void, clear, get rid of, rub out, cross out, throw out, throw away, dump, chuck, take out, take off, take away, strike out, strike through, never mind, nevermind, do not count, don't count, take, roll, rip out, lose, skip, forget about, del",
  back: 'back',
  /** What was written before, as a noun. */
  entry:
    'entry, entries, log entry, log, message, messages, post, posts, report, record, note, line, last one, that last one, the last one, last two, last three, last bit, last thing, previous one, previous, the one before, one before, last, above, bit about, the bit, thing about, part about, logging, recording, booking, input, submission, msg, comment, statement, latest one, latest, most recent one, one above, earlier one',
  that: 'that, it, this, those, these, them, that one, this one, the thing, everything, all of it, all of that, all that, all of them, the lot, both, the two, both of them, all i said, the whole thing, none of that, none of it, none of this',
  /** What is said of an entry that should not stand. */
  false:
    "never happened, did not happen, didn't happen, has not happened, hasn't happened, was a mistake, were a mistake, is a mistake, were mistakes, was mistake, was an error, was wrong, is wrong, were wrong, was all wrong, was false, is false, was a test, was just a test, was only a test, was a joke, was only a joke, was nonsense, was rubbish, is rubbish, was bogus, was by mistake, in error, was in error, is not true, isn't true, wasn't true, was not true, doesn't count, does not count, was meant for another channel, was for another channel, wrong channel, wrong chat, wrong window, wrong room, wrong thread, wrong group, false entry, wrong entry, was a duplicate, is a duplicate, was double, got logged twice, was logged twice, entered twice, sent twice, was a false alarm, false alarm, was not me, wasn't me, was nothing, is not right, isn't right, was not right, wasn't right, was incorrect, is incorrect, was a typo, was garbage, was bull, was not meant for here, wasn't meant for here, was premature, was untrue, happened",
  /** "what I wrote", "the hours I put in": verbs of the speaker's own telling. */
  told: 'wrote, write, written, said, say, told you, told, logged, log, put in, put down, put, typed, type, entered, enter, reported, report, noted, posted, post, recorded, sent, gave you, gave, claimed, booked, made, wrote down, keyed in, did log, had logged, had written, have written, have logged, have said, submitted, stated, added',
  me: 'i, we, me',
  /** Alone beside a value enough to make it a correction. */
  marker:
    'corr, corr last, transposed, digits transposed, transposed digits, that belongs to, that belongs on, it belongs to, it belongs on, belongs to, belongs on, correction, corrections, typo, typos, i meant, we meant, meant, i mean, meaning, edit, misread, misread it, mistyped, miscounted, misspoke, my mistake, my bad, my fault, fat fingers, fat fingered, fat finger, fatfingered, oops, whoops, woops, ooops, oopsie, wrong machine, wrong printer, wrong one, wrong number, wrong date, wrong day, wrong figure, wrong part, wrong material, wrong name, wrong belt, wrong fan, wrong place, the wrong, mixed up, mixed them up, mixed that up, mixed it up, mix up, muddled, muddled up, got muddled, confused, got confused, told you a lie, i tell a lie, tell a lie, a lie, i lied, told you wrong, told a lie, misled you, got it wrong, got that wrong, got wrong, i was wrong, am wrong, was mistaken, was wrong, were wrong, is wrong, made a mistake, made an error, make that, make it, make those, make my, make the last, better make, amend, amendment, erratum, slip of the, slip of, on second thoughts, come to think of it, i misremembered, misremembered, brain fart, read that as, scratch that, strike that, to be precise, more precisely, to be exact, silly me, stupid me, the one i meant, i see i, typing error, spelling error, got the wrong, had the wrong, i beg your pardon, apologies for the mistake, i mistook',
  /** Of an entry, not of a machine: "should be 6". */
  ought:
    "ought to say, ought to have said, ought to have been, ought to have read, should of been, should of said, should of read, should of, shoulda been, shoulda said, wants to be, wants to read, wants to say, should really be, should actually be, should in fact be, to read, is to read, is to be, to be read, shall read, should have been, should be, should read, should say, should've been, shoulda been, should have said, should have read, should have written, should have put, ought to be, ought to read, was meant to be, was supposed to be, supposed to be, supposed to say, was meant to say, needs to be, has to be, must be, must read, must say, has to read, has to say",
  /** Enough beside a value alone, but said of much else too. */
  hint: 'excuse me, pardon me, sorry, sry, soz, no, nope, wait, hang on, hold on, actually, rather, or rather, err, er, erm, uh, um, apologies, my apologies, pardon, well, nah, oh',
  /** "change that to", "correct the hours to": what follows is the right thing. */
  change:
    'change, correct, amend, fix, edit, set, update, alter, adjust, swap, put, move, book, log, switch, count, revise, put right, make, turn, rectify, transfer, reassign, assign, record, enter, attribute, shift, please change, belongs, belong',
  /** The fields of an entry by their names. */
  field:
    'hours, the hours, machine, the machine, printer, the printer, date, the date, day, the day, reason, the reason, spool, the spool, roll, material, the material, filament, the filament, amount, the amount, weight, number, the number, figure, the figure, count, the count, part, the part, name, time, the time, reading, the reading, run time, value, the value, quantity, grams, plastic, print',
  /** Between the thing pointed at and what it was. */
  adverb:
    "the one next to it, next to it, the one beside it, beside it, its neighbour, the neighbour, the one next door, next door, the one behind it, the one in front, the one on the left, the one on the right, the one to the left, the one to the right, the one over, the other one, the one opposite, dated, i just made, just made, i made, actually, really, only, just, in fact, of course, in truth, rather, instead, for, on, about, at, with, from, in, a, an, the, of, to, into, as, my, by, and, but, btw, by the way, fyi, more like, more, like, please, pls, plz, thanks, thank you, ta, cheers, yes, now, here, there, though, after all, all along, in reality, again, just now, before, earlier, above, that is, so, then, can you, could you, would you, will you, can we, could we, i want to, i need to, i would like to, i 'd like to, let's, let us, i have to, we need to, want to, need to, kindly, talking about, talking, about, i was talking about, i was, at all, not",
  /** Told once more of the same deed: "I did that yesterday", "that was done on Monday". */
  deed: 'did that, did it, did this, was done, were done, happened, took place, that was done, it was done, was made, was from, was for',
} as const;
export type ControlCode = keyof typeof CONTROL_WORDS;
