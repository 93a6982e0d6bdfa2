/** The tables of what comes from chat platforms and goes to them. */
import type { DigestsReader, DigestsWriter, Lease, LeasesReader, LeasesWriter, Traffic } from '../traffic.ts';
import { sqliteInbox } from './inbox.ts';
import { sqlitePosts } from './posts.ts';
import { Query, type Session } from './query.ts';

const CLAIM = new Query<{ platform: string; date: string; post: string | null; at: number }>(
  'SELECT platform, date, post, at FROM digests WHERE platform = ? AND date = ?',
);
const SAVE_CLAIM = new Query(
  'INSERT INTO digests (platform, date, post, at) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING',
);
const LEASE = new Query<Lease>('SELECT name, holder, until FROM leases WHERE name = ?');
const SAVE_LEASE = new Query('INSERT OR REPLACE INTO leases (name, holder, until) VALUES (?, ?, ?)');
const DROP_LEASE = new Query('DELETE FROM leases WHERE name = ?');

const sqliteClaims = (session: Session): DigestsReader & DigestsWriter & LeasesReader & LeasesWriter => ({
  digestClaim: async (platform, date) => {
    const row = session.get(CLAIM, platform, date);
    if (row === undefined) return undefined;
    const { post, ...claim } = row;
    return { ...claim, ...(post === null ? {} : { post }) };
  },
  claimDigest: async ({ platform, date, post, at }) =>
    session.run(SAVE_CLAIM, platform, date, post ?? null, at) > 0,
  lease: async (name) => session.get(LEASE, name),
  saveLease: async ({ name, holder, until }) => {
    session.run(SAVE_LEASE, name, holder, until);
  },
  dropLease: async (name) => {
    session.run(DROP_LEASE, name);
  },
});

export const sqliteTraffic = (session: Session): Traffic => ({
  ...sqliteInbox(session),
  ...sqlitePosts(session),
  ...sqliteClaims(session),
});
