/** What each kind of payload leads to. Everything that says or does something is stored before it is acknowledged. */
import type { App, BlockAction, ButtonAction, ExternalSelectAction, StaticSelectAction } from '@slack/bolt';
import type { Desk, Form, Log, Received } from '../../src/index.ts';
import type { Clients } from './clients.ts';
import type { Handles } from './handles.ts';
import type { Homes } from './homes.ts';
import {
  ofCommand, ofForm, ofPress, ofShortcut, placeOfPress, placeOfShortcut, postOf, tokenOf, type Pressing,
} from './incoming/interaction.ts'; // prettier-ignore
import { ofMention, ofMessage } from './incoming/message.ts';
import { isDirect, placeOf, type Scene } from './incoming/scene.ts';
import { CHOOSE } from './outgoing/buttons.ts';
import { FORM_VIEW, modal, type Origin } from './outgoing/form.ts';
import { HOME, machineOption } from './outgoing/home.ts';
import { LIMITS } from './outgoing/limits.ts';
import { respond } from './respond.ts';
import { wordOf } from './slackError.ts';

export interface Counter {
  app: App;
  desk: Desk;
  scene: Scene;
  clients: Clients;
  handles: Handles;
  homes: Homes;
  log: Log;
}

/** As they stand in the manifest. */
export const SHORTCUTS = { note: 'note_message', log: 'log_form' } as const;
export const COMMAND = /^\/fettle/u;
const TOKEN = /^v1:/u;
/** `/fettle log`: the form. With more words it is a log in words. */
const FORM_WORDS = /^(?:log|form)$/iu;

const NOT_STORED = 'Not noted: what you sent could not be stored just now. Send it again in a minute.';
const TOO_LATE = 'The form could not be opened in time. Press again, or say it in words.';
const NO_PERSON = 'Nothing noted: that message is not from a person.';

export function listen(counter: Counter): void {
  listenToMessages(counter);
  listenToCommand(counter);
  listenToShortcuts(counter);
  listenToButtons(counter);
  listenToForms(counter);
  listenToHome(counter);
}

function listenToMessages({ app, desk, scene }: Counter): void {
  app.event('app_mention', async ({ event, body }) => {
    const delivery = { key: `slack:${body.event_id}`, space: body.team_id, direct: false };
    const received = await ofMention(event, delivery, scene);
    if (received) await desk.receive(received);
  });
  app.message(async ({ message, body }) => {
    const delivery = { key: `slack:${body.event_id}`, space: body.team_id, direct: true };
    const received = await ofMessage(message, delivery, scene);
    if (received) await desk.receive(received);
  });
}

function listenToCommand(counter: Counter): void {
  const { app, scene, log } = counter;
  app.command(COMMAND, async ({ command, ack }) => {
    if (FORM_WORDS.test(command.text.trim())) {
      await ack();
      const place = placeOf(command.team_id, command.channel_id, isDirect(command.channel_id));
      await openLogForm(counter, command.trigger_id, { place, audience: 'place' }, command.response_url);
      return;
    }
    try {
      await store(counter, await ofCommand(command, scene), command.response_url);
      await ack();
    } catch (fault) {
      log.error('slack.notStored', { kind: 'command', why: wordOf(fault) });
      await ack({ response_type: 'ephemeral', text: NOT_STORED });
    }
  });
}

function listenToShortcuts(counter: Counter): void {
  const { app, scene } = counter;
  app.shortcut({ callback_id: SHORTCUTS.note, type: 'message_action' }, async ({ shortcut, ack }) => {
    if (shortcut.type !== 'message_action') return;
    const received = await ofShortcut(shortcut, scene);
    if (received) await storeOrSay(counter, received, shortcut.response_url);
    await ack();
    if (!received) await say(counter, shortcut.response_url, NO_PERSON);
  });
  app.shortcut({ callback_id: SHORTCUTS.log, type: 'shortcut' }, async ({ shortcut, ack }) => {
    if (shortcut.type !== 'shortcut') return;
    await ack();
    const place = placeOfShortcut(shortcut);
    await openLogForm(counter, shortcut.trigger_id, { place, audience: 'place' });
  });
}

