/** The forecast of one task from those of its triggers. */
import type { Day } from '../calendar.ts';
import { earlierOf, onceForecast, surely, termForecast, told } from './forecast.ts';
import type { MachineScene } from './machine.ts';
import type { ForecastDays, TriggerUse } from './row.ts';
import { HAIR } from './standing.ts';
import type { Standing } from './standing.ts';

export interface Dates {
  /** What is shown: null where the leading trigger hangs on usage that nobody can foretell. */
  shown: ForecastDays | null;
  /** The median, or the sure date of a calendar trigger where there is no median. */
  likely: Day | null;
}

const isReached = (use: TriggerUse): boolean => use.share >= 1 - HAIR;

/** The earliest of the triggers that `counts` lets through. */
function earliest(
  { since, measured, onces }: Standing,
  scene: MachineScene,
  counts: (use: TriggerUse) => boolean,
): ForecastDays | undefined {
  let first: ForecastDays | undefined;
  if (since)
    for (const { term, use } of measured)
      if (counts(use)) first = earlierOf(first, termForecast(term, use, since, scene));
  for (const use of onces)
    if (counts(use)) first = earlierOf(first, onceForecast(use, { ...use.mark, why: 'done' }, scene));
  return first;
}
const each = (): boolean => true;

/** With a date in the past there is nothing left to foretell: the first day on which it was reached. */
function passed(standing: Standing, scene: MachineScene): ForecastDays | null {
  const { raised } = standing;
  const raisedOn = raised && surely(raised.mark.day);
  return told(earlierOf(earliest(standing, scene, isReached), raisedOn), scene.today);
}

export function datesOf(standing: Standing, top: TriggerUse | undefined, scene: MachineScene): Dates {
  const gone = top !== undefined && isReached(top) ? passed(standing, scene) : null;
  if (gone) return { shown: gone, likely: gone.p50 };
  const ahead = told(earliest(standing, scene, each), scene.today);
  const untold = top !== undefined && top.unit !== 'days' && (scene.idle || !scene.paths());
  return { shown: untold ? null : ahead, likely: ahead?.p50 ?? null };
}
