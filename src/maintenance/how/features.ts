/**
 * What a build is and is not. *Lacks* needs a statement: a feature that is not stated is never taken
 * as absent, so that nobody is told that a part is not there while it sits in front of them.
 */
import { hotLimit } from '../cautions/hotLimit.ts';
import type { Build, Guide } from '../machine.ts';
import type { StepLine, When } from './recipe.ts';

export const not =
  (when: When): When =>
  (build) =>
    !when(build);

/** All three axes are stated and none of them runs on this kind of guide. */
export const lacksGuide =
  (guide: Guide): When =>
  ({ x, y, z }) =>
    [x, y, z].every((axis) => axis !== undefined && axis !== guide);

export const isBowden: When = (build) => build.feed === 'bowden';
/** Not stated counts as lined: the worse case. */
export const mayBeLined: When = (build) => build.hotEnd !== 'all-metal';
export const isAllMetal: When = (build) => build.hotEnd === 'all-metal';
export const hotEndNotStated: When = (build) => build.hotEnd === undefined;
export const lacksTube: When = (build) => build.feed === 'direct' && build.guideTube === false;
export const lacksBelts: When = (build) => build.belts === 'none';
export const crossedBelts: When = (build) => build.belts === 'crossed';
export const lacksScrews: When = (build) => build.zDrive === 'belt';
export const hasBallScrew: When = (build) => build.zDrive === 'ball-screw';
export const hasPlasticNut: When = (build) => build.screwNut === 'plastic';
export const nutNotStated: When = (build) => build.screwNut === undefined;
export const hasProbe: When = (build) => build.probe === true;
export const lacksProbe: When = (build) => build.probe === false;
export const sprungBed: When = (build) => build.bed === 'springs';
export const rigidBed: When = (build) => build.bed === 'rigid';
export const movingBed: When = (build) => build.bedMoves === true;
export const hasSock: When = (build) => build.sock === true;
export const severalScrews: When = (build) => (build.zScrews ?? 0) > 1;

/** ", not above 240 °C" for a hot end whose limit is known; else a word of whose limit it is. */
export function limitClause(build: Build): string {
  const { limitC } = hotLimit(build);
  return limitC === undefined ? ', within the hot end’s own limit' : `, not above ${limitC} °C`;
}

/** First step of work that only needs the power off: the axis is propped unless it is stated to stay up. */
export const PROP_THEN_OFF: StepLine = {
  text: (build) =>
    build.zHolds === true
      ? 'Switch off; this Z axis is stated to stay up by itself.'
      : 'Prop the axis, then switch off.',
  caution: 'DROP',
};
