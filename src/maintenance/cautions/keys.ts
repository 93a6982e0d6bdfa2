/**
 * What can hurt in a room of filament printers, one short line a hazard.
 * A line names the real thing and what to do about it; it never only tells somebody to mind themselves.
 * Judgement and common practice; the machine's manual and local rules come first. The plug in sight or pocket is what
 * 29 CFR 1910.147 (a)(2)(iii)(A) calls exclusive control of whoever does the work (reference V-O2); PTFE: R-O2.
 */
export const CAUTION_KEYS = [
  'HOT', 'UNPLUG', 'MAINS', 'MOVE', 'DROP', 'SHORT', 'SOLV', 'FUME', 'DUST', 'CUT', 'KNIFE', 'OVEN',
] as const; // prettier-ignore
export type CautionKey = (typeof CAUTION_KEYS)[number];

/** A caution as it is printed: the hazard's key and its line, worded for one machine's build. */
export interface Caution {
  key: CautionKey;
  line: string;
}

export const CAUTION_LINES: Readonly<Record<CautionKey, string>> = {
  HOT: 'Hot end and bed burn skin: wait for below 50 °C or wear heat gloves, but no gloves near turning parts.',
  UNPLUG:
    'Pull the plug and keep it in sight or in your pocket; give the supply 2 minutes before touching wiring.',
  MAINS: 'The mains side and the power supply are work for a qualified person only.',
  MOVE: 'Power off and queued jobs cancelled before fingers go near belts, wheels, gears or screws.',
  DROP: 'Prop the bed or gantry first: it can drop when the motors are off.',
  SHORT: 'Hold the heater block with a second spanner; no metal tool against the heater or sensor leads.',
  SOLV: 'Alcohol vapour catches fire: cold machine, window open, cap on, no soaked cloth left on the bed.',
  FUME: 'Browned PTFE or burnt plastic fumes, PTFE’s kill birds: air the room, do not lean in, do not heat it again.',
  DUST: 'Carbon and glass dust: vacuum it, do not blow it about; eye protection on, wash hands after.',
  CUT: 'Broken filament, chipped glass and metal swarf cut: eye protection on, and keep gloves out of the machine.',
  KNIFE: 'Blade away from the hand, the piece flat on the bench, never while it is in the machine.',
  OVEN: 'A filament dryer at the maker’s temperature, below where the plastic softens; never an oven used for food.',
};
