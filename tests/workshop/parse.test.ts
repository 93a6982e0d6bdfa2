import { describe, expect, it } from 'vitest';
import { parseWorkshop } from '../../src/workshop.ts';
import type { Workshop } from '../../src/workshop.ts';

const HEAD = `workshop:
  name: Test shop
  zone: Europe/Copenhagen
`;
const NOW = Date.parse('2026-03-11T15:00:00+01:00');

const faultsOf = (text: string): { line: number; text: string }[] => {
  const parsed = parseWorkshop(text, NOW);
  return parsed.ok ? [] : parsed.faults;
};
const workshopOf = (text: string): Workshop => {
  const parsed = parseWorkshop(text, NOW);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.workshop;
};

describe('a workshop file that fits', () => {
  it('needs a name, a zone and machines; the rest has its usual value', () => {
    const { workshop, people, shelf, room } = workshopOf(`${HEAD}machines: []\n`);
    expect(workshop).toEqual({
      name: 'Test shop',
      zone: 'Europe/Copenhagen',
      workingDays: [0, 1, 2, 3, 4],
      holidays: [],
      digestAt: '07:30',
      channels: {},
    });
    expect([people, shelf, room]).toEqual([[], [], { lastDone: {}, intervals: {} }]);
  });

  it.each([
    ['[mon, tue, sat]', [0, 1, 5]],
    ['mon-sat', [0, 1, 2, 3, 4, 5]],
    ['[Friday-Monday]', [0, 4, 5, 6]],
    ['[sun, Sunday]', [6]],
  ])('takes the working days %s', (said, days) => {
    expect(workshopOf(`${HEAD}  workingDays: ${said}\nmachines: []\n`).workshop.workingDays).toEqual(days);
  });

  it('keeps the time of the digest as HH:MM', () => {
    expect(workshopOf(`${HEAD}  digestAt: 7:05\nmachines: []\n`).workshop.digestAt).toBe('07:05');
  });

  it('takes a feature as fitted, not fitted, or not stated', () => {
    const text = `${HEAD}machines:\n  - {name: Elm, build: {probe: fitted, sock: not fitted, guards: true, enclosed: no, filter: not fitted, belts: none, zHolds: }}\n`;
    const build = workshopOf(text).machines[0]?.build;
    expect(build).toEqual({
      probe: true,
      sock: false,
      guards: true,
      enclosed: false,
      filter: 'none',
      belts: 'none',
    });
  });

  it('lets machines share a build by an alias of the file', () => {
    const text = `${HEAD}machines:\n  - {name: Elm, build: &bank {feed: direct}}\n  - {name: Oak, build: *bank}\n`;
    expect(workshopOf(text).machines.map((machine) => machine.build)).toEqual([
      { feed: 'direct' },
      { feed: 'direct' },
    ]);
  });

  it('composes names, so that two ways to type é are one name', () => {
    const text = `${HEAD}machines:\n  - {name: "Ere\u0301ne", build: {}}\n`;
    expect(workshopOf(text).machines[0]?.name).toBe('Eréne'.normalize('NFC'));
  });

  it('takes a channel as a name, or as a block that also says where to listen', () => {
    const text = `${HEAD}  channels:\n    slack: C0\n    discord: {digest: "1", listen: ["1", "2"]}\nmachines: []\n`;
    expect(workshopOf(text).workshop.channels).toEqual({
      slack: { digest: 'C0' },
      discord: { digest: '1', listen: ['1', '2'] },
    });
  });

  it('reads what another editor wrote: a byte-order mark, and lines that end in CR LF', () => {
    const text = `\uFEFF${HEAD}machines:\n  - {name: Elm, build: {feed: direct}}\n`.replaceAll('\n', '\r\n');
    expect(workshopOf(text).machines[0]?.build).toEqual({ feed: 'direct' });
    expect(faultsOf(text.replace('direct', 'tube'))).toMatchObject([{ line: 5 }]);
  });

  it('is plain JSON afterwards', () => {
    const workshop = workshopOf(`${HEAD}machines:\n  - {name: Elm, build: {probe: yes}, new: true}\n`);
    expect(JSON.parse(JSON.stringify(workshop))).toEqual(workshop);
  });
});

