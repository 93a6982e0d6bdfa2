/** What is planned: put off, promised, and how often it is to be done here. */
import { markOf } from '../mark.ts';
import type { Claim, PutOff } from '../record.ts';
import type { Reducer } from './reducer.ts';

export const putOff: Reducer<'putOff'> = (machine, entry, calendar) => {
  const { task, until, atHours, reason } = entry;
  const later: PutOff = {
    mark: markOf(entry, machine.totals, calendar),
    ...(until === undefined ? {} : { until }),
    ...(atHours === undefined ? {} : { atHours }),
    ...(reason === undefined ? {} : { reason }),
  };
  if (task === undefined) machine.putOffAll = later;
  else machine.putOffs = { ...machine.putOffs, [task]: later };
};

export const claimed: Reducer<'claimed'> = (machine, entry, calendar) => {
  const { task, on } = entry;
  const claim: Claim = {
    mark: markOf(entry, machine.totals, calendar),
    ...(on === undefined ? {} : { on }),
  };
  if (task === undefined) machine.claimAll = claim;
  else machine.claims = { ...machine.claims, [task]: claim };
};

export const intervalSet: Reducer<'intervalSet'> = (machine, entry, calendar) => {
  const { task, interval, source } = entry;
  const own = { interval, source, mark: markOf(entry, machine.totals, calendar) };
  machine.intervals = { ...machine.intervals, [task]: own };
};
