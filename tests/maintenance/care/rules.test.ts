/** The rules in the code against the table written by hand, both ways. */
import { describe, expect, it } from 'vitest';
import { AFTER_A_CRASH, AFTER_STANDING } from '../../../src/maintenance/care/bundles.ts';
import { RULES, roomRules, ruleOf, rulesFor } from '../../../src/maintenance/care/index.ts';
import { FUMING, HOT_FOR_PTFE } from '../../../src/maintenance/care/materials.ts';
import { classOf, minutesOf, termsOf } from '../../../src/maintenance/care/rule.ts';
import type { Event, Rule, Term } from '../../../src/maintenance/care/rule.ts';
import { shortCaution } from '../../../src/maintenance/cautions/forBuild.ts';
import { TASKS } from '../../../src/maintenance/codes.ts';
import { howTo } from '../../../src/maintenance/how/howTo.ts';
import type { Build } from '../../../src/maintenance/machine.ts';
import { BUILDS } from '../../support/builds.ts';
import { CRASH_BUNDLE, ON_CONDITION_TABLE, STANDING_BUNDLE, TABLE } from './table.ts';
import type { TableRow } from './table.ts';

/** The demo machines, and what none of them has. */
const SAMPLES: Readonly<Record<string, Build>> = {
  ...BUILDS,
  polymer: { x: 'rods', rodBearing: 'polymer' },
  guided: { feed: 'direct', guideTube: true },
  particle: { filter: 'particle' },
  'rigid, no probe': { bed: 'rigid' },
  'not stated': {},
};
const DEMO = Object.keys(BUILDS);

function termText(term: Term): string {
  if (term.trigger === 'dose') return 'item' in term ? `dose ${term.item}` : `${term.interval} g`;
  if (term.trigger !== 'hours') return `${term.interval} ${term.trigger}`;
  const of = term.of === HOT_FOR_PTFE ? ' of hot' : term.of === FUMING ? ' of fumes' : '';
  return `${term.interval} h${of}`;
}

function everyText(rule: Rule, build: Build): string {
  const terms = termsOf(rule, { build, nozzle: build.nozzle ?? {}, tubeTrims: 0 }).map(termText);
  const { faster } = rule;
  const holds = faster && (!faster.only || faster.only(build));
  // one filament stands for its group: the groups themselves are tested below
  const sample = faster?.while.includes('pla-cf') ? 'pla-cf' : 'abs';
  const once = [...new Set(rule.once.map((o) => `once ${o.hours} h`))];
  return [
    ...(terms.length > 0 ? [terms.join(' | ')] : []),
    ...(holds ? [`${faster.every.map(termText).join(' | ')} while ${sample}`] : []),
    ...(rule.lookFromHours === undefined ? [] : [`look ${rule.lookFromHours} h`]),
    ...once,
  ].join('; ');
}

function eventText(event: Event): string {
  if ('symptom' in event) {
    if (event.symptom === 'no-extrusion' && event.times === 2) return 'second-jam';
    const times = event.times === undefined ? '' : `${event.times}x-`;
    const of = event.part === undefined ? '' : `-of-${event.part}`;
    const after = event.afterTask === undefined ? '' : `-after-${event.afterTask}`;
    const within = times !== '' && event.withinDays !== undefined ? `-in-${event.withinDays}-days` : '';
    const older = event.ifOlderThanDays === undefined ? '' : `-after-${event.ifOlderThanDays}-days`;
    return `${times}${event.symptom}${of}${after}${within}${older}`;
  }
  if ('done' in event) return `${event.finding ?? 'done'}-${event.done}`;
  if ('swapped' in event) return `new-${event.swapped}`;
  if ('started' in event) return 'enrolled-new';
  if ('backAfterDays' in event) return 'back';
  return 'loaded' in event ? 'thirsty-spool' : 'abrasive-spool';
}

