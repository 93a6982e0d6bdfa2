/** The buttons below a reply: each does what a sentence would. */
import { doseOf } from '../maintenance/care/dose.ts';
import { softNozzle } from '../maintenance/care/builds.ts';
import { isSafetySymptom } from '../maintenance/codes.ts';
import type { Entry } from '../maintenance/entry/entry.ts';
import { asksFinding } from '../maintenance/record/reasons.ts';
import type { MachineRecord } from '../maintenance/record/record.ts';
import { isJam, jamSeries } from '../replies/wording/repeats.ts';
import { USUAL_SPOOL_G } from '../replies/wording/loading.ts';
import { machineName, materialName, nozzleName } from '../replies/wording/names.ts';
import type { Button } from '../replies/reply.ts';
import type { Scene } from './scene.ts';
import type { Played } from './step.ts';

/** What was just written can be taken back or changed. */
export const puttingRight = (scene: Scene, played: Played): Button[] => {
  // what set a hold is lifted by its own buttons
  const wrote = played.steps.some((s) => s.entries.some((e) => e.kind !== 'takenBack' && !holds(e)));
  if (!wrote) return [];
  const message = scene.because ?? scene.message.key;
  return [
    { label: 'Undo', press: { does: 'undo', message } },
    { label: 'Change something', press: { does: 'change', message } },
  ];
};

const holds = (entry: Entry): boolean => entry.kind === 'seen' && isSafetySymptom(entry.symptom);

/** The answers to the one question. */
export const answering = ({ asking }: Played): Button[] =>
  asking
    ? asking.question.options.map(({ value, label }) => ({
        label,
        press: { does: 'answer', question: asking.question.id, value },
      }))
    : [];

/** What a hold just set, or a refusal, leaves open. */
export const ways = (scene: Scene, played: Played): Button[] => [
  ...holdButtons(scene),
  ...refusedButtons(scene, played),
  ...nutButtons(scene, played),
  ...spoolButtons(scene),
  ...fanButtons(scene),
  ...dayButtons(scene),
];

/** Grease on a plastic nut: wiped off again, or the sheet is out of date. */
const nutButtons = ({ record }: Scene, { steps }: Played): Button[] =>
  steps.flatMap(({ decision, entries }): Button[] => {
    const [entry] = entries;
    if (decision?.outcome !== 'written' || !decision.flags.includes('plastic-nut')) return [];
    const machine = entry && 'machine' in entry ? entry.machine : undefined;
    const build = machine === undefined ? undefined : record.machines.get(machine)?.build;
    if (machine === undefined || !build) return [];
    const set = { build: { ...build, screwNut: 'metal' as const } };
    return [
      { label: 'Wiped', press: { does: 'deeds', deeds: [{ kind: 'done', machine, task: 'clean-screw' }] } },
      { label: 'It’s brass now', press: { does: 'deeds', deeds: [{ kind: 'change', machine, set }] } },
      {
        label: 'Its maker allows it',
        press: { does: 'ask', about: { kind: 'change', machine, set: { build } }, field: 'fitted' },
      },
    ];
  });

/** A spool that uses up more than the nozzle: another one first, or run as it is, said and kept. */
const spoolButtons = ({ entries, record }: Scene): Button[] =>
  entries.flatMap((entry): Button[] => {
    if (entry.kind !== 'loaded' || entry.material === undefined) return [];
    const { machine, material, grams } = entry;
    const nozzle = record.machines.get(machine)?.nozzle ?? {};
    if (doseOf('nozzle', nozzle, material, grams ?? USUAL_SPOOL_G) < 1) return [];
    const text = `${materialName(material)} run with ${nozzleName(nozzle) || 'the nozzle that is in'}, knowing that it wears it out: look at the nozzle after ${softNozzle(nozzle.material) ? 250 : 500} g`;
    return [
      { label: 'Swap nozzle first', press: { does: 'deeds', deeds: [{ kind: 'claim', machine, task: 'replace-nozzle' }] } },
      { label: 'Another nozzle is in', press: { does: 'ask', about: { kind: 'state', machine, part: 'nozzle' }, field: 'fitted' } },
      { label: 'Run it anyway', press: { does: 'deeds', deeds: [{ kind: 'note', machine, text }] } },
    ];
  }); // prettier-ignore

