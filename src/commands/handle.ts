/** A message as one transaction: read, decided, appended, answered, and handled once by its key. */
import { z } from 'zod';
import type { Reading } from '../language/act.ts';
import type { LocalCalendar } from '../maintenance/calendar.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import type { Instant } from '../maintenance/entry/entry.ts';
import { foldName } from '../maintenance/machine.ts';
import type { Press } from '../replies/reply.ts';
import { isSilent } from '../replies/reply.ts';
import { buttonsOf } from '../replies/text.ts';
import type { Transaction } from '../store/store.ts';
import type { Workshop } from '../workshop.ts';
import { answerIn, CONFIRM, filled, LEAVE, typedPress } from './answering.ts';
import { compose, resultsOf, type Targets } from './compose.ts';
import { CONVERSATION_MS, parseConversation, type Conversation, type OpenQuestion } from './conversation.ts';
import { standingBatch } from './lastBatch.ts';
import type { Answer, IncomingMessage, MessageOutcome } from './message.ts';
import { newPersonId, type Role } from './people.ts';
import { playActs, playAsk, playDeeds } from './play.ts';
import type { Scene } from './scene.ts';
import type { Played, Step } from './step.ts';
import type { ShopRecord } from '../maintenance/record/record.ts';

/** What the workshop as a whole lends to a message. */
export interface Surroundings {
  workshop: Workshop;
  calendar: LocalCalendar;
  record: ShopRecord;
  lastSaid: Instant;
  read: (text: string, said: { date: string; minute: number }) => Reading;
}

const NOTHING_READ: Reading = { acts: [], safety: [], injury: false, doubts: [], nearMisses: [], trail: [] };

export async function handle(
  transaction: Transaction,
  message: IncomingMessage,
  surroundings: () => Promise<Surroundings>,
): Promise<{ answer: Answer; record?: ShopRecord }> {
  const before = await transaction.post.handled(message.key);
  const first = before && parseAnswer(before.answer);
  if (first) return { answer: { ...first, outcome: 'repeated', entries: [] } };
  const scene = await setScene(transaction, message, await surroundings());
  const played = await play(scene);
  const targets = await targetsOf(scene);
  const reply = withOffer(scene, compose(scene, played, targets));
  const answer: Answer = {
    now: message.now,
    by: foldName(scene.person.name),
    message: message.key,
    outcome: outcomeOf(played, isSilent(reply)),
    acts: played.steps.map((step) => step.act),
    results: resultsOf(scene, played, targets),
    entries: scene.entries,
    question: played.asking ? { about: played.asking.about, ...pick(played.asking.question) } : null,
    reply,
    buttons: buttonsOf(reply),
  };
  await remember(scene, played, answer);
  return { answer, record: scene.record };
}

const pick = ({ id, field, text, options }: OpenQuestion) => ({ id, field, text, options });

async function setScene(
  transaction: Transaction,
  message: IncomingMessage,
  around: Surroundings,
): Promise<Scene> {
  const { workshop, calendar, record, lastSaid, read } = around;
  const { post } = transaction;
  const person = await speaker(transaction, message, workshop);
  const names = new Map((await post.people()).map((p) => [p.id, p.name]));
  const kept = await post.conversation(message.place, person.id);
  const said = { date: calendar.dateOf(message.saidAt), minute: calendar.minuteOf(message.saidAt) };
  return {
    transaction,
    message,
    workshop,
    calendar,
    today: calendar.dayOf(message.now),
    person,
    personName: (id) => names.get(id) ?? (id === person.id ? person.name : 'someone'),
    conversation: kept && kept.expiresAt > message.now ? parseConversation(kept.state) : {},
    reading: message.press ? NOTHING_READ : read(message.text, said),
    saidAt: message.saidAt,
    record,
    lastSaid,
    entries: [],
  };
}

/** Known by name, or new: a name that the workshop does not list is a member. */
async function speaker(
  { post }: Transaction,
  { speaker: name }: IncomingMessage,
  workshop: Workshop,
): Promise<Scene['person']> {
  const foldedName = foldName(name);
  const listed = workshop.people.find((p) => foldName(p.name) === foldedName);
  const role: Role = listed?.role ?? 'member';
  const [known] = await post.peopleByName(foldedName);
  if (known) return { id: known.id, name: known.name, role };
  const person = { id: newPersonId(name), name: listed?.name ?? name, foldedName, role };
  await post.savePerson(person);
  return { id: person.id, name: person.name, role };
}

async function play(scene: Scene): Promise<Played> {
  const { message, conversation, reading } = scene;
  const press = message.press ?? typedPress(message.text, conversation);
  if (press) return playPress(scene, press);
  const { question } = conversation;
  const value = question && answerIn(message.text, reading, question);
  if (question && value !== undefined) return playAnswer(scene, question, value);
  const { bare } = reading;
  if (conversation.tookMachine && bare?.machine !== undefined && !says(reading))
    return {
      ...(await playDeeds(scene, [{ kind: 'amend', machine: bare.machine }], {})),
      ...stillOpen(conversation),
    };
  return playActs(scene);
}

/** A question about what was written stays open when only its machine was put right. */
const stillOpen = ({ question }: Conversation): Pick<Played, 'asking'> =>
  question?.field === 'reason' ? { asking: { about: 0, question } } : {};