const listed = (codes: string): string[] => codes.split(' ').filter(Boolean);
const raisedBy = (rule: Rule | undefined): string[] =>
  [...new Set(rule?.raisedBy.map(({ when }) => eventText(when)))].toSorted();

/** What somebody is told who asks how, with the caution. */
function stepsOf(task: Rule['task'], build: Build) {
  const answer = howTo(task, build);
  if (answer.kind === 'no-steps') throw new Error(`${task}: ${answer.because}`);
  const { line = '', stopWhen = '' } = shortCaution(task) ?? {};
  const text = [...answer.steps.map((step) => step.text), answer.good, line, stopWhen].join('\n');
  return { tools: answer.tools, supplies: answer.supplies, text };
}

const plannedOn = (task: string, build: Build): boolean =>
  rulesFor(build).some(({ rule }) => rule.task === task);
const rowFor = <T>(by: T | Readonly<Record<string, T>>, name: string): T | undefined =>
  typeof by === 'object' && by !== null && !Array.isArray(by)
    ? ((by as Readonly<Record<string, T>>)[name] ?? (by as Readonly<Record<string, T>>)['*'])
    : by;

describe.each(TABLE.map((row) => [row.task, row] as const))('%s', (task, row: TableRow) => {
  const rule = RULES.find((known) => known.task === task);
  const builds = row.on.filter((name) => name !== 'room');

  it('is a rule of its own', () => {
    expect(RULES.filter((known) => known.task === task)).toHaveLength(1);
    expect(rule?.place).toBe(row.on.includes('room') ? 'room' : 'machine');
  });
  it('is planned on the machines that the table names, and on no other of the eight', () => {
    for (const name of [...DEMO, ...builds]) {
      const build = SAMPLES[name];
      expect([name, build && plannedOn(task, build)]).toEqual([name, builds.includes(name)]);
    }
  });
  it('falls due as often as the table says', () => {
    for (const name of row.on.concat(Object.keys(row.every).filter((key) => key !== '*'))) {
      const text = rule && everyText(rule, SAMPLES[name] ?? {});
      expect([name, text]).toEqual([name, rowFor(row.every, name) ?? '']);
    }
  });
  it('is raised by what the table names', () => {
    expect(raisedBy(rule)).toEqual([...listed(row.raisedBy), ...Object.keys(row.besides ?? {})].toSorted());
  });
  it('has the class and the minutes of the table', () => {
    for (const name of row.on) {
      const build = SAMPLES[name] ?? {};
      expect(rule && classOf(rule, build)).toBe(rowFor(row.class, name));
      expect(rule && minutesOf(rule, build)).toBe(rowFor(row.minutes, name));
    }
  });
  it('is done with the tools and supplies that the table names, and without those it forbids', () => {
    const { tools, supplies } = stepsOf(task, SAMPLES[row.on[0] ?? ''] ?? {});
    const used: readonly string[] = [...tools, ...supplies];
    for (const code of listed(row.kit ?? ''))
      if (code.startsWith('-')) expect(used).not.toContain(code.slice(1));
      else expect(used).toContain(code);
  });
  it('says what the table says about it', () => {
    const { text } = stepsOf(task, SAMPLES[row.on[0] ?? ''] ?? {});
    for (const words of row.says ?? []) expect(`${rule?.note}\n${text}`).toMatch(words);
  });
});

describe.each(ON_CONDITION_TABLE.map((row) => [row.task, row] as const))('%s, by condition', (task, row) => {
  const rule = RULES.find((known) => known.task === task);

  it('has no calendar, and is raised by what the table names', () => {
    for (const name of DEMO) expect(rule && everyText(rule, SAMPLES[name] ?? {})).toBe('');
    expect(raisedBy(rule)).toEqual(listed(row.raisedBy).toSorted());
  });
  it('is there on these of the eight, with this class and these minutes', () => {
    expect(DEMO.filter((name) => plannedOn(task, SAMPLES[name] ?? {}))).toEqual(row.on);
    expect([rule && classOf(rule, {}), rule && minutesOf(rule, {})]).toEqual([row.class, row.minutes]);
  });
});

