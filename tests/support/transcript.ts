/** The README's conversation, as the program itself holds it. */
import { plainText } from '../../src/index.ts';
import { demoTalk, NOW } from './talk.ts';

const START = '<!-- conversation: produced by `npm run readme`, a test fails when it is stale -->';
const END = '<!-- /conversation -->';

const MESSAGES: readonly { as: string; text: string }[] = [
  {
    as: 'Ines',
    text: 'cleared a jam on birch, feeder gear was packed so cleaned that too. swapped the nozzle, worn. ran 6.5h',
  },
  { as: 'Odd', text: "what's overdue on alder?" },
  { as: 'Odd', text: 'oiled the rods on alder and wiped the plate' },
  { as: 'Odd', text: 'make that maple' },
  { as: 'Priya', text: 'just changed a nozzle' },
  { as: 'Priya', text: 'hazel' },
  { as: 'Priya', text: 'undo' },
  { as: 'Tomasz', text: 'push birch’s tube check to friday' },
  { as: 'Tomasz', text: 'how do I clean the feeder on birch?' },
];

export async function transcript(): Promise<string> {
  const talk = await demoTalk(NOW);
  const { reply } = await talk.bot.digest({ now: NOW });
  const parts: string[] = [plainText(reply)];
  for (const { as, text } of MESSAGES) parts.push(`${as}> ${text}`, await talk.hear(text, { as }));
  return parts.join('\n\n');
}

export function withTranscript(readme: string, text: string): string {
  const [from, to] = [readme.indexOf(START), readme.indexOf(END)];
  if (from < 0 || to < from) throw new Error('the README has no place for the conversation');
  return `${readme.slice(0, from + START.length)}\n\n\`\`\`text\n${text}\n\`\`\`\n\n${readme.slice(to)}`;
}
