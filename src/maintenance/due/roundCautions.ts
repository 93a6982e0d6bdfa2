/** The cautions of a round: each hazard once, with the tasks in which it is met. */
import { cautionsFor } from '../cautions/forBuild.ts';
import { CAUTION_KEYS, CAUTION_LINES } from '../cautions/keys.ts';
import type { CautionKey } from '../cautions/keys.ts';
import { keptPerBuild } from '../keptPerBuild.ts';
import type { ShopRecord } from '../record/record.ts';
import type { DueRow } from './row.ts';
import { buildOf, gather } from './taskAt.ts';
import type { TaskAt } from './taskAt.ts';

export interface CautionAt {
  key: CautionKey;
  /** As the builds of the round want it; the hazard's usual line where they want different ones. */
  line: string;
  for: readonly TaskAt[];
}

const cautionsOn = keptPerBuild(cautionsFor);

export function roundCautions(rows: readonly DueRow[], shop: ShopRecord): CautionAt[] {
  const lines = new Map<CautionKey, Set<string>>();
  const met = gather(rows, (row) =>
    cautionsOn(row.task, buildOf(shop, row)).map(({ key, line }) => {
      lines.set(key, (lines.get(key) ?? new Set()).add(line));
      return key;
    }),
  );
  return CAUTION_KEYS.flatMap((key) => {
    const tasks = met.get(key);
    if (!tasks) return [];
    const [line = CAUTION_LINES[key], ...others] = lines.get(key) ?? [];
    return [{ key, line: others.length === 0 ? line : CAUTION_LINES[key], for: tasks }];
  });
}
