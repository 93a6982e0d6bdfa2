/**
 * A machine's record as text: a cache that saves a fold, never truth. Made by another version of the fold it
 * is worth nothing, so the version travels with it.
 */
import { z } from 'zod';
import type { MachineRecord } from './record.ts';

/** Raised whenever the same entries may give another record than before. */
export const FOLD_VERSION = 7;

export const dehydrate = (machine: MachineRecord): string => JSON.stringify({ fold: FOLD_VERSION, machine });

const envelope = z.looseObject({ fold: z.literal(FOLD_VERSION), machine: z.custom<MachineRecord>(isRecord) });

/** Undefined when it cannot be used: fold from the entries then. */
export function hydrate(text: string): MachineRecord | undefined {
  try {
    return envelope.safeParse(JSON.parse(text)).data?.machine;
  } catch {
    return undefined;
  }
}

/** What this very version wrote needs no second look at every field. */
function isRecord(value: unknown): boolean {
  return typeof value === 'object' && value !== null && 'name' in value && 'totals' in value;
}
