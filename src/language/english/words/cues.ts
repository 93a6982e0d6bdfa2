/**
 * What questions are put together from, one row a cue. Words, not sentences: which topic a question has is settled
 * by the rows of `english/ask/`, which cross these with what stands beside them.
 */
import type { AskCue } from '../../senses.ts';

export const CUE_WORDS: Readonly<Record<AskCue, string>> = {
  overdue:
    "shouldve been done, shouldve done, should have been done by now, overdue, over due, overdew, past due, late, behind, neglected, missed, did we miss, we miss, past its date, past their date, outstanding, in arrears, running late, slipped, slipped past, gone past, backlog, red list, lapsed, past its interval, past their interval, past its due date, past their due date, over its interval, over their interval, in the red, long past, let slide, should have done, should have been done, should've done, ought to have been done, most urgent, forgotten about, been putting off, fallen behind",
  due: 'due, coming up, upcoming, falls due, falling due, fall due, come due, coming due, maintenance plan, plan, planned, scheduled, schedule, agenda, in the pipeline, on the cards, looming, around the corner, round the corner, approaching, due list, pending, lined up, on the books, comes up, come up, comes next, waiting for me, waiting for us, up next',
  'to-do':
    "pm list, pm jobs, to do list, todo, to do, what to do, needs doing, need doing, wants doing, want doing, needs attention, need attention, needs servicing, need servicing, needs maintenance, needs work, needs love, need love, needs looking at, need looking at, be done, to be serviced, be serviced, needed doing, needs oiling, need oiling, needs cleaning, need cleaning, anything to do, anything needed, on the list, list of jobs, job list, task list, work list, worklist, maintenance list, morning list, chores, chore, jobs, tasks, which task, which job, what task, what job, day's work, maintenance due, what maintenance, any maintenance, what should i do, what should i be doing, what can i do, what could i do, what shall i do, anything i can do, anything i could do, what do i need to do, what am i doing, need to do, have to do, what have we got on, anything on, on for today, needs anything, need anything, needs something, need any attention, anything planned, what needs, what else is there, on today's list, should be doing",
  next: "next, next due, next time, again due, due again, due next, come round again, come up again, come round, comes round, comes around, come around, time to, time for, what's next, what 's next, whats next, what is next",
  until:
    'until, till, til, to go, before it needs, before it is due, left until, before the next, much longer, until the next, how soon',
  'how-long':
    'how long, how long time, how many days, how many weeks, how many months, how many years, how many hours, how many hrs, how many h, how many running hours, how many print hours, how many grams, how many metres of, how many prints',
  'how-many':
    'how many, how much, number of, count of, how many hours, how many hrs, how many h, how many grams, how many kilos, how many kg, how many metres, how many prints, how much time, what amount of, how many more, how much more, what number of',
  'how-often':
    'how often, how frequently, how regularly, how many times, how rarely, every how many hours, at what interval, what interval, how often is, how often are',
  'how-tight':
    'how tight, how hard, how firm, how taut, how strong, how loose, how stiff, how tightly, how strongly, how firmly, how far do i turn, how far should i turn, how far to turn, how far do you turn, how much tighten, how much should i tighten, how much do i tighten, how much slack, how much gap, how much play, how much tension, how much torque, how much per turn, how far should, how tense',
  'since-when':
    'since when, since how long, since what date, since which date, from when, how long already, for how long, since how many hours',
  ago: 'how long ago, how many days ago, how many weeks ago, how long since, how long is it since, how long has it been since, how many days since',
  old: 'how old, age, age of, ages of, oldest, newest, youngest, how worn, how aged, miles on, mileage on, how new, which is older, older',
  'in-place':
    'been in, been on, in there, on there, fitted, has that, has this, on that, on it, got on it, have on it, have on, has on, done, seen, is in, are in, been, got, already, has it got, has it been, been running on, running on, run on, had',
  hours:
    'hours, hrs, hours run, print hours, print time, run time, runtime, printing hours, running hours, machine hours, operating hours, hours on, hours for, hour total, hour count, total hours, hours so far, hours printed, hours logged, running time, printing time, operating time, clock',
  total:
    'total, totals, tot, in all, in total, altogether, all told, sum of, overall, so far, usage, throughput, mileage, consumption, filament consumption, used up, how busy, busiest, hours in total, hours total, hours?, filament used, grams run, total run, how far has, on the clock, on the counter, run the most hours, output',
  filament: 'filament, plastic, material, grams, kilos, kg, metres, meters, spools, kilos of, grams of',
  most: 'most, the most, most often, least, worst, which machine, which printer, which one',
  log: 'log, logs, logbook, log book, history, story of, records, record, journal, entries, last entry, last entries, timeline, activity, repairs, repair history, service history, work done, list of repairs, logged, diary, did last, events',
  happened:
    "happened, happened to, what was done, what has been done, what's been done, been done, been up to, done lately, went on, has been going on, what got done, work was done, anything done",
  left: 'left, remaining, still have, any more, in reserve, still got, is there another, another, remain',
  shelf:
    'in stock, stock, stock of, stock levels, stock list, shelf, on the shelf, drawer, in the drawer, cupboard, in the cupboard, in the store, inventory, on hand, stocked, stocktake, shelf count, supplies, low stock, in the box, store room, storeroom, any in, in house, anywhere, out of stock',
  spare: 'spare, spares, spare parts, replacement, backup, extra, reserve',
  have: 'do we have, have we got, have we, do we still have, got any, have any, are there, is there, there are, any, enough, do i have, have you got, we have, i have, we got, have got, still got, do we own',
  'run-out':
    'run out, run out of, running low, running out, running short, runs out, run low, low on, short of, short on, out of, run short, low on the shelf, getting low, low, nearly out, last of the',
  order:
    'order, to order, order more, reorder, to reorder, reordering, need ordering, needs ordering, should we order, what should we order, should i order, shopping list, need to order, need to buy, to buy, replenish, buy',
  cause:
    "why, whys, what could, what might, what can cause, what causes, what would, what can make, what makes, what makes it, what is making, what's making, what's causing, what is causing, what could it be, what can it be, what might it be, what on earth, cause, causes, reason, reasons, reasons for, the reason, how come, likely cause, diagnose, troubleshoot, what's behind, behind the, what leads to, what usually causes, root cause, usual suspects, culprit, help me diagnose, what to check, where do i start, where do we start, where to start, where would you look, where should i look, where do i look, what should i check, what do i check, what shall i check, what to look for, what should i look at, what do i look at, what to try, what do i try, what should i try, how do i fix, how to fix, how do we fix, how can i fix, how do i stop, how to stop, how do we stop, how can i stop, how can we stop, how do i cure, how to cure, how do i get rid of, how to get rid of, get rid of, cure for, fix for, remedy, solve, solution, what to do about, what to do against, what can i do about, what can i do against, what should i do about, what do i do about, what do we do about, what helps, help against, can anyone explain, most likely, what is the problem, what else could, what else can, explain why, due to what, for what reason, wtf, could cause, might cause, would cause, could be doing, is doing that, doing that, what gives, what it might be, what it could be, what that could be",
  idea: 'ideas, any ideas, thoughts, suggestions, anyone, any idea, any thoughts, help, advice, any advice, tips, clues, what to do, what now, what gives, any clue, any suggestions, any tips, hints, what could cause that, what could that be, what could it be, what might it be, what on earth could it be, what is it, any hints, what do you think',
  state:
    "status, status of, state, state of, stat, sitrep, condition, condition of, how is, how's, how are, hows, how goes, how does, how did, how do things look, how is it going, what's up with, what is up with, what's wrong, what is wrong, what's wrong with, what is wrong with, wrong with, what's the matter, what's with, what's going on with, what's happening with, what about, what's the deal, what's the story, what's the story with, the deal with, how are things, news on, any news, doing ok, working, working ok, works, does work, up, down, back up, still down, back, out of action, out of order, out of use, in use, is anyone using, anyone using, using, available, free, usable, offline, online, off limits, in service, broken, healthy, health, fixed, fixed yet, repaired, ready yet, can i use, can we use, safe to use, ok to use, am i ok to use, can i print, running, alive, ok, okay, alright, running ok, open, still open, in bits, is up, what's down, what is down, what's out, is everything, how is everything, everything, in what state, work again, printing, anything wrong with, anything wrong",
  overview: 'overview, summary, report, update, sum up, picture, briefing',
  rundown:
    'run down, rundown, give me the run down, brief me, catch me up, catch up, fill me in, up to speed, get me up to speed, bring me up to speed, bring me up to date, up to date, low down, lowdown, debrief',
  fit: 'readiness, can, could, will, would, is, ok, okay, ready, fit, good, safe, able, fine, up to, up for, trust, handle, manage, alright, may, good for, cope, survive, make it, make it through, take on, suitable, capable, possible, in shape, risk, rely on, last, finish, get through, does',
  'long-job':
    'all nighter, all-nighter, an all nighter, overnight, over night, all night, all weekend, the weekend, weekend, this weekend, over the weekend, long print, long job, long run, big print, big job, marathon, all day, through the night, unattended',
  lifetime:
    'lifetime, life time, life of, expected life, average life, lifespan, life span, life expectancy, service life, mean life, average lifetime, durability, life, longevity, wear out, usually last, normally last, typically last, generally last, tend to last, last on average, last longer, last here, last us, lasts, live, lives, living, endure',
  expect:
    'expect from, can i expect, can we expect, to expect, get out of, get out of a, out of a, good for, be good for, go for, hold, stand, run for, survive, worth changing',
  interval:
    'interval, intervals, service interval, stretch the interval, too often, often enough, too seldom, too rarely, too early, too late, too soon, too long, too short, soon enough, early enough, really need, really have to, really necessary, necessary, need changing every, need replacing every, sensible interval, realistic, sooner, really needed, unnecessarily',
  habit:
    'normally, usually, typically, generally, on average, as a rule, tend to, in general, average, ordinarily, in our printers, in practice, should',
  'right-for':
    'is it normal, normal that, right for, ok for, enough for, sensible for, reasonable for, right, enough, sensible, reasonable, okay for, about right',
  worse:
    'getting worse, worse, got worse, become worse, any worse, getting better, any better, got better, improving, improved, deteriorating, worse lately, on the increase, on the rise, rising, increasing, increase, climbing, going up, getting more, becoming more, trend, trending, worse than, better than, going downhill, less reliable, more reliable, changed for the worse',
  'more-often':
    'more often, more frequent, more frequently, less often, rather more often, more than usual, more than before, more than it did, more than it used to, more than last, more lately, more these days, more and more, fewer, less than, more jams, most often, more than they did, more than they used to, often than, happening more',
  trouble:
    'trouble, problems, problem, faults, fault, failures, failure, failing, breakdowns, breakdown, breaks down, break down, broke down, breaking down, stoppages, jams, jammed, jam, clogs, clog, clogged, crashes, failed prints, prints failed, failed, fail, fails, issues, incidents, misprints, down the most',
  downtime:
    'downtime, down time, uptime, availability, reliability, reliable, how reliable, failure rate, fault rate, mtbf, fault count, problem machine, worst machine, fault frequency',
  handover:
    'handover, handover sheet, handover note, handover notes, handover list, handover book, hand over sheet, hand over note, hand over, hand-over, shift change, shift report, shift summary, shift notes, end of shift, start of shift, shift handover, shift is over, my shift, taking over, take over, i take over, changeover notes, coming on shift, on shift, before i go, clocking off, came on shift, just came in, starting my shift, start my shift, since my last shift, what have i missed, what did i miss, have i missed, did i miss, i missed, anything i should know, while i was away, while i was out, while i was gone, shift briefing, shift starts, shift ends, hand it over, need to know for my shift, i was off',
  crew: 'next shift, late shift, early shift, night shift, evening shift, morning shift, day shift, evening crew, night crew, morning crew, late crew, early crew, next one, next person, next crew, next lot, relief, crowd, shift, colleagues, successor, whoever is next, whoever comes next',
  'pass-on':
    'pass on, tell, tell them, leave for, leave, know, should know, say to, mention, brief, write down for, report to, let know, warn, notes, note for',
  help: 'help, help me, commands, command, menu, manual, cheat sheet, examples, instructions, usage help',
  bot: 'does this thing, this thing understand, actually understand, can this thing, what can i type, what can i even type, what do i type, what can i even say, what can i even ask, this bot, the bot, bot, fettle, chatbot, can you do, do you do, what can you, can i ask, can i ask you, do you understand, you understand, who are you, what are you, are you a bot, words do you know, commands do you know, do you know what i, how do you work, how does this work, how this works, how do i use this, how to use this, use you, talk to you, what are you for, what are you good for, what can i say, what can i do here, what can i write, write to you, may i write, can i write, should i write, should i type, do i type, what format, which commands, what commands, ask you, tell you, can you help',
  'entry-verb':
    'log, record, report, note, enter, undo, correct, delete, take back, change an entry, fix an entry, write, put in, add a log, type, tell you, ask you, entry, an entry, a log',
  way: "in which manner, in what manner, in what way, in which way, what way, how do i, how do you, how do we, how to, how should i, how should we, how should you, how can i, how can we, how can you, how i can, how i should, how i do, how i, how we, how would i, how would you, how shall i, how shall we, how does one, how do one, how did you, how ought i, how must i, how d'you, how exactly, how best, steps for, steps, step by step, procedure, instructions for, instructions, guide for, guide to, guide, walk me through, talk me through, teach me, tutorial, what tools, which tools, which tool, what do i need for, what do we need for, what do i use to, what do you use to, what do i need to change, what do i need to swap, best way, right way, proper way, correct way, way to, the way, trick to, technique, recipe for, routine for, tips for, what's involved in, what is the way, checklist",
  lubricant:
    'what oil, which oil, what grease, which grease, what lubricant, which lubricant, what kind of oil, what kind of grease, which kind of oil, which kind of grease, what sort of oil, what sort of grease, which type of grease, what type of grease',
  spec: 'freq, sing at, belts sing, torque, tension, newtons, newton, nm, hz, hertz, frequency, e steps, turns, per turn, gap, pitch, clearance, tightness, what force, target value, target frequency, tightening torque, thickness, tenth, what steps, how many steps, turn the knob, distance, tension value, belt tension, belt frequency, millimetres, how many mm',
  board:
    'status, sitrep, stat, state of play, state of the nation, overview, print room, how are the printers',
  tell: "gimme, gimme the, gimmie, state the, please state, advise, please advise, specify, show, show me, list, tell me, tell us, give me, give us, remind me, name, explain, walk me through, talk me through, teach me, get me, bring me, fill me in, catch me up, brief me, any, anything, anyone, got any, need to know, i need to know, i want to know, i'd like to know, i would like to know, i'd like to see, i want to see, looking for, steps, procedure, instructions, guide, best way, what, when, why, who, which, where, how, hand over, write me, write the, print me, print the, display, find, check if, check whether, check when, let me know, say",
  embedded:
    "i wonder, i was wondering, was wondering, wondering, wonder, do you know, does anyone know, does anybody know, anyone know, anybody know, anyone remember, anybody remember, does anyone remember, does anybody remember, happen to know, happen to remember, i'd like to know, i'd love to know, i need to know, i want to know, can anyone tell me, can someone tell me, could someone tell me, can you tell me, could you tell me, can somebody explain, can someone explain, could you show me, can you show me, could you list, can you list, could you look up, can you look up, could you give me, can you give me, can you explain, could you explain, tell me, let me know, anyone recall, do you remember, do we know, is it known, would you trust, would you risk, would you dare, would you leave, can we use, can i use, could we use, may we use, not the faintest, no idea, do you think, i'd like to see, i ask myself, question is",
  strong:
    "overdue, due, status, state, stock, history, handover, hand over, usage, hours, hrs, total hours, tot hours, sitrep, summary, overview, age, end of shift, shift report, shift summary, shift notes, to do, to do list, todo, shelf, inventory, spares, spare, help, oldest, newest, youngest, log, print hours, jobs, downtime, consumption, total, left, how many, how much, how, when, how long, how old, when's, who, why, run down, rundown, catch me up, brief me, bring me up to date, report, chores, filament used, hand-over, what's left, used, torque, frequency, steps, procedure, commands, hours total, interval, lifetime, manual, usual suspects, reasons for, any ideas",
};
