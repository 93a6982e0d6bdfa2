import type { Command } from './command.ts';
import { usage } from './fault.ts';
import { print } from './output.ts';
import { databaseFile, readTextFile, withBot } from './session.ts';

export const importJournal: Command = {
  about: 'take in an exported journal, all or nothing',
  usage: 'import FILE',
  options: {},
  async run(args, world) {
    const [file, ...more] = args.positionals;
    if (file === undefined || more.length > 0)
      throw usage('import takes one file: fettle import journal.jsonl');
    const database = databaseFile(args, world);
    const lines = readTextFile(file).split('\n');
    return withBot(database, async (bot) => {
      const { written, skipped } = await bot.importLines(lines);
      print(world.output, { written, skipped }, `${written} imported, ${skipped} already here`);
      return 0;
    });
  },
};
