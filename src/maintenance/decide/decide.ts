/**
 * Deciding: a deed, made once, at writing, against the record, becomes entries, a refusal or a question. Chat,
 * buttons, import and HTTP all come through here, so that they refuse alike.
 */
import { decideAmend } from './amend.ts';
import { decideSetInterval, decideStateOf } from './baseline.ts';
import type { DecideContext, Shops } from './context.ts';
import { refused, type Decision, type Written } from './decision.ts';
import type { Deed, DeedKind, DeedOf } from './deed.ts';
import { decideDone } from './done.ts';
import { repeatOf } from './duplicate.ts';
import { decideChange, decideEnrol, decideRetire } from './enrol.ts';
import { decideRelease } from './hold.ts';
import { keepersOnly } from './keeper.ts';
import { decideLoad } from './load.ts';
import { decideMeter } from './meter.ts';
import { decideClaim, decideDefer } from './plans.ts';
import { decideFind, decideHandOver, decideNote, decideTakeOver } from './reports.ts';
import { decideState } from './states.ts';
import { decideStock } from './stock.ts';
import { decideSwap } from './swap.ts';
import { decideGone, decideSymptom } from './symptoms.ts';
import { decideUndo } from './undo.ts';
import { decideUsage } from './usage.ts';

type Decider<K extends DeedKind> = (deed: DeedOf<K>, shops: Shops, context: DecideContext) => Decision;

/** One decider a kind of deed; a kind without one does not compile. */
const DECIDERS: { readonly [K in DeedKind]: Decider<K> } = {
  usage: decideUsage,
  meter: decideMeter,
  load: decideLoad,
  done: decideDone,
  swap: decideSwap,
  symptom: decideSymptom,
  gone: decideGone,
  down: decideState,
  up: decideState,
  open: decideState,
  close: decideState,
  defer: decideDefer,
  claim: decideClaim,
  stock: decideStock,
  undo: decideUndo,
  amend: decideAmend,
  release: decideRelease,
  find: decideFind,
  note: decideNote,
  handOver: decideHandOver,
  takeOver: decideTakeOver,
  state: decideStateOf,
  setInterval: decideSetInterval,
  enrol: decideEnrol,
  change: decideChange,
  retire: decideRetire,
};

/** Two computers' clocks differ a little; more than that is a message from the future. */
const CLOCK_SKEW_MS = 2 * 60_000;

export function decide(deed: Deed, shops: Shops, context: DecideContext): Decision {
  if (context.saidAt > context.now + CLOCK_SKEW_MS)
    return refused('in-future', { act: deed.kind, on: context.calendar.dateOf(context.saidAt) });
  const notAllowed = keepersOnly(deed, shops, context);
  if (notAllowed) return notAllowed;
  const decider = DECIDERS[deed.kind] as Decider<DeedKind>;
  const decision = decider(deed, shops, context);
  return decision.outcome === 'written' ? withRepetition(decision, context) : decision;
}

/** Said twice within two minutes: written all the same, and pointed out. */
function withRepetition(decision: Written, context: DecideContext): Written {
  const [draft, ...more] = decision.drafts;
  const repeated = draft && more.length === 0 ? repeatOf(draft, context) : undefined;
  if (!repeated) return decision;
  return {
    ...decision,
    flags: [...decision.flags, 'possible-duplicate'],
    notes: { ...decision.notes, duplicateOf: repeated.id },
  };
}
