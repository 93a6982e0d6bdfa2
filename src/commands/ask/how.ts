/** "How do you clean the hobbed gear on cedar?": steps for this build, each caution at its step. */
import { minutesOf } from '../../maintenance/care/rule.ts';
import { ruleOf } from '../../maintenance/care/index.ts';
import { isPart, replaceTask, type Task } from '../../maintenance/codes.ts';
import { howTo, type HowTo, type NoSteps, type Step } from '../../maintenance/how/howTo.ts';
import { SUPPLIES, toolList } from '../../maintenance/how/tools.ts';
import type { Build } from '../../maintenance/machine.ts';
import { capital, list } from '../../replies/format/list.ts';
import { minutes } from '../../replies/format/number.ts';
import { bold, item, type Item, type Reply, type Section } from '../../replies/reply.ts';
import { machineName, partName, todo } from '../../replies/wording/names.ts';
import { help } from './help.ts';
import type { AskScene, Topic } from './topic.ts';

function taskAsked({ act }: AskScene): Task | undefined {
  if (act.task !== undefined) return act.task;
  return act.part !== undefined && isPart(act.part) ? replaceTask(act.part) : undefined;
}

const stepItem = ({ text, cautions }: Step, index: number): Item =>
  cautions.length === 0
    ? item(`${index + 1}. ${text}`)
    : item(`${index + 1}. `, bold(`${cautions.map((c) => c.line).join(' ')} `), text);

function stepsReply(how: HowTo, build: Build, head: Reply['title']): Reply {
  const fetch = [
    ...toolList(how.tools),
    ...how.supplies.map((supply) => SUPPLIES[supply].text),
    ...(how.spare === undefined ? [] : [`the new ${partName(how.spare)}`]),
  ];
  const sections: Section[] = [
    { items: how.assumed.map((text) => item(text)) },
    { items: fetch.length === 0 ? [] : [item(`Fetch: ${list(fetch)}.`)] },
    { items: how.steps.map(stepItem) },
    {
      items: [
        item(`Good: ${how.good}`),
        ...(how.stopWhen === undefined ? [] : [item(bold('Stop when: '), how.stopWhen)]),
        item(how.defer),
      ],
    },
  ];
  const time = minutesOf(ruleOf(how.task), build);
  return {
    title: [...(head ?? []), `, about ${minutes(time)}:`],
    sections: sections.filter((s) => s.items.length > 0),
    buttons: [],
  };
}

function noSteps(answer: NoSteps, head: Reply['title']): Reply {
  const lines = [
    ...(answer.why === 'never' ? ['I won’t give steps for that'] : ['Not on this machine']),
    `: ${answer.because.replace(/\.$/u, '')}.`,
  ].join('');
  const items = [
    item(lines),
    ...(answer.ask === undefined ? [] : [item(`Ask ${answer.ask}.`)]),
    ...(answer.instead === undefined ? [] : [item(`What it needs in its place: ${todo(answer.instead)}.`)]),
    ...(answer.notStated === undefined ? [] : [item(`Its sheet does not state ${answer.notStated}.`)]),
    ...(answer.before ?? []).map((text) => item(`Before: ${text}`)),
    ...(answer.after ?? []).map((text) => item(`After: ${text}`)),
    item(answer.defer),
  ];
  return { ...(head ? { title: [...head, '.'] } : {}), sections: [{ items }], buttons: [] };
}

export const how: Topic = (scene): Reply | Promise<Reply> => {
  const task = taskAsked(scene);
  if (task === undefined) return help(scene);
  const { machine: name } = scene.act;
  const build = name === undefined ? {} : (scene.record.machines.get(name)?.build ?? {});
  const head = [
    bold(capital(todo(task))),
    ...(name === undefined ? [] : [` on ${machineName(name, scene)}`]),
  ];
  const answer = howTo(task, build);
  return answer.kind === 'steps' ? stepsReply(answer, build, head) : noSteps(answer, head);
};
