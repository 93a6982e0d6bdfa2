/** Opens the database it is given, without the superuser's rights, and prints what came of it. */
import Database from 'better-sqlite3';
import { StoreFault } from '../../../src/store/fault.ts';
import { openSqliteStore } from '../../../src/store/open.ts';

const NOBODY = 65_534;
const [file = ''] = process.argv.slice(2);

// The driver loads its library at the first use: before the rights to read it may be gone.
new Database(':memory:').close();
if (process.getuid?.() === 0) {
  process.setgid?.(NOBODY);
  process.setuid?.(NOBODY);
}

const outcome = await openSqliteStore(file).then(
  async (store) => store.close().then(() => 'opened'),
  (error: unknown) => (error instanceof StoreFault ? error.code : String(error)),
);
console.log(outcome);
