/** "Can it run that long?": the day it starts, the filament it takes, what is open and what was never explained. */
import { beforeEach, describe, expect, it } from 'vitest';
import { demoTalk, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});

describe('a long job', () => {
  it('is judged from the day it starts to the day it ends', async () => {
    const friday = await talk.hear('can alder run 52 h from Friday?');
    expect(friday).toMatch(/Alder, 52 h from Friday to Monday at the latest/u);
    expect(friday).toMatch(/Due already: oil the rods/u);
    expect(friday).toMatch(/Falls due before it is over: .*set the belt tension, Monday \(90 days\)/u);
    const now = await talk.hear('can alder run 10 h?');
    expect(now).not.toMatch(/belt tension/u);
  });

  it('an hour of the day makes the end sure', async () => {
    const text = await talk.hear('can alder run 52 h from friday 5pm');
    expect(text).toMatch(/from Friday to Sunday, from the records/u);
    expect(text).not.toMatch(/belt tension/u);
  });

  it('a whole weekend is a span too', async () => {
    expect(await talk.hear('can hazel run all weekend?')).toMatch(/Hazel, 48 h from Saturday to Monday/u);
  });

  it('what the job takes stands beside what the spool has left by the logs', async () => {
    await talk.say('loaded 600 g of pla on alder');
    await talk.say('alder 10 h pla 150 g');
    const text = await talk.hear('can alder run 52 h from friday, 810 g?');
    expect(text).toMatch(
      /about 450 g left by the logs of 600 g; the job takes 810 g: more than was mounted/u,
    );
    expect(await talk.hear('can alder run 20 h, 0.5 kg?')).toMatch(/takes 500 g: not enough on it/u);
    expect(await talk.hear('can alder run 20 h, 0.4 kg?')).toMatch(/takes 400 g$/mu);
  });

  it('abrasive filament is told by what the job wears', async () => {
    await talk.say('mounted nylon-cf on hazel, 1 kg');
    expect(await talk.hear('can hazel run 30 h, 560 g?')).toMatch(/this job uses up about 2 nozzles/u);
  });

  it('scraps of the whole room are no matter of one job', async () => {
    expect(await talk.hear('can alder run 52 h from Friday?')).not.toMatch(/scraps/u);
  });
});

describe('trouble that nobody explained', () => {
  it('is told with its day, also after it was cleared', async () => {
    await talk.say('jam on hazel, cleared');
    talk.later(2 * 24 * 60);
    expect(await talk.hear('can hazel run 20 h?')).toMatch(/no cause on record: jam \(Wednesday\)/u);
  });

  it('is not told any more once a cause is on record, or after two weeks', async () => {
    await talk.say('jam on hazel, cleared');
    await talk.say('jam on birch, cleared');
    await talk.say('swapped the nozzle on hazel, worn');
    expect(await talk.hear('can hazel run 20 h?')).not.toMatch(/no cause on record/u);
    talk.later(15 * 24 * 60);
    expect(await talk.hear('can birch run 20 h?')).not.toMatch(/no cause on record/u);
  });

  it('that is still there is told however old', async () => {
    await talk.say('hazel is squeaking');
    talk.later(20 * 24 * 60);
    expect(await talk.hear('can hazel run 20 h?')).toMatch(/Noticed and not cleared: squeak/u);
  });
});

it('never says that it is safe', async () => {
  for (const name of ['alder', 'birch', 'cedar', 'elm', 'hazel', 'juniper', 'maple', 'rowan']) {
    const text = await talk.hear(`can ${name} run 52 h from Friday?`);
    expect(text).not.toMatch(/\bsafe\b/u);
    expect(text).toMatch(/workshop’s rule; I cannot tell you/u);
  }
});
