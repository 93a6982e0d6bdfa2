/** Does a reading say what a label says? The rules that decide a whole corpus line, as the comparison page states them. */
import { addDays } from '../../../src/language/calendar.ts';

type Loose = Readonly<Record<string, unknown>> & { kind: string };
export interface Label {
  id: string;
  text: string | { repeat: [string, number] };
  acts: Loose[];
  accept?: Loose[][];
  tags?: string[];
}

const TODAY = '2026-03-11';
const DATED = ['machine', 'on'];
const FIELDS: Readonly<Record<string, readonly string[]>> = {
  usage: ['machine', 'hours', 'grams', 'metres', 'material', 'on'],
  meter: [...DATED, 'hours'],
  load: ['machine', 'material', 'grams'],
  done: [...DATED, 'task'],
  swap: [...DATED, 'part', 'reason'],
  symptom: [...DATED, 'symptom'],
  gone: [...DATED, 'symptom'],
  down: DATED,
  up: DATED,
  open: ['machine'],
  close: ['machine'],
  defer: [...DATED, 'task', 'until', 'hours'],
  claim: [...DATED, 'task'],
  stock: ['part', 'change', 'count', 'on'],
  ask: ['topic', 'machine', 'part', 'task', 'symptom'],
  undo: [],
  amend: ['machine', 'hours', 'grams', 'metres', 'material', 'part', 'task', 'symptom', 'on', 'reason', 'change', 'count', 'until', 'value'],
  unclear: [],
}; // prettier-ignore
const WRITES = new Set(Object.keys(FIELDS).filter((kind) => kind !== 'ask' && kind !== 'unclear'));
const FIGURES = ['hours', 'grams', 'metres', 'count', 'change'];

function settled(act: Loose): Record<string, unknown> {
  const out: Record<string, unknown> = { ...act };
  if (typeof out.days === 'number' && out.until === undefined)
    out.until = addDays(TODAY, Math.round(out.days));
  if (act.kind === 'ask' && typeof out.task === 'string' && out.task.startsWith('replace-')) {
    out.part ??= out.task.slice('replace-'.length);
    delete out.task;
  }
  if (act.kind !== 'amend' && FIELDS[act.kind]?.includes('on') === true) out.on ??= TODAY;
  return out;
}
function close(a: unknown, b: unknown, exact: boolean): boolean {
  if (a === b) return true;
  return !exact && typeof a === 'number' && typeof b === 'number' && Math.abs(a - b) <= 0.01 * Math.abs(a);
}
export function sameAct(label: Loose, got: Loose): boolean {
  if (label.kind !== got.kind) return false;
  const [want, have] = [settled(label), settled(got)];
  if (label.kind === 'amend' && typeof have.value === 'number' && want.value === undefined) {
    const figure = FIGURES.find((field) => want[field] !== undefined);
    if (figure !== undefined && have[figure] === undefined) {
      have[figure] = have.value;
      delete have.value;
    }
  }
  return (FIELDS[label.kind] ?? []).every((field) =>
    close(want[field], have[field], field === 'count' || field === 'change' || label.kind === 'meter'),
  );
}
function sameReading(want: readonly Loose[], got: readonly Loose[]): boolean {
  if (want.length !== got.length) return false;
  const left = [...got];
  return want.every((act) => {
    const at = left.findIndex((other) => sameAct(act, other));
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
}
export const matches = (label: Label, got: readonly Loose[]): boolean =>
  [label.acts, ...(label.accept ?? [])].some((reading) => sameReading(reading, got));
export const writes = (acts: readonly Loose[]): boolean => acts.some(({ kind }) => WRITES.has(kind));
export const mustBeQuiet = (label: Label): boolean => ![label.acts, ...(label.accept ?? [])].some(writes);
