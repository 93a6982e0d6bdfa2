/** What cannot be of interest this week: seen at a glance, before any date is reckoned. */
import type { MachineScene } from './machine.ts';
import { LOOK_AHEAD_DAYS } from './context.ts';
import { hoursPerUnit } from './forecast.ts';
import type { TriggerUse } from './row.ts';
import { HAIR } from './standing.ts';
import type { Standing } from './standing.ts';

/** The share of its interval that must be used before a task is pulled forward. */
export const RIPE = 0.75;
const HOURS_A_DAY = 24;

/** The fewest days in which the rest of the interval can be used up, were the machine to run day and night. */
function fewestDays(use: TriggerUse, { since }: Standing, scene: MachineScene): number {
  const left = use.interval - use.used;
  if (use.unit === 'days' || use.unit === 'runDays') return left;
  if (use.unit === 'h') return left / HOURS_A_DAY;
  return since ? (left * hoursPerUnit(use, scene.record, since)) / HOURS_A_DAY : 0;
}

/** Fine, not ripe, and by no trigger within the look-ahead. */
export function isFarOff(standing: Standing, scene: MachineScene): boolean {
  const ahead = (scene.context.lookAheadDays ?? LOOK_AHEAD_DAYS) + 1;
  return standing.uses.every((use) => use.share < RIPE - HAIR && fewestDays(use, standing, scene) > ahead);
}
