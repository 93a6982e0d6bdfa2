/** "False alarm on juniper": what the refusal and the stop answer ask for, said instead of pressed. */
import type { Act } from '../language/act.ts';
import { ROOM } from '../maintenance/codes.ts';
import type { Deed } from '../maintenance/decide/deed.ts';
import { asksFinding } from '../maintenance/record/reasons.ts';
import type { Scene } from './scene.ts';
import { deedsOf } from './step.ts';

const SAID = /\bfalse alarms?\b/iu;
/** Not one, or nobody knows yet: the machine stays held until someone has looked. */
const IN_DOUBT =
  /\b(?:not?|never|isn['’]?t|wasn['’]?t|hardly|if|whether|may|might|could|maybe|perhaps|probably|possibly|likely|think|hope|guess|suppose|seems?|looks?|unless)\b[^.!?,;:]{0,25}\bfalse alarm|\bfalse alarm[^.!?;:]{0,12}\b(?:maybe|perhaps|probably|possibly|i (?:think|hope|guess)|or not)\b/iu;

/** Read as putting right or taking back when nobody knows that a hold is spoken of. */
const MEANS_THE_HOLD: ReadonlySet<Act['kind']> = new Set<Act['kind']>([
  'amend',
  'undo',
  'gone',
  'up',
  'unclear',
]);

/** The message's deeds with the hold lifted; undefined when it speaks of no false alarm, or of no held machine. */
export function falseAlarm({ message, reading, record, conversation }: Scene): Deed[] | undefined {
  const { text } = message;
  if (!SAID.test(text) || IN_DOUBT.test(text) || text.includes('?') || reading.injury) return undefined;
  if (reading.safety.some((mention) => mention.asserted)) return undefined;
  const held = [...record.machines.values()].filter((machine) => machine.hold).map((machine) => machine.name);
  const named = reading.acts.flatMap(({ act }) =>
    'machine' in act && act.machine !== undefined ? [act.machine] : [],
  );
  const spoken = [...named, ...(reading.bare?.machines ?? [])];
  const meant = spoken.length > 0 ? spoken.filter(isMachine) : meantOf(held, conversation.lastMachine);
  if (meant.length === 0 && held.length < 2) return undefined;
  const others = reading.acts.map(({ act }) => act).filter((act) => !MEANS_THE_HOLD.has(act.kind));
  const told = { after: afterwards(text), ...(saysMore(text) ? { whole: text.trim() } : {}) };
  const names = meant.length > 0 ? [...new Set(meant)] : [undefined];
  return [...names.map((name) => released(name, record, told)), ...deedsOf(others)];
}

const isMachine = (name: string): boolean => name !== ROOM;
/** Without a machine it is asked which. */
function released(
  machine: string | undefined,
  { machines }: Scene['record'],
  { whole, after }: { whole?: string; after: string | undefined },
): Deed {
  const hold = machine === undefined ? undefined : machines.get(machine)?.hold;
  const asks = hold !== undefined && asksFinding(hold);
  // where the symptom asks for what was found, all that was said is kept
  const found = asks ? (whole ?? after) : after;
  return {
    kind: 'release',
    falseAlarm: true,
    ...(machine === undefined ? {} : { machine }),
    ...(found === undefined ? {} : { found }),
  };
}

/** "False alarm, it was the toaster": what it was stands after a comma. */
const afterwards = (text: string): string | undefined =>
  /\bfalse alarms?\b[^,:;–—-]{0,30}[,:;–—-]\s*(\S+(?:\s+\S+)+?)[.!\s]*$/iu.exec(text)?.[1];

/** What was found stands beside the two words: "…, the meter shows nothing, it was static". */
const MORE_WORDS = 6;
const saysMore = (text: string): boolean => text.trim().split(/\s+/u).length > MORE_WORDS;

/** Nobody named a machine: the one that was spoken of, or the only one that is held. */
function meantOf(held: readonly string[], lastMachine: string | undefined): readonly string[] {
  if (lastMachine !== undefined && held.includes(lastMachine)) return [lastMachine];
  return held.length === 1 ? held : [];
}
