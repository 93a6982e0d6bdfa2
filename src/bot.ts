/** Fettle as its adapters use it: language, commands, maintenance and store wired together. */
import { createReader } from './language/read.ts';
import type { AskAct, Reading, SaidAt } from './language/act.ts';
import { applyWorkshop, type Enrolled, type EnrolRequest } from './commands/applyWorkshop.ts';
import { checkpointsOf, isWorthSaving, knownFromCheckpoints } from './commands/checkpoints.ts';
import { catchUp, nothingKnown, type Known } from './commands/current.ts';
import { RequestFault } from './commands/fault.ts';
import { forget, type Whose } from './commands/forget.ts';
import { glanceAt } from './commands/glance.ts';
import { handle } from './commands/handle.ts';
import { setScene, type Surroundings } from './commands/setScene.ts';
import type { Answer, IncomingMessage } from './commands/message.ts';
import { namedDigest, namedRows } from './commands/named.ts';
import { exportLines, importLines, type Imported } from './commands/transfer.ts';
import { openCalendar, type LocalCalendar } from './maintenance/calendar.ts';
import { ROOM } from './maintenance/codes.ts';
import { digestOf, type Digest } from './maintenance/due/digest.ts';
import { dueRows, machineDue } from './maintenance/due/rows.ts';
import type { DueContext } from './maintenance/due/context.ts';
import type { DueRow } from './maintenance/due/row.ts';
import type { Instant } from './maintenance/entry/entry.ts';
import { foldName } from './maintenance/machine.ts';
import { answersTo, calledIn } from './maintenance/record/called.ts';
import type { ShopRecord } from './maintenance/record/record.ts';
import { StoreFault } from './store/fault.ts';
import type { ReadView, Store, Transaction } from './store/store.ts';
import { parseWorkshop, type Workshop } from './workshop.ts';
import { digestReply } from './replies/wording/digest.ts';
import type { Reply } from './replies/reply.ts';
import { machineName } from './replies/wording/names.ts';
import type { Names, View } from './replies/wording/view.ts';

export type AndAlso = (transaction: Transaction, answer: Answer) => Promise<void>;

export interface Say {
  message: IncomingMessage;
  also?: AndAlso;
}

export interface Called {
  /** The name that its record began with. */
  machine: string;
  called: string;
}

export interface Bot {
  /** `also` is written in the same commit; it runs for a repeated message too. */
  say(message: IncomingMessage, also?: AndAlso): Promise<Answer>;
  /** One after the other, in one commit. When one of them cannot be handled none is: then say each by itself. */
  sayTogether(says: readonly Say[]): Promise<readonly Answer[]>;
  /** One question answered for a view that is no message: nothing of it is kept. */
  glance(message: IncomingMessage, act: AskAct): Promise<Reply>;
  /** What a text says, as JSON to be compared. */
  actsOf(text: string, saidAt: Instant, now: Instant): Promise<string>;
  /** The enrolled workshop; undefined before there is one. */
  workshop(): Promise<Workshop | undefined>;
  /** Rows in list order. Throws RequestFault `unknown-machine`. */
  due(query: { now: Instant; machine?: string }): Promise<readonly DueRow[]>;
  /** The machines in use by the names that people read, in their order. */
  machines(query: { now: Instant }): Promise<readonly Called[]>;
  digest(query: { now: Instant }): Promise<{ digest: Digest; reply: Reply; names: Names }>;
  /** Throws RequestFault `bad-workshop` with a line for every fault. */
  enrol(request: EnrolRequest): Promise<Enrolled>;
  exportLines(write: (line: string) => Promise<void> | void): Promise<void>;
  importLines(lines: readonly string[]): Promise<Imported>;
  /** Gives how many messages' words went; the journal keeps its facts. Throws RequestFault `unknown-person`. */
  forget(whose: Whose): Promise<number>;
  /** The zone of the enrolled workshop; undefined before there is one. */
  calendar(): Promise<LocalCalendar | undefined>;
  close(): Promise<void>;
}

const NO_WORKSHOP = 'There is no workshop in this database yet. Enrol one first: fettle enrol FILE.';

