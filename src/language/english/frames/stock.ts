/** Spare parts and consumables: come in, taken, counted. */
import type { StockItem } from '../../../maintenance/codes.ts';
import { hasTag, isFn, sense } from '../../item.ts';
import { deedOf, type Draft, draft, type NounAt, type Scene, someFn } from '../../scene.ts';
import { fittedIn } from './swap.ts';

export type Change = 'in' | 'out' | 'count';

/** What is counted: parts and consumables, and filament by its rolls ("two rolls of asa and one of petg"). */
export function spares(scene: Scene): (NounAt & { part: StockItem })[] {
  const named = scene.nouns.filter(
    (noun): noun is NounAt & { part: StockItem } =>
      noun.part !== undefined && !isPackage(scene, noun) && !isFitting(scene, noun),
  );
  const rolls =
    scene.nouns.some((noun) => noun.code === 'spool') ||
    scene.items.some(
      (item, at) =>
        item.text === 'of' &&
        hasTag(scene.items[at + 1], 'material') &&
        sense(scene.items[at - 1], 'value')?.code === 'bare',
    );
  if (!rolls || named.some((noun) => noun.code === 'filament')) return named;
  const wound = scene.items.flatMap((item, at) =>
    hasTag(item, 'material') && (named.length === 0 || rollsBefore(scene, at) !== undefined)
      ? [{ code: 'filament' as const, part: 'filament' as const, weak: false, at }]
      : [],
  );
  return [...wound, ...named].sort((a, b) => a.at - b.at);
}
/** "grease 2 tubes": what it comes in. */
const isPackage = (scene: Scene, { at }: NounAt): boolean =>
  (hasTag(scene.items[at], 'unit') ||
    /^(?:tube|tub|cartridge|bottle|can|tin)$/u.test(scene.items[at]?.text ?? '')) &&
  sense(scene.items[at - 1], 'value')?.code === 'bare' &&
  hasTag(scene.items[at - 2], 'part');
/** "broke a probe while fitting it": a deed, and no collet. */
const isFitting = (scene: Scene, { at }: NounAt): boolean =>
  scene.items[at]?.text === 'fitting' && isFn(scene.items[at - 1], 'while', 'when', 'after', 'before', 'by');
/** "two rolls of", "one of" before a material. */
function rollsBefore(scene: Scene, at: number): number | undefined {
  for (let i = at - 1; i >= Math.max(0, at - 4); i -= 1) {
    const value = sense(scene.items[i], 'value');
    if (value?.code === 'bare' && Number.isInteger(value.value)) return value.value;
    if (isFn(scene.items[i], 'nothing', 'no')) return 0;
    if (/^(?:a|an|another)$/u.test(scene.items[i]?.text ?? '')) return 1;
    if (hasTag(scene.items[i], 'material')) return undefined;
  }
  return undefined;
}

