/** What Slack sends, through the real Bolt, to what is stored. */
import { describe, expect, it } from 'vitest';
import { APP_TOKEN, BOT, BOT_TOKEN } from '../../support/fakeSlack.ts';
import { click, command, direct, event, filled, homeAction, logShortcut, mention, noteShortcut, SAID_AT, suggestion, ts } from '../../support/slackEnvelopes.ts'; // prettier-ignore
import { UNTIL_TOKEN } from '../../support/replySamples.ts';
import { UNDO_TOKEN, withSlack } from './support.ts';

describe('messages', () => {
  it('stores a mention as plain words, at its own time, then acknowledges it', () =>
    withSlack(async ({ slack, desk }) => {
      const envelope = mention(
        'Ev1',
        'cleaned the plate on birch &amp; ran 6.5h, see <https://example.test/a|the photo>',
      );
      slack.send(envelope);
      await slack.until(() => slack.acks.find((a) => a.envelope_id === envelope.envelope_id));
      expect(desk.got).toEqual([
        {
          key: 'slack:Ev1',
          platform: 'slack',
          place: { platform: 'slack', space: 'T1', channel: 'C0000001', direct: false },
          account: 'U1',
          accountName: 'Ines',
          audience: 'place',
          saidAt: (SAID_AT + 1) * 1000,
          what: {
            kind: 'said',
            message: ts(1),
            text: 'cleaned the plate on birch & ran 6.5h, see the photo',
          },
        },
      ]);
    }));

  it('keeps the thread of a mention below another message', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(mention('Ev1', 'undo', { thread_ts: ts(0) }));
      await slack.until(() => desk.got[0]);
      expect(desk.got[0]?.place.thread).toBe(ts(0));
    }));

  it('does not acknowledge what could not be stored, and takes it when Slack sends it again', () =>
    withSlack(async ({ slack, desk, logged }) => {
      desk.broken = true;
      slack.send(mention('Ev1', 'ran 6h on birch'));
      await slack.until(() => logged.find((l) => l.event === 'slack.notTaken'));
      expect(slack.acks).toEqual([]);
      desk.broken = false;
      slack.send(mention('Ev1', 'ran 6h on birch'));
      await slack.until(() => slack.acks.length === 1);
      expect(desk.got).toHaveLength(1);
    }));

  it('stores the same event once, in however many envelopes, and acknowledges each', () =>
    withSlack(async ({ slack, desk }) => {
      const first = mention('Ev1', 'ran 6h on birch');
      for (const envelope of [
        first,
        first,
        mention('Ev1', 'ran 6h on birch'),
        mention('Ev2', 'ran 6h on birch'),
      ])
        slack.send(envelope);
      await slack.until(() => slack.acks.length === 4);
      expect(desk.got).toHaveLength(1);
    }));

  it('keeps the own time of a message that is 26 hours late', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(mention('Ev1', 'ran 6h on birch today', { ts: ts(-93_600) }));
      await slack.until(() => desk.got[0]);
      expect(desk.got[0]?.saidAt).toBe((SAID_AT - 93_600) * 1000);
    }));

  it('takes a direct message, and knows it for one', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(direct('Ev1', "what's due on alder?"));
      await slack.until(() => desk.got[0]);
      expect(desk.got[0]).toMatchObject({
        place: { channel: 'D0000001', direct: true },
        what: { kind: 'said', text: "what's due on alder?" },
      });
    }));

  it('hears a picture with words, and not other bots, itself, or people who join', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(direct('Ev1', 'this came off birch', { subtype: 'file_share', files: [] }));
      slack.send(direct('Ev2', 'beep', { bot_id: 'BOTHER', ts: ts(2) }));
      slack.send(direct('Ev3', 'beep', { user: BOT, ts: ts(3) }));
      slack.send(direct('Ev4', 'has joined', { subtype: 'channel_join', ts: ts(4) }));
      slack.send(mention('Ev5', 'beep', { bot_id: 'BOTHER', ts: ts(5) }));
      await slack.until(() => slack.acks.length === 5);
      expect(desk.got.map((r) => r.what)).toEqual([
        { kind: 'said', message: ts(1), text: 'this came off birch' },
      ]);
    }));

  it('tells of an edit with the whole new text, and of a deletion', () =>
    withSlack(async ({ slack, desk }) => {
      const before = { type: 'message', user: 'U1', ts: ts(1), text: 'ran 6h on birch' };
      const change = {
        subtype: 'message_changed',
        channel: 'D0000001',
        channel_type: 'im',
        type: 'message',
        event_ts: ts(8),
        ts: ts(8),
        previous_message: before,
      };
      slack.send(
        event('Ev1', {
          ...change,
          message: { ...before, text: 'ran 8h on birch', edited: { user: 'U1', ts: ts(7) } },
        }),
      );
      slack.send(event('Ev2', { ...change, message: { ...before, attachments: [{ text: 'a preview' }] } }));
      slack.send(event('Ev3', { ...change, subtype: 'message_deleted', deleted_ts: ts(1) }));
      await slack.until(() => slack.acks.length === 3);
      expect(desk.got.map((r) => r.what)).toEqual([
        { kind: 'edited', message: ts(1), text: 'ran 8h on birch', editedAt: (SAID_AT + 7) * 1000 },
        { kind: 'deleted', message: ts(1) },
      ]);
    }));

  it('calls other people and channels by name', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(mention('Ev1', 'ask <@U2> in <#C0000001> or <#C9|old-room>, <!here> too'));
      await slack.until(() => desk.got[0]);
      expect(desk.got[0]?.what).toMatchObject({ text: 'ask Tomasz in #print-room or #old-room, @here too' });
    }));

  it('goes on when Slack does not tell a name', () =>
    withSlack(
      async ({ slack, desk }) => {
        slack.send(command('status'));
        await slack.until(() => desk.got[0]);
        expect(desk.got[0]?.accountName).toBe('ines');
      },
      {},
      (slack) => slack.answer('users.info', () => ({ fault: 'status', status: 500 })),
    ));

  it('keeps nothing that opens a door', () =>
    withSlack(async ({ slack, desk, logged }) => {
      slack.send(mention('Ev1', 'ran 6h on birch'));
      slack.send(command('status', { response_url: slack.responseUrl }));
      slack.send(click(UNDO_TOKEN, { response_url: slack.responseUrl }));
      await slack.until(() => slack.acks.length === 3);
      const kept = JSON.stringify([desk.got, logged]);
      for (const secret of ['trigger-secret', 'secret-verification', slack.responseUrl, BOT_TOKEN, APP_TOKEN])
        expect(kept).not.toContain(secret);
      expect(desk.got).toHaveLength(3);
    }));
});

