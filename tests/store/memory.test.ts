import { openMemoryStore } from '../../src/store/open.ts';
import { storeContract } from './contract.ts';
import { journalContract } from './journalContract.ts';
import { trafficContract } from './trafficContract.ts';

storeContract('the store in memory', openMemoryStore);
journalContract('the store in memory', openMemoryStore);
trafficContract('the store in memory', openMemoryStore);
