/** Something seen, heard, felt: said in so many words, or a complaint and the item that it is said of. */
import { isPart, type Symptom } from '../../../maintenance/codes.ts';
import { ownDenial } from '../../mood.ts';
import { hasTag, isFn, type Item, sense, type SenseOf } from '../../item.ts';
import { type Draft, draft, hasMachine, type NounAt, type Scene } from '../../scene.ts';
import type { Complaint } from '../../senses.ts';
import { madeUp, type Seen } from './symptom-made.ts';
import { SYMPTOMS_OF } from './symptom-table.ts';

export type { Seen };

const words = (item: Item): number => item.text.split(' ').length;

/** Nouns of the clause, nearest first. */
function nearest(scene: Scene, at: number): NounAt[] {
  return [...scene.nouns]
    .filter((noun) => noun.at !== at || (noun.part === undefined && noun.code !== 'print'))
    .sort(
      (a, b) =>
        Number(isWhere(scene, a)) - Number(isWhere(scene, b)) || Math.abs(a.at - at) - Math.abs(b.at - at),
    );
}
/** "the fan at juniper's nozzle": the nozzle only says which. */
function isWhere(scene: Scene, noun: NounAt): boolean {
  let i = noun.at - 1;
  while (i > 0 && (isFn(scene.items[i], 'article', 'its', 'my', 'possessive') || hasTag(scene.items[i], 'machine'))) i -= 1; // prettier-ignore
  return (
    /^(?:at|near|behind|beside|above|below|next to)$/u.test(scene.items[i]?.text ?? '') &&
    scene.nouns.some((other) => other.at < i)
  );
}

function fromComplaint(scene: Scene, at: number, complaint: SenseOf<'complaint'>): Seen | undefined {
  const row = SYMPTOMS_OF[complaint.code];
  const nouns = outermostLast(complaint.code, nearest(scene, at));
  // "when the bed drops": it moves, and no temperature does
  if (
    complaint.code === 'swing' &&
    nouns[0]?.code === 'bed' &&
    /^(?:drops?|falls?|dropped|fell|dropping|jumps?)$/u.test(scene.items[at]?.text ?? '') &&
    !/\b(?:temp\w*|degrees|deg|heat\w*)\b/u.test(scene.text)
  )
    return undefined;
  // "did not even make a noise", "wasn't even cross"
  const evenNext = scene.items[at + 1];
  if (
    complaint.code === 'uneven' &&
    (scene.items[at]?.text.endsWith(' even') ?? false) &&
    evenNext !== undefined &&
    (evenNext.senses.length === 0 || hasTag(evenNext, 'verb'))
  )
    return undefined;
  // "stuck in my head"
  if (
    /^stuck(?: in)?$/u.test(scene.items[at]?.text ?? '') &&
    /\bin (?:my|his|her|our) (?:head|mind|throat)\b/u.test(scene.text)
  )
    return undefined;
  // "plugged back in": a plug, and no jam
  if (
    complaint.code === 'jam' &&
    scene.items[at]?.text.startsWith('plugged') === true &&
    scene.items.slice(at + 1, at + 5).some((item) => /^(?:in|into|back|back in|in again)$/u.test(item.text))
  )
    return undefined;
  if (lacksNoun(scene, at, complaint.code, nouns)) return undefined;
  if (isOwnDeed(scene, at) || isUntroubling(scene, at) || isUsedUp(scene, at)) return undefined;
  // "the first layer sticks on the left": it holds
  if (
    complaint.code === 'stuck' &&
    /^(?:sticks|sticking|stuck)$/u.test(scene.items[at]?.text ?? '') &&
    nouns[0]?.code === 'first-layer'
  )
    // prettier-ignore
    return undefined;
  // "wet glue on the bed": of no filament
  if (complaint.code === 'wet' && nouns.some((one) => WET_THINGS.has(one.code))) return undefined;
  if (
    isCopula(scene, at) ||
    isParticle(scene, at) ||
    isAttribute(scene, at, complaint.code) ||
    hangs(scene, at)
  )
    return undefined;
  // "the hot end wobbles": of the hot end, and of the wobble only where nothing else is named
  const owned = nouns.some((one) => one.code !== 'play' && row[one.code] !== undefined);
  const noun = nouns.find((one) => row[one.code] !== undefined && !(owned && one.code === 'play'));
  // "the tpu got chewed up by the gears"
  if (
    scene.materials.length > 0 &&
    OF_FILAMENT.has(complaint.code) &&
    row.filament !== undefined &&
    scene.items[at]?.text.endsWith('through') !== true
  )
    return { symptom: row.filament, at, complaint: complaint.code };
  const symptom = noun === undefined ? undefined : row[noun.code];
  // The motor of the feeder skips where the filament will not go; the others where a layer shifts.
  if (
    noun?.code === 'motor' &&
    symptom === 'layer-shift' &&
    /^(?:extruder|feeder|feed|e)\b/u.test(scene.items[noun.at]?.text ?? '')
  )
    return { symptom: 'feeder-clicking', at, noun, complaint: complaint.code };
  if (noun !== undefined && symptom !== undefined) return { symptom, at, noun, complaint: complaint.code };
  // "drifts between 195 and 215"
  if (
    complaint.code === 'swing' &&
    nouns.length === 0 &&
    scene.values.some(
      (value) => value.value >= 120 && value.value < 350 && ['bare', 'other'].includes(value.code),
    )
  )
    return { symptom: 'temperature-swing', at, complaint: complaint.code };
  const other = nouns.find((one) => one.part !== undefined || one.code === 'fan');
  return row['*'] !== undefined && (other === undefined || HEARD.has(complaint.code))
    ? { symptom: row['*'], at, complaint: complaint.code }
    : undefined;
}

