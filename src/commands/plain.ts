/** Short questions about what a reply has just shown, and words that go: a row a sentence. */
import type { AskAct } from '../language/act.ts';
import { dateOfDay } from '../maintenance/calendar.ts';
import { digestOf } from '../maintenance/due/digest.ts';
import { dueRows, machineDue } from '../maintenance/due/rows.ts';
import { foldName } from '../maintenance/machine.ts';
import { answersTo } from '../maintenance/record/called.ts';
import { asksFinding } from '../maintenance/record/reasons.ts';
import type { MachineRecord } from '../maintenance/record/record.ts';
import { count, figure } from '../replies/format/number.ts';
import { bold, item, type Item, type Reply } from '../replies/reply.ts';
import { digestReply } from '../replies/wording/digest.ts';
import { putOffWords } from '../replies/wording/due.ts';
import { heldFor, machineName, materialName, todo } from '../replies/wording/names.ts';
import { since } from '../replies/wording/view.ts';
import { answerAsk } from './ask/ask.ts';
import { plucked } from './ask/figure.ts';
import { forget } from './forget.ts';
import { dueContext, type Scene } from './scene.ts';
import type { Played } from './step.ts';

interface Row {
  said: RegExp;
  ask: Pick<AskAct, 'topic'>;
  answer: (scene: Scene, match: RegExpExecArray) => Promise<Reply | undefined> | Reply | undefined;
}

