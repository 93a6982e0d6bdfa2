/**
 * Filaments by what they do to a machine. Source: the vocabulary ("carbon, glass, glow and hard metal fills
 * strongly; soft metal less; wood hardly") and common practice; usual print temperatures are the middle of
 * what spools print on their labels, no single source.
 */
import { MATERIALS } from '../codes.ts';
import type { Material } from '../codes.ts';

/** How hard a filament is on what it slides through, in four steps. */
export type Harshness = 'plain' | 'slight' | 'medium' | 'strong';

export const HARSHNESS_OF: Readonly<Record<Material, Harshness>> = {
  pla: 'plain',
  petg: 'plain',
  abs: 'plain',
  asa: 'plain',
  tpu: 'plain',
  nylon: 'plain',
  pc: 'plain',
  'pla-cf': 'strong',
  'petg-cf': 'strong',
  'nylon-cf': 'strong',
  'nylon-gf': 'strong',
  'pla-glow': 'strong',
  'pla-wood': 'slight',
  'pla-metal': 'medium',
};

const USUAL_TEMPERATURE_C: Readonly<Record<Material, number>> = {
  pla: 210,
  petg: 240,
  abs: 245,
  asa: 250,
  tpu: 225,
  nylon: 255,
  pc: 275,
  'pla-cf': 220,
  'petg-cf': 250,
  'nylon-cf': 270,
  'nylon-gf': 270,
  'pla-glow': 215,
  'pla-wood': 205,
  'pla-metal': 215,
};

/** Above it a PTFE end in the hot zone ages twice as fast; common practice, well below its 260 °C limit. */
const PTFE_AGES_ABOVE_C = 230;

const where = (holds: (material: Material) => boolean): readonly Material[] => MATERIALS.filter(holds);

export const isAbrasive = (material: Material): boolean =>
  HARSHNESS_OF[material] === 'strong' || HARSHNESS_OF[material] === 'medium';
export const ABRASIVE = where(isAbrasive);
export const CARBON_OR_GLASS = where((m) => m.endsWith('-cf') || m.endsWith('-gf'));
export const HOT_FOR_PTFE = where((m) => USUAL_TEMPERATURE_C[m] > PTFE_AGES_ABOVE_C);
export const FILLED_WOOD_OR_SOFT = where((m) => m.includes('-') || m === 'tpu');
/** What a carbon filter is there for. */
export const FUMING = where((m) => /^(abs|asa|nylon|pc)/u.test(m));
/** What takes up water from the air and prints badly for it. */
export const THIRSTY = where((m) => /^(nylon|pc|tpu|petg)/u.test(m));

/**
 * From where a plain filament softens (glass transition), °C, the lower end of what data sheets give: PLA 55 to 60 and
 * PETG 75 to 85 as printed there, ABS 100, ASA 95 and PC 110 as remembered of them (reference R-O3). Filled ones soften
 * like their plastic. Nylon and TPU have none here: brackets of them bend before they creep.
 */
export const SOFTENS_FROM_C: Readonly<Record<string, number>> = {
  pla: 55,
  petg: 75,
  abs: 100,
  asa: 95,
  pc: 110,
};
/** A bracket under load creeps before it softens: it is kept 15 to 20 °C below (common practice). */
const CREEP_MARGIN_C = 20;
/** What a bracket beside motors and a warm bed gets to in an open machine, our own estimate. */
const BESIDE_MOTORS_C = 45;

/** Does a printed part of it creep even in an open machine and away from the hot end? */
export function creepsInTheOpen(material: Material): boolean {
  const softens = SOFTENS_FROM_C[material.replace(/-.*$/u, '')];
  return softens !== undefined && softens - CREEP_MARGIN_C < BESIDE_MOTORS_C;
}
