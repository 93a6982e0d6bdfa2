/** Filaments, and the words that say what a part that went in is made of. */
import type { Material } from '../../../maintenance/codes.ts';

const FILLED: readonly (readonly [Material, bases: string, fillers: string])[] = [
  ['pla-cf', 'pla, p l a', 'cf, carbon, carbon fibre, carbon fiber, carbon filled, carbon fibre filled, carbon fiber filled'],
  ['petg-cf', 'petg, pet, pet g, p e t g', 'cf, carbon, carbon fibre, carbon fiber, carbon filled, carbon fibre filled, carbon fiber filled'],
  ['nylon-cf', 'nylon, p a, pa, pa6, pa12, paht', 'cf, carbon, carbon fibre, carbon fiber, carbon filled, carbon fibre filled, carbon fiber filled'],
  ['nylon-gf', 'nylon, pa, pa6, pa12', 'gf, glass, glass fibre, glass fiber, glass filled, glass fibre filled, glass fiber filled'],
  ['pla-glow', 'pla, p l a', 'glow, glow in the dark, luminous, phosphorescent, gitd'],
  ['pla-wood', 'pla, p l a', 'wood, wood fill, wood filled, wooden, timber fill, woodfill'],
  ['pla-metal', 'pla, p l a', 'metal, metal fill, metal filled, copper fill, bronze fill, steel fill, iron fill, brass fill, copper filled, bronze filled, steel filled, iron filled, metallic filled, copper, bronze'],
]; // prettier-ignore

const list = (row: string): string[] => row.split(',').map((word) => word.trim());
const crossed = (bases: string, fillers: string): string =>
  list(bases)
    .flatMap((base) =>
      list(fillers).flatMap((filler) => [`${base} ${filler}`, `${base} with ${filler}`, `${filler} ${base}`]),
    )
    .join(', ');
const filled = (material: Material): string =>
  FILLED.filter(([code]) => code === material)
    .map(([, bases, fillers]) => crossed(bases, fillers))
    .join(', ');

export const MATERIAL_WORDS: Readonly<Record<Material, string>> = {
  pla: 'pla, p l a, pla+, pla plus, polylactic acid, silk pla, pla silk, matte pla, tough pla',
  petg: 'petg, pet g, pet, p e t g, p e t',
  abs: 'abs, a b s',
  asa: 'asa, a s a',
  tpu: 'tpu, t p u, t p e, tpe, flexible filament, flex filament, flexibles',
  nylon: 'nylon, pa6, pa12, polyamide',
  pc: 'pc, polycarbonate, polycarb',
  'pla-cf': `placf, ${filled('pla-cf')}`,
  'petg-cf': `petgcf, petcf, ${filled('petg-cf')}`,
  'nylon-cf': `nyloncf, pacf, pa6cf, pa12cf, cf pa, ${filled('nylon-cf')}`,
  'nylon-gf': `nylongf, pagf, pa6gf, ${filled('nylon-gf')}`,
  'pla-glow': `glow filament, glow in the dark filament, ${filled('pla-glow')}`,
  'pla-wood': `wood filament, woodfill, wood fill, ${filled('pla-wood')}`,
  'pla-metal': `metal filament, metal fill, metalfill, copper fill, bronze fill, copperfill, bronzefill, steel fill, iron fill, ${filled('pla-metal')}`,
};

/** Words of `fitted`: what the new part is made of, its make-up or size. */
export const SPEC_WORDS =
  'stiffer, softer, uprated, heavier duty, beefier, brass, hardened, hardened steel, steel, stainless, stainless steel, ruby, ruby tipped, ruby tip, plated, plated brass, coated, nickel, nickel plated, nickel plated brass, copper, plated copper, tungsten, carbide, tungsten carbide, diamond, gem, hard, bronze, titanium, bimetal, bi metal, all metal, silicone, ceramic, rubber, fibreglass, fiberglass, kevlar, steel core, glass fibre reinforced, reinforced, genuine, polycarbonate, pom, delrin, polymer, aluminium, aluminum, cht, high flow, textured, smooth, powder coated, carbon, charcoal, hepa, blue, black, red, white, yellow, clear, transparent, metal, chrome, spring steel, pei, glass, 24v, 12v, 5v, 40w, 50w, 60w, 70w, 24 v, 12 v, 5 v, 40 w, 50 w, 60 w, quiet, silent, 4010, 5015, 3010, 4020, gt2, 6mm, 9mm, 10mm, kevlar reinforced, abrasion resistant, wear resistant, hardened tool steel, tool steel, ball bearing, sleeve bearing, dual gear, magnetic';
