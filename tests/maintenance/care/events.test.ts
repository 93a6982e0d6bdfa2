/** After what a single look comes, what makes a task graver, and who sets an interval: by hand, both ways. */
import { describe, expect, it } from 'vitest';
import { RULES } from '../../../src/maintenance/care/index.ts';
import type { Event, Rule } from '../../../src/maintenance/care/rule.ts';

const word = (event: Event): string => {
  if ('started' in event) return 'new';
  if ('swapped' in event) return `new ${event.swapped}`;
  if ('symptom' in event) return `${event.symptom}${event.part === undefined ? '' : ` of ${event.part}`}`;
  throw new Error('not an event of these columns');
};
const told = (words: (rule: Rule) => readonly string[]): Record<string, string> =>
  Object.fromEntries(
    RULES.flatMap((rule) => {
      const said = words(rule);
      return said.length > 0 ? [[rule.task, said.join(' | ')]] : [];
    }),
  );

describe('the care table’s columns that no interval shows', () => {
  it('once: a look some hours after an event', () =>
    expect(told((rule) => rule.once.map(({ after, hours }) => `${word(after)} ${hours} h`))).toEqual({
      'check-wheels': 'new 20 h',
      'tighten-pulleys': 'new 20 h | new motor 20 h | new pulley 20 h | new coupler 20 h',
      'check-fasteners': 'new 20 h | moved 20 h',
      'tension-belts': 'new x-belt 50 h | new y-belt 50 h | new belt 50 h',
      'check-wiring': 'new 50 h | moved 50 h',
      'run-in':
        'new 20 h | moved 20 h | new rod 20 h | new rail 20 h | new lead-screw 20 h | new 50 h | moved 50 h | new rod 50 h | new rail 50 h | new lead-screw 50 h',
    }));
  it('graver: what turns a task into a safety task', () => {
    const graver = (rule: Rule) =>
      rule.raisedBy.flatMap((raise) => (raise.class ? [`${word(raise.when)}: ${raise.class}`] : []));
    expect(told(graver)).toEqual({
      'check-printed-parts': 'deformed-part of printed-part: safety',
      'check-liner': 'runaway: safety',
      'replace-liner': 'runaway: safety',
      'check-fans':
        'fan-noise of board-fan: safety | fan-noise of power-supply: safety | fan-stopped of board-fan: safety | fan-stopped of power-supply: safety',
    });
  });
  it('set by the manual, or by local rules; all others are common practice', () => {
    const other = (rule: Rule) => (rule.source.startsWith('common practice') ? [] : [rule.source]);
    expect(told(other)).toEqual({
      'check-mains-lead': 'local rules',
      'lubricate-rails': 'manual',
      'grease-ball-screw': 'manual',
      'test-smoke-detector': 'local rules',
      'check-extinguisher': 'local rules',
      'check-solvents': 'local rules',
      'check-safety-kit': 'local rules',
      'check-dryer': 'local rules',
      'check-extraction': 'local rules',
    });
  });
  it('a burning smell raises the wiring and nothing that a filter could hide', () => {
    const raised = RULES.filter((rule) =>
      rule.raisedBy.some(({ when }) => 'symptom' in when && when.symptom === 'burning-smell'),
    );
    expect(raised.map(({ task }) => task)).toEqual(['check-wiring']);
  });
});
