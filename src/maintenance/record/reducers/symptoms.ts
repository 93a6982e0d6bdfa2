/** What was seen, heard, felt or happened, and what is not there any more. */
import { isSafetySymptom, SYMPTOMS, type Part, type Symptom } from '../../codes.ts';
import { keepLast, markOf } from '../mark.ts';
import { reasonsOf } from '../reasons.ts';
import type { MachineRecord, Mark, SymptomRecord } from '../record.ts';
import type { Reducer } from './reducer.ts';

export const seen: Reducer<'seen'> = (machine, entry, calendar) => {
  const mark = markOf(entry, machine.totals, calendar);
  occurred(machine, entry.symptom, mark, entry.part);
  if (isSafetySymptom(entry.symptom)) hold(machine, entry.symptom, mark);
};

/** A safety symptom holds the machine at once; others told while it is held stand beside the first. */
function hold(machine: MachineRecord, symptom: Symptom, mark: Mark): void {
  const { hold } = machine;
  const { entry, at: last } = mark;
  if (!hold) machine.hold = { symptom, also: [], since: mark, told: [entry], last };
  else if (reasonsOf(hold).includes(symptom)) machine.hold = { ...hold, last };
  else machine.hold = { ...hold, also: [...hold.also, symptom], told: [...hold.told, entry], last };
}

/** One occurrence more. It stays open since the first time that nobody cleared. */
export function occurred(machine: MachineRecord, symptom: Symptom, mark: Mark, part?: Part): void {
  const before = machine.symptoms[symptom];
  const record: SymptomRecord = {
    open: before?.open ?? mark,
    recent: keepLast(before?.recent ?? [], mark),
    count: (before?.count ?? 0) + 1,
    ...(before?.byPart || part ? { byPart: { ...before?.byPart, ...(part && { [part]: mark }) } } : {}),
  };
  machine.symptoms = { ...machine.symptoms, [symptom]: record };
}

export function clearSymptom(machine: MachineRecord, symptom: Symptom): void {
  const before = machine.symptoms[symptom];
  if (!before?.open) return;
  const { open: _open, ...rest } = before;
  machine.symptoms = { ...machine.symptoms, [symptom]: rest };
}

/** Symptoms that are open, in the order of the vocabulary. */
export const openSymptoms = (machine: MachineRecord): readonly Symptom[] =>
  SYMPTOMS.filter((symptom) => machine.symptoms[symptom]?.open !== undefined);

/**
 * "It's gone", without saying what, clears all that is open; never what the machine is held for: a smell
 * that has gone is not a cause that was found.
 */
export const cleared: Reducer<'cleared'> = (machine, entry) => {
  const gone = entry.symptom ? [entry.symptom] : openSymptoms(machine);
  for (const symptom of gone) if (!machine.hold || !isSafetySymptom(symptom)) clearSymptom(machine, symptom);
};