describe('the list as a whole', () => {
  it('is written down whole: each rule has one row, by the calendar or by condition', () => {
    const written = [...TABLE, ...ON_CONDITION_TABLE].map(({ task }) => task);
    expect(written.toSorted()).toEqual(RULES.map(({ task }) => task).toSorted());
  });
  it('departs from the technician’s rows in these alone', () => {
    expect(TABLE.filter(({ departs }) => departs !== undefined).map(({ task }) => task)).toEqual([
      'replace-guide-tube', 'replace-liner', 'check-nozzle', 'check-notices',
    ]); // prettier-ignore
  });
  it('has one rule for each task code and none for another', () => {
    expect(RULES.map(({ task }) => task).toSorted()).toEqual([...TASKS].toSorted());
  });
  it('has no interval and no single look that the table does not know', () => {
    const inTable = new Set(TABLE.map(({ task }) => task));
    const timed = RULES.filter(
      (rule) => typeof rule.every === 'function' || rule.every.length > 0 || rule.once.length > 0,
    );
    expect(timed.map(({ task }) => task).filter((task) => !inTable.has(task))).toEqual([]);
  });
  it('bundles what a crash raises, and what a month of standing raises, in the order of the table', () => {
    expect(AFTER_A_CRASH).toEqual(CRASH_BUNDLE);
    expect(AFTER_STANDING).toEqual(STANDING_BUNDLE);
    for (const task of AFTER_A_CRASH)
      expect(ruleOf(task).raisedBy.some(({ when }) => 'symptom' in when && when.symptom === 'crash')).toBe(
        true,
      );
    for (const task of AFTER_STANDING)
      expect(ruleOf(task).raisedBy.some(({ when }) => 'backAfterDays' in when)).toBe(true);
  });
  it('gives each look a remedy that exists, and each remedy is raised by it', () => {
    for (const rule of RULES)
      for (const remedy of rule.remedies)
        expect([
          rule.task,
          remedy,
          ruleOf(remedy).raisedBy.some(
            ({ when }) => 'done' in when && when.done === rule.task && when.finding === 'bad',
          ),
        ]).toEqual([rule.task, remedy, true]);
  });
  it('keeps room and machines apart', () => {
    expect(roomRules().reduce((sum, { rule }) => sum + minutesOf(rule, {}), 0)).toBe(15);
    expect(rulesFor(BUILDS.alder).some(({ rule }) => rule.place === 'room')).toBe(false);
  });
});

describe('a feature that is not stated', () => {
  const assumedOn = (task: string, build: Build): string | undefined =>
    rulesFor(build).find(({ rule }) => rule.task === task)?.assumed;

  it('plans no work on it: an unstated feed has no tube, an unstated hot end no liner', () => {
    expect(plannedOn('check-tube', {})).toBe(false);
    expect(plannedOn('replace-liner', BUILDS.hazel)).toBe(false);
    expect(plannedOn('check-guards', {})).toBe(false);
  });
  it('takes an unstated nut as plastic, and says so: no grease', () => {
    const build: Build = { zDrive: 'lead-screw' };
    expect(plannedOn('grease-screw', build)).toBe(false);
    expect(assumedOn('clean-screw', build)).toMatch(/not stated.*plastic/u);
    expect(assumedOn('clean-screw', BUILDS.birch)).toBeUndefined();
  });
  it('takes unstated bearings as polymer: wiped, not oiled', () => {
    const build: Build = { x: 'rods' };
    expect(plannedOn('lubricate-rods', build)).toBe(false);
    expect(assumedOn('wipe-rods', build)).toMatch(/without lubricant/u);
  });
  it('takes an unstated bed as one on springs', () => {
    expect(assumedOn('level-bed', {})).toMatch(/springs/u);
    expect(assumedOn('level-bed', BUILDS.cedar)).toBeUndefined();
  });
});
