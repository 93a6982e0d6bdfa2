import { dueJson, dueList } from '../../src/index.ts';
import type { Command } from './command.ts';
import { noWords } from './options.ts';
import { print } from './output.ts';
import { withSession } from './session.ts';

export const due: Command = {
  about: 'list what is due, machine by machine',
  usage: 'due [--machine NAME]',
  options: { machine: { type: 'string' } },
  run(args, world) {
    noWords(args, 'due');
    return withSession(args, world, async ({ bot, calendar, now }) => {
      const machine = args.text('machine');
      const rows = await bot.due({ now, ...(machine === undefined ? {} : { machine }) });
      const called = new Map((await bot.machines({ now })).map((one) => [one.machine, one.called]));
      const view = {
        calendar,
        today: calendar.dayOf(now),
        personName: (id: string) => id,
        calledAs: (name: string) => called.get(name),
      };
      print(
        world.output,
        rows.map((row) => dueJson(row, calendar)),
        dueList(rows, view, machine !== undefined),
      );
      return 0;
    });
  },
};
