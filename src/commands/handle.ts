/** A message as one transaction: read, decided, appended, answered, and handled once by its key. */
import { foldName } from '../maintenance/machine.ts';
import { isSilent } from '../replies/reply.ts';
import { buttonsOf } from '../replies/text.ts';
import type { Transaction } from '../store/store.ts';
import { isWordBetween } from './answering.ts';
import { compose, resultsOf, type Targets } from './compose.ts';
import type { OpenQuestion } from './conversation.ts';
import type { Answer, IncomingMessage, MessageOutcome } from './message.ts';
import { personOfAccount } from './people.ts';
import { answeredBefore, remember } from './remember.ts';
import { respond } from './respond.ts';
import type { Scene } from './scene.ts';
import { setScene, type Surroundings } from './setScene.ts';
import type { Played, Step } from './step.ts';

export async function handle(
  transaction: Transaction,
  message: IncomingMessage,
  surroundings: () => Promise<Surroundings>,
): Promise<Answer> {
  const first = await answeredBefore(transaction, message);
  if (first) return { ...first, outcome: 'repeated', entries: [] };
  const scene = await setScene(transaction, message, await surroundings());
  const played = await respond(scene);
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
    ...(await noter(scene)),
  };
  await remember(scene, played, answer);
  return answer;
}

async function noter({ message, transaction, workshop }: Scene): Promise<Pick<Answer, 'notedBy'>> {
  if (!message.notedBy) return {};
  const holder = { platform: message.platform, ...message.notedBy };
  return { notedBy: (await personOfAccount(transaction.post, holder, workshop)).id };
}

const pick = ({ id, field, text, options }: OpenQuestion) => ({ id, field, text, options });

/** A word in a direct conversation that means nothing here gets an offer of help, not silence. */
function withOffer(scene: Scene, reply: Answer['reply']): Answer['reply'] {
  if (!scene.message.direct || !isSilent(reply) || isWordBetween(scene.message.text)) return reply;
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
  const family = ids.length === 0 ? [] : await transaction.journal.familyOf(ids);
  const own = new Set(entries.map((entry) => entry.id));
  return { family, own };
}
