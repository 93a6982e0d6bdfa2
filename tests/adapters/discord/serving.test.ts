/** Conversations with a Discord on loopback, over the real discord.js. */
import { afterEach, describe, expect, it } from 'vitest';
import { MessageFlags } from 'discord.js';
import type { Outgoing } from '../../../src/index.ts';
import { ID, idAt, type FakeDiscord, type Json } from '../../support/fakeDiscord.ts';
import {
  click, direct, logMessage, message, person, pick, SAID_AT, slash, submit, toBot, typing,
} from '../../support/discordEvents.ts'; // prettier-ignore
import { outgoing, serveDiscord, token, TOKEN, type Serving, type ServingOptions } from './serving.ts';

let open: Serving | undefined;
const serve = async (options?: ServingOptions): Promise<Serving> => (open = await serveDiscord(options));
afterEach(async () => {
  await open?.stop();
  open = undefined;
});

/** Not among the channels that the gateway told of. */
const UNSEEN = '310000000000000077';
const CALLBACK = /^\/interactions\/\d+\/[^/]+\/callback$/u;
const MESSAGES = /^\/channels\/\d+\/messages$/u;
const ORIGINAL = /\/messages\/@original$/u;
const pause = (ms: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, ms);
  });

describe('starting', () => {
  it('serves the only server that the bot is in, and asks for no privileged intent', async () => {
    const { platform, discord } = await serve();
    expect(platform.space()).toBe(ID.guild);
    expect(platform.state()).toMatchObject({ connected: true });
    // Discord's developer documentation, gateway intents: members 1 << 1, presences 1 << 8, message content 1 << 15
    expect(discord.intents).toHaveLength(1);
    expect((discord.intents[0] ?? 0) & ((1 << 1) | (1 << 8) | (1 << 15))).toBe(0);
    expect(discord.intents[0]).toBe((1 << 0) | (1 << 9) | (1 << 12));
    await expect(platform.channelId('#print-room')).resolves.toBe(ID.channel);
    await expect(platform.channelId(ID.channel)).resolves.toBe(ID.channel);
    await expect(platform.channelId('#kitchen')).resolves.toBeUndefined();
    await expect(platform.channelId(UNSEEN)).resolves.toBeUndefined();
  });

  it.each([
    ['is out of order', { status: 503 }],
    ['loses the answer', { status: 0, lost: true }],
  ] as const)('a channel is not denied while Discord %s', async (_what, answer) => {
    const { platform, discord } = await serve();
    discord.fault(({ path }) => (path === `/channels/${UNSEEN}` ? answer : undefined));
    await expect(platform.channelId(UNSEEN)).rejects.toThrow(/does not tell of a channel just now/u);
  });

  it('a channel that the bot may not see is none', async () => {
    const { platform, discord } = await serve();
    discord.fault(({ path }) =>
      path === `/channels/${UNSEEN}` ? { status: 403, body: { code: 50_001, message: 'no' } } : undefined,
    );
    await expect(platform.channelId(UNSEEN)).resolves.toBeUndefined();
  });

  it('says what to mend when the token is not accepted', async () => {
    await expect(
      serve({
        prepare: (discord) =>
          discord.fault(() => ({ status: 401, body: { message: '401: Unauthorized', code: 0 } })),
      }),
    ).rejects.toThrow(/does not accept the token: make a new one/u);
  });

  it('waits while Discord is out of order, and hears what is said afterwards', async () => {
    let times = 0;
    const { platform, discord, said } = await serve({
      prepare: (discord) =>
        discord.fault(({ path }) =>
          path === '/gateway/bot' && (times += 1) < 2 ? { status: 500 } : undefined,
        ),
    });
    expect(platform.state().connected).toBe(true);
    expect(platform.space()).toBe(ID.guild);
    expect(times).toBe(2);
    discord.dispatch('MESSAGE_CREATE', toBot('ran 6h on birch'));
    expect((await said()).what).toMatchObject({ text: 'ran 6h on birch' });
  });

  it('shows the link by which to let the bot in when it is in no server', async () => {
    await expect(serve({ guilds: [] })).rejects.toThrow(
      /in no server yet\. Invite it: https:\/\/discord\.com\/oauth2\/authorize\?client_id=100000000000000001&scope=bot%20applications\.commands&permissions=\d+$/u,
    );
  });
});

