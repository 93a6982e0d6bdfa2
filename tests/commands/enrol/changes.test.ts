/** A workshop file applied a second time says what is different now, the old figure beside the new one. */
import { describe, expect, it } from 'vitest';
import { NOW, talkIn } from '../../support/talk.ts';

const FILE = `workshop: {name: Test, zone: Europe/Copenhagen, digestAt: '07:30'}
people:
  - {name: Ines, role: keeper}
  - {name: Odd, role: member}
machines:
  - name: Birch
    build: {feed: bowden, hotEnd: lined, nozzle: {material: brass, boreMm: 0.4}}
    intervals: {check-wiring: {days: 45, source: workshop}}
  - name: Hazel
    build: {feed: direct}
shelf:
  - {part: nozzle, fitted: brass 0.4, count: 3}
`;
async function applied(edit: (file: string) => string, dryRun = false) {
  const talk = await talkIn(FILE);
  const again = { yaml: edit(FILE), now: NOW + 60_000, by: 'Ines', dryRun };
  return { talk, told: await talk.bot.enrol(again) };
}

describe('what a file changes', () => {
  it('of a build, feature by feature, the unstated named as such', async () => {
    const { told } = await applied((file) =>
      file
        .replace('brass, boreMm: 0.4}}', 'hardened, boreMm: 0.6}, sock: true}')
        .replace('feed: direct', 'feed: direct, probe: true'),
    );
    expect(told.changed).toEqual(['birch', 'hazel']);
    expect(told.changes).toEqual([
      { of: 'birch', what: ['nozzle: brass 0.4 -> hardened 0.6', 'sock: not stated -> fitted'] },
      { of: 'hazel', what: ['probe: not stated -> fitted'] },
    ]);
  });
  it('of what a machine is called', async () => {
    const { told, talk } = await applied((file) =>
      file.replace('- name: Birch', '- name: Willow\n    aliases: [birch]'),
    );
    expect(told.changes).toEqual([{ of: 'birch', what: ['name: Birch -> Willow'] }]);
    expect(await talk.hear('status willow')).toMatch(/^Willow/u);
  });
  it('of an interval, with what it was', async () => {
    const { told } = await applied((file) =>
      file
        .replace('days: 45', 'days: 30')
        .replace('feed: direct}', 'feed: direct}\n    intervals: {dust-off: {days: 20, source: manual}}'),
    );
    expect(told.changes).toEqual([
      { of: 'birch', what: ['check the wiring: every 30 days, set here (was every 45 days)'] },
      { of: 'hazel', what: ['dust off: every 20 days, says its manual (was common practice)'] },
    ]);
  });
  it('of the shelf, the settings and the people', async () => {
    const { told } = await applied((file) =>
      file
        .replace('count: 3', 'count: 5')
        .replace('07:30', '08:00')
        .replace('Odd, role: member', 'Odd, role: keeper'),
    );
    expect(told.changed).toEqual([]);
    expect(told.changes).toEqual([
      { of: 'shelf', what: ['5 nozzles (brass 0.4) on the shelf (was 3)'] },
      { of: 'workshop', what: ['digestAt: 07:30 -> 08:00'] },
      { of: 'people', what: ['Odd: member -> keeper'] },
    ]);
  });
  it('is said before it happens, too, and then nothing of it has happened', async () => {
    const edit = (file: string) => file.replace('hotEnd: lined', 'hotEnd: all-metal');
    const { talk, told } = await applied(edit, true);
    const done = await talk.bot.enrol({ yaml: edit(FILE), now: NOW + 120_000, by: 'Ines', dryRun: false });
    expect(told.changes).toEqual([{ of: 'birch', what: ['hotEnd: lined -> all-metal'] }]);
    expect(done.changes).toEqual(told.changes);
  });
  it('a machine that is added is none of it, nor is the same file again', async () => {
    const { told } = await applied((file) =>
      file.replace('  - name: Hazel', '  - name: Rowan\n    build: {feed: direct}\n  - name: Hazel'),
    );
    expect([told.added, told.changes]).toEqual([['rowan'], []]);
    expect((await applied((file) => file)).told.changes).toEqual([]);
  });
});
