import { digestJson, plainText } from '../../src/index.ts';
import type { Command } from './command.ts';
import { noWords } from './options.ts';
import { print } from './output.ts';
import { withSession } from './session.ts';

export const digest: Command = {
  about: 'print the morning digest',
  usage: 'digest',
  options: {},
  run(args, world) {
    noWords(args, 'digest');
    return withSession(args, world, async ({ bot, calendar, now }) => {
      const { digest: facts, reply } = await bot.digest({ now });
      const text = plainText(reply);
      print(world.output, { ...digestJson(facts, calendar), text }, text);
      return 0;
    });
  },
};
