/**
 * Stage 10. What may be written. A writing act needs a machine, or a part in its printer sense; words of another
 * trade beside it shut the gate. False writes are bought or saved here, and nowhere else.
 */
import { ROOM_THINGS } from './english/frames/task-table.ts';
import { hasTag, isFn } from './item.ts';
import { ofAnother, otherMachine, otherWhole } from './subject.ts';
import type { Placed } from './placed.ts';
import type { Scene } from './scene.ts';

export const WRITES: ReadonlySet<string> = new Set([
  'usage',
  'meter',
  'load',
  'done',
  'swap',
  'symptom',
  'gone',
  'down',
  'up',
  'open',
  'close',
  'defer',
  'claim',
  'stock',
  'undo',
  'amend',
]);

const foreign = (scene: Scene): boolean =>
  scene.items.some((item) => hasTag(item, 'foreign') && !hasTag(item, 'machine'));
/** "how long before a liner is cooked": what is wrong with a part is of no kitchen. */
const asksElsewhere = (scene: Scene): boolean =>
  scene.items.some((item) => hasTag(item, 'foreign') && !hasTag(item, 'machine', 'complaint'));
const named = (scene: Scene): boolean => scene.items.some((item) => hasTag(item, 'machine'));
/** A part or thing that is found in no other trade. */
const firmNoun = (scene: Scene): boolean =>
  scene.nouns.some((noun) => !noun.weak) ||
  scene.nouns.some((noun) =>
    [
      'hot-end',
      'first-layer',
      'mesh',
      'offset',
      'esteps',
      'grub-screw',
      'eccentric',
      'ball-screw',
      'jam',
      'feeder',
      'firmware',
      'level-noun',
      'print',
      'filament-path',
      'machine',
      'smoke-detector',
      'extinguisher',
      'extraction',
      'solvents',
      'safety-kit',
      'dryer',
      'notices',
      'gantry',
      'tension-noun',
      'protection',
      'bed',
    ].includes(noun.code),
  ) ||
  scene.materials.length > 0;

/** The same without a machine: does the message speak of the printers at all? */
function ofPrinters({ act, draft }: Placed, scene: Scene, message: readonly Scene[]): boolean {
  if (act.kind === 'undo' || act.kind === 'amend') return true;
  const machine = 'machine' in act ? act.machine : undefined;
  // "first aid kit restocked with plasters": what it holds is of no other trade
  if (machine === 'room')
    return !scene.items.some((item) => hasTag(item, 'foreign') && !hasTag(item, 'machine', 'thing'));
  if (foreign(scene) && !named(scene)) return false;
  if (!named(scene) && machine === undefined && isHeadedElsewhere(scene, message)) return false;
  if (act.kind !== 'stock' && !message.some(named) && isElsewhere(scene, message)) return false;
  const printed = act.kind === 'symptom' && OF_PRINTS.has(act.symptom) && message.some(named);
  if (SAID_OF.has(act.kind) && !printed && strays(scene, message)) return false;
  if (machine !== undefined) return true;
  if (
    act.kind === 'down' ||
    act.kind === 'up' ||
    act.kind === 'open' ||
    act.kind === 'close' ||
    act.kind === 'gone'
  )
    return (
      act.kind !== 'up' &&
      !scene.nouns.some((noun) => ROOM_THINGS.has(noun.code)) &&
      message.some((one) =>
        one.nouns.some((noun) => ['hot-end', 'machine', 'feeder'].includes(noun.code) || !noun.weak),
      )
    );
  if (act.kind === 'usage') return act.material !== undefined || ranBySelf(scene);
  if (act.kind === 'stock')
    return (
      draft.weak !== true ||
      !HOUSEHOLD.has(act.part) ||
      scene.nouns.some((noun) => noun.code === 'shelf') ||
      (act.part === 'alcohol' &&
        scene.items.some((item) => /^(?:bottles?|litres?|cans?)$/u.test(item.text))) ||
      firmNoun(scene)
    );
  if (act.kind === 'load' || act.kind === 'meter') return draft.weak !== true || firmNoun(scene);
  if (act.kind === 'symptom' && scene.nouns.some((noun) => noun.code === 'hands')) return false;
  if (act.kind === 'symptom')
    return (
      (firmNoun(scene) && !onlyObjects(scene)) ||
      (SAFE.has(act.symptom) && (act.symptom !== 'shock' || touched(scene))) ||
      scene.items.some(
        (item) => hasTag(item, 'symptom') && item.text.includes(' ') && OF_THE_TRADE.test(item.text),
      )
    );
  if (act.kind === 'claim')
    return draft.weak !== true || firmNoun(scene) || (act.task !== undefined && !HOUSE_TASKS.has(act.task));
  return draft.weak !== true || firmNoun(scene);
}
/** The clause before is of another trade's thing: it opens with it, or tells where. */
const goesOnFrom = (scene: Scene, before: Scene | undefined): boolean =>
  before !== undefined &&
  before.clause.sentence === scene.clause.sentence &&
  before.items.some(
    (item, at) =>
      hasTag(item, 'foreign') &&
      !hasTag(item, 'machine', 'part', 'verb', 'complaint') &&
      (at === 0 ||
        (at === 1 && isFn(before.items[0], 'article', 'my')) ||
        (isFn(before.items[at - 1], 'article', 'my') && isFn(before.items[at - 2], 'in', 'on', 'of'))),
  ) &&
  before.nouns.every((noun) => noun.weak || noun.at > 0);
