/** The questions that a message can leave open: what is asked, and the answers offered. */
import { createHash } from 'node:crypto';
import type { Doubt } from '../language/act.ts';
import { dateOfDay, dayOfDate, weekdayOf, type Day } from '../maintenance/calendar.ts';
import type { Asked } from '../maintenance/decide/decision.ts';
import type { Deed, ReleaseDeed } from '../maintenance/decide/deed.ts';
import { ROOM } from '../maintenance/codes.ts';
import { latestPutOff } from '../maintenance/due/plan.ts';
import type { Entry, LocalDate } from '../maintenance/entry/entry.ts';
import { capital, list } from '../replies/format/list.ts';
import { hours } from '../replies/format/number.ts';
import { dayMonth, weekdayName } from '../replies/format/date.ts';
import { heldFor, machineName, partName, todo } from '../replies/wording/names.ts';
import type { Names } from '../replies/wording/view.ts';
import { note } from '../replies/wording/noted.ts';
import { question as worded } from '../replies/wording/questions.ts';
import { dateWord } from '../replies/wording/view.ts';
import { CONFIRM, LAST, LEAVE } from './answering.ts';
import { deedsOf } from './step.ts';
import type { OpenQuestion } from './conversation.ts';
import { dueContext, type Scene } from './scene.ts';

type Open = Omit<OpenQuestion, 'id' | 'message' | 'saidAt'>;
type Options = OpenQuestion['options'];

/** As many answers as fit on a phone; more than that is typed. */
const MOST_OPTIONS = 8;

export function open({ message, because, saidAt }: Scene, asked: Open): OpenQuestion {
  const id = createHash('sha256')
    .update(`${message.key}\n${asked.field}\n${asked.text}\n${JSON.stringify(asked.pending)}`)
    .digest('hex')
    .slice(0, 10);
  return { id: `q-${id}`, message: because ?? message.key, saidAt, ...asked };
}

const machineOptions = (scene: Scene, names?: readonly string[]): Options => {
  const all = names ?? [...scene.record.machines.values()].filter((m) => !m.retired).map((m) => m.name);
  return all.length > MOST_OPTIONS
    ? []
    : all.map((name) => ({ value: name, label: machineName(name, scene) }));
};

/** One doubt holds all acts that hang on it. */
export function machineQuestion(scene: Scene, pending: readonly Deed[]): OpenQuestion {
  const what = [...new Set(pending.flatMap((deed) => about(deed)))];
  const text = what.length === 0 ? 'Which machine was that?' : `Which machine: ${list(what)}?`;
  return open(scene, { field: 'machine', text, options: machineOptions(scene), pending });
}

/** A few words for what waits: "nozzle replaced". */
function about(deed: Deed): string[] {
  switch (deed.kind) {
    case 'swap':
      return [`${partName(deed.part)} replaced`];
    case 'usage':
      return deed.hours === undefined ? [] : [`${hours(deed.hours)} run`];
    case 'meter':
      return [`counter at ${hours(deed.hours)}`];
    case 'done':
    case 'claim':
    case 'defer':
      return deed.task === undefined ? [] : [todo(deed.task)];
    default:
      return [];
  }
}

/** What waits for an answer, in a few words: "Birch, 40 h run". */
export function waitingWords({ pending, text }: OpenQuestion, scene: Names): string {
  const words = pending.map((deed) => {
    const where = 'machine' in deed && deed.machine !== undefined ? [machineName(deed.machine, scene)] : [];
    return [...where, ...about(deed)].join(', ');
  });
  const said = words.filter((word) => word !== '');
  return said.length > 0 ? list(said) : text.replace(/^Nothing noted: |[.?]$/gu, '');
}

export function unclearQuestion(scene: Scene, index: number): OpenQuestion {
  const { reading } = scene;
  const act = reading.acts[index]?.act;
  const nth = reading.acts.slice(0, index).filter((a) => a.act.kind === 'unclear').length;
  const doubt = reading.doubts[nth];
  const why = act?.kind === 'unclear' ? act.why : '';
  const machine = doubt?.field === 'machine';
  const options = machine ? machineOptions(scene, doubt.options.length > 0 ? doubt.options : undefined) : [];
  const pending = doubt?.field === 'machine' ? deedsOf(doubt.acts ?? []) : [];
  return open(scene, {
    field: machine ? 'machine' : 'other',
    text: doubtText(doubt, why, scene),
    options: pending.length > 0 || machine ? options : [],
    pending,
  });
}

