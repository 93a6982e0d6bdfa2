/** Decides one act against the record with the message's earlier acts applied, and appends what came of it. */
import type { DecideContext } from '../maintenance/decide/context.ts';
import { decide } from '../maintenance/decide/decide.ts';
import { LATELY_MS } from '../maintenance/decide/duplicate.ts';
import { momentOf, momentOn } from '../maintenance/decide/moment.ts';
import type { Decision } from '../maintenance/decide/decision.ts';
import type { AmendDeed, Deed } from '../maintenance/decide/deed.ts';
import { canonicalName } from '../maintenance/decide/scene.ts';
import { latestPutOff, planned } from '../maintenance/due/plan.ts';
import { entryId } from '../maintenance/entry/id.ts';
import { VERSIONS } from '../maintenance/entry/upcast.ts';
import type { Draft, Entry, Instant } from '../maintenance/entry/entry.ts';
import { extendShop, shopAt } from '../maintenance/record/extend.ts';
import { foldMachine } from '../maintenance/record/fold.ts';
import type { MachineRecord, ShopRecord } from '../maintenance/record/record.ts';
import { standing, takenBack, type Fact } from '../maintenance/record/standing.ts';
import { holdsAt, sourceAt } from './current.ts';
import { lastBatch } from './lastBatch.ts';
import { dueContext, type Scene } from './scene.ts';

export interface WriteOptions {
  /** Place of the act in its message. */
  act: number;
  /** "Yes, as I said it": a figure that was asked about stands. */
  confirmed?: boolean;
  /** The batch that an undo or an amendment is about, when a button names it. */
  batch?: readonly Entry[];
  /** The speaker knows that the correction reaches back to another day. */
  reaches?: boolean;
  /** All tasks at once are meant. */
  sweeps?: boolean;
  /** The speaker noted it for somebody else, and may take it back as its author may. */
  noted?: true;
}

export type Outcome = Decision & { entries: readonly Entry[] };

export async function write(scene: Scene, deed: Deed, options: WriteOptions): Promise<Outcome> {
  const { message, calendar, person, saidAt } = scene;
  const moment = momentOf(deed, saidAt, calendar);
  const decision = decide(
    deed,
    { asOf: await recordAsOf(scene, deed, moment.at), latest: scene.record },
    {
      now: message.now,
      saidAt,
      by: person.id,
      role: options.noted ? 'keeper' : person.role,
      calendar,
      ...(await batchFor(scene, deed, options)),
      message: message.key,
      recent: await justSaid(scene, deed),
      confirmed: options.confirmed === true,
      latestPutOff: (task, machine) => latestPutOff(machine, task, dueContext(scene)),
      planned: (task, machine) => planned(task, machine),
    },
  );
  if (decision.outcome !== 'written') return { ...decision, entries: [] };
  const entries = stamp(scene, decision.drafts, options);
  await append(scene, entries);
  return { ...decision, entries };
}

/** Appends inside the message's transaction and brings the scene's record up to it. */
export async function append(scene: Scene, entries: readonly Entry[]): Promise<void> {
  const { transaction, message, calendar } = scene;
  if (entries.length === 0) return;
  await transaction.journal.append(entries);
  scene.entries.push(...entries);
  const counting = entries.filter(holdsAt(message.now));
  scene.record = await extendShop(
    scene.record,
    counting,
    sourceAt(transaction.journal, message.now),
    calendar,
  );
}

function stamp(scene: Scene, drafts: readonly Draft[], options: WriteOptions): Entry[] {
  const { message, person, saidAt, because } = scene;
  const before = scene.entries.filter((entry) => entry.act === options.act).length;
  return drafts.map((draft, i) => ({
    ...draft,
    id: entryId(message.key, options.act, before + i),
    v: VERSIONS[draft.kind],
    saidAt,
    writtenAt: message.now,
    by: person.id,
    platform: message.platform,
    message: message.key,
    act: options.act,
    ...(because === undefined ? {} : { because }),
  }));
}

/** The record as it stood when the deed happened. */
async function recordAsOf(scene: Scene, deed: Deed, at: Instant): Promise<ShopRecord> {
  const { record, transaction, calendar, message } = scene;
  const machine = 'machine' in deed ? deed.machine : undefined;
  if (machine === undefined) return record;
  return shopAt(record, machine, at, sourceAt(transaction.journal, message.now), calendar);
}

type Batch = Pick<DecideContext, 'lastBatch' | 'corrected' | 'without'>;

/** Only a correction speaks of what was written before. */
async function batchFor(scene: Scene, deed: Deed, { batch }: WriteOptions): Promise<Batch> {
  if (deed.kind !== 'undo' && deed.kind !== 'amend') return { lastBatch: [] };
  const { journal } = scene.transaction;
  const last = batch ?? (await lastBatch(journal, scene.person.id, scene.message.now));
  const corrected = await journal.familyOf(last.map((entry) => entry.id));
  const without = deed.kind === 'amend' ? await withoutReadings(scene, deed, standing(corrected)) : new Map();
  return { lastBatch: last, corrected, without };
}

/** Each reading's machine as it would stand at that moment if the reading had not been told. */
async function withoutReadings(
  { transaction, message, calendar, record, saidAt }: Scene,
  deed: AmendDeed,
  facts: readonly Fact[],
): Promise<ReadonlyMap<string, MachineRecord>> {
  const source = sourceAt(transaction.journal, message.now);
  const named = deed.machine === undefined ? undefined : canonicalName(deed.machine, record);
  const found = new Map<string, MachineRecord>();
  for (const fact of facts) {
    if (fact.kind !== 'meter') continue;
    const machine = named ?? fact.machine;
    const entries = (await source.ofMachine(machine)).filter(
      (entry) => entry.id !== fact.id && !('target' in entry && entry.target === fact.id),
    );
    const at = deed.on === undefined ? fact.at : momentOn(deed.on, saidAt, calendar).at;
    found.set(fact.id, foldMachine(machine, entries, calendar, at));
  }
  return found;
}

const LATELY_MOST = 20;

/** What anybody said of this machine within the last half hour. */
async function justSaid(scene: Scene, deed: Deed): Promise<readonly Entry[]> {
  const { transaction, message, saidAt, lastSaid } = scene;
  if (Math.abs(saidAt - lastSaid) > LATELY_MS && saidAt > lastSaid) return [];
  const machine = 'machine' in deed ? deed.machine : undefined;
  const entries = await transaction.journal.recent({
    ...(machine === undefined ? {} : { machine }),
    asOf: message.now,
    limit: LATELY_MOST,
  });
  const lately = entries.filter((entry) => Math.abs(saidAt - entry.saidAt) <= LATELY_MS);
  if (lately.length === 0) return [];
  // what was taken back and is said again is no repetition
  const gone = takenBack(await transaction.journal.familyOf(lately.map((entry) => entry.id)));
  return lately.filter((entry) => !gone.has(entry.id));
}
