/** Handles messages from the given number on until it is killed; acknowledges each after its commit. */
import { openSqliteStore } from '../../../src/store/open.ts';
import { deliver } from './delivery.ts';

const [file = '', from = '0'] = process.argv.slice(2);
const store = await openSqliteStore(file);
for (let n = Number(from); ; n += 1) {
  const key = `m:${n}`;
  console.log(`${await deliver(store, key)} ${key}`);
}
