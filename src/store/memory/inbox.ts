/** What was received, in memory. */
import { decodeValue, encodeValue } from '../codec.ts';
import type { InboxReader, InboxRow, InboxWriter } from '../traffic.ts';
import { assertOpen, type Scope } from '../turns.ts';
import type { UndoLog } from './undo.ts';

interface Kept {
  row: Omit<InboxRow, 'received'>;
  json: string;
  doneAt?: number;
}
export interface InboxTable {
  /** In order of arrival. */
  rows: Map<string, Kept>;
  same: Map<string, string>;
}

export const emptyInbox = (): InboxTable => ({ rows: new Map(), same: new Map() });

const rowOf = ({ json, row }: Kept): InboxRow => ({ ...row, received: decodeValue(json) });

export function memoryInbox(table: InboxTable, undo: UndoLog, scope: Scope): InboxReader & InboxWriter {
  const open = (): InboxTable => {
    assertOpen(scope);
    return table;
  };
  const waiting = (): Kept[] => [...open().rows.values()].filter(({ doneAt }) => doneAt === undefined);
  return {
    waiting: async (limit) => {
      const lanes = new Set<string>();
      const first = waiting().filter(({ row }) => !lanes.has(row.lane) && Boolean(lanes.add(row.lane)));
      return first
        .toSorted((a, b) => a.row.notBefore - b.row.notBefore)
        .slice(0, limit)
        .map(rowOf);
    },
    waitingIn: async (lane, limit) =>
      waiting()
        .filter(({ row }) => row.lane === lane)
        .slice(0, limit)
        .map(rowOf),
    waitingCount: async () => waiting().length,
    receive: async ({ received, ...row }) => {
      if (open().rows.has(row.key) || (row.same !== undefined && table.same.has(row.same))) return false;
      undo.put(table.rows, row.key, { row, json: encodeValue(received) });
      if (row.same !== undefined) undo.put(table.same, row.same, row.key);
      return true;
    },
    postpone: async (key, notBefore) => {
      const kept = open().rows.get(key);
      if (!kept || kept.doneAt !== undefined) return;
      const row = { ...kept.row, notBefore, tries: kept.row.tries + 1 };
      undo.put(table.rows, key, { ...kept, row });
    },
    finish: async (key, at) => {
      const kept = open().rows.get(key);
      if (!kept || kept.doneAt !== undefined) return false;
      undo.put(table.rows, key, { ...kept, doneAt: at, json: 'null' });
      return true;
    },
    pruneInbox: async (until) => {
      const old = [...open().rows.values()].filter(({ doneAt }) => doneAt !== undefined && doneAt <= until);
      for (const {
        row: { key, same },
      } of old) {
        undo.put(table.rows, key, undefined);
        if (same !== undefined) undo.put(table.same, same, undefined);
      }
      return old.length;
    },
  };
}