const namesFirst = (scene: Scene): boolean => {
  const firm = scene.nouns.filter((noun) => noun.part !== undefined && !isPackage(scene, noun));
  const [first] = scene.values;
  return (
    firm.length > 1 &&
    firm.length === scene.values.length &&
    first !== undefined &&
    (firm[0]?.at ?? 0) < first.at
  );
};
/** How many of a noun: "five", "a", "two packs of ten", "last". */
function quantity(scene: Scene, noun: NounAt): number | undefined {
  // "in the drawer are now 5 left": of what was named before
  const [only, ...others] = scene.values.filter(
    (value) => value.code === 'bare' && Number.isInteger(value.value),
  );
  if (noun.at < 0 && only && others.length === 0 && !hasMachineIn(scene)) return only.value;
  if (noun.code === 'filament' && hasTag(scene.items[noun.at], 'material'))
    return rollsBefore(scene, noun.at);
  // "oil 1 bottle, grease 2 tubes": each name before its figure
  const next = sense(scene.items[noun.at + 1], 'value');
  if (namesFirst(scene) && next?.code === 'bare' && Number.isInteger(next.value)) return next.value;
  // "from 5 nozzles down to 3"
  const down = scene.items.findIndex(
    (item, at) => item.text === 'down to' || (item.text === 'to' && scene.items[at - 1]?.text === 'down'),
  );
  const lowered = sense(scene.items[down + 1], 'value');
  if (down > noun.at && lowered?.code === 'bare') return lowered.value;
  let total: number | undefined;
  for (let i = noun.at - 1; i >= Math.max(0, noun.at - 6); i -= 1) {
    const item = scene.items[i];
    const value = sense(item, 'value');
    if (
      value &&
      (value.code === 'bare' || value.code === 'other') &&
      Number.isInteger(value.value) &&
      /^\D*\d+\D*$|^[a-z ]+$/u.test(item?.text ?? '')
    )
      total = (total ?? 1) * value.value;
    // "2 of the 5 nozzles": out of so many
    else if (item?.text === 'of' && isFn(scene.items[i + 1], 'article', 'my', 'these')) total = undefined;
    else if (isFn(item, 'not', 'nothing')) return 0;
    else if (/^one of\b/u.test(item?.text ?? '')) return 1;
    else if (scene.nouns.some((other) => other.at === i && other.code !== 'pack' && other.code !== 'shelf'))
      break;
  }
  if (total !== undefined) return total;
  const after = scene.items[noun.at + 1];
  const behind =
    sense(
      after?.text === ':' || isFn(after, 'be', 'have', 'left') || after?.text === 'x'
        ? scene.items[noun.at + 2]
        : after,
      'value',
    ) ??
    sense(
      scene.items.slice(noun.at + 1, noun.at + 5).find((item) => sense(item, 'value')?.code === 'bare'),
      'value',
    );
  if (behind && behind.code === 'bare' && Number.isInteger(behind.value)) return behind.value;
  const before = scene.items.slice(Math.max(0, noun.at - 3), noun.at);
  return before.some(
    (item) =>
      (item.text === 'the' && scene.nouns.some((other) => other.code === 'shelf')) ||
      /^(?:a|an|one|the last|last|another|a new|one more|a further|a single)$/u.test(item.text),
  ) && !/(?:[^s]s)$/u.test(scene.items[noun.at]?.text ?? '')
    ? 1
    : undefined;
}

/** "idlers +2", "bearings -4". */
export const signOf = (scene: Scene): Change | undefined => {
  // "minus two cloths"
  if (scene.items[0]?.text === 'minus' && scene.values.length === 1 && !hasMachineIn(scene)) return 'out';
  const sign = scene.items.find((item) => /^[+-] \d+$/u.test(item.text))?.text[0];
  return sign === undefined ? undefined : sign === '+' ? 'in' : 'out';
};

