/** Down, up, open, closed. */
import { isSafetySymptom } from '../../../maintenance/codes.ts';
import { hasTag, isFn, isThing, type Item, sensesOf } from '../../item.ts';
import { ownDenial } from '../../mood.ts';
import { deedOf, type Draft, draft, hasMachine, type Scene, someFn, textOf } from '../../scene.ts';
import { otherSubject } from '../../subject.ts';
import { symptomsIn } from './symptom.ts';

/** The machine is the one spoken of: no part stands between. */
function ofMachine(whole: Scene): boolean {
  const until = whole.items.findIndex(
    (item) => isFn(item, 'until', 'for', 'with') || / (?:until|till)$/u.test(item.text),
  );
  const scene = until < 0 ? whole : { ...whole, nouns: whole.nouns.filter((noun) => noun.at < until) };
  return scene.nouns.every((noun) =>
    noun.part === undefined ||
    (noun.weak && !/^(?:screw|bolt|nut|sheet|plate|tip)/u.test(scene.items[noun.at]?.text ?? ''))
      ? ![
          'fan',
          'bed',
          'feeder',
          'settings',
          'firmware',
          'hot-end',
          'temperature',
          'layer',
          'first-layer',
          'dryer',
          'extraction',
          'extinguisher',
          'enclosure',
          'axis',
          'gantry',
        ].includes(noun.code) && noun.part === undefined
      : false,
  );
}