/** Text after the head (three lines), the line of the fault, what it must say. */
const FAULTS: readonly (readonly [name: string, text: string, line: number, says: RegExp])[] = [
  ['an unknown field at the top', 'machines: []\nmachine: []', 5, /unknown field "machine".*did you mean "machines"/],
  ['an unknown field of the workshop', '  digestat: 07:30\nmachines: []', 4, /workshop: unknown field "digestat".*"digestAt"/],
  ['an unknown field of a machine', 'machines:\n  - name: Elm\n    biuld: {}', 6, /Elm: unknown field "biuld".*"build"/],
  ['an unknown feature', 'machines:\n  - name: Elm\n    build:\n      feet: direct', 7, /Elm, build: unknown field "feet".*"feed"/],
  ['a missing build', 'machines:\n  - name: Elm', 5, /Elm, build: is missing/],
  ['missing machines', '', 1, /machines: is missing/],
  ['a wrong kind of feed', 'machines:\n  - {name: Elm, build: {feed: tube}}', 5, /Elm, build, feed: must be one of: bowden, direct/],
  ['a feature that is neither', 'machines:\n  - {name: Elm, build: {probe: perhaps}}', 5, /fitted or not fitted/],
  ['a misspelt task', 'machines:\n  - name: Elm\n    build: {}\n    lastDone:\n      lubricate-rod: {on: 2026-01-01}', 8, /"lubricate-rod" is not a task; did you mean "lubricate-rods"/],
  ["a room's task on a machine", 'machines:\n  - name: Elm\n    build: {}\n    lastDone: {check-dryer: {on: 2026-01-01}}', 7, /belongs to the room/],
  ["a machine's task on the room", 'room:\n  lastDone: {level-bed: {on: 2026-01-01}}\nmachines: []', 5, /"level-bed" is not a task of the room/],
  ['a misspelt part', 'machines:\n  - name: Elm\n    build: {}\n    parts: {nozle: {fitted: brass}}', 7, /"nozle" is not a part; did you mean "nozzle"/],
  ['a part about which nothing is said', 'machines:\n  - name: Elm\n    build: {}\n    parts: {nozzle: {}}', 7, /must say what is fitted/],
  ['a day that does not exist', 'machines:\n  - name: Elm\n    build: {}\n    inUseSince: 2026-02-30', 7, /Elm, inUseSince: must be a date that exists/],
  ['a day that lies ahead', 'machines:\n  - name: Elm\n    build: {}\n    lastDone:\n      level-bed: {on: 2026-03-12}', 8, /2026-03-12 lies ahead \(today is 2026-03-11\)/],
  ['an interval without a figure', 'machines:\n  - name: Elm\n    build: {}\n    intervals: {level-bed: {source: manual}}', 7, /at least one of: hours, days/],
  ['an interval of nothing', 'machines:\n  - name: Elm\n    build: {}\n    intervals: {level-bed: {days: 0, source: manual}}', 7, /days: must be more than 0/],
  ['an interval without a source', 'machines:\n  - name: Elm\n    build: {}\n    intervals: {level-bed: {days: 5}}', 7, /source: is missing/],
  ['two machines of one name', 'machines:\n  - {name: Elm, build: {}}\n  - {name: " ELM", build: {}}', 6, /"ELM" is already a name of Elm/],
  ['an alias that is another machine', 'machines:\n  - {name: Elm, build: {}}\n  - name: Oak\n    aliases: [elm]\n    build: {}', 7, /"elm" is already a name of Elm/],
  ['an alias told twice', 'machines:\n  - name: Oak\n    aliases: ["#1", "#1"]\n    build: {}', 6, /"#1" is given twice/],
  ['a name that differs only in how it is typed', 'machines:\n  - {name: "\u00c9l", build: {}}\n  - {name: "e\u0301L", build: {}}', 6, /already a name/],
  ['a reserved name', 'machines:\n  - {name: Room, build: {}}', 5, /"Room" is a word that messages use otherwise/],
  ['a number as a name', 'machines:\n  - name: Elm\n    aliases: [4]\n    build: {}', 6, /must be text \(put a figure in quotes\)/],
  ['an alias without quotes in a list', 'machines:\n  - name: Elm\n    build: {}\n    aliases: [four, #4]\n', 7, /"#1"/],
  ['an alias without quotes on its own line', 'machines:\n  - name: Elm\n    build: {}\n    aliases:\n      - #4\n', 8, /Elm, aliases, no\. 1: must be text/],
  ['two people of one name', 'people:\n  - {name: Ines, role: keeper}\n  - {name: ines, role: member}\nmachines: []', 6, /"ines" is given twice/],
  ['an unknown role', 'people: [{name: Ines, role: boss}]\nmachines: []', 4, /Ines, role: must be one of: member, keeper/],
  ['a thing twice on the shelf', 'machines: []\nshelf:\n  - {part: nozzle, fitted: Brass 0.4, count: 1}\n  - {part: nozzle, fitted: brass 0.4, count: 2}', 7, /nozzle brass 0.4 is on the shelf twice/],
  ['a spare that could be another', 'machines: []\nshelf:\n  - {part: nozzle, count: 1}\n  - {part: nozzle, fitted: brass 0.4, count: 2}', 6, /could also be the nozzle "brass 0.4"/],
  ['half a spare', 'machines: []\nshelf:\n  - {part: nozzle, count: 1.5}', 6, /whole number/],
  ['a misspelt spare', 'machines: []\nshelf: [{part: nozzel, count: 1}]', 5, /"nozzel" is not known; did you mean "nozzle"/],
  ['a time that is none', '  digestAt: 25:00\nmachines: []', 4, /digestAt: must be a time such as 07:30/],
  ['a day of the week that is none', '  workingDays: [mon, tus]\nmachines: []', 4, /must be days of the week/],
  ['a new machine with a counter', 'machines:\n  - name: Elm\n    build: {}\n    new: true\n    startHours: 40', 8, /starts at counter 0/],
  ['a new machine that was oiled before it came', 'machines:\n  - name: Elm\n    build: {}\n    new: true\n    inUseSince: 2026-03-01\n    lastDone:\n      level-bed: {on: 2026-02-20}', 10, /before the day on which this new machine started/],
  ['one part told in two places', 'machines:\n  - name: Elm\n    build: {}\n    parts: {nozzle: {fitted: brass}}\n    lastDone:\n      replace-nozzle: {on: 2026-01-01}', 9, /says again what parts, nozzle says/],
  ['more tube needed than there is', 'machines:\n  - {name: Elm, build: {tubeLengthMm: 400, tubeNeededMm: 500}}', 5, /longer than the tube/],
  ['an unknown platform', '  channels: {slak: x}\nmachines: []', 4, /"slak" is not a platform; did you mean "slack"/],
  ['the same field twice', 'machines: []\nmachines: []', 5, /"machines" is given twice/],
  ['a tab', 'machines:\n\t- name: Elm', 5, /a tab is used to indent/],
  ['a bracket left open', 'machines: [\nshelf: []', 4, /bracket/],
  ['a second document', 'machines: []\n---\na: 1', 5, /second document/],
  ['a tag', 'machines: !list []', 4, /tags \(!\) are not taken/],
  ['an alias of nothing', 'machines:\n  - {name: Elm, build: *bank}', 5, /\*bank names nothing/],
  ['a field name that is a list', 'machines: []\n? [a]\n: 1', 5, /field name must be plain text/],
  ['a text of two lines', 'machines:\n  - {name: "a\\nb", build: {}}', 5, /one line of text/],
  ['a field that would reach into the language', 'machines: []\n__proto__: {}', 5, /unknown field "__proto__"/],
]; // prettier-ignore