/** What says too little alone: "bare" of a patch, "flat" of what was ground, "won't come out" of a screw, "won't go past". */
const NEEDS_NOUN: Readonly<Partial<Record<Complaint, readonly [words: RegExp, of: ReadonlySet<string>]>>> = {
  bare: [/^(?:bare|naked|exposed)$/u, new Set(['wiring', 'plug', 'mains-lead', 'heater', 'thermistor'])],
  flat: [/^(?!.*(?:flat ?spot|flatspot|turn|bump)).*$/u, new Set(['wheel', 'filament', 'bearing', 'carriage', 'guide-tube', 'nozzle', 'wall', 'surface', 'first-layer'])],
  jam: [/\b(?:go in|goes in|go through|come out|comes out|come through|going in|coming out|coming through)$/u, new Set(['filament', 'spool', 'plastic'])],
  slack: [/^(?:hang|sag|droop|flap|stretch|loosened|limp|baggy|floppy|saggy)/u, new Set(['belt', 'x-belt', 'y-belt', 'tension-noun', 'gantry', 'idler'])],
  cold: [/\b(?:past|above|at|than)$/u, new Set(['nozzle', 'hot-end', 'heater', 'bed', 'build-plate', 'bed-heater', 'temperature'])],
}; // prettier-ignore
function lacksNoun(scene: Scene, at: number, complaint: Complaint, nouns: readonly NounAt[]): boolean {
  const [words, of] = NEEDS_NOUN[complaint] ?? [];
  if (!words || !of || !words.test(scene.items[at]?.text ?? '')) return false;
  return !nouns.some((noun) => of.has(noun.code)) && !(complaint === 'jam' && scene.materials.length > 0);
}
/** "popped the plate off", "blew the fluff out of the fans": done by somebody, and not broken. */
function isOwnDeed(scene: Scene, at: number): boolean {
  const [item, next] = [scene.items[at], scene.items[at + 1]];
  // "the head knocked it off": no knock is heard
  if (/^(?:knock|knocked|tap|tapped|thumped|ticked)$/u.test(item?.text ?? ''))
    return isFn(next, 'article', 'its', 'my', 'it', 'this', 'off') || hasTag(next, 'machine', 'part');
  if (item?.text === 'popped')
    return isFn(next, 'article', 'its', 'my', 'it', 'this') || hasTag(next, 'machine');
  return (
    item?.text === 'blew' &&
    scene.nouns.some((noun) => noun.at > at && ['dust', 'debris', 'plastic', 'gunk'].includes(noun.code))
  );
}
/** "without a hitch", "catching up", "it catches elm mid print". */
const isUntroubling = (scene: Scene, at: number): boolean => {
  const [item, next] = [scene.items[at], scene.items[at + 1]];
  if (scene.items.slice(Math.max(0, at - 2), at).some((one) => one.text === 'without')) return true;
  return (
    /^(?:catches|catching|caught)$/u.test(item?.text ?? '') &&
    (next?.text === 'up' || hasTag(next, 'machine') || isFn(next, 'up'))
  );
};
/** "burned through 320 g of nylon". */
const isUsedUp = (scene: Scene, at: number): boolean =>
  /^(?:burned|burnt|went|blew|tore|chewed|ate|munched|gobbled|chomped) (?:through|up)$|^(?:chewed|ate|eaten|munched)$/u.test(
    scene.items[at]?.text ?? '',
  ) && scene.values.some((value) => value.at > at && (value.code === 'grams' || value.code === 'metres'));

