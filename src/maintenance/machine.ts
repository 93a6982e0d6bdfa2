/** How a machine is built. A feature that is absent here is *not stated*: neither fitted nor not fitted. */
import type { Material } from './codes.ts';

export type Guide = 'rods' | 'rails' | 'wheels';
export type NozzleMaterial = 'brass' | 'plated' | 'hardened' | 'carbide' | 'gem';

export interface Nozzle {
  material?: NozzleMaterial;
  boreMm?: number;
  mount?: 'threaded' | 'one-piece' | 'quick-change';
}

export interface PrintedParts {
  material: Material;
  /** What they are, in the workshop's own words: "tensioner", "hot-end mount". */
  which?: readonly string[];
  nearHeat?: boolean;
}

export interface Build {
  x?: Guide;
  y?: Guide;
  z?: Guide;
  rodBearing?: 'ball' | 'bronze' | 'polymer';
  zDrive?: 'lead-screw' | 'ball-screw' | 'belt';
  /** Does the axis stay up without power? Not stated is treated as no: prop it. */
  zHolds?: boolean;
  zScrews?: number;
  screwNut?: 'metal' | 'plastic';
  /** The lubricant that the plastic nut's maker names, if any. */
  screwNutLubricant?: string;
  belts?: 'straight' | 'crossed' | 'none';
  feed?: 'bowden' | 'direct';
  /** A tube that leads the filament to a direct feed. */
  guideTube?: boolean;
  tubeLengthMm?: number;
  /** The free length that the travel needs: below it, a tube cannot be trimmed any more. */
  tubeNeededMm?: number;
  hotEnd?: 'lined' | 'all-metal';
  hotEndMaxC?: number;
  nozzle?: Nozzle;
  bed?: 'springs' | 'rigid';
  probe?: boolean;
  bedMoves?: boolean;
  bedHeater?: 'low-voltage' | 'mains' | 'none';
  printedParts?: PrintedParts | 'none';
  enclosed?: boolean;
  filter?: 'carbon' | 'particle' | 'both' | 'none';
  filamentMm?: 1.75 | 2.85;
  sock?: boolean;
  filamentSensor?: boolean;
  /** A door switch or a cover that keeps hands out. */
  guards?: boolean;
}

/** A machine's name as everybody writes it: lower case, composed (NFC), single spaces. */
export const foldName = (name: string): string =>
  name.normalize('NFC').trim().replace(/\s+/gu, ' ').toLocaleLowerCase('en');
