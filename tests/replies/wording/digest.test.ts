/** The digest as it is read on a phone: what stands first, what is cut, and how long it gets. */
import { describe, expect, it } from 'vitest';
import { dayOfDate } from '../../../src/maintenance/calendar.ts';
import type { DueContext } from '../../../src/maintenance/due/context.ts';
import { digestOf } from '../../../src/maintenance/due/digest.ts';
import type { MachineRecord, Mark } from '../../../src/maintenance/record/record.ts';
import { plainText } from '../../../src/replies/text.ts';
import { digestReply } from '../../../src/replies/wording/digest.ts';
import { BUILDS } from '../../support/builds.ts';
import type { DemoMachine } from '../../support/builds.ts';
import {
  TODAY, allDone, calendar, contextOn, emptyRoom, recordOf, shopOf, sixDaysAWeek,
} from '../../support/machines.ts'; // prettier-ignore
import type { Story } from '../../support/machines.ts';
import { demoTalk } from '../../support/talk.ts';

const NAMES = Object.keys(BUILDS) as DemoMachine[];
/** Two screens of a phone held upright: 28 lines of 42 letters each. */
const PHONE = { letters: 42, lines: 2 * 28 };
const onPhone = (text: string): number =>
  text.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / PHONE.letters)), 0);

function text(
  machines: readonly MachineRecord[],
  date = TODAY,
  more: Partial<DueContext> & { minutesADay?: number } = {},
): string {
  const context = contextOn(date, more);
  const digest = digestOf(shopOf(machines, emptyRoom({ baseline: date }, date)), context);
  return plainText(
    digestReply(digest, {
      calendar,
      today: dayOfDate(date),
      personName: () => 'Ines',
      calledAs: () => undefined,
    }),
  );
}
const lines = (...told: Parameters<typeof text>): string[] => text(...told).split('\n');
const fresh = (name: DemoMachine, on: string, { done, ...story }: Story = {}): MachineRecord =>
  recordOf(name, BUILDS[name], { ...story, done: { ...allDone(BUILDS[name], `${on} 20:00`), ...done } });
const markOn = (on: string): Mark => {
  const { down } = recordOf('x', {}, { down: on });
  if (!down) throw new Error('the builder marks it down');
  return down;
};

