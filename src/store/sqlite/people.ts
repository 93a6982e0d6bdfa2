/** People and their accounts. */
import { StoreFault } from '../fault.ts';
import type { Account, PeopleReader, PeopleWriter, Person } from '../post.ts';
import { Query, type Session } from './query.ts';

interface PersonRow {
  id: string;
  name: string;
  foldedName: string;
  role: 'member' | 'keeper' | null;
}

const COLUMNS = 'id, name, folded_name AS foldedName, role';
const PERSON = new Query<PersonRow>(`SELECT ${COLUMNS} FROM people WHERE id = ?`);
const BY_NAME = new Query<PersonRow>(`SELECT ${COLUMNS} FROM people WHERE folded_name = ? ORDER BY id`);
const PEOPLE = new Query<PersonRow>(`SELECT ${COLUMNS} FROM people ORDER BY id`);
const SAVE = new Query(
  `INSERT INTO people (id, name, folded_name, role) VALUES (?, ?, ?, ?)
   ON CONFLICT (id) DO UPDATE SET name = excluded.name, folded_name = excluded.folded_name, role = excluded.role`,
);
const OF_ACCOUNT = new Query<PersonRow>(
  `SELECT ${COLUMNS} FROM people WHERE id = (SELECT person FROM accounts WHERE platform = ? AND account = ?)`,
);
const ACCOUNTS = new Query<Account>(
  'SELECT platform, account, person FROM accounts WHERE person = ? ORDER BY platform, account',
);
const LINK = new Query('INSERT OR REPLACE INTO accounts (platform, account, person) VALUES (?, ?, ?)');
const UNLINK = new Query('DELETE FROM accounts WHERE platform = ? AND account = ?');

const personOf = ({ role, ...person }: PersonRow): Person => ({
  ...person,
  ...(role === null ? {} : { role }),
});

export function sqlitePeople(session: Session): PeopleReader & PeopleWriter {
  const one = (row: PersonRow | undefined): Person | undefined =>
    row === undefined ? undefined : personOf(row);
  return {
    person: async (id) => one(session.get(PERSON, id)),
    peopleByName: async (foldedName) => session.all(BY_NAME, foldedName).map(personOf),
    people: async () => session.all(PEOPLE).map(personOf),
    savePerson: async ({ id, name, foldedName, role }) => {
      session.run(SAVE, id, name, foldedName, role ?? null);
    },
    personOfAccount: async (platform, account) => one(session.get(OF_ACCOUNT, platform, account)),
    accountsOf: async (person) => session.all(ACCOUNTS, person),
    linkAccount: async ({ platform, account, person }) => {
      if (session.get(PERSON, person) === undefined)
        throw new StoreFault('unknown-person', `There is no person ${person} to link an account to.`);
      session.run(LINK, platform, account, person);
    },
    unlinkAccount: async (platform, account) => {
      session.run(UNLINK, platform, account);
    },
  };
}