/** Of a thing that no printer has, by its own words or by those of the clause that its noun was lent from. */
function isElsewhere(scene: Scene, message: readonly Scene[]): boolean {
  const before = message[scene.index - 1];
  const lent = scene.nouns.every((noun) => noun.at < 0);
  const goesOn = lent && before?.clause.sentence === scene.clause.sentence;
  // "router bit snapped in the cnc, collet tightened", "bandsaw blade tensioned and wheels cleaned"
  if (goesOnFrom(scene, before)) return true;
  // "the laser cutter's lens was replaced and its belt tensioned"
  const its =
    scene.items.some((item) => isFn(item, 'its')) && before?.clause.sentence === scene.clause.sentence;
  if (its && before !== undefined && foreign(before) && before.nouns.every((noun) => noun.part === undefined))
    return true;
  return otherWhole(scene) || (goesOn && before !== undefined && otherWhole(before));
}
/** Said in several words, one of which no other trade uses so. */
const OF_THE_TRADE =
  /\b(?:layers?|prints?|printed|printing|extru\w+|filament|plastic|nozzle|plates?|sheet|bed|tube|bowden|ptfe|liner|feeder|gear|homing|homes?|banding|z|x|y|hot end|heat\w*|temp\w*|probe|end stop|belts?|ghosting|ringing|adhesion|offset|settings|screen|smoke|burning|burnt|power|mains|fan|spaghetti|mesh|fuse|walls?|lines?|corners?|edges?|block|sock|spool|string\w*|collet|fitting|wheels?|shaft|elephant\w*|spider\w*|electricity|lights|breaker|rcd|wires?|cable|copper|frame|connector|terminals?|thermal|error|infill|seam|surface|coating|calibration|display|touch|bearings?)\b/u;
/** "Lathe 3: spindle bearing replaced": the heading says what it was done to. */
function isHeadedElsewhere(scene: Scene, message: readonly Scene[]): boolean {
  const first = message.findIndex((one) => one.clause.sentence === scene.clause.sentence);
  const head = message[first];
  return (
    first < scene.index &&
    message[first + 1]?.clause.joint === 'colon' &&
    head !== undefined &&
    foreign(head) &&
    !named(head)
  );
}
/** Of what was printed, which may be anything: "the skull came out with a step in it". */
const OF_PRINTS: ReadonlySet<string> = new Set(['stringing', 'layer-shift', 'layer-split', 'ringing', 'z-banding', 'rough-surface', 'blobs', 'warping', 'detached-print', 'under-extrusion', 'over-extrusion']); // prettier-ignore

/** Acts that are said *of* something, and so of another thing as easily. */
const SAID_OF: ReadonlySet<string> = new Set(['symptom', 'down', 'up', 'gone']);
/** Of another thing by its own words; or no machine is named anywhere and another trade is spoken of. */
const strays = (scene: Scene, message: readonly Scene[]): boolean =>
  !named(scene) &&
  (ofAnother(scene) || (!message.some(named) && message.some((one) => foreign(one) || otherMachine(one))));