const doubtText = (doubt: Doubt | undefined, why: string, scene: Names): string => {
  if (doubt?.field === 'machine') {
    const said = doubt.said === undefined ? '' : `I know no “${doubt.said}”. `;
    return doubt.options.length > 0
      ? `Was that ${list(
          doubt.options.map((name) => machineName(name, scene)),
          'or',
        )}? Nothing is noted yet.`
      : `${said}Which machine was that? Nothing is noted yet.`;
  }
  // the reader gives its doubt as a question where one word would settle it
  const such = doubt?.field === 'value' ? 'ran 9 h on birch' : 'cleaned the feeder on birch';
  return why.endsWith('?')
    ? `${why} Nothing is noted yet; say it in one go, such as “${such}”.`
    : `Nothing noted: ${why}. How would you put it in a few words, such as “${such}”?`;
};

/** A decision that needs one more word. */
export function askAbout(scene: Scene, deed: Deed, asked: Asked): OpenQuestion {
  const text = worded(asked, scene);
  const pending = [deed];
  const { field } = asked;
  if (field === 'machine') return open(scene, { field, text, options: machineOptions(scene), pending });
  if (field === 'hours') {
    const given = asked.facts.given;
    const yes = given === undefined ? [] : [{ value: CONFIRM, label: `Yes, ${hours(given)}` }];
    return open(scene, { field, text, options: [...yes, { value: LEAVE, label: 'Leave it' }], pending });
  }
  if (field === 'until')
    return open(scene, { field, text, options: laterDays(scene, asked.facts.date), pending });
  const options = asked.options.map(({ value, label, fact }) => ({
    value,
    label: fact ? factWords(fact, scene) : (label ?? value),
  }));
  return open(scene, { field, text, options, pending });
}

/** "Birch: feeder cleaned". */
const factWords = (fact: Entry, scene: Scene): string =>
  'machine' in fact && fact.machine !== undefined
    ? `${machineName(fact.machine, scene)}: ${note(fact, scene)}`
    : capital(note(fact, scene));

/** A figure that could not be is told anew. */
export const figureQuestion = (scene: Scene, deed: Deed): OpenQuestion =>
  open(scene, {
    field: 'hours',
    text: 'How many hours was it?',
    options: [{ value: LEAVE, label: 'Leave it' }],
    pending: [deed],
  });

/** After a swap that gave no reason: how long parts last hangs on it. */
export function reasonQuestion(scene: Scene, entries: readonly Entry[]): OpenQuestion | undefined {
  const silent = entries.filter(
    (e) => e.kind === 'swapped' && e.reason === undefined && e.part !== 'fastener',
  );
  const [first] = silent;
  if (first?.kind !== 'swapped') return undefined;
  const several = scene.reading.acts.filter(({ act }) => act.kind === 'swap').length > 1;
  const where = several ? ` on ${machineName(first.machine, scene)}` : '';
  return open(scene, {
    field: 'reason',
    text: `Why did the old ${partName(first.part)}${where} come out?`,
    options: [
      { value: 'worn', label: 'Worn' },
      { value: 'broken', label: 'Broken' },
      { value: 'planned', label: 'Planned' },
    ],
    pending: silent.map((e) => ({ kind: 'amend', target: e.id })),
  });
}

export function untilQuestion(scene: Scene, deed: Deed, field: 'until' | 'found'): OpenQuestion {
  const name = 'machine' in deed && deed.machine !== undefined ? machineName(deed.machine, scene) : 'it';
  if (field === 'found')
    return open(scene, {
      field,
      text: `What was found on ${name}, and what was mended or replaced? A keeper’s word lifts the hold.`,
      options: [{ value: LEAVE, label: 'Not now' }],
      pending: [deed],
    });
  const task = deed.kind === 'defer' && deed.task !== undefined ? todo(deed.task) : 'this';
  const limit = putOffLimit(scene, deed);
  const atLatest =
    limit === undefined
      ? ''
      : ` At the latest ${dateWord(limit, scene).replace(/^on /u, '')}: it is a safety check.`;
  return open(scene, {
    field,
    text: `${name}, ${task}: put off until when?${atLatest}`,
    options: laterDays(scene, limit),
    pending: [deed],
  });
}

/** Which nozzle is in, or which grease the plastic nut's maker names: told in a few words. */
export function fittedQuestion(scene: Scene, deed: Deed): OpenQuestion {
  const name = 'machine' in deed && deed.machine !== undefined ? machineName(deed.machine, scene) : 'it';
  const sorts = deed.kind === 'state' ? nozzlesKnown(scene) : [];
  return open(scene, {
    field: 'fitted',
    text:
      deed.kind === 'state'
        ? `Which nozzle is in ${name}? Such as “hardened 0.6”.`
        : `Which grease does the maker of ${name}’s Z nut name?`,
    options: [
      ...sorts.map((value) => ({ value, label: capital(value) })),
      { value: LEAVE, label: 'Not now' },
    ],
    pending: [deed],
  });
}

const MOST_SORTS = 4;
const nozzlesKnown = ({ record }: Scene): string[] =>
  [
    ...new Set(record.shelf.flatMap(({ part, fitted }) => (part === 'nozzle' && fitted ? [fitted] : []))),
  ].slice(0, MOST_SORTS);