describe('what is heard', () => {
  it('a mention, without its mark, at its own time', async () => {
    const { discord, said } = await serve();
    const sent = toBot('cleared a jam on **birch**');
    discord.dispatch('MESSAGE_CREATE', sent);
    expect(await said()).toEqual({
      key: `discord:${String(sent['id'])}`,
      platform: 'discord',
      place: { platform: 'discord', space: ID.guild, channel: ID.channel, direct: false },
      account: ID.ines,
      accountName: 'Ines',
      saidAt: SAID_AT,
      what: { kind: 'said', text: 'cleared a jam on birch', message: sent['id'] },
      audience: 'place',
    });
  });

  it('a direct message, by a payload with channel_type', async () => {
    const { discord, said } = await serve();
    discord.dispatch('MESSAGE_CREATE', direct("what's overdue?"));
    expect(await said()).toMatchObject({
      place: { space: '', channel: ID.direct, direct: true },
      what: { kind: 'said', text: "what's overdue?" },
    });
  });

  it('a reply to the bot, and what is said in a thread with the channel above it', async () => {
    const { discord, received } = await serve();
    const ours = { ...message('Which machine?'), author: { id: ID.bot, username: 'fettle', bot: true } };
    discord.dispatch('MESSAGE_CREATE', message('birch', { type: 19, referenced_message: ours }));
    discord.dispatch('MESSAGE_CREATE', toBot('status', { channel_id: ID.thread, channel_type: 11 }));
    await discord.until(() => received.length === 2);
    expect(received.map((one) => [one.what, one.place])).toMatchObject([
      [{ text: 'birch' }, { channel: ID.channel }],
      [{ text: 'status' }, { channel: ID.thread, parent: ID.channel }],
    ]);
  });

  it('nothing that was not said to it, by a bot, in another server, or without words', async () => {
    const { discord, received } = await serve();
    const about = [
      message(''),
      message('lunch?'),
      { ...toBot('swapped the nozzle'), author: { ...person(ID.odd), bot: true } },
      toBot('swapped the nozzle', { webhook_id: '900000000000000001' }),
      toBot('swapped the nozzle', { guild_id: '299999999999999999' }),
      message('', { type: 19, mentions: [{ id: ID.bot, username: 'fettle' }] }),
      toBot('', { type: 7 }),
    ];
    for (const one of about) discord.dispatch('MESSAGE_CREATE', one);
    discord.dispatch('MESSAGE_CREATE', toBot('help'));
    await discord.until(() => received.length > 0);
    expect(received.map((one) => one.what)).toMatchObject([{ text: 'help' }]);
  });

  it('what is said in a thread, once Discord tells below which channel it hangs', async () => {
    const { discord, said, logged } = await serve();
    const thread = { id: UNSEEN, guild_id: ID.guild, type: 11, name: 'new', parent_id: ID.channel };
    let times = 0;
    discord.fault(({ path }) => {
      if (path !== `/channels/${UNSEEN}`) return undefined;
      return (times += 1) < 2 ? { status: 503 } : { status: 200, body: thread };
    });
    discord.dispatch('MESSAGE_CREATE', toBot('status', { channel_id: UNSEEN, channel_type: 11 }));
    expect((await said()).place).toMatchObject({ channel: UNSEEN, parent: ID.channel });
    expect(logged.map((one) => one.event)).toContain('discord channel not known yet');
  });

  it('what was said first in a thread first, though Discord tells of the thread late', async () => {
    const { discord, received } = await serve();
    const thread = { id: UNSEEN, guild_id: ID.guild, type: 11, name: 'new', parent_id: ID.channel };
    let times = 0;
    discord.fault(({ path }) => {
      if (path !== `/channels/${UNSEEN}`) return undefined;
      return (times += 1) < 2 ? { status: 503 } : { status: 200, body: thread };
    });
    const there = { channel_id: UNSEEN, channel_type: 11 };
    discord.dispatch('MESSAGE_CREATE', toBot('oiled the rods on alder', there));
    discord.dispatch('MESSAGE_CREATE', toBot('undo', there));
    await discord.until(() => received.length === 2);
    expect(received.map((one) => one.what)).toMatchObject([
      { text: 'oiled the rods on alder' },
      { text: 'undo' },
    ]);
  });

  it('a command in a channel that Discord does not tell of: not noted, and that is told', async () => {
    const { discord, received } = await serve();
    discord.fault(({ path }) => (path === `/channels/${UNSEEN}` ? { status: 503 } : undefined));
    const there = { channel_id: UNSEEN, channel: { id: UNSEEN, type: 11 } };
    discord.dispatch('INTERACTION_CREATE', slash('log', { what: 'cleared a jam on birch' }, there));
    const told = await discord.until(() => discord.posts(ORIGINAL, 'PATCH')[0]);
    expect(JSON.stringify(told.body)).toContain('Not noted');
    expect(received).toEqual([]);
  });

  it('the same message twice under the same key', async () => {
    const { discord, received } = await serve();
    const twice = toBot('oiled the rods on alder');
    discord.dispatch('MESSAGE_CREATE', twice);
    discord.dispatch('MESSAGE_CREATE', twice);
    discord.dispatch('MESSAGE_CREATE', toBot('help'));
    await discord.until(() => received.length === 2);
    expect(received.map((one) => one.what)).toMatchObject([
      { text: 'oiled the rods on alder' },
      { text: 'help' },
    ]);
  });

  it('a message that could not be stored at once, as soon as it can be', async () => {
    const { discord, said, desk, logged } = await serve();
    desk.failing = 1;
    discord.dispatch('MESSAGE_CREATE', toBot('oiled the rods on alder'));
    expect((await said()).what).toMatchObject({ text: 'oiled the rods on alder' });
    expect(logged.map((one) => one.event)).toContain('discord message not stored yet');
  });

  it('an edit with its whole new text, and a deletion by its author', async () => {
    const { discord, received } = await serve();
    const first = toBot('ran 6h on birch');
    discord.dispatch('MESSAGE_CREATE', first);
    await discord.until(() => received.length === 1);
    const editedAt = SAID_AT + 60_000;
    const edited = {
      ...first,
      content: `<@${ID.bot}> ran 8h on birch`,
      edited_timestamp: new Date(editedAt).toISOString(),
    };
    discord.dispatch('MESSAGE_UPDATE', edited);
    discord.dispatch('MESSAGE_UPDATE', { ...first, embeds: [{ type: 'link' }] });
    discord.dispatch('MESSAGE_UPDATE', {
      id: first['id'],
      channel_id: ID.channel,
      guild_id: ID.guild,
      embeds: [],
    });
    await discord.until(() => received.length === 2);
    discord.dispatch('MESSAGE_DELETE', { id: first['id'], channel_id: ID.channel, guild_id: ID.guild });
    discord.dispatch('MESSAGE_DELETE', { id: idAt(SAID_AT), channel_id: ID.channel, guild_id: ID.guild });
    await discord.until(() => received.length === 3);
    expect(received.slice(1).map((one) => [one.what, one.account])).toEqual([
      [{ kind: 'edited', message: first['id'], text: 'ran 8h on birch', editedAt }, ID.ines],
      [{ kind: 'deleted', message: first['id'] }, ID.ines],
    ]);
  });
});

