/** Machines that leave on a day to come: said today, held from that day on. */
import { dateWord } from '../../replies/wording/view.ts';
import { told } from './told.ts';
import type { AskScene } from './topic.ts';

const MOST = 50;

/** "leaves on Friday", by the machine's name. */
export async function leavingWords(scene: AskScene): Promise<ReadonlyMap<string, string>> {
  const { journal, now, calendar } = scene;
  const ahead = await told(journal, { from: now + 1, limit: MOST });
  const leaves = ahead.flatMap((fact) => {
    if (fact.kind !== 'retired' || fact.writtenAt > now) return [];
    const day = dateWord(calendar.dateOf(fact.at), scene);
    return [[fact.machine, `leaves ${/^[A-Z\d]/u.test(day) ? `on ${day}` : day}`] as const];
  });
  return new Map(leaves);
}
