/** The counter where things are taken in: what every listener needs, and how something is stored, said or opened. */
import type { App } from '@slack/bolt';
import type { Desk, Form, InTurn, Log, Received } from '../../src/index.ts';
import type { Clients } from './clients.ts';
import type { Handles } from './handles.ts';
import type { Homes } from './homes.ts';
import type { Scene } from './incoming/scene.ts';
import { modal, type Origin } from './outgoing/form.ts';
import { respond } from './respond.ts';
import { wordOf } from './slackError.ts';

export interface CounterParts {
  app: App;
  desk: Desk;
  scene: Scene;
  clients: Clients;
  handles: Handles;
  homes: Homes;
  log: Log;
}

export interface Counter extends CounterParts {
  inTurn: InTurn;
}

export const NOT_STORED = 'Not noted: what you sent could not be stored just now. Send it again in a minute.';
const TOO_LATE = 'The form could not be opened in time. Press again, or say it in words.';

/** `nothing`: there was nothing to store. */
export type Stored = 'stored' | 'known' | 'nothing';

export const store = (
  { desk, handles, inTurn }: Counter,
  lane: string,
  translating: Promise<Received | undefined>,
  responseUrl?: string,
): Promise<Stored> =>
  inTurn(lane, translating, async (received) => {
    if (!received) return 'nothing';
    // before it is stored: the answer may be on its way at once
    handles.keep(received.key, responseUrl);
    return desk.receive(received);
  });

/** A click is not sent again by Slack: whoever clicked hears that it was lost. Undefined: so it was. */
export async function storeOrSay(
  counter: Counter,
  lane: string,
  translating: Promise<Received | undefined>,
  responseUrl: string | undefined,
): Promise<Stored | undefined> {
  try {
    return await store(counter, lane, translating, responseUrl);
  } catch (fault) {
    counter.log.error('slack.notStored', { kind: 'click', why: wordOf(fault) });
    await say(counter, responseUrl, NOT_STORED);
    return undefined;
  }
}

export async function say({ log }: Counter, responseUrl: string | undefined, text: string): Promise<void> {
  if (responseUrl) await respond(responseUrl, { text, blocks: [] }, log);
}

export async function openLogForm(
  counter: Counter,
  trigger: string,
  from: Omit<Origin, 'form' | 'token'>,
  responseUrl?: string,
): Promise<void> {
  try {
    await openForm(counter, trigger, await counter.desk.logForm(), from, responseUrl);
  } catch (fault) {
    counter.log.error('slack.form', { form: 'log', why: wordOf(fault) });
    await say(counter, responseUrl, TOO_LATE);
  }
}

export async function openForm(
  counter: Counter,
  trigger: string,
  form: Form,
  from: Omit<Origin, 'form' | 'token'>,
  responseUrl?: string,
): Promise<void> {
  try {
    await counter.clients.views.views.open({ trigger_id: trigger, view: modal(form, from) });
  } catch (fault) {
    counter.log.warn('slack.form', { form: form.form, why: wordOf(fault) });
    await say(counter, responseUrl, TOO_LATE);
  }
}
