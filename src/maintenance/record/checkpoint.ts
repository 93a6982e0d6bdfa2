/**
 * A machine's record as text: a cache that saves a fold, never truth. Made by another version of the fold it
 * is worth nothing, so the version travels with it.
 */
import { z } from 'zod';
import type { MachineRecord } from './record.ts';

/** Raised whenever the same entries may give another record than before. */
export const FOLD_VERSION = 1;

const envelope = z.strictObject({
  fold: z.literal(FOLD_VERSION),
  machine: z.looseObject({ name: z.string() }),
});

export const dehydrate = (machine: MachineRecord): string => JSON.stringify({ fold: FOLD_VERSION, machine });

/** Undefined when it cannot be used: fold from the entries then. */
export function hydrate(text: string): MachineRecord | undefined {
  try {
    const parsed = envelope.safeParse(JSON.parse(text));
    // what this very version wrote needs no second look at every field
    return parsed.success ? (parsed.data.machine as MachineRecord & { name: string }) : undefined;
  } catch {
    return undefined;
  }
}
