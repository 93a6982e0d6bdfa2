/** Down, up, open, closed; and trouble that has gone. */
import type { Symptom } from '../../../maintenance/codes.ts';
import { hasTag, isFn, isThing, sensesOf } from '../../item.ts';
import { ownDenial } from '../../mood.ts';
import { deedOf, type Draft, draft, hasMachine, type Scene, someFn, textOf } from '../../scene.ts';
import { otherSubject } from '../../subject.ts';
import { type Seen, symptomsIn } from './symptom.ts';

/** The machine is the one spoken of: no part stands between. */
function ofMachine(whole: Scene): boolean {
  const until = whole.items.findIndex((item) => isFn(item, 'until', 'for', 'with'));
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
  if (!told || isManner(scene) || (mood.requested && !forbids(scene))) return [];
  if (isTheirDoing(scene) && !hasMachine(scene)) return [];
  const states = sensesOf(items, 'state').map((s) => s.code);
  const spoken = textOf(scene);
  if (pulledPlug(scene) || hungNotice(scene))
    return [draft(scene, { kind: 'down' }, 'state: taken out of use')];
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
    ((states.includes('open') || partsOff(scene)) &&
      !mood.negated &&
      !forbids(scene) &&
      !states.includes('close') &&
      (hot ? partsOff(scene) || /in bits|in pieces|apart|open|lying/u.test(spoken) : true) &&
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
  if (runsAgain(scene, before)) return [draft(scene, { kind: 'up' }, 'state: runs, once closed')];
  if (mayUseAgain(scene)) return [draft(scene, { kind: 'up' }, 'state: may be used again')];
  if (closesUp(scene)) return [draft(scene, { kind: 'close' }, 'state: put together')];
  if (states.includes('up') && ofMachine(scene) && isUp(scene) && symptomsIn(scene).length === 0)
    return [draft(scene, { kind: 'up' }, 'state: up')];
  if (states.includes('down') && ofMachine(scene) && isDown(scene))
    return [draft(scene, { kind: 'down' }, 'state: down')];
  return deadMachine(scene, before) ? [draft(scene, { kind: 'down' }, 'state: dead')] : [];
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

/** "I'm inside maple", "my hands are in elm", "have got birch open". */
function handsIn(scene: Scene): boolean {
  const { items } = scene;
  const denial = items.findIndex((item) => isFn(item, 'not'));
  return items.some(
    (item, i) =>
      (denial < 0 || denial > i) &&
      (/^(?:inside|in)$/u.test(item.text) || isFn(item, 'in')) &&
      (hasTag(items[i + 1], 'machine') ||
        (isFn(items[i + 1], 'article') && hasTag(items[i + 2], 'machine'))) &&
      (items.some((one) => isThing(one, 'hands')) ||
        (isFn(items[i - 1], 'be') && isFn(items[i - 2], 'i', 'we') && scene.verbs.length === 0) ||
        /elbow|wrist|arm|deep/u.test(textOf(scene))),
  );
}
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
const runsAgain = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  scene.items.length <= 4 &&
  scene.nouns.length === 0 &&
  scene.items.some((item) => /^(?:running|printing|runs|prints|working|works)$/u.test(item.text)) &&
  before.clause.sentence === scene.clause.sentence &&
  before.items.some((item) => item.senses.some((s) => s.tag === 'state' && s.code === 'close'));

/** "you can again use the number six", "everybody may print on elm again". */
const mayUseAgain = (scene: Scene): boolean =>
  someFn(scene, 'again') &&
  hasMachine(scene) &&
  scene.nouns.every((noun) => noun.code === 'print') &&
  scene.items.some((item) => /^(?:can|may)$/u.test(item.text)) &&
  scene.verbs.some((verb) => ['use', 'print', 'run', 'start'].includes(verb.code));

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
  hasTag(scene.items[at - 1], 'thing', 'part', 'complaint') && !isFn(scene.items[at - 1], 'be', 'printer');

function isUp(scene: Scene): boolean {
  // "something is up with cedar"
  if (/\b(?:something|summat|what|anything|something 's|what 's)(?: is| 's)? up\b/u.test(scene.text))
    return false;
  if (isToCome(scene)) return false;
  if (/\b(?:the|my|your|his|her|our) back\b|\bcame back\b|\bget back\b/u.test(textOf(scene))) return false;
  if (/\b(?:fixed|sorted|repaired) (?:it|that|the|them|a)\b/u.test(textOf(scene))) return false;
  const said = scene.items.filter((item) => item.senses.some((s) => s.tag === 'state' && s.code === 'up'));
  if (said.every((item) => item.text === 'up' && isDirection(scene, scene.items.indexOf(item)))) return false;
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
    !scene.nouns.every((noun) => noun.code === 'machine')
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

/** "rowan broke the dimmer": somebody of that name did it to something. */
const hasObject = (scene: Scene, at: number): boolean =>
  /^(?:broke|snapped|smashed|split|blew|wrecked|destroyed)$/u.test(scene.items[at]?.text ?? '') &&
  isFn(scene.items[at + 1], 'article', 'my', 'its', 'this', 'all');

/** The trouble is itself a denial: "not round any more" tells of no end. */
const DENIAL =
  /^(?:not|no longer|never|won't|don't|doesn't|isn't|aren't|can't|cannot|couldn't|does not|do not|did not|is not|are not|will not|can not|has not|could not|refuses|fails)\b/u;

/** What it does again, and what it then has no longer; the row of the thing that does it goes first. */
const DOES_AGAIN: readonly (readonly [RegExp, Readonly<Partial<Record<string, Symptom>>>])[] = [
  [/^(?:heats|heating|warms|heats up|warms up|heating up|warming up)$/u, { bed: 'bed-no-heat', 'bed-heater': 'bed-no-heat', 'build-plate': 'bed-no-heat', '*': 'no-heat', 'hot-end': 'no-heat', nozzle: 'no-heat', heater: 'no-heat' }],
  [/^(?:extrudes|extruding|feeds|feeding)$/u, { '*': 'no-extrusion', filament: 'no-extrusion', feeder: 'no-extrusion', nozzle: 'no-extrusion' }],
  [/^(?:homes|homing)$/u, { '*': 'homing-failed', probe: 'homing-failed' }],
  [/^(?:sticks|stick|sticking|holds)$/u, { print: 'poor-adhesion', 'first-layer': 'poor-adhesion', filament: 'poor-adhesion' }],
  [/^(?:spins|spinning|turns)$/u, { fan: 'fan-stopped', 'hot-end-fan': 'fan-stopped', 'part-fan': 'fan-stopped', 'board-fan': 'fan-stopped' }],
]; // prettier-ignore
/** "cedar heats again", "prints stick again on juniper". */
function doesAgain(scene: Scene): Symptom | undefined {
  if (!someFn(scene, 'again') || scene.mood.negated || !hasMachine(scene)) return undefined;
  const row = DOES_AGAIN.find(([words]) => scene.items.some((item) => words.test(item.text)))?.[1];
  if (!row) return undefined;
  const noun = scene.nouns.find((one) => row[one.code] !== undefined);
  if (noun) return row[noun.code];
  const sticks = scene.materials.length > 0 && scene.items.some((item) => item.text.startsWith('stick'));
  return sticks ? 'poor-adhesion' : scene.nouns.length === 0 ? row['*'] : undefined;
}
/** "juniper sticks again": the prints to the plate, which is well, or the carriage, which is not. */
const sticksUnsaid = (scene: Scene): boolean =>
  scene.items.length === 3 && hasTag(scene.items[0], 'machine') && scene.items[1]?.text === 'sticks' && isFn(scene.items[2], 'again'); // prettier-ignore

const askWhatSticks = (scene: Scene): Draft =>
  draft(
    scene,
    { kind: 'unclear', why: 'Do the prints stick to the plate again, or does something bind?' },
    'unclear: what sticks',
    { doubt: { field: 'value', said: scene.text, options: [] } },
  );
/** The rule of a trouble that was mended: what it turned out to be is no new one. */
export const MENDED = 'gone: mended';
/** "fixed the no heat", "no heat fixed": the trouble is what was mended. */
const mends = (scene: Scene, trouble: Seen): boolean =>
  scene.items.some(
    (item, at) =>
      /^(?:fixed|cured|solved|sorted|sorted out|resolved|got rid of)$/u.test(item.text) &&
      at !== trouble.at &&
      !isFn(scene.items[at - 1], 'not', 'cant', 'to', 'no', 'until', 'nobody') &&
      scene.items.slice(Math.min(at, trouble.at) + 1, Math.max(at, trouble.at)).every((between) => isFn(between, 'article', 'be', 'now', 'its', 'my', 'this', 'all', 'have') || hasTag(between, 'machine')), // prettier-ignore
  );

/** "no clicking any more", "the grinding has stopped", "fine now". */
export function readGone(scene: Scene, seen: readonly Seen[]): Draft[] {
  const { mood, items } = scene;
  if (mood.question || mood.conditional || mood.planned || mood.requested || mood.reported || mood.wished)
    return [];
  const again = doesAgain(scene);
  if (again !== undefined) return [draft(scene, { kind: 'gone', symptom: again }, 'gone: does it again')];
  if (sticksUnsaid(scene)) return [askWhatSticks(scene)];
  const mended = mood.negated ? undefined : seen.find((one) => mends(scene, one));
  if (mended) return [draft(scene, { kind: 'gone', symptom: mended.symptom }, MENDED)];
  const stopped = items.some(
    (item, i) =>
      isFn(item, 'anymore') || (item.text === 'stopped' && i > 0) || item.text.startsWith('no longer'),
  );
  const denied =
    items.some((item) => isFn(item, 'no') || isFn(item, 'not') || isFn(item, 'nothing')) &&
    (items.some(
      (item) => isFn(item, 'anymore', 'now', 'since') || /^(?:more|since|further)$/u.test(item.text),
    ) ||
      items.some((item) => /^no more$|^no longer$/u.test(item.text)));
  if (seen.some((one) => DENIAL.test(items[one.at]?.text ?? ''))) return [];
  // "adhesion has gone to hell"
  if (/\b(?:gone|went|going) (?:to|bad|wrong|downhill|crazy|haywire|mad|up|down|through)\b/u.test(scene.text))
    return [];
  const trouble = seen.find((one) => !isFn(items[one.at], 'anymore')) ?? seen[0];
  const ends = items.findLastIndex((item) => isFn(item, 'anymore'));
  const before =
    ends < 0 ||
    denied ||
    (trouble !== undefined && trouble.at < ends) ||
    /^(?:no |free|rid|cured|fixed|solved|not|any|hasn't)/u.test(items[ends]?.text ?? '');
  if (trouble && before && (stopped || denied) && !(mood.negated && stopped && !denied))
    return [draft(scene, { kind: 'gone', symptom: trouble.symptom }, 'gone: symptom x stopped')];
  return [];
}

/** "fine now", "all good again", "that fixed it", "it runs fine now": after a trouble or its repair. */
export function saysFine(scene: Scene): boolean {
  const { mood } = scene;
  if (
    mood.question ||
    mood.negated ||
    mood.conditional ||
    mood.planned ||
    mood.wished ||
    mood.requested ||
    symptomsIn(scene).length > 0
  )
    return false;
  const text = textOf(scene);
  if (
    /\b(?:that|this|which) (?:fixed|cured|sorted|did|solved|has fixed|seems to have fixed) (?:it|the trick|that)\b|\bdid the trick\b|\bproblem (?:solved|gone)\b/u.test(
      text,
    )
  )
    return true;
  const fine =
    sensesOf(scene.items, 'finding').some((s) => s.code === 'fine') ||
    sensesOf(scene.items, 'state').some(
      (s) => s.code === 'up' && /\b(?:fine|ok|good|happy|again)\b/u.test(text),
    );
  return (
    (fine && scene.items.some((item) => isFn(item, 'now', 'again', 'since'))) ||
    flowsAgain(scene) ||
    (fine && /^after (?:that|this) it\b|\b(?:since|ever since)\b/u.test(text)) ||
    (fine && scene.clause.joint === 'next' && someFn(scene, 'it')) ||
    /^(?:all )?(?:good|fine|ok|sorted|happy) (?:now|again)$/u.test(text) ||
    (fine && /\bsince\b|\bagain\b/u.test(text)) ||
    (fine &&
      // "it is still holding"
      !someFn(scene, 'still') &&
      scene.verbs.some(
        (verb) => ['print', 'run', 'work'].includes(verb.code) && (verb.form === 's' || verb.form === 'ing'),
      ))
  );
}
/** "flows since 04:35", "feeding again": what a jam had stopped. */
const flowsAgain = (scene: Scene): boolean =>
  scene.items.some((item) =>
    /^(?:flows?|flowing|feeds|feeding|extrudes|extruding|pushes|prints|runs)$/u.test(item.text),
  ) &&
  someFn(scene, 'since', 'again', 'now') &&
  scene.items.length <= 5 &&
  scene.verbs.every((verb) => !verb.deed);
/** The item that a state or a symptom is said of is a machine alone. */
export const machineAlone = (scene: Scene): boolean => scene.nouns.length === 0 && hasMachine(scene);
