/** Questions that a day in the room brings: what was done to a part, what fits into the time there is, a job to come. */
import { describe, expect, it } from 'vitest';
import { demoTalk } from '../support/talk.ts';

describe('what was done', () => {
  it('to a part is its care as well as its replacement', async () => {
    const talk = await demoTalk();
    expect(await talk.hear('have the rods on alder been done?')).toContain(
      '2 December 2025, Ines: rods oiled',
    );
    expect(await talk.hear('when were alder’s belts last done?')).toContain('belts tensioned');
  });

  it('is only the replacement where that is asked for', async () => {
    const talk = await demoTalk();
    const heard = await talk.hear('when was the nozzle on maple last changed?');
    expect(heard).toContain('23 June 2025, Odd: nozzle replaced');
    expect(heard).not.toContain('checked');
  });

  it('is found by the verb alone', async () => {
    const talk = await demoTalk();
    for (const asked of ['did anyone oil alder?', 'when was alder oiled last?'])
      expect(await talk.hear(asked)).toContain('2 December 2025, Ines: rods oiled');
  });
});

describe('so much time', () => {
  it('is filled with the most urgent that fits', async () => {
    const talk = await demoTalk();
    const heard = await talk.hear('i’ve got 20 mins');
    expect(heard).toMatch(/^In 20 min: 2 tasks, about 20 min\./u);
    expect(heard).toContain('Cedar: check the wiring (because of “no heat”), overdue, about 15 min');
    expect(await talk.hear('what fits in 5 minutes on elm?')).toContain('Elm: clean the plate');
  });

  it('that is too short for anything says what is shortest', async () => {
    const talk = await demoTalk();
    expect(await talk.hear('what can i do in 1 minute?')).toMatch(
      /nothing fits; the shortest is .+ on \p{Lu}/u,
    );
  });

  it('that a machine ran is no spare time', async () => {
    const talk = await demoTalk();
    expect(await talk.hear('elm ran 20 mins')).toContain('Elm: noted.');
    expect(await talk.hear('I’ve got 20 mins until lunch')).toBe('');
  });
});

describe('a job to come', () => {
  it('is held against what falls due before it ends', async () => {
    const talk = await demoTalk();
    expect(await talk.hear('can birch run 10 h today?')).not.toContain('check the tube');
    const heard = await talk.hear('can birch run 10 h from Monday?');
    expect(heard).toContain('Birch, 10 h from Monday');
    expect(heard).toContain('check the tube');
  });

  it('is held against the spool that was mounted', async () => {
    const talk = await demoTalk();
    expect(await talk.hear('can birch do 1.2 kg from monday?')).toContain('1,200 g: more than was mounted');
    expect(await talk.hear('can birch do 300 g from monday?')).not.toContain('more than was mounted');
  });

  it('hears of jams without a cause', async () => {
    const talk = await demoTalk();
    for (let n = 0; n < 3; n += 1) {
      await talk.hear('cleared a jam on juniper');
      talk.later(120);
    }
    expect(await talk.hear('can juniper run 10 h?')).toContain('3 jams today, and no cause on record.');
  });
});

describe('a crash', () => {
  it('asks for its looks in the order in which they are gone over', async () => {
    const talk = await demoTalk();
    expect(await talk.hear('hazel crashed into the bed')).toContain(
      'in this order: check the wiring, check heater and sensor, check the nozzle, check the wheels, tighten pulleys and couplers, level the bed and check the first layer',
    );
  });
});

describe('a machine that is being added', () => {
  it('takes all that is said with an answer, and waits while other things are asked', async () => {
    const talk = await demoTalk();
    expect(await talk.hear('add willow, like hazel')).toContain('new or used?');
    expect(await talk.hear('status of cedar')).toContain('out of use since Monday');
    expect(await talk.hear('used, 800 h, brass 0.4')).toContain('Willow: noted.');
    expect(await talk.hear('status of willow')).toContain('800 h on the counter · nozzle brass 0.4');
    expect(await talk.hear('what’s overdue on willow?')).toContain(
      'First, for safety, nothing on record: check heater and sensor',
    );
  });

  it('is given up by something else that is logged', async () => {
    const talk = await demoTalk();
    await talk.hear('add willow, like hazel');
    await talk.hear('cleaned the plate on birch');
    expect(await talk.hear('used')).toBe('');
  });
});
