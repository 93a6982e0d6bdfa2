/**
 * An entry's id follows from the message that wrote it and the place in that message, so that the same
 * delivery, decided twice, makes the same ids and cannot stand in the journal twice.
 */
import { createHash } from 'node:crypto';

const BASE_32 = 'abcdefghijklmnopqrstuvwxyz234567';
/** 15 letters hold 75 bits: at a million entries a clash is rarer than one in 10^10. */
const LETTERS = 15;

/** `act`: which act of the message; `index`: which entry of that act, for acts that write several. */
export function entryId(messageKey: string, act: number, index: number): string {
  const digest = createHash('sha256')
    .update(JSON.stringify([messageKey, act, index]))
    .digest();
  return `e${base32(digest).slice(0, LETTERS)}`;
}

/** Five bits a letter, RFC 4648 alphabet in lower case, without padding. */
function base32(bytes: Uint8Array): string {
  let letters = '';
  let held = 0;
  let bits = 0;
  for (const byte of bytes) {
    held = (held << 8) | byte;
    bits += 8;
    while (bits >= 5) {
      bits -= 5;
      letters += BASE_32[(held >> bits) & 31];
    }
    held &= (1 << bits) - 1;
  }
  return letters;
}