describe('a fault is named with its line', () => {
  it.each(FAULTS)('%s', (_, text, line, says) => {
    const faults = faultsOf(`${HEAD}${text}\n`);
    expect(faults.find((fault) => says.test(fault.text) && fault.line === line) ?? faults).toEqual({
      line,
      text: expect.stringMatching(says),
    });
  });

  it('a zone that does not exist', () => {
    expect(faultsOf('workshop: {name: T,\n  zone: Europe/Kopenhagen}\nmachines: []\n')).toEqual([
      { line: 2, text: 'workshop, zone: is not a time zone such as Europe/Copenhagen' },
    ]);
  });

  it('a file that is no block at all', () => {
    for (const text of ['', '- 1', 'hello', '# only a comment'])
      expect(faultsOf(text)).toEqual([{ line: 1, text: 'the file must be a block of fields' }]);
  });

  it('all faults at once, in the order of the file', () => {
    const lines = faultsOf(
      `${HEAD}  digestAt: 99\nmachines:\n  - {name: Elm, build: {feed: x, bed: y}}\nshelf: 3\n`,
    );
    expect(lines.map((fault) => fault.line)).toEqual([4, 6, 6, 7]);
  });
});

describe('a file that means harm', () => {
  const tell = (text: string): string =>
    faultsOf(text)
      .map((fault) => fault.text)
      .join(' ');

  it('is too large', () => {
    expect(tell(`${HEAD}# ${'x'.repeat(1_000_000)}\n`)).toBe('the file is larger than 1 MB');
    expect(tell(`${HEAD}# ${'é'.repeat(500_000)}\n`)).toBe('the file is larger than 1 MB');
  });

  it.each([
    ['brackets', '['.repeat(900_000)],
    ['braces', '{a: '.repeat(20_000)],
    ['dashes', '- '.repeat(20_000)],
    ['steps', Array.from({ length: 1200 }, (_, depth) => `${' '.repeat(depth)}a:\n`).join('')],
  ])('nests %s without end', (_, text) => {
    expect(tell(text)).toMatch(/nested too deeply|must be|unknown field/);
  });

  it('unfolds copies of copies', () => {
    const bomb = `a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n`;
    expect(tell(bomb)).toContain('copies something that copies itself');
  });

  it('copies one large thing often', () => {
    const text = `a: &a "${'x'.repeat(200_000)}"\nb: [${'*a, '.repeat(50)}]\n`;
    expect(tell(text)).toContain('aliases (*) copy too much');
  });

  it('holds more faults than anybody reads', () => {
    const faults = faultsOf(Array.from({ length: 5000 }, (_, index) => `k${index}: 1\n`).join(''));
    expect(faults).toHaveLength(21);
    expect(faults.at(-1)).toEqual({ line: 19, text: expect.stringMatching(/^and \d+ more from here on$/) });
  });
});