describe('nothing due', () => {
  it('is one line', () =>
    expect(lines([fresh('birch', '2026-03-10')])).toEqual([
      'Wednesday 11 March. Nothing overdue, nothing due.',
    ]));
  it('with an open safety check is more than that: it is listed until somebody looked', () => {
    const told = lines([recordOf('birch', BUILDS.birch)]);
    expect(told.length).toBeGreaterThan(1);
    expect(told[0]).toBe(
      'Wednesday 11 March. Nothing overdue, nothing due, but 4 safety checks without a record',
    );
    // the checks of one machine name it once
    expect(told.join('\n')).toMatch(/Safety checks without a record: [^(]*check the wiring[^(]*\(Birch\)$/mu);
  });
});

describe('what stands first', () => {
  const since = markOn('2026-03-10 22:40');
  const held = (name: DemoMachine) =>
    fresh(name, '2026-03-10', {
      more: { hold: { symptom: 'smoke', also: [], since, told: [], last: since.at } },
    });
  const dusty = fresh('hazel', '2026-03-10', { done: { 'dust-off': '2026-01-20' } });

  it('what not to touch, then what needs doing with its minutes, then what to fetch', () => {
    const [first, second, third] = lines([
      held('birch'),
      fresh('elm', '2026-03-10', { more: { opened: markOn('2026-03-11 07:10') } }),
      dusty,
    ]);
    expect(first).toBe('Do not start: Birch is held: smoke (Ines, yesterday) · Elm is open (Ines, 07:10)');
    expect(second).toBe('Wednesday 11 March. 1 overdue, about 10 min of work');
    expect(third).toMatch(/^Fetch: /u);
  });
  it('of a held machine nothing but its safety checks is called for: nobody greases what nobody may touch', () => {
    const hold = { symptom: 'smoke' as const, also: [], since, told: [], last: since.at };
    const due = { 'dust-off': '2026-01-20', 'check-wiring': '2025-11-01' };
    const told = lines([fresh('birch', '2026-03-10', { done: due, more: { hold } })]).join('\n');
    expect(told).toMatch(/^ {2}Birch: check the wiring/mu);
    expect(told).not.toMatch(/dust off/u);
    expect(lines([fresh('birch', '2026-03-10', { done: due })]).join('\n')).toMatch(/dust off/u);
  });
  it('of held machines none is cut, however many', () => {
    const [first = ''] = lines(NAMES.map(held));
    expect(first.match(/is held/gu)).toHaveLength(8);
  });
  it('of what to fetch no spare, no supply and nothing that guards the hands is cut', async () => {
    const talk = await demoTalk();
    const { digest, reply } = await talk.bot.digest({ now: talk.now });
    const line =
      plainText(reply)
        .split('\n')
        .find((of) => of.startsWith('Fetch: ')) ?? '';
    expect(digest.fetch.filter(({ kind }) => kind === 'tool').length).toBeGreaterThan(7);
    expect(line).toMatch(/and \d more tools/u);
    for (const thing of [
      '1 nozzle brass 0.4 (the last one: order, 5 days’ delivery)',
      'light machine oil',
      'heat gloves',
      'eye protection',
      'block to prop the axis',
    ])
      expect(line).toContain(thing);
  });
});

describe('long lists', () => {
  const neglected = NAMES.map((name) =>
    recordOf(name, BUILDS[name], { baseline: '2025-06-02', ran: sixDaysAWeek(9) }),
  );
  it('are cut with what is left of them', () => {
    const told = lines(neglected);
    expect(told.join('\n')).toMatch(/ · and \d+ more$/mu);
    expect(told.join('\n')).toMatch(/^ {2}and \d+ more on \d+ other machines$/mu);
  });
  it('count all that they do not show', () => {
    const digest = digestOf(shopOf(neglected, emptyRoom({ baseline: TODAY })), contextOn());
    const told = lines(neglected);
    const below = told.slice(told.indexOf('Overdue') + 1);
    const overdue = below.slice(
      0,
      below.findIndex((line) => !line.startsWith('  ')),
    );
    const counted = overdue.reduce((sum, line) => {
      const more = Number(/and (\d+) more/u.exec(line)?.[1] ?? 0);
      const shown = line.startsWith('  and ')
        ? 0
        : line.split(' · ').filter((of) => !/^and \d/u.test(of)).length;
      return sum + shown + more;
    }, 0);
    expect(counted).toBe(digest.overdue.length);
  });
  it('coming up: one line a machine, the soonest first', () => {
    const soon = lines([
      fresh('birch', '2026-03-10', { done: { 'check-tube': '2025-12-16', 'check-fans': '2026-02-12' } }),
      fresh('cedar', '2026-03-10', { done: { 'check-fans': '2026-02-11' } }),
      fresh('hazel', '2026-03-10', { done: { 'dust-off': '2026-01-20' } }),
    ]);
    const from = soon.indexOf('This week');
    expect(soon.slice(from + 1, from + 3)).toEqual([
      '  Cedar: check the fans, Friday',
      '  Birch: check the fans, Saturday · check the tube, Monday',
    ]);
  });
  it('cautions: the three gravest, each with its machines, and that there are more at the steps', () => {
    const told = lines(neglected);
    const care = told.slice(told.indexOf('Care') + 1);
    expect(care).toHaveLength(4);
    expect(care[0]).toMatch(/plug|qualified/u);
    expect(care[3]).toMatch(/Each step has its caution; the manual, local rules and licensed practice/u);
  });
});

describe('its length', () => {
  it.each(['2026-03-11', '2026-03-16', '2026-04-07', '2026-11-25'])(
    'the demo’s of %s fits two screens of a phone',
    async (date) => {
      const now = calendar.at(dayOfDate(date), 7 * 60 + 30);
      const talk = await demoTalk(now);
      expect(onPhone(plainText((await talk.bot.digest({ now })).reply))).toBeLessThanOrEqual(PHONE.lines);
    },
  );
  it('a neglected room of eighty stays within three', () => {
    const machines = Array.from({ length: 80 }, (_, n) => {
      const name = NAMES[n % NAMES.length] ?? 'birch';
      return recordOf(`${name}-${n}`, BUILDS[name], { baseline: '2025-06-02', ran: sixDaysAWeek(9) });
    });
    expect(onPhone(text(machines))).toBeLessThanOrEqual(1.5 * PHONE.lines);
  });
});

describe('days on which nobody reads', () => {
  const MONDAY = '2026-03-16';
  const week = { workingDays: [0, 1, 2, 3, 4] };
  /** 30 days: due on that date. */
  const dueOn = (date: string, name: DemoMachine = 'birch') => {
    const done = calendar.dateOf(calendar.noon(dayOfDate(date) - 30));
    return fresh(name, '2026-03-10', { done: { 'check-fans': done } });
  };

  it('Monday’s digest covers the weekend', () => {
    expect(lines([dueOn('2026-03-14'), dueOn('2026-03-16', 'hazel')], MONDAY, week)[0]).toBe(
      'Monday 16 March. 2 due (1 of them over the weekend), about 6 min of work',
    );
  });
  it('without saying so where nothing fell due on it', () =>
    expect(lines([dueOn('2026-03-16')], MONDAY, week)[0]).toBe(
      'Monday 16 March. 1 due, about 3 min of work',
    ));
  it('nor for what was due on Friday already', () =>
    expect(lines([dueOn('2026-03-13')], MONDAY, week)[0]).not.toContain('weekend'));
  it('holidays count like it', () => {
    const holidays = ['2026-04-02', '2026-04-03', '2026-04-06'];
    const [first] = lines([dueOn('2026-04-05')], '2026-04-07', { ...week, holidays });
    expect(first).toBe('Tuesday 7 April. 1 due (while closed), about 3 min of work');
  });
  it('a workshop that is open all week has no such days', () => {
    const always = { workingDays: [0, 1, 2, 3, 4, 5, 6] };
    expect(lines([dueOn('2026-03-15')], MONDAY, always)[0]).not.toMatch(/weekend|closed/u);
  });
  it('nor has one that is never open', () =>
    expect(lines([dueOn('2026-03-15')], MONDAY, { workingDays: [] })[0]).not.toMatch(/weekend|closed/u));
});