/** "ran 6.5 h", "I printed 40 m": nobody else is said to have run. */
function ranBySelf(scene: Scene): boolean {
  return scene.verbs.some((verb) => {
    if (
      !verb.deed ||
      (verb.code !== 'run' && verb.code !== 'print') ||
      !/^(?:ran|printed|clocked up|racked up|run)/u.test(scene.items[verb.at]?.text ?? '')
    )
      return false;
    // "we ran 3 hours over" is of a rehearsal.
    if (isFn(scene.items.at(-1), 'over') || /^late$/u.test(scene.items.at(-1)?.text ?? '')) return false;
    const before = scene.items[verb.at - 1];
    return (
      before === undefined ||
      isFn(before, 'i', 'we', 'it', 'just', 'too') ||
      scene.nouns.some((noun) => noun.code === 'print' && noun.at < verb.at)
    );
  });
}
/** "the helmet cracked": a printed thing by its own name, long off the printer. */
const onlyObjects = (scene: Scene): boolean =>
  scene.materials.length === 0 &&
  scene.nouns.every((noun) => noun.code === 'print' || noun.weak) &&
  scene.nouns.some((noun) => noun.code === 'print') &&
  !scene.nouns.some(
    (noun) =>
      (noun.code === 'print' && /print|job|overnight|batch/u.test(scene.items[noun.at]?.text ?? '')) ||
      ['first-layer', 'hot-end', 'feeder', 'machine', 'bed'].includes(noun.code),
  );
/** A shock is a start, a price or a current; only what was touched tells. */
const touched = (scene: Scene): boolean =>
  /\b(?:frame|touch\w*|printer|bed|off|from|gave me|gives me|metal|chassis|casing)\b/u.test(scene.text);

const HOUSE_TASKS: ReadonlySet<string> = new Set([
  'clean-enclosure',
  'check-guards',
  'dust-off',
  'clear-debris',
  'check-fasteners',
  'clean-plate',
  'replace-door',
  'replace-screen',
  'replace-camera',
  'replace-wiring',
  'replace-build-plate',
  'replace-fastener',
]);
/** Words for spares that every household holds too. */
const HOUSEHOLD: ReadonlySet<string> = new Set([
  'build-plate',
  'door',
  'screen',
  'camera',
  'fastener',
  'control-board',
  'wiring',
  'motor',
  'oil',
  'alcohol',
]);
const SAFE: ReadonlySet<string> = new Set([
  'burning-smell',
  'runaway',
  'shock',
  'bare-wire',
  'hot-connector',
  'power-cut',
  'smoke',
]);

/** Floors, windows and rubbish that every house has: without a machine not even asked about. */
const HOME: ReadonlySet<string> = new Set(['floor', 'enclosure', 'debris', 'door', 'screen', 'camera']);

/** "one of the prefects cleaned it": who did it is left open, not what. */
const isOneOfPeople = (scene: Scene, at: number): boolean => {
  const next = scene.items[at + 1];
  return (
    /^one of (?:the|our|my|those)$/u.test(scene.items[at]?.text ?? '') &&
    next !== undefined &&
    (next.senses.length === 0 || isFn(next, 'person')) &&
    scene.verbs.some((verb) => verb.at === at + 2)
  );
};

export interface Gated {
  readonly kept: readonly Placed[];
  /** Deeds that were not let through, though they may report work. */
  readonly doubtful: readonly Placed[];
}

export function gate(placed: readonly Placed[], scenes: readonly Scene[]): Gated {
  const kept: Placed[] = [];
  const doubtful: Placed[] = [];
  for (const one of placed) {
    const scene = scenes[one.draft.clause];
    if (scene && one.act.kind === 'ask' && asksElsewhere(scene) && !named(scene)) continue;
    if (!scene || !WRITES.has(one.act.kind)) {
      kept.push(one);
      continue;
    }
    if (
      scene.mood.hedged &&
      !['symptom', 'usage', 'defer'].includes(one.act.kind) &&
      scene.items.some((item, at) => isFn(item, 'unsure') && !isOneOfPeople(scene, at))
    )
      doubtful.push(one);
    else if (ofPrinters(one, scene, scenes)) kept.push(one);
    else if (
      !foreign(scene) &&
      !(!scenes.some(named) && isElsewhere(scene, scenes)) &&
      !isHeadedElsewhere(scene, scenes) &&
      !(one.act.kind === 'done' && HOME.has(one.draft.noun ?? '') && !scenes.some(named)) &&
      !['usage', 'claim', 'symptom', 'stock', 'gone', 'up', 'down', 'open', 'close'].includes(one.act.kind)
    )
      doubtful.push(one);
  }
  return { kept, doubtful };
}
