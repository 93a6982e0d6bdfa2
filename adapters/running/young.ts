/**
 * The room for young objects. V8 doubles it again and again while modules load, of which everything stays, and never
 * gives it back: a third of what a process that mostly waits would hold. So it is held while they load, and may grow
 * again as soon as there is work.
 */
import { setFlagsFromString } from 'node:v8';

export const holdYoung = (): void => setFlagsFromString('--semi-space-growth-factor=1');
/** As V8 has it by itself. */
export const releaseYoung = (): void => setFlagsFromString('--semi-space-growth-factor=2');
