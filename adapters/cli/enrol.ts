import { existsSync } from 'node:fs';
import { entryDocument, openCalendar, parseWorkshop, type Bot } from '../../src/index.ts';
import type { Command } from './command.ts';
import { usage } from './fault.ts';
import { print } from './output.ts';
import { databaseFile, momentOf, readTextFile, withBot, withTrial } from './session.ts';

const names = (label: string, list: readonly string[]): string[] =>
  list.length === 0 ? [] : [`${label}: ${list.join(', ')}`];

export const enrol: Command = {
  about: 'apply a workshop file to the database',
  usage: 'enrol FILE [--dry-run] [--as NAME]',
  options: { 'dry-run': { type: 'boolean' }, as: { type: 'string' } },
  async run(args, world) {
    const [file, ...more] = args.positionals;
    if (file === undefined || more.length > 0)
      throw usage('enrol takes one workshop file: fettle enrol workshop.yaml');
    const database = databaseFile(args, world);
    const yaml = readTextFile(file);
    const parsed = parseWorkshop(yaml);
    const calendar = openCalendar(parsed.ok ? parsed.workshop.workshop.zone : 'UTC');
    const dryRun = args.flag('dry-run');
    const apply = async (bot: Bot): Promise<number> => {
      const by = args.text('as') ?? 'me';
      const result = await bot.enrol({ yaml, now: momentOf(args, world, calendar), by, dryRun });
      const { added, changed, unchanged, missing, notes, changes } = result;
      const entries = result.entries.map((entry) => entryDocument(entry, calendar, by));
      const lines = [
        ...names('added', added),
        ...names('changed', changed),
        ...changes.map(({ of, what }) => `  ${of}: ${what.join(' · ')}`),
        ...names('unchanged', unchanged),
        ...names('on record but not in the file (they stay)', missing),
        ...notes,
        `${entries.length} ${entries.length === 1 ? 'entry' : 'entries'}${dryRun ? ' would be written' : ' written'}`,
      ];
      print(world.output, { added, changed, changes, unchanged, missing, notes, entries }, lines.join('\n'));
      return 0;
    };
    // only looking must not leave an empty database behind
    return dryRun && !existsSync(database) ? withTrial(apply) : withBot(database, apply);
  },
};
