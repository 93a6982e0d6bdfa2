/** Shifts: handing over, taking over, notes; and who gets no count of their own. */
import type { AskAct } from '../../language/act.ts';
import type { Deed } from '../../maintenance/decide/deed.ts';
import { bold, item, type Reply } from '../../replies/reply.ts';
import { capital } from '../../replies/format/list.ts';
import { machineName } from '../../replies/wording/names.ts';
import { note } from '../../replies/wording/noted.ts';
import { dateWord, since } from '../../replies/wording/view.ts';
import { told } from '../ask/told.ts';
import { answerAsk } from '../ask/ask.ts';
import { NOTES } from '../ask/handover.ts';
import type { Scene } from '../scene.ts';
import { always, answered, carryDeeds, machinesMeant, type Carried, type Carrier } from './order.ts';

const LIST: AskAct = { kind: 'ask', topic: 'handover' };

/** The list of what is open, below what was just said. */
async function withList(
  scene: Scene,
  carried: Carried,
  without: readonly string[],
  buttons: Reply['buttons'],
): Promise<Carried> {
  const { title, sections: all, ...rest } = await answerAsk(scene, LIST);
  const sections = all.filter(({ heading = '' }) => !without.includes(heading));
  // what was just said stands first, the list below it
  const reply = { ...rest, sections: [{ items: title ? [{ text: title }] : [] }, ...sections] };
  const steps = [
    ...carried.steps,
    ...answered(LIST, { ...reply, buttons: [...reply.buttons, ...buttons] }).steps,
  ];
  return { ...carried, steps };
}

export const HAND_OVER: Carrier<'handOver'> = {
  takes: always,
  async carry(scene, { to, text }, first) {
    const deeds: Deed[] = [
      { kind: 'handOver', ...(to === undefined ? {} : { to }) },
      ...(text === undefined ? [] : [{ kind: 'note', text } as const]),
    ];
    const carried = await carryDeeds(scene, deeds, first);
    // the notes stand above, as they were just told
    return withList(scene, carried, [NOTES], [
      { label: 'I take over', press: { does: 'deeds', deeds: [{ kind: 'takeOver', from: scene.person.name.toLowerCase() }] } },
    ]);
  },
}; // prettier-ignore

export const TAKE_OVER: Carrier<'takeOver'> = {
  takes: always,
  async carry(scene, { from }, first) {
    const { handedOver } = scene.record;
    const carried = await carryDeeds(
      scene,
      [{ kind: 'takeOver', ...(from === undefined ? {} : { from }) }],
      first,
    );
    const listed = await withList(scene, carried, [], []);
    const by = handedOver ? `Handed over by ${scene.personName(handedOver.by)} ${since(handedOver.at, scene)}.` : 'Nobody handed over in writing; this is what the records hold.'; // prettier-ignore
    return { ...listed, aside: by };
  },
};

export const NOTE: Carrier<'note'> = {
  takes: (scene, { machines }) => machinesMeant(scene, machines).length > 0,
  carry: (scene, { machines, text }, first) =>
    carryDeeds(scene, machinesMeant(scene, machines).map((machine): Deed => ({ kind: 'note', machine, text })), first), // prettier-ignore
};

const LAST = 3;

export const BLAME: Carrier<'blame'> = {
  takes: (_, { counts, machines }) => counts || machines.length > 0,
  async carry(scene, { counts, machines, who }, _first) {
    const [machine] = machines;
    const ask: AskAct = { kind: 'ask', topic: 'history', ...(machine === undefined ? {} : { machine }) };
    if (counts || machine === undefined) return answered(ask, declined(who));
    const { journal } = scene.transaction;
    const facts = (await told(journal, { machine, asOf: scene.message.now, limit: 20 })).filter(isTelling);
    const items = facts.slice(0, LAST).map((fact) => item(`${capital(dateWord(scene.calendar.dateOf(fact.at), scene).replace(/^on /u, ''))}: ${note(fact, scene)}`)); // prettier-ignore
    return answered(ask, {
      title: [bold(machineName(machine, scene)), ', what was written last:'],
      sections: [{ items: items.length > 0 ? items : [item('Nothing yet.')] }],
      buttons: [],
    });
  },
};
const NOISE: ReadonlySet<string> = new Set(['usage', 'stated', 'enrolled', 'changed', 'stockCounted']);
const isTelling = ({ kind }: { kind: string }): boolean => !NOISE.has(kind);

const declined = (who: string | undefined): Reply => ({
  sections: [
    {
      items: [
        item(
          `I count trouble by machine and cause, not by person${who === undefined ? '' : `, ${capital(who)} or anybody`}. “how many jams on birch this month?” I can tell.`,
        ),
      ],
    },
  ],
  buttons: [],
});
