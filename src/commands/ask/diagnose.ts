/** "Alder's extruding too little, what might it be?": the looks that this symptom calls for, in their order. */
import { looksFor } from '../../maintenance/care/looks.ts';
import { minutesOf } from '../../maintenance/care/rule.ts';
import { isSafetySymptom, type Symptom, type Task } from '../../maintenance/codes.ts';
import { minutes } from '../../replies/format/number.ts';
import { capital } from '../../replies/format/list.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { standing } from '../../replies/wording/due.ts';
import { machineName, symptomName, todo } from '../../replies/wording/names.ts';
import { machinesOf, type AskScene, type Topic } from './topic.ts';

const MOST = 6;

/** What was asked about, else what is still open on the machine. */
function symptomsAsked(scene: AskScene): readonly Symptom[] {
  if (scene.act.symptom !== undefined) return [scene.act.symptom];
  const [machine] = scene.act.machine === undefined ? [] : machinesOf(scene);
  return Object.entries(machine?.symptoms ?? {}).flatMap(([code, s]) => (s?.open ? [code as Symptom] : []));
}

export const diagnose: Topic = (scene): Reply => {
  const [symptom] = symptomsAsked(scene);
  if (symptom === undefined)
    return {
      sections: [
        { items: [item('What does it do? Say it as you see or hear it, such as “birch is clicking”.')] },
      ],
      buttons: [],
    };
  const [machine] = scene.act.machine === undefined ? [] : machinesOf(scene);
  const rows = machine ? scene.rows(machine.name) : [];
  const share = (task: Task): number => {
    const row = rows.find((r) => r.task === task);
    return row === undefined ? 0 : (row.share ?? 1);
  };
  const looks = looksFor(symptom, machine?.build, share).slice(0, MOST);
  const where = machine ? `${machineName(machine.name, scene)}, ` : '';
  const items = looks.map((rule, i): Item => {
    const row = rows.find((r) => r.task === rule.task);
    const stands = row && standing(row) !== '' ? `, ${standing(row)}` : '';
    return item(`${i + 1}. ${todo(rule.task)} (${minutes(minutesOf(rule, machine?.build ?? {}))}${stands})`);
  });
  const none =
    items.length === 0
      ? [item('No planned look goes with that. Look at the job first: material, profile, spool.')]
      : [];
  const first = isSafetySymptom(symptom)
    ? []
    : [item('First what costs nothing: the job’s settings, the spool, scraps in the way.')];
  return {
    title: [
      bold(capital(`${where}${symptomName(symptom)}`)),
      ': look in this order, by what the records say.',
    ],
    sections: [{ items: [...first, ...items, ...none] }],
    buttons: [],
  };
};