/** Said of a material these are of the filament, whatever part stands beside. */
const OF_FILAMENT: ReadonlySet<string> = new Set(['chewed', 'wet']);
const WET_THINGS: ReadonlySet<string> = new Set([
  'glue',
  'floor',
  'cloth',
  'paper',
  'hands',
  'build-plate',
  'bed',
]);
/** "the surface of the print is ugly": the print is only where the surface is. */
const outermostLast = (complaint: string, nouns: NounAt[]): NounAt[] =>
  // "the layers of whatever we print come apart": of layers, whatever they are of
  ((complaint === 'broken' || complaint === 'weak') && nouns.some((one) => one.code === 'layer')) ||
  complaint === 'weird' ||
  complaint === 'stiff'
    ? [...nouns].sort((a, b) => Number(a.code === 'print') - Number(b.code === 'print'))
    : nouns;

/** "came out rough", "comes out with holes in it": turned out, not slipped out. */
function isCopula(scene: Scene, at: number): boolean {
  if (!/^(?:came|comes?|coming) out$/u.test(scene.items[at]?.text ?? '')) return false;
  const next = scene.items[at + 1];
  return (
    hasTag(next, 'complaint', 'symptom', 'finding') ||
    isFn(next, 'with', 'like', 'all', 'too', 'really', 'as') ||
    /^(?:looking|look)(?: like)?$/u.test(next?.text ?? '') ||
    (next !== undefined && next.senses.length === 0)
  );
}
/** "hung a tag on it", "hangs in the print". */
const hangs = (scene: Scene, at: number): boolean =>
  (/^(?:hangs|hanging|hung)$/u.test(scene.items[at]?.text ?? '') &&
    isFn(scene.items[at + 1], 'in', 'on', 'from', 'off', 'out', 'over')) ||
  (scene.items[at]?.text === 'hung' && isFn(scene.items[at + 1], 'article', 'my', 'this', 'up')) ||
  // "1 kg of white asa hangs on elm"
  (/^(?:hangs|hanging)$/u.test(scene.items[at]?.text ?? '') && scene.materials.length > 0);
