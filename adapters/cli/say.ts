import { randomUUID } from 'node:crypto';
import { answerDocument, openCalendar, replyText } from '../../src/index.ts';
import type { Command } from './command.ts';
import { usage } from './fault.ts';
import { readMoment } from './moment.ts';
import { print } from './output.ts';
import { withSession } from './session.ts';

export const say: Command = {
  about: 'say one message to the bot',
  usage: 'say [--as NAME] [--said-at ISO] [--key KEY] TEXT',
  options: { as: { type: 'string' }, 'said-at': { type: 'string' }, key: { type: 'string' } },
  async run(args, world) {
    const text = args.positionals.join(' ');
    if (args.positionals.length === 0)
      throw usage('say needs the message: fettle say "oiled the rods on alder"');
    if (args.text('said-at') !== undefined)
      readMoment(args.text('said-at') ?? '', '--said-at', openCalendar('UTC'));
    return withSession(args, world, async ({ bot, calendar, now }) => {
      const saidAt = args.text('said-at');
      const answer = await bot.say({
        key: args.text('key') ?? `cli:${randomUUID()}`,
        platform: 'cli',
        place: 'cli',
        direct: false,
        speaker: args.text('as') ?? 'me',
        text,
        saidAt: saidAt === undefined ? now : readMoment(saidAt, '--said-at', calendar),
        now,
      });
      print(world.output, answerDocument(answer, calendar), replyText(answer));
      return 0;
    });
  },
};
