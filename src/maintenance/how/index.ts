/** Every task's steps, one subsystem a line. The Record makes the compiler name a task that has none. */
import type { Task } from '../codes.ts';
import type { AlwaysClosed } from '../cautions/neverSteps.ts';
import { BED } from './bed.ts';
import { BELTS } from './belts.ts';
import { CLEANING } from './cleaning.ts';
import { ELECTRICS } from './electrics.ts';
import { FEED } from './feed.ts';
import { FIRMWARE } from './firmware.ts';
import { FRAME } from './frame.ts';
import { HOT_END } from './hotEnd.ts';
import { MOTION } from './motion.ts';
import type { RecipeFor } from './recipe.ts';
import { REPLACE_BED } from './replaceBed.ts';
import { REPLACE_BELTS } from './replaceBelts.ts';
import { REPLACE_ELECTRICS } from './replaceElectrics.ts';
import { REPLACE_FEED } from './replaceFeed.ts';
import { REPLACE_HOT_END } from './replaceHotEnd.ts';
import { REPLACE_MOTION } from './replaceMotion.ts';
import { ROOM_CARE } from './room.ts';

/** A task for which steps can exist at all. */
export type OpenTask = Exclude<Task, AlwaysClosed>;

export const RECIPES: Readonly<Record<OpenTask, RecipeFor>> = {
  ...CLEANING,
  ...HOT_END,
  ...FEED,
  ...MOTION,
  ...BELTS,
  ...FRAME,
  ...BED,
  ...ELECTRICS,
  ...FIRMWARE,
  ...ROOM_CARE,
  ...REPLACE_HOT_END,
  ...REPLACE_FEED,
  ...REPLACE_BELTS,
  ...REPLACE_MOTION,
  ...REPLACE_BED,
  ...REPLACE_ELECTRICS,
};