const QUALITIES = new Set<string>([
  'melted',
  'stiff',
  'hot',
  'wet',
  'cold',
  'weird',
  'fat',
  'thin',
  'weak',
  'loose',
]);
/** "a soft brush", "with a dry rag": the quality of another thing. */
function isAttribute(scene: Scene, at: number, complaint: string): boolean {
  const next = scene.items[at + 1];
  // "off the wrong job card"
  if (complaint === 'weird' && scene.items[at]?.text === 'wrong' && hasTag(next, 'thing', 'part'))
    return true;
  return (
    QUALITIES.has(complaint) &&
    isFn(scene.items[at - 1], 'article', 'with', 'my', 'some') &&
    next !== undefined &&
    (next.senses.every((s) => s.tag === 'verb' && s.form === 'base') ||
      sense(next, 'part')?.code === 'cloth') &&
    /^\p{L}{3,}$/u.test(next.text) &&
    !next.text.endsWith('ly')
  );
}

/** "everything off elm", "off the plate": whence, not what is wrong. */
const isParticle = (scene: Scene, at: number): boolean =>
  scene.items[at]?.text === 'off' &&
  (/^(?:come|came|comes|coming|go|goes|went|gone|fell|broke|knocked|switched|turned|took|pulled|popped|cut|set)$/u.test(
    scene.items[at - 1]?.text ?? '',
  ) ||
    hasTag(scene.items[at + 1], 'machine', 'part', 'thing') ||
    isFn(scene.items[at + 1], 'article', 'its', 'my'));

/** Parts that come off; what came off is then no print. */
const CAME_OFF = new Set(['guide-tube', 'tube-fitting', 'tube-end', 'liner', 'belt', 'x-belt', 'y-belt', 'thermistor', 'heater', 'plug', 'wiring', 'fastener', 'printed-part', 'grub-screw']); // prettier-ignore
/** Parts that die of themselves, while the machine has its power. */
const DIES = new Set(['fan', 'hot-end-fan', 'part-fan', 'board-fan', 'screen', 'heater', 'bed-heater', 'thermistor', 'probe']); // prettier-ignore
function whatCameOff(scene: Scene, seen: Seen): Seen {
  const complaint =
    seen.symptom === 'detached-print' ? 'came-out' : seen.symptom === 'power-lost' ? 'dead' : undefined;
  if (complaint === undefined || seen.noun !== undefined) return seen;
  const noun = scene.nouns.find(
    (one) => one.at < seen.at && (complaint === 'dead' ? DIES.has(one.code) : CAME_OFF.has(one.code)),
  );
  const symptom = noun && SYMPTOMS_OF[complaint][noun.code];
  return noun && symptom ? { ...seen, symptom, noun, complaint } : seen;
}

/** Heard or seen of the machine as a whole, whatever part is named beside. */
const HEARD = new Set(['squeak', 'grind', 'rattle', 'click', 'jam', 'leak', 'crashed', 'shock']);

/** Every symptom that the clause names, whatever its mood. */
export function symptomsIn(scene: Scene): readonly Seen[] {
  const known = memo.get(scene);
  if (known) return known;
  const found = seek(scene);
  memo.set(scene, found);
  return found;
}
/** A scene never changes; five frames ask for the same symptoms. */
const memo = new WeakMap<Scene, readonly Seen[]>();

/** "cuts out as it should": what was meant to happen is no trouble. */
const AS_MEANT =
  /\b(?:as|like|the way) (?:it|they) (?:should|ought to|must|is meant to)\b|\bas (?:expected|intended|designed)\b/u;

