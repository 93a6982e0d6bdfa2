/** The options that every subcommand shares, and their checks. */
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { usage } from './fault.ts';

export type OptionTable = NonNullable<ParseArgsConfig['options']>;

export const SHARED: OptionTable = {
  help: { type: 'boolean', short: 'h' },
  db: { type: 'string' },
  json: { type: 'boolean' },
  now: { type: 'string' },
};

export interface Arguments {
  flag(name: string): boolean;
  text(name: string): string | undefined;
  positionals: readonly string[];
}

/** Throws a usage fault that names the word it did not know. */
export function readArguments(words: readonly string[], own: OptionTable): Arguments {
  try {
    const { values, positionals } = parsed(words, own);
    const empty = Object.entries(values).find(
      ([, value]) => typeof value === 'string' && value.trim() === '',
    );
    if (empty) throw new Error(`The option --${empty[0]} needs a value`);
    return {
      flag: (name) => values[name] === true,
      text: (name) => {
        const value = values[name];
        return typeof value === 'string' ? value : undefined;
      },
      positionals,
    };
  } catch (cause) {
    const said = cause instanceof Error ? cause.message.split('. ')[0] : String(cause);
    throw usage(`${said}. See fettle --help.`);
  }
}

const parsed = (words: readonly string[], own: OptionTable) =>
  parseArgs({
    args: [...words],
    options: { ...SHARED, ...own },
    allowPositionals: true,
    strict: true,
  });

/** For a command that takes options only. */
export function noWords({ positionals }: Arguments, name: string): void {
  const [first] = positionals;
  if (first !== undefined)
    throw usage(`fettle ${name} takes no further word; what is "${first}"? See fettle --help.`);
}
