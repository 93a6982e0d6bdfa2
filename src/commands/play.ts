/** Plays one message through: each act decided with the earlier ones applied, one question at most. */
import type { Act, ActReading } from '../language/act.ts';
import { isSafetySymptom } from '../maintenance/codes.ts';
import { injuryLines } from '../maintenance/cautions/injury.ts';
import { stopLines } from '../maintenance/cautions/stop.ts';
import type { Refused } from '../maintenance/decide/decision.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import { list } from '../replies/format/list.ts';
import { machineName } from '../replies/wording/names.ts';
import { refusal } from '../replies/wording/refusals.ts';
import { answerAsk } from './ask/ask.ts';
import { unknownMachine } from './ask/unknown.ts';
import { atCounter, belowCounter } from './atCounter.ts';
import { inMessage, lacksMachine } from './context.ts';
import { defeatedLines } from './never.ts';
import { namedIn, strangerIn } from './namedIn.ts';
import {
  askAbout,
  figureQuestion,
  foundConfirm,
  laterQuestion,
  machineQuestion,
  reasonQuestion,
  unclearQuestion,
  fittedQuestion,
  untilQuestion,
} from './questions.ts';
import { boreQuestion, findingQuestion } from './completing.ts';
import { otherTaskQuestion } from './otherTask.ts';
import { reachQuestion } from './reach.ts';
import { sweepQuestion } from './sweep.ts';
import type { Scene } from './scene.ts';
import { deedsOf, type Asking, type Played, type Step } from './step.ts';
import { inTurn } from './turns.ts';
import { write, type WriteOptions } from './write.ts';

type Said = Pick<Step, 'act' | 'assumed'>;
type Question = Extract<Act, { kind: 'ask' }>;

/** The acts of a fresh message. */
export async function playActs(scene: Scene): Promise<Played> {
  const { reading, conversation, message } = scene;
  const { text } = message;
  const surrounding = {
    lastMachine: conversation.lastMachine,
    named: namedIn(text, scene.record),
    stranger: strangerIn(text, scene.record) !== undefined,
  };
  const acts = reading.acts.map((r) => inMessage(r, surrounding));
  const caution = cautionOf(scene, acts);
  if (reading.injury) return hurt(scene, acts, caution);
  const waiting = acts.filter(({ act }) => lacksMachine(act)).map(({ act }) => act);
  const steps: Step[] = [];
  const asked: (Asking | undefined)[] = [];
  for (const [index, said] of acts.entries()) {
    const { step, asks } = waiting.includes(said.act)
      ? waits(said, index, machineQuestion(scene, deedsOf(waiting)))
      : await playOne(scene, said, index);
    steps.push(step);
    asked.push(asks);
  }
  return {
    steps,
    caution,
    grave: caution.length > 0,
    ...inTurn(asked),
  };
}

interface OneStep {
  step: Step;
  asks?: Asking | undefined;
}

const waits = ({ act, assumed }: Said, index: number, question: Asking['question']): OneStep => ({
  step: { act, outcome: 'asked', entries: [], text: question.text, ...(assumed ? { assumed } : {}) },
  asks: { about: index, question },
});

async function playOne(scene: Scene, said: Said, index: number): Promise<OneStep> {
  const { act, assumed } = said;
  if (act.kind === 'unclear') return waits(said, index, unclearQuestion(scene, index));
  if (act.kind === 'ask') {
    // a danger that is spoken of has its stop answer, and beside that nothing to work through
    const danger = act.topic === 'diagnose' && scene.reading.safety.length > 0;
    const stranger = unknownMachine(scene, said);
    const reply = danger ? { sections: [], buttons: [] } : (stranger ?? (await answerAsk(scene, act)));
    return { step: { act, outcome: 'answered', entries: [], reply, ...(assumed ? { assumed } : {}) } };
  }
  const absolute = act.kind === 'defer' ? atCounter(scene, act) : undefined;
  if (absolute?.left === undefined && absolute) return waits(said, index, belowCounter(scene, absolute));
  const unsure = assumed?.['on']?.from === 'unsure' ? ({ about: true } as const) : {};
  return playDeed(
    scene,
    { ...act, ...(absolute ? { hours: absolute.left } : {}), ...unsure },
    { act: index },
    assumed,
  );
}

