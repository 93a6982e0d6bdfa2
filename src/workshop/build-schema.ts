/** A machine's build as the workshop file states it: the same words as `maintenance/machine.ts`. */
import * as z from 'zod';
import { MATERIALS } from '../maintenance/codes.ts';
import type { Build, Nozzle, PrintedParts } from '../maintenance/machine.ts';
import { fitted, kindOrNone, listOf, positive, section, text, word } from './fields.ts';

const guide = word(['rods', 'rails', 'wheels']);
const MAX_BORE_MM = 5;
const MAX_TUBE_MM = 20_000;
const MAX_CELSIUS = 600;
const MAX_SCREWS = 8;

const nozzle: z.ZodType<Nozzle> = section({
  material: word(['brass', 'plated', 'hardened', 'carbide', 'gem']).exactOptional(),
  boreMm: positive(MAX_BORE_MM).exactOptional(),
  mount: word(['threaded', 'one-piece', 'quick-change']).exactOptional(),
} satisfies Record<keyof Nozzle, z.ZodType>);

const printedParts: z.ZodType<PrintedParts> = section({
  material: word(MATERIALS),
  which: listOf(text).exactOptional(),
  nearHeat: fitted.exactOptional(),
} satisfies Record<keyof PrintedParts, z.ZodType>);

const shape = {
  x: guide.exactOptional(),
  y: guide.exactOptional(),
  z: guide.exactOptional(),
  rodBearing: word(['ball', 'bronze', 'polymer']).exactOptional(),
  zDrive: word(['lead-screw', 'ball-screw', 'belt']).exactOptional(),
  zHolds: fitted.exactOptional(),
  zScrews: positive(MAX_SCREWS).int('must be a whole number').exactOptional(),
  screwNut: word(['metal', 'plastic']).exactOptional(),
  screwNutLubricant: text.exactOptional(),
  belts: kindOrNone(['straight', 'crossed']).exactOptional(),
  feed: word(['bowden', 'direct']).exactOptional(),
  guideTube: fitted.exactOptional(),
  tubeLengthMm: positive(MAX_TUBE_MM).exactOptional(),
  tubeNeededMm: positive(MAX_TUBE_MM).exactOptional(),
  hotEnd: word(['lined', 'all-metal']).exactOptional(),
  hotEndMaxC: positive(MAX_CELSIUS).exactOptional(),
  nozzle: nozzle.exactOptional(),
  bed: word(['springs', 'rigid']).exactOptional(),
  probe: fitted.exactOptional(),
  bedMoves: fitted.exactOptional(),
  bedHeater: kindOrNone(['low-voltage', 'mains']).exactOptional(),
  printedParts: z
    .union([kindOrNone([]), printedParts], { error: 'must say the material, or not fitted' })
    .exactOptional(),
  enclosed: fitted.exactOptional(),
  filter: kindOrNone(['carbon', 'particle', 'both']).exactOptional(),
  filamentMm: z.literal([1.75, 2.85], { error: 'must be 1.75 or 2.85' }).exactOptional(),
  sock: fitted.exactOptional(),
  filamentSensor: fitted.exactOptional(),
  guards: fitted.exactOptional(),
} satisfies Record<keyof Build, z.ZodType>;

export const buildSchema: z.ZodType<Build> = section(shape);
