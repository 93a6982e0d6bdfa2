import { describe, expect, it } from 'vitest';
import { cautionRow, cautionsFor, shortCaution } from '../../../src/maintenance/cautions/forBuild.ts';
import { CAUTION_KEYS, CAUTION_LINES } from '../../../src/maintenance/cautions/keys.ts';
import { FIRST_AID, injuryLines } from '../../../src/maintenance/cautions/injury.ts';
import { NEVER } from '../../../src/maintenance/cautions/never.ts';
import { STOP_LIST, stopLines } from '../../../src/maintenance/cautions/stop.ts';
import { SAFETY_SYMPTOMS, TASKS } from '../../../src/maintenance/codes.ts';

const rows = TASKS.map((task) => ({ task, row: cautionRow(task) }));
const everyLine: readonly string[] = [
  ...Object.values(CAUTION_LINES),
  ...rows.flatMap(({ row }) => (row === 'none needed' ? [] : [row.line, row.stopWhen ?? ''])),
  ...Object.values(FIRST_AID),
  ...Object.values(NEVER).flatMap((topic) => [topic.about, topic.because, topic.ask]),
  ...SAFETY_SYMPTOMS.flatMap((symptom) => stopLines(symptom)),
  ...TASKS.flatMap((task) => cautionsFor(task, {}).map((caution) => caution.line)),
];

describe('the caution table', () => {
  it('has a row for every task, and only five that need none', () => {
    expect(rows.filter(({ row }) => row === 'none needed').map(({ task }) => task)).toEqual([
      'check-filament-path', 'check-notices', 'save-settings', 'check-safety-kit', 'replace-spool-holder',
    ]); // prettier-ignore
  });

  it('uses every hazard somewhere', () => {
    const used = new Set(rows.flatMap(({ row }) => (row === 'none needed' ? [] : row.keys)));
    expect([...CAUTION_KEYS].filter((key) => !used.has(key))).toEqual([]);
  });

  it('never calls anything safe, never says that it may be left, never only says to be careful', () => {
    for (const line of everyLine)
      expect(line).not.toMatch(/\bsafe(ly)?\b|ok to (leave|run)|be careful|take care/iu);
  });

  it('keeps each hazard line short enough for a phone', () => {
    for (const { row } of rows) {
      if (row !== 'none needed') expect(row.line.length, row.line).toBeLessThanOrEqual(125);
    }
    for (const line of Object.values(CAUTION_LINES)) expect(line.length, line).toBeLessThanOrEqual(125);
  });

  it('puts the mains hazard on the supply, the board, the leads and the bed heater', () => {
    for (const part of ['power-supply', 'control-board', 'wiring', 'bed-heater'] as const) {
      expect(cautionsFor(`replace-${part}`, {}).map((caution) => caution.key)).toContain('MAINS');
    }
  });

  it('gives a short caution with what must end the work, and none for saving settings', () => {
    expect(shortCaution('check-wiring')?.stopWhen).toContain('brown');
    expect(shortCaution('save-settings')).toBeUndefined();
  });
});

describe('the stop answer', () => {
  it('begins alike for every safety symptom and holds the machine', () => {
    for (const symptom of SAFETY_SYMPTOMS) {
      expect(STOP_LIST[symptom].first).toMatch(/^Stop\. Cut the power at the wall/u);
      expect(STOP_LIST[symptom].hold).toBe(true);
    }
  });

  it('tells the person responsible and names the held machine last', () => {
    const lines = stopLines('burning-smell', { tell: 'Ines', machine: 'Juniper' });
    expect(lines).toHaveLength(4);
    expect(lines[2]).toBe('Tell Ines.');
    expect(lines[3]).toBe('Juniper is now held.');
  });

  it('claims no hold where no machine was named, and knows a person to tell all the same', () => {
    const lines = stopLines('smoke');
    expect(lines.join(' ')).not.toContain('held');
    expect(lines.at(-1)).toBe('Tell the person responsible for the machines.');
  });

  it('after a shock, keeps hands off until a qualified person has tested it', () => {
    expect(stopLines('shock').join(' ')).toContain('qualified person has tested it');
    expect(stopLines('smoke').join(' ')).not.toContain('medical');
  });

  it('asks nothing', () => {
    for (const symptom of SAFETY_SYMPTOMS) expect(stopLines(symptom).join(' ')).not.toContain('?');
  });
});

describe('an injury', () => {
  it('gets first aid first and the burn line when the kind is not known', () => {
    expect(injuryLines()[0]).toMatch(/^First aid first/u);
    expect(injuryLines('burn')[1]).toContain('running water for 20 minutes');
    expect(injuryLines().join(' ')).not.toContain('running water');
  });

  it('of another kind gets that kind’s line', () => {
    expect(injuryLines('eye').join(' ')).toContain('rinse');
    expect(injuryLines('eye').join(' ')).not.toContain('running water');
  });
});