/** One deed that is complete: decided, appended, or refused, or asked about. */
export async function playDeed(
  scene: Scene,
  deed: Deed,
  options: WriteOptions,
  assumed?: ActReading['assumed'],
): Promise<OneStep> {
  const reach =
    (await reachQuestion(scene, deed, options)) ??
    sweepQuestion(scene, deed, options) ??
    (await otherTaskQuestion(scene, deed, options));
  if (reach) return waits({ act: deed, ...(assumed ? { assumed } : {}) }, options.act, reach);
  const outcome = await write(scene, deed, options);
  const base = { act: deed, entries: outcome.entries, decision: outcome, ...(assumed ? { assumed } : {}) };
  switch (outcome.outcome) {
    case 'written': {
      const { entries } = outcome;
      const more =
        reasonQuestion(scene, entries) ?? findingQuestion(scene, entries) ?? boreQuestion(scene, entries);
      return {
        step: { ...base, outcome: 'written', notes: outcome.notes },
        asks: more && { about: options.act, question: more },
      };
    }
    case 'refused':
      return {
        step: { ...base, outcome: 'refused', text: refusal(outcome.code, outcome.facts, scene) },
        asks:
          heldButTold(scene, deed, outcome, options.act) ?? whichFigure(scene, deed, outcome, options.act),
      };
    case 'asked': {
      const question =
        deed.kind === 'release' && outcome.field === 'other'
          ? untilQuestion(scene, deed, 'found')
          : askAbout(scene, deed, outcome);
      return {
        step: { ...base, outcome: 'asked', text: question.text },
        asks: { about: options.act, question },
      };
    }
  }
}

/** "Back, was a loose plug": a keeper's own words offer themselves for what the refusal asks for. */
function heldButTold(scene: Scene, deed: Deed, refusal: Refused, about: number): Asking | undefined {
  const { person, message, reading } = scene;
  if (refusal.code !== 'safety-hold' || deed.kind !== 'up' || person.role !== 'keeper') return undefined;
  const told = message.text.trim();
  const saysMore = /[,.;:–—-]\s*\S+\s+\S+/u.test(told) || reading.acts.length > 1;
  const { machine } = refusal.facts;
  if (!saysMore || machine === undefined) return undefined;
  return { about, question: foundConfirm(scene, { kind: 'release', machine, found: told }, [deed]) };
}

/** More than a day has: the refusal asks for the figure, so the next figure is its answer. */
function whichFigure(scene: Scene, deed: Deed, refusal: Refused, about: number): Asking | undefined {
  if (refusal.code !== 'too-many-hours' || deed.kind !== 'usage') return undefined;
  return { about, question: figureQuestion(scene, deed) };
}

/** Deeds of a button or of an answered question, decided in their order. */
export async function playDeeds(
  scene: Scene,
  deeds: readonly (Deed | Question)[],
  options: Omit<WriteOptions, 'act'>,
): Promise<Played> {
  const steps: Step[] = [];
  const asked: (Asking | undefined)[] = [];
  for (const [index, deed] of deeds.entries()) {
    const { step, asks } =
      deed.kind === 'ask'
        ? await playOne(scene, { act: deed }, index)
        : await playDeed(scene, deed, { ...options, act: index });
    steps.push(step);
    asked.push(asks);
  }
  return { steps, caution: [], grave: false, ...inTurn(asked) };
}

/** "Put off", "say what was found": a question about a deed that is not complete yet. */
export function playAsk(scene: Scene, deed: Deed, field: 'until' | 'found' | 'fitted'): Played {
  const question = field === 'fitted' ? fittedQuestion(scene, deed) : untilQuestion(scene, deed, field);
  return {
    steps: [{ act: deed, outcome: 'asked', entries: [], text: question.text }],
    asking: { about: 0, question },
    caution: [],
    grave: false,
  };
}

/** The stop answer for each safety symptom that was spoken of, in whatever mood; first aid before all. */
function cautionOf(scene: Scene, acts: readonly Said[]): string[] {
  const { reading, record, workshop, person } = scene;
  const keepers = workshop.people.filter((p) => p.role === 'keeper').map((p) => p.name);
  const tell = keepers.find((name) => name !== person.name);
  const over = new Set(
    acts.flatMap(({ act }) => (act.kind === 'gone' && act.symptom !== undefined ? [act.symptom] : [])),
  );
  const stops = reading.safety.flatMap(({ symptom }) =>
    !over.has(symptom) && isSafetySymptom(symptom)
      ? stopLines(symptom, tell === undefined ? {} : { tell })
      : [],
  );
  const held = acts.flatMap(({ act }) =>
    act.kind === 'symptom' && isSafetySymptom(act.symptom) && act.machine !== undefined ? [act.machine] : [],
  );
  const names = [...new Set(held)]
    .filter((name) => record.machines.has(name))
    .map((name) => machineName(name, scene));
  const hold = names.length === 0 ? [] : [`${list(names)} ${names.length > 1 ? 'are' : 'is'} now held.`];
  const first = reading.injury ? injuryLines(reading.injuryKind) : [];
  return [...new Set([...first, ...stops, ...hold, ...defeatedLines(scene)])];
}

/** Somebody is hurt: nothing is written until they come back to it. */
function hurt(scene: Scene, acts: readonly Said[], caution: readonly string[]): Played {
  const deeds = deedsOf(acts.map(({ act }) => act)).filter(
    (deed) => 'machine' in deed && deed.machine !== undefined,
  );
  const question = deeds.length === 0 ? undefined : laterQuestion(scene, deeds);
  return {
    steps: question ? deeds.map((act) => ({ act, outcome: 'asked', entries: [], text: question.text })) : [],
    caution,
    grave: true,
    ...(question ? { asking: { about: 0, question } } : {}),
  };
}