interface Setting {
  json: string;
  workshop: Workshop;
  calendar: LocalCalendar;
}

export function openBot(store: Store): Bot {
  let setting: Setting | undefined;
  let known: Known | undefined;
  /** What a start finds kept; time going back starts from it or from nothing. */
  let saved: Known | undefined;
  let reader: { names: string; read: (text: string, said: SaidAt) => Reading } | undefined;

  const settingIn = async ({ post }: Pick<ReadView, 'post'>): Promise<Setting> => {
    const json = await post.workshop();
    if (json === undefined) throw new RequestFault('no-workshop', NO_WORKSHOP);
    if (setting?.json === json) return setting;
    const workshop: Workshop = JSON.parse(json);
    if (setting?.workshop.workshop.zone !== workshop.workshop.zone) known = saved = undefined;
    setting = { json, workshop, calendar: openCalendar(workshop.workshop.zone) };
    return setting;
  };

  /** Of a transaction under way: it may hold what is never committed, so nobody else starts from it. */
  const underWay = new WeakMap<ReadView, Known>();
  const knownIn = async (view: ReadView, { calendar }: Setting, now: Instant): Promise<Known> => {
    saved ??= (await knownFromCheckpoints(view, calendar)) ?? nothingKnown(calendar);
    const starts = [underWay.get(view), known, saved].filter((one) => one !== undefined);
    return catchUp(starts, view.journal, now, calendar);
  };
  const recordIn = async (view: ReadView, current: Setting, now: Instant): Promise<ShopRecord> => {
    known = await knownIn(view, current, now);
    return known.record;
  };
  /** What a transaction has folded is known to all once it is committed. */
  const transact = async <T>(work: (transaction: Transaction) => Promise<T>): Promise<T> => {
    let folded: Known | undefined;
    const result = await store.transact(async (transaction) => {
      const done = await work(transaction);
      folded = underWay.get(transaction);
      return done;
    });
    known = folded ?? known;
    return result;
  };
  const saveIfWorthIt = async (): Promise<void> => {
    if (!known || !saved || !setting || !isWorthSaving(known, saved)) return;
    const rows = checkpointsOf(known, setting.calendar);
    await store.transact(async ({ post }) => {
      await post.dropCheckpoints();
      await post.saveCheckpoints(rows);
    });
  };

  const readerFor = async ({ workshop }: Setting, record: ShopRecord, { post }: Pick<ReadView, 'post'>) => {
    const machines = [...record.machines.values()].map((machine) => ({
      name: machine.name,
      aliases: answersTo(machine).filter((name) => name !== machine.name),
    }));
    const people = [
      ...new Set([...workshop.people.map((p) => p.name), ...(await post.people()).map((p) => p.name)]),
    ];
    const names = JSON.stringify([machines, people]);
    if (reader?.names !== names) reader = { names, read: createReader({ machines, people }) };
    return reader.read;
  };

  const around = async (transaction: Transaction, now: Instant): Promise<Surroundings> => {
    const current = await settingIn(transaction);
    const folded = await knownIn(transaction, current, now);
    underWay.set(transaction, folded);
    const { record, lastSaid } = folded;
    const read = await readerFor(current, record, transaction);
    return { ...current, record, lastSaid, read };
  };

  const sayIn = async (transaction: Transaction, { message, also }: Say): Promise<Answer> => {
    const answer = await handle(transaction, message, () => around(transaction, message.now));
    await also?.(transaction, answer);
    return answer;
  };

  const dueContext = ({ workshop, calendar }: Setting, now: Instant): DueContext => ({
    now,
    calendar,
    workingDays: workshop.workshop.workingDays,
    holidays: workshop.workshop.holidays,
  });

  return {
    say: (message, also) =>
      transact((transaction) => sayIn(transaction, { message, ...(also ? { also } : {}) })),
    sayTogether: (says) =>
      transact(async (transaction) => {
        const answers: Answer[] = [];
        for (const one of says) answers.push(await sayIn(transaction, one));
        return answers;
      }),
    glance: (message, act) =>
      transact(async (transaction) =>
        glanceAt(await setScene(transaction, message, await around(transaction, message.now)), act),
      ),
    actsOf: (text, saidAt, now) =>
      store.read(async (view) => {
        const current = await settingIn(view);
        const read = await readerFor(current, await recordIn(view, current, now), view);
        const said = { date: current.calendar.dateOf(saidAt), minute: current.calendar.minuteOf(saidAt) };
        const { acts, orders, safety } = read(text, said);
        return JSON.stringify([acts.map(({ act }) => act), orders, safety]);
      }),
    workshop: () =>
      store.read(async (view) =>
        (await view.post.workshop()) === undefined ? undefined : (await settingIn(view)).workshop,
      ),
    due: ({ now, machine }) =>
      store.read(async (view) => {
        const current = await settingIn(view);
        const record = await recordIn(view, current, now);
        return namedRows(rowsOf(record, machine, dueContext(current, now)), await view.post.people());
      }),
    machines: ({ now }) =>
      store.read(async (view) => {
        const { machines } = await recordIn(view, await settingIn(view), now);
        const inUse = [...machines.values()].filter((machine) => machine.enrolled && !machine.retired);
        return inUse
          .map((machine) => ({
            machine: machine.name,
            called: machineName(machine.name, { calledAs: calledIn({ machines }) }),
          }))
          .sort((a, b) => a.called.localeCompare(b.called));
      }),
    digest: ({ now }) =>
      store.read(async (view) => {
        const current = await settingIn(view);
        const record = await recordIn(view, current, now);
        const { minutesADay, hourlyRate } = current.workshop.workshop;
        const digest = digestOf(record, {
          ...dueContext(current, now),
          ...(minutesADay === undefined ? {} : { minutesADay }),
          ...(hourlyRate === undefined ? {} : { hourlyRate }),
        });
        const people = await view.post.people();
        const names = new Map(people.map((p) => [p.id, p.name]));
        const look: View = {
          calendar: current.calendar,
          today: current.calendar.dayOf(now),
          personName: (id) => names.get(id) ?? 'someone',
          calledAs: calledIn(record),
        };
        return { digest: namedDigest(digest, people), reply: digestReply(digest, look), names: look };
      }),
    async enrol(request) {
      const parsed = parseWorkshop(request.yaml, request.now);
      if (!parsed.ok)
        throw new RequestFault(
          'bad-workshop',
          parsed.faults.map((f) => `Line ${f.line}: ${f.text}`).join('\n'),
        );
      return store.transact(async (transaction) => {
        const json = await transaction.post.workshop();
        const before = json === undefined ? undefined : (await settingIn(transaction)).workshop;
        return applyWorkshop(transaction, parsed.workshop, request, before);
      });
    },
    exportLines: (write) =>
      store.read(async (view) => {
        const json = await view.post.workshop();
        const calendar = json === undefined ? openCalendar('UTC') : (await settingIn(view)).calendar;
        for await (const line of exportLines(view.journal, calendar)) await write(line);
      }),
    importLines: (lines) => store.transact((transaction) => importLines(transaction, lines)),
    forget: (whose) => store.transact((transaction) => forget(transaction, whose)),
    calendar: () =>
      store.read(async (view) =>
        (await view.post.workshop()) === undefined ? undefined : (await settingIn(view)).calendar,
      ),
    async close() {
      // a cache that cannot be saved just now costs the next start a little time, and nothing else
      await saveIfWorthIt().catch((fault: unknown) => {
        if (!(fault instanceof StoreFault)) throw fault;
      });
      await store.close();
    },
  };
}

function rowsOf(record: ShopRecord, machine: string | undefined, context: DueContext): readonly DueRow[] {
  if (machine === undefined) return dueRows(record, context);
  const name = foldName(machine);
  if (name === ROOM) return dueRows(record, context).filter((row) => row.machine === ROOM);
  const own =
    record.machines.get(name) ?? [...record.machines.values()].find((m) => answersTo(m).includes(name));
  if (!own) throw new RequestFault('unknown-machine', `There is no machine called "${machine}".`);
  return machineDue(own, context, record.room);
}
