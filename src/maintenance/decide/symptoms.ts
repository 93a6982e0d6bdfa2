/** What was seen, and what is not there any more. */
import { isSafetySymptom } from '../codes.ts';
import { openSymptoms } from '../record/reducers/symptoms.ts';
import type { DecideContext, Shops } from './context.ts';
import type { GoneDeed, SymptomDeed } from './deed.ts';
import { written, type Decision } from './decision.ts';
import { heldBy } from './hold.ts';
import { isScene, sceneOf } from './scene.ts';

export function decideSymptom(deed: SymptomDeed, shops: Shops, context: DecideContext): Decision {
  const scene = sceneOf(deed, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision, flags } = scene;
  const { symptom, part } = deed;
  const draft = { kind: 'seen', machine, symptom, ...(part ? { part } : {}), at, precision } as const;
  return written([draft], flags, isSafetySymptom(symptom) ? { hold: symptom } : {});
}

/** What a machine is held for is lifted by what was found, not by its being gone. */
export function decideGone(deed: GoneDeed, shops: Shops, context: DecideContext): Decision {
  const scene = sceneOf(deed, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision, flags, latest } = scene;
  const { symptom } = deed;
  const cleared = symptom ? [symptom] : openSymptoms(latest).filter((open) => !isSafetySymptom(open));
  const onlyTheHold = symptom ? isSafetySymptom(symptom) : cleared.length === 0;
  if (latest.hold && onlyTheHold) return heldBy(machine, latest.hold);
  return written([{ kind: 'cleared', machine, ...(symptom ? { symptom } : {}), at, precision }], flags, {
    cleared,
  });
}
