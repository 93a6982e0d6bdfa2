/** What stands of what was written: as amended, without what was taken back, the latest first. */
import type { Fact } from '../../maintenance/record/standing.ts';
import { standing } from '../../maintenance/record/standing.ts';
import type { HistoryFilter, JournalReader } from '../../store/journal.ts';

/**
 * An amendment is found under what it sets and its target under what it said before, so both are read and the
 * filter is asked again of what stands.
 */
export async function told(journal: JournalReader, filter: HistoryFilter): Promise<Fact[]> {
  const found = await journal.recent(filter);
  const ids = found.flatMap((entry) => ('target' in entry ? [entry.id, entry.target] : [entry.id]));
  const family = (await journal.familyOf(ids)).filter(
    (entry) => filter.asOf === undefined || (entry.at <= filter.asOf && entry.writtenAt <= filter.asOf),
  );
  return standing(family)
    .filter((fact) => fits(fact, filter))
    .toSorted((a, b) => b.at - a.at || b.saidAt - a.saidAt || b.act - a.act);
}

function fits(fact: Fact, { machine, task, part, by, from, to }: HistoryFilter): boolean {
  const has = (field: string, wanted: unknown): boolean =>
    wanted === undefined ||
    (field in fact && Object.entries(fact).some(([key, value]) => key === field && value === wanted));
  return (
    has('machine', machine) &&
    has('task', task) &&
    has('part', part) &&
    (by === undefined || fact.by === by) &&
    (from === undefined || fact.at >= from) &&
    (to === undefined || fact.at < to)
  );
}