function seek(scene: Scene): Seen[] {
  if (scene.items.some((item) => hasTag(item, 'finding') && AS_MEANT.test(item.text))) return [];
  // "protection test: cuts out ok"
  if (
    /\b(?:cuts?|cut|trips?|tripped|shuts?|shut) (?:out|off|down)? ?(?:ok|fine|as it should|properly|correctly)\b/u.test(
      scene.text,
    )
  )
    return [];
  const made = madeUp(scene);
  const found: Seen[] = made.map((one) => one.seen);
  scene.items.forEach((item, at) => {
    if (
      hasTag(item, 'machine', 'date') ||
      // "kill alder" asks for it, "kill() called on alder" tells of it
      (item.text === 'kill' && hasTag(scene.items[at + 1], 'machine')) ||
      made.some((one) => one.uses(at)) ||
      (item.text.startsWith('like ') && !isLikened(scene, at)) ||
      // "they look rough": the printers, not their prints
      (item.text === 'rough' &&
        /^looks?$/u.test(scene.items[at - 1]?.text ?? '') &&
        scene.nouns.length === 0 &&
        scene.materials.length === 0) ||
      isColour(scene, at) ||
      isFeeling(scene, at) ||
      ownDenial(scene.items, at) ||
      looksShabby(scene, at) ||
      (isFn(scene.items[at - 1], 'for', 'any') && isFn(scene.items[at - 1], 'any')
        ? isFn(scene.items[at - 2], 'for')
        : isLookedFor(scene, at))
    )
      return;
    const jam = sense(item, 'thing')?.code === 'jam';
    const direct =
      sense(item, 'symptom') ?? (jam ? ({ tag: 'symptom', code: 'no-extrusion' } as const) : undefined);
    const complaints = item.senses.filter((s): s is SenseOf<'complaint'> => s.tag === 'complaint');
    const crossed = complaints.map((one) => fromComplaint(scene, at, one)).filter((one) => one !== undefined);
    const withNoun = crossed.find(
      (one) => one.noun !== undefined && !(direct !== undefined && one.noun.code === 'print'),
    );
    const firm = direct !== undefined && words(item) > 1;
    const seen = firm
      ? { symptom: ofWalls(scene, direct.code), at }
      : (withNoun ?? (direct ? { symptom: direct.code, at } : crossed[0]));
    if (seen && !asTool(scene, at, item) && !isOwnMove(scene, at)) found.push(whatCameOff(scene, seen));
  });
  if (
    scene.verbs.some(
      (verb) => verb.code === 'print' && (scene.items[verb.at]?.text.startsWith('extrud') ?? false),
    ) &&
    /\btoo (?:much|little)\b|\bnot enough\b/u.test(scene.text)
  )
    found.push({ symptom: /\btoo much\b/u.test(scene.text) ? 'over-extrusion' : 'under-extrusion', at: 0 });
  const lifted = found.some((one) => one.symptom === 'warping' || one.symptom === 'poor-adhesion');
  const pleased = scene.items.some((item) =>
    item.senses.some((s) => s.tag === 'finding' && s.code === 'fine'),
  );
  const kept = found.filter(
    // "came off the plate at two and looks lovely": finished, and taken off.
    (one) =>
      !(pleased && one.symptom === 'detached-print') &&
      !(lifted && one.symptom === 'detached-print' && scene.items[one.at]?.text.startsWith('off ')),
  );
  return kept.filter((one, i) => kept.findIndex((other) => other.symptom === one.symptom) === i);
}

const COLOURS =
  /^(?:red|orange|yellow|gold|golden|grey|gray|blue|black|white|green|purple|pink|brown|bronze|clear|colou?red)\b/u;
/** "a fire red benchy", "prints smoky grey pla": what it looks like. */
function isColour(scene: Scene, at: number): boolean {
  const word = scene.items[at]?.text ?? '';
  if (!COLOURS.test(scene.items[at + 1]?.text ?? '')) return false;
  if (/^(?:fire|flame|fiery|smoky|smokey)$/u.test(word)) return true;
  return (
    word === 'smoke' &&
    (scene.materials.length > 0 ||
      scene.nouns.some((noun) => ['print', 'spool', 'filament', 'job'].includes(noun.code)))
  );
}
/** "shocked how well alder prints": nobody touched it. */
const isFeeling = (scene: Scene, at: number): boolean =>
  /^shock(?:ed|ing)$/u.test(scene.items[at]?.text ?? '') &&
  /^(?:how|that|to see|to hear|to find|at how|by how|at the|with how|and|to)\b/u.test(
    scene.items
      .slice(at + 1, at + 3)
      .map((item) => item.text)
      .join(' '),
  );

