/** A part out, another in. The swap carries its reason and what went in; its task and its spare are the core's to conclude. */
import { isPart, type Part, type Reason } from '../../../maintenance/codes.ts';
import { hasTag, isFn, sense, sensesOf } from '../../item.ts';
import {
  asserted,
  deedOf,
  type Draft,
  draft,
  hasMachine,
  type NounAt,
  objects,
  type Scene,
  someFn,
  type VerbAt,
} from '../../scene.ts';
import { partOf, standsAlone } from './parts-said.ts';
import { REASON_OF } from './symptom-table.ts';

export function reasonIn(scene: Scene): Reason | undefined {
  const said = sensesOf(scene.items, 'reason')[0];
  if (said) return said.code;
  for (const { code } of sensesOf(scene.items, 'complaint')) {
    const reason = REASON_OF[code];
    if (reason !== undefined) return reason;
  }
  return undefined;
}

/** What went in, as it was said: words of make and size after "for" or "to", else all in the clause. */
export function fittedIn(scene: Scene): string | undefined {
  const { items } = scene;
  const turn = items.findLastIndex(
    (item, i) => isFn(item, 'for', 'to', 'with') && items.slice(i + 1).some((after) => isSpec(after)),
  );
  const old = items.findIndex((item) => isFn(item, 'old') && !hasTag(item, 'spec'));
  const pool =
    turn >= 0
      ? items.slice(turn + 1)
      : old >= 0 && items.slice(0, old).some(isSpec)
        ? items.slice(0, old)
        : items;
  const words = pool.flatMap((item) =>
    isSpec(item)
      ? [item.text.replace(/\s*mm$/u, '')]
      : hasTag(item, 'part') && item.text.startsWith('brass ')
        ? ['brass']
        : [],
  );
  return words.length > 0 ? words.join(' ') : undefined;
}
function isSpec(item: Parameters<typeof sense>[0]): boolean {
  if (!item || hasTag(item, 'machine')) return false;
  if (hasTag(item, 'spec') && !hasTag(item, 'part')) return true;
  return /^\d[.,][1-9]\d*(?: ?mm)?$/u.test(item.text) && !hasTag(item, 'date');
}

function countFor(scene: Scene, noun: NounAt): number | undefined {
  // "swapped both collets", "four fresh ones went on"
  if (isFn(scene.items[noun.at - 1], 'both') && sensesOf(scene.items, 'machine').length <= 1) return 2;
  const end = noun.at < 0 ? scene.items.findIndex((item) => item.text.endsWith('ones')) : noun.at;
  for (let i = end - 1; i >= Math.max(0, end - 3); i -= 1) {
    const value = sense(scene.items[i], 'value');
    if (value?.code === 'bare' && Number.isInteger(value.value) && value.value > 1 && value.value < 100)
      return value.value;
    if (!hasTag(scene.items[i], 'spec', 'fn')) return undefined;
  }
  return undefined;
}

function toDraft(scene: Scene, noun: NounAt, part: Part, rule: string, taken?: Scene): Draft {
  const fitted = fittedIn(scene);
  const reason = reasonIn(scene);
  const source = taken?.nouns.find((one) => one.code === noun.code);
  const count = taken && source ? countFor(taken, source) : countFor(scene, noun);
  const act = {
    kind: 'swap' as const,
    part,
    ...(fitted === undefined ? {} : { fitted }),
    ...(reason === undefined ? {} : { reason }),
    ...(count === undefined ? {} : { count }),
  };
  return draft(scene, act, rule, { noun: noun.code, ...(noun.weak ? { weak: true as const } : {}) });
}

