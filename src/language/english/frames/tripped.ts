/**
 * A printer that takes the mains with it: "maple trips the rcd", "birch blew a fuse", "a bang from elm". That is no
 * power cut, which comes from outside: a current went where it must not, and the machine is not run again before
 * somebody has found out why.
 */
import { hasTag } from '../../item.ts';
import { type Draft, draft, hasMachine, type Scene } from '../../scene.ts';

const DEVICE = '(?:rcds?|rcbos?|gfci|breakers?|circuit breakers?|mains breaker|fuse|fuses|main fuse|mains|trip switch|circuit|electrics|power)'; // prettier-ignore
const GOES = '(?:trips?|tripped|tripping|pops?|popped|popping|blows?|blew|blown|blowing)';
/** What was tripped, and by the machine: it is the doer, or what was done to it is named. */
const DONE_TO = new RegExp(
  `\\b(?:${GOES}|throws?|threw|takes? out|took out|kicks?|kicked|knocks?|knocked out)(?: out)? (?:the |a |our |its |another |main |whole |room 's |workshop )*${DEVICE}\\b`,
  'u',
);
const WENT = new RegExp(
  `\\b${DEVICE}(?: just| keeps?)? (?:${GOES}|goes|went|dies)\\b.*\\b(?:when|whenever|each time|every time|as soon as|the moment|because of|if)\\b`,
  'u',
);
/** Its own: "elm 's breaker tripped", "the fuse keeps blowing on birch". */
const OWN = '(?:fuses?|breakers?|circuit breakers?|rcds?|rcbos?|gfci|trip switch)';
const WENT_ON = new RegExp(
  `\\b${OWN}(?: has| have| had| is| was| just| keeps?| keep| kept| always)* (?:${GOES}|goes|went|gone)(?: again| out| twice)?(?: on| of| in| at| for) MACHINE\\b`,
  'u',
);
const ITS_OWN = new RegExp(
  `MACHINE(?: 's| s)? (?:main |mains |own |inlet |bed |input )*${OWN}(?: has| have| had| is| was| just| keeps?| keep| kept| always)* (?:${GOES}|goes|went|gone)\\b`,
  'u',
);
/** An arc, not a knock of the head on its stop. */
const BANG =
  /\b(?:bang|explosion|blue flash|flash of light)(?: came| coming)? (?:from|in|inside|out of|behind|under) (?:the |of |side |back of |inside )*MACHINE\b|MACHINE(?: 's| s)?(?: psu| power supply| control board| board| supply)? (?:just )?(?:went bang|went off with a bang|exploded)\b/u;
const KNOCKED =
  /\b(?:head|carriage|gantry|axis|plate|print|door|lid|drawer|spool|dropped|fell|homing|end stop)\b/u;

const withMachine = ({ items }: Scene): string =>
  items.map((item) => (hasTag(item, 'machine') ? 'MACHINE' : item.text)).join(' ');

/** In any mood but denied. */
export function trips(scene: Scene): boolean {
  if (!hasMachine(scene) || scene.mood.negated) return false;
  if (/\b(?:power cut|lightning|storm|kettle|heater in the|toaster)\b/u.test(scene.text)) return false;
  if (DONE_TO.test(scene.text) || WENT.test(scene.text)) return true;
  const placed = withMachine(scene);
  return WENT_ON.test(placed) || ITS_OWN.test(placed) || (BANG.test(placed) && !KNOCKED.test(placed));
}

export function readTripped(scene: Scene): Draft[] {
  const { mood } = scene;
  if (!trips(scene) || mood.question || mood.conditional || mood.reported || mood.wished) return [];
  return [draft(scene, { kind: 'symptom', symptom: 'hot-connector' }, 'symptom: took the mains with it')];
}
