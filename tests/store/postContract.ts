/** What every store does with what is not fact. */
import { expect, it } from 'vitest';
import type { Store } from '../../src/store/store.ts';
import { MORNING, usage } from './entries.ts';

export function messages(get: () => Store): void {
  it('what was handled long ago is forgotten, and may come again', async () => {
    await get().transact(async ({ post }) => {
      await post.recordHandled('old', 1, MORNING);
      await post.recordHandled('young', 2, MORNING + 10);
    });
    expect(await get().transact(async ({ post }) => post.pruneHandled(MORNING + 10))).toBe(1);
    expect(await get().read(async ({ post }) => post.handled('old'))).toBeUndefined();
    expect(await get().read(async ({ post }) => post.handled('young'))).toBeDefined();
  });

  it('a person’s words go with all answers to that person, also where no words were kept', async () => {
    await get().transact(async ({ post }) => {
      await post.recordHandled('question', { reply: 'you said …' }, MORNING, 'p1');
      await post.recordHandled('other', { reply: 'fine' }, MORNING, 'p2');
      await post.deleteWords({ person: 'p1' });
    });
    expect(await get().read(async ({ post }) => post.handled('question'))).toMatchObject({ answer: null });
    expect(await get().read(async ({ post }) => post.handled('other'))).toMatchObject({
      answer: { reply: 'fine' },
    });
  });

  it('a message is handled once', async () => {
    await get().transact(async ({ post }) => post.recordHandled('slack:1', { reply: 'first' }, MORNING));
    const again = get().transact(async ({ journal, post }) => {
      await journal.append([usage(1, 'birch')]);
      await post.recordHandled('slack:1', { reply: 'second' }, MORNING + 1);
    });
    await expect(again).rejects.toMatchObject({ code: 'duplicate' });
    await get().read(async ({ journal, post }) => {
      expect(await post.handled('slack:1')).toEqual({ answer: { reply: 'first' }, at: MORNING });
      expect(await post.handled('slack:2')).toBeUndefined();
      expect(await journal.position()).toBe(0);
    });
  });

  it('an answer comes back as its JSON, untouched by what happens to the object later', async () => {
    const answer = { reply: 'Größe 0,4 \u0000 🧵', options: [1, null], gone: undefined };
    await get().transact(async ({ post }) => post.recordHandled('m', answer, MORNING));
    answer.options.push(2);
    const stored = await get().read(async ({ post }) => post.handled('m'));
    expect(stored?.answer).toStrictEqual({ reply: 'Größe 0,4 \u0000 🧵', options: [1, null] });
  });

  it('what has no JSON is refused', async () => {
    const work = get().transact(async ({ post }) => post.recordHandled('m', undefined, MORNING));
    await expect(work).rejects.toMatchObject({ code: 'unreadable' });
  });

  it('said words come back word for word and go by message or by person', async () => {
    const texts = ['Düse an Birke gewechselt', '喷嘴换了 🧵👩🏽‍🔧', 'a\u0000b', "'); DROP TABLE entries; --"];
    await get().transact(async ({ post }) => {
      for (const [n, text] of texts.entries())
        await post.saveWords({ message: `m${n}`, person: n < 2 ? 'p1' : 'p2', text, at: MORNING });
    });
    await get().transact(async ({ post }) => {
      for (const [n, text] of texts.entries()) expect((await post.words(`m${n}`))?.text).toBe(text);
      expect(await post.deleteWords({ message: 'm0' })).toBe(1);
      expect(await post.deleteWords({ message: 'm0' })).toBe(0);
      expect(await post.deleteWords({ person: 'p2' })).toBe(2);
      expect(await post.words('m2')).toBeUndefined();
      expect(await post.words('m1')).toEqual({ message: 'm1', person: 'p1', text: texts[1], at: MORNING });
    });
  });
}

