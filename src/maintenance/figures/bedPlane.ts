/**
 * The plane that fits a bed's measured heights best.
 *
 * Equation: z = a x + b y + c, least squares over the points (x, y, z); solved about their mean, where the
 * normal equations are a Sxx + b Sxy = Sxz and a Sxy + b Syy = Syz.
 * Parameters: x, y: mm, -2000 to 2000. z: height of the bed, mm, -20 to 20, positive is high. At least three points.
 * Outside, fewer than three, or all on one line (rank below 2): refused, with the reason.
 * Source: ordinary least squares, any text on linear regression.
 * Worked: (50, 50, 0.08), (250, 50, -0.06), (150, 250, 0.02): a = -0.0007, b = 0.00005, c = 0.1125.
 */
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure, Range } from './figure.ts';

export interface BedPoint {
  x: number;
  y: number;
  z: number;
}
export interface BedPlane {
  a: number;
  b: number;
  c: number;
  /** Root of the mean square of what the plane leaves over, mm: a bent bed leaves much. */
  rms: number;
}

export const PLACE: Range = { name: 'position', unit: 'mm', min: -2000, max: 2000 };
const HEIGHT: Range = { name: 'height', unit: 'mm', min: -20, max: 20 };
/** Points count as on one line when their spread across it is below a thousandth of that along it. */
const LINE_SHARE = 1e-6;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

function unfit(points: readonly BedPoint[]): string | undefined {
  if (points.length < 3) return 'A plane needs the heights of at least three points.';
  return firstOutside(
    ...points.flatMap(({ x, y, z }) => [[x, PLACE] as const, [y, PLACE] as const, [z, HEIGHT] as const]),
  );
}

function slopes(points: readonly BedPoint[], middle: BedPoint): { a: number; b: number } | undefined {
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0];
  for (const point of points) {
    const [x, y, z] = [point.x - middle.x, point.y - middle.y, point.z - middle.z];
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xz += x * z;
    yz += y * z;
  }
  const determinant = xx * yy - xy * xy;
  if (determinant <= LINE_SHARE * (xx + yy) ** 2) return undefined;
  return { a: (xz * yy - yz * xy) / determinant, b: (yz * xx - xz * xy) / determinant };
}

export const heightAt = ({ a, b, c }: BedPlane, x: number, y: number): number => a * x + b * y + c;

/** The plane through a bed's heights: slopes a and b (mm a mm), height c at the origin (mm), and what is left over. */
export function fitBedPlane(points: readonly BedPoint[]): Figure<BedPlane> {
  const reason = unfit(points);
  if (reason !== undefined) return refuse(reason);
  const middle = {
    x: mean(points.map((p) => p.x)),
    y: mean(points.map((p) => p.y)),
    z: mean(points.map((p) => p.z)),
  };
  const slope = slopes(points, middle);
  if (slope === undefined) return refuse('The points lie on one line: measure one well off to the side.');
  const flat: BedPlane = { ...slope, c: middle.z - slope.a * middle.x - slope.b * middle.y, rms: 0 };
  const rms = Math.sqrt(mean(points.map((p) => (p.z - heightAt(flat, p.x, p.y)) ** 2)));
  return {
    ok: true,
    value: { ...flat, rms },
    working: `z = ${shown(flat.a)} x + ${shown(flat.b)} y + ${shown(flat.c)}; left over ${shown(rms)} mm`,
    source: 'least-squares plane',
    notes: [],
  };
}
