/**
 * Handles messages as fast as it can, for so many seconds, and acknowledges each after its commit.
 * Every second message is one that other writers are delivered as well.
 */
import { StoreBusy } from '../../../src/store/fault.ts';
import { openSqliteStore } from '../../../src/store/open.ts';
import { deliver } from './delivery.ts';

const [file = '', name = '', seconds = '1'] = process.argv.slice(2);
const store = await openSqliteStore(file);
console.log('ready');
await new Promise((resolve) => process.stdin.once('data', resolve));

const end = Date.now() + Number(seconds) * 1000;
for (let n = 0; Date.now() < end; n += 1) {
  const key = n % 2 === 0 ? `${name}:${n}` : `shared:${n}`;
  const began = performance.now();
  const outcome = await deliver(store, key).catch((error: unknown) => {
    if (error instanceof StoreBusy) return 'busy';
    throw error;
  });
  console.log(`${outcome} ${key} ${(performance.now() - began).toFixed(2)}`);
}
await store.close();
process.stdin.destroy();
