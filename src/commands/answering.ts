/** Is this message the answer to the question that is open? And what does it fill in? */
import type { Act, Reading } from '../language/act.ts';
import { foldName } from '../maintenance/machine.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import { describeNozzle, readNozzle } from '../maintenance/record/nozzle.ts';
import type { OpenQuestion } from './conversation.ts';

/** "Leave it": the question is closed and nothing is written. */
export const LEAVE = 'leave';
/** "Yes, as I said it". */
export const CONFIRM = 'confirm';
/** Of several messages only the latest. */
export const LAST = 'last';

/** A figure is meant as a figure where the question asks for one, never as the number of a button. */
const WANTS_FIGURE: ReadonlySet<OpenQuestion['field']> = new Set<OpenQuestion['field']>(['hours', 'value']);
export const wantsFigure = ({ field }: Pick<OpenQuestion, 'field'>): boolean => WANTS_FIGURE.has(field);

/** The value that the message gives to the open question; undefined when it says something else. */
export function answerIn(text: string, reading: Reading, question: OpenQuestion): string | undefined {
  const said = foldName(text);
  const option = question.options.find((o) => foldName(o.value) === said || foldName(o.label) === said);
  if (option) return option.value;
  if (question.field === 'found') return foundIn(text, reading, question);
  if (asksSort(question)) return sortIn(text, reading, question);
  const figure = figureIn(reading);
  if (wantsFigure(question) && figure !== undefined) return String(figure);
  const { bare } = reading;
  if (!bare || reading.acts.some(({ act }) => act.kind !== 'unclear')) return undefined;
  if (bare.yes !== undefined) return yesOrNo(bare.yes, question);
  if (bare.ordinal !== undefined) return question.options.at(bare.ordinal - Number(bare.ordinal > 0))?.value;
  if (question.field === 'machine') return bare.machine;
  // a bore stands for the one sort that has it
  if (question.field === 'fitted' && bare.number !== undefined)
    return question.options.find(({ value }) => value.split(' ').includes(String(bare.number)))?.value;
  if (question.field === 'reason') return bare.reason;
  if (question.field === 'until') return bare.dateAhead ?? bare.date;
  return undefined;
}

/** Which sort is in is told in free words, a few of them. */
const asksSort = ({ field, pending: [waiting] }: OpenQuestion): boolean =>
  field === 'fitted' && (waiting?.kind === 'state' || waiting?.kind === 'change');
const LONGEST_SORT = 5;
function sortIn(text: string, { acts, bare }: Reading, question: OpenQuestion): string | undefined {
  if (bare?.yes !== undefined) return yesOrNo(bare.yes, question);
  const words = text.trim().replace(/[.!]+$/u, '');
  const [waiting] = question.pending;
  const reports = acts.some(
    ({ act }) => act.kind !== 'unclear' && !(act.kind === 'swap' && act.part === 'nozzle'),
  );
  if (words === '' || words.endsWith('?') || words.split(/\s+/u).length > LONGEST_SORT || reports)
    return undefined;
  if (isWordBetween(words)) return undefined;
  return waiting?.kind === 'state' && describeNozzle(readNozzle(words)) === undefined ? undefined : words;
}

/**
 * What was found is told in free words. Not by a question, a new danger, work on another machine, or a word
 * between; what is left is read back before it lifts anything.
 */
function foundIn(text: string, { acts, safety, bare }: Reading, question: OpenQuestion): string | undefined {
  if (bare?.yes !== undefined) return yesOrNo(bare.yes, question);
  const [waiting] = question.pending;
  const machine = waiting && 'machine' in waiting ? waiting.machine : undefined;
  const isElse = acts.some(
    ({ act }) =>
      ELSE.has(act.kind) || ('machine' in act && act.machine !== undefined && act.machine !== machine),
  );
  const isDanger = safety.some((mention) => mention.asserted) && (!MENDED.test(text) || STILL.test(text));
  if (isElse || isDanger || bare?.number !== undefined) return undefined;
  return isWordBetween(text) || text.trim().endsWith('?') ? undefined : text.trim();
}
/** What was found is often the danger itself; it is told as over when something was done about it. */
const MENDED =
  /\b(?:replac|mend|fix|repair|renew|swapp|chang|tighten|crimp|solder|clean|remov|cut off|taken out|took out|new (?:one|plug|cable|connector|lead|terminal|fuse|supply))/iu;
const STILL = /\b(?:still|again|not (?:fixed|mended|replaced|yet)|needs?|should|must|has to|to be)\b/iu;
/** A mend is told, as over. */
export const isMend = (text: string): boolean => MENDED.test(text) && !STILL.test(text);
const ELSE: ReadonlySet<Act['kind']> = new Set<Act['kind']>(['ask', 'undo', 'amend']);

const BETWEEN =
  /^(?:thanks|thank you|thx|cheers|ta|ok|okay|k|great|good|nice|cool|perfect|hang on|hold on|wait|one (?:sec|second|moment|minute)|just a|give me|later|not yet|sorry|hi|hello|hey|got it|will do|on it|right)\b[\s!.,]*(?:\p{L}+[\s!.]*){0,3}$/iu;

/** "Thanks", "hang on a minute": answers nothing and closes nothing. */
export const isWordBetween = (text: string): boolean => !/\p{L}/u.test(text) || BETWEEN.test(text.trim());

function yesOrNo(yes: boolean, { options }: OpenQuestion): string | undefined {
  const wanted = yes ? CONFIRM : LEAVE;
  return options.find((o) => o.value === wanted)?.value;
}

/** "3", "3 h": a figure and nothing else. */
function figureIn({ bare, acts }: Reading): number | undefined {
  if (bare?.number !== undefined) return bare.number;
  const [only, ...more] = acts;
  if (!only || more.length > 0) return undefined;
  const { act } = only;
  if (act.kind === 'usage' && act.machine === undefined) return act.hours;
  return act.kind === 'amend' ? (act.hours ?? act.value) : undefined;
}

/** The waiting deed with the answer in the field that was asked about. */
export function filled(deed: Deed, field: OpenQuestion['field'], value: string): Deed {
  if (
    value === CONFIRM ||
    field === 'other' ||
    field === 'later' ||
    field === 'far' ||
    field === 'many' ||
    field === 'sweep'
  )
    return deed;
  // which grease the maker of a plastic nut names goes onto the sheet
  if (field === 'fitted' && deed.kind === 'change')
    return { ...deed, set: { build: { ...deed.set.build, screwNutLubricant: value } } };
  if (field === 'hours' || field === 'value') return withFigure(deed, field, Number(value));
  return withField(deed, field === 'entry' ? 'target' : field, value);
}

function withFigure(deed: Deed, field: 'hours' | 'value', figure: number): Deed {
  if (deed.kind !== 'amend') return withField(deed, 'hours', figure);
  // a figure without a unit that was doubted is replaced, not kept beside the new one
  const { value: _doubted, ...rest } = deed;
  return withField(rest, field, figure);
}

/** The same figure said again stands by it. */
export const repeatsFigure = (deed: Deed, value: string): boolean =>
  ('hours' in deed && deed.hours === Number(value)) || ('value' in deed && deed.value === Number(value));

/** The value was one of the question's own options or was read as this field's kind: decide checks the rest. */
const withField = (deed: Deed, field: string, value: string | number): Deed => ({ ...deed, [field]: value });
