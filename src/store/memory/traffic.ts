/** What comes from chat platforms and goes to them, in memory. */
import type { DigestClaim, Heard, Lease, Seen, Traffic } from '../traffic.ts';
import { assertOpen, type Scope } from '../turns.ts';
import { emptyInbox, memoryInbox, type InboxTable } from './inbox.ts';
import { emptyPosts, memoryPosts, type PostTables } from './posts.ts';
import type { UndoLog } from './undo.ts';

export interface TrafficTables {
  inbox: InboxTable;
  posts: PostTables;
  heard: Map<string, Heard>;
  seen: Map<string, Seen>;
  digests: Map<string, DigestClaim>;
  leases: Map<string, Lease>;
}

export const emptyTraffic = (): TrafficTables => ({
  inbox: emptyInbox(),
  posts: emptyPosts(),
  heard: new Map(),
  seen: new Map(),
  digests: new Map(),
  leases: new Map(),
});

const pair = (a: string, b: string): string => JSON.stringify([a, b]);
const copy = <T extends object>(value: T | undefined): T | undefined =>
  value === undefined ? undefined : { ...value };

export function memoryTraffic(tables: TrafficTables, undo: UndoLog, scope: Scope): Traffic {
  const open = (): TrafficTables => {
    assertOpen(scope);
    return tables;
  };
  return {
    ...memoryInbox(tables.inbox, undo, scope),
    ...memoryPosts(tables.posts, undo, scope),
    heard: async (platform) =>
      [...open().heard.values()]
        .filter((row) => row.platform === platform)
        .toSorted((a, b) => Buffer.compare(Buffer.from(a.channel), Buffer.from(b.channel)))
        .map((row) => ({ ...row })),
    saveHeard: async (row) => {
      const key = pair(row.platform, row.channel);
      const before = open().heard.get(key);
      if (before && before.saidAt > row.saidAt) return;
      undo.put(tables.heard, key, { ...row, direct: before?.direct ?? row.direct });
    },
    seen: async (platform, account) => copy(open().seen.get(pair(platform, account))),
    saveSeen: async (row) => undo.put(open().seen, pair(row.platform, row.account), { ...row }),
    digestClaim: async (platform, date) => copy(open().digests.get(pair(platform, date))),
    claimDigest: async (claim) => {
      const key = pair(claim.platform, claim.date);
      if (open().digests.has(key)) return false;
      undo.put(tables.digests, key, { ...claim });
      return true;
    },
    lease: async (name) => copy(open().leases.get(name)),
    saveLease: async (lease) => undo.put(open().leases, lease.name, { ...lease }),
    dropLease: async (name) => undo.put(open().leases, name, undefined),
  };
}
