/** What good hands do after a happening: the looks that the rules ask for. */
import { foldName, partReplacedBy, rulesFor } from '../../src/index.ts';
import type {
  EntryFields,
  Event,
  Material,
  Part,
  Raise,
  Rule,
  Symptom,
  WorkshopMachine,
} from '../../src/index.ts';

type Asks = (event: Event) => boolean;

function looks(machine: WorkshopMachine, asks: Asks): EntryFields[] {
  const { build } = machine;
  const facts = { build, nozzle: build.nozzle ?? {}, tubeTrims: 0 };
  const raised = ({ when, only }: Raise): boolean => asks(when) && (only?.(facts) ?? true);
  return rulesFor(build)
    .map(({ rule }) => rule)
    .filter((rule) => isLook(rule) && rule.raisedBy.some(raised))
    .map(({ task }) => ({ kind: 'done', machine: foldName(machine.name), task }));
}
/** Replacing and trimming are repairs, told by whoever made them. */
const isLook = ({ task }: Rule): boolean => partReplacedBy(task) === undefined && task !== 'trim-tube';

export const afterSymptom = (machine: WorkshopMachine, symptom: Symptom): EntryFields[] =>
  looks(
    machine,
    (event) =>
      'symptom' in event &&
      event.symptom === symptom &&
      event.part === undefined &&
      event.times === undefined,
  );

export const afterSwap = (machine: WorkshopMachine, part: Part): EntryFields[] =>
  looks(machine, (event) => 'swapped' in event && event.swapped === part);

export const afterLoad = (machine: WorkshopMachine, material: Material): EntryFields[] =>
  looks(machine, (event) => 'loaded' in event && event.loaded.includes(material));

/** An abrasive spool has come off: its dust is in the feeder. */
export const afterSpool = (machine: WorkshopMachine, material: Material): EntryFields[] =>
  looks(machine, (event) => 'spoolEnded' in event && event.spoolEnded.includes(material));
