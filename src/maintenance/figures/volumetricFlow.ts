/**
 * Volume of plastic a second that a printed line asks of the hot end.
 *
 * Equation: rectangle: w h v; rounded: ((w - h) h + π (h / 2)²) v. w: line width, mm. h: layer height, mm. v: speed, mm/s.
 * Ranges: widthMm 0.1 to 3, heightMm 0.02 to 2 and not above the width, speedMmS 1 to 1000. Outside: refused, with the reason.
 * Source: geometry; the rounded section is the usual one of open slicers' documents (common practice).
 * Worked: 0.45 x 0.2 mm at 50 mm/s: rectangle 4.5 mm³/s, rounded 4.071 mm³/s.
 */
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure } from './figure.ts';

export type LineSection = 'rectangle' | 'rounded';
export interface PrintedLine {
  widthMm: number;
  heightMm: number;
  speedMmS: number;
}

const AREA: Readonly<Record<LineSection, (width: number, height: number) => number>> = {
  rectangle: (width, height) => width * height,
  rounded: (width, height) => (width - height) * height + Math.PI * (height / 2) ** 2,
};

/** Flow of a line, mm³/s, with the cross-section said in the working. */
export function volumetricFlow(line: PrintedLine, section: LineSection = 'rectangle'): Figure<number> {
  const { widthMm, heightMm, speedMmS } = line;
  const reason = firstOutside(
    [widthMm, { name: 'line width', unit: 'mm', min: 0.1, max: 3 }],
    [heightMm, { name: 'layer height', unit: 'mm', min: 0.02, max: 2 }],
    [speedMmS, { name: 'speed', unit: 'mm/s', min: 1, max: 1000 }],
  );
  if (reason !== undefined) return refuse(reason);
  if (heightMm > widthMm) return refuse('A layer cannot be higher than its line is wide.');
  const area = AREA[section](widthMm, heightMm);
  const value = area * speedMmS;
  return {
    ok: true,
    value,
    working: `${section} section ${shown(area)} mm² x ${shown(speedMmS)} mm/s = ${shown(value)} mm³/s`,
    source: section === 'rectangle' ? 'geometry' : 'geometry; rounded section as slicers document it',
    notes: [],
  };
}
