/** The act that a question makes once its topic is known: only the fields that the topic answers by. */
import { isPart, isRoomTask, replaceTask, ROOM, type Task } from '../../../maintenance/codes.ts';
import type { AskAct, AskTopic, LocalDate } from '../../act.ts';
import { periodOf } from './period.ts';
import { hasVerb, valueOf } from '../../scene.ts';
import { personIn, type Question, spareMinutes } from './question.ts';

type Field = 'part' | 'task' | 'symptom' | 'hours' | 'material' | 'who';
/** A task beats the part that it is done to; stock, age and figures are of the part. */
const FIELDS: Readonly<Record<AskTopic, readonly Field[]>> = {
  overdue: [], due: [], status: [], handover: ['who'], help: [],
  next: ['task', 'part'], life: ['task', 'part'], how: ['task', 'part'],
  history: ['task', 'part', 'symptom', 'who'],
  age: ['part'], stock: ['part', 'material'], figure: ['part', 'task'],
  diagnose: ['symptom'], trend: ['symptom'], usage: ['material', 'who'], ready: ['hours'],
}; // prettier-ignore

/** "how do I change the thermistor", "when was it last changed": of the replacement, and not of the part's other care. */
function wayOf({ part, facts }: Question): Task | undefined {
  return facts.has('swap') && part !== undefined && isPart(part) ? replaceTask(part) : undefined;
}

/** Of part and task the topic's first that is said; a symptom only where neither is. */
function thing(topic: AskTopic, question: Question): Pick<AskAct, 'part' | 'task' | 'symptom'> {
  const { part, task, symptom, scene } = question;
  const way = topic === 'how' || topic === 'history' ? wayOf(question) : undefined;
  if (way !== undefined) return { task: way };
  // The tension of a belt is a figure of the belt.
  if (topic === 'figure' && part === undefined && task === 'tension-belts') return { part: 'belt' };
  // "what gap between nozzle and plate when I level the bed": a figure of the task.
  if (topic === 'figure' && task === 'level-bed' && hasVerb(scene, 'level')) return { task };
  // "rolls of petg left"
  if (topic === 'stock' && part === undefined && scene.nouns.some((noun) => noun.code === 'spool'))
    return { part: 'filament' };
  for (const field of FIELDS[topic]) {
    if (field === 'part' && part !== undefined) return { part };
    if (field === 'task' && task !== undefined) return { task };
    if (field === 'symptom' && symptom !== undefined) return { symptom };
  }
  return {};
}

export function askAct(topic: AskTopic, question: Question, today: LocalDate): AskAct {
  const { scene, facts } = question;
  const asks = (field: Field): boolean => FIELDS[topic].includes(field);
  const named = thing(topic, question);
  const hours = asks('hours') ? question.hours : undefined;
  const material = asks('material') ? scene.materials[0] : undefined;
  const grams = topic === 'ready' ? valueOf(scene, 'grams') : undefined;
  const minutes = topic === 'due' ? spareMinutes(scene) : undefined;
  const who = asks('who')
    ? (personIn(scene) ?? (facts.has('i') && topic === 'history' ? 'me' : undefined))
    : undefined;
  return {
    kind: 'ask', topic,
    ...named,
    ...(named.task !== undefined && isRoomTask(named.task) ? { machine: ROOM } : {}),
    ...(hours === undefined ? {} : { hours }),
    ...(who === undefined ? {} : { who }),
    ...(material === undefined ? {} : { material }),
    ...(grams === undefined ? {} : { grams }),
    ...(minutes === undefined ? {} : { minutes }),
    ...periodOf(topic, scene, today),
  }; // prettier-ignore
}