function listenToButtons(counter: Counter): void {
  const { app, desk, scene } = counter;
  const pressed = async (
    body: Pressing,
    action: ButtonAction | StaticSelectAction,
    ack: () => Promise<void>,
  ): Promise<void> => {
    const form = await desk.formOf(tokenOf(action));
    if (form) {
      await ack();
      const on = postOf(body);
      const audience = on || body.channel === undefined ? 'place' : 'asker';
      const from = { place: placeOfPress(body), audience, ...(on ? { on } : {}) } as const;
      await openForm(counter, body.trigger_id, form, from, body.response_url);
      return;
    }
    await storeOrSay(counter, await ofPress(body, action, scene), body.response_url);
    await ack();
  };
  app.action<BlockAction<ButtonAction>>(TOKEN, ({ body, action, ack }) => pressed(body, action, () => ack()));
  app.action<BlockAction<StaticSelectAction>>(CHOOSE, ({ body, action, ack }) =>
    pressed(body, action, () => ack()),
  );
}

function listenToForms(counter: Counter): void {
  const { app, scene, log } = counter;
  app.view({ callback_id: FORM_VIEW, type: 'view_submission' }, async ({ body, ack }) => {
    if (body.type !== 'view_submission') return;
    try {
      const received = await ofForm(body, scene);
      if (received) await store(counter, received, undefined);
      await ack();
    } catch (fault) {
      log.error('slack.notStored', { kind: 'form', why: wordOf(fault) });
      const [first = ''] = Object.keys(body.view.state.values);
      await ack({ response_action: 'errors', errors: { [first]: NOT_STORED } });
    }
  });
}

function listenToHome(counter: Counter): void {
  const { app, desk, homes, log } = counter;
  app.event('app_home_opened', async ({ event }) => {
    if (event.tab === 'messages') return;
    // opening is looking: nothing to store, and nothing that Slack should send again
    await homes.show(event.user).catch((fault: unknown) => log.warn('slack.home', { why: wordOf(fault) }));
  });
  app.action<BlockAction<ExternalSelectAction>>(HOME.machine, async ({ body, action, ack }) => {
    await ack();
    await homes.show(body.user.id, action.selected_option?.value);
  });
  app.action(HOME.room, async ({ body, ack }) => {
    await ack();
    await homes.show(body.user.id);
  });
  app.action<BlockAction<ButtonAction>>(HOME.log, async ({ body, ack }) => {
    await ack();
    await openLogForm(counter, body.trigger_id, { place: placeOfPress(body), audience: 'place' });
  });
  app.options(HOME.machine, async ({ options, ack }) => {
    const names = await desk.machines(options.value, LIMITS.options);
    await ack({ options: names.map(machineOption) });
  });
}

async function store(
  { desk, handles }: Counter,
  received: Received,
  responseUrl: string | undefined,
): Promise<void> {
  // before it is stored: the answer may be on its way at once
  handles.keep(received.key, responseUrl);
  await desk.receive(received);
}

/** A click is not sent again by Slack: whoever clicked hears that it was lost. */
async function storeOrSay(
  counter: Counter,
  received: Received,
  responseUrl: string | undefined,
): Promise<void> {
  try {
    await store(counter, received, responseUrl);
  } catch (fault) {
    counter.log.error('slack.notStored', { kind: received.what.kind, why: wordOf(fault) });
    await say(counter, responseUrl, NOT_STORED);
  }
}

async function say({ log }: Counter, responseUrl: string | undefined, text: string): Promise<void> {
  if (responseUrl) await respond(responseUrl, { text, blocks: [] }, log);
}

async function openLogForm(
  counter: Counter,
  trigger: string,
  from: Omit<Origin, 'form' | 'token'>,
  responseUrl?: string,
): Promise<void> {
  await openForm(counter, trigger, await counter.desk.logForm(), from, responseUrl);
}

async function openForm(
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
