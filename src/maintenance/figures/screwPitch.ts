/**
 * Pitch of ISO metric coarse threads, mm a turn.
 * Source: ISO 261 / ISO 262, coarse series, as printed in public thread tables.
 * Worked: one turn of an M4 screw moves 0.7 mm.
 */
export const COARSE_PITCH_MM = {
  'M1.6': 0.35, M2: 0.4, 'M2.5': 0.45, M3: 0.5, M4: 0.7, M5: 0.8, M6: 1, M8: 1.25, M10: 1.5, M12: 1.75,
} as const; // prettier-ignore
export type Thread = keyof typeof COARSE_PITCH_MM;

export const isThread = (text: string): text is Thread => Object.hasOwn(COARSE_PITCH_MM, text);
