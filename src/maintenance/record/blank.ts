/** The record of a machine of which nothing is known yet. */
import type { MachineRecord, Totals } from './record.ts';

export const NOTHING_USED: Totals = { hours: 0, runDays: 0, hoursOf: {}, gramsOf: {}, unweighedHoursOf: {} };

export const blankMachine = (name: string): MachineRecord => ({
  name,
  aliases: [],
  build: {},
  nozzle: {},
  inUseSince: 0,
  startedNew: false,
  totals: NOTHING_USED,
  counterKnown: false,
  loggedSinceAnchor: 0,
  loggedHours: 0,
  unloggedHours: 0,
  runByDay: { lastDay: 0, hours: [] },
  tasks: {},
  parts: {},
  lives: [],
  symptoms: {},
  downSpells: [],
  putOffs: {},
  claims: {},
  intervals: {},
  notes: [],
  found: [],
  draws: [],
  conflicts: [],
});
