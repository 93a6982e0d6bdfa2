/** The days that a question is about: looking back for what happened, ahead for what is to come. */
import type { AskAct, AskTopic, LocalDate } from '../../act.ts';
import { isFn, sense } from '../../item.ts';
import type { Scene } from '../../scene.ts';

const AHEAD: ReadonlySet<AskTopic> = new Set(['due', 'next', 'ready', 'overdue']);

export function periodOf(topic: AskTopic, scene: Scene, today: LocalDate): Pick<AskAct, 'from' | 'to'> {
  const at = scene.items.findIndex((item) => sense(item, 'date') !== undefined);
  const day = sense(scene.items[at], 'date');
  if (!day) return {};
  const ahead = AHEAD.has(topic);
  if (day.stretch) {
    const [from, to] = ahead ? day.stretch.ahead : day.stretch.back;
    return isFn(scene.items[at - 1], 'since') ? { from, to: today } : { from, to };
  }
  if (day.vague) return {};
  if (ahead) return isFn(scene.items[at - 1], 'until', 'by', 'before') ? { from: today, to: day.future } : { from: day.future, to: day.future }; // prettier-ignore
  return { from: day.past, to: isFn(scene.items[at - 1], 'since', 'from') ? today : day.past };
}