/** "new x belt on hazel", "fresh nozzle in maple", "nozzle out, 0.6 in". */
function isNew(scene: Scene): boolean {
  if (holdsThem(scene)) return false;
  // "gave one of our spare cameras to Odd": handed on
  if (!hasMachine(scene) && deedOf(scene, 'give', 'hand') && someFn(scene, 'to')) return false;
  const out = scene.items.findIndex((item) => item.text === 'out');
  if (
    out > 0 &&
    scene.verbs.every((verb) => !verb.deed) &&
    scene.items.slice(out + 1).some((item) => item.text === 'in' || isFn(item, 'new')) &&
    scene.nouns.length > 0
  )
    return true;
  const turn = scene.items.findIndex((item) => item.text === 'to');
  if (
    turn > 0 &&
    hasMachine(scene) &&
    scene.verbs.length === 0 &&
    isSpec(scene.items[turn + 1]) &&
    scene.nouns.some((noun) => noun.at < turn)
  )
    return true;
  if (nowHas(scene) || isInNow(scene)) return true;
  if (hasMachine(scene) && scene.verbs.some((verb) => verb.code === 'run' && entersMachine(scene, verb)))
    return true;
  // "we move its replacement to that day"
  if (someFn(scene, 'to') && scene.verbs.some((verb) => verb.code === 'put-off')) return false;
  const at = scene.items.findIndex((item) => isFn(item, 'new'));
  const until = scene.items.findIndex((item) => isFn(item, 'until'));
  if (
    at < 0 ||
    // "out of order until the new thermistor arrives"
    (until >= 0 && until < at) ||
    scene.verbs.some(
      (verb) =>
        [
          'order',
          'buy',
          'arrive',
          'need',
          'find',
          'run',
          'print',
          'look',
          'test',
          'load',
          'use',
          'count',
        ].includes(verb.code) &&
        verb.form !== 'base' &&
        !entersMachine(scene, verb) &&
        !(verb.form === 'ing' && /^new ones?$/u.test(scene.items[at]?.text ?? '')) &&
        !scene.verbs.some(
          (other) => other.at === verb.at && ['fit', 'get', 'install', 'put'].includes(other.code),
        ),
    )
  )
    return false;
  // "rowan probe -> new one"
  if (
    scene.items[at - 1]?.text === 'to' &&
    /^(?:a )?new ones?$/u.test(scene.items[at]?.text ?? '') &&
    hasMachine(scene) &&
    scene.verbs.every((verb) => !verb.deed) &&
    scene.nouns.some((one) => one.part !== undefined && one.at < at)
  )
    return true;
  const noun = scene.nouns.find((one) => one.at > at || one.at < 0);
  // "the new roll on cedar snapped in the tube": the roll is new
  if (
    noun?.part === undefined &&
    /^(?:spool|print|job|machine|firmware|settings|pack|filament)$/u.test(noun?.code ?? '')
  )
    return false;
  // "fresh grease on both": what is new is no part.
  const fresh = sense(scene.items[at + 1], 'part')?.code;
  if (fresh !== undefined && !isPart(fresh)) return false;
  if (noun !== undefined && noun.at < 0) return true;
  // "n new bed springs in"
  if (
    noun?.part !== undefined &&
    scene.items.at(-1)?.text === 'in' &&
    scene.named &&
    scene.values.length === 0
  )
    return true;
  return (
    noun !== undefined &&
    (hasMachine(scene) ||
      deedOf(scene, 'put', 'get', 'give', 'fit', 'install') !== undefined ||
      (someFn(scene, 'on', 'in', 'for') && someFn(scene, 'it', 'both', 'all', 'they')))
  );
}

