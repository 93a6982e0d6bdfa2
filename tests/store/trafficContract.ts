/** What every store does with what comes from chat platforms and goes to them. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../src/store/store.ts';
import type { InboxRow, PostRow, Traffic, TrafficReader } from '../../src/store/traffic.ts';
import { MORNING } from './entries.ts';

export function trafficContract(name: string, open: () => Promise<Store>): void {
  describe(`${name}: traffic`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(async () => store.close());
    const write = async <T>(work: (traffic: Traffic) => Promise<T>): Promise<T> =>
      store.transact(async ({ traffic }) => work(traffic));
    const read = async <T>(work: (traffic: TrafficReader) => Promise<T>): Promise<T> =>
      store.read(async ({ traffic }) => work(traffic));
    describe('what was received', () => inbox(write, read));
    describe('posts', () => posts(write, read));
    describe('buttons, digests, leases, people heard', () => rest(write, read));
  });
}

type Write = <T>(work: (traffic: Traffic) => Promise<T>) => Promise<T>;
type Read = <T>(work: (traffic: TrafficReader) => Promise<T>) => Promise<T>;

const row = (key: string, more: Partial<InboxRow> = {}): InboxRow => ({
  key,
  platform: 'chat',
  channel: 'c1',
  lane: 'chat c1',
  received: { text: `text of ${key}` },
  receivedAt: MORNING,
  tries: 0,
  notBefore: MORNING,
  ...more,
});

function inbox(write: Write, read: Read): void {
  it('is stored once by its key and once by its second identity', async () => {
    expect(await write((t) => t.receive(row('e1', { same: 'chat c1 m1' })))).toBe(true);
    expect(await write((t) => t.receive(row('e1', { same: 'chat c1 m9' })))).toBe(false);
    expect(await write((t) => t.receive(row('e2', { same: 'chat c1 m1' })))).toBe(false);
    expect(await write((t) => t.receive(row('e3')))).toBe(true);
    expect(await write((t) => t.receive(row('e4')))).toBe(true);
    expect(await read((t) => t.waitingCount())).toBe(3);
    expect((await read((t) => t.waiting(9))).map((r) => r.key)).toEqual(['e1']);
  });

  it('waits in its lane, in order of arrival, and comes back as it was', async () => {
    await write(async (t) => {
      await t.receive(row('a1', { lane: 'a', same: 's' }));
      await t.receive(row('b1', { lane: 'b' }));
      await t.receive(row('a2', { lane: 'a' }));
    });
    expect(await read((t) => t.waiting(9))).toEqual([
      row('a1', { lane: 'a', same: 's' }),
      row('b1', { lane: 'b' }),
    ]);
    expect(await read((t) => t.waiting(1))).toHaveLength(1);
    expect((await read((t) => t.waitingIn('a', 9))).map((r) => r.key)).toEqual(['a1', 'a2']);
    expect((await read((t) => t.waitingIn('a', 1))).map((r) => r.key)).toEqual(['a1']);
    await write((t) => t.postpone('a1', MORNING + 5));
    // who has to wait comes last, and says until when
    expect((await read((t) => t.waiting(9))).at(-1)).toMatchObject({ tries: 1, notBefore: MORNING + 5 });
    expect(await write((t) => t.finish('a1', MORNING + 6))).toBe(true);
    expect(await write((t) => t.finish('a1', MORNING + 6))).toBe(false);
    expect((await read((t) => t.waiting(9))).map((r) => r.key)).toEqual(['b1', 'a2']);
  });

  it('is known after it was finished, until it is forgotten', async () => {
    await write((t) => t.receive(row('e1', { same: 's1' })));
    await write((t) => t.finish('e1', MORNING));
    expect(await write((t) => t.receive(row('e1')))).toBe(false);
    expect(await write((t) => t.pruneInbox(MORNING - 1))).toBe(0);
    expect(await write((t) => t.pruneInbox(MORNING))).toBe(1);
    expect(await write((t) => t.receive(row('e1', { same: 's1' })))).toBe(true);
  });

  it('is not there when its transaction failed', async () => {
    const work = write(async (t) => {
      await t.receive(row('e1', { same: 's1' }));
      throw new Error('no');
    });
    await expect(work).rejects.toThrow('no');
    expect(await write((t) => t.receive(row('e1', { same: 's1' })))).toBe(true);
  });
}

const post = (id: string, more: Partial<PostRow> = {}): PostRow => ({
  id,
  platform: 'chat',
  channel: 'c1',
  state: 'planned',
  open: true,
  content: { reply: id },
  version: 1,
  shown: 0,
  plannedAt: MORNING,
  tries: 0,
  notBefore: MORNING,
  ...more,
});
const ids = (rows: readonly PostRow[]): string[] => rows.map(({ id }) => id);

function posts(write: Write, read: Read): void {
  it('wait to be sent in order, channel by channel', async () => {
    await write(async (t) => {
      for (const one of [
        post('p1'),
        post('p2'),
        post('q1', { channel: 'c2' }),
        post('r1', { platform: 'other' }),
      ])
        await t.savePost(one);
    });
    expect(ids(await read((t) => t.unsent(9)))).toEqual(['p1', 'q1', 'r1']);
    await write((t) => t.savePost(post('p1', { state: 'unknown', triedAt: MORNING + 1, tries: 1 })));
    expect(ids(await read((t) => t.unsent(9)))).toEqual(['p1', 'q1', 'r1']);
    await write((t) => t.savePost(post('q1', { channel: 'c2', state: 'left', open: false })));
    await write((t) => t.savePost(post('p1', { state: 'sent', open: false, shown: 1, message: 'm1' })));
    expect(ids(await read((t) => t.unsent(9)))).toEqual(['p2', 'r1']);
    expect(await read((t) => t.openPosts())).toBe(2);
  });

  it('of one channel are those that are not shown yet, in the order of their plan', async () => {
    await write(async (t) => {
      for (const id of ['p1', 'p2', 'p3', 'p4']) await t.savePost(post(id));
      await t.savePost(post('q1', { channel: 'c2' }));
      await t.savePost(post('p1', { state: 'sent', shown: 1, version: 2, message: 'm1' }));
      await t.savePost(post('p2', { state: 'left', open: false }));
      await t.savePost(post('p4', { state: 'unknown', notBefore: MORNING + 9 }));
    });
    const place = { platform: 'chat', channel: 'c1' };
    expect(ids(await read((t) => t.unsentOf(place, 9)))).toEqual(['p3', 'p4']);
    expect(ids(await read((t) => t.unsentOf(place, 1)))).toEqual(['p3']);
  });

  it('lose what they show and what their buttons stand for when the message they answer is forgotten', async () => {
    await write(async (t) => {
      await t.savePost(post('p1', { about: 'chat:1', content: { quote: 'said' } }));
      await t.savePost(post('p2', { about: 'chat:2', content: { quote: 'other' } }));
      await t.saveButtons([{ token: 'b1', post: 'p1', position: 0, button: { text: 'said' }, at: MORNING }]);
      await t.emptyPostsAbout('chat:1');
    });
    expect(await read((t) => t.post('p1'))).toMatchObject({ content: null, open: false });
    expect(await read((t) => t.post('p2'))).toMatchObject({ content: { quote: 'other' }, open: true });
    expect(await read((t) => t.button('b1'))).toMatchObject({ button: null });
  });

  it('let those go first that need not wait', async () => {
    await write(async (t) => {
      await t.savePost(post('p1', { notBefore: MORNING + 60_000 }));
      await t.savePost(post('q1', { channel: 'c2' }));
    });
    expect(ids(await read((t) => t.unsent(1)))).toEqual(['q1']);
  });

  it('come back as they were, and keep what was settled when they were planned', async () => {
    const full = post('p1', {
      about: 'chat:1',
      message: 'm',
      thread: 't',
      shownIn: 'd1',
      triedAt: MORNING,
      state: 'sent',
    });
    await write((t) => t.savePost(full));
    expect(await read((t) => t.post('p1'))).toEqual(full);
    expect(await read((t) => t.postsAbout('chat:1'))).toEqual([full]);
    expect(await read((t) => t.postsAbout('chat:2'))).toEqual([]);
    const { about: _, ...later } = { ...full, plannedAt: MORNING + 9, version: 2 };
    await write((t) => t.savePost(later));
    expect(await read((t) => t.post('p1'))).toEqual({ ...full, version: 2 });
    expect(await read((t) => t.post('p9'))).toBeUndefined();
  });

  it('that are shown and should show something else are edited, beside what waits to be sent', async () => {
    await write((t) => t.savePost(post('p1', { state: 'sent', shown: 1, version: 2, message: 'm1' })));
    await write((t) => t.savePost(post('p2')));
    expect(ids(await read((t) => t.unedited(9)))).toEqual(['p1']);
    expect(ids(await read((t) => t.unsent(9)))).toEqual(['p2']);
  });

  it('are forgotten with their buttons, but not while there is work left', async () => {
    const button = { position: 0, button: { label: 'Done' }, at: MORNING };
    await write(async (t) => {
      await t.savePost(post('p1', { state: 'sent', open: false }));
      await t.savePost(post('p2'));
      await t.saveButtons([
        { token: 'v1:a', post: 'p1', ...button },
        { token: 'v1:b', post: 'p2', ...button },
        { token: 'v1:c', ...button },
      ]);
    });
    expect(await write((t) => t.prunePosts(MORNING - 1))).toBe(0);
    expect(await write((t) => t.prunePosts(MORNING))).toBe(1);
    const left = await read(async (t) => Promise.all(['a', 'b', 'c'].map((c) => t.button(`v1:${c}`))));
    expect(left.map((b) => b?.post)).toEqual([undefined, 'p2', undefined]);
    expect(left[2]).toBeUndefined();
  });
}

function rest(write: Write, read: Read): void {
  it('a button keeps what it stood for first', async () => {
    const first = { token: 'v1:a', post: 'p1', position: 3, button: { label: 'Done' }, at: MORNING };
    await write((t) => t.saveButtons([first]));
    await write((t) => t.saveButtons([{ ...first, button: { label: 'Undo' } }]));
    expect(await read((t) => t.button('v1:a'))).toEqual(first);
    expect(await read((t) => t.button('v1:z'))).toBeUndefined();
  });

  it('a digest is claimed once for each platform and day', async () => {
    const claim = { platform: 'chat', date: '2026-03-11', post: 'p1', at: MORNING };
    expect(await write((t) => t.claimDigest(claim))).toBe(true);
    expect(await write((t) => t.claimDigest({ ...claim, post: 'p2' }))).toBe(false);
    const { post: _, ...left } = { ...claim, platform: 'other' };
    expect(await write((t) => t.claimDigest(left))).toBe(true);
    expect(await read((t) => t.digestClaim('chat', '2026-03-11'))).toEqual(claim);
    expect(await read((t) => t.digestClaim('other', '2026-03-11'))).toEqual(left);
    expect(await read((t) => t.digestClaim('chat', '2026-03-12'))).toBeUndefined();
  });

  it('a lease is held until it is given up', async () => {
    await write((t) => t.saveLease({ name: 'serve', holder: 'a', until: 5 }));
    await write((t) => t.saveLease({ name: 'serve', holder: 'a', until: 9 }));
    expect(await read((t) => t.lease('serve'))).toEqual({ name: 'serve', holder: 'a', until: 9 });
    await write((t) => t.dropLease('serve'));
    expect(await read((t) => t.lease('serve'))).toBeUndefined();
  });

  it('the last message of a channel is kept, whatever order they come in', async () => {
    const heard = { platform: 'chat', channel: 'c1', message: 'm2', saidAt: MORNING + 2, direct: false };
    await write((t) => t.saveHeard(heard));
    await write((t) => t.saveHeard({ ...heard, message: 'm1', saidAt: MORNING + 1 }));
    await write((t) => t.saveHeard({ ...heard, channel: 'a', direct: true }));
    await write((t) => t.saveHeard({ ...heard, platform: 'other' }));
    expect(await read((t) => t.heard('chat'))).toEqual([{ ...heard, channel: 'a', direct: true }, heard]);
  });

  it('an account that was seen is known by its last name', async () => {
    await write((t) => t.saveSeen({ platform: 'chat', account: 'U1', name: 'ines', at: 1 }));
    await write((t) => t.saveSeen({ platform: 'chat', account: 'U1', name: 'Ines', at: 2 }));
    expect(await read((t) => t.seen('chat', 'U1'))).toEqual({
      platform: 'chat',
      account: 'U1',
      name: 'Ines',
      at: 2,
    });
    expect(await read((t) => t.seen('other', 'U1'))).toBeUndefined();
  });
}