describe('commands', () => {
  it('a log is acknowledged for all, and its answer takes the place of "is thinking"', async () => {
    const { discord, said, platform } = await serve();
    discord.dispatch('INTERACTION_CREATE', slash('log', { what: 'cleared a jam', machine: 'Birch' }));
    const { key, what, audience } = await said();
    expect([what, audience]).toEqual([{ kind: 'command', text: 'Birch: cleared a jam' }, 'place']);
    const result = await platform.send(outgoing({ answers: key }));
    expect(result).toMatchObject({ outcome: 'sent', ref: { channel: ID.channel } });
    expect((await discord.until(() => discord.posts(CALLBACK)[0])).body).toEqual({ type: 5 });
    expect(discord.posts(ORIGINAL, 'PATCH')).toHaveLength(1);
    expect(discord.posts(MESSAGES)).toHaveLength(0);
  });

  it('a question is answered to the asker alone', async () => {
    const { discord, said, platform } = await serve();
    discord.dispatch('INTERACTION_CREATE', slash('overdue', { machine: 'Alder' }));
    const { key, what, audience } = await said();
    expect([what, audience]).toEqual([{ kind: 'command', text: 'what is overdue on Alder' }, 'asker']);
    expect((await discord.until(() => discord.posts(CALLBACK)[0])).body).toEqual({
      type: 5,
      data: { flags: MessageFlags.Ephemeral },
    });
    // it cannot be edited later
    expect(await platform.send(outgoing({ answers: key, audience: 'asker' }))).toEqual({ outcome: 'sent' });
  });

  it('what all should see does not stay with the asker', async () => {
    const { discord, said, platform } = await serve();
    discord.dispatch('INTERACTION_CREATE', slash('ask', { what: 'smoke from birch' }));
    const { key } = await said();
    expect(await platform.send(outgoing({ answers: key }))).toMatchObject({ outcome: 'sent', ref: {} });
    expect(discord.posts(MESSAGES)).toHaveLength(1);
    expect(discord.posts(ORIGINAL, 'DELETE')).toHaveLength(1);
  });

  describe('an answer for the asker alone', () => {
    const SECRET: Partial<Outgoing> = { audience: 'asker', asker: ID.ines, replyTo: '500000000000000001' };
    const inChannel = (discord: FakeDiscord): string => JSON.stringify(discord.messages(ID.channel));
    const directOnly = (discord: FakeDiscord): void => {
      expect(discord.messages(ID.channel)).toEqual([]);
      expect(JSON.stringify(discord.messages(ID.direct))).toContain('jam cleared');
    };

    it('goes to their direct conversation when nothing is left of the interaction, as after a restart', async () => {
      const { discord, platform } = await serve();
      const result = await platform.send(outgoing({ ...SECRET, answers: 'discord:gone' }));
      expect(result).toMatchObject({ outcome: 'sent', ref: { channel: ID.direct } });
      expect(discord.posts(/^\/users\/@me\/channels$/u)[0]?.body).toEqual({ recipient_id: ID.ines });
      expect(discord.posts(MESSAGES)[0]?.body).not.toHaveProperty('message_reference');
      directOnly(discord);
    });

    it('so does one whose interaction was never acknowledged', async () => {
      const { discord, said, platform } = await serve();
      discord.fault(({ path }) =>
        CALLBACK.test(path) ? { status: 404, body: { code: 10_062, message: 'no' } } : undefined,
      );
      discord.dispatch('INTERACTION_CREATE', slash('overdue', { machine: 'Alder' }));
      const { key } = await said();
      expect(await platform.send(outgoing({ ...SECRET, answers: key }))).toMatchObject({ outcome: 'sent' });
      directOnly(discord);
    });

    it('so does one whose interaction is over by the time it is sent', async () => {
      const { discord, said, platform } = await serve();
      discord.dispatch('INTERACTION_CREATE', slash('overdue', { machine: 'Alder' }));
      const { key } = await said();
      discord.fault(({ path }) =>
        path.startsWith('/webhooks/') ? { status: 401, body: { code: 50_027, message: 'over' } } : undefined,
      );
      expect(await platform.send(outgoing({ ...SECRET, answers: key }))).toMatchObject({ outcome: 'sent' });
      directOnly(discord);
    });

    it('is left out with a word that says nothing of it, where no direct message is taken', async () => {
      const { discord, platform } = await serve();
      discord.fault(({ path }) =>
        path === `/channels/${ID.direct}/messages`
          ? { status: 403, body: { code: 50_007, message: 'no' } }
          : undefined,
      );
      const one = outgoing({ ...SECRET, answers: 'discord:gone' });
      // without a ref: nothing is ever put in its place
      expect(await platform.send(one)).toEqual({ outcome: 'sent' });
      expect(inChannel(discord)).toContain('ask again');
      expect(inChannel(discord)).not.toMatch(/jam|Birch|Undo/u);
      expect(await platform.find(one, Date.now())).toBe('private');
    });

    it('waits with Discord while no direct conversation can be opened', async () => {
      const { discord, platform } = await serve();
      discord.fault(({ path }) => (path === '/users/@me/channels' ? { status: 500 } : undefined));
      expect(await platform.send(outgoing(SECRET))).toMatchObject({ outcome: 'later' });
      expect(discord.messages(ID.channel)).toEqual([]);
    });

    it('takes no place that is seen by all: the waiting sign goes first', async () => {
      const { discord, said, platform } = await serve();
      discord.dispatch('INTERACTION_CREATE', slash('log', { what: 'cleared a jam', machine: 'Birch' }));
      const { key } = await said();
      expect(await platform.send(outgoing({ ...SECRET, answers: key }))).toEqual({ outcome: 'sent' });
      const ways = discord.calls.filter(({ path }) => path.startsWith('/webhooks/'));
      expect(ways.map(({ method }) => method)).toEqual(['DELETE', 'POST']);
      expect(ways[1]?.body['flags']).toBe(MessageFlags.IsComponentsV2 | MessageFlags.Ephemeral);
    });

    it('in a direct conversation it is posted there', async () => {
      const { discord, platform } = await serve();
      const to = { platform: 'discord', space: '', channel: ID.direct, direct: true };
      expect(await platform.send(outgoing({ ...SECRET, to }))).toMatchObject({ outcome: 'sent' });
      expect(discord.posts(/^\/users/u)).toEqual([]);
    });
  });

  it('machine names are offered while they are typed', async () => {
    const { discord } = await serve();
    discord.dispatch('INTERACTION_CREATE', typing('overdue', 'machine', 'b'));
    const [call] = await discord.until(() => discord.posts(CALLBACK).length > 0 && discord.posts(CALLBACK));
    expect(call?.body).toEqual({ type: 8, data: { choices: [{ name: 'Birch', value: 'Birch' }] } });
  });

  it('a log without words opens the form, and the filled form is a log', async () => {
    const { discord, said } = await serve();
    discord.dispatch('INTERACTION_CREATE', slash('log', { machine: 'Birch' }));
    const call = await discord.until(() => discord.posts(CALLBACK)[0]);
    const { type, data } = call.body as { type: number; data: Json };
    expect([type, data['custom_id'], data['title']]).toEqual([9, 'form:log:', 'Log maintenance']);
    discord.dispatch('INTERACTION_CREATE', submit('form:log:', { machine: 'Birch', work: ' ' }));
    expect((await said()).what).toEqual({ kind: 'form', form: 'log', fields: { machine: 'Birch' } });
  });

  it('a colleague’s message is said by its author and noted by who picked it', async () => {
    const { discord, said } = await serve();
    const target = message('swapped the nozzle on birch', { author: person(ID.odd), mentions: [] });
    discord.dispatch('INTERACTION_CREATE', logMessage(target));
    expect(await said()).toMatchObject({
      account: ID.ines,
      what: {
        kind: 'said',
        text: 'swapped the nozzle on birch',
        message: target['id'],
        author: { account: ID.odd, name: 'Odd' },
      },
    });
  });

  it('the same colleague’s message a second time is told, not logged', async () => {
    const { discord, received } = await serve();
    const target = message('swapped the nozzle on birch', { author: person(ID.odd) });
    discord.dispatch('INTERACTION_CREATE', logMessage(target));
    await discord.until(() => received.length === 1);
    discord.dispatch('INTERACTION_CREATE', logMessage(target));
    const told = await discord.until(() => discord.posts(ORIGINAL, 'PATCH')[0]);
    expect(JSON.stringify(told.body)).toContain('taken up before');
    expect(received).toHaveLength(1);
  });

  it('what a bot wrote is no report', async () => {
    const { discord, received } = await serve();
    const target = message('swapped the nozzle', { author: { ...person(ID.odd), bot: true } });
    discord.dispatch('INTERACTION_CREATE', logMessage(target));
    const told = await discord.until(() => discord.posts(CALLBACK)[0]);
    expect(JSON.stringify(told.body)).toContain('only what a person wrote');
    expect(received).toHaveLength(0);
  });

  it('no token of Discord gets into what is stored or logged', async () => {
    const { discord, received, logged } = await serve();
    discord.fault(({ path }) =>
      CALLBACK.test(path)
        ? { status: 404, body: { code: 10_062, message: 'Unknown interaction' } }
        : undefined,
    );
    discord.dispatch('INTERACTION_CREATE', slash('log', { what: 'cleared a jam on birch' }));
    await discord.until(() => logged.some((one) => one.event === 'discord interaction not acknowledged'));
    await discord.until(() => received.length === 1);
    const all = JSON.stringify([received, logged]);
    expect(all).not.toContain('aW50ZXJhY3Rpb24');
    expect(all).not.toContain(TOKEN);
    expect(JSON.stringify(logged)).not.toContain('jam');
  });
});

