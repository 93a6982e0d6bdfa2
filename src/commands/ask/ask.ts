/** Questions: one topic, one file. */
import type { AskAct, AskTopic } from '../../language/act.ts';
import { dueRows, machineDue } from '../../maintenance/due/rows.ts';
import { foldName } from '../../maintenance/machine.ts';
import { ROOM } from '../../maintenance/codes.ts';
import type { Reply } from '../../replies/reply.ts';
import { machineName } from '../../replies/wording/names.ts';
import { item } from '../../replies/reply.ts';
import { dueContext, type Scene } from '../scene.ts';
import { age } from './age.ts';
import { diagnose } from './diagnose.ts';
import { due } from './due.ts';
import { figure } from './figure.ts';
import { handover } from './handover.ts';
import { help } from './help.ts';
import { history } from './history.ts';
import { how } from './how.ts';
import { life } from './life.ts';
import { next } from './next.ts';
import { overdue } from './overdue.ts';
import { ready } from './ready.ts';
import { status } from './status.ts';
import { stock } from './stock.ts';
import type { AskScene, Topic } from './topic.ts';
import { trend } from './trend.ts';
import { usage } from './usage.ts';

const TOPICS: Readonly<Record<AskTopic, Topic>> = {
  overdue, due, next, history, age, stock, diagnose, usage, status, ready, life, trend, handover, help, how, figure,
}; // prettier-ignore

/** Trouble has causes, not culprits. */
const NOT_BY_PERSON: ReadonlySet<AskTopic> = new Set<AskTopic>(['diagnose', 'trend', 'life']);

export async function answerAsk(scene: Scene, act: AskAct): Promise<Reply> {
  const { record } = scene;
  if (act.machine !== undefined && act.machine !== ROOM && !record.machines.has(act.machine))
    return {
      sections: [{ items: [item(`I know no machine called “${machineName(act.machine, scene)}”.`)] }],
      buttons: [],
    };
  if (act.who !== undefined && NOT_BY_PERSON.has(act.topic))
    return {
      sections: [{ items: [item('I count jams and faults by machine and cause, not by person.')] }],
      buttons: [],
    };
  return TOPICS[act.topic](askScene(scene, act));
}

function askScene(scene: Scene, act: AskAct): AskScene {
  const { record, workshop, calendar, today, message, person, personName, calledAs, transaction } = scene;
  const context = dueContext(scene);
  return {
    act,
    said: message.press ? '' : message.text,
    record,
    workshop,
    calendar,
    today,
    now: message.now,
    journal: transaction.journal,
    rows: (machine) => {
      if (machine === undefined || machine === ROOM) {
        const all = dueRows(record, context);
        return machine === ROOM ? all.filter((row) => row.machine === ROOM) : all;
      }
      const own = record.machines.get(machine);
      return own ? machineDue(own, context, record.room) : [];
    },
    person: person.id,
    personName,
    calledAs,
    personsNamed: async (name) =>
      (await transaction.post.peopleByName(foldName(name))).map((known) => known.id),
  };
}