export function direction(scene: Scene): Change | undefined {
  const { items } = scene;
  const sign = signOf(scene);
  if (sign !== undefined) return sign;
  const shelf = scene.nouns.some((noun) => noun.code === 'shelf');
  const out = items.some(
    (item, i) =>
      /(?:^|\b)out(?: of)?$/u.test(item.text) &&
      isFn(item, 'out', 'from') &&
      !items.slice(i + 1, i + 3).some((next) => hasTag(next, 'machine')) &&
      (scene.nouns.some((noun) => noun.at > i && noun.at <= i + 4) ||
        (isFn(items[i - 1], 'be') && i === items.length - 1)),
  );
  // "nozzle count is 12 now that the order came in"
  if (/\bcount (?:is|was|now|at|stands at)\b/u.test(scene.text)) return 'count';
  const handed = handedOver(scene);
  if (handed !== undefined) return handed;
  if (isLastOne(scene)) return 'count';
  if (deedOf(scene, 'arrive') && !deedOf(scene, 'use')) return 'in';
  if (deedOf(scene, 'order')) return undefined;
  if (deedOf(scene, 'bin') && !deedOf(scene, 'put')) return 'out';
  if (deedOf(scene, 'put', 'fit', 'load') && shelf) return 'in';
  if (deedOf(scene, 'get') && items.at(-1)?.text === 'in' && !hasMachineIn(scene)) return 'in';
  if (deedOf(scene, 'buy') && scene.values.some((value) => value.code === 'bare') && !hasMachineIn(scene))
    return 'in';
  if (arrivesIn(scene) || broughtIn(scene)) return 'in';
  // "found 2 bed springs at the back of the cupboard"
  if (foundSome(scene)) return 'in';
  if (goneThrough(scene)) return 'out';
  const holds = items.some((item, i) => item.text === 'got' && isFn(items[i - 1], 'have'));
  // "elm got a new spool": loaded
  if (deedOf(scene, 'get') && hasMachineIn(scene) && scene.nouns.some((noun) => noun.code === 'spool'))
    return undefined;
  if (deedOf(scene, 'get', 'buy') && !holds && (shelf || someFn(scene, 'new', 'more', 'another')))
    return 'in';
  // "we had 5 nozzles": then, not now
  if (items.some((item) => item.text === 'had') && deedOf(scene, 'use', 'remove') === undefined)
    return undefined;
  if (deedOf(scene, 'use', 'take', 'remove') && (shelf || !hasMachineIn(scene))) return 'out';
  if (
    someFn(scene, 'left') ||
    /^(?:that |which |it )?leaves (?:us )?/u.test(scene.text) ||
    (items.some((item) => /^(?:no more|no)$/u.test(item.text)) &&
      items.some((item) => /^spares?$/u.test(item.text))) ||
    deedOf(scene, 'count') ||
    items.some((item) =>
      /^(?:down to|i make it|there are|there is|there 's|we have|we 've|count)$/u.test(item.text),
    ) ||
    out ||
    shelf ||
    items.some((item) => item.text === 'make it') ||
    /\b(?:at|down to) (?:zero|none|nil|nothing|0)$/u.test(scene.text) ||
    (usedUp(scene) && !hasMachineIn(scene)) ||
    isShelfLine(scene) ||
    /\b(?:stays?|remains?)$/u.test(scene.text)
  )
    return 'count';
  const count = items.some(
    (item, i) =>
      (isFn(item, 'down') && isFn(items[i + 1], 'to')) ||
      (isFn(item, 'we') && isFn(items[i + 1], 'have')) ||
      (isFn(item, 'there') && isFn(items[i + 1], 'be')),
  );
  return count ? 'count' : undefined;
}
const counted = (scene: Scene): number =>
  scene.values.filter((value) => value.code === 'bare' && Number.isInteger(value.value)).length;
/** "gave two air cans to the lab next door", "the makerspace gave us three nozzles": over to others, or to us. */
function handedOver(scene: Scene): Change | undefined {
  const deed = deedOf(scene, 'give', 'hand', 'arrive');
  if (!deed || hasMachineIn(scene) || (counted(scene) === 0 && !/\b(?:a|an|one of \w+)\b/u.test(scene.text)))
    return undefined;
  if (deed.code === 'arrive' && scene.items[deed.at]?.text.startsWith('donat') !== true) return undefined;
  const { items } = scene;
  if (
    isFn(items[deed.at + 1], 'i', 'we') ||
    items.some((item, at) => isFn(item, 'to') && isFn(items[at + 1], 'i', 'we'))
  )
    return 'in';
  const noun = scene.nouns.find((one) => one.part !== undefined && one.at > deed.at);
  if (noun === undefined || scene.nouns.some((one) => one.part !== undefined && one.at > noun.at))
    return undefined;
  const to =
    (isFn(items[noun.at + 1], 'to') || items[noun.at + 1]?.text === 'away') &&
    items[noun.at + 2] !== undefined;
  return to || /\b(?:away|out)$/u.test(items[deed.at]?.text ?? '') ? 'out' : undefined;
}
/** "that was the last bottle of isopropyl", "used up the last of the grease": none is left. */
const isLastOne = (scene: Scene): boolean =>
  !hasMachineIn(scene) &&
  (/^(?:that|this|it) (?:was|is|were|'s) (?:the|our|my)(?: very)? last\b(?! time| one| of)/u.test(
    scene.text,
  ) ||
    (/\bthe last of (?:the|our)\b/u.test(scene.text) &&
      (deedOf(scene, 'use', 'run', 'take') !== undefined ||
        scene.items.some((item) => isFn(item, 'anymore')))));
