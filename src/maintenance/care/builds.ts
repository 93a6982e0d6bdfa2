/** What a build has, as far as it is stated. A feature that is not stated is not there to plan work on. */
import type { Build } from '../machine.ts';
import { creepsInTheOpen } from './materials.ts';
import type { Applies, RuleFacts } from './rule.ts';

export const when = (holds: boolean): Applies => (holds ? 'yes' : 'no');
export const always = (): Applies => 'yes';

const axes = (build: Build): readonly unknown[] => [build.x, build.y, build.z];
export const hasRods = (build: Build): boolean => axes(build).includes('rods');
export const hasRails = (build: Build): boolean => axes(build).includes('rails');
export const hasWheels = (build: Build): boolean => axes(build).includes('wheels');
export const hasBelts = (build: Build): boolean => build.belts === 'straight' || build.belts === 'crossed';
export const crossed = (build: Build): boolean => build.belts === 'crossed';
export const hasScrews = (build: Build): boolean =>
  build.zDrive === 'lead-screw' || build.zDrive === 'ball-screw';
export const isBowden = (build: Build): boolean => build.feed === 'bowden';
export const hasTube = (build: Build): boolean => isBowden(build) || build.guideTube === true;
export const isLined = (build: Build): boolean => build.hotEnd === 'lined';
/** The tube itself ends in the hot zone. */
export const tubeInHotZone = (build: Build): boolean => isBowden(build) && isLined(build);
export const hasPrintedParts = (build: Build): boolean =>
  build.printedParts !== undefined && build.printedParts !== 'none';
/** Leads that flex: those of a bed that moves, or of a head that is carried on a guide. */
export const leadsFlex = (build: Build): boolean =>
  build.bedMoves === true || build.x !== undefined || build.y !== undefined;
export const hasCarbonFilter = (build: Build): boolean =>
  build.filter === 'carbon' || build.filter === 'both';
export const hasParticleFilter = (build: Build): boolean =>
  build.filter === 'particle' || build.filter === 'both';
/** Nozzle walls soft enough to wear by plain use. */
export const softNozzle = (material: string | undefined): boolean =>
  material === undefined || material === 'brass' || material === 'plated';

/** Printed parts that creep early: soft by nature, near heat, or in a warm box. */
export function creepsEarly(build: Build): boolean {
  if (build.printedParts === undefined || build.printedParts === 'none') return false;
  const { material, nearHeat } = build.printedParts;
  return creepsInTheOpen(material) || nearHeat === true || build.enclosed === true;
}

/** The most that one trim takes off; common practice says 2 to 5 mm. */
const TRIM_MM = 5;
/** Without its lengths stated, a tube is taken to bear a few trims. */
const TRIMS_UNSTATED = 3;

/** Is there still length to cut back? Below the free length that the travel needs, only a new tube remains. */
export function canTrim({ build, tubeTrims }: RuleFacts): boolean {
  if (!isBowden(build)) return false;
  if (build.tubeLengthMm === undefined || build.tubeNeededMm === undefined) return tubeTrims < TRIMS_UNSTATED;
  return build.tubeLengthMm - (tubeTrims + 1) * TRIM_MM >= build.tubeNeededMm;
}