/** "walls are paper thin": no first layer is. */
const ofWalls = (scene: Scene, symptom: Symptom): Symptom =>
  symptom === 'first-layer-close' &&
  scene.nouns.some((noun) => noun.code === 'wall') &&
  !scene.nouns.some((noun) => noun.code === 'first-layer')
    ? 'under-extrusion'
    : symptom;

/** "sounds like a bag of spanners": of a machine or a thing of it that the clause names, points at or leaves out. */
const isLikened = (scene: Scene, at: number): boolean =>
  hasMachine(scene) ||
  scene.nouns.some((noun) => noun.at < at) ||
  scene.items.slice(0, at).some((item) => isFn(item, 'it', 'its', 'they', 'this')) ||
  at === 0 ||
  (isFn(scene.items[0], 'be') && at <= 2);

/** "they look rough": shabby, where no print or surface is spoken of. */
const looksShabby = (scene: Scene, at: number): boolean =>
  scene.items[at]?.text === 'rough' &&
  /^looks?$/u.test(scene.items[at - 1]?.text ?? '') &&
  scene.nouns.length === 0 &&
  isFn(scene.items[at - 2], 'they', 'it');
/** "checked hazel for the burning smell": what a look is for, not what it found. */
function isLookedFor(scene: Scene, at: number): boolean {
  let i = at - 1;
  while (i > 0 && isFn(scene.items[i], 'article', 'any', 'this', 'my', 'some')) i -= 1;
  if (/^(?:looked|looking|searched|searching|hunted) for$/u.test(scene.items[i]?.text ?? '')) return true;
  return isFn(scene.items[i], 'for') && scene.verbs.some((verb) => verb.code === 'look' && verb.at < i);
}

/** "shifted hazel along the bench": somebody moved the machine. */
const isOwnMove = (scene: Scene, at: number): boolean =>
  // "juniper shifted to the bay by the window"
  (scene.items[at]?.text === 'shifted' &&
    (hasTag(scene.items[at - 1], 'machine') || isFn(scene.items[at - 1], 'be')) &&
    isFn(scene.items[at + 1], 'to')) ||
  // "when I locked up", "I unscrewed its head"
  (/^(?:locked up|unscrewed|unplugged|loosened|bent)$/u.test(scene.items[at]?.text ?? '') &&
    isFn(scene.items[at - 1], 'i', 'we')) ||
  (/^shift(?:ed|ing)$/u.test(scene.items[at]?.text ?? '') &&
    hasTag(scene.items[at + 1], 'machine') &&
    (at === 0 || isFn(scene.items[at - 1], 'i', 'we', 'have', 'just')));

/** "smoke detector", "jam" as the thing that a deed cleared, "string" on a guitar: the word names no trouble. */
function asTool(scene: Scene, at: number, item: Item): boolean {
  const thing = sense(item, 'thing');
  const picked = scene.verbs.some((verb) => verb.deed && ['clean', 'clear', 'remove'].includes(verb.code));
  if (
    picked &&
    /^(?:string|blob|whisker|hair|wisp|web|cobweb)/u.test(item.text) &&
    scene.nouns.some((noun) => noun.code === 'debris')
  )
    return true;
  if (thing?.code === 'debris' || thing?.code === 'crack' || thing?.code === 'dust')
    return scene.verbs.some(
      (verb) =>
        verb.deed &&
        ['clean', 'clear', 'look', 'remove', 'wipe', 'get', 'dust', 'take'].includes(verb.code) &&
        // "has got a crack"
        !(scene.items[verb.at]?.text === 'got' && isFn(scene.items[verb.at - 1], 'have')),
    );
  if (thing?.code === 'jam')
    return (
      scene.verbs.some(
        (verb) =>
          verb.deed &&
          verb.code !== 'find' &&
          verb.code !== 'get' &&
          // "haven't had a jam since"
          !/^(?:had|have|has|having)$/u.test(scene.items[verb.at]?.text ?? ''),
      ) || scene.items.some((one) => isFn(one, 'did-it'))
    );
  return (
    (thing !== undefined && /detector|alarm/u.test(item.text)) ||
    (at > 0 && hasTag(scene.items[at - 1], 'number') && item.text === 'string')
  );
}

