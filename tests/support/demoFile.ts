/** The demo in a database file, listening in these channels of Slack, the first with the digest, and in one of Discord. */
import { openSqliteStore, type Instant } from '../../src/index.ts';
import { buildDemo } from '../../demo-data/build.ts';
import { fillWithDemo } from '../../demo-data/fill.ts';

export async function demoFile(
  file: string,
  now: Instant,
  [digest = '#print-room', ...listen]: readonly string[] = [],
): Promise<void> {
  const store = await openSqliteStore(file);
  await fillWithDemo(store, now);
  const { workshop } = buildDemo(now);
  const channels = { slack: { digest, listen }, discord: { digest: '#print-room' } };
  const listening = { ...workshop, workshop: { ...workshop.workshop, channels } };
  await store.transact(({ post }) => post.saveWorkshop(JSON.stringify(listening), now));
  await store.close();
}
