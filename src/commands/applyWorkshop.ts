/** Applies a workshop file: what it says beyond the record becomes entries, its people and settings are kept. */
import { createHash } from 'node:crypto';
import { openCalendar } from '../maintenance/calendar.ts';
import type { Entry, Instant } from '../maintenance/entry/entry.ts';
import { entryId } from '../maintenance/entry/id.ts';
import { VERSIONS } from '../maintenance/entry/upcast.ts';
import { foldName } from '../maintenance/machine.ts';
import type { Transaction } from '../store/store.ts';
import type { Workshop } from '../workshop.ts';
import { catchUp, nothingKnown } from './current.ts';
import { enrolment, type Enrolment } from './enrol.ts';
import { FILE } from './lastBatch.ts';
import { newPersonId } from './people.ts';

export interface EnrolRequest {
  yaml: string;
  now: Instant;
  /** Who applies it, by name. */
  by: string;
  dryRun: boolean;
}
export type Enrolled = Omit<Enrolment, 'drafts'> & { entries: readonly Entry[] };

/** `before`: the file that was applied last, if there was one. */
export async function applyWorkshop(
  transaction: Transaction,
  workshop: Workshop,
  { yaml, now, by, dryRun }: EnrolRequest,
  before: Workshop | undefined,
): Promise<Enrolled> {
  const calendar = openCalendar(workshop.workshop.zone);
  const { record } = await catchUp([nothingKnown(calendar)], transaction.journal, now, calendar);
  const { drafts, ...report } = enrolment(workshop, record, { now, calendar, ...(before ? { before } : {}) });
  // the same file at the same moment is the same message, in whichever database
  const key = `enrol:${createHash('sha256').update(`${now}\n${yaml}`).digest('hex').slice(0, 24)}`;
  const entries = drafts.map((draft, act): Entry => ({
    ...draft,
    id: entryId(key, act, 0),
    v: VERSIONS[draft.kind],
    saidAt: now,
    writtenAt: now,
    by: newPersonId(by),
    platform: FILE,
    message: key,
    act,
  }));
  if (dryRun) return { ...report, entries };
  await savePeople(transaction, workshop, by);
  await transaction.journal.append(entries);
  await transaction.post.saveWorkshop(JSON.stringify(workshop), now);
  return { ...report, entries };
}

async function savePeople({ post }: Transaction, workshop: Workshop, by: string): Promise<void> {
  const listed = workshop.people.some((p) => foldName(p.name) === foldName(by));
  const people = [...workshop.people, ...(listed ? [] : [{ name: by, role: 'member' as const }])];
  for (const { name, role } of people) {
    const foldedName = foldName(name);
    const [known] = await post.peopleByName(foldedName);
    await post.savePerson({ id: known?.id ?? newPersonId(name), name, foldedName, role });
  }
}
