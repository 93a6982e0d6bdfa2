import { describe, expect, it } from 'vitest';
import { actsOf } from './support/workshop.ts';

const asked = (text: string) => actsOf(text).map((act) => ({ ...act }));

describe('the days that a question is about (said on Wednesday 2026-03-11)', () => {
  it.each([
    ['how many hours did elm run this week?', '2026-03-09', '2026-03-11'],
    ['how many hours did elm run last week?', '2026-03-02', '2026-03-08'],
    ['how much filament have we burned through this month', '2026-03-01', '2026-03-11'],
    ['how many hours did we put on cedar last month', '2026-02-01', '2026-02-28'],
    ['hours run by alder in february?', '2026-02-01', '2026-02-28'],
    ['how much has elm run since monday', '2026-03-09', '2026-03-11'],
    ['hours on birch in the last 3 days?', '2026-03-08', '2026-03-11'],
    ['what did Tomasz do yesterday?', '2026-03-10', '2026-03-10'],
    ['what happened on elm over the weekend?', '2026-03-07', '2026-03-08'],
    ['hours on elm this year?', '2026-01-01', '2026-03-11'],
  ])('"%s" looks back', (text, from, to) => expect(asked(text)[0]).toMatchObject({ kind: 'ask', from, to }));

  it.each([
    ["what's due this week?", '2026-03-11', '2026-03-15'],
    ["what's coming up next week", '2026-03-16', '2026-03-22'],
    ['anything due on elm tomorrow?', '2026-03-12', '2026-03-12'],
    ["what's due this month?", '2026-03-11', '2026-03-31'],
    ['what has to be done until Friday', '2026-03-11', '2026-03-13'],
    ["what's due at the weekend?", '2026-03-14', '2026-03-15'],
  ])('"%s" looks ahead', (text, from, to) => expect(asked(text)[0]).toMatchObject({ kind: 'ask', from, to }));

  it('names no days where none are said', () => expect(asked("what's overdue?")).toEqual([{ kind: 'ask', topic: 'overdue' }]));
}); // prettier-ignore

it('a person is asked after, or the speaker', () => {
  expect(asked('what did Tomasz do on cedar yesterday')[0]).toMatchObject({
    topic: 'history',
    who: 'tomasz',
  });
  expect(asked('what have I logged today')[0]).toMatchObject({ topic: 'history', who: 'me' });
});

describe('one wish is asked once', () => {
  it.each([
    'The Hamlet crowd take over from me at five and I have no clue what to tell them, could you give me the run-down?',
    'oldest nozzle we have, anyone know?',
    "what's the deal with elm, is it up?",
    'juniper 24 h, ready?',
  ])('%s', (text) => expect(asked(text)).toHaveLength(1));
});

describe('no question of ours', () => {
  it.each(['how are you?', 'who wants coffee?', 'what time is lunch', 'anyone seen my keys?', 'is the projector free', 'when does the bus go'])(
    '%s',
    (text) => expect(asked(text)).toEqual([]),
  );
}); // prettier-ignore