describe('commands, buttons and forms', () => {
  it('takes a command, and answers the asker at the address it came with', () =>
    withSlack(async ({ slack, desk, platform }) => {
      slack.send(command("what's overdue on alder", { response_url: slack.responseUrl }));
      const received = await slack.until(() => desk.got[0]);
      expect(received).toMatchObject({
        what: { kind: 'command', text: "what's overdue on alder" },
        audience: 'asker',
        account: 'U1',
      });
      const sent = await platform.send({
        id: 'a'.repeat(22), to: received.place, audience: 'asker', asker: 'U1', answers: received.key,
        reply: { sections: [{ items: [{ text: ['Nothing.'] }] }], buttons: [] }, tokens: [],
      }); // prettier-ignore
      expect(sent).toEqual({ outcome: 'sent' });
      expect(slack.responses).toMatchObject([{ response_type: 'ephemeral', text: 'Nothing.' }]);
    }));

  it('says so when a command could not be stored', () =>
    withSlack(async ({ slack, desk }) => {
      desk.broken = true;
      slack.send(command('ran 6h on birch', { response_url: slack.responseUrl }));
      const [ack] = await slack.until(() => slack.acks.length > 0 && slack.acks);
      expect(ack?.payload).toMatchObject({
        response_type: 'ephemeral',
        text: expect.stringMatching(/^Not noted/u),
      });
    }));

  it('stores a pressed button with the message that carries it', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(click(UNDO_TOKEN));
      await slack.until(() => slack.acks.length === 1);
      expect(desk.got[0]).toMatchObject({
        account: 'U1',
        audience: 'place',
        place: { channel: 'C0000001', thread: ts(1) },
        what: {
          kind: 'pressed',
          token: UNDO_TOKEN,
          on: { platform: 'slack', channel: 'C0000001', id: ts(2), thread: ts(1) },
        },
      });
    }));

  it('takes a choice from a list for the button that it stands for', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(
        click('', {
          actions: [
            {
              type: 'static_select',
              action_id: 'choose',
              block_id: 'b',
              action_ts: ts(3),
              selected_option: { text: { type: 'plain_text', text: 'Birch' }, value: UNDO_TOKEN },
            },
          ],
        }),
      );
      await slack.until(() => desk.got[0]);
      expect(desk.got[0]?.what).toMatchObject({ kind: 'pressed', token: UNDO_TOKEN });
    }));

  it('answers a button of a private message in private', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(
        click(UNDO_TOKEN, {
          message: undefined,
          container: { type: 'message', message_ts: ts(2), is_ephemeral: true },
        }),
      );
      await slack.until(() => desk.got[0]);
      expect(desk.got[0]).toMatchObject({ audience: 'asker', what: { kind: 'pressed', token: UNDO_TOKEN } });
      expect(desk.got[0]?.what).not.toHaveProperty('on');
    }));

  it('opens the form of a button, and stores it filled', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(click(UNTIL_TOKEN));
      const [opened] = await slack.until(
        () => slack.callsOf('views.open').length > 0 && slack.callsOf('views.open'),
      );
      expect(opened).toMatchObject({ trigger_id: 'trigger-secret', view: { title: { text: 'Put off' } } });
      slack.send(filled(opened?.['view'] as Record<string, unknown>, { until: ' next Friday ', reason: '' }));
      await slack.until(() => desk.got[0]);
      expect(desk.got[0]).toMatchObject({
        key: 'slack:form:V1',
        place: { channel: 'C0000001', thread: ts(1) },
        what: {
          kind: 'form',
          form: 'until',
          token: UNTIL_TOKEN,
          fields: { until: 'next Friday' },
          on: { id: ts(2) },
        },
      });
      expect(slack.acks.at(-1)?.payload).toEqual({});
    }));

  it('leaves a form open, with a sentence in it, when it could not be stored', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(click(UNTIL_TOKEN));
      const [opened] = await slack.until(
        () => slack.callsOf('views.open').length > 0 && slack.callsOf('views.open'),
      );
      desk.broken = true;
      slack.send(filled(opened?.['view'] as Record<string, unknown>, { until: 'Friday' }));
      await slack.until(() => slack.acks.length === 2);
      expect(slack.acks[1]?.payload).toMatchObject({
        response_action: 'errors',
        errors: { until: expect.stringMatching(/^Not noted/u) },
      });
    }));

  it('opens the log form from the command, the shortcut and the home view', () =>
    withSlack(async ({ slack }) => {
      slack.send(command('log'));
      slack.send(logShortcut());
      slack.send(
        homeAction({
          type: 'button',
          action_id: 'home:log',
          value: 'home:log',
          text: { type: 'plain_text', text: 'x' },
        }),
      );
      await slack.until(() => slack.callsOf('views.open').length === 3);
      const places = slack
        .callsOf('views.open')
        .map(
          (c) => JSON.parse(String((c['view'] as Record<string, unknown>)['private_metadata'])).place.channel,
        );
      expect(places).toEqual(expect.arrayContaining(['C0000001', 'U1']));
      expect(places.filter((place) => place === 'U1')).toHaveLength(2);
    }));

  it('takes a button whose form cannot be looked up for a press, to be asked about in words', () =>
    withSlack(async ({ slack, desk }) => {
      desk.formOf = () => Promise.reject(new Error('the database is busy'));
      slack.send(click(UNTIL_TOKEN));
      await slack.until(() => slack.acks.length === 1);
      expect(desk.got[0]?.what).toMatchObject({ kind: 'pressed', token: UNTIL_TOKEN });
    }));

  it('says so when the form came too late', () =>
    withSlack(
      async ({ slack }) => {
        slack.send(click(UNTIL_TOKEN, { response_url: slack.responseUrl }));
        await slack.until(() => slack.responses.length === 1);
        expect(slack.responses[0]).toMatchObject({
          text: expect.stringMatching(/could not be opened in time/u),
        });
      },
      {},
      (slack) => slack.answer('views.open', () => ({ ok: false, error: 'expired_trigger_id' })),
    ));

  it('notes a colleague’s message as said by them, once', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(noteShortcut({ user: 'U2', text: 'swapped the nozzle on birch', thread_ts: ts(4) }));
      slack.send(noteShortcut({ user: 'U2', text: 'swapped the nozzle on birch', thread_ts: ts(4) }));
      await slack.until(() => slack.acks.length === 2);
      expect(desk.got).toMatchObject([
        {
          account: 'U1',
          saidAt: (SAID_AT + 5) * 1000,
          place: { thread: ts(4) },
          what: {
            kind: 'said',
            message: ts(5),
            text: 'swapped the nozzle on birch',
            author: { account: 'U2', name: 'Tomasz' },
          },
        },
      ]);
    }));

  it('tells who notes the same message again, and hands on that a second person noted it', () =>
    withSlack(async ({ slack, desk }) => {
      const note = (who = 'U1') =>
        slack.send(
          noteShortcut(
            { user: 'U2', text: 'swapped the nozzle on birch' },
            { response_url: slack.responseUrl, user: { id: who, name: who, username: who, team_id: 'T1' } },
          ),
        );
      note();
      note();
      await slack.until(() => slack.responses.length === 1);
      expect(slack.responses[0]).toMatchObject({
        text: expect.stringMatching(/look at this message before/u),
      });
      note('U3');
      await slack.until(() => desk.got.length === 2);
      expect(desk.got.map(({ account }) => account)).toEqual(['U1', 'U3']);
      expect(slack.responses).toHaveLength(1);
    }));

  it('notes nothing that a bot wrote, and says so', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(noteShortcut({ bot_id: 'BX', text: 'birch done' }, { response_url: slack.responseUrl }));
      await slack.until(() => slack.responses.length === 1);
      expect(desk.got).toEqual([]);
    }));
});

