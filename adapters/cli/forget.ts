import type { Command } from './command.ts';
import { usage } from './fault.ts';
import { noWords } from './options.ts';
import { print } from './output.ts';
import { databaseFile, existing, withBot } from './session.ts';

export const forget: Command = {
  about: 'delete what somebody said, word for word; what was noted from it stays',
  usage: 'forget --person NAME | --message KEY',
  options: { person: { type: 'string' }, message: { type: 'string' } },
  async run(args, world) {
    noWords(args, 'forget');
    const [person, message] = [args.text('person'), args.text('message')];
    if ((person === undefined) === (message === undefined))
      throw usage(
        'forget takes one of two: --person NAME for all that somebody said, or --message KEY for one message.',
      );
    return withBot(existing(databaseFile(args, world)), async (bot) => {
      const forgotten = await bot.forget(person === undefined ? { message: message ?? '' } : { person });
      const what = `${forgotten} ${forgotten === 1 ? 'message' : 'messages'} forgotten`;
      print(
        world.output,
        { forgotten },
        `${what}; answers that quoted them are gone too; the noted facts stay, remarks on record (notes, findings, reasons) among them.`,
      );
      return 0;
    });
  },
};
