/**
 * Stage 5b. Words that only announce a report ("I would like to report that", "can you note that", "not sure if this
 * goes here but") are set aside, so that what is reported is read as it was told and not as wished or asked.
 */
import { asSense, type Item, reworded } from './item.ts';
import { phraseReader } from './phrases.ts';

const each = (openers: string, verbs: string): string =>
  openers
    .split(', ')
    .flatMap((opener) => verbs.split(', ').map((verb) => `${opener} ${verb}`))
    .join(', ');

const WISHES =
  "i would like to, i'd like to, i want to, i wanted to, i wish to, i have to, i need to, i must, i can, i may, just wanted to, just want to, only wanted to, we would like to, we want to, i should, i am writing to, writing to, happy to, glad to, sorry to, i am happy to, i am sorry to, i regret to, i forgot to, forgot to, i am to, this is to, this is just to";
const TELLING =
  'report, inform you, tell you, let you know, mention, announce, inform, post, add, say, note, inform everybody, inform everyone, let everyone know, notify you';
const ASKING = 'can you, could you, would you, will you, can you please, could you please, please';
const NOTING =
  'note, log, record, write down, note down, put down, make a note, take note, jot down, note for me';
const HUMBLE =
  "not sure if this goes here, not sure if this belongs here, not sure whether this goes here, not sure this is the right place, not sure if this is the right place, don't know if this goes here, dunno if this goes here, not sure if this is the right channel, sorry if this is the wrong channel, sorry if this is the wrong place, hope this is the right place, i hope this is the right channel, not sure how this works, i don't know how this works, not sure who to tell, i am new here, i'm new here, new here, not sure if i should say this, not sure if anyone cares, not sure if it matters";

const READ = phraseReader({
  /** Only with "that" behind: "I want to say that", "please note that". */
  that: `${each(WISHES, TELLING)}, ${each(ASKING, NOTING)}, kindly note, note, be informed, please be informed, be advised, please be advised, it is to be noted, kindly be informed, be aware, please be aware, please know, please take note, this is to inform you, i inform you, we inform you, we regret to inform you, i report, i note, i can confirm, i confirm`,
  /** With "that" or without. */
  plain: `${each('can you, could you, can you please, could you please, please, would you', 'log, record, note, note down, write down')}, ${each("i would like to, i'd like to, i want to, i wanted to, just want to, just wanted to, i wish to, we wish to, i must, i have to, i need to, i am sorry to, i regret to, we regret to", 'log, record, report, note')}, just to let you know, just so you know, just letting you know, so you know, for your information, fyi, for the record, for the log, for info, to let you know, ${each('forgot to, i forgot to, meant to', 'post, log, say, mention, write, add, report, write down, write it down, write that down, log it, post it, note it, put it in, add it, mention it, report it, tell anyone, log this, post this, note, tell you')}`,
  humble: HUMBLE,
});

const POLITE = phraseReader({
  please:
    'i ask you kindly to, i ask you to, i kindly ask you to, i ask kindly to, i would ask you to, may i ask you to, can i ask you to, i beg you to, i request you to, be so kind to, be so kind as to, be so kind and, would you be so kind to, would you be so kind as to, could you be so kind to, could you be so kind as to, be so good as to, would you be so good as to, have the kindness to, i would be grateful if you could, i would appreciate if you could, you are kindly asked to',
});
const PLEASE = asSense({ tag: 'fn', code: 'please' });

const OPENS = /^(?:[.!?;\n,:]|\.\.\.|-|\uFFF9|so|and|but|ok|okay|hi|hello|hey|um|also|oh|well|right|now)$/u;
/** Verbs of keeping or telling that every preface holds: most messages have none, and cost nothing here. */
const MARKED =
  /\b(?:that|note|log|record|report|write|fyi|know|info|information|post|say|mention|add|tell|here|place|channel|works|matters|cares|this|ask|beg|kind|good|grateful|appreciate|request|asked|kindness)\b/u;

/** A figure, a name or a part must stand behind a preface without "that": "can you log in" announces nothing. */
const reports = (items: readonly Item[], from: number): boolean =>
  items
    .slice(from, from + 12)
    .some((item) =>
      item.senses.some(
        (s) => s.tag === 'machine' || (s.tag === 'value' && s.code !== 'bare') || s.tag === 'stranger',
      ),
    );

export function withoutPrefaces(items: readonly Item[]): readonly Item[] {
  if (items.length > LONGEST || !items.some((item) => MARKED.test(item.text))) return items;
  return unannounced(items.some((item) => ASKED.test(item.text)) ? asPlease(items) : items);
}
/** Nobody announces a message of more items than this. */
const LONGEST = 600;
const ASKED = /\b(?:ask|asked|beg|kind|kindly|good|grateful|appreciate|request|kindness)\b/u;

/** "I ask you kindly to …" is a please. */
function asPlease(items: readonly Item[]): readonly Item[] {
  const out = [...items];
  for (const { from, to } of [...POLITE(items)].reverse())
    out.splice(
      from,
      to - from,
      ...items.slice(from, from + 1).map((item) => reworded(item, 'please', [PLEASE])),
    );
  return out;
}

function unannounced(items: readonly Item[]): readonly Item[] {
  const out = [...items];
  let edge = items.length;
  for (const { code, from, to } of [...READ(items)].reverse()) {
    if (to > edge) continue;
    if (from > 0 && !OPENS.test(items[from - 1]?.text ?? '')) continue;
    const that = items[to]?.text === 'that' && items[to + 1] !== undefined;
    if (code === 'that' && !that) continue;
    if (code === 'plain' && !that && !reports(items, to)) continue;
    const but = code === 'humble' && /^(?:,|-|but|:)$/u.test(items[to]?.text ?? '');
    if (code === 'humble' && !but) continue;
    edge = from;
    unasked(out, to);
    out.splice(from, to - from + (that || but ? 1 : 0));
  }
  return out;
}

/** "can you log 4 h on cedar?": what was announced politely asks nothing. */
function unasked(items: Item[], from: number): void {
  for (let at = from; at < items.length; at += 1) {
    const item = items[at];
    if (item?.text === '?') items[at] = reworded(item, '.');
    if (item && /^[.?!;\n]$/u.test(item.text)) return;
  }
}
