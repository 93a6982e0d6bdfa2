import type { Command } from './command.ts';
import { databaseFile, withBot } from './session.ts';

export const exportJournal: Command = {
  about: 'print the journal, one entry a line',
  usage: 'export',
  options: {},
  run: (args, world) =>
    withBot(databaseFile(args, world), async (bot) => {
      await bot.exportLines((line) => world.output.out(`${line}\n`));
      return 0;
    }),
};
