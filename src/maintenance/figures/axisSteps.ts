/**
 * Steps per mm of an axis that a belt or a screw drives.
 *
 * Equation: steps per mm = full steps a turn x microsteps / travel a turn; the travel of a belt is its pitch
 * times the pulley's teeth, that of a screw its lead (pitch x starts).
 * Parameters: fullSteps 20 to 800 (usually 200 or 400), microsteps 1 to 256, beltPitchMm 1 to 10, teeth 8 to 120,
 * leadMm 0.2 to 50. Whole numbers where things are counted. Outside: refused, with the reason.
 * Source: geometry.
 * Worked: 200 x 16 / (2 mm x 20 teeth) = 80; 200 x 16 / 8 mm lead = 400.
 */
import { firstOutside, refuse, shown } from './figure.ts';
import type { Figure } from './figure.ts';

export interface Motor {
  fullSteps: number;
  microsteps: number;
}

function uncounted(counted: Readonly<Record<string, number>>): string | undefined {
  const odd = Object.entries(counted).find(([, value]) => !Number.isInteger(value));
  return odd === undefined ? undefined : `${odd[0]} must be a whole number, not ${shown(odd[1])}.`;
}

function motorUnfit({ fullSteps, microsteps }: Motor): string | undefined {
  return (
    firstOutside(
      [fullSteps, { name: 'motor', unit: 'full steps a turn', min: 20, max: 800 }],
      [microsteps, { name: 'driver setting', unit: 'microsteps', min: 1, max: 256 }],
    ) ?? uncounted({ 'Full steps': fullSteps, Microsteps: microsteps })
  );
}

function perMm({ fullSteps, microsteps }: Motor, travelMm: number, travel: string): Figure<number> {
  const value = (fullSteps * microsteps) / travelMm;
  return {
    ok: true,
    value,
    working: `${fullSteps} x ${microsteps} / ${travel} = ${shown(value)} steps per mm`,
    source: 'geometry: steps a turn over travel a turn',
    notes: [],
  };
}

/** Steps per mm of a belt axis. */
export function beltAxisSteps(motor: Motor, beltPitchMm: number, teeth: number): Figure<number> {
  const reason =
    motorUnfit(motor) ??
    firstOutside(
      [beltPitchMm, { name: 'belt pitch', unit: 'mm', min: 1, max: 10 }],
      [teeth, { name: 'pulley', unit: 'teeth', min: 8, max: 120 }],
    ) ??
    uncounted({ Teeth: teeth });
  if (reason !== undefined) return refuse(reason);
  return perMm(motor, beltPitchMm * teeth, `(${shown(beltPitchMm)} mm x ${teeth} teeth)`);
}

/** Steps per mm of a screw axis; `leadMm` is the travel of one turn: pitch times starts. */
export function screwAxisSteps(motor: Motor, leadMm: number): Figure<number> {
  const reason =
    motorUnfit(motor) ?? firstOutside([leadMm, { name: 'lead', unit: 'mm a turn', min: 0.2, max: 50 }]);
  if (reason !== undefined) return refuse(reason);
  return perMm(motor, leadMm, `${shown(leadMm)} mm`);
}
