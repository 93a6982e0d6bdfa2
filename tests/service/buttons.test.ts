/** Buttons and forms do what the sentence would do; afterwards the message shows who and when. */
import { describe, expect, it } from 'vitest';
import { buttonsOf } from '../../src/index.ts';
import { read, serveDemo, type Served } from '../support/served.ts';

const DAY = 24 * 60 * 60_000;
const SAFETY = 'burning smell from rowan!';
const tokenOf = (post: Awaited<ReturnType<Served['say']>>, label: string): string => {
  const at = buttonsOf(post?.outgoing.reply ?? { sections: [], buttons: [] }).findIndex(
    (b) => b.label === label,
  );
  return post?.outgoing.tokens[at] ?? '';
};
const now = (shop: Served, id: string | undefined) => shop.platform.posts().find((post) => post.id === id);

describe('buttons', () => {
  it('done is noted, and the row shows who and when and offers it no more', async () => {
    const shop = await serveDemo();
    const list = await shop.say("what's overdue on alder?", { as: 'Odd' });
    const noted = await shop.press(list, 'Done', { as: 'Priya' });
    expect(read(noted)).toMatch(/^Alder: noted\. rods oiled/u);
    expect(noted?.below).toBe(list?.below);
    expect(read(now(shop, list?.id))).toMatch(/oil the rods: .*\(Done: Priya, 15:40\)/u);
    const labels = buttonsOf(now(shop, list?.id)?.outgoing.reply ?? { sections: [], buttons: [] }).map(
      ({ label }) => label,
    );
    expect(labels).not.toContain('Done (1)');
    expect(await shop.written()).toEqual(['done']);
  });

  it('done pressed twice, also by two people, is noted once and the second hears of the first', async () => {
    const shop = await serveDemo();
    const list = await shop.say("what's overdue on alder?", { as: 'Odd' });
    await shop.press(list, 'Done', { as: 'Priya' });
    const second = await shop.press(list, 'Done', { as: 'Ines' });
    expect(read(second)).toMatch(/^Done: Priya, 15:40\. Pressed again, so nothing more was noted/u);
    expect(second?.outgoing).toMatchObject({ audience: 'asker', asker: 'U1' });
    expect(await shop.written()).toEqual(['done']);
  });

  it('undo takes it back, and the message says by whom', async () => {
    const shop = await serveDemo();
    const noted = await shop.say('ran 6.5h on birch');
    expect(read(await shop.press(noted, 'Undo'))).toMatch(/^Birch: taken back/u);
    expect(read(now(shop, noted?.id))).toMatch(/Taken back: Ines, 15:40$/u);
    expect(await shop.written()).toEqual([]);
    expect(read(await shop.press(noted, 'Undo'))).toMatch(/^Taken back: Ines, 15:40\. Pressed again/u);
  });

  it('somebody else’s log is not undone by a member, and the button stays', async () => {
    const shop = await serveDemo();
    const noted = await shop.say('ran 6.5h on birch', { as: 'Priya' });
    await shop.press(noted, 'Undo', { as: 'Odd' });
    expect(await shop.written()).toEqual(['usage']);
    expect(read(now(shop, noted?.id))).toMatch(/\[Undo\]/u);
    await shop.press(now(shop, noted?.id), 'Undo', { as: 'Ines' });
    expect(await shop.written()).toEqual([]);
  });

  it('a question is answered by whom it was put to, and not by another', async () => {
    const shop = await serveDemo();
    const asked = await shop.say('swapped the nozzle, worn', { as: 'Odd' });
    expect(read(asked)).toMatch(/\[Birch\]/u);
    const other = await shop.press(asked, 'Birch', { as: 'Priya' });
    expect(read(other)).toBe('That question was put to Odd. Say it yourself if you know.');
    expect(await shop.written()).toEqual([]);
    expect(read(await shop.press(asked, 'Birch', { as: 'Odd' }))).toMatch(/^Birch: noted/u);
    expect(read(now(shop, asked?.id))).toMatch(/Birch: Odd, 15:40/u);
    await shop.press(asked, 'Maple', { as: 'Odd' });
    expect(await shop.written()).toEqual(['swapped']);
  });

  it('a button that is not in the database any more says so', async () => {
    const shop = await serveDemo();
    await shop.deliver({ kind: 'pressed', token: `v1:${'x'.repeat(22)}` });
    expect(read(shop.last())).toMatch(/^That button is from too long ago/u);
  });

  it('an old button still answers after restarts', async () => {
    const shop = await serveDemo();
    const noted = await shop.say('ran 6.5h on birch');
    await shop.pass(3 * 24 * 3_600_000);
    await shop.restart();
    expect(read(await shop.press(noted, 'Undo'))).toMatch(/taken back/u);
    expect(await shop.written()).toEqual([]);
  });

  it('a name that a keeper has makes nobody a keeper; the account does', async () => {
    const shop = await serveDemo();
    await shop.say(SAFETY, { as: 'Odd' });
    await shop.say('lift the hold on rowan, plug replaced', { as: 'Ines', account: 'U-impostor' });
    expect((await shop.written()).includes('lifted')).toBe(false);
    await shop.say('lift the hold on rowan, plug replaced', {
      as: 'Somebody shown otherwise',
      account: 'U1',
    });
    expect((await shop.written()).filter((kind) => kind !== 'seen' && kind !== 'held')).not.toEqual([]);
  });
});

