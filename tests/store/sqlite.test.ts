import { openSqliteStore } from '../../src/store/open.ts';
import { storeContract } from './contract.ts';
import { freshFiles } from './folder.ts';
import { journalContract } from './journalContract.ts';
import { trafficContract } from './trafficContract.ts';

const fresh = freshFiles();
const open = async (): ReturnType<typeof openSqliteStore> => openSqliteStore(fresh());

storeContract('the store in a file', open);
journalContract('the store in a file', open);
trafficContract('the store in a file', open);
