/** The two larger shapes inside entries: a build, and what an amendment may set. Strict, like the entries. */
import { z } from 'zod';
import { isDate } from '../calendar.ts';
import { CONSUMABLES, FINDINGS, MATERIALS, PARTS, REASONS, SYMPTOMS, TASKS } from '../codes.ts';
import type { Build } from '../machine.ts';
import type { Amendment } from './entry.ts';

const guide = z.enum(['rods', 'rails', 'wheels']).exactOptional();
const flag = z.boolean().exactOptional();
const measure = z.number().positive().exactOptional();

const nozzle = z.strictObject({
  material: z.enum(['brass', 'plated', 'hardened', 'carbide', 'gem']).exactOptional(),
  boreMm: measure,
  mount: z.enum(['threaded', 'one-piece', 'quick-change']).exactOptional(),
});
const printedParts = z.strictObject({
  material: z.enum(MATERIALS),
  which: z.array(z.string()).exactOptional(),
  nearHeat: flag,
});

export const buildShape = z.strictObject({
  x: guide,
  y: guide,
  z: guide,
  rodBearing: z.enum(['ball', 'bronze', 'polymer']).exactOptional(),
  zDrive: z.enum(['lead-screw', 'ball-screw', 'belt']).exactOptional(),
  zHolds: flag,
  zScrews: z.int().positive().exactOptional(),
  screwNut: z.enum(['metal', 'plastic']).exactOptional(),
  screwNutLubricant: z.string().exactOptional(),
  belts: z.enum(['straight', 'crossed', 'none']).exactOptional(),
  feed: z.enum(['bowden', 'direct']).exactOptional(),
  guideTube: flag,
  tubeLengthMm: measure,
  tubeNeededMm: measure,
  hotEnd: z.enum(['lined', 'all-metal']).exactOptional(),
  hotEndMaxC: measure,
  nozzle: nozzle.exactOptional(),
  bed: z.enum(['springs', 'rigid']).exactOptional(),
  probe: flag,
  bedMoves: flag,
  bedHeater: z.enum(['low-voltage', 'mains', 'none']).exactOptional(),
  printedParts: z.union([printedParts, z.literal('none')]).exactOptional(),
  enclosed: flag,
  filter: z.enum(['carbon', 'particle', 'both', 'none']).exactOptional(),
  filamentMm: z.union([z.literal(1.75), z.literal(2.85)]).exactOptional(),
  sock: flag,
  filamentSensor: flag,
  guards: flag,
} satisfies Record<keyof Build, z.ZodType>) satisfies z.ZodType<Build>;

const amount = z.number().nonnegative().exactOptional();

export const amendmentShape = z.strictObject({
  at: z.int().min(0).max(253_402_300_799_999).exactOptional(),
  precision: z.enum(['instant', 'day', 'about']).exactOptional(),
  machine: z.string().min(1).exactOptional(),
  hours: amount,
  grams: amount,
  metres: amount,
  material: z.enum(MATERIALS).exactOptional(),
  part: z.enum([...PARTS, ...CONSUMABLES]).exactOptional(),
  task: z.enum(TASKS).exactOptional(),
  symptom: z.enum(SYMPTOMS).exactOptional(),
  finding: z.enum(FINDINGS).exactOptional(),
  reason: z.enum(REASONS).exactOptional(),
  fitted: z.string().exactOptional(),
  change: z.int().exactOptional(),
  count: z.int().nonnegative().exactOptional(),
  until: z.string().refine(isDate, { error: 'must be a date, YYYY-MM-DD' }).exactOptional(),
} satisfies Record<keyof Amendment, z.ZodType>) satisfies z.ZodType<Amendment>;