describe('presses', () => {
  const ours: Json = {
    ...message('', { mentions: [] }),
    author: { id: ID.bot, username: 'fettle', bot: true },
  };

  it('a press is noticed without a sound, and its message can be changed through it', async () => {
    const { discord, said, platform } = await serve();
    discord.dispatch('INTERACTION_CREATE', click(token(7), ours));
    const { key, what } = await said();
    expect(what).toEqual({
      kind: 'pressed',
      token: token(7),
      on: { platform: 'discord', channel: ID.channel, id: ours['id'] },
    });
    expect((await discord.until(() => discord.posts(CALLBACK)[0])).body).toEqual({ type: 6 });
    const ref = { platform: 'discord', channel: ID.channel, id: String(ours['id']) };
    expect(await platform.edit(ref, outgoing({ answers: key }))).toEqual({ outcome: 'sent', ref });
    expect(discord.posts(ORIGINAL, 'PATCH')).toHaveLength(1);
    // for the asker alone it is shown beside
    expect(await platform.send(outgoing({ answers: key, audience: 'asker' }))).toEqual({ outcome: 'sent' });
    expect(discord.posts(/^\/webhooks/u)[0]?.body['flags']).toBe(
      MessageFlags.IsComponentsV2 | MessageFlags.Ephemeral,
    );
  });

  it('an answer picked from a list is the press of its button', async () => {
    const { discord, said } = await serve();
    discord.dispatch('INTERACTION_CREATE', pick(token(9), ours));
    expect((await said()).what).toMatchObject({ kind: 'pressed', token: token(9) });
  });

  it('a button with a form opens it, and the form comes back with the button', async () => {
    const { discord, desk, said } = await serve();
    desk.forms.set(token(3), {
      form: 'until',
      title: 'Put off the tube check',
      submit: 'Put off',
      token: token(3),
      fields: [
        {
          name: 'until',
          label: 'Until',
          kind: 'choice',
          required: true,
          options: [{ value: 'friday', label: 'Friday' }],
        },
      ],
    });
    discord.dispatch('INTERACTION_CREATE', click(token(3), ours));
    const call = await discord.until(() => discord.posts(CALLBACK)[0]);
    expect(call.body).toMatchObject({ type: 9, data: { custom_id: `form:until:${token(3)}` } });
    discord.dispatch('INTERACTION_CREATE', submit(`form:until:${token(3)}`, { until: ['friday'] }, ours));
    expect((await said()).what).toMatchObject({
      kind: 'form', form: 'until', token: token(3), fields: { until: 'friday' }, on: { id: ours['id'] },
    }); // prettier-ignore
  });

  it.each([
    ['alone with the asker', MessageFlags.Ephemeral, 'asker'],
    ['before all', 0, 'place'],
  ] as const)('a form that was opened on an answer %s is answered so', async (_where, flags, audience) => {
    const { discord, received } = await serve();
    discord.dispatch(
      'INTERACTION_CREATE',
      submit(`form:until:${token(3)}`, { until: ['friday'] }, { ...ours, flags }),
    );
    await discord.until(() => received.length === 1);
    expect(received[0]?.audience).toBe(audience);
  });

  it('a press that could not be stored is told to who pressed', async () => {
    const { discord, desk } = await serve();
    desk.failing = 1;
    discord.dispatch('INTERACTION_CREATE', click(token(7), ours));
    const told = await discord.until(() => discord.posts(/^\/webhooks/u)[0]);
    expect(told.body['flags']).toBe(MessageFlags.IsComponentsV2 | MessageFlags.Ephemeral);
    expect(JSON.stringify(told.body)).toContain('Not noted');
  });

  it.each([
    [10_062, 'too late'],
    [40_060, 'acknowledged by another process'],
  ])('a press that Discord answers with %i (%s) is stored, and answered by a message', async (code) => {
    const { discord, said, platform } = await serve();
    discord.fault(({ path }) =>
      CALLBACK.test(path) ? { status: 404, body: { code, message: 'no' } } : undefined,
    );
    discord.dispatch('INTERACTION_CREATE', slash('log', { what: 'cleared a jam on birch' }));
    const { key } = await said();
    expect(await platform.send(outgoing({ answers: key }))).toMatchObject({ outcome: 'sent', ref: {} });
    expect(discord.posts(MESSAGES)).toHaveLength(1);
    expect(discord.posts(ORIGINAL, 'PATCH')).toHaveLength(0);
  });
});

