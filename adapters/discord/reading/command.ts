/** A command as words, or as the note of a colleague's message. */
import {
  ApplicationCommandOptionType,
  ApplicationCommandType,
  type APIApplicationCommandAutocompleteInteraction,
  type APIApplicationCommandInteraction,
  type APIApplicationCommandInteractionDataBasicOption,
} from 'discord.js';
import type { Audience, What } from '../../../src/index.ts';
import { COMMAND, MACHINE, MESSAGE_COMMAND, subcommand, type Given } from '../commandTable.ts';
import { byAPerson, namesIn, speakerOf, type Lookup, type Us } from './message.ts';
import { unmark } from './unmark.ts';

export type ReadCommand =
  | { kind: 'say'; what: What; audience: Audience }
  /** Too few words: open the log form. */
  | { kind: 'form'; values: Given }
  /** Not ours, or nothing in it: told to the asker alone. */
  | { kind: 'no'; why: string };

export function readCommand({ data }: APIApplicationCommandInteraction, us: Us, lookup: Lookup): ReadCommand {
  if (data.type === ApplicationCommandType.Message && data.name === MESSAGE_COMMAND)
    return noted(data.resolved.messages[data.target_id], us, lookup);
  if (data.type !== ApplicationCommandType.ChatInput || data.name !== COMMAND) return unknownCommand;
  const [sub] = data.options ?? [];
  if (sub?.type !== ApplicationCommandOptionType.Subcommand) return unknownCommand;
  const command = subcommand(sub.name);
  if (!command) return unknownCommand;
  const given = givenIn(sub.options ?? []);
  const text = command.sentence(given);
  if (text === undefined) return { kind: 'form', values: given };
  return { kind: 'say', what: { kind: 'command', text }, audience: command.audience };
}

const unknownCommand: ReadCommand = {
  kind: 'no',
  why: 'This command has changed. Say it in your own words, or try /fettle help.',
};

type Target = Parameters<typeof speakerOf>[0];

function noted(message: Target | undefined, us: Us, lookup: Lookup): ReadCommand {
  if (!message || !byAPerson(message))
    return { kind: 'no', why: 'Not noted: only what a person wrote can be logged.' };
  const text = unmark(message.content, namesIn(message, us, lookup), message.id);
  if (text === '') return { kind: 'no', why: 'Not noted: there are no words in this message.' };
  return {
    kind: 'say',
    what: { kind: 'said', text, message: message.id, author: speakerOf(message) },
    audience: 'place',
  };
}

type Option = APIApplicationCommandInteractionDataBasicOption;
const givenIn = (options: readonly Option[]): Given =>
  Object.fromEntries(
    options
      .map((option): [string, string] => [
        option.name,
        option.type === ApplicationCommandOptionType.String ? option.value.trim() : '',
      ])
      .filter(([, value]) => value !== ''),
  );

/** What has been typed so far of a machine's name; undefined: something else is asked for. */
export function typedMachine({ data }: APIApplicationCommandAutocompleteInteraction): string | undefined {
  if (data.type !== ApplicationCommandType.ChatInput) return undefined;
  const options = (data.options ?? []).flatMap((option) =>
    option.type === ApplicationCommandOptionType.Subcommand ? (option.options ?? []) : [],
  );
  const typed = options.find((option) => 'focused' in option && option.focused);
  return typed?.name === MACHINE && typed.type === ApplicationCommandOptionType.String
    ? typed.value
    : undefined;
}
