/** `/fettle` and the message command: what Discord is told of them, and the sentence that each stands for. */
import {
  ApplicationCommandOptionType,
  ApplicationCommandType,
  InteractionContextType,
  type APIApplicationCommandStringOption,
  type RESTPostAPIApplicationCommandsJSONBody,
} from 'discord.js';
import type { Audience } from '../../src/index.ts';

export const COMMAND = 'fettle';
export const MESSAGE_COMMAND = 'Note for the printers';
export const MACHINE = 'machine';
const WHAT = 'what';
const MOST_SAID = 1500;

export type Given = Readonly<Record<string, string>>;

interface Subcommand {
  about: string;
  options: readonly APIApplicationCommandStringOption[];
  /** Undefined: it needs more words, a form asks for them. */
  sentence(given: Given): string | undefined;
  audience: Audience;
}

const machine = (required: boolean): APIApplicationCommandStringOption => ({
  type: ApplicationCommandOptionType.String,
  name: MACHINE,
  description: 'Which machine',
  required,
  autocomplete: true,
});
const words = (description: string, required: boolean): APIApplicationCommandStringOption => ({
  type: ApplicationCommandOptionType.String,
  name: WHAT,
  description,
  required,
  max_length: MOST_SAID,
});
const about = (question: string, of: string) => ({
  options: [machine(false)],
  sentence: ({ machine }: Given) => (machine === undefined ? question : `${of} ${machine}`),
  audience: 'asker' as const,
});

/** Logs are shown to all, answers to questions only to the one who asked. */
const SUBCOMMANDS: Readonly<Record<string, Subcommand>> = {
  log: {
    about: 'Write down what was done, run, swapped or noticed; without words a form opens',
    options: [words('For example: cleared a jam, ran 6.5h', false), machine(false)],
    sentence: ({ what, machine }) =>
      what === undefined || machine === undefined ? what : `${machine}: ${what}`,
    audience: 'place',
  },
  ask: {
    about: 'Ask in your own words',
    options: [words('For example: how do I clean the feeder on birch?', true)],
    sentence: ({ what }) => what,
    audience: 'asker',
  },
  overdue: { about: 'What is overdue', ...about('what is overdue?', 'what is overdue on') },
  due: { about: 'What is due today and soon', ...about('what is due?', 'what is due on') },
  status: { about: 'How a machine stands', ...about('status', 'status of') },
  history: {
    about: 'What was done to a machine',
    options: [machine(true)],
    sentence: ({ machine }) => `history of ${machine ?? ''}`,
    audience: 'asker',
  },
  undo: { about: 'Take back what you logged last', options: [], sentence: () => 'undo', audience: 'place' },
  help: { about: 'What you can say', options: [], sentence: () => 'help', audience: 'asker' },
};

export const subcommand = (name: string): Subcommand | undefined =>
  Object.hasOwn(SUBCOMMANDS, name) ? SUBCOMMANDS[name] : undefined;

/** As Discord is told of them, in its own server only: there they are at hand at once. */
export const commandTable = (): RESTPostAPIApplicationCommandsJSONBody[] => [
  {
    type: ApplicationCommandType.ChatInput,
    name: COMMAND,
    description: 'Log and ask about the printers',
    contexts: [InteractionContextType.Guild],
    options: Object.entries(SUBCOMMANDS).map(([name, { about, options }]) => ({
      type: ApplicationCommandOptionType.Subcommand,
      name,
      description: about,
      options: [...options],
    })),
  },
  { type: ApplicationCommandType.Message, name: MESSAGE_COMMAND, contexts: [InteractionContextType.Guild] },
];
