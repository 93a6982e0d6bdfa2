/** The screws that lift the bed or the gantry. */
import { when } from './builds.ts';
import { rule } from './rule.ts';
import type { Rule, RuleFacts } from './rule.ts';
import { BACK_AFTER_A_MONTH, days, doneBefore, hours, seen, swapped } from './words.ts';

/** Grease that the nut's own maker names stays where it is. */
const noGreaseNamed = ({ build }: RuleFacts): boolean => build.screwNutLubricant === undefined;

export const Z: readonly Rule[] = [
  rule({
    task: 'grease-screw',
    applies: (build) => when(build.zDrive === 'lead-screw' && build.screwNut === 'metal'),
    every: [hours(500), days(180)],
    raisedBy: [...seen('z-banding', 'squeak', 'rough-motion'), ...swapped('lead-screw'), BACK_AFTER_A_MONTH],
    remedies: ['replace-screw-nut'],
    class: 'print quality',
    minutes: 10,
    opening: 'cold-unplugged',
    note: 'Wipe, thin film.',
  }),
  rule({
    task: 'grease-ball-screw',
    applies: (build) => when(build.zDrive === 'ball-screw'),
    every: [hours(500), days(180)],
    raisedBy: [...seen('rough-motion', 'grinding'), BACK_AFTER_A_MONTH],
    remedies: ['replace-lead-screw'],
    class: 'print quality',
    minutes: 15,
    opening: 'cold-unplugged',
    source: 'manual',
    note: 'The axis can fall: prop it.',
  }),
  rule({
    task: 'clean-screw',
    applies: (build) => {
      if (build.zDrive !== 'lead-screw') return 'no';
      if (build.screwNut === undefined)
        return { assumed: 'The nut is not stated: taken as plastic, wiped without grease.' };
      return when(build.screwNut === 'plastic');
    },
    every: [days(90)],
    raisedBy: [
      ...seen('z-banding', 'squeak'),
      ...doneBefore('grease-screw', 'grease-ball-screw').map((raise) => ({ ...raise, only: noGreaseNamed })),
    ],
    remedies: ['replace-screw-nut'],
    class: 'print quality',
    minutes: 5,
    opening: 'cold-unplugged',
    note: "No grease: it can degrade the plastic and holds grit; unless the nut's maker names one and the workshop states it.",
  }),
];