/** More than a name alone. */
const says = (reading: Reading): boolean => reading.acts.some(({ act }) => act.kind !== 'unclear');

async function playPress(scene: Scene, press: Press): Promise<Played> {
  switch (press.does) {
    case 'deeds':
      return playDeeds(scene, press.deeds, {});
    case 'ask':
      return playAsk(scene, press.about, press.field);
    case 'undo':
      return playDeeds(scene, [{ kind: 'undo' }], {
        batch: await standingBatch(scene.transaction.journal, press.message),
      });
    case 'change':
      return aside(CHANGE_HELP);
    case 'answer': {
      const { question } = scene.conversation;
      if (question?.id !== press.question)
        return aside('That question is settled already; say it again if it is not.');
      return playAnswer(scene, question, press.value);
    }
  }
}

const CHANGE_HELP =
  'Say what should be different, such as “make that 12 h”, “that was Maple, not Alder”, “it was yesterday” or “it was broken”.';

const aside = (text: string): Played => ({ steps: [], caution: [], grave: false, aside: text });

/** The answer fills the field that was asked about, and what waited is decided as of when it was said. */
async function playAnswer(scene: Scene, question: OpenQuestion, value: string): Promise<Played> {
  if (value === LEAVE) return aside('Left as it is: nothing noted.');
  scene.because = question.message;
  scene.saidAt = question.saidAt;
  const deeds: Deed[] = question.pending.map((deed) => filled(deed, question.field, value));
  if (deeds.length === 0) return aside('Thanks. Say the rest in one go, and I note it.');
  return playDeeds(scene, deeds, { confirmed: value === CONFIRM });
}

/** A word in a direct conversation that means nothing here gets an offer of help, not silence. */
function withOffer(scene: Scene, reply: Answer['reply']): Answer['reply'] {
  if (!scene.message.direct || !isSilent(reply)) return reply;
  return {
    ...reply,
    sections: [{ items: [{ text: ['Nothing there that I would note. “help” shows what I understand.'] }] }],
  };
}

function outcomeOf({ steps, asking, aside: said, caution }: Played, silent: boolean): MessageOutcome {
  const has = (outcome: Step['outcome']): boolean => steps.some((step) => step.outcome === outcome);
  const open = has('refused') || has('asked');
  if (has('written')) return open ? 'partly' : 'written';
  if (has('asked') || asking) return 'asked';
  if (has('answered')) return has('refused') ? 'partly' : 'answered';
  if (has('refused')) return 'refused';
  return said !== undefined || caution.length > 0 || !silent ? 'answered' : 'silent';
}

/** The entries that this message's corrections speak of. */
async function targetsOf({ entries, transaction }: Scene): Promise<Targets> {
  const ids = entries.flatMap((entry) => ('target' in entry ? [entry.target] : []));
  if (ids.length === 0) return new Map();
  return new Map((await transaction.journal.byIds(ids)).map((entry) => [entry.id, entry]));
}

/** Stores the answer for a second delivery, the words if anything came of them, and the conversation. */
async function remember(scene: Scene, played: Played, answer: Answer): Promise<void> {
  const { transaction, message, person } = scene;
  const { post } = transaction;
  await post.recordHandled(message.key, answer, message.now);
  if (scene.entries.length > 0 && message.text !== '')
    await post.saveWords({ message: message.key, person: person.id, text: message.text, at: message.saidAt });
  if (answer.outcome === 'silent') return;
  await post.saveConversation({
    place: message.place,
    person: person.id,
    state: nextConversation(scene, played, answer),
    expiresAt: message.now + CONVERSATION_MS,
  });
}

function nextConversation(scene: Scene, played: Played, answer: Answer): Conversation {
  const lastMachine = lastNamed(played.steps) ?? scene.conversation.lastMachine;
  return {
    ...(lastMachine === undefined ? {} : { lastMachine }),
    ...(tookMachine(played.steps) ? { tookMachine: true } : {}),
    ...(played.asking ? { question: played.asking.question } : {}),
    presses: answer.buttons.map(({ label, press }) => ({ label, press })),
  };
}

const tookMachine = (steps: readonly Step[]): boolean =>
  steps.some((s) => s.outcome === 'written' && s.assumed?.['machine']?.from === 'conversation');

const lastNamed = (steps: readonly Step[]): string | undefined =>
  steps.flatMap(({ act }) => ('machine' in act && act.machine !== undefined ? [act.machine] : [])).at(-1);

// An answer that an older version stored may lack what this one needs: then it is not an answer any more.
const answerShape = z.looseObject({
  now: z.number(),
  by: z.string(),
  message: z.string(),
  acts: z.array(z.looseObject({ kind: z.string() })),
  results: z.array(z.looseObject({ act: z.number() })),
  reply: z.looseObject({ sections: z.array(z.looseObject({})), buttons: z.array(z.looseObject({})) }),
  buttons: z.array(z.looseObject({ label: z.string() })),
});
const isAnswer = (json: unknown): json is Answer => answerShape.safeParse(json).success;
function parseAnswer(json: unknown): Answer {
  if (isAnswer(json)) return json;
  throw new Error('This message was answered by another version; its answer cannot be shown again.');
}
