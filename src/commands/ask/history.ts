/** "Who levelled rowan most recently?": what was written, the latest first. Facts by machine, no tally by person. */
import { partReplacedBy, type Task } from '../../maintenance/codes.ts';
import { dayOfDate } from '../../maintenance/calendar.ts';
import type { Entry } from '../../maintenance/entry/entry.ts';
import type { Fact } from '../../maintenance/record/standing.ts';
import { capital, shortened } from '../../replies/format/list.ts';
import { bold, item, type Item, type Reply } from '../../replies/reply.ts';
import { machineName } from '../../replies/wording/names.ts';
import { moreOf } from '../../replies/wording/refusals.ts';
import { note } from '../../replies/wording/noted.ts';
import { dateWord } from '../../replies/wording/view.ts';
import type { HistoryFilter } from '../../store/journal.ts';
import { tasksAsked } from './next.ts';
import { careOfPart } from './partCare.ts';
import { told } from './told.ts';
import type { AskScene, Topic } from './topic.ts';

const MOST = 8;
const MOST_OF_ONE = 3;
/** Read more than is shown: some of it may have been taken back. */
const READ = 60;

const about = ({ act }: AskScene): Pick<HistoryFilter, 'task' | 'part'> => {
  if (act.part !== undefined && act.task === undefined) return { part: act.part };
  if (act.task === undefined) return {};
  const part = partReplacedBy(act.task);
  return part === undefined ? { task: act.task } : { part };
};

async function by(scene: AskScene): Promise<readonly (string | undefined)[]> {
  const { who } = scene.act;
  if (who === undefined) return [undefined];
  if (who === 'me') return [scene.person];
  return scene.personsNamed(who);
}

async function entriesOf(scene: AskScene): Promise<Fact[]> {
  const { act, calendar, journal, now } = scene;
  const filter: HistoryFilter = {
    limit: READ,
    asOf: now,
    ...(act.machine === undefined ? {} : { machine: act.machine }),
    ...about(scene),
    ...(act.from === undefined ? {} : { from: calendar.at(dayOfDate(act.from), 0) }),
    ...(act.to === undefined ? {} : { to: calendar.at(dayOfDate(act.to) + 1, 0) }),
  };
  const people = await by(scene);
  const filters = [filter, ...careOf(scene).map((task) => ({ ...ofAnyPart(filter), task }))];
  const found = await Promise.all(
    people.flatMap((id) => filters.map((one) => told(journal, id === undefined ? one : { ...one, by: id }))),
  );
  const facts = new Map(found.flat().map((fact) => [fact.id, fact]));
  return [...facts.values()].filter((fact) => shown(fact, scene)).toSorted((a, b) => b.at - a.at);
}
const ofAnyPart = ({ part: _part, ...filter }: HistoryFilter): HistoryFilter => filter;

function careOf({ act }: AskScene): readonly Task[] {
  const { part, task } = act;
  return part === undefined || task !== undefined ? [] : careOfPart(part);
}

/** Without a task or part in question a day's hours are noise beside what was done and seen, but for one's own log. */
function shown(entry: Entry, scene: AskScene): boolean {
  if (tasksAsked(scene).length > 0) return true;
  return (
    (entry.kind !== 'usage' || scene.act.who === 'me') &&
    entry.kind !== 'enrolled' &&
    entry.kind !== 'stated' &&
    entry.kind !== 'stockCounted'
  );
}

function lineOf(entry: Entry, scene: AskScene): Item {
  const machine = 'machine' in entry && entry.machine !== undefined ? entry.machine : undefined;
  const named =
    scene.act.machine === undefined && machine !== undefined ? `${machineName(machine, scene)}, ` : '';
  const date = capital(dateWord(scene.calendar.dateOf(entry.at), scene).replace(/^on /u, ''));
  const unsure = entry.precision === 'about' ? ' or so' : '';
  return item(`${date}${unsure}, ${scene.personName(entry.by)}: ${named}${note(entry, scene)}`);
}

export const history: Topic = async (scene): Promise<Reply> => {
  const { machine, from, to } = scene.act;
  // one task of one machine: the last few times tell what was asked
  const isOne =
    machine !== undefined && from === undefined && to === undefined && tasksAsked(scene).length > 0;
  const { shown: latest, more } = shortened(await entriesOf(scene), isOne ? MOST_OF_ONE : MOST);
  if (latest.length === 0)
    return { sections: [{ items: [item('Nothing of that on record.')] }], buttons: [] };
  const items = [
    ...latest.map((entry) => lineOf(entry, scene)),
    ...(more > 0 ? [item(`${moreOf(more)} before that`)] : []),
  ];
  return {
    ...(machine === undefined ? {} : { title: [bold(machineName(machine, scene)), ', the latest first:'] }),
    sections: [{ items }],
    buttons: [],
  };
};
