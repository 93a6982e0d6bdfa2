/** What can be said here, with this workshop's own machines in the examples. */
import { capital } from '../../replies/format/list.ts';
import { bold, item, type Reply } from '../../replies/reply.ts';
import { machineName } from '../../replies/wording/names.ts';
import type { Topic } from './topic.ts';

export const help: Topic = (scene): Reply => {
  const { record, workshop } = scene;
  const names = [...record.machines.values()]
    .filter((m) => !m.retired)
    .map((m) => machineName(m.name, scene));
  const one = names[0] ?? 'the printer';
  const two = names[1] ?? one;
  const keepers = workshop.people.filter((p) => p.role === 'keeper').map((p) => p.name);
  const examples = [
    `cleared a jam on ${two}, swapped the nozzle, worn`,
    `${one} ran 6.5 h · read the counter on ${one}: 4127`,
    `${two} is clicking · no clicking any more on ${two}`,
    `${one} is out of use · ${one} is back`,
    `push ${one}’s belts to Friday · I’ll do ${one}’s belts tomorrow`,
    `four nozzles arrived · 3 cloths left`,
    `undo · make that 12 h · that was ${two}, not ${one}`,
  ];
  const questions = [
    `what’s overdue on ${one}? · what’s due this week?`,
    `how long has ${two} had its nozzle? · who levelled ${two} last?`,
    `status ${two} · any nozzles left? · how do I level ${two}’s bed?`,
  ];
  return {
    title: [
      'Tell me what was ',
      bold('run, done, swapped or noticed'),
      '; ask what is due. In your own words, such as:',
    ],
    sections: [
      { items: examples.map((text) => item(`  ${text}`)) },
      { heading: 'Ask', items: questions.map((text) => item(text)) },
      {
        items: [
          item(
            'I note nothing that was not told as done or seen, and show what I took for granted; “undo” takes the last message back.',
          ),
          item(
            `I cannot see, stop or lock a machine${keepers.length > 0 ? `; ask ${keepers.map(capital).join(' or ')} when it matters` : ''}. The manual, local rules and licensed practice come first.`,
          ),
        ],
      },
    ],
    buttons: [],
  };
};
