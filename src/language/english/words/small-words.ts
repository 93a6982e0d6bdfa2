/** Small words: mood, reference, role. One row a class. */
import type { Fn, Joint } from '../../senses.ts';

export const FN_WORDS: Readonly<Record<Fn, string>> = {
  not: "not, at no time, at no point, in no case, at no stage, under no circumstances, never, didn't, didnt, haven't, havent, hasn't, hasnt, hadn't, hadnt, don't, dont, doesn't, doesnt, isn't, isnt, aren't, arent, wasn't, wasnt, weren't, werent, couldn't, couldnt, won't, wont, wouldn't, wouldnt, nor, neither, without, ain't, aint, shouldn't, shouldnt, needn't, cannot, can't, cant, n't, hardly, no longer, yet to, instead of, rather than, mustn't",
  cant: "can't, cant, cannot, couldn't, couldnt, unable to",
  will: "next time, bet, i bet, bet you, i would bet, my money is on, ten quid says, will, 'll, shall, going to, gonna, gunna, about to, ill, off to, plan to, plan is to, the idea is to, idea is to, the plan is, plans to, planning to, planning on, gonna go, intend to, i'm on it, on it now, want to, wanna, would like to, hoping to, hope to, aim to, aiming to, will be, can do, can take, happy to, fancy doing, intending to, my plan is to, gunna",
  should:
    "should, 'd be good to, 'd be nice to, 'd be great to, 'd be lovely to, 'd be good if, 'd be nice if, 'd be great if, 'd be lovely if, would be nice to, would be great to, would be lovely to, would be good if, would be great if, would be lovely if, i 'd appreciate, we 'd appreciate, would appreciate, would be grateful, ought to, ought to be, need to, needs to, needs, need, must, has to, have to, supposed to, could do with, is to be, to be, to do, needing, should be, wants, needed soon, got to, gotta, better, had better, would be good to, due for, due a, might want to, may need, wants to be, meant to, should probably, deserves, is crying out for, want doing, worth, ideally, we should, wants doing, needs doing, need doing, wants a, overdue for, probably needs, likely needs, requires, require, up for, could use, oughta, will need, 'll need, who wants to, i'd, supposed to be, better be",
  'had-to':
    'had to, needed to, managed to, was able to, finally got round to, got round to, got around to, ended up, ended up having to, took the time to, went and, finally managed to, had another go at, had a go at, took the chance to, took the opportunity to, remembered to, went ahead and, found time to, has had to, have had to, been able to, able to, got to, had time to, have managed to, has managed to, were able to, decided to, got about to, bothered to, got on and, having to',
  if: 'if, unless, whenever, in case, suppose, supposing, assuming, if only, provided, as long as, in the event, when it, if it, should it, whether',
  would:
    "would, could, might, would have, could have, wouldn't, would be, should have, might have, was going to, were going to, wish, wished, ought to have, nearly, almost, meant to, wanted to, was about to, were about to, was supposed to, were supposed to, thinking of, thinking about, thought about, tempted to, considering, meaning to, was planning to, been meaning to, petition to, motion to, vote to, i vote, i vote we, thought of, expecting, expect it to, expected to take, expected to need, estimate, estimated, estimating, the estimate, est., eta, forecast, projected, been thinking, intended to, planned to, toying with, debating, hopefully, i hope, let's hope, pressed print, just hit print, pressed go, just hit go, pressed start, just hit start, pressed play, booked, booked in, booked out, is booked, reserved, has reserved, queued, queued up, in the queue, lined up, sooner or later, over time, with age, with time, that's life, that 's life, assume, let's assume, pretend, let's pretend, let's say",
  please:
    "when you get a sec, when you get a chance, when you get a minute, when you get a moment, when you get a mo, when you have a minute, when you have a moment, when you have time, when you've got a minute, when you've got time, when you can, if you get a chance, if you get a minute, if you get time, if you have time, if you have a minute, if you've got time, if you can, if you could, if anyone has time, if anyone gets a chance, if someone has time, when somebody has time, when someone has time, when someone gets a minute, any chance you could, any chance someone could, any chance of someone, any chance somebody could, any chance of you, who fancies, who feels like, who would like to, who'd like to, any takers for, any takers, anyone feel like, please, pls, plz, can you, could you, would you, can someone, could someone, will someone, someone should, somebody should, don't forget, dont forget, remember to, make sure, be sure to, would someone, can somebody, could somebody, would somebody, can anyone, could anyone, anyone mind, would anyone, will somebody, someone please, will you, whoever, if someone could, someone needs to, somebody needs to, you should, you need to, you have to, you must, you could, you might, do me a favour, mind doing, let's, lets, let us, can we, could we, shall we, you ought to, anyone fancy, who wants to, who can, who could, somebody must, someone must, someone has to, somebody has to, please can, someone ought to, anyone up for, are you able to, kindly, could the next, next person, anyone free to, anyone able to, someone will have to, will you please, volunteer, volunteers, won't you, you'd better, need someone to, need somebody to, want someone to, would be nice if, somebody ought to, mind giving, would you mind, can one of you, could one of you, one of you, you will need to, you'll need to, somebody will have to, might you, who's free to, who is free to, who's up for, everyone should, everybody should",
  i: 'i, me, meself, myself',
  we: 'we, us, ourselves',
  you: 'you, ya, u, yous',
  someone: 'someone, somebody, some one, they, whoever',
  it: 'it, she, he, that one, the thing, this one, its, her, him, the same one, the same machine, the same printer, same machine, same printer, that machine, that printer, this machine, this printer, the machine, the printer',
  they: 'they, them, those, these, these two, those two, the two, those ones',
  person:
    'late lot, early lot, night lot, evening group, morning group, tomorrow morning crew, night shift, day shift, the intern, the students, boss, the apprentice, the client, the director, director, students, the boss, a student, the new guy, the kids, volunteers, a member, the technician, my colleague, colleague, late shift, early shift, evening shift, morning shift, the designer, the manager, manager',
  too: 'followed on, followed suit, had the same, got the same, had the same done, got the same treatment, had the same treatment, so can, so was, so were, and so was, and so were, so could, and so can, so may, too, as well, also, likewise, ditto, same again, same for, same on, same with, same goes for, the same on, the same for, same thing on, same deal on, and same, likewise on, ditto on, ditto for, same to, as did, so did, so has, and so has, the same to, same treatment for, the same with, the same again on, same job on, did the same on, did the same to, did the same for, did the same with, same story on, same again on, so does, so is, repeated on, repeated for, repeat on, ditto with, the same goes for, the same happened on, likewise for, gave the same treatment to, same drill on, same procedure on, the same thing on, same thing to, same thing with, same thing for, plus the same on, along with, same at, as has, as is, as does, did likewise on',
  same: 'same, the same, identical',
  both: 'both, the pair, the two of them, both of them, the two, both machines, both printers, the pair of them, the two machines',
  all: 'all, all of them, every machine, every printer, everything, the lot, the whole lot, every one, all machines, all printers, all the machines, all the printers, all eight, all eight machines, all eight printers, all the eight, the whole fleet, each machine, each printer, the whole farm, whole lot, every single one, all of the machines, all of the printers, each one, all of em, all the rest, the entire fleet, all 8, all 8 machines, all 8 printers, everyone, the whole room, each and every, the full set, entire fleet, whole fleet, all of the printers, the whole row, the whole bunch, each of the machines, each of the printers, every one of them, each of them, the fleet, all our printers, all our machines, all round',
  other:
    'other, the other one, the other, others, the others, the rest, rest of them, the other machines, the other printers, the rest of them, other machines, other printers, all the others, all others, other ones',
  except:
    'all of em but, all of em except, all of em bar, every machine but, every printer but, every one of them but, all machines but, all printers but, all the machines but, all the printers but, every machine except, every printer except, all machines except, all printers except, all the machines except, all the printers except, every machine bar, every printer bar, all of them but, all of them bar, all of them except, with the exception of, the exception being, except, but not, apart from, bar, minus, excluding, save for, other than, except for, all but, everything but, every one but, every one bar, less, except on, aside from, not including, excepting, barring, leaving out, all bar, everything bar, everything except, everyone but, all except, all apart from, all minus',
  latter: 'latter, the latter, the second one, the last one of those, the second of those',
  former: 'former, the former, the first one of those, the first of those',
  each: 'each, apiece, each one, per machine, each time, a piece, a pop, every one of them, per printer',
  new: 'new, fresh, brand new, spare, replacement, newer, another new, fresh new, shiny new, a new one, new one, new ones',
  old: 'old, previous, last one was, old one, old ones, the old one, the old, previous one, outgoing, the last one, the previous one, the one in there, the original, the existing, original one, ex, first one, existing, the old ones, original, original ones',
  again: 'again, once more, another time, once again, yet again, afresh, anew',
  still: 'still, yet, even now',
  anymore:
    "is away since, is away now, are away now, is away, any more, anymore, no more, no longer, gone, gone away, has gone, is gone, stopped, has stopped, have stopped, cured, disappeared, sorted itself, sorted itself out, went away, vanished, cleared itself, cleared up, fixed itself, are gone, cleared up by itself, all gone, has disappeared, went, have gone, is history, no sign of, no further, has gone away, ceased, has cleared, solved, resolved, has ceased, is no more, isn't there, ended, not there, subsided, finally stopped, stopped happening, behind us, over and done, never came back, hasn't come back, not come back, hasn't returned, stopped by itself, died away, no trace of, is over, cleared, free of, rid of, a thing of the past, gone for good, not since, hasn't happened since, not any, now gone, has vanished, has stopped now, is sorted, is fixed, is cured, is solved, no repeat",
  now: 'now, by now, right now, currently, at the moment, atm, at present, presently, for now, this minute, as of now, from now on',
  just: 'just, recently, freshly, newly, finally, already, earlier, only just, just now, this minute, lately',
  be: "is, are, was, were, be, been, 're, am, 'm, being, 's, looks, look, looked, seems, feels, seem, feel, felt, seemed, sounds, sound, became, gets, getting, went, goes, came, gone, got, appears",
  have: "has, have, had, 've, 'd, having, 's, got",
  do: 'does, do, did, doing, done',
  for: 'for',
  to: 'to, into, onto',
  with: 'with, using, w, via',
  on: 'on, onto, upon, on top of',
  in: 'in, inside, into, within',
  of: 'of',
  from: 'from, out of, off of, starting',
  off: 'off, off of',
  out: 'out, out of, clean out of, fresh out of, right out of, completely out of, totally out of, plumb out of',
  at: 'at, @',
  by: 'by',
  until: 'until, till, til, til, not before, up to, up until, not until',
  since: 'since, as of',
  every: 'every, per, once a',
  than: 'than, compared to, compared with',
  under: 'under, below, beneath, underneath, behind',
  who: 'who, whom, whose, who all, which of us, which of you',
  what: 'what, wot, whats, wat, whatever, what all, wots, what kind of, which',
  when: 'when, whens, what day, what date, how soon, by when, which day, what date, which date, what day, which day, on which date, on what date, on which day, on what day',
  why: "why, whys, why's, how come, what makes, what is making, what causes, how is it that, what made, what would make, what for",
  how: 'how, hows',
  which:
    'which, which ones, which one, which machine, which machines, which printer, which printers, which of them',
  where: 'where, wheres',
  any: 'any, anything, anyone, anybody, ever, any one, any of them, either',
  article: 'a, an, the, ye, th',
  this: 'this, that, these, those',
  my: 'my, our, your, his, their, theirs, hers, mine, ours',
  its: 'its, it s, her, his, their',
  or: 'or, either, alternatively',
  more: 'more, another, further, extra, additional, longer',
  less: 'less, fewer',
  much: 'much, a lot, lots',
  many: 'many',
  long: 'long, far',
  often: 'often, frequently, many times, regularly',
  last: 'last, most recently, latest, last time, previously, most recent, the last time, lately, recently, past, previous',
  left: 'left, remaining, still have, on hand, remain, in hand, in reserve, still got, left over, left on the shelf, left in the drawer, still there, left in stock, still in stock, left in the box, left in the cupboard, in stock, to go',
  maybe:
    'maybe, perhaps, possibly, probably, i think, think, guess, i guess, not sure, might have, may have, presumably, apparently, i believe, iirc, afaik, i reckon, prolly, could be',
  unsure:
    "can't remember, cant remember, don't remember, dont remember, not sure which, can't recall, cant recall, one of them, one of the, one of these two, one of those two, one of the two, one of these, some machine, i forget which, forget which, don't know which, dont know which, not sure, no idea which, forgot which, dunno which, dunno, can't tell which, one or the other, one of those, don't recall, was it, or was it, couldn't say which, can't say which, whichever, one of em, don't know, forgotten which, no idea, not certain, or something, or maybe, unsure, hard to say, who knows, one of our, lost track, not 100 sure, some printer, i'm not sure, lost count, not certain which, something or other, or so i think, or whatever",
  as: 'as',
  no: 'no, nope, nah, zero, nay, nil, neither',
  yes: 'yes, yep, yeah, yup, aye, ok, okay, sure, correct, exactly, right, indeed, affirmative, please do, yes please, go ahead, do it, ja, y, of course, absolutely, that one, spot on, ye, that is right, sure thing',
  nothing:
    'nothing, not a single one, but not a single, not even one, none, zilch, nada, nowt, zero, not a thing, not a single, no prints, idle, 0',
  nobody: 'nobody, no one has, noone has, nobody has, no one, noone, no body, none of us, none of you',
  some: 'some, a few, several, a bit of, loads of, a load of, a bunch of, few, plenty of, various, numerous, a little, a handful of, heaps of',
  another: 'another, a further, one more, an additional, an extra, a second',
  over: 'over, past, half past, quarter past, above, beyond',
  instead: 'instead, rather',
  ago: 'ago',
  later:
    'later, later on, some time, sometime, some day, someday, eventually, soon, afterwards, one day, another day, another time, in due course, when there is time, when we have time, at some point, some other time',
  'number-sign':
    '#, no, nr, number, num, printer, machine, unit, no ., nr ., nos, printer no, printer number, machine number, machine no, printer nr, printers, machines, station, numbers, units, printer #, machine #',
  'did-it':
    'did it, did them, did that, done it, did this, got it done, job done, all done, took care of it, did so, sorted it, seen to, been done, was done, is done, are done, were done, has been done, have been done, got done, done and dusted, ticked off, completed, taken care of, done, got sorted, dealt with, been seen to, done today, now done, finished, sorted, all sorted, been sorted, has been seen to, checked off, complete, crossed off, is sorted, are sorted',
  sorry:
    "sorry, oops, whoops, correction, my bad, i mean, i meant, scratch, wait, hang on, actually, make that, make it, rather, meant, typo, mistake, err, er, erm, my mistake, edit, hold on, no wait, apologies, that should, should read, should be, should say, should have been, should have said, should've been, ought to be, ought to read, fat fingers, misread, mistyped, read that as, i misread, i mistyped, got that wrong, i got that wrong, oh no, i tell a lie, tell a lie, i lie, no i lie, *, was meant to be, correcting, correct that, amend, amend that, amend that to, change that to, change it to, make my, make the last, that was actually, that's actually, nope, fix that, fix my, supposed to be, wrong one, my mistake it, fix the last, change my, mixed up, i mixed up, mix up, muddled, i muddled, got mixed up, got muddled, misremembered, mis typed, my apologies, strike that",
  meant: 'i meant, meant, i mean, meant to say, meant to write, meant to put, i meant to say, i was meaning',
  wrong:
    'wrong, mistaken, incorrect, not right, in error, by mistake, a mistake, an error, false, mistakenly, erroneous, bogus, duplicate, double, twice, nonsense, rubbish',
  only: 'only, just the, except only, solely, but one, merely',
  up: 'up',
  down: 'down, down to',
  rest: 'rest, remainder',
  these: 'these, these two, those, those two, just those, only these, only those, just these, these ones',
  after: 'after, following, afterwards, once, upon, as soon as, after that',
  before: 'before, ahead of, prior to, beforehand',
  while: 'while, whilst, during, meanwhile, as i was',
  here: 'by the window, near the window, next to the window, beside the window, at the window, under the window, by the door, near the door, next to the door, here, over here',
  thanks:
    'thanks, thank you, ta, cheers, thx, ty, thank, kudos, props to, shout out to, well done, nice one, good job, bravo, great work, big up, tysm',
  possessive: "'s, '",
  back: 'back',
  through: 'through, via, thru',
  like: 'like, similar to',
  able: 'able, fit, ready, free, available, good, ok, okay, safe, alright, up, fine',
  really:
    'catching up, catch up, playing catch up, all told, all in all, altogether, really, actually, truly, honestly, seriously',
  'first-one':
    'the first one, first one, the first, first, number one, option 1, option one, the former, 1st, 1st one',
  printer: 'printer, 3d printer, printers',
  joke: 'jk, just kidding, joking, kidding, only joking, not really, jokes, /s, /j, just joking, joke, is a joke, was a joke, no just kidding',
  laugh: 'lol, haha, hahaha, hah, lmao, rofl, hehe, xd, lolz, lmfao, ha ha, heh',
  reported:
    'has told that, have told that, has said that, have said that, told me that, told us that, remember when, remember the time, do you remember when, before my time, back in the day, in the old days, years ago, ages ago, claimed, claimed that, heard that, he heard, she heard, they heard, overheard, heard a story, heard from, the note says, a note says, note says, the leaflet says, the newsletter says, newsletter says, the last owner, last owner, previous owner, the old owner, at my old job, at my last job, in my old job, my old school, at the other school, another school, in a talk, at a talk, in a video, in a workshop video, wonders, wonders why, wondered why, asked whether, asked if, asked me if, asked me whether, wants to know, wanted to know, is said to, are said to, it is said, reportedly, i was told, we were told, i am told, was told that, rumour, rumor, gossip has it, hearsay, in a dream, a guy on, a guy at, a guy in, some guy, some bloke, a bloke at, a friend of mine, a mate of mine, my mate, my friend, a friend, my buddy, my cousin, my neighbour, my neighbor, at the other space, the other space, another space, the other makerspace, another makerspace, their makerspace, at uni, at college, at my old place, says she, says he, says they, thinks, thinks that, believes, believes that, suspects that, horoscope says, fortune cookie says, ad says, advert says, lid says, box says, it says on, slicer says, the slicer says, slicer reckons, slicer estimates, slicer estimate, according to the slicer, sliced at, slices at, preview says, i was like, he was like, they were like, someone on the, rumour has it, rumor has it, word has it, legend has it, word is, they say, people say, swore, swears, swear that, insisted, insists, was convinced, were convinced, was sure that, were sure that, was certain that, said that, somebody said, someone said, says that, according to, told me, reckons, claims, quote, quoth, wrote, the manual says, manual says, it says, the book says, the sheet says, the label says, the sign says, the guide says, the video says, says the manual, read that, says here, the docs say, in the manual, the poster says, a forum says, forum says, the internet says, tutorial says, the tutorial says, the film, my dream, i dreamt, dreamed, dreamt, the script, i read somewhere, read somewhere, the instructions say, instructions say, the docs, the manual, a video, the video, the maker says, maker says, the forum, some forum, in the script, line in the play, in the play, the datasheet, i dreamed, in theory, imagine, imagine if, nobody said, no one said, never said, i never said, who said, guide, supposedly, allegedly',
  during:
    'open day, open days, open house, open evening, open studio, during, mid, halfway through, in the middle of',
  almost: 'almost, nearly, half, partly, partially, not quite, halfway, half way',
  'let-me':
    "let me, lemme, i'll, i will, i can, i 'll, i can take, i'm going to, i am going to, i could, i got, ive got, my turn to, i got this, i'm gonna, leave it to me, leave it with me, i volunteer, dibs on, dibs, i 'm going to, i 'm gonna, i shall, i plan to, i 'm on, i'm on, i'm doing, i 'm doing, i want to, i intend to, count me in for, i 'm taking, on my list, bagsy, i'm up for, i 'm up for, i promise to, we'll, we 'll, we will, we 're going to, we 're gonna, mine to do, i am doing, i am on, shotgun, on my plate, i 'd be happy to, i 'm happy to, i can do, i 'll be, i volunteer for, leave that to me, will do, i have to do, i am gonna, i 've got, put me down for, me to do, i'm taking, i offer to, ill, i take, i'll take, put my name on, put my name down for, putting my name down for, putting my name on, count me in on, i'm down for, i 'm down for",
  range: 'to, through, thru, up to',
  mention: '\uFFF9',
  'said-quote': '\uFFFC',
  there:
    'there, over there, next door, across the corridor, down the hall, down the corridor, across the hall, upstairs, downstairs',
  ready: 'ready, all set, prepared, fit, set',
  far: 'far, so far',
  /** Of a whole row: "petg throughout". */
  throughout:
    'throughout, across the board, everywhere, exclusively, all the way through, all through, start to finish, from start to finish, without exception, in every case, in each case, nothing but, none but, nothing else than, every time, all the time, the whole time, for the lot, for the whole lot, one and all',
};

/** What opens a new stretch. Marks are added by the splitter. */
export const JOINT_WORDS: Readonly<Record<Exclude<Joint, 'start'>, string>> = {
  sentence: '',
  question: '',
  comma: '',
  colon: '',
  and: 'and, &, plus, and also, as well as, n, +, and then also',
  but: 'but, however, although, though, except that, tho, only that',
  so: 'so, therefore, hence, thus, so that, which is why, that is why, so i, consequently',
  because:
    'because, cos, coz, cuz, bc, bcs, as it, as the, as its, due to, owing to, because of, which, given that, seeing as, after it, when it, whose, as they, thanks to, on account of, as one, due to a, after the, after a, while it, as soon as, whereupon, as i, whereas, seeing that, for being, on account, after its',
  next: 'then, and then, afterwards, after that, finally, lastly, firstly, secondly, meanwhile, next up, after which, followed by, on top of that, while there, while at it, in addition, furthermore, moreover, additionally',
  dash: '',
  bracket: '',
};
