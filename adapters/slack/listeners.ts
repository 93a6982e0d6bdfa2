/** What each kind of payload leads to. Everything that says or does something is stored before it is acknowledged. */
import { openTurns } from '../../src/index.ts';
import type { BlockAction, ButtonAction, ExternalSelectAction, StaticSelectAction, types } from '@slack/bolt';
import {
  NOT_STORED,
  openForm,
  openLogForm,
  say,
  store,
  storeOrSay,
  type Counter,
  type CounterParts,
} from './counter.ts';
import {
  ofCommand, ofForm, ofPress, ofShortcut, placeOfPress, placeOfShortcut, postOf, tokenOf, type Pressing,
} from './incoming/interaction.ts'; // prettier-ignore
import { ofMention, ofMessage } from './incoming/message.ts';
import { isDirect, placeOf } from './incoming/scene.ts';
import { CHOOSE } from './outgoing/buttons.ts';
import { FORM_VIEW } from './outgoing/form.ts';
import { HOME, machineOption } from './outgoing/home.ts';
import { LIMITS } from './outgoing/limits.ts';
import { wordOf } from './slackError.ts';

/** As they stand in the manifest. */
export const SHORTCUTS = { note: 'note_message', log: 'log_form' } as const;
export const COMMAND = /^\/fettle/u;
const TOKEN = /^v1:/u;
/** `/fettle log`: the form. With more words it is a log in words. */
const FORM_WORDS = /^(?:log|form)$/iu;

const NO_PERSON = 'Nothing noted: that message is not from a person.';
const NOTED_BEFORE = 'You had me look at this message before; the answer stands below it.';

export function listen(parts: CounterParts): void {
  const counter = { ...parts, inTurn: openTurns() };
  listenToEvents(counter);
  listenToCommand(counter);
  listenToShortcuts(counter);
  listenToButtons(counter);
  listenToForms(counter);
  listenToHome(counter);
}

/** One function that stands before all listeners: a burst of events does not go through each of them. */
function listenToEvents(counter: Counter): void {
  counter.app.use(async (args) => {
    if (!('event' in args)) return args.next();
    await heard(counter, args.event, args.body);
  });
}

async function heard(
  counter: Counter,
  event: types.SlackEvent,
  body: { event_id: string; team_id: string },
): Promise<void> {
  const { scene, homes, log } = counter;
  const delivery = { key: `slack:${body.event_id}`, space: body.team_id };
  if (event.type === 'app_mention')
    await store(counter, event.channel, ofMention(event, { ...delivery, direct: false }, scene));
  else if (event.type === 'message')
    await store(counter, event.channel, ofMessage(event, { ...delivery, direct: true }, scene));
  else if (event.type === 'app_home_opened' && event.tab !== 'messages')
    // opening is looking: nothing to store, and nothing that Slack should send again
    await homes.show(event.user).catch((fault: unknown) => log.warn('slack.home', { why: wordOf(fault) }));
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
      await store(counter, command.channel_id, ofCommand(command, scene), command.response_url);
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
    const work = ofShortcut(shortcut, scene);
    const stored = await storeOrSay(counter, shortcut.channel.id, work, shortcut.response_url);
    await ack();
    if (stored === 'nothing') await say(counter, shortcut.response_url, NO_PERSON);
    if (stored === 'known') await say(counter, shortcut.response_url, NOTED_BEFORE);
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
    // one that cannot be looked up is stored as a press, and asked about in words
    const form = await desk.formOf(tokenOf(action)).catch(() => undefined);
    if (form) {
      await ack();
      const on = postOf(body);
      const audience = on || body.channel === undefined ? 'place' : 'asker';
      const from = { place: placeOfPress(body), audience, ...(on ? { on } : {}) } as const;
      await openForm(counter, body.trigger_id, form, from, body.response_url);
      return;
    }
    await storeOrSay(
      counter,
      body.channel?.id ?? body.user.id,
      ofPress(body, action, scene),
      body.response_url,
    );
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
      await store(counter, body.user.id, ofForm(body, scene));
      await ack();
    } catch (fault) {
      log.error('slack.notStored', { kind: 'form', why: wordOf(fault) });
      const [first = ''] = Object.keys(body.view.state.values);
      await ack({ response_action: 'errors', errors: { [first]: NOT_STORED } });
    }
  });
}

function listenToHome(counter: Counter): void {
  const { app, desk, homes } = counter;
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
