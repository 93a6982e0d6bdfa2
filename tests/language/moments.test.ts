/** The moments the tool is judged by, and the awkward ones, as they come from the bench. */
import { describe, expect, it } from 'vitest';
import { actsOf, NOW, readDemo } from './support/workshop.ts';

describe('the first moment: a log after clearing a jam', () => {
  it('reads four acts, all on birch', () =>
    expect(actsOf('cleared a jam on birch, feeder gear was packed so cleaned that too. swapped the nozzle, worn. ran 6.5h')).toEqual([
      { kind: 'done', machine: 'birch', task: 'clear-jam' },
      { kind: 'done', machine: 'birch', task: 'clean-feeder' },
      { kind: 'swap', machine: 'birch', part: 'nozzle', reason: 'worn' },
      { kind: 'usage', machine: 'birch', hours: 6.5 },
    ])); // prettier-ignore
  it('says by which rule and from where', () => {
    const text = 'cleared a jam on birch';
    expect(readDemo(text, NOW).acts[0]?.trail).toEqual([
      { rule: 'done: clear x jam', span: [0, text.length] },
    ]);
  });
});

it('the third moment: what is overdue on one machine', () =>
  expect(actsOf("what's overdue on alder?")).toEqual([{ kind: 'ask', topic: 'overdue', machine: 'alder' }]));

describe('safety comes in every mood', () => {
  it.each([
    ['smells like burning near juniper', 'burning-smell', 'juniper', true],
    ['elm gives me a tickle when I touch the frame', 'shock', 'elm', true],
    ['is that smoke coming from birch?', 'smoke', 'birch', false],
    ['if cedar smells burnt, stop it', 'burning-smell', 'cedar', false],
    ['cedar is on fire', 'smoke', 'cedar', true],
  ])('%s', (text, symptom, machine, asserted) =>
    expect(readDemo(text, NOW).safety).toEqual([{ symptom, machine, asserted }]));
  it.each(['cedar is on fire today, 14 parts without a miss', 'smoke machine is leaking', 'tested the smoke detector', 'smoke break?'])(
    '%s is no warning',
    (text) => expect(readDemo(text, NOW).safety).toEqual([]),
  );
}); // prettier-ignore

it('a burn is an injury before it is a swap', () => {
  expect(readDemo("burnt my thumb on cedar's nozzle, swapped it though", NOW).injury).toBe(true);
  expect(readDemo('burnt filament on the nozzle of cedar', NOW).injury).toBe(false);
});

it('what could not be told comes with its doubt', () => {
  const reading = readDemo('swapped a nozzle on 2 or 5, can\'t remember', NOW);
  expect(reading.doubts).toEqual([{ field: 'machine', said: expect.any(String), options: ['birch', 'hazel'] }]);
}); // prettier-ignore
