/** What can go wrong with the store itself. A refusal by the rules is a value; this is thrown. */
export type StoreFaultCode =
  /** Another process held the database for longer than the patience. */
  | 'busy'
  | 'missing-folder'
  | 'not-a-database'
  /** A database, but of another program. */
  | 'not-ours'
  /** Made by a newer Fettle. */
  | 'newer-database'
  | 'read-only'
  | 'cannot-open'
  | 'damaged'
  | 'disk-full'
  | 'disk-error'
  /** An id or a message key that is there already. */
  | 'duplicate'
  | 'unknown-person'
  /** What is stored cannot be read, or what is given cannot be stored. */
  | 'unreadable'
  | 'closed'
  /** Used after its transaction ended, or one opened inside another: a mistake in the program. */
  | 'misused'
  | 'failed';

export interface FaultDetail {
  cause?: unknown;
}

/** The database cannot be written to just now, whatever is written: the same may go well when it is tried again. */
const OUT_OF_REACH: ReadonlySet<StoreFaultCode> = new Set([
  'busy', 'read-only', 'cannot-open', 'missing-folder', 'disk-full', 'disk-error', 'closed',
]); // prettier-ignore
export const isOutOfReach = (fault: unknown): boolean =>
  fault instanceof StoreFault && OUT_OF_REACH.has(fault.code);

/** `message` is one sentence that a person can act on. */
export class StoreFault extends Error {
  readonly code: StoreFaultCode;

  constructor(code: StoreFaultCode, sentence: string, detail: FaultDetail = {}) {
    super(sentence, 'cause' in detail ? { cause: detail.cause } : undefined);
    this.name = 'StoreFault';
    this.code = code;
  }
}

/** Nothing was written; the same message may simply be sent again. */
export class StoreBusy extends StoreFault {
  constructor(detail: FaultDetail = {}) {
    super(
      'busy',
      'Another Fettle is writing to the same database and did not finish in time: nothing was noted, please say it again.',
      detail,
    );
    this.name = 'StoreBusy';
  }
}
