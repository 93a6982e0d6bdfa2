/** The language layer's one door: a message as typed acts. Pure; the lexicon is built once for a workshop. */
import type { Act, ActReading, Doubt, KnownNames, Reading, SaidAt, TrailStep } from './act.ts';
import { withoutAsides } from './asides.ts';
import { askedOfStranger } from './asked-of.ts';
import { readBare } from './bare.ts';
import { type Control, readControl } from './english/control/index.ts';
import { interpret } from './english/index.ts';
import { isFigurative, soberly } from './figurative.ts';
import { gate } from './gate.ts';
import { withListings } from './english/frames/stock-list.ts';
import { readOrders } from './english/orders/index.ts';
import { ROOM_THINGS } from './english/frames/task-table.ts';
import { hasTag, type Item } from './item.ts';
import { readClauses } from './clauses.ts';
import { readMood } from './mood.ts';
import { place } from './place.ts';
import { withoutPrefaces } from './prefaces.ts';
import { refine } from './refine.ts';
import { injuryKind, isHurt, readInjury } from './injury.ts';
import { isJoke, readSafety, retracted } from './safety.ts';
import { repaired } from './repair.ts';
import { createScanner, type Scanner } from './scan.ts';
import { type Draft, draft, makeScene, type Scene } from './scene.ts';
import { inContext } from './context.ts';
import { withUnsureDays } from './unsure.ts';
import { doubtFor, leftovers } from './unclear.ts';

/** UTF-16 units; a longer message is not read. */
const LONGEST_MESSAGE = 40_000;

export function createReader(names: KnownNames): (text: string, said: SaidAt) => Reading {
  const scanner = createScanner(names);
  return (text, said) => (text.length > LONGEST_MESSAGE ? tooLong(text) : read(text, said, scanner));
}

function tooLong(text: string): Reading {
  const step: TrailStep = { rule: 'too long', span: [0, text.length] };
  return {
    acts: [{ act: { kind: 'unclear', why: 'too long' }, trail: [step] }], orders: [],
    safety: [], injury: false, nearMisses: [], trail: [step],
    doubts: [{ field: 'value', said: '', options: [] }],
  }; // prettier-ignore
}

function read(text: string, said: SaidAt, scanner: Scanner): Reading {
  const { items: spoken, orderItems, corrections, trail } = scanner.scan(text, said.date);
  const items = withoutAsides(withoutPrefaces(repaired(spoken)));
  const clauses = readClauses(items);
  const first = clauses.findIndex((clause) => clause.items.some(isPlace));
  const scenes = withListings(
    inContext(
      clauses.map((clause, index) =>
        makeScene(clause, readMood(clause), index, first >= 0 && first <= index),
      ),
    ),
  );
  const controls = controlDrafts(readControl(items, said.date), scenes);
  const drafted = scenes.map((scene, i) =>
    isJoke(scene) || retracted(scenes, i) || isFigurative(scenes, i)
      ? []
      : (controls.get(i) ??
        soberly(
          interpret(scene, {
            today: said.date,
            before: scenes[i - 1],
            earlier: scenes.slice(Math.max(0, i - 4), i),
            after: scenes[i + 1],
            later: scenes.slice(i + 1, i + 6),
          }),
          scenes,
          i,
        ).filter(
          ({ act }) =>
            !(isHurt(scene) || hurtBefore(scenes, i)) ||
            (act.kind !== 'claim' && !(act.kind === 'done' && act.finding !== undefined)),
        )),
  );
  const { rulings, machineOf } = place(scenes, drafted, said.date, scanner.book);
  const refined = refine(rulings, scenes);
  const { kept, doubtful } = gate(refined, scenes);
  const doubts: Doubt[] = [];
  const readings = kept.map((one): ActReading => {
    if (one.act.kind === 'unclear') doubts.push(doubtFor(one));
    return { act: one.act, trail: one.trail, ...(one.assumed === undefined ? {} : { assumed: one.assumed }) };
  });
  const left = leftovers(scenes, kept, doubtful, scanner.book);
  for (const one of left) {
    readings.push({ act: one.act, trail: one.trail });
    doubts.push(one.doubt);
  }
  const { orders, dropped } = readOrders(orderItems, text, readings, {
    today: said.date,
    machines: scanner.book.machines,
  });
  const bare = readBare(text.trim(), items, said.date);
  const hurt = injuryKind(scenes);
  const askedOf = askedOfStranger(scenes);
  return {
    acts: withUnsureDays(
      readings.filter((_, i) => !dropped.has(i)),
      items,
    ),
    orders,
    safety: readSafety(scenes, machineOf).map((one) =>
      isMended(orders) ? { ...one, asserted: false } : one,
    ),
    injury: readInjury(scenes),
    ...(hurt === undefined ? {} : { injuryKind: hurt }),
    doubts: doubtsOf(readings, doubts, dropped),
    ...(askedOf === undefined ? {} : { askedOf }),
    ...(bare === undefined ? {} : { bare }),
    nearMisses: readings.some(({ act }) => writes(act)) ? [] : corrections,
    trail: [...trail, ...drafted.flat().map(({ rule, span }): TrailStep => ({ rule, span }))],
  };
}
/** Told together with its repair, to lift a hold: cautioned, and no alarm. */
const isMended = (orders: Reading['orders']): boolean =>
  orders.some(({ order }) => order.kind === 'lift' && order.mended);
/** A doubt goes with its act. */
function doubtsOf(
  readings: readonly ActReading[],
  doubts: readonly Doubt[],
  dropped: ReadonlySet<number>,
): Doubt[] {
  const unclear = readings.flatMap(({ act }, i) => (act.kind === 'unclear' ? [i] : []));
  return doubts.filter((_, nth) => !dropped.has(unclear[nth] ?? -1));
}
/** The clauses that a control takes up read as nothing else; its act stands at the first of them. */
function controlDrafts(controls: readonly Control[], scenes: readonly Scene[]): Map<number, Draft[]> {
  const found = new Map<number, Draft[]>();
  for (const { act, span } of controls) {
    const within = scenes.filter((scene) => scene.span[0] < span[1] && scene.span[1] > span[0]);
    within.forEach((scene, i) =>
      found.set(scene.index, i === 0 ? [draft(scene, act, act.kind, { placeless: true })] : []),
    );
  }
  return found;
}
/** "Odd burned his thumb on maple's nozzle, he's holding it under the tap": of the thumb. */
const hurtBefore = (scenes: readonly Scene[], at: number): boolean =>
  scenes
    .slice(Math.max(0, at - 2), at)
    .some((scene) => scene.clause.sentence === scenes[at]?.clause.sentence && isHurt(scene));
/** A machine, or one of the room's own things: what a report can be of. */
const isPlace = (item: Item): boolean =>
  hasTag(item, 'machine') || item.senses.some((s) => s.tag === 'thing' && ROOM_THINGS.has(s.code));
const writes = (act: Act): boolean => act.kind !== 'ask' && act.kind !== 'unclear';