/** "got ten heater cartridges in the post", "the postie brought six": where they came from tells that they came. */
const broughtIn = (scene: Scene): boolean =>
  !hasMachineIn(scene) &&
  counted(scene) > 0 &&
  ((deedOf(scene, 'get', 'buy', 'take', 'arrive') !== undefined &&
    /\b(?:in|by) (?:the )?(?:post|mail)\b|\bfrom (?:the|a|our) (?:shop|store|supplier|warehouse|hardware shop|maker|parcel|delivery)\b/u.test(
      scene.text,
    )) ||
    scene.items.some((item) => /^(?:brought|fetched)$/u.test(item.text)) ||
    (someFn(scene, 'here') && someFn(scene, 'another', 'more', 'new')));
const foundSome = (scene: Scene): boolean =>
  !someFn(scene, 'left', 'only') &&
  !hasMachineIn(scene) &&
  /^(?:i |we )?found (?:one more|another|some)?\b/u.test(scene.text) &&
  (counted(scene) > 0 || someFn(scene, 'more', 'another'));
/** "went through two cans of air this week": used. */
const goneThrough = (scene: Scene): boolean =>
  !hasMachineIn(scene) &&
  counted(scene) > 0 &&
  scene.verbs.some(
    (verb) => verb.deed && verb.code === 'run' && / (?:through|up)$/u.test(scene.items[verb.at]?.text ?? ''),
  );
/** "Grease: 3 tubes", "spare feeder gears: five", "cloths: none there": a thing of the shelf and how many, and nothing else. */
function isShelfLine(scene: Scene): boolean {
  const { items } = scene;
  const at = items.findIndex((item) => hasTag(item, 'part'));
  const [noun, next] = [items[at], items[at + 1]];
  if (namesFirst(scene) && scene.verbs.every((verb) => !verb.deed || isFn(items[verb.at], 'left')))
    return items.every(
      (item) =>
        hasTag(item, 'part', 'unit', 'spec') ||
        sense(item, 'value')?.code === 'bare' ||
        isFn(item, 'new', 'left', 'now', 'only'),
    );
  if (
    !noun ||
    !next ||
    counted(scene) > 1 ||
    scene.nouns.filter((one) => one.part !== undefined && !isPackage(scene, one)).length !== 1
  )
    return false;
  const plain = items.every(
    (item, i) =>
      i === at ||
      hasTag(item, 'unit', 'spec', 'date') ||
      sense(item, 'value')?.code === 'bare' ||
      isFn(
        item,
        'new',
        'left',
        'now',
        'only',
        'nothing',
        'no',
        'there',
        'here',
        'anymore',
        'article',
        'still',
      ),
  );
  const parted = next.from - noun.to >= 2;
  const packed = items.some((item) => hasTag(item, 'unit') && PACKAGES.test(item.text));
  const said = (counted(scene) === 1 && !hasTag(items[0], 'value')) || someFn(scene, 'nothing');
  return plain && said && (parted || packed || items.some((item) => item.text === 'spare'));
}
const PACKAGES =
  /^(?:bottles?|tubes?|tubs?|cans?|tins?|packs?|packets?|boxes|box|rolls?|spools?|reels?|bags?|sets?)$/u;

/** "the oil is all", "we don't have more cloths": none is left. */
const usedUp = (scene: Scene): boolean =>
  scene.items.length <= 6 &&
  (/\b(?:is|are) (?:all|all gone|finished|empty|used up|at an end|no more there)$/u.test(scene.text) ||
    lastGone(scene) ||
    /\b(?:don't|do not|haven't|have not)(?: have| got)? (?:any )?more\b/u.test(scene.text));
