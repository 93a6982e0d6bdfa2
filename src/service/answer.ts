/** What was received, by its kind. Each ends by finishing it in one commit with whatever came of it. */
import { accessTo, NO_ACCESS } from './access.ts';
import { answerEdit } from './edited.ts';
import { answerForm } from './forms.ts';
import type { Of } from './kinds.ts';
import type { Works } from './parts.ts';
import type { Received, WhatKind } from './platform.ts';
import { answerPress, refuse } from './pressed.ts';
import { answerSaid } from './said.ts';

const finished = (works: Works, { key }: Received): Promise<void> =>
  works.store.transact(async ({ traffic }) => void (await traffic.finish(key, works.clock())));

const of = <K extends WhatKind>(kind: K, answer: (works: Works, received: Of<K>) => Promise<void>) => {
  const isIt = (received: Received): received is Of<K> => received.what.kind === kind;
  return (works: Works, received: Received): Promise<void> =>
    isIt(received) ? answer(works, received) : Promise.resolve();
};

const ANSWERS: Readonly<Record<WhatKind, (works: Works, received: Received) => Promise<void>>> = {
  said: of('said', answerSaid),
  command: of('command', answerSaid),
  edited: of('edited', answerEdit),
  // facts stay: taking them back is a sentence, not the tidying of a channel
  deleted: finished,
  pressed: of('pressed', answerPress),
  form: of('form', answerForm),
};

/** Whoever tidies a message up is not talking to anybody. */
const NOT_ADDRESSED: ReadonlySet<WhatKind> = new Set(['edited', 'deleted']);

/** May it be answered without more ado? */
export async function isOpen(works: Works, received: Received): Promise<boolean> {
  const platform = works.platform(received.platform);
  const workshop = await works.bot.workshop();
  if (!platform || !workshop) return false;
  return (await accessTo(received, platform, workshop, works.store)) === 'open';
}

export async function answerReceived(works: Works, received: Received): Promise<void> {
  const platform = works.platform(received.platform);
  const workshop = await works.bot.workshop();
  if (!platform || !workshop) {
    works.log.warn('inbox.nobody', { platform: received.platform });
    return finished(works, received);
  }
  const access = await accessTo(received, platform, workshop, works.store);
  if (access !== 'open') {
    works.log.info('inbox.noAccess', { platform: platform.name, why: access, kind: received.what.kind });
    return NOT_ADDRESSED.has(received.what.kind)
      ? finished(works, received)
      : refuse(works, received, NO_ACCESS[access]);
  }
  await ANSWERS[received.what.kind](works, received);
}