export function readState(scene: Scene, before?: Scene): Draft[] {
  const { mood, items } = scene;
  const told =
    !mood.question &&
    !mood.conditional &&
    !mood.reported &&
    !mood.wished &&
    !(mood.planned && !someFn(scene, 'until') && !/\b(?:until|till)\b/u.test(textOf(scene)));
  if (!told || isManner(scene) || (mood.requested && !forbids(scene) && !treatedAs(scene))) return [];
  if (isTheirDoing(scene) && !hasMachine(scene)) return [];
  if (treatedAs(scene)) return [draft(scene, { kind: 'down' }, 'state: to be taken for it')];
  if (takesSignOff(scene)) return [draft(scene, { kind: 'up' }, 'state: its sign is off')];
  if (noPrintsUntil(scene)) return [draft(scene, { kind: 'down' }, 'state: no prints until')];
  const states = sensesOf(soFar(items), 'state').map((s) => s.code);
  const spoken = textOf(scene);
  if (pulledPlug(scene) || hungNotice(scene))
    return [draft(scene, { kind: 'down' }, 'state: taken out of use')];
  if (isOutNoMore(scene, states)) return [draft(scene, { kind: 'up' }, 'state: no longer down')];
  if (mood.negated && !forbids(scene) && !handsIn(scene) && !/no longer|any more/u.test(spoken))
    return states.includes('up') && ofMachine(scene) && hasMachine(scene)
      ? [draft(scene, { kind: 'down' }, 'state: not usable')]
      : [];
  const hot = scene.nouns.some(
    (noun) =>
      noun.code === 'hot-end' ||
      noun.code === 'feeder' ||
      noun.code === 'enclosure' ||
      noun.code === 'gantry' ||
      noun.code === 'bed' ||
      noun.part !== undefined,
  );
  if (
    handsIn(scene) ||
    liesInParts(scene) ||
    takesApart(scene) ||
    ((states.includes('open') || partsOff(scene)) &&
      !mood.negated &&
      !forbids(scene) &&
      !states.includes('close') &&
      (hot
        ? partsOff(scene) ||
          /in bits|in pieces|apart|open|lying|stripped down|\b(?:covers?|lid|hood|panels?|casing) (?:is |are )?off\b/u.test(
            spoken,
          )
        : true) &&
      !isShut(scene))
  )
    return opened(scene);
  if (
    states.includes('close') &&
    (ofMachine(scene) || /together|buttoned|one piece|assembled/u.test(spoken)) &&
    !deedOf(scene, 'swap', 'oil')
  )
    return [
      draft(scene, { kind: 'close' }, 'state: closed'),
      ...(hasMachine(scene) && isUpBesides(scene) ? [draft(scene, { kind: 'up' }, 'state: up')] : []),
    ];
  if (allBackOn(scene)) return [draft(scene, { kind: 'close' }, 'state: all back on')];
  if (runsAgain(scene, before)) return [draft(scene, { kind: 'up' }, 'state: runs, once closed')];
  if (mayUseAgain(scene) || givenBack(scene) || isBackOn(scene))
    return [draft(scene, { kind: 'up' }, 'state: may be used again')];
  if (closesUp(scene) || (/\b(?:done|finished|through) (?:inside|in) /u.test(scene.text) && isOutOf(scene)))
    return [draft(scene, { kind: 'close' }, 'state: put together')];
  if (states.includes('up') && ofMachine(scene) && isUp(scene) && symptomsIn(scene).length === 0)
    return [draft(scene, { kind: 'up' }, 'state: up')];
  if (states.includes('down') && ofMachine(scene) && isDown(scene))
    return [draft(scene, { kind: 'down' }, 'state: down')];
  if (isOut(scene) && scene.nouns.length === 0) return [draft(scene, { kind: 'down' }, 'state: out')];
  if (mayStart(scene, before)) return [draft(scene, { kind: 'up' }, 'state: closed, and may be started')];
  return deadMachine(scene, before) ? [draft(scene, { kind: 'down' }, 'state: dead')] : [];
}
/** "until it is repaired", "before it is back": not yet. */
function soFar(whole: Scene['items']): Scene['items'] {
  // "hazel don't turn on": what it does not do, and no bidding
  const items = whole.filter((item, at) => !(/ (?:turn|switch|power) (?:it )?(?:on|up)$/u.test(item.text) && (hasTag(whole[at - 1], 'machine') || isFn(whole[at - 1], 'it', 'i', 'we', 'they')))); // prettier-ignore
  const until = items.findIndex((item, at) => at > 0 && (isFn(item, 'until') || item.text === 'before') && item.senses.every((s) => s.tag !== 'state')); // prettier-ignore
  return until < 0 ? items : items.slice(0, until);
}
const forbids = (scene: Scene): boolean =>
  !isRule(scene) &&
  scene.items.some(
    (item, at) =>
      !(hasTag(scene.items[at + 1], 'machine') && isFn(scene.items[at + 2], 'possessive')) &&
      item.senses.some((s) => s.tag === 'state' && s.code === 'down') &&
      /^(?:do not|don't|nobody|no one|not|nobody)/u.test(item.text),
  );
/** "don't print on birch with the door open", "… while I'm away", "… faster than 30": how it is used, not whether. */
function isRule(scene: Scene): boolean {
  const machine = scene.items.findIndex((item) => hasTag(item, 'machine'));
  return scene.items
    .slice(machine + 1)
    .some(
      (item) =>
        isFn(item, 'with', 'while', 'when', 'than', 'before', 'if', 'every') ||
        /^(?:without|unless|whenever|overnight|at night)$/u.test(item.text),
    );
}
/** "may only be used with the door closed", "prints with its door open": how it runs, and no hands in it. */
const isManner = (scene: Scene): boolean => {
  const at = scene.items.findIndex((item) => isFn(item, 'with') || item.text === 'without');
  return (
    at > 0 &&
    scene.nouns.some((noun) => noun.at > at && ['door', 'enclosure', 'guard', 'lid'].includes(noun.code)) &&
    (scene.verbs.some((verb) => verb.at < at && ['print', 'run', 'use', 'start'].includes(verb.code)) ||
      scene.items
        .slice(0, at)
        .some((item) => /\b(?:print|prints|printing|runs|running|used|use)\b/u.test(item.text)))
  );
};
/** "before you open the feeder": said to anybody, of what they may do. */
const isTheirDoing = (scene: Scene): boolean =>
  scene.items.some(
    (item, at) =>
      item.senses.some((s) => s.tag === 'state') && isFn(scene.items[at - 1], 'you', 'to', 'please', 'not'),
  );

/** "don't you dare start it", said in the same breath: out of use besides. */
const isForbidden = (scene: Scene): boolean => /\b(?:don't|do not) (?:you |u |anyone |anybody )?(?:dare|touch|start|hit|press|print|use)\b/u.test(scene.text); // prettier-ignore
const isShut = (scene: Scene): boolean =>
  scene.items.some((item) => isFn(item, 'again')) && /together/u.test(textOf(scene));
/** "opened the last tube of grease". */
const OPENED_TO_USE: ReadonlySet<string> = new Set([
  'oil',
  'grease',
  'alcohol',
  'cloth',
  'air-can',
  'filament',
  'spool',
  'pack',
  'shelf',
]);
const opened = (scene: Scene): Draft[] =>
  hasMachine(scene) || someFn(scene, 'it', 'its') || scene.nouns.some((noun) => !OPENED_TO_USE.has(noun.code))
    ? [
        draft(scene, { kind: 'open' }, 'state: open'),
        ...(isForbidden(scene) ? [draft(scene, { kind: 'down' }, 'state: nobody is to start it')] : []),
      ]
    : [];

/** "please treat maple as out of order", "consider birch out of service". */
const treatedAs = (scene: Scene): boolean =>
  hasMachine(scene) &&
  !scene.mood.negated &&
  scene.items.some(
    (item, at) =>
      /^(?:treat|consider|regard|count|class|mark|list|leave|keep|take|view)$/u.test(item.text) &&
      hasTag(scene.items[at + 1], 'machine') &&
      scene.items
        .slice(at + 2, at + 5)
        .some((one) => one.senses.some((s) => s.tag === 'state' && s.code === 'down')),
  );
/** "took the sign off rowan": what forbade it is gone. */
const takesSignOff = (scene: Scene): boolean => {
  const sign = scene.nouns.find((noun) => noun.code === 'sign');
  if (!sign || scene.mood.negated || !hasMachine(scene)) return false;
  const off = scene.items
    .slice(sign.at + 1, sign.at + 4)
    .findIndex((item) => /^(?:off|from|down|off of|is off|out of)$/u.test(item.text));
  const onto =
    hasTag(scene.items[sign.at + off + 2], 'machine') || isFn(scene.items[sign.at + off + 2], 'it');
  const deed = deedOf(scene, 'take', 'remove', 'get', 'bin') ?? scene.verbs.find((verb) => /^(?:pulled|peeled|ripped|tore|lifted)$/u.test(scene.items[verb.at]?.text ?? '')); // prettier-ignore
  return off >= 0 && onto && (deed !== undefined || scene.verbs.length === 0);
};
/** "no prints on cedar till I've looked at it". */
const noPrintsUntil = (scene: Scene): boolean =>
  scene.items.some(
    (item, at) =>
      /^(?:no (?:more )?(?:prints?|jobs?|printing)|nobody|no one)$/u.test(item.text) &&
      isFn(scene.items[at + 1], 'on') &&
      hasTag(scene.items[at + 2], 'machine') &&
      (isFn(scene.items[at + 3], 'until') || isFn(scene.items[0], 'please') || someFn(scene, 'please')),
  );
/** "hazel is no longer down", "not out of order any more", "not broken any more". */
const isOutNoMore = (scene: Scene, states: readonly string[]): boolean =>
  hasMachine(scene) &&
  ofMachine(scene) &&
  scene.items.length <= 8 &&
  /\b(?:no longer|any more|anymore)\b/u.test(scene.text) &&
  scene.items.some((item) => isFn(item, 'be')) &&
  (states.includes('down') ||
    scene.items.some((item) =>
      item.senses.some((s) => s.tag === 'complaint' && (s.code === 'broken' || s.code === 'dead')),
    )) &&
  !scene.items.some((item) => /^(?:has |have )?(?:stopped|quit|gone|died)\b/u.test(item.text));

const HEAP =
  /\b(?:heap|pile|box|boxes|bag|tray|kit|jigsaw|collection|bunch|mess|bucket|load|puzzle|skeleton|row) of (?:[a-z]+ )?(?:screws?|bits?|parts?|pieces?|components?|bolts?|brackets?|nuts|metal|bones)\b/u;
/** "birch = a heap of screws on my desk", "cedar is a pile of parts". */
const liesInParts = (scene: Scene): boolean => {
  const machine = scene.items.findIndex((item) => hasTag(item, 'machine'));
  const next = scene.items[machine + 1];
  return (
    machine >= 0 &&
    !scene.mood.negated &&
    scene.verbs.every((verb) => !verb.deed) &&
    (isFn(next, 'be', 'article', 'now', 'just', 'some') || next?.text === 'currently') &&
    HEAP.test(scene.text.slice(scene.text.indexOf(scene.items[machine]?.text ?? '')))
  );
};
/** "in the middle of stripping down birch", "busy taking elm apart". */
const takesApart = (scene: Scene): boolean =>
  hasMachine(scene) &&
  !scene.mood.negated &&
  scene.nouns.every((noun) => noun.part === undefined) &&
  scene.items.some(
    (item) => isFn(item, 'during') || /^(?:busy|currently|midway|midway through)$/u.test(item.text),
  ) &&
  scene.verbs.some((verb) => verb.code === 'open' && verb.form === 'ing');

/** "I'm inside maple", "my hands are in elm", "have got birch open". */
function handsIn(scene: Scene): boolean {
  const { items } = scene;
  if (handsInParts(scene)) return !scene.mood.negated;
  const denial = items.findIndex((item) => isFn(item, 'not'));
  return items.some(
    (item, i) =>
      (denial < 0 || denial > i) &&
      (/^(?:inside|in)$/u.test(item.text) || isFn(item, 'in')) &&
      (hasTag(items[i + 1], 'machine') ||
        (isFn(items[i + 1], 'article') && hasTag(items[i + 2], 'machine'))) &&
      (items.some((one) => isThing(one, 'hands')) ||
        (amIn(items, i) && scene.verbs.every((verb) => verb.at > i && !verb.deed)) ||
        worksInside(items, i) ||
        /elbow|wrist|arm|deep/u.test(textOf(scene))),
  );
}
/** "I'm inside", "I am still in", "we're deep in". */
function amIn(items: Scene['items'], at: number): boolean {
  let i = at - 1;
  while (i > 0 && (isFn(items[i], 'still', 'now', 'just') || /^(?:deep|right|currently|halfway)$/u.test(items[i]?.text ?? ''))) i -= 1; // prettier-ignore
  return isFn(items[i], 'be') && isFn(items[i - 1], 'i', 'we');
}
/** "hand in the belts", "elm's toolhead in my hands": hands and the inside of a machine in one another. */
const handsInParts = (scene: Scene): boolean =>
  (hasMachine(scene) ||
    (scene.named && scene.items.some((item) => /^my (?:hands?|fingers|arms?)$/u.test(item.text)))) &&
  scene.items.some(
    (item, at) =>
      (isThing(item, 'hands') &&
        /^(?:in|inside|deep in|up in|between|through)$/u.test(scene.items[at + 1]?.text ?? '') &&
        scene.nouns.some(
          (noun) =>
            noun.at > at + 1 && noun.at <= at + 4 && (noun.part !== undefined || INSIDES.has(noun.code)),
        )) ||
      (isFn(item, 'in') &&
        isThing(scene.items[at + 1], 'hands') &&
        scene.nouns.some((noun) => noun.at < at && LIMBS.has(noun.code))),
  );
/** What hands reach into. */
const INSIDES: ReadonlySet<string> = new Set(['fan', 'belts-all', 'carriage', 'gantry', 'hot-end', 'bed', 'feeder', 'enclosure', 'frame', 'axis']); // prettier-ignore
/** "I'm working inside hazel". */
const worksInside = (items: Scene['items'], at: number): boolean =>
  /^(?:inside|within)$/u.test(items[at]?.text ?? '') &&
  /^(?:working|busy|poking around|digging around|digging)$/u.test(items[at - 1]?.text ?? '');

/** What a machine cannot run without. */
const LIMBS: ReadonlySet<string> = new Set([
  'carriage',
  'gantry',
  'hot-end',
  'bed',
  'feeder',
  'enclosure',
  'guard',
  'frame',
]);
/** "got alder's carriage off", "elm's gantry is off": it lies beside the machine now. */
const partsOff = (scene: Scene): boolean =>
  !scene.mood.negated &&
  scene.nouns.some(
    (noun) =>
      LIMBS.has(noun.code) &&
      /^(?:off|out|apart|removed)$/u.test(scene.items[noun.at + 1]?.text ?? '') &&
      !someFn(scene, 'back', 'again'),
  ) &&
  scene.items.some((item) => /^(?:got|have|'ve|has|with)$/u.test(item.text)) &&
  scene.materials.length === 0 &&
  scene.values.length === 0;
/** "back together and good to go"; the "up again" of "closed up again" is no such thing. */
const isUpBesides = (scene: Scene): boolean =>
  scene.items.some(
    (item) =>
      item.senses.some((s) => s.tag === 'state' && s.code === 'up') &&
      !/^(?:up|back|again|up again)$/u.test(item.text),
  );

/** "back together, running": after it was closed, that it runs is that it is up. */
const SHELLS = /\b(?:covers?|screws?|panels?|lid|hood|bolts?|casing|doors?|sides?|everything|all)\b/u;
/** "covers and screws are all back on elm". */
const allBackOn = (scene: Scene): boolean =>
  hasMachine(scene) &&
  !scene.mood.negated &&
  /\b(?:all|both|every [a-z]+ is) back (?:on|in|in place)\b/u.test(scene.text) &&
  SHELLS.test(scene.text) &&
  scene.nouns.every((noun) => noun.part === undefined || noun.weak);
const RECONNECTED =
  /\bplugged (?:back in|in again)\b|\b(?:switched|turned|powered) (?:back on|back up|on again)\b/u;
const runsAgain = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  scene.items.length <= 4 &&
  scene.nouns.length === 0 &&
  scene.items.some((item) => /^(?:running|printing|runs|prints|working|works)$/u.test(item.text)) &&
  before.clause.sentence === scene.clause.sentence &&
  (before.items.some((item) => item.senses.some((s) => s.tag === 'state' && s.code === 'close')) ||
    RECONNECTED.test(before.text));

/** "you can again use the number six", "everybody may print on elm again". */
const mayUseAgain = (scene: Scene): boolean =>
  someFn(scene, 'again') &&
  hasMachine(scene) &&
  scene.nouns.every((noun) => noun.code === 'print') &&
  scene.items.some((item) => /^(?:can|may)$/u.test(item.text)) &&
  scene.verbs.some((verb) => ['use', 'print', 'run', 'start'].includes(verb.code));
/** "covers are all back on elm, you may start it". */
const mayStart = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  /^(?:so |and )?(?:you|everyone|everybody|anyone|anybody|u) (?:can|may) (?:all |now |again )*(?:start|use|print on|run|have) (?:it|her|him)(?: now| again)*$/u.test(
    scene.text,
  ) &&
  (allBackOn(before) || before.items.some((item) => item.senses.some((s) => s.tag === 'state' && (s.code === 'close' || s.code === 'up')))); // prettier-ignore

/** "you can have maple back", "maple is all yours again". */
const givenBack = (scene: Scene): boolean =>
  /^(?:so |ok |right |well )*(?:you|u|everyone|everybody|students|people) (?:can|may) (?:all )?(?:have|get|take) /u.test(
    scene.text,
  ) &&
  hasTag(scene.items.at(-2), 'machine') &&
  scene.items.at(-1)?.text === 'back';

/** "I'm done inside elm". */
const isOutOf = (scene: Scene): boolean =>
  !scene.mood.negated &&
  scene.items.some((item, at) => /^(?:inside|in)$/u.test(item.text) && hasTag(scene.items[at + 1], 'machine') && at === scene.items.length - 2); // prettier-ignore
/** Strip down, take apart: the machine, not a part of it. */
function closesUp(scene: Scene): boolean {
  const deed = deedOf(scene, 'close');
  return (
    deed !== undefined &&
    (hasMachine(scene) || someFn(scene, 'it')) &&
    scene.nouns.every((noun) => noun.part === undefined || noun.code === 'door')
  );
}
function pulledPlug(scene: Scene): boolean {
  const deed = scene.verbs.find((verb) => verb.deed && verb.code === 'plug');
  const text = textOf(scene);
  const sign =
    scene.nouns.some((noun) => noun.code === 'sign') && deedOf(scene, 'put', 'load', 'fit') !== undefined;
  if (scene.mood.negated || !deed) return sign && !scene.mood.negated;
  const strong =
    /unplug|plug|tagged|tag|mains|out of|offline|lock|isolated|quarantined|taken down|took it down|decommission|bench|mothball/u.test(
      text,
    );
  return sign || (strong && scene.nouns.every((noun) => noun.part === undefined || noun.code === 'wiring'));
}
/** "elm's back on": running, and nothing put back on. */
const isBackOn = (scene: Scene): boolean =>
  scene.items.length <= 5 &&
  scene.items.at(-1)?.text === 'on' &&
  scene.items.at(-2)?.text === 'back' &&
  isFn(scene.items.at(-3), 'be') &&
  scene.nouns.length === 0 &&
  (hasMachine(scene) || someFn(scene, 'it'));
/** "taped a don't use note on": what hangs on it forbids it. */
const hungNotice = (scene: Scene): boolean =>
  scene.items.some(
    (item, at) =>
      item.senses.some((s) => s.tag === 'state' && s.code === 'down') &&
      /^(?:note|sign|label|sticker|tag|notice|post it|paper)$/u.test(scene.items[at + 1]?.text ?? '') &&
      at > 0,
  );
/** "is back on monday": said now of a day that is not today. */
const isToCome = (scene: Scene): boolean =>
  scene.items.some((item) => /^(?:is|'s|are|'re)$/u.test(item.text)) &&
  sensesOf(scene.items, 'date').some((day) => day.past !== day.future && !day.vague);

/** "offset from the middle up": whither, not in use. */
const isDirection = (scene: Scene, at: number): boolean =>
  isBound(scene, at) ||
  (hasTag(scene.items[at - 1], 'thing', 'part', 'complaint') && !isFn(scene.items[at - 1], 'be', 'printer'));

/** "tied up with the long job", "up next": kept, or to come. */
const isBound = (scene: Scene, at: number): boolean =>
  /^(?:next|to|for|against|first|top)$/u.test(scene.items[at + 1]?.text ?? '') ||
  // "the corners came up"
  /^(?:came|come|comes|coming|goes|went|going|stood|sat|ended)$/u.test(scene.items[at - 1]?.text ?? '') ||
  (at > 0 &&
    scene.items[at - 1]?.senses.length === 0 &&
    /^[a-z]+$/u.test(scene.items[at - 1]?.text ?? '') &&
    scene.items[at - 1]?.text.endsWith('ly') === false);

const isParticle = (verb: Item | undefined): boolean =>
  verb !== undefined && hasTag(verb, 'verb') && !isFn(verb, 'be', 'have');
function isUp(scene: Scene): boolean {
  // "something is up with cedar"
  if (/\b(?:something|summat|what|anything|something 's|what 's)(?: is| 's)? up\b/u.test(scene.text))
    return false;
  if (isToCome(scene)) return false;
  if (/\b(?:the|my|your|his|her|our) back\b|\bcame back\b|\bget back\b/u.test(textOf(scene))) return false;
  if (/\b(?:fixed|sorted|repaired) (?:it|that|the|them|a)\b/u.test(textOf(scene))) return false;
  const said = scene.items.filter((item) => item.senses.some((s) => s.tag === 'state' && s.code === 'up'));
  if (said.every((item) => item.text === 'up' && isDirection(scene, scene.items.indexOf(item)))) return false;
  // "all screwed up again"
  if (
    said.every((item) => /^up\b/u.test(item.text) && isParticle(scene.items[scene.items.indexOf(item) - 1]))
  )
    return false;
  // "is back to printing nicely"
  if (said.every((item) => item.text === 'back' && isFn(scene.items[scene.items.indexOf(item) + 1], 'to')))
    return false;
  const firm = said.some(
    (item) =>
      item.text.includes(' ') ||
      /^(?:fixed|online|alive|usable|operational|repaired|released)$/u.test(item.text),
  );
  const be = scene.items.some((item) => isFn(item, 'be'));
  if (
    said.some((item) => /^(?:up|back|good again|fine again|ok again|happy again|again)$/u.test(item.text)) &&
    !be &&
    !(hasMachine(scene) && scene.verbs.length === 0)
  )
    return false;
  return (
    (firm || be || hasMachine(scene)) &&
    (hasMachine(scene) || someFn(scene, 'it', 'they', 'both', 'all') || firm)
  );
}
/** "forgot to write it down". */
const isWrittenDown = ({ items }: Scene, at: number): boolean =>
  isFn(items[at - 1], 'it', 'this', 'they', 'these') &&
  /^(?:write|writes|wrote|written|writing|put|take|took|jot|jotted|note|noted|get|got|mark|marked)$/u.test(
    items[at - 2]?.text ?? '',
  );

/** "birch is out, don't queue anything": at the end of what is said, or until when. */
const isOut = (scene: Scene): boolean =>
  hasMachine(scene) &&
  !scene.mood.negated &&
  scene.items.some(
    (item, at) =>
      item.text === 'out' &&
      at >= 2 &&
      isFn(scene.items[at - 1], 'be') &&
      hasTag(scene.items[at - 2], 'machine') &&
      (at === scene.items.length - 1 || isFn(scene.items[at + 1], 'until', 'again', 'for', 'now')),
  );

function isDown(scene: Scene): boolean {
  const said = scene.items.filter((item) => item.senses.some((s) => s.tag === 'state' && s.code === 'down'));
  if (
    said.every(
      (item) => item.text === 'down' && scene.items[scene.items.indexOf(item) - 1]?.senses.length === 0,
    )
  )
    return false;
  if (said.every((item) => item.text === 'down' && isWrittenDown(scene, scene.items.indexOf(item))))
    return false;
  if (
    said.every((item) => item.text === 'down') &&
    scene.verbs.some((verb) => verb.deed && !['say', 'find', 'read'].includes(verb.code))
  )
    return false;
  // "goes up but not down": a direction
  if (said.every((item) => item.text === 'down') && scene.items.some((item) => item.text === 'up'))
    return false;
  if (otherSubject(scene)) return false;
  return hasMachine(scene) || someFn(scene, 'it', 'they', 'both', 'all', 'until') || scene.items.length <= 3;
}
/** "elm is dead", "maple has packed up": the machine itself. */
function deadMachine(scene: Scene, before: Scene | undefined): boolean {
  const it =
    !hasMachine(scene) &&
    before !== undefined &&
    before.nouns.length === 0 &&
    hasMachine(before) &&
    someFn(scene, 'it') &&
    scene.items.length <= 5;
  if (
    (!hasMachine(scene) && !it) ||
    scene.mood.negated ||
    !scene.nouns.every((noun) => noun.code === 'machine') ||
    // "stopped all by itself with an error": that is what it did
    symptomsIn(scene).some(({ symptom }) => !isSafetySymptom(symptom))
  )
    return false;
  return scene.items.some(
    (item, at) =>
      !ownDenial(scene.items, at) &&
      !hasObject(scene, at) &&
      item.senses.some((s) => s.tag === 'complaint' && (s.code === 'dead' || s.code === 'broken')) &&
      !hasTag(item, 'symptom'),
  );
}

/** "rowan broke the dimmer": somebody of that name did it to something; "burned through 320 g" likewise. */
const hasObject = (scene: Scene, at: number): boolean =>
  (/^(?:(?:burned|burnt|blew|went) (?:through|up)|just went)$/u.test(scene.items[at]?.text ?? '') &&
    scene.items[at + 1] !== undefined) ||
  isThrown(scene, at);
const isThrown = (scene: Scene, at: number): boolean =>
  /^(?:broke|snapped|smashed|split|blew|wrecked|destroyed)$/u.test(scene.items[at]?.text ?? '') &&
  isFn(scene.items[at + 1], 'article', 'my', 'its', 'this', 'all');
