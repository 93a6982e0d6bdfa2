/**
 * A printer that takes the mains with it: "maple trips the rcd", "birch blew a fuse". That is no power cut, which comes
 * from outside, and no symptom of the vocabulary says what it was: caution first, then one question.
 */
import { hasTag } from '../../item.ts';
import { type Draft, draft, hasMachine, type Scene } from '../../scene.ts';

const DEVICE = '(?:rcd|rcbo|gfci|breaker|circuit breaker|mains breaker|fuse|fuses|main fuse|mains|trip switch|circuit|electrics|power)'; // prettier-ignore
/** What was tripped, and by the machine: it is the doer, or what was done to it is named. */
const DONE_TO = new RegExp(
  `\\b(?:trips?|tripped|tripping|pops?|popped|popping|blows?|blew|blown|blowing|throws?|threw|takes? out|took out|kicks?|kicked|knocks?|knocked out)(?: out)? (?:the |a |our |its |another |main |whole |room 's |workshop )*${DEVICE}\\b`,
  'u',
);
const WENT = new RegExp(
  `\\b${DEVICE}(?: just| keeps?)? (?:trips?|tripped|tripping|pops?|popped|popping|blows?|blew|blown|blowing|goes|went|dies)\\b.*\\b(?:when|whenever|each time|every time|as soon as|the moment|because of|if)\\b`,
  'u',
);

/** In any mood but denied. */
export function trips(scene: Scene): boolean {
  if (!hasMachine(scene) || scene.mood.negated) return false;
  if (/\b(?:power cut|lightning|storm|kettle|heater in the|toaster)\b/u.test(scene.text)) return false;
  return DONE_TO.test(scene.text) || WENT.test(scene.text);
}

export function readTripped(scene: Scene): Draft[] {
  const { mood } = scene;
  if (!trips(scene) || mood.question || mood.conditional || mood.reported || mood.wished) return [];
  const name = scene.items.find((item) => hasTag(item, 'machine'))?.text ?? 'it';
  const why = `What was it on ${name}: a hot plug, a bare wire, a smell, smoke, or a tingle from the frame?`;
  return [draft(scene, { kind: 'unclear', why }, 'unclear: took the mains with it', {
    doubt: { field: 'task', said: scene.text, options: [] },
  })]; // prettier-ignore
}