describe('posting', () => {
  it('carries the identity as an enforced nonce, answers what it is about, and can ping nobody', async () => {
    const { discord, platform } = await serve();
    const one = outgoing({ replyTo: '500000000000000001' });
    await platform.send(one);
    const [call] = discord.posts(MESSAGES);
    expect(call?.body).toMatchObject({
      nonce: one.id,
      enforce_nonce: true,
      allowed_mentions: { parse: [], replied_user: false },
      message_reference: { message_id: '500000000000000001', fail_if_not_exists: false },
      flags: MessageFlags.IsComponentsV2,
    });
    expect(one.id.length).toBeLessThanOrEqual(25);
  });

  it('without the right to read back it posts all the same, not as an answer', async () => {
    const { discord, platform } = await serve();
    discord.fault(({ path, body }) =>
      MESSAGES.test(path) && body['message_reference']
        ? { status: 400, body: { code: 160_002, message: 'no history' } }
        : undefined,
    );
    expect(await platform.send(outgoing({ replyTo: '500000000000000001' }))).toMatchObject({
      outcome: 'sent',
    });
    expect(discord.messages(ID.channel)).toHaveLength(1);
  });

  it('tries a server fault once, and does not know whether it was posted', async () => {
    const { discord, platform } = await serve();
    discord.fault(({ path }) => (MESSAGES.test(path) ? { status: 500 } : undefined));
    expect(await platform.send(outgoing())).toEqual({ outcome: 'unknown', why: '500' });
    expect(discord.posts(MESSAGES)).toHaveLength(1);
  });

  it('honours a limit by saying when', async () => {
    const { discord, platform } = await serve();
    discord.fault(({ path }) =>
      MESSAGES.test(path)
        ? { status: 429, body: { message: 'slow', retry_after: 1.5, global: false }, headers: { 'retry-after': '1.5', 'x-ratelimit-scope': 'user' } }
        : undefined,
    ); // prettier-ignore
    const result = await platform.send(outgoing());
    expect(result).toMatchObject({ outcome: 'later', why: '429' });
    expect(result.outcome === 'later' && result.afterMs).toBeGreaterThanOrEqual(1500);
    expect(discord.posts(MESSAGES)).toHaveLength(1);
  });

  it('a lost answer: unknown, then found, and never posted twice', async () => {
    const { discord, platform } = await serve();
    const since = Date.now();
    const one = outgoing();
    discord.fault(({ path, method }) =>
      method === 'POST' && MESSAGES.test(path) ? { status: 0, lost: true } : undefined,
    );
    expect(await platform.send(one)).toMatchObject({ outcome: 'unknown' });
    discord.fault(undefined);
    const found = await platform.find(one, since);
    expect(found).toMatchObject({ channel: ID.channel });
    // within Discord's memory the nonce drops the second one
    expect(await platform.send(one)).toEqual({ outcome: 'sent', ref: found });
    discord.forgetNonces();
    expect(await platform.find(one, since)).toEqual(found);
    expect(discord.messages(ID.channel)).toHaveLength(1);
    expect(await platform.find({ ...outgoing(), to: one.to }, since)).toBeUndefined();
  });

  it('finds what the gateway told of without asking the channel', async () => {
    const { discord, platform } = await serve();
    const one = outgoing();
    const post: Json = {
      ...message(''),
      author: { id: ID.bot, username: 'fettle', bot: true },
      nonce: one.id,
    };
    discord.dispatch('MESSAGE_CREATE', post);
    await discord.until(() => platform.state().lastEventAt !== undefined);
    await pause(30);
    discord.calls.length = 0;
    expect(await platform.find(one, Date.now())).toMatchObject({ id: post['id'] });
    expect(discord.calls).toHaveLength(0);
  });

  it('looks through every page of a busy channel', async () => {
    const { discord, platform } = await serve();
    const since = Date.now();
    // all of them before the one that is looked for
    for (let n = 0; n < 150; n += 1) discord.put(ID.channel, message('chat', {}, since - 1000 + n));
    const one = outgoing();
    await platform.send(one);
    expect(await platform.find(one, since)).toBeDefined();
  });

  it.each([
    [50_013, 403, 'the bot may not post in the channel'],
    [50_001, 403, 'the bot cannot see the channel'],
    [10_003, 404, 'no such channel'],
    [50_007, 403, 'this person takes no direct messages from the bot'],
  ])('is refused with %i: not tried again', async (code, status, why) => {
    const { discord, platform } = await serve();
    discord.fault(({ path }) =>
      MESSAGES.test(path) ? { status, body: { code, message: 'no' } } : undefined,
    );
    expect(await platform.send(outgoing())).toEqual({ outcome: 'refused', why });
    expect(discord.posts(MESSAGES)).toHaveLength(1);
  });

  it('an edit is repeated after a fault, and refused for what is gone', async () => {
    const { discord, platform } = await serve();
    const sent = await platform.send(outgoing());
    const ref = sent.outcome === 'sent' ? sent.ref : undefined;
    if (!ref) throw new Error('not sent');
    expect(await platform.edit(ref, outgoing())).toEqual({ outcome: 'sent', ref });
    expect(await platform.edit({ ...ref, id: '500000000000000009' }, outgoing())).toEqual({
      outcome: 'refused',
      why: 'the message is gone',
    });
    discord.fault(({ method }) => (method === 'PATCH' ? { status: 502 } : undefined));
    expect(await platform.edit(ref, outgoing())).toEqual({ outcome: 'later', why: '502' });
    const [edit] = discord.posts(/messages\/\d+$/u, 'PATCH');
    expect(edit?.body['allowed_mentions']).toEqual({ parse: [], replied_user: false });
  });
});