/** "a hardened 0.6 is in now". */
const isInNow = ({ named, items, nouns, text }: Scene): boolean =>
  named &&
  /\b(?:is|'s) (?:now )?in(?: now| there)?$/u.test(text) &&
  items.some((item) => hasTag(item, 'spec')) &&
  nouns.some((noun) => noun.part !== undefined);
/** "cedar now wears a 0.6 hardened nozzle". */
const nowHas = ({ items }: Scene): boolean =>
  items.some(
    (item, at) =>
      hasTag(item, 'machine') &&
      isFn(items[at + 1], 'now') &&
      /^(?:has|wears|runs|sports|carries|got)$/u.test(items[at + 2]?.text ?? '') &&
      items.slice(at + 3).some((one) => hasTag(one, 'spec')) &&
      items.slice(at + 3).some((one) => hasTag(one, 'part')),
  );
/** "reprinted the cable clip on rowan". */
const reprinted = (scene: Scene): VerbAt | undefined =>
  scene.verbs.find(
    (verb) =>
      verb.deed &&
      /^re ?printed$/u.test(scene.items[verb.at]?.text ?? '') &&
      hasMachine(scene) &&
      scene.nouns.some((noun) => noun.at > verb.at && noun.part !== undefined && noun.code !== 'filament'),
  );
/** "upgraded birch to a steel gear": what it was upgraded to went in. */
const upgradedTo = (scene: Scene): VerbAt | undefined => {
  const verb = deedOf(scene, 'update');
  const to = scene.items.findIndex((item, at) => at > (verb?.at ?? -1) && isFn(item, 'to'));
  const part = scene.nouns.some(
    (noun) => noun.at > to && noun.part !== undefined && noun.code !== 'control-board',
  );
  return verb && to > 0 && part ? verb : undefined;
};

/** "a fresh nozzle went into cedar", "juniper received a new collet": the machine got it, and no shelf. */
const entersMachine = (scene: Scene, verb: VerbAt): boolean =>
  (verb.code === 'run' &&
    /^went (?:into|onto|in|on)$/u.test(scene.items[verb.at]?.text ?? '') &&
    scene.nouns.some((noun) => noun.part !== undefined && noun.at < verb.at)) ||
  (verb.code === 'arrive' &&
    scene.items.slice(0, verb.at).some((item) => hasTag(item, 'machine')) &&
    scene.items.slice(0, verb.at).every((item) => !isFn(item, 'for')));

export function readSwap(scene: Scene, before?: Scene, next?: Scene): Draft[] {
  if (!asserted(scene)) return [];
  const exchanged = exchange(scene);
  if (exchanged) return [exchanged];
  // "all covers are mounted again": what was off is on, and nothing new
  if (someFn(scene, 'again') && !someFn(scene, 'new') && deedOf(scene, 'swap', 'install') === undefined)
    return [];
  const verb =
    deedOf(scene, 'swap', 'install') ??
    swapDone(scene) ??
    fitsPart(scene) ??
    putsTaken(scene, before) ??
    usedIn(scene) ??
    upgradedTo(scene) ??
    reprinted(scene);
  if (!verb && !isNew(scene) && !opensNewParts(scene, next)) return [];
  const nouns = objects(scene).filter(
    (noun) =>
      standsAlone(noun) && noun.code !== 'filament' && noun.code !== 'spool' && !saysWhere(scene, noun),
  );
  const after = verb ? nouns.filter((noun) => noun.at > verb.at) : nouns;
  const pool = after.length > 0 ? after : nouns;
  const parts = pool.flatMap((noun) => {
    const part = partOf(scene, noun);
    return part === undefined ? [] : [{ noun, part }];
  });
  const real = parts.filter(({ noun }) => noun.part !== undefined);
  const once = (real.length > 0 ? real : parts).filter(
    (one, i, all) => all.findIndex((other) => other.part === one.part) === i,
  );
  const taken = once.every(({ noun }) => noun.at < 0) && putsTaken(scene, before) ? before : undefined;
  if (once.length > 0)
    return once.map(({ noun, part }) =>
      toDraft(scene, noun, part, verb ? `swap: ${verb.code} x part` : 'swap: new x part', taken),
    );
  return fanUnsaid(scene, verb !== undefined);
}

/** "new tube and new collet on birch": the machine is said with the last of them. */
const opensNewParts = (scene: Scene, after: Scene | undefined): boolean =>
  after !== undefined &&
  after.clause.sentence === scene.clause.sentence &&
  (after.clause.joint === 'and' || after.clause.joint === 'comma') &&
  isFn(scene.items[0], 'new') &&
  scene.nouns.some((noun) => noun.part !== undefined) &&
  scene.verbs.every((verb) => !verb.deed) &&
  scene.values.length === 0 &&
  isFn(after.items[0], 'new') &&
  hasMachine(after);

/** "alder and birch swapped nozzles": perhaps with each other, and then nothing new went in. */
function exchange(scene: Scene): Draft | undefined {
  const at = scene.items.findIndex((item) => /^(?:swapped|exchanged|traded|switched)$/u.test(item.text));
  const [verb, before] = [scene.items[at], scene.items[at - 1]];
  const names = (until: number): number =>
    new Set(sensesOf(scene.items.slice(0, Math.max(until, 0)), 'machine').map(({ code }) => code)).size;
  const noun = scene.nouns.find((one) => one.at > at && one.part !== undefined);
  const mutual =
    /\b(?:with each other|between them|with one another)\b/u.test(scene.text) ||
    (names(scene.items.length) === 2 &&
      at >= 0 &&
      /\bbetween\b|\bover$/u.test(scene.items.slice(at + 1).map((item) => item.text).join(' '))); // prettier-ignore
  const doers = hasTag(before, 'machine') && verb !== undefined && verb.from - (before?.to ?? 0) <= 1;
  if (
    names(scene.items.length) < 2 ||
    !noun ||
    !(mutual || (doers && names(at) >= 2)) ||
    someFn(scene, 'new', 'i', 'we')
  )
    return undefined;
  const said = scene.items[noun.at]?.text ?? noun.code;
  return draft(
    scene,
    { kind: 'unclear', why: `Did they exchange ${said} with each other, or did new ones go in?` },
    'unclear: exchanged or new',
    { doubt: { field: 'value', said, options: [] } },
  );
}

/** "did a nozzle swap", "nozzle change on elm done". */
export function swapDone(scene: Scene): ReturnType<typeof deedOf> {
  const named = scene.verbs.find((verb) => verb.code === 'swap' && !verb.deed);
  return named && (deedOf(scene, 'did') !== undefined || someFn(scene, 'did-it')) ? named : undefined;
}

/** "we've got 3 spare thermistors": on the shelf, and none of them fitted. */
const holdsThem = (scene: Scene): boolean =>
  !hasMachine(scene) &&
  scene.items.some(
    (item, at) =>
      item.text === 'got' &&
      isFn(scene.items[at - 1], 'have') &&
      sense(scene.items[at + 1], 'value') !== undefined,
  );

/** "fitted a hardened nozzle", "put the new sock in"; not "put the belts on the list". */
function fitsPart(scene: Scene): ReturnType<typeof deedOf> {
  if (holdsThem(scene)) return undefined;
  const fit = deedOf(scene, 'fit');
  const onShelf =
    scene.nouns.some((noun) => noun.code === 'shelf') &&
    !scene.verbs.some((verb) => verb.code === 'take' || verb.code === 'get');
  // "took it off for a soak and refitted it": the same one
  const same =
    /^re ?(?:fit|fitted|mount|mounted)$/u.test(scene.items[fit?.at ?? -1]?.text ?? '') &&
    !someFn(scene, 'new');
  if (fit && same && !scene.items.some((item) => hasTag(item, 'spec'))) return undefined;
  if (fit) return onShelf && !hasMachine(scene) ? undefined : fit;
  const put = deedOf(scene, 'put', 'get', 'give');
  const another =
    someFn(scene, 'another') && scene.nouns.length > 0 && scene.nouns.every((noun) => noun.at < 0);
  // "have got fresh grease": what is new is no part
  const stuff = scene.items.find((_, at) => isFn(scene.items[at - 1], 'new'));
  if (/^(?:grease|oil|lube|lubricant)$/u.test(stuff?.text ?? '')) return undefined;
  // "gave the metal plate a scrub": what it is of, and nothing fitted
  if (put?.code === 'give' && (!someFn(scene, 'new') || (!hasMachine(scene) && someFn(scene, 'to'))))
    return undefined;
  if (
    !put ||
    !(
      someFn(scene, 'new') ||
      another ||
      scene.items.some((item) => hasTag(item, 'spec')) ||
      // "put the 0.6 back in": another bore than was in it
      (/\bback in\b/u.test(scene.text) &&
        scene.nouns.some((noun) => noun.code === 'nozzle' && isSpec(scene.items[noun.at]))) ||
      ourLast(scene, put)
    )
  )
    return undefined;
  const stocked = scene.nouns.some(
    (noun) => noun.code === 'shelf' || noun.code === 'spool' || noun.code === 'filament',
  );
  return stocked || (put.code === 'get' && !hasMachine(scene)) ? undefined : put;
}

/** "put our second last heater in cedar": one of the spares, and in a machine. */
const ourLast = (scene: Scene, put: VerbAt): boolean => {
  const noun = scene.nouns.find((one) => one.at > put.at && one.part !== undefined);
  return (
    noun !== undefined &&
    hasMachine(scene) &&
    isFn(scene.items[noun.at - 1], 'last') &&
    isFn(scene.items[noun.at + 1], 'in', 'on', 'to')
  );
};

/** "used our last spare thermistor, it's in rowan now", "used up the last sock on birch". */
function usedIn(scene: Scene): VerbAt | undefined {
  const verb = deedOf(scene, 'use');
  const machine = scene.items.findLastIndex((item) => hasTag(item, 'machine'));
  const spare = scene.nouns.find(
    (noun) => noun.part !== undefined && verb !== undefined && noun.at > verb.at && noun.at < machine,
  );
  return spare !== undefined &&
    isFn(scene.items[machine - 1], 'in', 'on') &&
    isFn(scene.items[spare.at - 1], 'new', 'last')
    ? verb
    : undefined;
}

/** "took the last probe off the shelf and put it in rowan": what was taken as a spare is fitted. */
function putsTaken(scene: Scene, before: Scene | undefined): ReturnType<typeof deedOf> {
  const put = deedOf(scene, 'put');
  // "grabbed one off the shelf and put it in": in the machine spoken of
  const there = hasMachine(scene) || (scene.named && /\b(?:it|them|that) (?:in|on)$/u.test(scene.text));
  if (!put || !there || someFn(scene, 'back', 'again')) return undefined;
  const taken =
    before !== undefined &&
    deedOf(before, 'take', 'get', 'use', 'remove') !== undefined &&
    before.nouns.some((noun) => noun.code === 'shelf');
  const lent = scene.nouns.every((noun) => noun.at < 0);
  return taken && lent && someFn(scene, 'in', 'on', 'to') ? put : undefined;
}

/** "4 bearings on elm's z rods", "two wheels on the gantry": the later noun says where the first one sits. */
function saysWhere(scene: Scene, noun: NounAt): boolean {
  let i = noun.at - 1;
  while (
    i >= 0 &&
    (isFn(scene.items[i], 'article', 'its', 'possessive') || hasTag(scene.items[i], 'machine', 'spec'))
  )
    i -= 1;
  return (
    i >= 0 &&
    /^(?:on|in|at|under|behind|inside|below|around|round)$/u.test(scene.items[i]?.text ?? '') &&
    scene.nouns.some(
      (other) => other.part !== undefined && other.at >= 0 && other.at < i && i - other.at <= 2,
    ) &&
    (i + 1 === noun.at || !hasTag(scene.items[noun.at - 1], 'machine'))
  );
}

function fanUnsaid(scene: Scene, deed: boolean): Draft[] {
  const fan = scene.nouns.find((noun) => noun.code === 'fan' || noun.code === 'sensor');
  if (!fan || !deed) return [];
  const options =
    fan.code === 'fan'
      ? ['hot-end-fan', 'part-fan', 'board-fan']
      : ['probe', 'thermistor', 'filament-sensor'];
  const said = scene.items[fan.at]?.text ?? fan.code;
  return [
    draft(scene, { kind: 'unclear', why: `Which ${said} was it?` }, 'unclear: which part', {
      doubt: { field: 'part', said, options },
    }),
  ];
}
