/** Applies a workshop file: what it says beyond the record becomes entries, its people and settings are kept. */
import { createHash } from 'node:crypto';
import { openCalendar, type LocalCalendar } from '../maintenance/calendar.ts';
import type { Entry, Instant } from '../maintenance/entry/entry.ts';
import { entryId } from '../maintenance/entry/id.ts';
import { VERSIONS } from '../maintenance/entry/upcast.ts';
import { foldName } from '../maintenance/machine.ts';
import type { Transaction } from '../store/store.ts';
import type { Post } from '../store/post.ts';
import type { Person, Workshop } from '../workshop.ts';
import { catchUp, nothingKnown } from './current.ts';
import { changesOf, type Change } from './enrol/changes.ts';
import { enrolment, type Enrolment } from './enrol.ts';
import { RequestFault } from './fault.ts';
import { FILE } from './lastBatch.ts';
import { newPersonId, personNamed } from './people.ts';

export interface EnrolRequest {
  yaml: string;
  now: Instant;
  /** Who applies it, by name. */
  by: string;
  dryRun: boolean;
}
export type Enrolled = Omit<Enrolment, 'drafts'> & {
  /** What is different now, old beside new; machines that were added are all new and not among it. */
  changes: readonly Change[];
  entries: readonly Entry[];
};

/** `before`: the file that was applied last, if there was one. */
export async function applyWorkshop(
  transaction: Transaction,
  workshop: Workshop,
  { yaml, now, by, dryRun }: EnrolRequest,
  before: Workshop | undefined,
): Promise<Enrolled> {
  const calendar = openCalendar(workshop.workshop.zone);
  // also what was written later than now: a machine that is on record is not enrolled a second time
  const { record } = await catchUp([nothingKnown(calendar)], transaction.journal, Infinity, calendar);
  const { drafts, ...report } = enrolment(workshop, record, { now, calendar, ...(before ? { before } : {}) });
  const first = drafts.length === 0 ? 0 : await firstAct(transaction, now, calendar);
  const key = await freshKey(transaction, `${now}\n${yaml}`);
  const entries = drafts.map((draft, i): Entry => ({
    ...draft,
    id: entryId(key, first + i, 0),
    v: VERSIONS[draft.kind],
    saidAt: now,
    writtenAt: now,
    by: newPersonId(by),
    platform: FILE,
    message: key,
    act: first + i,
  }));
  const told = { shop: record, now, calendar, ...(before ? { file: before } : {}) };
  const result = { ...report, changes: changesOf(workshop, entries, told), entries };
  if (dryRun) return result;
  await savePeople(transaction, workshop, by);
  await transaction.journal.append(entries);
  await transaction.post.saveWorkshop(JSON.stringify(workshop), now);
  return result;
}

/**
 * The same file at the same moment is the same message, in whichever database; applied again after another one it
 * is a further message.
 */
async function freshKey(
  { journal }: Pick<Transaction, 'journal'>,
  content: string,
  times = 0,
): Promise<string> {
  const said = times === 0 ? content : `${content}\n${times}`;
  const key = `enrol:${createHash('sha256').update(said).digest('hex').slice(0, 24)}`;
  return (await journal.byMessage(key)).length === 0 ? key : freshKey({ journal }, content, times + 1);
}

/**
 * The act index of the first draft: after those of files that were applied at this very moment, so that the last
 * one wins. A file cannot say something new before one that was applied later: what came later would win over it.
 */
async function firstAct(
  { journal }: Pick<Transaction, 'journal'>,
  now: Instant,
  calendar: LocalCalendar,
): Promise<number> {
  let first = 0;
  for await (const { entries } of journal.all('arrival')) {
    const applied = entries.filter((entry) => entry.platform === FILE);
    const later = applied.find((entry) => entry.writtenAt > now);
    if (later)
      throw new RequestFault(
        'earlier',
        `A workshop file was applied at ${calendar.format(later.writtenAt)}, which is later than ${calendar.format(now)}: nothing was changed.`,
      );
    for (const entry of applied) if (entry.writtenAt === now) first = Math.max(first, entry.act + 1);
  }
  return first;
}

async function savePeople({ post }: Transaction, workshop: Workshop, by: string): Promise<void> {
  const listed = workshop.people.some((p) => foldName(p.name) === foldName(by));
  const people: Person[] = [...workshop.people, ...(listed ? [] : [{ name: by, role: 'member' as const }])];
  for (const { name, role, accounts } of people) {
    const known = await personNamed(post, name);
    const person = known?.id ?? newPersonId(name);
    await post.savePerson({ id: person, name, foldedName: foldName(name), role });
    await linkAccounts(post, person, accounts);
  }
}

/** The file's word is the whole of it: an account that it gives to nobody any more is its own person again. */
async function linkAccounts(post: Post, person: string, accounts: Person['accounts'] = {}): Promise<void> {
  for (const { platform, account } of await post.accountsOf(person))
    await post.unlinkAccount(platform, account);
  for (const [platform, account] of Object.entries(accounts))
    if (account !== undefined) await post.linkAccount({ platform, account, person });
}
