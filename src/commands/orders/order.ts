/** What carrying out an order can see and give back. One file a kind of order beside this. */
import { createHash } from 'node:crypto';
import type { Order, OrderKind } from '../../language/act.ts';
import { ROOM } from '../../maintenance/codes.ts';
import type { Deed } from '../../maintenance/decide/deed.ts';
import type { MachineRecord } from '../../maintenance/record/record.ts';
import type { Reply } from '../../replies/reply.ts';
import { machineName } from '../../replies/wording/names.ts';
import type { OpenQuestion } from '../conversation.ts';
import { playDeed } from '../play.ts';
import type { Scene } from '../scene.ts';
import type { Asking, Step } from '../step.ts';

/** An order on its way: what a question about it was answered with stands in it. */
export type PendingOrder = Order & { confirmed?: true };
export type OrderOf<K extends OrderKind> = Extract<Order, { kind: K }> & { confirmed?: true };

export interface Carried {
  steps: Step[];
  asking?: Asking;
  /** Stands before everything else. */
  caution?: readonly string[];
  /** Hints that belong to no act. */
  aside?: string;
}

export interface Carrier<K extends OrderKind> {
  /** False where the words mean nothing here: then they are no order, and what was read beside them is played. */
  takes(scene: Scene, order: OrderOf<K>): boolean;
  /** `first`: the place of its first act in the message. */
  carry(scene: Scene, order: OrderOf<K>, first: number): Promise<Carried> | Carried;
}

export const always = (): boolean => true;

/** The machines that are named; none named: the one that the conversation is about. */
export function machinesMeant(scene: Scene, named: readonly string[]): readonly string[] {
  if (named.length > 0) return named;
  const { lastMachine } = scene.conversation;
  return lastMachine === undefined || lastMachine === ROOM ? [] : [lastMachine];
}

export const recordsOf = (scene: Scene, names: readonly string[]): MachineRecord[] =>
  names.flatMap((name) => scene.record.machines.get(name) ?? []);

/** Deeds in their order, as acts of this message. */
export async function carryDeeds(
  scene: Scene,
  deeds: readonly Deed[],
  first: number,
  confirmed = false,
): Promise<Carried> {
  const steps: Step[] = [];
  let asking: Asking | undefined;
  for (const [i, deed] of deeds.entries()) {
    const { step, asks } = await playDeed(scene, deed, { act: first + i, confirmed });
    steps.push(step);
    asking ??= asks;
  }
  return { steps, ...(asking ? { asking } : {}) };
}

type Asked = Pick<OpenQuestion, 'field' | 'text' | 'options'>;

/** The question that the order still needs; its answer carries the order on. */
export function askFor(scene: Scene, order: PendingOrder, deed: Deed, first: number, asked: Asked): Carried {
  const { message, because, saidAt } = scene;
  const id = createHash('sha256')
    .update(`${message.key}\n${first}\n${asked.field}\n${asked.text}`)
    .digest('hex')
    .slice(0, 10);
  const question = { id: `q-${id}`, message: because ?? message.key, saidAt, pending: [], order, ...asked };
  return {
    steps: [{ act: deed, outcome: 'asked', entries: [], text: asked.text }],
    asking: { about: first, question },
  };
}

const MOST_OPTIONS = 8;

/** "Which machine?", with the machines that it may be. */
export function askMachine(
  scene: Scene,
  order: PendingOrder,
  deed: Deed,
  first: number,
  text: string,
): Carried {
  const names = [...scene.record.machines.values()].filter((m) => !m.retired).map((m) => m.name);
  const options =
    names.length > MOST_OPTIONS
      ? []
      : names.map((name) => ({ value: name, label: machineName(name, scene) }));
  return askFor(scene, order, deed, first, { field: 'machine', text, options });
}

export const answered = (deed: Step['act'], reply: Reply): Carried => ({
  steps: [{ act: deed, outcome: 'answered', entries: [], reply }],
});
