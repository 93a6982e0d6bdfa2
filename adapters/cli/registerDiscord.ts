import { PlatformFault } from '../../src/index.ts';
import { registerCommands } from '../discord/index.ts';
import type { Command } from './command.ts';
import { failed } from './fault.ts';
import { print } from './output.ts';

const silent = { info: () => undefined, warn: () => undefined, error: () => undefined };

export const registerDiscord: Command = {
  about: 'tell your Discord server of /fettle; once, and again after an update',
  usage: 'register-discord',
  options: {},
  async run(_, { environment, output }) {
    try {
      const { guild, commands } = await registerCommands({ environment, log: silent });
      print(output, { guild, commands }, `Registered in server ${guild}: ${commands.join(', ')}.`);
      return 0;
    } catch (cause) {
      if (cause instanceof PlatformFault) throw failed('discord', cause.message, cause);
      throw cause;
    }
  },
};
