/** Whether hot work at a given temperature may be described at all on a given hot end. */
import type { Build } from '../machine.ts';
import { hotLimit } from './hotLimit.ts';
import { NEVER } from './never.ts';
import type { NeverAnswer } from './neverSteps.ts';

/**
 * @param temperatureC the temperature that the work would need, °C, 0 to 500
 * @returns the answer in place of steps where it is above the hot end's limit; undefined where it is not,
 * or where an all-metal hot end's limit is not stated (the manual gives it)
 */
export function hotWorkRefused(temperatureC: number, build: Build): NeverAnswer | undefined {
  const { limitC, stated } = hotLimit(build);
  if (limitC === undefined || temperatureC <= limitC) return undefined;
  const topic = build.hotEnd === 'all-metal' ? 'raise-maximum' : 'lined-too-hot';
  return { topic, ...NEVER[topic], ...(stated ? {} : { notStated: 'whether the hot end is PTFE-lined' }) };
}