/** The last date on which a safety task may still wait; undefined for the others. */
export function putOffLimit(scene: Scene, deed: Deed): LocalDate | undefined {
  if (deed.kind !== 'defer' || deed.task === undefined || deed.machine === undefined) return undefined;
  const machine = deed.machine === ROOM ? scene.record.room : scene.record.machines.get(deed.machine);
  return machine && latestPutOff(machine, deed.task, dueContext(scene));
}

/** Tomorrow, the next Monday, a week, two weeks; never beyond what may wait, and that day itself. */
function laterDays({ today }: Scene, limit?: LocalDate): Options {
  const last = limit === undefined ? Infinity : dayOfDate(limit);
  const monday = today + 7 - weekdayOf(today);
  const usual = [today + 1, monday, today + 7, today + 14].filter((day) => day <= last);
  const own = last > today && last < today + 14 ? [last] : [];
  const days: Day[] = [...new Set([...usual, ...own])].sort((a, b) => a - b);
  return days.map((day) => ({ value: dateOfDay(day), label: dayLabel(day, today) }));
}
const dayLabel = (day: Day, today: Day): string => {
  if (day === today + 1) return 'Tomorrow';
  if (day === today + 7) return 'A week';
  if (day === today + 14) return 'Two weeks';
  return day < today + 7 ? weekdayName(day) : dayMonth(dateOfDay(day), dateOfDay(today));
};

/** After first aid: the work that was told waits until its author comes back to it. */
export const laterQuestion = (scene: Scene, pending: readonly Deed[]): OpenQuestion => {
  const told = pending.flatMap((deed) => {
    const what = about(deed);
    const name =
      'machine' in deed && deed.machine !== undefined ? `${machineName(deed.machine, scene)}: ` : '';
    return what.length > 0 ? [`${name}${list(what)}`] : [];
  });
  return open(scene, {
    field: 'later',
    text: `When you are ready: ${told.length > 0 ? `${told.join('; ')}. Note it?` : 'note what you told?'}`,
    options: [
      { value: CONFIRM, label: 'Yes' },
      { value: LEAVE, label: 'Later' },
    ],
    pending,
  });
};

/** The words by which a keeper lifts a hold, read back. `also`: work told in the same breath. */
export function foundConfirm(scene: Scene, release: ReleaseDeed, also: readonly Deed[]): OpenQuestion {
  const machine = release.machine ?? '';
  const hold = scene.record.machines.get(machine)?.hold;
  const why = hold ? ` (${heldFor(hold)}, told by ${scene.personName(hold.since.by)})` : '';
  return open(scene, {
    field: 'found',
    text: `Lift the hold on ${machineName(machine, scene)}${why} with this: “${release.found ?? ''}”?`,
    options: [
      { value: CONFIRM, label: 'Yes, lift it' },
      { value: LEAVE, label: 'Leave it held' },
    ],
    pending: [release, ...also],
  });
}

/** "Change something": what is said next is about that message, also where it is only a day or a reason. */
export const changeQuestion = (scene: Scene, batch: string): OpenQuestion =>
  open(scene, {
    field: 'change',
    text: 'What should be different? Such as “12 h”, “yesterday”, “Maple, not Alder” or “worn”.',
    options: [{ value: LEAVE, label: 'Leave it' }],
    pending: [{ kind: 'amend' }],
    batches: [batch],
  });

/** The speaker's last word is of another day: is that one meant? */
export const farQuestion = (scene: Scene, deed: Deed, what: string): OpenQuestion =>
  open(scene, {
    field: 'far',
    text: `Your last entry is not of today’s talk (${what}). ${deed.kind === 'undo' ? 'Take that back' : 'Change that one'}?`,
    options: [
      { value: CONFIRM, label: 'Yes' },
      { value: LEAVE, label: 'Leave it' },
    ],
    pending: [deed],
  });

/** The speaker's last message wrote nothing: what stands before it goes only when it is meant. */
export const emptyQuestion = (scene: Scene, deed: Deed, what: string): OpenQuestion =>
  open(scene, {
    field: 'far',
    text: `Your last message wrote nothing. Take back what stood before it (${what})?`,
    options: [
      { value: CONFIRM, label: 'Yes' },
      { value: LEAVE, label: 'Leave it' },
    ],
    pending: [deed],
  });

/** Several messages at once: shown before they go. */
export const manyQuestion = (
  scene: Scene,
  deed: Deed,
  told: readonly string[],
  batches: readonly string[],
): OpenQuestion =>
  open(scene, {
    field: 'many',
    text: `Take back what ${told.length} messages wrote? ${told.join('; ')}.`,
    options: [
      { value: CONFIRM, label: told.length === 2 ? 'Both' : `All ${told.length}` },
      { value: LAST, label: 'Only the last' },
      { value: LEAVE, label: 'Leave it' },
    ],
    pending: [deed],
    batches,
  });