/** The third jam: the first look costs a minute and hands stay off. */
const fanButtons = ({ entries, record, message }: Scene): Button[] => {
  const jam = entries.find(isJam);
  const machine = jam && 'machine' in jam ? record.machines.get(jam.machine ?? '') : undefined;
  if (!machine || !jamSeries(machine, message.now)) return [];
  const at = { machine: machine.name };
  return [
    { label: 'Spins', press: { does: 'deeds', deeds: [{ kind: 'done', ...at, task: 'check-fans', finding: 'fine' }] } },
    { label: 'Doesn’t spin', press: { does: 'deeds', deeds: [{ kind: 'symptom', ...at, symptom: 'fan-stopped', part: 'hot-end-fan' }] } },
    { label: 'Not now', press: { does: 'leave' } },
  ];
}; // prettier-ignore

/** "About Thursday": one press makes the day sure. */
const dayButtons = ({ entries, calendar }: Scene): Button[] =>
  entries
    .filter(({ precision, kind }) => precision === 'about' && kind !== 'amended' && kind !== 'takenBack')
    .slice(0, 1)
    .map(({ id, at }) => ({
      label: 'Right day',
      press: { does: 'deeds', deeds: [{ kind: 'amend', target: id, on: calendar.dateOf(at) }] },
    }));

const holdAsks = (machine: MachineRecord | undefined): boolean =>
  machine?.hold !== undefined && asksFinding(machine.hold);

/** For every machine that a safety symptom was just told of, also when it was held before. */
function holdButtons(scene: Scene): Button[] {
  const { entries, record, reading } = scene;
  const told = entries.filter((entry) => entry.kind === 'seen' && isSafetySymptom(entry.symptom));
  const names = [...new Set(told.flatMap((entry) => ('machine' in entry ? [entry.machine ?? ''] : [])))];
  const held = names.filter((name) => record.machines.get(name)?.hold);
  const joke = reading.orders.some(({ order }) => order.kind === 'maybeJoke') ? ['Joke'] : [];
  const labels = [...joke, 'False alarm'];
  return held
    .filter((machine) => !holdAsks(record.machines.get(machine)))
    .flatMap((machine) =>
      labels.map((label): Button => ({
        label: held.length > 1 ? `${label} on ${machineName(machine, scene)}` : label,
        press: { does: 'deeds', deeds: [{ kind: 'release', machine, falseAlarm: true }] },
      })),
    );
}

/** The other way that a refusal leaves open. */
const refusedButtons = (scene: Scene, { steps }: Played): Button[] =>
  steps.flatMap(({ decision }): Button[] => {
    if (decision?.outcome !== 'refused') return [];
    const { code, facts } = decision;
    if (facts.machine === undefined) return [];
    if (code === 'safety-hold') return releaseButtons(scene, facts.machine);
    if (code !== 'safety-cannot-wait' || facts.down) return [];
    const down = { kind: 'down', machine: facts.machine } as const;
    return [{ label: 'Take it out of use', press: { does: 'deeds', deeds: [down] } }];
  });

function releaseButtons({ person, record }: Scene, machine: string): Button[] {
  const deed = { kind: 'release', machine } as const;
  const found: Button = { label: 'Say what was found', press: { does: 'ask', about: deed, field: 'found' } };
  const alarm: Button = {
    label: 'False alarm',
    press: { does: 'deeds', deeds: [{ ...deed, falseAlarm: true }] },
  };
  const falseAlarm = holdAsks(record.machines.get(machine)) ? [] : [alarm];
  return person.role === 'keeper' ? [found, ...falseAlarm] : falseAlarm;
}