/** "has stopped sounding like a mouse". */
const isStopped = (scene: Scene, at: number): boolean =>
  scene.items
    .slice(Math.max(0, at - 4), at)
    .some((item) => /^(?:stopped|has stopped|have stopped|quit|no longer)$/u.test(item.text)) &&
  scene.items
    .slice(Math.max(0, at - 3), at)
    .some((item) => /^(?:sounding|making|doing|acting|behaving|being)$/u.test(item.text));

/** "nothing was loose", "none of them is frayed", "no wheel was flat": said of none at all. */
function saidOfNone(items: readonly Item[], at: number): boolean {
  let i = at - 1;
  while (i >= 0 && (isFn(items[i], 'really', 'too', 'just') || items[i]?.text.endsWith('ly') === true))
    i -= 1;
  if (!isFn(items[i], 'be') || items[i]?.text === 'got') return false;
  i -= 1;
  while (i >= 0 && /^(?:of|them|these|those|the|of them|there|here|has|have)$/u.test(items[i]?.text ?? ''))
    i -= 1;
  if (isFn(items[i], 'nothing') || /^(?:none|neither|nothing|no one of)$/u.test(items[i]?.text ?? ''))
    return true;
  if (!hasTag(items[i], 'part', 'thing')) return false;
  return (
    isFn(items[i - 1], 'no') ||
    /^(?:none|none of)$/u.test(items[i - 1]?.text ?? '') ||
    (isFn(items[i - 1], 'article', 'its', 'of') &&
      items
        .slice(Math.max(0, i - 4), i)
        .some((item) => /^(?:none|none of|neither of|neither)$/u.test(item.text)))
  );
}

/** "used to rattle": it did once. */
export const usedTo = (items: readonly Item[], at: number): boolean =>
  items
    .slice(Math.max(0, at - 5), at)
    .some((item, i, row) => item.text === 'used' && isFn(row[i + 1] ?? items[at], 'to'));

/** Denied right where it stands: "no stringing", "not jammed". */
const denied = (scene: Scene, at: number): boolean =>
  isFn(scene.items[at - 1], 'no', 'not', 'nothing') ||
  saidOfNone(scene.items, at) ||
  (isFn(scene.items[at - 1], 'any') && isFn(scene.items[at - 2], 'not'));

/** Where the power went for all. */
const WHOLE_HOUSE =
  /\b(?:building|whole (?:house|workshop|place|street|block|site)|everywhere|street|all over)\b/u;

export function symptomDrafts(scene: Scene, all: readonly Seen[]): Draft[] {
  const seen = all.filter(
    (one) => !denied(scene, one.at) && !isStopped(scene, one.at) && !usedTo(scene.items, one.at),
  );
  return seen.map(({ symptom, noun, complaint }) => {
    const part = noun?.part !== undefined && isPart(noun.part) ? noun.part : undefined;
    const act = { kind: 'symptom' as const, symptom, ...(part === undefined ? {} : { part }) };
    const everywhere = symptom === 'power-cut' && !hasMachine(scene) && WHOLE_HOUSE.test(scene.text);
    return draft(scene, act, `symptom: ${complaint ?? 'said'} x ${noun?.code ?? '-'}`, {
      ...(complaint === undefined ? {} : { complaint }),
      ...(noun === undefined ? {} : { noun: noun.code }),
      ...(everywhere ? { on: ['room'] } : {}),
    });
  });
}
