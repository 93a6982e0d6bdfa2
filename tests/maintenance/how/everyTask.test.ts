import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautionRow, cautionsFor } from '../../../src/maintenance/cautions/forBuild.ts';
import { TASKS } from '../../../src/maintenance/codes.ts';
import { howTo } from '../../../src/maintenance/how/howTo.ts';
import type { HowTo, NoSteps } from '../../../src/maintenance/how/howTo.ts';
import { toolList } from '../../../src/maintenance/how/tools.ts';
import { someBuild } from './someBuild.ts';

/** Every task on 60 builds of every kind. */
const onEveryBuild = (check: (answer: HowTo | NoSteps, task: (typeof TASKS)[number]) => void): void => {
  fc.assert(
    fc.property(someBuild, (build) => {
      for (const task of TASKS) check(howTo(task, build), task);
    }),
    { numRuns: 60 },
  );
};
const words = (answer: HowTo | NoSteps): string =>
  answer.kind === 'steps'
    ? [...answer.steps.map((step) => step.text), answer.good, ...answer.assumed].join('\n')
    : [answer.because, answer.ask, ...(answer.before ?? []), ...(answer.after ?? [])].join('\n');

describe('every task, on any build', () => {
  it('has three to seven steps of at most 140 characters, each ending as a sentence', () => {
    onEveryBuild((answer, task) => {
      if (answer.kind !== 'steps') return;
      expect(answer.steps.length, task).toBeGreaterThanOrEqual(3);
      expect(answer.steps.length, task).toBeLessThanOrEqual(7);
      for (const { text } of answer.steps) {
        expect(text.length, text).toBeLessThanOrEqual(140);
        expect(text).toMatch(/^[A-Z0-9].*[.?]$/u);
      }
    });
  });

  it('carries all its cautions, each hazard once, at its steps', () => {
    fc.assert(
      fc.property(someBuild, fc.constantFrom(...TASKS), (build, task) => {
        const answer = howTo(task, build);
        if (answer.kind !== 'steps') return;
        const placed = answer.steps.flatMap((step) => step.cautions.map((caution) => caution.key));
        expect([...placed].sort(), task).toEqual(
          cautionsFor(task, build)
            .map((caution) => caution.key)
            .sort(),
        );
      }),
      { numRuns: 500 },
    );
  });

  it('meets each hazard of the caution table at a step of its own', () => {
    for (const task of TASKS) {
      const answer = howTo(task, {});
      const row = cautionRow(task);
      if (answer.kind !== 'steps' || row === 'none needed') continue;
      const first = answer.steps[0]?.cautions.length ?? 0;
      expect(first, `${task}: cautions heaped at the first step`).toBeLessThanOrEqual(1);
    }
  });

  it('never says that anything is safe, or may be left, or run once more', () => {
    onEveryBuild((answer, task) => {
      expect(words(answer), task).not.toMatch(
        /\bsafe(ly)?\b|ok to (leave|run)|leave it running|just this once/iu,
      );
    });
  });

  it('defers to the manual, local rules and licensed practice exactly once', () => {
    onEveryBuild((answer) => {
      expect(answer.defer).toContain('manual');
      expect(words(answer)).not.toContain('licensed practice');
    });
  });

  it('points to another task only where that one has steps on the same build', () => {
    fc.assert(
      fc.property(someBuild, fc.constantFrom(...TASKS), (build, task) => {
        const answer = howTo(task, build);
        if (answer.kind === 'steps' || answer.instead === undefined) return;
        const other = howTo(answer.instead, build);
        if (other.kind === 'no-steps') expect(other.instead).not.toBe(task);
      }),
      { numRuns: 500 },
    );
  });

  it('tells nobody to do what nobody may do: flame, bridging, food oven', () => {
    onEveryBuild((answer, task) => {
      for (const line of words(answer).split('\n')) {
        expect(line, task).not.toMatch(/torch (it|the nozzle)|with a (flame|lighter)|kitchen/iu);
        if (/bridg/iu.test(line)) expect(line).toContain('never');
      }
    });
  });
});

/** Capitals inside a sentence: trade abbreviations only, so that no maker's or product's name can slip in. */
const TRADE = new Set(['PLA', 'PTFE', 'C', 'Z', 'M3', 'M4']);
const namesIn = (line: string): readonly string[] =>
  line
    .split(/[.:;?!]\s+/u)
    .flatMap((sentence) => sentence.split(/[\s(),“”]+/u).slice(1))
    .map((word) => word.replace(/[-’].*$/u, '').replace(/[^\p{L}\p{N}]/gu, ''))
    .filter((word) => /^\p{Lu}/u.test(word) && !TRADE.has(word));

describe('names', () => {
  it('of makers and products stand nowhere in steps, tools or cautions', () => {
    const lines = TASKS.flatMap((task) => {
      const answer = howTo(task, { bedHeater: 'low-voltage' });
      const cautions = cautionsFor(task, {}).map((caution) => caution.line);
      const tools = answer.kind === 'steps' ? toolList(answer.tools) : [];
      return [...words(answer).split('\n'), ...cautions, ...tools];
    });
    expect([...new Set(lines.flatMap(namesIn))]).toEqual([]);
  });

  it('would be noticed', () => {
    expect(namesIn('Oil the rods with Acme Glide, then wipe.')).toEqual(['Acme', 'Glide']);
  });
});

describe('the list of tools', () => {
  it('draws hex keys together with their sizes, each once', () => {
    expect(toolList(['hex-2', 'torch', 'hex-1.5', 'hex-2'])).toEqual([
      'hex keys 1.5 and 2 mm (usual sizes)',
      'torch',
    ]);
  });

  it('says nothing of hex keys where none is needed', () => {
    expect(toolList(['paper'])).toEqual(['sheet of paper']);
  });
});
