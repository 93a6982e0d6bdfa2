/** Safety symptoms in every mood: they go before everything else. */
import { isSafetySymptom } from '../maintenance/codes.ts';
import type { SafetyMention } from './act.ts';
import { symptomsIn } from './english/frames/symptom.ts';
import { isMadeToSound, soundsAlarm } from './english/frames/symptom-made.ts';
import { hasTag, isFn, sense } from './item.ts';
import { trips } from './english/frames/tripped.ts';
import { asserted, type Scene, textOf } from './scene.ts';

/** "on fire today, 14 parts without a miss": a good run. */
const JOKE =
  /\bon fire (?:today|tonight|this week|lately|these days|at the moment)\b|\b(?:smoking|smoke) (?:break|area|ban|hot)\b|\bsmoke ?(?:machine|detector|alarm|effect|test|bomb|sensor)\b|\bno smok\w+\b|\bsmoked (?:salmon|ham|cheese|paprika)\b|\bfire (?:alarm|extinguisher|exit|door|drill|brigade|escape|officer|blanket|safety|station|up)\b/u;

/** Not meant as it was said. */
export function isJoke(scene: Scene): boolean {
  return (
    /\bon fire (?:today|tonight|this week|lately|these days|at the moment)\b/u.test(textOf(scene)) ||
    scene.items.some((item) => isFn(item, 'joke'))
  );
}
const RETRACTS =
  /^(?:just |only |i'm |i am |i |he's |she's |he was |she was |they were |it was |that was |nah |naw |no |nope |ha |haha |lol |but )*(?:kidding|kiddin|joking|only joking|jokin|a joke|jk|joke|psych|sike|gotcha|as if|had you|got you there|april fools?|pulling your leg|winding you up|made you look|(?:i 'll|ill|i will|i 'm) (?:get|getting) (?:my|ma|me) coat|ba dum tss?)\b/u;
/** "elm has gone on strike, just kidding": what stands right before it was not meant either. */
export const retracted = (scenes: readonly Scene[], at: number): boolean =>
  scenes.slice(at + 1, at + 3).some((scene) => RETRACTS.test(textOf(scene)));
const isOtherSense = (scene: Scene): boolean =>
  isJoke(scene) || (JOKE.test(textOf(scene)) && !soundsAlarm(scene));

/** "burning smell gone now": cautioned all the same, and no alarm. */
const isOver = (scene: Scene): boolean =>
  /\b(?:gone|no longer|no more|any ?more|has stopped|have stopped|cleared up)\b/u.test(textOf(scene));

const SENSES_HEAT: ReadonlySet<string> = new Set(['heater', 'thermistor']);
const heatsUnseen = (scene: Scene): boolean =>
  !scene.mood.negated &&
  symptomsIn(scene).some(
    ({ complaint, noun, at }) =>
      noun !== undefined &&
      SENSES_HEAT.has(noun.code) &&
      (complaint === 'came-out' ||
        /^(?:fell|fallen|falls|falling|dropped|hang|dangl)/u.test(scene.items[at]?.text ?? '')),
  );

export function readSafety(
  scenes: readonly Scene[],
  machineOf: (scene: Scene) => string | undefined,
): SafetyMention[] {
  const found: SafetyMention[] = [];
  const add = (symptom: SafetyMention['symptom'], scene: Scene, isTold: boolean): void => {
    const machine = machineOf(scene);
    found.push({ symptom, asserted: isTold, ...(machine === undefined ? {} : { machine }) });
  };
  for (const scene of scenes) {
    if (
      isOtherSense(scene) ||
      isMadeToSound(scene, scenes[scene.index + 1]) ||
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
      add(symptom, scene, asserted(scene) && !isOver(scene));
    }
    // A heater that has left its block, or whose sensor has, is told too little of its own heat.
    if (heatsUnseen(scene) && !found.some((one) => one.symptom === 'runaway')) add('runaway', scene, false);
    // What trips the mains is not run again before somebody has found out why.
    if (trips(scene) && !found.some((one) => one.symptom === 'hot-connector'))
      add('hot-connector', scene, asserted(scene));
  }
  return found;
}