const lastGone = (scene: Scene): boolean =>
  /\blast\b.*\b(?:gone|used|used up|finished|empty)$/u.test(scene.text);
/** "six wheels and two idlers in": a list and whither it went. */
function arrivesIn(scene: Scene): boolean {
  const last = scene.items.findLast((item) => !hasTag(item, 'date') && !isFn(item, 'now', 'just'));
  return (
    last?.text === 'in' &&
    scene.values.some((value) => value.code === 'bare' && Number.isInteger(value.value)) &&
    scene.nouns.every((noun) => noun.at >= 0) &&
    scene.verbs.every((verb) => !verb.deed) &&
    !hasMachineIn(scene)
  );
}
const hasMachineIn = (scene: Scene): boolean =>
  scene.items.some((item) => hasTag(item, 'machine', 'stranger'));

const onShelf = (scene: Scene): boolean => scene.nouns.some((noun) => noun.code === 'shelf');

/** "14 ml of grease drawn": used at the bench, and no unit of the shelf. */
const isMeasured = (scene: Scene): boolean =>
  scene.values.some((value) => /\d (?:ml|cl|l|drops?)$/u.test(scene.items[value.at]?.text ?? '')) &&
  !scene.values.some((value) => value.code === 'bare');

export function readStock(scene: Scene): Draft[] {
  const { mood } = scene;
  if (mood.question || mood.planned || mood.conditional || mood.requested || mood.reported || mood.wished)
    return [];
  if (scene.listing === 'head') return [];
  const nouns = spares(scene);
  const change = nouns.length > 0 ? (signOf(scene) ?? scene.listing ?? direction(scene)) : undefined;
  if (isMeasured(scene)) return [];
  if (
    change === 'count' &&
    !scene.values.some((v) => v.code === 'bare' || v.code === 'other') &&
    !someFn(scene, 'left', 'out', 'last', 'nothing', 'no', 'anymore') &&
    !isLastOne(scene) &&
    !usedUp(scene)
  )
    return [];
  if (change === 'count' && hasMachineIn(scene) && scene.items.some((item) => item.text.endsWith('out of')))
    return [];
  if (scene.items.some((item) => hasTag(item, 'symptom') && item.text.includes(' '))) return [];
  if (change === undefined || deedOf(scene, 'swap') || (deedOf(scene, 'fit') && hasMachineIn(scene)))
    return [];
  if (mood.negated && change !== 'count') return [];
  // "no oil on birch's rods": what a machine lacks is not what the shelf holds.
  if (
    change === 'count' &&
    hasMachineIn(scene) &&
    scene.listing === undefined &&
    !someFn(scene, 'left') &&
    !onShelf(scene)
  )
    return [];
  const none =
    someFn(scene, 'nothing', 'no') ||
    scene.items.some((item) => item.text === 'no more') ||
    mood.negated ||
    usedUp(scene) ||
    scene.items.some(
      (item) =>
        item.text.endsWith('out of') || (item.text === 'out' && isFn(item, 'out')) || item.text === 'out',
    );
  return nouns.flatMap((noun): Draft[] => {
    // "last heat break gone": none is left
    const said = lastGone(scene) || isLastOne(scene) ? 0 : quantity(scene, noun);
    if (said === undefined && !(change === 'count' && none)) return [];
    const n = said ?? 0;
    const fitted = fittedIn(scene);
    const act = {
      kind: 'stock' as const,
      part: noun.part,
      ...(change === 'count'
        ? { count: none && said === undefined ? 0 : n }
        : { change: change === 'in' ? n : -n }),
      ...(fitted === undefined || (change === 'count' && nouns.length > 1) ? {} : { fitted }),
    };
    return [
      draft(scene, act, `stock: ${change}`, {
        placeless: true,
        noun: noun.code,
        ...(noun.weak ? { weak: true as const } : {}),
      }),
    ];
  });
}
