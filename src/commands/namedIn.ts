/** Machine names as they stand in the words themselves, also where no act took them up. */
import { foldName } from '../maintenance/machine.ts';
import { answersTo } from '../maintenance/record/called.ts';
import type { ShopRecord } from '../maintenance/record/record.ts';

const WORD = /[\p{L}\p{N}]+(?:[-_][\p{L}\p{N}]+)*/gu;

/** Possessives with and without their mark: "alder's", "alders". */
const bared = (word: string): readonly string[] => [word, word.replace(/s$/u, '')];

/** Each once, in the order in which they are said. */
export function namedIn(text: string, { machines }: ShopRecord): readonly string[] {
  const byWord = new Map<string, string>();
  for (const machine of machines.values())
    for (const each of answersTo(machine)) byWord.set(each, machine.name);
  const words =
    foldName(text)
      .replace(/['’]s\b/gu, '')
      .match(WORD) ?? [];
  const found = words.flatMap((word) =>
    bared(word)
      .flatMap((each) => byWord.get(each) ?? [])
      .slice(0, 1),
  );
  return [...new Set(found)];
}

/** What stands after "from" or "on" without being a machine, and may well stand there. */
const THINGS =
  /^(?:the|a|an|my|our|its?|it|this|that|there|here|him|her|them|one|machines?|printers?|room|workshop|back|front|top|bottom|side|inside|outside|underneath|below|behind|left|right|psu|power|supply|plug|socket|wall|mains|lead|cable|wires?|wiring|connectors?|board|mainboard|electronics|bed|heater|hot|hotend|nozzle|block|cartridge|fan|fans|motor|screen|display|switch|box|case|frame|enclosure|door|extruder|feeder|head|tool|plate|filament|spool|dryer|belt|rods?|rails?|today|yesterday|now|again|me|us|you|everything|something|somewhere|fire|[\d].*)$/iu;
const AFTER =
  /\b(?:from|off|on|at|near|by|in|of|behind|under)\s+(?:(?:the|my|our|a)\s+)?([\p{L}][\p{L}'’-]*)/giu;

/** A word that stands where a machine's name would, and is none that is known. */
export function strangerIn(text: string, record: ShopRecord): string | undefined {
  const known = (word: string): boolean => namedIn(word, record).length > 0;
  return [...text.matchAll(AFTER)]
    .map(([, word = '']) => word)
    .find((word) => !THINGS.test(word.replace(/['’]s$/u, '')) && !known(word));
}