export function keeping(get: () => Store): void {
  it('a person changes name and role and keeps the id', async () => {
    await get().transact(async ({ post }) => {
      await post.savePerson({ id: 'p1', name: 'Ines', foldedName: 'ines', role: 'keeper' });
      await post.savePerson({ id: 'p1', name: 'Inês Ø', foldedName: 'inês ø' });
    });
    await get().read(async ({ post }) => {
      expect(await post.person('p1')).toStrictEqual({ id: 'p1', name: 'Inês Ø', foldedName: 'inês ø' });
      expect(await post.peopleByName('ines')).toEqual([]);
      expect(idsOfPeople(await post.peopleByName('inês ø'))).toEqual(['p1']);
      expect(await post.person('p2')).toBeUndefined();
    });
  });

  it('two people may share a name', async () => {
    await get().transact(async ({ post }) => {
      await post.savePerson({ id: 'p2', name: 'Tom', foldedName: 'tom' });
      await post.savePerson({ id: 'p1', name: 'tom', foldedName: 'tom' });
    });
    const found = await get().read(async ({ post }) => post.peopleByName('tom'));
    expect(idsOfPeople(found)).toEqual(['p1', 'p2']);
  });

  it('an account belongs to one person, the last one linked', async () => {
    const link = { platform: 'chat', account: 'U1', person: 'p1' };
    await get().transact(async ({ post }) => {
      await post.savePerson({ id: 'p1', name: 'Ines', foldedName: 'ines' });
      await post.savePerson({ id: 'p2', name: 'Tom', foldedName: 'tom' });
      await post.linkAccount(link);
      await post.linkAccount({ platform: 'other', account: 'U1', person: 'p2' });
      expect((await post.personOfAccount('chat', 'U1'))?.id).toBe('p1');
      await post.linkAccount({ ...link, person: 'p2' });
      expect((await post.personOfAccount('chat', 'U1'))?.id).toBe('p2');
      expect(await post.accountsOf('p1')).toEqual([]);
      expect(await post.accountsOf('p2')).toHaveLength(2);
      await post.unlinkAccount('chat', 'U1');
      expect(await post.personOfAccount('chat', 'U1')).toBeUndefined();
      expect((await post.personOfAccount('other', 'U1'))?.id).toBe('p2');
    });
  });

  it('an account cannot belong to nobody', async () => {
    const work = get().transact(async ({ post }) =>
      post.linkAccount({ platform: 'chat', account: 'U1', person: 'nobody' }),
    );
    await expect(work).rejects.toMatchObject({ code: 'unknown-person' });
  });

  it('the workshop is the one that was saved last', async () => {
    expect(await get().read(async ({ post }) => post.workshop())).toBeUndefined();
    await get().transact(async ({ post }) => post.saveWorkshop('{"name":"old"}', MORNING));
    await get().transact(async ({ post }) => post.saveWorkshop('{"name":"new"}', MORNING));
    expect(await get().read(async ({ post }) => post.workshop())).toBe('{"name":"new"}');
  });

  it('conversations are kept per place and person until they expire', async () => {
    const talk = { place: '#shop', person: 'p1', state: { machine: 'birch' }, expiresAt: 100 };
    await get().transact(async ({ post }) => {
      await post.saveConversation(talk);
      await post.saveConversation({ ...talk, person: 'p2', expiresAt: 101 });
      await post.saveConversation({ ...talk, place: 'dm', state: null });
    });
    await get().transact(async ({ post }) => {
      expect(await post.conversation('#shop', 'p1')).toEqual(talk);
      expect(await post.dropExpiredConversations(100)).toBe(2);
      expect(await post.conversation('#shop', 'p1')).toBeUndefined();
      expect(await post.conversation('#shop', 'p2')).toBeDefined();
      await post.dropConversation('#shop', 'p2');
      expect(await post.conversation('#shop', 'p2')).toBeUndefined();
    });
  });

  it('with deleted words go the answers that may quote them and the person’s conversations; the message stays handled', async () => {
    await get().transact(async ({ post }) => {
      await post.recordHandled('quoted', { reply: 'no “oak” here' }, 5);
      await post.recordHandled('other', { reply: 'noted' }, 5);
      await post.saveWords({ message: 'quoted', person: 'p-gone', text: 'oak ran 4 h', at: 5 });
      await post.saveConversation({ place: 'here', person: 'p-gone', state: { said: 'oak' }, expiresAt: 99 });
      expect(await post.deleteWords({ person: 'p-gone' })).toBe(1);
      expect(await post.handled('quoted')).toEqual({ answer: null, at: 5 });
      expect(await post.handled('other')).toEqual({ answer: { reply: 'noted' }, at: 5 });
      expect(await post.conversation('here', 'p-gone')).toBeUndefined();
    });
  });

  it('checkpoints are replaced per machine and dropped by one or all', async () => {
    const birch = { machine: 'birch', foldVersion: 3, position: 7, json: '{"a":1}' };
    await get().transact(async ({ post }) => {
      await post.saveCheckpoints([birch, { ...birch, machine: 'alder' }, { ...birch, machine: 'room' }]);
      await post.saveCheckpoints([{ ...birch, position: 9 }]);
      expect(await post.checkpoint('birch')).toEqual({ ...birch, position: 9 });
      expect((await post.checkpoints()).map((row) => row.machine)).toEqual(['alder', 'birch', 'room']);
      await post.dropCheckpoints('birch');
      expect(await post.checkpoint('birch')).toBeUndefined();
      expect((await post.checkpoint('alder'))?.position).toBe(7);
      await post.dropCheckpoints();
      expect(await post.checkpoint('alder')).toBeUndefined();
    });
  });

  it('what a caller does to a person afterwards stays outside', async () => {
    const person = { id: 'p1', name: 'Ines', foldedName: 'ines' };
    await get().transact(async ({ post }) => post.savePerson(person));
    person.name = 'changed';
    expect((await get().read(async ({ post }) => post.person('p1')))?.name).toBe('Ines');
  });
}

const idsOfPeople = (people: readonly { id: string }[]): readonly string[] => people.map(({ id }) => id);
