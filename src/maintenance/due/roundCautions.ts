/** The cautions of a round: each hazard once, with the tasks in which it is met. */
import { CAUTION_KEYS, CAUTION_LINES } from '../cautions/keys.ts';
import type { CautionKey } from '../cautions/keys.ts';
import type { Place, TaskAt } from './places.ts';

export interface CautionAt {
  key: CautionKey;
  /** As the builds of the round want it; the hazard's usual line where they want different ones. */
  line: string;
  for: readonly TaskAt[];
}

export function roundCautions(places: readonly Place[]): CautionAt[] {
  const met = new Map<CautionKey, { lines: Set<string>; tasks: TaskAt[] }>();
  for (const { at, needs } of places)
    for (const { key, line } of needs.cautions) {
      const known = met.get(key);
      if (known) known.tasks.push(at);
      else met.set(key, { lines: new Set([line]), tasks: [at] });
      known?.lines.add(line);
    }
  return CAUTION_KEYS.flatMap((key) => {
    const found = met.get(key);
    if (!found) return [];
    const [line = CAUTION_LINES[key], ...others] = found.lines;
    return [{ key, line: others.length === 0 ? line : CAUTION_LINES[key], for: found.tasks }];
  });
}