describe('forms', () => {
  it('put off asks until when and why, does it, and marks the row', async () => {
    const shop = await serveDemo();
    const list = await shop.say("what's overdue on alder?");
    const token = tokenOf(list, 'Put off');
    const form = await shop.platform.desk().formOf(token);
    expect(form).toMatchObject({
      form: 'until',
      token,
      fields: [{ name: 'until', kind: 'choice', required: true }, { name: 'day' }, { name: 'reason' }],
    });
    await shop.deliver({
      kind: 'form',
      form: 'until',
      token,
      fields: { until: 'Friday', reason: 'waiting for oil' },
    });
    expect(read(shop.last())).toMatch(/^Alder: noted\. oil the rods: put off u/u);
    expect(await shop.written()).toEqual(['putOff']);
    expect(read(now(shop, list?.id))).toMatch(/\(Put off: Ines, 15:40\)/u);
    const lines: string[] = [];
    await shop.bot.exportLines((line) => void lines.push(line));
    expect(lines.at(-1)).toContain('waiting for oil');
  });

  it.each([
    [{ until: 'tomorrow' }, '2026-03-12'],
    [{ until: 'in 3 days' }, '2026-03-14'],
    [{ until: 'in a week' }, '2026-03-18'],
    [{ until: 'in two weeks' }, '2026-03-25'],
    [{ until: 'other', day: 'Friday' }, '2026-03-13'],
    // what is written counts for more than what was picked
    [{ until: 'tomorrow', day: '24 March' }, '2026-03-24'],
  ])('put off by the choices %j lasts until %s', async (fields, until) => {
    const shop = await serveDemo();
    const list = await shop.say("what's overdue on alder?");
    await shop.deliver({ kind: 'form', form: 'until', token: tokenOf(list, 'Put off'), fields });
    const lines: string[] = [];
    await shop.bot.exportLines((line) => void lines.push(line));
    expect(JSON.parse(lines.at(-1) ?? '{}')).toMatchObject({ kind: 'putOff', until });
  });

  it('another day that is not written puts nothing off, and the form can be sent again', async () => {
    const shop = await serveDemo();
    const list = await shop.say("what's overdue on alder?");
    const token = tokenOf(list, 'Put off');
    await shop.deliver({ kind: 'form', form: 'until', token, fields: { until: 'other' } });
    expect(read(shop.last())).toBe('Nothing put off: say until which day.');
    await shop.deliver({ kind: 'form', form: 'until', token, fields: { until: 'other', day: 'Friday' } });
    expect(await shop.written()).toEqual(['putOff']);
  });

  it('the same form sent again puts nothing off again', async () => {
    const shop = await serveDemo();
    const list = await shop.say("what's overdue on alder?");
    const token = tokenOf(list, 'Put off');
    await shop.deliver({ kind: 'form', form: 'until', token, fields: { until: 'Friday' } });
    await shop.deliver({ kind: 'form', form: 'until', token, fields: { until: 'Saturday' } });
    expect(read(shop.last())).toMatch(/^Put off: Ines/u);
    expect(await shop.written()).toEqual(['putOff']);
  });

  it('a date that is none is asked for again, and nothing is marked', async () => {
    const shop = await serveDemo();
    const list = await shop.say("what's overdue on alder?");
    await shop.deliver({
      kind: 'form',
      form: 'until',
      token: tokenOf(list, 'Put off'),
      fields: { until: 'blue' },
    });
    expect(await shop.written()).toEqual([]);
    expect(read(now(shop, list?.id))).toMatch(/\[Put off\]/u);
    expect(shop.platform.posts()).toHaveLength(2);
  });

  it('a log by fields is the sentence', async () => {
    const shop = await serveDemo();
    const form = await shop.platform.desk().logForm({ machine: 'Birch' });
    expect(form.fields[0]).toMatchObject({ name: 'machine', kind: 'choice', value: 'Birch' });
    await shop.deliver({
      kind: 'form',
      form: 'log',
      fields: { machine: 'Birch', what: 'cleared a jam', hours: '6.5' },
    });
    expect(read(shop.last())).toMatch(/^Birch: noted\. jam cleared · 6\.5 h run/u);
    expect(await shop.written()).toEqual(['done', 'usage']);
  });

  it('a figure changed by its form is changed once', async () => {
    const shop = await serveDemo();
    const noted = await shop.say('ran 6.5h on birch');
    const token = tokenOf(noted, 'Change something');
    expect(await shop.platform.desk().formOf(token)).toMatchObject({ form: 'change' });
    await shop.deliver({ kind: 'form', form: 'change', token, fields: { change: 'make that 12 h' } });
    expect(read(shop.last())).toMatch(/12 h/u);
  });

  it('a form of a forgotten button is told so', async () => {
    const shop = await serveDemo();
    await shop.deliver({ kind: 'form', form: 'until', token: 'v1:gone', fields: { until: 'Friday' } });
    expect(read(shop.last())).toMatch(/do not know any more what that form was about/u);
  });
});

