/** Wiring, mains, protection, guards, filters: what keeps people out of harm's way. */
import { SAFETY_SYMPTOMS } from '../codes.ts';
import { always, hasCarbonFilter, hasParticleFilter, leadsFlex, when } from './builds.ts';
import { FUMING } from './materials.ts';
import { rule } from './rule.ts';
import type { Rule, RuleFacts, Term } from './rule.ts';
import { days, doneBefore, hours, newOrMoved, seen, swapped } from './words.ts';

const filterEvery = ({ build }: RuleFacts): readonly Term[] => [
  ...(hasCarbonFilter(build) ? [days(180), hours(300, FUMING)] : []),
  ...(hasParticleFilter(build) ? [days(365), hours(1000)] : []),
];

export const ELECTRICS: readonly Rule[] = [
  rule({
    task: 'check-wiring',
    applies: always,
    every: ({ build }) => (leadsFlex(build) ? [days(60), hours(500)] : [days(90)]),
    once: newOrMoved(50),
    raisedBy: seen(
      'temperature-swing', 'no-heat', 'bed-no-heat', 'error-shutdown', 'power-lost', 'homing-failed', 'crash',
      ...SAFETY_SYMPTOMS,
    ), // prettier-ignore
    mendedBy: ['wiring'],
    class: 'safety',
    minutes: 15,
    opening: 'cold-unplugged',
    note: 'Unplugged; look, do not pull. Brown or soft: stop.',
  }),
  rule({
    task: 'test-protection',
    applies: always,
    every: [days(365)],
    raisedBy: [
      { when: { started: true } },
      ...doneBefore('update-firmware'),
      ...swapped('control-board', 'heater', 'thermistor'),
    ],
    class: 'safety',
    minutes: 10,
    opening: 'powered-hands-clear',
    note: 'As the maker describes, attended, by a keeper.',
  }),
  rule({
    task: 'check-mains-lead',
    applies: always,
    every: [days(365)],
    raisedBy: seen('moved', 'shock', 'power-lost'),
    class: 'safety',
    minutes: 5,
    opening: 'cold-unplugged',
    source: 'local rules',
    note: 'From outside only; testing by a competent person.',
  }),
  rule({
    task: 'check-guards',
    applies: (build) => when(build.guards === true),
    every: [days(90)],
    raisedBy: swapped('wiring', 'power-supply', 'control-board', 'board-fan', 'door'),
    mendedBy: ['door'],
    class: 'safety',
    minutes: 3,
    opening: 'powered-hands-clear',
  }),
  rule({
    task: 'replace-filter',
    part: 'filter',
    applies: (build) => when(hasCarbonFilter(build) || hasParticleFilter(build)),
    every: filterEvery,
    faster: { while: FUMING, every: [days(90)], only: hasCarbonFilter },
    raisedBy: seen('plastic-smell').map((raise) => ({
      ...raise,
      only: ({ build }) => hasCarbonFilter(build),
    })),
    class: 'safety',
    minutes: 5,
    spare: 'filter',
    opening: 'cold-unplugged',
    note: 'Bag it. Never raised by a burning smell.',
  }),
];
