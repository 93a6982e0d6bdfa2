/** The forecast of one task from those of its triggers. */
import type { Day } from '../calendar.ts';
import { earliest, onceForecast, termForecast } from './forecast.ts';
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

/** With a date in the past there is nothing left to foretell: the first day on which it was reached. */
function passed(standing: Standing, scene: MachineScene): ForecastDays | null {
  const { since, measured, onces, raised } = standing;
  const dates = [
    ...measured.flatMap(({ term, use }) =>
      since && isReached(use) ? [termForecast(term, use, since, scene)] : [],
    ),
    ...onces.flatMap((use) =>
      isReached(use) ? [onceForecast(use, { ...use.mark, why: 'done' }, scene)] : [],
    ),
    ...(raised ? [{ p10: raised.mark.day, p50: raised.mark.day, p90: raised.mark.day }] : []),
  ].filter((date) => date !== undefined);
  return earliest(dates, scene.today);
}

export function datesOf(standing: Standing, top: TriggerUse | undefined, scene: MachineScene): Dates {
  const gone = top !== undefined && isReached(top) ? passed(standing, scene) : null;
  if (gone) return { shown: gone, likely: gone.p50 };
  const { since, measured, onces } = standing;
  const dates = [
    ...measured.flatMap(({ term, use }) => (since ? [termForecast(term, use, since, scene)] : [])),
    ...onces.map((use) => onceForecast(use, { ...use.mark, why: 'done' }, scene)),
  ].filter((date) => date !== undefined);
  const ahead = earliest(dates, scene.today);
  const untold = top !== undefined && top.unit !== 'days' && (scene.idle || !scene.paths());
  return { shown: untold ? null : ahead, likely: ahead?.p50 ?? null };
}
