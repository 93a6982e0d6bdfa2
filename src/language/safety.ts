/** Safety symptoms in every mood, and people who were hurt: they go before everything else. */
import { isSafetySymptom } from '../maintenance/codes.ts';
import type { InjuryKind, SafetyMention } from './act.ts';
import { symptomsIn } from './english/frames/symptom.ts';
import { hasTag, isFn, sense } from './item.ts';
import { asserted, type Scene, textOf } from './scene.ts';

const HURT =
  /\b(?:burn(?:t|ed)|cut|scalded|scorched|pinched|crushed|trapped|caught|stabbed|sliced|hurt|injured|singed|nicked|blistered) (?:my|his|her|their|a|the|our|me|him|myself|himself|herself|[a-z]+ 's)? ?(?:left |right |poor |whole )?(?:thumb|finger|fingers|hand|hands|arm|palm|eye|eyes|face|wrist|fingertip|fingertips|skin|knuckle|knuckles|leg|foot|hair|myself|himself|herself|himself)\b|\b(?:bleeding|first degree|in my eye|in his eye|in her eye|got hurt|is hurt|was hurt|injur\w+|burned myself|burnt myself|cut myself|cut himself|cut herself|burned himself|burnt himself|burnt herself|passed out|needs stitches|ambulance)\b/u;
/** "on fire today, 14 parts without a miss": a good run. */
const JOKE =
  /\bon fire (?:today|tonight|this week|lately|these days|at the moment)\b|\b(?:smoking|smoke) (?:break|area|ban|hot)\b|\bsmoke ?(?:machine|detector|alarm|effect|test|bomb|sensor)\b|\bno smok\w+\b|\bsmoked (?:salmon|ham|cheese|paprika)\b|\bfire (?:alarm|extinguisher|exit|door|drill|brigade|escape|officer|blanket|safety|station|up)\b/u;

/** Eyes and lungs are hurt without a verb of hurting. */
const HARMED =
  /\b(?:eye|eyes|face)\b.*\b(?:splash\w*|sprayed|hit|got|stings?|burns?|burning)\b|\b(?:splash\w*|sprayed|got)\b.*\b(?:in|into) (?:my|his|her|their|the) (?:eye|eyes|face)\b|\b(?:coughing|dizzy|sick|faint|headache|can't breathe|cannot breathe)\b.*\bfumes?\b|\bfumes?\b.*\b(?:coughing|dizzy|sick|faint|headache)\b/u;

/** Which first aid; the eye before all, since it is often a burn or a cut as well. */
const KINDS: readonly (readonly [InjuryKind, RegExp])[] = [
  ['eye', /\beyes?\b/u],
  ['fumes', /\bfumes?\b|\bbreathe\b/u],
  ['cut', /\b(?:cut|sliced|stabbed|nicked|bleeding|stitches)\b/u],
  ['burn', /\b(?:burn\w*|scald\w*|scorch\w*|sing\w*|blister\w*)\b/u],
];

/** What kind of injury is told, as far as the words say; undefined where nobody is hurt or none is named. */
export const injuryKind = (scenes: readonly Scene[]): InjuryKind | undefined => {
  const hurt = scenes.filter(isHurt).map(textOf).join(' ');
  return KINDS.find(([, words]) => words.test(hurt))?.[0];
};

const isHurt = (scene: Scene): boolean => HURT.test(textOf(scene)) || HARMED.test(textOf(scene));

export const readInjury = (scenes: readonly Scene[]): boolean => scenes.some(isHurt);

/** Not meant as it was said. */
export function isJoke(scene: Scene): boolean {
  return (
    /\bon fire (?:today|tonight|this week|lately|these days|at the moment)\b/u.test(textOf(scene)) ||
    scene.items.some((item) => isFn(item, 'joke'))
  );
}
/** "elm has gone on strike, just kidding": what stands right before it was not meant either. */
export const retracted = (scenes: readonly Scene[], at: number): boolean =>
  scenes
    .slice(at + 1, at + 3)
    .some((scene) => /^(?:just |only |i'm |i am |i )*(?:kidding|joking|jk|joke)\b/u.test(textOf(scene)));
const isOtherSense = (scene: Scene): boolean => isJoke(scene) || JOKE.test(textOf(scene));

export function readSafety(
  scenes: readonly Scene[],
  machineOf: (scene: Scene) => string | undefined,
): SafetyMention[] {
  const found: SafetyMention[] = [];
  for (const scene of scenes) {
    if (
      isOtherSense(scene) ||
      (scene.items.some((item) => hasTag(item, 'foreign')) &&
        !scene.items.some((item) => hasTag(item, 'machine')))
    )
      continue;
    for (const { symptom, at } of symptomsIn(scene)) {
      if (
        !isSafetySymptom(symptom) ||
        (sense(scene.items[at], 'thing') && /detector|alarm/u.test(scene.items[at]?.text ?? ''))
      )
        continue;
      if ((scene.mood.negated && !scene.mood.question) || found.some((one) => one.symptom === symptom))
        continue;
      const machine = machineOf(scene);
      found.push({ symptom, asserted: asserted(scene), ...(machine === undefined ? {} : { machine }) });
    }
  }
  return found;
}
