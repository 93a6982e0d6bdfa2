/** `fettle read`: what messages are read as, one line in, one line out; nothing is written. */
import { createReader, openCalendar, parseWorkshop, type Reading, type Workshop } from '../../src/index.ts';
import { demoTemplate } from '../../demo-data/build.ts';
import type { Command } from './command.ts';
import { failed } from './fault.ts';
import { noWords } from './options.ts';
import { momentOf, readTextFile } from './session.ts';

interface Line {
  id: string | number;
  text: string;
}

const isLine = (value: unknown): value is Line =>
  typeof value === 'object' &&
  value !== null &&
  'id' in value &&
  (typeof value.id === 'string' || typeof value.id === 'number') &&
  'text' in value &&
  typeof value.text === 'string';

function lineOf(raw: string): Line | string {
  try {
    const value: unknown = JSON.parse(raw);
    return isLine(value) ? value : 'a line needs an id and a text: {"id":"1","text":"…"}';
  } catch {
    return 'this line is not JSON';
  }
}

function workshopIn(path: string | undefined): Workshop {
  const parsed = parseWorkshop(path === undefined ? demoTemplate() : readTextFile(path));
  if (parsed.ok) return parsed.workshop;
  throw failed('bad-workshop', parsed.faults.map((f) => `Line ${f.line}: ${f.text}`).join('\n'));
}

const document = (id: string | number, { acts, trail }: Reading, withTrail: boolean): string =>
  JSON.stringify({ id, acts: acts.map(({ act }) => act), ...(withTrail ? { trail } : {}) });

export const read: Command = {
  about: 'read messages (JSON lines on standard input) without writing anything',
  usage: 'read [--workshop FILE] [--now ISO] [--trail]',
  options: { workshop: { type: 'string' }, trail: { type: 'boolean' } },
  async run(args, world) {
    noWords(args, 'read');
    const { workshop, people, machines } = workshopIn(args.text('workshop'));
    const calendar = openCalendar(workshop.zone);
    const now = momentOf(args, world, calendar);
    const said = { date: calendar.dateOf(now), minute: calendar.minuteOf(now) };
    const reader = createReader({ machines, people: people.map((p) => p.name) });
    let number = 0;
    let bad = false;
    for await (const raw of world.input) {
      number += 1;
      if (raw.trim() === '') continue;
      const line = lineOf(raw);
      if (typeof line === 'string') bad = true;
      world.output.out(
        `${typeof line === 'string' ? JSON.stringify({ line: number, error: line }) : document(line.id, reader(line.text, said), args.flag('trail'))}\n`,
      );
    }
    return bad ? 1 : 0;
  },
};
