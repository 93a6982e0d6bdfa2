/** Conversations beyond the three moments: context, questions, buttons, putting right. */
import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { plainText, type Answer } from '../../src/index.ts';
import { demoTalk, talkIn, type Talk } from '../support/talk.ts';

let talk: Talk;
beforeEach(async () => {
  talk = await demoTalk();
});

const kinds = (answer: Answer): string[] => answer.entries.map((entry) => entry.kind);
const text = (answer: Answer): string => plainText(answer.reply);
const labels = (answer: Answer): string[] => answer.buttons.map((button) => button.label);

describe('a message that names no machine', () => {
  it('is asked about once, with the machines as answers, and written when one is named', async () => {
    const asked = await talk.say('just changed a nozzle', { as: 'Priya' });
    expect(asked).toMatchObject({ outcome: 'asked', entries: [], question: { field: 'machine' } });
    expect(labels(asked).slice(0, 2)).toEqual(['Alder', 'Birch']);
    const answer = await talk.say('hazel', { as: 'Priya' });
    expect(answer.entries).toMatchObject([
      { kind: 'swapped', machine: 'hazel', because: asked.message, at: talk.now - 60_000 },
    ]);
  });

  it('takes the number of a button for an answer too', async () => {
    await talk.say('just changed a nozzle', { as: 'Priya' });
    expect((await talk.say('2', { as: 'Priya' })).entries).toMatchObject([
      { kind: 'swapped', machine: 'birch' },
    ]);
  });

  it('takes the machine spoken of just before, says so, and puts it right at a bare name', async () => {
    await talk.say('oiled the rods on alder');
    const guessed = await talk.say('ran 2 h');
    expect(guessed.entries).toMatchObject([{ kind: 'usage', machine: 'alder' }]);
    expect(guessed.results[0]?.flags).toContain('assumed-machine');
    expect(text(guessed)).toMatch(/Taken as Alder, spoken of just before\./u);
    expect((await talk.say('maple')).entries).toMatchObject([{ kind: 'amended', set: { machine: 'maple' } }]);
  });

  it('asks again after half an hour, and another person’s talk lends nothing', async () => {
    await talk.say('oiled the rods on alder');
    expect((await talk.say('ran 2 h', { as: 'Odd' })).outcome).toBe('asked');
    talk.later(31);
    expect((await talk.say('ran 2 h')).outcome).toBe('asked');
  });

  it('waits together with what hangs on the same doubt, and writes the rest', async () => {
    const answer = await talk.say('oiled the rods on alder. swapped a nozzle', { as: 'Priya' });
    expect(answer.outcome === 'written' || answer.outcome === 'partly').toBe(true);
    expect(answer.entries[0]).toMatchObject({ kind: 'done', machine: 'alder' });
  });
});

describe('a swap without a reason', () => {
  it('is written at once, and the reason is asked with three answers', async () => {
    const answer = await talk.say('swapped the nozzle on birch');
    expect(answer).toMatchObject({ outcome: 'written', question: { field: 'reason' } });
    expect(labels(answer)).toEqual(['Worn', 'Broken', 'Planned', 'Undo', 'Change something']);
    const reason = await talk.say('worn');
    expect(reason.entries).toMatchObject([
      { kind: 'amended', target: answer.entries[0]?.id, set: { reason: 'worn' } },
    ]);
    expect(kinds(await talk.say('undo'))).toEqual(['takenBack', 'takenBack']);
  });

  it('may stay unanswered: the next message is taken for what it says', async () => {
    await talk.say('swapped the nozzle on birch');
    expect((await talk.say('status birch')).outcome).toBe('answered');
  });
});