describe('a colleague’s message', () => {
  const noteIt = (shop: Served) =>
    shop.say('swapped the nozzle on birch, worn', { as: 'Priya', author: 'Odd', message: 'h5' });

  it('is noted as said by its author', async () => {
    const shop = await serveDemo();
    expect(read(await noteIt(shop))).toMatch(/^Birch: noted/u);
    const lines: string[] = [];
    await shop.bot.exportLines((line) => void lines.push(line));
    const people = await shop.store.read(({ post }) => post.people());
    const noted = JSON.parse(lines.at(-1) ?? '{}');
    expect(people.find(({ id }) => id === noted.by)?.name).toBe('Odd');
  });

  it('that a second person notes is not noted twice, and answered to both', async () => {
    const shop = await serveDemo();
    await noteIt(shop);
    const again = await shop.say('swapped the nozzle on birch, worn', {
      as: 'Ines',
      author: 'Odd',
      message: 'h5',
    });
    expect(read(again)).toMatch(/^Birch: noted/u);
    expect(await shop.written()).toEqual(['swapped']);
  });

  it('that is noted again when its answer is not kept any more is noted already', async () => {
    const shop = await serveDemo();
    await noteIt(shop);
    await shop.pass(61 * DAY);
    await shop.say('ran 1h on maple');
    await shop.pass(DAY);
    const before = await shop.written();
    expect(read(await noteIt(shop))).toMatch(/^That message is noted already/u);
    expect(await shop.written()).toEqual(before);
    expect(shop.logged.filter(({ event }) => event === 'inbox.failed')).toEqual([]);
  });

  it('that was taken back since is not noted again by itself', async () => {
    const shop = await serveDemo();
    await shop.press(await noteIt(shop), 'Undo', { as: 'Odd' });
    await shop.pass(61 * DAY);
    await shop.say('ran 1h on maple');
    expect(read(await noteIt(shop))).toMatch(/^That message was noted before, and taken back since/u);
    expect(await shop.written()).toEqual(['usage']);
  });

  it('that came with an import is noted already', async () => {
    const [from, to] = [await serveDemo(), await serveDemo()];
    await noteIt(from);
    const lines: string[] = [];
    await from.bot.exportLines((line) => void lines.push(line));
    expect(await to.bot.importLines(lines)).toMatchObject({ written: 1 });
    expect(read(await noteIt(to))).toMatch(/^That message is noted already/u);
    expect(await to.written()).toEqual(['swapped']);
  });

  it.each(['Odd', 'Priya'])('may be undone by %s', async (as) => {
    const shop = await serveDemo();
    await shop.press(await noteIt(shop), 'Undo', { as });
    expect(await shop.written()).toEqual([]);
  });

  it('that its author had told the bot is not noted twice', async () => {
    const shop = await serveDemo();
    await shop.say('swapped the nozzle on birch, worn', { as: 'Odd', message: 'h5' });
    await noteIt(shop);
    expect(await shop.written()).toEqual(['swapped']);
  });

  it('noted first and then delivered is not noted twice, nor answered twice', async () => {
    const shop = await serveDemo();
    await noteIt(shop);
    await shop.say('swapped the nozzle on birch, worn', { as: 'Odd', message: 'h5' });
    expect(await shop.written()).toEqual(['swapped']);
    expect(shop.platform.posts()).toHaveLength(1);
  });
});

