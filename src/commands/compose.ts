/** What came of a message, as one reply: caution first, then what was noted, what not, what is asked. */
import type { ActReading } from '../language/act.ts';
import { isSafetySymptom } from '../maintenance/codes.ts';
import { machineDue, raisedRows } from '../maintenance/due/rows.ts';
import type { DueRow } from '../maintenance/due/row.ts';
import type { Entry } from '../maintenance/entry/entry.ts';
import { standing } from '../maintenance/record/standing.ts';
import type { Item, Reply, Section } from '../replies/reply.ts';
import { item, joinReplies } from '../replies/reply.ts';
import {
  followUps,
  machineOf,
  remarks,
  writtenSections,
  noteLine,
  owedBeforeStart,
  type WrittenEntry,
} from '../replies/wording/answer.ts';
import { loadingHints } from '../replies/wording/loading.ts';
import { fanLooked, findTheCause, isJam, jamSeries } from '../replies/wording/repeats.ts';
import { list } from '../replies/format/list.ts';
import { machineName } from '../replies/wording/names.ts';
import type { ActResult } from './message.ts';
import { answering, puttingRight, ways } from './buttons.ts';
import { heldLines } from './held.ts';
import { namedIn } from './namedIn.ts';
import { notRead } from './notRead.ts';
import { waitingWords } from './questions.ts';
import { dueContext, type Scene } from './scene.ts';
import { isCompleting } from './turns.ts';
import type { Played, Step } from './step.ts';

/** Entries that corrections speak of with all that corrects them, loaded once for the wording. */
export interface Targets {
  family: readonly Entry[];
  /** Ids of what this message wrote. */
  own: ReadonlySet<string>;
}

/** The entry as it stood before these corrections of it. */
function before({ family, own }: Targets, id: string, correction?: string): Entry | undefined {
  const counted = family.filter((entry) => !own.has(entry.id) && entry.id !== correction);
  return standing(counted).find((fact) => fact.id === id) ?? family.find((entry) => entry.id === id);
}

const machineRecord = (scene: Scene, entry: Entry, target?: Entry) => {
  const name =
    'machine' in entry ? entry.machine : target && 'machine' in target ? target.machine : undefined;
  return name === undefined
    ? undefined
    : (scene.record.machines.get(name) ?? (name === 'room' ? scene.record.room : undefined));
};

function writtenOf(scene: Scene, step: Step, targets: Targets): WrittenEntry[] {
  const decision = step.decision?.outcome === 'written' ? step.decision : undefined;
  const fromTalk = step.assumed?.['machine']?.from === 'conversation';
  return step.entries.map((entry): WrittenEntry => {
    const target = 'target' in entry ? before(targets, entry.target) : undefined;
    const beneath = target && 'target' in target ? before(targets, target.target, target.id) : undefined;
    const after = machineRecord(scene, entry, target);
    return {
      entry,
      flags: [...(decision?.flags ?? []), ...(fromTalk ? (['assumed-machine'] as const) : [])],
      notes: decision?.notes ?? {},
      ...(target ? { target } : {}),
      ...(beneath ? { beneath } : {}),
      ...(after ? { after } : {}),
    };
  });
}

/** The result of each act, for the answer's document. */
export function resultsOf(scene: Scene, played: Played, targets: Targets): ActResult[] {
  return played.steps.map((step, act): ActResult => {
    const written = writtenOf(scene, step, targets);
    const text = step.text ?? (written.length > 0 ? written.map((w) => noteLine(w, scene)).join(' · ') : '');
    return {
      act,
      outcome: step.outcome,
      entries: step.entries.map((entry) => entry.id),
      flags: [...new Set(written.flatMap((w) => w.flags))],
      ...(step.decision?.outcome === 'refused' ? { code: step.decision.code } : {}),
      text,
    };
  });
}

/** "Hazle" read as Hazel: said, so that a wrong guess is seen. */
function spelling({ steps }: Played, scene: Scene): Item[] {
  const guesses = steps.flatMap(({ act, assumed }) => {
    const machine: ActReading['assumed'] = assumed;
    const guess = machine?.['machine'];
    // a machine that stands in the message as it is written was not guessed
    return guess?.from === 'spelling' &&
      'machine' in act &&
      act.machine !== undefined &&
      !namedIn(scene.message.text, scene.record).includes(act.machine)
      ? [`“${guess.said}” read as ${machineName(act.machine, scene)}.`]
      : [];
  });
  return [...new Set(guesses)].map((text) => item(text));
}

const isSafety = (entry: Entry): boolean => entry.kind === 'seen' && isSafetySymptom(entry.symptom);

/** Rows of the machines that something was seen, done or swapped on: nothing else raises a task. */
function rowsRaised(scene: Scene, written: readonly WrittenEntry[]): readonly DueRow[] {
  const raising = written.filter(({ entry }) => RAISING.has(entry.kind));
  const names = new Set(raising.flatMap((w) => machineOf(w) ?? []));
  return [...names].flatMap((name) => {
    const machine = scene.record.machines.get(name);
    return machine ? raisedRows(machine, dueContext(scene), scene.record.room) : [];
  });
}
/** What is said of grease on a plastic nut asks for its wiping already. */
const wipes = ({ raisedBy }: DueRow, written: readonly WrittenEntry[]): boolean =>
  written.some(({ entry, flags }) => flags.includes('plastic-nut') && entry.id === raisedBy);

