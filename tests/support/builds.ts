/** The eight machines of the invented demo workshop, as their sheets state them. */
import type { Build } from '../../src/maintenance/machine.ts';

const BRASS = { material: 'brass', boreMm: 0.4, mount: 'threaded' } as const;

export const BUILDS = {
  alder: {
    x: 'rods', y: 'rods', z: 'rods', rodBearing: 'ball', zDrive: 'lead-screw', screwNut: 'metal',
    belts: 'straight', feed: 'bowden', hotEnd: 'lined', bed: 'springs', bedMoves: true, nozzle: BRASS,
    printedParts: { material: 'pla' },
  },
  birch: {
    x: 'wheels', y: 'wheels', z: 'wheels', zDrive: 'lead-screw', screwNut: 'plastic', belts: 'straight',
    feed: 'bowden', hotEnd: 'lined', bed: 'springs', bedMoves: true, nozzle: BRASS,
  },
  cedar: {
    x: 'rails', y: 'rails', z: 'rails', zDrive: 'lead-screw', screwNut: 'metal', belts: 'straight',
    feed: 'direct', hotEnd: 'all-metal', hotEndMaxC: 300, bed: 'rigid', probe: true,
    nozzle: { material: 'hardened', boreMm: 0.6 },
  },
  elm: {
    x: 'rails', y: 'rails', z: 'rods', rodBearing: 'ball', zDrive: 'lead-screw', zScrews: 2, screwNut: 'metal',
    belts: 'crossed', feed: 'direct', hotEnd: 'all-metal', hotEndMaxC: 300, bed: 'rigid', probe: true,
    nozzle: BRASS, enclosed: true, filter: 'carbon', guards: true,
  },
  hazel: {
    x: 'wheels', y: 'wheels', z: 'wheels', zDrive: 'lead-screw', screwNut: 'plastic', belts: 'straight',
    feed: 'direct', bed: 'springs', bedMoves: true, nozzle: BRASS,
  },
  juniper: {
    x: 'rails', y: 'rails', z: 'rails', zDrive: 'ball-screw', zScrews: 2, zHolds: false, belts: 'straight',
    feed: 'bowden', filamentMm: 2.85, hotEnd: 'all-metal', hotEndMaxC: 290, bed: 'rigid', probe: true,
    bedHeater: 'mains', nozzle: { material: 'brass', boreMm: 0.8 },
  },
  maple: {
    x: 'rods', y: 'rods', z: 'rods', rodBearing: 'ball', zDrive: 'lead-screw', screwNut: 'metal',
    belts: 'straight', feed: 'direct', hotEnd: 'lined', bed: 'rigid', probe: true, bedMoves: true, nozzle: BRASS,
    printedParts: { material: 'petg' },
  },
  rowan: {
    x: 'wheels', y: 'wheels', z: 'wheels', zDrive: 'lead-screw', screwNut: 'plastic', belts: 'straight',
    feed: 'direct', hotEnd: 'all-metal', hotEndMaxC: 260, bed: 'springs', probe: true, bedMoves: true,
    nozzle: BRASS,
  },
} as const satisfies Record<string, Build>; // prettier-ignore
export type DemoMachine = keyof typeof BUILDS;
