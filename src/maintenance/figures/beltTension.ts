/**
 * Belt tension from the pitch of a plucked span.
 *
 * Equation: T = 4 m L² f². T: tension, N. m: mass of the belt per length, kg/m. L: free span between the
 * points where the belt is held, m. f: lowest frequency of the plucked span, Hz.
 * Ranges: massKgPerM 0.002 to 0.1, spanMm 30 to 2000, frequencyHz 5 to 1000. Outside: refused, with the reason.
 * Source: a belt maker's sonic tension meter manual, T = 4 S² M W f² 1e-9 with S in mm, M in g/m per mm of
 * width, W in mm: the same in other units. The ideal string is assumed: a belt has stiffness, so the real
 * tension is lower than the figure, most on short spans (same manual).
 * Worked: m = 0.0084, L = 0.15 m, f = 80 Hz: 4 x 0.0084 x 0.0225 x 6400 = 4.838 N.
 */
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure, Range } from './figure.ts';

/**
 * Mass of a 2 mm pitch glass-fibre belt, g per metre and mm of width. Common practice, recalled from a
 * belt manual's table; 1.2 to 1.5 is plausible. Weighing one metre is better.
 */
export const USUAL_BELT_G_PER_M_PER_MM = 1.4;

export const MASS: Range = { name: 'belt mass', unit: 'kg/m', min: 0.002, max: 0.1 };
export const SPAN: Range = { name: 'span', unit: 'mm', min: 30, max: 2000 };
const FREQUENCY: Range = { name: 'frequency', unit: 'Hz', min: 5, max: 1000 };
const WIDTH: Range = { name: 'belt width', unit: 'mm', min: 3, max: 25 };
/** Below this the belt's stiffness makes the reading clearly too high: common practice, no source. */
const SHORT_SPAN_MM = 100;

export const TENSION_SOURCE = 'belt maker’s sonic tension meter manual: T = 4 m L² f²';

export interface PluckedSpan {
  massKgPerM: number;
  spanMm: number;
  frequencyHz: number;
}

/** Mass per length of a belt of the usual kind, kg/m, from its width in mm (3 to 25). */
export function beltMass(widthMm: number, gPerMPerMm: number = USUAL_BELT_G_PER_M_PER_MM): Figure<number> {
  const reason = firstOutside(
    [widthMm, WIDTH],
    [gPerMPerMm, { name: 'belt mass per mm of width', unit: 'g/m', min: 0.5, max: 10 }],
  );
  if (reason !== undefined) return refuse(reason);
  const value = (widthMm * gPerMPerMm) / 1000;
  return {
    ok: true,
    value,
    working: `${shown(widthMm)} mm x ${shown(gPerMPerMm)} g/m per mm = ${shown(value * 1000)} g/m`,
    source: 'common practice, no source: weigh one metre if you can',
    notes: [],
  };
}

export function spanNotes(spanMm: number): readonly string[] {
  return spanMm < SHORT_SPAN_MM
    ? ['Short span: the belt’s stiffness raises the pitch, the real tension is lower. Pluck a longer span.']
    : ['The belt’s stiffness raises the pitch a little: the real tension is somewhat lower.'];
}

/** Tension of a plucked span, N. */
export function tensionFromPitch({ massKgPerM, spanMm, frequencyHz }: PluckedSpan): Figure<number> {
  const reason = firstOutside([massKgPerM, MASS], [spanMm, SPAN], [frequencyHz, FREQUENCY]);
  if (reason !== undefined) return refuse(reason);
  const spanM = spanMm / 1000;
  const value = 4 * massKgPerM * spanM ** 2 * frequencyHz ** 2;
  return {
    ok: true,
    value,
    working: `4 x ${shown(massKgPerM)} kg/m x (${shown(spanM)} m)² x (${shown(frequencyHz)} Hz)² = ${shown(value)} N`,
    source: TENSION_SOURCE,
    notes: spanNotes(spanMm),
  };
}