describe('when the connection breaks', () => {
  it('resumes after a lost socket, without a new session', async () => {
    const { discord, platform, received } = await serve();
    discord.dropSockets();
    await discord.until(() => discord.operations.includes(6));
    await discord.until(() => platform.state().note === 'resumed');
    expect(platform.state().connected).toBe(true);
    discord.dispatch('MESSAGE_CREATE', toBot('help'));
    await discord.until(() => received.length === 1);
  });

  it('resumes when Discord asks it to reconnect', async () => {
    const { discord, platform } = await serve();
    discord.raw({ op: 7, d: null, s: null, t: null });
    await discord.until(() => platform.state().note === 'resumed');
    expect(discord.operations.filter((one) => one === 2)).toHaveLength(1);
  });

  it('asks for what was said in between when the session is gone', async () => {
    const { discord, desk, received } = await serve();
    desk.last = [
      { channel: ID.channel, message: idAt(Date.now() - 60_000), saidAt: Date.now() - 60_000, direct: false },
    ];
    discord.put(ID.channel, message('lunch?', {}, Date.now() - 2000));
    discord.put(ID.channel, toBot('oiled the rods on alder', {}, Date.now() - 1000));
    discord.raw({ op: 9, d: false, s: null, t: null });
    await discord.until(() => received.length === 1, 12_000);
    expect(received[0]?.what).toMatchObject({ text: 'oiled the rods on alder' });
  });

  it('after a stop it catches up in threads, also in those that went to sleep meanwhile', async () => {
    const before = Date.now() - 26 * 3_600_000;
    const sleeping = idAt(before + 1000);
    const elsewhere = idAt(before + 2000);
    const asleep = [
      { id: sleeping, guild_id: ID.guild, type: 11, name: 'maple', parent_id: ID.channel },
      { id: elsewhere, guild_id: ID.guild, type: 11, name: 'lunch', parent_id: idAt(before) },
    ];
    const { discord, received } = await serve({
      asleep,
      prepare: (discord, desk) => {
        desk.last = [{ channel: ID.channel, message: idAt(before), saidAt: before, direct: false }];
        discord.put(ID.thread, toBot('ran 6h on birch', { channel_id: ID.thread }, before + 5000));
        discord.put(sleeping, toBot('ran 2h on maple', { channel_id: sleeping }, before + 6000));
        discord.put(elsewhere, toBot('ran 3h on elm', { channel_id: elsewhere }, before + 7000));
      },
    });
    await discord.until(() => received.length === 2);
    expect(received.map(({ what, place }) => [what, place.channel, place.parent])).toMatchObject([
      [{ text: 'ran 6h on birch' }, ID.thread, ID.channel],
      [{ text: 'ran 2h on maple' }, sleeping, ID.channel],
    ]);
  });

  it('a list of threads that is not given keeps nothing else from being caught up', async () => {
    const before = Date.now() - 3_600_000;
    const { discord, received, logged } = await serve({
      prepare: (discord, desk) => {
        desk.last = [{ channel: ID.channel, message: idAt(before), saidAt: before, direct: false }];
        discord.put(ID.channel, toBot('ran 6h on birch', {}, before + 5000));
        discord.fault(({ path }) =>
          path.includes('/threads/')
            ? { status: 403, body: { code: 50_001, message: 'Missing Access' } }
            : undefined,
        );
      },
    });
    await discord.until(() => received.length === 1);
    expect(logged.map(({ event }) => event)).toContain('discord threads not caught up');
  });

  it('after a stop it catches up in the channel and direct conversations, not twice, and with what was lost before', async () => {
    const now = Date.now();
    const before = now - 26 * 3_600_000;
    const heard = toBot('ran 6h on birch', {}, before);
    // it could not be stored, while the one after it could
    const lost = toBot('ran 1h on elm', {}, before - 60_000);
    const { discord, received } = await serve({
      prepare: (discord, desk) => {
        desk.last = [
          { channel: ID.channel, message: String(heard['id']), saidAt: before, direct: false },
          { channel: ID.direct, message: idAt(before), saidAt: before, direct: true },
        ];
        // fetched messages name no server
        const fetched = (delivered: Json): Json =>
          Object.fromEntries(
            Object.entries(delivered).filter(([name]) => !['guild_id', 'channel_type'].includes(name)),
          );
        desk.known.add(`discord:${String(heard['id'])}`);
        discord.put(ID.channel, fetched(lost));
        discord.put(ID.channel, fetched(heard));
        for (let n = 0; n < 120; n += 1) discord.put(ID.channel, fetched(message('', {}, before + 1000 + n)));
        discord.put(ID.channel, fetched(toBot('swapped the nozzle on maple', {}, before + 5000)));
        discord.put(ID.direct, fetched(direct('status', { id: idAt(before + 6000) })));
      },
    });
    await discord.until(() => received.length === 3);
    expect(received.map(({ what, place, saidAt }) => [what, place.direct, saidAt])).toMatchObject([
      [{ text: 'ran 1h on elm' }, false, before - 60_000],
      [{ text: 'swapped the nozzle on maple' }, false, before + 5000],
      [{ text: 'status' }, true, before + 6000],
    ]);
  });

  it('stops: nothing new is taken, what is under way is finished', async () => {
    const serving = await serve();
    const { discord, platform, received } = serving;
    discord.dispatch('MESSAGE_CREATE', toBot('oiled the rods on alder'));
    await discord.until(() => received.length === 1);
    await platform.stop();
    await discord.until(() => discord.sockets() === 0);
    expect(await platform.send(outgoing())).toMatchObject({ outcome: 'sent' });
  });
});