const RAISING: ReadonlySet<Entry['kind']> = new Set<Entry['kind']>([
  'seen',
  'done',
  'swapped',
  'up',
  'amended',
]);

/** A machine that is back in use may still owe what it stood still for. */
const owed = (scene: Scene, written: readonly WrittenEntry[]): Item[] =>
  written.flatMap(({ entry, after }) =>
    entry.kind === 'up' && after
      ? owedBeforeStart(
          // what standing still has raised is told as one line of its own
          machineDue(after, dueContext(scene), scene.record.room).filter((row) => row.raisedBy !== entry.id),
        )
      : [],
  );

const statesNozzle = (entry: Entry): boolean => entry.kind === 'stated' && entry.part === 'nozzle';

/** What the spool will use up: told when it is mounted, and when another nozzle is in than the record had. */
const loading = (scene: Scene, written: readonly WrittenEntry[]): Item[] =>
  written.flatMap(({ entry, after }) =>
    after && (entry.kind === 'loaded' || statesNozzle(entry))
      ? loadingHints(entry.kind === 'loaded' ? entry : (after.loaded ?? {}), after, scene.record.shelf, scene)
      : [],
  );

/** Doubts that have their turn later: nothing waits without a word. */
function waitingLines({ waiting = [] }: Played, scene: Scene): Item[] {
  const words = waiting
    .filter(({ question }) => !isCompleting(question) && question.field !== 'change')
    .map(({ question }) => waitingWords(question, scene));
  return words.length === 0 ? [] : [item(`Not noted yet either: ${words.join('; ')}.`)];
}

/** Jams of a machine that just had one more, where they make a series. */
function repeated(scene: Scene, written: readonly WrittenEntry[]): Item[] {
  return written
    .flatMap(({ entry, after }) => {
      const series = after && jamSeries(after, scene.message.now);
      if (!series) return [];
      if (isJam(entry)) return findTheCause(series);
      return fanLooked(entry);
    })
    .slice(0, 2);
}

/** Where something was written and a clause that tells work was not read, it is said. */
function unread({ entries, message, reading, record }: Scene): Item[] {
  if (entries.length === 0 || message.press) return [];
  const trails = [...reading.acts, ...reading.orders].map(({ trail }) => trail);
  if (trails.length === 0) return [];
  return notRead(message.text, trails, record).map((clause) => item(`Not read: “${clause}”`));
}

/** One sentence for all machines that it is said of. */
function refusalLines({ steps, asking }: Played, scene: Scene): Item[] {
  const lifts = asking?.question.field === 'found';
  const lines = new Map<string, string[]>();
  for (const { act, outcome, decision, text = '' } of steps) {
    if (outcome !== 'refused') continue;
    // the question how to lift it says why
    if (lifts && decision?.outcome === 'refused' && decision.code === 'safety-hold') continue;
    const name = 'machine' in act && act.machine !== undefined ? machineName(act.machine, scene) : '';
    const own = name !== '' && text.startsWith(`${name}: `);
    const rest = own ? text.slice(name.length) : text;
    lines.set(rest, [...(lines.get(rest) ?? []), ...(own ? [name] : [])]);
  }
  return [...lines].map(([rest, names]) => item(`${list(names)}${rest}`));
}

/** The whole reply. */
export function compose(scene: Scene, played: Played, targets: Targets): Reply {
  const written = played.steps.flatMap((step) => writtenOf(scene, step, targets));
  const lines = [...played.caution, ...heldLines(scene, played)];
  const refusals = refusalLines(played, scene);
  const rows = rowsRaised(scene, written).filter((row) => !wipes(row, written));
  const series = repeated(scene, written);
  const more = played.grave
    ? []
    : [
        ...remarks(written, scene),
        ...spelling(played, scene),
        ...loading(scene, written),
        ...owed(scene, written),
        ...(series.length > 0 ? series : followUps(rows, written)),
      ];
  const aside = played.aside === undefined ? [] : [item(played.aside)];
  const unasked = waitingLines(played, scene);
  const question = played.asking ? [item(played.asking.question.text)] : [];
  const sections: Section[] = [
    ...writtenSections(played.grave ? written.filter((w) => !isSafety(w.entry)) : written, scene),
    { items: more },
    { items: refusals },
    { items: aside },
    { items: unasked },
    { items: unread(scene) },
  ].filter((s) => s.items.length > 0);
  const own: Reply = {
    ...(lines.length > 0 ? { caution: lines.map((line) => [line]) } : {}),
    sections,
    buttons: [],
  };
  const answers = played.steps.flatMap((s) => (s.reply ? [s.reply] : []));
  const asked: Reply = { sections: question.length > 0 ? [{ items: question }] : [], buttons: [] };
  const all = joinReplies([own, ...answers, asked]);
  const buttons = [
    ...(played.offers ?? []),
    ...answering(played),
    ...ways(scene, played),
    ...all.buttons,
    ...puttingRight(scene, played),
  ];
  return { ...all, buttons };
}
