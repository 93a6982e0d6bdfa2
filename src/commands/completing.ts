/** Questions about what is written already, where one more word makes it whole: a finding, a bore. */
import { ruleOf } from '../maintenance/care/index.ts';
import type { Entry, EntryOf } from '../maintenance/entry/entry.ts';
import { describeNozzle, readNozzle } from '../maintenance/record/nozzle.ts';
import type { ShopRecord } from '../maintenance/record/record.ts';
import { capital } from '../replies/format/list.ts';
import { machineName, todo } from '../replies/wording/names.ts';
import { LEAVE } from './answering.ts';
import type { OpenQuestion } from './conversation.ts';
import { open } from './questions.ts';
import type { Scene } from './scene.ts';

/** Words of a poor finding that name no fault: they may be about the look, or about the day. */
const POOR =
  /(?<!\bnot )\b(?:bad|poor|dodgy|rough|knackered|past it|needs? (?:replacing|changing|doing))\b|\bnot (?:so |very |too )?(?:good|great|ok|okay|right|fine)\b|\bno good\b/iu;

const isLook = (entry: Entry): entry is EntryOf<'done'> =>
  entry.kind === 'done' && entry.finding === undefined && /^(?:check|test)-/u.test(entry.task);

/** A look was told without what it found, and words stand beside it that sound like a poor one. */
export function findingQuestion(scene: Scene, entries: readonly Entry[]): OpenQuestion | undefined {
  const { message, reading } = scene;
  const look = entries.find(isLook);
  const looks = reading.acts.filter(({ act }) => act.kind === 'done').length;
  const told = reading.acts.some(({ act }) => act.kind === 'symptom');
  if (!look || message.press || looks !== 1 || told || !POOR.test(message.text)) return undefined;
  return open(scene, {
    field: 'finding',
    text: `${machineName(look.machine, scene)}, ${todo(look.task)}: what did it find?`,
    options: [
      { value: 'bad', label: ruleOf(look.task).class === 'safety' ? 'Not good: act on it' : 'Not good' },
      { value: 'watch', label: 'To be watched' },
      { value: 'fine', label: 'Fine' },
    ],
    pending: [{ kind: 'amend', target: look.id }],
  });
}

/** Bores of that material that the shelf or the machines know. */
function bores({ shelf, machines }: ShopRecord, said: string): string[] {
  const { material } = readNozzle(said);
  const known = [
    ...shelf.flatMap(({ part, fitted }) => (part === 'nozzle' && fitted ? [readNozzle(fitted)] : [])),
    ...[...machines.values()].filter((machine) => !machine.retired).map(({ nozzle }) => nozzle),
  ];
  const alike = known.filter((nozzle) => nozzle.material === material && nozzle.boreMm !== undefined);
  return [...new Set(alike.flatMap((nozzle) => describeNozzle(nozzle) ?? []))].toSorted();
}

/** "10 brass nozzles arrived": which bore decides on which machine one can be fitted. */
export function boreQuestion(scene: Scene, entries: readonly Entry[]): OpenQuestion | undefined {
  const came = entries.find((entry) => entry.kind === 'stockMoved');
  if (!came || came.part !== 'nozzle' || came.change <= 0 || came.fitted === undefined) return undefined;
  const { material, boreMm } = readNozzle(came.fitted);
  const options = material === undefined || boreMm !== undefined ? [] : bores(scene.record, came.fitted);
  if (options.length === 0) return undefined;
  return open(scene, {
    field: 'fitted',
    text: `Booked as “${came.fitted}”, apart from those with a bore: which bore is it?`,
    options: [
      ...options.map((value) => ({ value, label: capital(value) })),
      { value: LEAVE, label: 'Not known' },
    ],
    pending: [{ kind: 'amend', target: came.id }],
  });
}
