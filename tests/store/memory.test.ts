import { openMemoryStore } from '../../src/store/open.ts';
import { storeContract } from './contract.ts';
import { journalContract } from './journalContract.ts';

storeContract('the store in memory', openMemoryStore);
journalContract('the store in memory', openMemoryStore);