describe('the home view', () => {
  it('shows the room, or one machine, to those who may', async () => {
    const shop = await serveDemo();
    const desk = shop.platform.desk();
    const room = await desk.home({ account: 'U1', name: 'Ines' });
    expect(
      read({ id: '', channel: '', edits: 0, outgoing: { reply: room?.reply, tokens: [] } as never }),
    ).toMatch(/^Wednesday 11 March/u);
    const one = await desk.home({ account: 'U1', name: 'Ines' }, 'Alder');
    expect(one?.tokens).toHaveLength(buttonsOf(one?.reply ?? { sections: [], buttons: [] }).length);
    expect(one?.tokens.length).toBeGreaterThan(0);
    expect(await desk.home({ account: 'U-Stranger', name: 'Stranger' })).toBeUndefined();
    await shop.deliver(
      { kind: 'pressed', token: one?.tokens[0] ?? '', home: true },
      { place: { channel: 'U1', space: '', direct: true } },
    );
    expect(await shop.written()).toEqual(['done']);
    expect(shop.platform.refreshed).toEqual(['U1']);
  });

  describe('bears no marks, and', () => {
    const homeOf = async (shop: Served, as: 'Ines' | 'Tomasz' = 'Ines') =>
      shop.platform.desk().home({ account: as === 'Ines' ? 'U1' : 'U2', name: as }, 'Alder');
    const press = (shop: Served, token: string | undefined, as: 'Ines' | 'Tomasz' = 'Ines') =>
      shop.deliver(
        { kind: 'pressed', token: token ?? '', home: true },
        { as, place: { channel: as === 'Ines' ? 'U1' : 'U2', space: '', direct: true } },
      );

    it('done that is pressed twice is noted once', async () => {
      const shop = await serveDemo();
      const view = await homeOf(shop);
      await press(shop, view?.tokens[0]);
      await shop.pass(10 * 60_000);
      await press(shop, view?.tokens[0]);
      expect(read(shop.last())).toMatch(/^That was noted already since this list was drawn/u);
      expect(await shop.written()).toEqual(['done']);
    });

    it('done in the views of two people is noted once', async () => {
      const shop = await serveDemo();
      const [one, other] = [await homeOf(shop), await homeOf(shop, 'Tomasz')];
      await press(shop, one?.tokens[0]);
      await press(shop, other?.tokens[0], 'Tomasz');
      expect(await shop.written()).toEqual(['done']);
    });

    it('what was done by a message since is not noted again, and something else of the same view is', async () => {
      const shop = await serveDemo();
      const view = await homeOf(shop);
      const done = buttonsOf(view?.reply ?? { sections: [], buttons: [] }).flatMap(({ label }, at) =>
        label === 'Done' ? [view?.tokens[at]] : [],
      );
      await shop.say('oiled the rods on alder');
      await press(shop, done[0]);
      expect(await shop.written()).toEqual(['done']);
      await press(shop, done[1]);
      expect(await shop.written()).toHaveLength(2);
    });

    it('done that was taken back may be pressed again', async () => {
      const shop = await serveDemo();
      const view = await homeOf(shop);
      await press(shop, view?.tokens[0]);
      await shop.press(shop.last(), 'Undo');
      expect(await shop.written()).toEqual([]);
      await press(shop, view?.tokens[0]);
      expect(await shop.written()).toEqual(['done']);
    });

    it('what is due again weeks later is noted again', async () => {
      const shop = await serveDemo();
      const tasks: string[] = [];
      for (let n = 0; n < 12; n += 1) {
        await press(shop, (await homeOf(shop))?.tokens[0]);
        const lines: string[] = [];
        await shop.bot.exportLines((line) => void lines.push(line));
        tasks.push(JSON.parse(lines.at(-1) ?? '{}').task);
        await shop.pass(10 * DAY);
      }
      expect(await shop.written()).toHaveLength(12);
      expect(new Set(tasks).size).toBeLessThan(12);
    });
  });

  it('knows a machine by the name that it has now, and shows what is held on top', async () => {
    const shop = await serveDemo();
    await shop.say('rename alder to wagtail', { as: 'Ines' });
    await shop.say('smoke from wagtail', { as: 'Odd' });
    const desk = shop.platform.desk();
    expect(await desk.machines('wag', 3)).toEqual(['wagtail']);
    const one = await desk.home({ account: 'U1', name: 'Ines' }, 'Wagtail');
    const shown = read({
      id: '',
      channel: '',
      edits: 0,
      outgoing: { reply: one?.reply, tokens: [] } as never,
    });
    expect(shown).toMatch(/^Wagtail is held: smoke, told by Odd/u);
    expect(shown).toMatch(/Wagtail: 1 overdue, 1 due/u);
    expect(shown).not.toMatch(/Alder/u);
  });

  it('finds machines by how they begin, then by what they hold', async () => {
    const desk = (await serveDemo()).platform.desk();
    expect(await desk.machines('e', 3)).toEqual(['elm', 'alder', 'cedar']);
  });
});
