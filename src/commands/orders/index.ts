/** Orders of a message, carried out beside its acts: one carrier a kind. */
import type { OrderKind, OrderReading } from '../../language/act.ts';
import { playActs } from '../play.ts';
import type { Scene } from '../scene.ts';
import type { Played } from '../step.ts';
import { ADD } from './add.ts';
import { CONVERT } from './build.ts';
import { FALSE_ALARM, LIFT } from './hold.ts';
import { BASELINE, INTERVAL, RENAME, RETIRE } from './life.ts';
import type { Carried, Carrier, PendingOrder } from './order.ts';
import { BLAME, HAND_OVER, NOTE, TAKE_OVER } from './shift.ts';
import { MAYBE_JOKE, QUIET, START, WHICH_ALL } from './talk.ts';

/** A kind without a carrier does not compile. */
const CARRIERS: { readonly [K in OrderKind]: Carrier<K> } = {
  baseline: BASELINE,
  interval: INTERVAL,
  add: ADD,
  convert: CONVERT,
  rename: RENAME,
  retire: RETIRE,
  falseAlarm: FALSE_ALARM,
  lift: LIFT,
  handOver: HAND_OVER,
  takeOver: TAKE_OVER,
  note: NOTE,
  quiet: QUIET,
  start: START,
  blame: BLAME,
  maybeJoke: MAYBE_JOKE,
  whichAll: WHICH_ALL,
};
const carrierOf = ({ kind }: PendingOrder): Carrier<OrderKind> => CARRIERS[kind] as Carrier<OrderKind>;

/** What a fresh message says: its orders as far as they mean something here, and its acts without what those cover. */
export async function playMessage(scene: Scene): Promise<Played> {
  const { reading } = scene;
  const taken = reading.injury
    ? []
    : reading.orders.filter(({ order }) => carrierOf(order).takes(scene, order));
  if (taken.length === 0) return playActs(scene);
  const pending = taken.map(({ order }) => order);
  // a question about acts that an order covers looks at the whole reading
  scene.reading = without(scene, taken);
  const first = await playActs(scene);
  scene.reading = reading;
  return playOrders(scene, pending, first);
}

/** One order after the other, each with what the ones before it wrote. */
export async function playOrders(
  scene: Scene,
  orders: readonly PendingOrder[],
  before: Played = { steps: [], caution: [], grave: false },
): Promise<Played> {
  let played = before;
  for (const order of orders) {
    const carried = await carrierOf(order).carry(scene, order, played.steps.length);
    played = joined(played, carried);
  }
  return played;
}

function joined(played: Played, { steps, asking, caution = [], aside }: Carried): Played {
  const asides = [played.aside, aside].filter((text) => text !== undefined);
  const open = played.asking ?? asking;
  return {
    ...played,
    steps: [...played.steps, ...steps],
    caution: [...played.caution, ...caution],
    ...(open ? { asking: open } : {}),
    ...(asides.length > 0 ? { aside: asides.join(' ') } : {}),
  };
}

function without({ reading }: Scene, taken: readonly OrderReading[]): Scene['reading'] {
  const covered = new Set(taken.flatMap(({ covers }) => covers));
  const unclear = reading.acts.flatMap(({ act }, i) => (act.kind === 'unclear' ? [i] : []));
  return {
    ...reading,
    acts: reading.acts.filter((_, i) => !covered.has(i)),
    doubts: reading.doubts.filter((_, nth) => !covered.has(unclear[nth] ?? -1)),
  };
}
