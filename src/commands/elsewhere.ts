/** An open question takes no message that is about another machine, or an order of its own. */
import { foldName } from '../maintenance/machine.ts';
import type { OpenQuestion } from './conversation.ts';
import { namedIn } from './namedIn.ts';
import type { Scene } from './scene.ts';

export function isElse({ message, reading, record }: Scene, question: OpenQuestion): boolean {
  const said = foldName(message.text);
  if (question.options.some(({ value, label }) => [value, label].some((o) => foldName(o) === said)))
    return false;
  const asksName = question.field === 'machine' || question.field === 'name' || question.field === 'change';
  const about = machinesOf(question);
  const other =
    !asksName && about.length > 0 && namedIn(message.text, record).some((name) => !about.includes(name));
  return other || reading.orders.some(({ order }) => isOfItsOwn(order.kind, question));
}

/** What the question is about already; none where it is about a message or the room. */
function machinesOf({ pending, order }: OpenQuestion): readonly string[] {
  const waiting = pending.flatMap((deed) =>
    'machine' in deed && deed.machine !== undefined ? [deed.machine] : [],
  );
  if (order === undefined) return waiting;
  if (order.kind === 'whichAll') return [];
  return [...waiting, ...('machines' in order ? order.machines : [])];
}

/** Words about a hold may be what was found on it; the same order said again stands by it. */
function isOfItsOwn(kind: string, { field, order }: OpenQuestion): boolean {
  if (order !== undefined && order.kind === kind) return false;
  return field !== 'found' && field !== 'machine' && field !== 'name' && OWN.has(kind);
}
const OWN: ReadonlySet<string> = new Set([
  'baseline', 'interval', 'add', 'convert', 'rename', 'retire', 'handOver', 'takeOver', 'start', 'quiet',
]); // prettier-ignore
