import { decodeValue, encodeValue } from '../codec.ts';
import { StoreFault } from '../fault.ts';
import type { Account, Checkpoint, Person, Post, Words } from '../post.ts';
import { assertOpen, type Scope } from '../turns.ts';
import type { UndoLog } from './undo.ts';

interface Talk {
  place: string;
  person: string;
  json: string;
  expiresAt: number;
}

/** The tables of what is not fact. Values are kept as copies, so that nobody's later change reaches them. */
export interface PostTables {
  handled: Map<string, { json: string; at: number; person?: string }>;
  words: Map<string, Words>;
  people: Map<string, Person>;
  accounts: Map<string, Account>;
  workshop: Map<'workshop', string>;
  talks: Map<string, Talk>;
  checkpoints: Map<string, Checkpoint>;
}

export const emptyPost = (): PostTables => ({
  handled: new Map(),
  words: new Map(),
  people: new Map(),
  accounts: new Map(),
  workshop: new Map(),
  talks: new Map(),
  checkpoints: new Map(),
});

const pair = (a: string, b: string): string => JSON.stringify([a, b]);
const copy = <T extends object>(value: T | undefined): T | undefined =>
  value === undefined ? undefined : { ...value };
/** By their bytes, as the database compares them. */
const byBytes = (a: string, b: string): number => Buffer.compare(Buffer.from(a), Buffer.from(b));

export function memoryPost(tables: PostTables, undo: UndoLog, scope: Scope): Post {
  const open = (): PostTables => {
    assertOpen(scope);
    return tables;
  };
  const people = (): Person[] =>
    [...open().people.values()].toSorted((a, b) => byBytes(a.id, b.id)).map((person) => ({ ...person }));
  /** Removes the rows that `goes` picks; gives how many. */
  const drop = <V>(map: Map<string, V>, goes: (row: V) => boolean): number => {
    const keys = [...map].filter(([, row]) => goes(row)).map(([key]) => key);
    for (const key of keys) undo.put(map, key, undefined);
    return keys.length;
  };

  return {
    handled: async (key) => {
      const row = open().handled.get(key);
      return row === undefined ? undefined : { answer: decodeValue(row.json), at: row.at };
    },
    recordHandled: async (key, answer, at, person) => {
      if (open().handled.has(key))
        throw new StoreFault('duplicate', `The message ${key} was handled already: it is handled once.`);
      undo.put(tables.handled, key, {
        json: encodeValue(answer),
        at,
        ...(person === undefined ? {} : { person }),
      });
    },
    pruneHandled: async (before) => drop(open().handled, (row) => row.at < before),

    words: async (message) => copy(open().words.get(message)),
    saveWords: async (words) => undo.put(open().words, words.message, { ...words }),
    messagesOf: async (person) => [
      ...new Set([
        ...[...open().handled].filter(([, row]) => row.person === person).map(([key]) => key),
        ...[...open().words.values()].filter((row) => row.person === person).map((row) => row.message),
      ]),
    ],
    deleteWords: async (whose) => {
      const isMeant = (row: Words): boolean =>
        'message' in whose ? row.message === whose.message : row.person === whose.person;
      const keys =
        'message' in whose
          ? [whose.message]
          : [
              ...[...open().words.values()].filter(isMeant).map((row) => row.message),
              ...[...open().handled].filter(([, row]) => row.person === whose.person).map(([key]) => key),
            ];
      for (const key of keys) {
        const answer = open().handled.get(key);
        if (answer) undo.put(tables.handled, key, { ...answer, json: encodeValue(null) });
      }
      if ('person' in whose) drop(open().talks, (row) => row.person === whose.person);
      return drop(open().words, isMeant);
    },

    person: async (id) => copy(open().people.get(id)),
    peopleByName: async (foldedName) => people().filter((person) => person.foldedName === foldedName),
    people: async () => people(),
    savePerson: async (person) => undo.put(open().people, person.id, { ...person }),
    personOfAccount: async (platform, account) => {
      const link = open().accounts.get(pair(platform, account));
      return link === undefined ? undefined : copy(tables.people.get(link.person));
    },
    accountsOf: async (person) =>
      [...open().accounts.values()]
        .filter((link) => link.person === person)
        .toSorted((a, b) => byBytes(a.platform, b.platform) || byBytes(a.account, b.account))
        .map((link) => ({ ...link })),
    linkAccount: async (link) => {
      if (!open().people.has(link.person))
        throw new StoreFault('unknown-person', `There is no person ${link.person} to link an account to.`);
      undo.put(tables.accounts, pair(link.platform, link.account), { ...link });
    },
    unlinkAccount: async (platform, account) => undo.put(open().accounts, pair(platform, account), undefined),

    workshop: async () => open().workshop.get('workshop'),
    saveWorkshop: async (json) => undo.put(open().workshop, 'workshop', json),

    conversation: async (place, person) => {
      const row = open().talks.get(pair(place, person));
      return row === undefined
        ? undefined
        : { place, person, state: decodeValue(row.json), expiresAt: row.expiresAt };
    },
    saveConversation: async ({ place, person, state, expiresAt }) =>
      undo.put(open().talks, pair(place, person), { place, person, json: encodeValue(state), expiresAt }),
    dropConversation: async (place, person) => undo.put(open().talks, pair(place, person), undefined),
    dropExpiredConversations: async (now) => drop(open().talks, (row) => row.expiresAt <= now),

    checkpoint: async (machine) => copy(open().checkpoints.get(machine)),
    checkpoints: async () =>
      [...open().checkpoints.values()]
        .map((row) => ({ ...row }))
        .sort((a, b) => (a.machine < b.machine ? -1 : 1)),
    saveCheckpoints: async (checkpoints) => {
      for (const row of checkpoints) undo.put(open().checkpoints, row.machine, { ...row });
    },
    dropCheckpoints: async (machine) => {
      drop(open().checkpoints, (row) => machine === undefined || row.machine === machine);
    },
  };
}
