/** Running, and the counter that tells of it. One row a class, read across the items of a clause by `usage.ts`. */
export const RUNNING_WORDS = {
  /** How a counter stands where none is named: "elm reads 2350 h". Bent by the reader; commands ("show") are not these. */
  stands:
    'read, reads, reading, shows, showing, showed, displays, displayed, registers, registered, stands at, stood at, sits at, sat at, stands on, stood on, says, said, tells, ticked over, ticks over, ticked past, ticks past, passed, passes, reached, reaches, rolled over, rolls over, rolled past, rolls past, crossed, crosses, hit, hits, clocks, clocked, climbed to, climbs to, crept past, creeps past, creeping past, went past, gone past, goes past, turned over, turns over',
  /** A counter that begins anew. */
  anew: 'new, reset, zeroed, replaced, set back',
  /** A job by its hours of the day: "started at ten and came off at two". */
  begins:
    'started, starts, began, begins, went on, set off, was started, kicked off, got going, was set off, started up, start, came off, finished, ended, was done, stopped, was off, went off, put on, set going, was on',
  /** What a job added up to. */
  totals:
    'came to, comes to, adds up to, added up to, totalled, totaled, amounted to, amounts to, worked out at, ended up at',
  /** Over a figure, with its machine: "Operating time Birch today: 7.5 h". */
  heads:
    'operating time, operating hours, running time, run time, runtime, print time, printing time, usage, consumption, consumed, used, filament used, printed, hours run, hours printed, hours',
  takes: 'took, takes, take, taken',
  busy: 'busy, occupied, on the go, kept going, hard at it',
  /** "elm has tpu in it now". */
  holds: 'has, now has, is loaded with, loaded with, got, runs on, is on',
  /** "from nine till two over it": the job is what took the time. */
  over: 'over it, over them, over that, over this',
} as const;