describe('putting right', () => {
  it('changes only what was said to be wrong', async () => {
    const first = await talk.say('ran birch 3 h, petg');
    const put = await talk.say('make that 4');
    expect(put.entries).toMatchObject([{ kind: 'amended', target: first.entries[0]?.id, set: { hours: 4 } }]);
    expect(text(put)).toMatch(/Birch: put right\.\n4 h run .*\(was: 3 h run/u);
  });

  it('a day is said of the whole message, on however many machines; a machine of one of its lines', async () => {
    await talk.say('cleaned the feeder on birch and hazel, levelled rowan');
    const day = await talk.say('that was yesterday');
    expect(day.entries.map((e) => e.kind)).toEqual(['amended', 'amended', 'amended']);
    const which = await talk.say('make that maple');
    expect(labels(which).slice(0, 3)).toEqual([
      'Birch: feeder cleaned',
      'Hazel: feeder cleaned',
      'Rowan: bed levelled',
    ]);
    expect((await talk.say('2')).entries).toMatchObject([{ kind: 'amended', set: { machine: 'maple' } }]);
  });

  it('the same on many machines is a line each, and one line where the words are the same', async () => {
    const ran = text(await talk.say('ran 4 h on all but cedar'));
    expect(ran.split('\n')).toHaveLength(8);
    expect(ran).toMatch(/^Noted\.\nAlder: 4 h run, now at 4,104 h\n/u);
    expect(text(await talk.say('undo'))).toMatch(/^Alder, Birch, .* and Rowan: taken back\.\n4 h run$/u);
    expect(text(await talk.say('ran alder 3h, birch 4h'))).toMatch(/^Alder: noted\.\n3 h run/u);
  });

  it('goes back one message with each undo, and says when nothing is left', async () => {
    await talk.say('oiled the rods on alder', { as: 'Priya' });
    await talk.say('dusted hazel', { as: 'Priya' });
    expect(text(await talk.say('undo', { as: 'Priya' }))).toMatch(/Hazel: taken back/u);
    expect(text(await talk.say('undo', { as: 'Priya' }))).toMatch(/Alder: taken back/u);
    const fresh = await talk.say('undo', { as: 'Newcomer' });
    expect(fresh).toMatchObject({ outcome: 'refused', results: [{ code: 'nothing-to-undo' }] });
  });

  it('never takes back what a workshop file enrolled', async () => {
    const fresh = await talkIn(readFileSync('demo-data/workshop.yaml', 'utf8'));
    expect(await fresh.say('undo', { as: 'Ines' })).toMatchObject({ outcome: 'refused', entries: [] });
    expect((await fresh.say('status')).outcome).toBe('answered');
  });

  it('is for its author or a keeper: nobody else’s last word is touched', async () => {
    await talk.say('oiled the rods on alder', { as: 'Ines' });
    expect((await talk.say('undo', { as: 'Visitor' })).entries).toEqual([]);
  });
});

describe('hours that the clock does not allow', () => {
  it('are asked about, and a figure or a yes settles it', async () => {
    const asked = await talk.say('30h on elm today');
    expect(asked).toMatchObject({ outcome: 'asked', entries: [], question: { field: 'hours' } });
    expect((await talk.say('3')).entries).toMatchObject([{ kind: 'usage', machine: 'elm', hours: 3 }]);
  });
  it('are left alone on “leave it”', async () => {
    await talk.say('30h on elm today');
    expect((await talk.say('leave it')).entries).toEqual([]);
  });
});

describe('plans', () => {
  it('put a task off to a date and show it as put off', async () => {
    const answer = await talk.say('push birch’s bed levelling to friday');
    expect(answer.entries).toMatchObject([
      { kind: 'putOff', machine: 'birch', task: 'level-bed', until: '2026-03-13' },
    ]);
    const rows = await talk.bot.due({ now: talk.now, machine: 'birch' });
    expect(rows.find((row) => row.task === 'level-bed')?.state).toBe('put-off');
  });

  it('by the button ask until when, with days to choose from', async () => {
    await talk.say("what's overdue on alder?");
    expect(labels(await talk.say('put off'))[0]).toBe('Put off: oil the rods on Alder');
    const asked = await talk.say('put off: oil the rods on alder');
    expect(asked.question?.options.map((option) => option.label)).toEqual([
      'Tomorrow',
      'Monday',
      'A week',
      'Two weeks',
    ]);
    expect((await talk.say('tomorrow')).entries).toMatchObject([
      { kind: 'putOff', machine: 'alder', task: 'lubricate-rods', until: '2026-03-12' },
    ]);
  });

  it('claim a task, and the status says whose it is', async () => {
    await talk.say('I’ll do maple’s nozzle tomorrow', { as: 'Odd' });
    expect(text(await talk.say('status maple'))).toMatch(
      /Somebody has it: replace the nozzle: Odd, tomorrow/u,
    );
  });
});

describe('a safety symptom', () => {
  it('gets the stop answer first, holds the machine, and nothing else is asked', async () => {
    const answer = await talk.say('smells like burning near juniper', { as: 'Priya' });
    expect(text(answer)).toMatch(/^Stop\. Cut the power at the wall/u);
    expect(text(answer)).toMatch(/Juniper is now held\./u);
    expect(answer.question).toBeNull();
    expect(labels(answer)[0]).toBe('False alarm');
  });

  it('keeps the machine held until it is lifted the right way', async () => {
    await talk.say('smells like burning near juniper', { as: 'Priya' });
    const back = await talk.say("juniper's back", { as: 'Odd' });
    expect(back).toMatchObject({ outcome: 'refused', results: [{ code: 'safety-hold' }] });
    expect(text(await talk.say('status juniper', { as: 'Odd' }))).toMatch(
      /Juniper is held: burning smell, told by Priya/u,
    );
    await talk.say("juniper's back", { as: 'Ines' });
    await talk.say('say what was found', { as: 'Ines' });
    const readBack = await talk.say('a toaster two doors down, nothing on the printer', { as: 'Ines' });
    expect(readBack).toMatchObject({ outcome: 'asked', entries: [] });
    const lifted = await talk.say('yes', { as: 'Ines' });
    expect(lifted.entries).toMatchObject([
      { kind: 'released', machine: 'juniper', found: expect.stringMatching(/toaster/u) },
    ]);
    expect(text(await talk.say('status juniper'))).not.toMatch(/held/u);
  });

  it('warns at a question without writing', async () => {
    const answer = await talk.say('is that smoke coming out of elm?');
    expect(text(answer)).toMatch(/^Stop\./u);
    expect(answer.entries).toEqual([]);
  });

  it('is not a joke’s business: a good day is not a fire', async () => {
    const answer = await talk.say('cedar is on fire today, 14 parts without a miss');
    expect(answer.entries).toEqual([]);
  });
});

describe('somebody is hurt', () => {
  it.each([
    ["burnt my thumb on cedar's nozzle", /^First aid first.*\nBurn: cool running water/u],
    ['cut my hand on the scraper', /^First aid first.*\nCut: press a clean dressing/u],
    ['my eye got splashed with IPA', /^First aid first.*\nEye: rinse with clean water/u],
    ['coughing from the fumes of the abs', /^First aid first.*\nFumes: out into fresh air/u],
    ['Odd is hurt', /^First aid first[^\n]*\nTell your first-aider\.$/u],
  ])('%s: first aid of that kind before all else, and nothing is written', async (told, expected) => {
    const answer = await talk.say(told);
    expect(text(answer)).toMatch(expected);
    expect(answer.entries).toEqual([]);
  });

  it('is not told by a cut tube or an eye for detail', async () => {
    expect(text(await talk.say('cut the tube end on birch square'))).not.toMatch(/First aid/u);
    expect(text(await talk.say('good eye on that first layer, Odd'))).not.toMatch(/First aid/u);
  });
});

describe('a machine that comes back', () => {
  it('is told what it still owes before it starts', async () => {
    expect(text(await talk.say('cedar is back in use'))).toMatch(
      /Still to do before it starts: check the wiring/u,
    );
  });
});

describe('what was put right', () => {
  it('stands in the history of the machine where it belongs, and nowhere else', async () => {
    await talk.say('cleared a jam on hazel');
    await talk.say('make that birch');
    expect(text(await talk.say('history birch'))).toMatch(/Today, Ines: jam cleared/u);
    expect(text(await talk.say('history hazel'))).not.toMatch(/Today, Ines: jam cleared/u);
  });

  it('is named when the correction itself is taken back', async () => {
    await talk.say('ran alder 3h');
    await talk.say('make that 4');
    expect(text(await talk.say('undo'))).toMatch(/Alder: taken back\.\nput right: 4 h run \(was: 3 h run\)/u);
  });
});

describe('tasks without a record', () => {
  it('are settled for a whole machine by one button, and by one undo are open again', async () => {
    const open = async () =>
      (await talk.bot.due({ now: talk.now, machine: 'elm' })).filter((row) => row.state === 'no-record')
        .length;
    expect(await open()).toBeGreaterThan(0);
    expect(text(await talk.say("what's overdue on elm?"))).toMatch(
      /1 safety check without a record: check door switch and guards\. Say when last done\./u,
    );
    const stated = await talk.say('all fine as of today');
    expect(stated.entries).toMatchObject([{ kind: 'stated', machine: 'elm' }]);
    expect(text(stated)).toMatch(/Elm: noted\.\nall fine, stated for all its tasks/u);
    expect(await open()).toBe(0);
    await talk.say('undo');
    expect(await open()).toBeGreaterThan(0);
  });
});

describe('grease on a plastic nut', () => {
  it('is noted as told, and the sheet’s objection is said', async () => {
    const answer = await talk.say("greased birch's z screw", { as: 'Odd' });
    expect(answer.results[0]?.flags).toContain('plastic-nut');
    expect(text(answer)).toMatch(/Z screw greased\n.*plastic Z nut/u);
  });
});

describe('a spool of filled filament', () => {
  it('on a brass nozzle: says before the print what it will use up, and what the shelf has instead', async () => {
    const answer = await talk.say('mounted nylon-cf on hazel, 1 kg, going tonight');
    expect(answer.entries).toMatchObject([
      { kind: 'loaded', machine: 'hazel', material: 'nylon-cf', grams: 1000 },
    ]);
    expect(text(answer)).toMatch(/Hazel has brass 0\.4: this spool uses up about 3\.\d nozzles’ worth\./u);
    expect(text(answer)).toMatch(/2 nozzles hardened 0\.6/u);
    expect(text(answer)).toMatch(/hot end is not stated, so taken as PTFE-lined/u);
  });

  it('on a hardened nozzle is a share of its life, and plain filament is not worth a word', async () => {
    expect(text(await talk.say('mounted nylon-cf on cedar, 1 kg'))).toMatch(
      /about \d\d % of this nozzle’s life/u,
    );
    expect(text(await talk.say('mounted pla on birch, 1 kg'))).not.toMatch(/uses up/u);
  });
});

describe('questions', () => {
  it.each([
    ['who levelled rowan last?', /bed levelled/u],
    ['how long has juniper been on that nozzle', /Juniper nozzle \(brass 0\.8\): .* h over \d+ days/u],
    ['any nozzles left?', /On the shelf, by the records:\n/u],
    ['how do I level birch’s bed?', /Level the bed on Birch, about 10 min:\nFetch: /u],
    ['how do I change the power supply on elm?', /I won’t give steps for that: mains inside/u],
    ['status', /8 machines\./u],
    ['tot hours elm', /Elm: .*on its counter/u],
    ['help', /cleared a jam on Birch/u],
    ['can elm run 18 h tonight', /Elm, 18 h to tomorrow at the latest, from the records:/u],
    ['what do I hand over?', /To pass on/u],
    [
      'when is maple’s nozzle due?',
      /Maple: replace the nozzle: 21 days over its 180 days in use\nWhy: every 180 days in use/u,
    ],
  ])('%s', async (question, expected) => {
    const answer = await talk.say(question);
    expect(answer).toMatchObject({ outcome: 'answered', entries: [] });
    expect(text(answer)).toMatch(expected);
  });
});