describe('the home view', () => {
  const viewOf = (args: Record<string, unknown> | undefined) => JSON.stringify(args?.['view']);

  it('shows the room, then one machine, then the room again', () =>
    withSlack(async ({ slack, platform }) => {
      slack.send(
        event('Ev1', { type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home', event_ts: ts(1) }),
      );
      await slack.until(() => slack.callsOf('views.publish').length === 1);
      slack.send(
        homeAction({
          type: 'external_select',
          action_id: 'home:machine',
          selected_option: { text: { type: 'plain_text', text: 'Alder' }, value: 'Alder' },
        }),
      );
      await slack.until(() => slack.callsOf('views.publish').length === 2);
      await platform.refreshHome?.('U1');
      slack.send(
        homeAction({
          type: 'button',
          action_id: 'home:room',
          value: 'home:room',
          text: { type: 'plain_text', text: 'x' },
        }),
      );
      await slack.until(() => slack.callsOf('views.publish').length === 4);
      const shown = slack
        .callsOf('views.publish')
        .map(viewOf)
        .map((v) => (v?.includes('the room') ? 'room' : 'alder'));
      expect(shown).toEqual(['room', 'alder', 'alder', 'room']);
    }));

  it('lists the machines that begin as typed', () =>
    withSlack(async ({ slack }) => {
      slack.send(suggestion('al'));
      await slack.until(() => slack.acks.length === 1);
      expect(slack.acks[0]?.payload).toEqual({
        options: [{ text: { type: 'plain_text', text: 'Alder', emoji: false }, value: 'Alder' }],
      });
    }));

  it('tells a stranger how to come in', () =>
    withSlack(async ({ slack }) => {
      slack.send(
        event('Ev1', { type: 'app_home_opened', user: 'U9', channel: 'D1', tab: 'home', event_ts: ts(1) }),
      );
      await slack.until(() => slack.callsOf('views.publish').length === 1);
      expect(viewOf(slack.callsOf('views.publish')[0])).toContain('once you have written to Fettle');
    }));

  it('answers a button pressed there in the conversation with the person', () =>
    withSlack(async ({ slack, desk }) => {
      slack.send(
        homeAction({
          type: 'button',
          action_id: UNDO_TOKEN,
          value: UNDO_TOKEN,
          text: { type: 'plain_text', text: 'Done' },
        }),
      );
      await slack.until(() => desk.got[0]);
      expect(desk.got[0]).toMatchObject({
        place: { channel: 'U1', direct: true },
        what: { kind: 'pressed', home: true },
      });
    }));
});
