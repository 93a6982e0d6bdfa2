/** Putting off. One row a class; `plans.ts` bends the verbs and reads the rows across the items of a clause. */

/** These put off whatever stands with them. */
export const FIRM_VERBS =
  'postpone, defer, delay, snooze, put off, put back, knock back, punt, push, push back, hold off, hold off on, reschedule, bump, shelve, park, skip, put on hold, put on ice, stall, put aside, suspend, adjourn, hang fire on, hold over, table';
export const FIRM_PHRASES =
  'remind me, remind me again, deferral, postponement, put a reminder, set a reminder, put in a reminder, a reminder for';

/** These put off only what a later time stands beside. */
export const WAITING_VERBS =
  'shove, wait till, wait until, wait for, leave, move, shift, kick, slide, extend, stretch, push, park, ignore, pencil in, do another, go another, let slide, drag out, roll over to, carry over';
export const WAITING_PHRASES =
  "can wait, not until, not before, on the list for, down for, has another, have another, can go, got another, gets another, scheduled for, hold, keep, good for another, can hang on, stop telling, stop nagging, stop reminding, later, can't be bothered, cba, couldn't be bothered, no time for, not today, won't get to, not getting to, not doing";
/** Two words with others between them: "give the belts another 50 h", "put the rods to Friday". */
export const APART: readonly (readonly [first: string, second: string])[] = [
  ['give, gives, gave, giving', 'another, more days, more day, more weeks, more week, more hours, more h'],
  ['knock, knocks, knocked', 'back'],
  ['let, lets, letting', 'wait, be, lie, ride, slide'],
  ['not today, not now, not this week, not doing', 'instead'],
  ['in', 'another'],
  ['another', 'before'],
  ['put, puts, putting', 'back, off, on the, to'],
];
/** Enough without a time. */
export const ENOUGH = 'can wait';
/** With a time these put off a machine's whole care, where no task is named. */
export const WHOLE_CARE = 'can wait, put, push, pushed, pushing';
