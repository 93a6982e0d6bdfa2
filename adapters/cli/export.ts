import type { Command } from './command.ts';
import { noWords } from './options.ts';
import { databaseFile, existing, withBot } from './session.ts';

export const exportJournal: Command = {
  about: 'print the journal, one entry a line',
  usage: 'export',
  options: {},
  run(args, world) {
    noWords(args, 'export');
    return withBot(existing(databaseFile(args, world)), async (bot) => {
      await bot.exportLines(async (line) => {
        world.output.out(`${line}\n`);
        await world.output.room?.();
      });
      return 0;
    });
  },
};
