/** What is fetched for one task, as the machine's build wants it; the steps name everyday things besides. */
import type { Task } from '../codes.ts';
import { keptPerBuild } from '../keptPerBuild.ts';
import type { Build } from '../machine.ts';
import { recipeOn } from './howTo.ts';
import { SUPPLIES, isEveryday } from './tools.ts';
import type { Supply, Tool } from './tools.ts';

export interface Kit {
  tools: readonly Tool[];
  supplies: readonly Supply[];
}

/** Where nobody is given steps there is nothing to fetch either. */
function kitOn(task: Task, build: Build): Kit {
  const recipe = recipeOn(task, build);
  if ('kind' in recipe) return { tools: [], supplies: [] };
  const tools = recipe.tools.filter((tool) => !isEveryday(tool));
  const supplies = (recipe.supplies ?? []).filter((supply) => !SUPPLIES[supply].ifNeeded);
  return { tools, supplies };
}

export const kitFor = keptPerBuild(kitOn);
