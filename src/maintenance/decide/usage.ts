/** Operating time or filament run. */
import type { Draft } from '../entry/entry.ts';
import type { DecideContext, Shops } from './context.ts';
import type { UsageDeed } from './deed.ts';
import { asked, written, type Decision, type Refused } from './decision.ts';
import { LATELY_MS, repeatOf } from './duplicate.ts';
import { BORDERS, impossible } from './figures.ts';
import { doubtHours } from './hours.ts';
import { isScene, machineScene, type Scene } from './scene.ts';

export function decideUsage(deed: UsageDeed, shops: Shops, context: DecideContext): Decision {
  const scene = machineScene(deed, shops, context);
  if (!isScene(scene)) return scene;
  const wrong = impossibleUsage(deed, scene.name);
  if (wrong) return wrong;
  const { hours, grams, metres } = deed;
  if (hours === undefined && grams === undefined && metres === undefined)
    return asked('hours', { act: 'usage', machine: scene.name });
  const draft = usageDraft(deed, scene);
  const repeats = repeatOf(draft, context) !== undefined;
  const again = repeatOf(draft, context, LATELY_MS) !== undefined;
  const doubt = hours === undefined ? undefined : doubtHours(hours, scene, context, { repeats, again });
  if (doubt) return doubt;
  const { opened } = scene.latest;
  return written([draft], scene.flags, opened ? { openedBy: { by: opened.by, at: opened.at } } : {});
}

export const impossibleUsage = (
  { hours, grams, metres }: Pick<UsageDeed, 'hours' | 'grams' | 'metres'>,
  machine: string,
): Refused | undefined => {
  const facts = { act: 'usage', machine };
  return (
    impossible('hours', hours, BORDERS.hours, facts) ??
    impossible('grams', grams, BORDERS.grams, facts) ??
    impossible('metres', metres, BORDERS.metres, facts)
  );
};

function usageDraft({ hours, grams, metres, material }: UsageDeed, { name, at, precision }: Scene): Draft {
  return {
    kind: 'usage',
    machine: name,
    ...(hours === undefined ? {} : { hours }),
    ...(grams === undefined ? {} : { grams }),
    ...(metres === undefined ? {} : { metres }),
    ...(material === undefined ? {} : { material }),
    at,
    precision,
  };
}