const ROWS: readonly Row[] = [
  {
    said: /^(?:what|which|who|anything|is (?:anything|something))(?:['’]s| is| are)?(?: (?:machines?|printers?))?(?: is| are)? (?:still |currently |now )?(?:held|on hold)\b[^.!]{0,20}\??$/iu,
    ask: { topic: 'status' },
    answer: (scene) => reply(heldItems(scene)),
  },
  {
    said: /^(?:what|which|who|is anything|is anybody|is anyone)(?:['’]s| is| are)?(?: (?:machines?|printers?))?(?: is| are)? (?:still |currently |now )?(?:open|in bits|in pieces|taken apart)(?: (?:now|today|right now))?\??$/iu,
    ask: { topic: 'status' },
    answer: (scene) => reply(openItems(scene)),
  },
  {
    said: /^what(?:['’]s| is| filament is| material is)? (?:now |currently )?(?:loaded|mounted)(?: (?:on|in|into) (?:the )?(.+?))?\??$/iu,
    ask: { topic: 'status' },
    answer: (scene, [, name]) => loadedOn(scene, name),
  },
  {
    said: /^(?:(?:show|give|send|tell) (?:me|us) )?(?:the |today['’]s |a |an )?(?:morning |daily )?digest(?: (?:please|now|for today|today))?[.?!]?$/iu,
    ask: { topic: 'due' },
    answer: (scene) => digestNow(scene),
  },
  {
    said: /^(?:what|which|is (?:anything|something)|anything)(?:['’]s| is| are| have we| did we| has been| was)?(?: (?:tasks|jobs|all))?(?: is| are)? (?:still |currently |now )?(?:put off|postponed|deferred|pushed(?: back)?)(?: (?:on|for) (.+?))?\??$/iu,
    ask: { topic: 'due' },
    answer: (scene, [, name]) => putOffItems(scene, name),
  },
  {
    said: /^why(?:['’]s| is| was| are| were)? (?:that|this|it|those|these|they) (?:still )?(?:put off|postponed|deferred)\??$/iu,
    ask: { topic: 'next' },
    answer: (scene) => putOffItems(scene, scene.conversation.lastMachine),
  },
  {
    said: /^what (?:do|will) (?:i|we) (?:have to |need to |need )(?:do )?(?:for )?tomorrow\??$/iu,
    ask: { topic: 'due' },
    answer: (scene) => {
      const day = dateOfDay(scene.today + 1);
      return answerAsk(scene, { kind: 'ask', topic: 'due', from: day, to: day });
    },
  },
  {
    said: /^how (?:do|should|can) (?:i|we|you) (?:oil|grease|lubricate|lube) (?:the |its )?(?:v[- ]?)?(?:wheels|rollers)\b[^.!]{0,30}$/iu,
    ask: { topic: 'how' },
    answer: () =>
      reply([
        item(
          'Wheels run dry: neither they nor their tracks take any lubricant, never oil or grease them. “how do I clean the wheels?” tells how to look after them.',
        ),
      ]),
  },
  {
    said: /^how (?:do|should|can) (?:i|we|you) (?:clean|dust|dust off) (?:the |this |my )?(?:whole )?(?:printer|machine)(?: (?:on|of|called) (.+?))?\??$/iu,
    ask: { topic: 'how' },
    answer: (scene, [, name]) => {
      const machine = called(scene, name ?? '');
      const about = machine ? { machine: machine.name } : {};
      return answerAsk(scene, { kind: 'ask', topic: 'how', task: 'dust-off', ...about });
    },
  },
  {
    said: /^why (?:the |is it |is that |every )?(\d+) ?(h|hours|days)\b(?: (?:on|for) (.+?))?\??$/iu,
    ask: { topic: 'next' },
    answer: (scene, [, interval, unit, name]) => whyInterval(scene, Number(interval), unit ?? 'h', name),
  },
  {
    said: /^how (?:many|often) .*\b(?:did|has|have|does|do) (\p{L}+) (?:cause|caused|make|made|break|broken|have|had|get|got)\b/iu,
    ask: { topic: 'trend' },
    answer: (scene, [, who]) => notByPerson(scene, who ?? ''),
  },
  {
    said: /\b(\d{1,4}(?:[.,]\d+)?) ?(?:hz|hertz)\b/iu,
    ask: { topic: 'figure' },
    answer: ({ message }, [, pitch]) =>
      reply(plucked(Number((pitch ?? '').replace(',', '.')), ...spanAndWidth(message.text))),
  },
  {
    said: /^(?:please )?(?:forget|delete|erase) (?:all )?my (?:words|messages)[.!]?$/iu,
    ask: { topic: 'help' },
    answer: async ({ transaction, person }) => {
      const gone = await forget(transaction, { personId: person.id });
      return reply([
        item(
          `${count(gone, 'message')} of yours forgotten, word for word. What was noted from them stays, your remarks on record (notes, findings, reasons) among it.`,
        ),
      ]);
    },
  },
];

const reply = (items: readonly Item[]): Reply => ({ sections: [{ items }], buttons: [] });

/** Undefined when the message is none of these, or reports work. */
export async function playPlain(scene: Scene): Promise<Played | undefined> {
  const { reading, message } = scene;
  const works = reading.acts.some(({ act }) => !['ask', 'unclear', 'undo'].includes(act.kind));
  if (works || reading.injury || reading.safety.some((mention) => mention.asserted)) return undefined;
  for (const { said, ask, answer } of ROWS) {
    const match = said.exec(message.text.trim());
    const found = match ? await answer(scene, match) : undefined;
    if (found)
      return {
        steps: [{ act: { kind: 'ask', ...ask }, outcome: 'answered', entries: [], reply: found }],
        caution: [],
        grave: false,
      };
  }
  return undefined;
}

const MM = /(\d{1,4}(?:[.,]\d+)?) ?mm\b( ?(?:wide|belts?))?/giu;
/** "150 mm, 6 mm belt": the free span, and how wide the belt is where that is said. */
function spanAndWidth(text: string): [spanMm: number | undefined, widthMm?: number] {
  const told = [...text.matchAll(MM)].map(([, figure = '', width]) => ({
    mm: Number(figure.replace(',', '.')),
    width,
  }));
  const span = told.find(({ width }) => width === undefined)?.mm;
  const wide = told.find(({ width }) => width !== undefined)?.mm;
  return wide === undefined ? [span] : [span, wide];
}

function heldItems(scene: Scene): Item[] {
  const lines = [...scene.record.machines.values()].flatMap(({ name, hold }) =>
    hold
      ? [
          item(
            bold(machineName(name, scene)),
            ` is held: ${heldFor(hold)}, told by ${scene.personName(hold.since.by)} ${since(hold.since.at, scene)}. To lift it: a keeper says what was found and mended${asksFinding(hold) ? '' : `, or “false alarm on ${machineName(name, scene)}”`}.`,
          ),
        ]
      : [],
  );
  return lines.length > 0 ? lines : [item('Nothing is held.')];
}

function openItems(scene: Scene): Item[] {
  const lines = [...scene.record.machines.values()].flatMap(({ name, opened, retired }) =>
    opened && !retired
      ? [
          item(
            bold(machineName(name, scene)),
            ` is open: ${scene.personName(opened.by)} since ${since(opened.at, scene)}.`,
          ),
        ]
      : [],
  );
  return lines.length > 0 ? lines : [item('No machine is open, by the records.')];
}

/** The same that is posted in the morning, as of now. */
function digestNow(scene: Scene): Reply {
  const { minutesADay, hourlyRate } = scene.workshop.workshop;
  const digest = digestOf(scene.record, {
    ...dueContext(scene),
    ...(minutesADay === undefined ? {} : { minutesADay }),
    ...(hourlyRate === undefined ? {} : { hourlyRate }),
  });
  return digestReply(digest, scene);
}

/** Each with until when, by whom and why, as far as it was told. */
function putOffItems(scene: Scene, name: string | undefined): Reply | undefined {
  const one = name === undefined ? undefined : called(scene, name);
  if (name !== undefined && !one) return undefined;
  const rows = dueRows(scene.record, dueContext(scene)).filter(
    ({ state, machine }) => state === 'put-off' && (!one || machine === one.name),
  );
  if (rows.length === 0)
    return reply([
      item(one ? `Nothing is put off on ${machineName(one.name, scene)}.` : 'Nothing is put off.'),
    ]);
  return reply(
    rows.map((row) => {
      const untold = row.putOff?.reason === undefined ? '; no reason was told' : '';
      return item(
        bold(machineName(row.machine, scene)),
        `: ${todo(row.task)}${putOffWords(row, scene)}${untold}.`,
      );
    }),
  );
}

const called = ({ record }: Scene, name: string): MachineRecord | undefined => {
  const wanted = foldName(name);
  return [...record.machines.values()].find((machine) => answersTo(machine).includes(wanted));
};

function loadedOn(scene: Scene, name: string | undefined): Reply | undefined {
  const one = name === undefined ? undefined : called(scene, name);
  if (name !== undefined && !one) return undefined;
  const machines = one ? [one] : [...scene.record.machines.values()].filter((machine) => !machine.retired);
  return reply(
    machines.map((machine) => {
      const { loaded } = machine;
      const grams = loaded?.grams === undefined ? '' : `, ${figure(loaded.grams, 0)} g when mounted`;
      const what = loaded
        ? `${loaded.material ? materialName(loaded.material) : 'a spool of something'}${grams}, mounted ${since(loaded.mark.at, scene)}`
        : 'no record of what is loaded';
      return item(bold(machineName(machine.name, scene)), `: ${what}`);
    }),
  );
}

/** The interval that was just shown: whose it is, and where it comes from. */
async function whyInterval(
  scene: Scene,
  interval: number,
  unit: string,
  name: string | undefined,
): Promise<Reply | undefined> {
  const last = scene.conversation.lastMachine;
  const machine =
    (name === undefined ? undefined : called(scene, name)) ??
    (last === undefined ? undefined : called(scene, last));
  if (!machine) return undefined;
  const hours = unit.startsWith('h');
  const row = machineDue(machine, dueContext(scene), scene.record.room).find((each) =>
    each.all.some((use) => use.interval === interval && (use.unit === 'h') === hours),
  );
  return row && answerAsk(scene, { kind: 'ask', topic: 'next', machine: machine.name, task: row.task });
}

async function notByPerson({ transaction }: Scene, who: string): Promise<Reply | undefined> {
  const known = await transaction.post.peopleByName(foldName(who));
  if (known.length === 0) return undefined;
  return reply([item('I count jams and faults by machine and cause, not by person.')]);
}
