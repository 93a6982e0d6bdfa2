/** `fettle serve`: the bot on Slack and Discord, whichever has a token. */
import { PlatformFault } from '../../src/index.ts';
import { serve } from '../serve.ts';
import type { Command } from './command.ts';
import { failed } from './fault.ts';
import { noWords } from './options.ts';
import { databaseFile, existing } from './session.ts';

export const serveCommand: Command = {
  about:
    'connect to Slack and Discord (whichever has a token), log, answer, and post the digest each working morning',
  usage: 'serve',
  options: {},
  async run(args, world) {
    noWords(args, 'serve');
    const file = existing(databaseFile(args, world));
    if (!world.stopped) throw failed('fault', 'fettle serve needs a process that can be told to stop.');
    try {
      return await serve({
        file,
        environment: world.environment,
        clock: world.clock,
        stopped: world.stopped(),
      });
    } catch (fault) {
      if (fault instanceof PlatformFault) throw failed('platform', fault.message, fault);
      throw fault;
    }
  },
};
