/**
 * What the bot says, before any platform: lines with a little emphasis, and buttons that stand for sentences.
 * Adapters translate it; they decide nothing.
 */
import type { AskAct } from '../language/act.ts';
import type { Deed } from '../maintenance/decide/deed.ts';

/** A stretch of text. Everything that a person typed is plain text here; adapters escape it. */
export type Span = string | { bold: string };
export type Line = readonly Span[];

/** What pressing a button does: the same as a sentence would. */
export type Press =
  | { does: 'deeds'; deeds: readonly (Deed | AskAct)[] }
  | { does: 'answer'; question: string; value: string }
  /** Opens a question about a deed: until when, what was found, which one is in. */
  | { does: 'ask'; about: Deed; field: 'until' | 'found' | 'fitted' }
  /** Takes back what one message wrote. */
  | { does: 'undo'; message: string }
  /** Asks what should be different about what one message wrote. */
  | { does: 'change'; message: string }
  /** What one message wrote is taken back, and what it says since its author changed it is written instead. */
  | { does: 'reread'; message: string; text: string; saidAt: number }
  /** Nothing: an offer is turned down. */
  | { does: 'leave' };

export interface Button {
  label: string;
  press: Press;
}

export interface Item {
  text: Line;
  buttons?: readonly Button[];
}

export interface Section {
  heading?: string;
  items: readonly Item[];
  /** Short items that read well in one running line, separated by a middle dot. */
  run?: true;
}

export interface Reply {
  /** Stands before everything else: stop, first aid, held. */
  caution?: readonly Line[];
  title?: Line;
  sections: readonly Section[];
  buttons: readonly Button[];
}

export const SILENT: Reply = { sections: [], buttons: [] };

export const bold = (text: string): Span => ({ bold: text });
export const item = (...text: Span[]): Item => ({ text });
export const isSilent = (reply: Reply): boolean =>
  !reply.caution?.length && !reply.title && reply.sections.every((s) => s.items.length === 0);

/** Replies to several acts of one message, as one. Buttons keep their order; the same label is shown once. */
export function joinReplies(replies: readonly Reply[]): Reply {
  const caution = replies.flatMap((r) => r.caution ?? []);
  const title = replies.find((r) => r.title)?.title;
  const seen = new Set<string>();
  const buttons = replies
    .flatMap((r) => r.buttons)
    .filter((b) => {
      const key = b.label;
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    });
  const rest = replies.flatMap((r, i): Section[] => {
    const own = r.title && r.title !== title && i > 0 ? [{ items: [{ text: r.title }] }] : [];
    return [...own, ...r.sections];
  });
  return {
    ...(caution.length > 0 ? { caution: uniqueLines(caution) } : {}),
    ...(title ? { title } : {}),
    sections: rest,
    buttons,
  };
}

const uniqueLines = (lines: readonly Line[]): Line[] => {
  const seen = new Set<string>();
  return lines.filter((line) => {
    const key = JSON.stringify(line);
    return !seen.has(key) && Boolean(seen.add(key));
  });
};
