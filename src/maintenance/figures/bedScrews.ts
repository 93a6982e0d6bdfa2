/**
 * How far each bed screw must be turned to bring the bed level with a reference screw.
 *
 * Equation: delta = z(screw) - z(reference) on the fitted plane (`bedPlane.ts`), turns = delta / pitch.
 * Parameters: points of the plane; screws: their places, mm, at least two; reference: index of the screw that
 * stays; thread: ISO coarse (`screwPitch.ts`). Positive: the bed is high there, so that corner must come down.
 * Which way round a knob lowers a corner depends on the machine: the figure gives the amount only.
 * Outside those ranges, or a reference that is no screw: refused, with the reason.
 * Source: least-squares plane; ISO 261 pitch.
 * Worked: three points on M3 screws, heights 0.08, -0.06, 0.02, first as reference: 0, -0.28, -0.12 turns.
 */
import { fitBedPlane, heightAt, PLACE } from './bedPlane.ts';
import type { BedPlane, BedPoint } from './bedPlane.ts';
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure } from './figure.ts';
import { COARSE_PITCH_MM } from './screwPitch.ts';
import type { Thread } from './screwPitch.ts';

export interface BedScrew {
  x: number;
  y: number;
}
export interface ScrewTurn {
  /** Height of the bed there above that at the reference, mm. */
  deltaMm: number;
  turns: number;
  degrees: number;
  /** The same as minutes on a clock face: a quarter turn is 15. */
  clockMinutes: number;
}
export interface BedScrews {
  plane: BedPlane;
  turns: readonly ScrewTurn[];
}

/** More left over than this, mm, and turning screws will not make the bed flat: common practice, no source. */
const BENT_MM = 0.1;

function turnOf(deltaMm: number, pitchMm: number): ScrewTurn {
  const turns = deltaMm / pitchMm;
  return { deltaMm, turns, degrees: turns * 360, clockMinutes: turns * 60 };
}

function unfit(screws: readonly BedScrew[], reference: number): string | undefined {
  if (screws.length < 2) return 'Give the places of at least two screws.';
  if (screws[reference] === undefined)
    return `There is no screw ${reference + 1}: ${screws.length} were given.`;
  return firstOutside(...screws.flatMap(({ x, y }) => [[x, PLACE] as const, [y, PLACE] as const]));
}

/** Turns of each screw, in the order given; the reference's is zero. */
export function bedScrewTurns(
  points: readonly BedPoint[],
  screws: readonly BedScrew[],
  reference: number,
  thread: Thread,
): Figure<BedScrews> {
  const plane = fitBedPlane(points);
  if (!plane.ok) return plane;
  const reason = unfit(screws, reference);
  const base = screws[reference];
  if (reason !== undefined || base === undefined) return refuse(reason ?? 'There is no such screw.');
  const level = heightAt(plane.value, base.x, base.y);
  const pitch = COARSE_PITCH_MM[thread];
  const turns = screws.map(({ x, y }, index) =>
    turnOf(index === reference ? 0 : heightAt(plane.value, x, y) - level, pitch),
  );
  return {
    ok: true,
    value: { plane: plane.value, turns },
    working: turns
      .map(
        (turn, index) =>
          `screw ${index + 1}: ${shown(turn.deltaMm)} mm / ${pitch} mm = ${shown(turn.turns)} turns`,
      )
      .join('; '),
    source: 'least-squares plane; pitch of ISO 261 coarse threads',
    notes: [
      'Positive: the bed is high there. Which way to turn depends on the machine.',
      ...(plane.value.rms > BENT_MM
        ? [`${shown(plane.value.rms)} mm is left over: the bed or plate is not flat.`]
        : []),
    ],
  };
}
