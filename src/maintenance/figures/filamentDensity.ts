/**
 * Density of filament, g/cm³, where nothing is printed on the spool.
 * Source: PLA 1.24, a resin maker's data sheet (ASTM D792); PETG 1.27, middle of the 1.25 to 1.29 of data sheets;
 * the others recalled from data sheets: common practice. Filled grades vary with base and filler, so that
 * their figure is a middle of a wide range and is called a guess in the notes.
 */
import type { Material } from '../codes.ts';

export interface Density {
  gPerCm3: number;
  /** `sheet`: from a data sheet; `usual`: common practice; `guess`: look at the spool. */
  known: 'sheet' | 'usual' | 'guess';
}

export const FILAMENT_DENSITY: Readonly<Record<Material, Density>> = {
  pla: { gPerCm3: 1.24, known: 'sheet' },
  petg: { gPerCm3: 1.27, known: 'sheet' },
  abs: { gPerCm3: 1.04, known: 'usual' },
  asa: { gPerCm3: 1.07, known: 'usual' },
  tpu: { gPerCm3: 1.21, known: 'usual' },
  nylon: { gPerCm3: 1.12, known: 'usual' },
  pc: { gPerCm3: 1.2, known: 'usual' },
  'pla-cf': { gPerCm3: 1.29, known: 'guess' },
  'petg-cf': { gPerCm3: 1.3, known: 'guess' },
  'nylon-cf': { gPerCm3: 1.17, known: 'guess' },
  'nylon-gf': { gPerCm3: 1.3, known: 'guess' },
  'pla-glow': { gPerCm3: 1.4, known: 'guess' },
  'pla-wood': { gPerCm3: 1.15, known: 'guess' },
  'pla-metal': { gPerCm3: 2.5, known: 'guess' },
};
