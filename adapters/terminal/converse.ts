/** A conversation in a terminal: today's digest, three things to try, then a line for a line. */
import { randomUUID } from 'node:crypto';
import { RequestFault, StoreFault, type Bot, type Instant, type LocalCalendar } from '../../src/index.ts';
import { render } from './render.ts';

export interface Talk {
  bot: Bot;
  calendar: LocalCalendar;
  speaker: string;
  opening: string;
  clock: () => Instant;
  input: AsyncIterable<string>;
  write: (text: string) => void;
  /** Somebody types: a prompt, colours. */
  interactive: boolean;
}

const LEAVING = new Set(['exit', 'quit', 'bye']);

export async function converse(talk: Talk): Promise<void> {
  const { bot, write, interactive, clock } = talk;
  const paint = { colour: interactive };
  const { reply } = await bot.digest({ now: clock() });
  if (talk.opening !== '') write(`${talk.opening}\n\n`);
  write(`${render({ reply, question: null }, paint)}\n\n`);
  write(await tryThese(talk));
  const prompt = (): void => write(interactive ? '\n> ' : '\n');
  prompt();
  for await (const line of talk.input) {
    const text = line.trim();
    if (LEAVING.has(text.toLowerCase())) break;
    if (!interactive && text !== '') write(`> ${text}\n`);
    if (text !== '') write(await oneLine(talk, text, paint));
    prompt();
  }
}

async function oneLine(
  { bot, speaker, clock }: Talk,
  text: string,
  paint: { colour: boolean },
): Promise<string> {
  const now = clock();
  const message = {
    key: `terminal:${randomUUID()}`,
    platform: 'terminal',
    place: 'terminal',
    direct: true,
    speaker,
    text,
    saidAt: now,
    now,
  };
  try {
    return `${render(await bot.say(message), paint)}\n`;
  } catch (fault) {
    // the conversation goes on: nothing of this message was written
    if (fault instanceof StoreFault || fault instanceof RequestFault) return `Not noted: ${fault.message}\n`;
    throw fault;
  }
}

/** Three things to try, with machines of this very workshop. */
async function tryThese({ bot, clock }: Talk): Promise<string> {
  const rows = await bot.due({ now: clock() });
  const machines = [...new Set(rows.map((row) => row.machine))].filter((name) => name !== 'room');
  const late =
    rows.find((row) => row.state === 'overdue' && row.machine !== 'room' && !row.idle)?.machine ??
    machines[0] ??
    'it';
  const other = machines.find((name) => name !== late) ?? late;
  return [
    'Try, in your own words:',
    `  what's overdue on ${late}?`,
    `  cleared a jam on ${other}, cleaned the feeder too. ran 6.5h`,
    '  undo',
    '“help” shows more, “exit” leaves. A number presses the button of that number.',
    '',
  ].join('\n');
}
