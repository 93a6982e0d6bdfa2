/** Builds of every kind, each feature stated or not. */
import * as fc from 'fast-check';
import type { Build } from '../../../src/maintenance/machine.ts';

const guide = fc.constantFrom('rods' as const, 'rails' as const, 'wheels' as const);

export const someBuild: fc.Arbitrary<Build> = fc.record(
  {
    x: guide,
    y: guide,
    z: guide,
    rodBearing: fc.constantFrom('ball' as const, 'bronze' as const, 'polymer' as const),
    zDrive: fc.constantFrom('lead-screw' as const, 'ball-screw' as const, 'belt' as const),
    zHolds: fc.boolean(),
    zScrews: fc.constantFrom(1, 2, 3),
    screwNut: fc.constantFrom('metal' as const, 'plastic' as const),
    screwNutLubricant: fc.constant('silicone grease'),
    belts: fc.constantFrom('straight' as const, 'crossed' as const, 'none' as const),
    feed: fc.constantFrom('bowden' as const, 'direct' as const),
    guideTube: fc.boolean(),
    hotEnd: fc.constantFrom('lined' as const, 'all-metal' as const),
    hotEndMaxC: fc.constantFrom(230, 260, 300),
    nozzle: fc.record(
      { mount: fc.constantFrom('threaded' as const, 'one-piece' as const, 'quick-change' as const) },
      { requiredKeys: [] },
    ),
    bed: fc.constantFrom('springs' as const, 'rigid' as const),
    probe: fc.boolean(),
    bedMoves: fc.boolean(),
    bedHeater: fc.constantFrom('low-voltage' as const, 'mains' as const, 'none' as const),
    printedParts: fc.constantFrom('none' as const, { material: 'pla' as const }),
    enclosed: fc.boolean(),
    filter: fc.constantFrom('carbon' as const, 'particle' as const, 'both' as const, 'none' as const),
    sock: fc.boolean(),
    filamentSensor: fc.boolean(),
    guards: fc.boolean(),
  },
  { requiredKeys: [] },
);
