/** Orders about the workshop itself: what is read beside the acts, and what only looks like it. */
import { describe, expect, it } from 'vitest';
import type { Order } from '../../src/language/act.ts';
import { actsOf, NOW, readDemo } from './support/workshop.ts';

const ordersOf = (text: string): Order[] => readDemo(text, NOW).orders.map(({ order }) => order);
const kindsOf = (text: string): string[] => ordersOf(text).map(({ kind }) => kind);

const READ: readonly (readonly [string, Partial<Order>])[] = [
  ['all fine on birch as of today', { kind: 'baseline', machines: ['birch'] }],
  ['everything is fine on birch as of 1 March', { kind: 'baseline', machines: ['birch'], on: '2026-03-01' }],
  ['start now', { kind: 'baseline', machines: [] }],
  ['rods every 250 h on alder, says its manual', { kind: 'interval', machines: ['alder'], tasks: ['lubricate-rods'], hours: 250, source: 'manual' }],
  ["oil hazel's rods every 300 h", { kind: 'interval', machines: ['hazel'], hours: 300, source: 'workshop' }],
  ['set the interval for the belts on elm to 60 days', { kind: 'interval', machines: ['elm'], tasks: ['tension-belts'], days: 60 }],
  ['we got another one like hazel, call it willow', { kind: 'add', like: 'hazel', name: 'willow' }],
  ['we got another one like hazel. its name is Willow 2, it is brand new', { kind: 'add', like: 'hazel', name: 'Willow 2', condition: 'new' }],
  ['add a machine called willow like hazel', { kind: 'add', like: 'hazel', name: 'willow' }],
  ['enrol willow, same as #5, second hand with 1200 h', { kind: 'add', like: 'hazel', name: 'willow', condition: 'used', hours: 1200 }],
  ['alder has a direct feed now', { kind: 'convert', machines: ['alder'], build: { feed: 'direct' } }],
  ['converted alder to direct drive', { kind: 'convert', machines: ['alder'], build: { feed: 'direct' } }],
  ['birch has a brass z nut now', { kind: 'convert', machines: ['birch'], build: { screwNut: 'metal' } }],
  ['elm has linear rails on x and y now', { kind: 'convert', machines: ['elm'], build: { x: 'rails', y: 'rails' } }],
  ['rename alder to ash', { kind: 'rename', machine: 'alder', name: 'ash' }],
  ['alder is now called Ash', { kind: 'rename', machine: 'alder', name: 'Ash' }],
  ['add a printer', { kind: 'add' }],
  ['add a new printer called finch', { kind: 'add', name: 'finch' }],
  ['sold alder, goes friday', { kind: 'retire', machines: ['alder'], on: '2026-03-13' }],
  ['sold alder yesterday', { kind: 'retire', machines: ['alder'], on: '2026-03-10' }],
  ['retire rowan on 20 March', { kind: 'retire', machines: ['rowan'], on: '2026-03-20' }],
  ['false alarm on birch', { kind: 'falseAlarm', machines: ['birch'], said: true }],
  ['nothing on birch, false alarm', { kind: 'falseAlarm', machines: ['birch'], said: true }],
  ['it was just the toaster', { kind: 'falseAlarm', machines: [], certain: true, said: false }],
  ['could be the toaster', { kind: 'falseAlarm', machines: [], certain: false, said: false }],
  ["juniper's back, was just a loose plug, replaced by tomasz", { kind: 'lift', machines: ['juniper'], mended: true }],
  ["juniper's back, was just a loose plug", { kind: 'lift', machines: ['juniper'], mended: false }],
  ['handing over: birch waits for a thermistor', { kind: 'handOver', text: 'birch waits for a thermistor' }],
  ["handing over to Tomasz: don't start birch, its spool is nearly empty", { kind: 'handOver', to: 'tomasz', text: "don't start birch, its spool is nearly empty" }],
  ['handing over to Priya', { kind: 'handOver', to: 'priya' }],
  ['I take over', { kind: 'takeOver' }],
  ['taking over from Ines', { kind: 'takeOver', from: 'ines' }],
  ["note: hazel's left knob is stiff", { kind: 'note', machines: ['hazel'], text: "hazel's left knob is stiff" }],
  ['note for birch: use the blue clips', { kind: 'note', machines: ['birch'], text: 'use the blue clips' }],
  ["stop nagging about birch's belts", { kind: 'quiet', machines: ['birch'], tasks: ['tension-belts'] }],
  ['stop telling me about the firmware', { kind: 'quiet', machines: [] }],
  ['starting the 14 h on birch', { kind: 'start', machines: ['birch'], hours: 14 }],
  ['who broke birch?', { kind: 'blame', machines: ['birch'], counts: false }],
  ['how many jams did Tomasz cause?', { kind: 'blame', counts: true, who: 'tomasz' }],
  ['who has the most jams', { kind: 'blame', counts: true }],
  ['cedar is on fire', { kind: 'maybeJoke', machines: ['cedar'] }],
]; // prettier-ignore

describe('an interval is no swap', () => {
  it('though it names what could be replaced', () =>
    expect(actsOf('new interval for the rods on alder: 250 h')).toEqual([]));
});

describe('orders are read', () => {
  it.each(READ)('%s', (text, expected) => {
    const [order] = ordersOf(text);
    expect(order).toMatchObject(expected);
  });
});

/** Each beside the order that it must not be. */
const NEAR_MISSES: readonly (readonly [string, string])[] = [
  ['all fine on birch', 'baseline'],
  ['add oil to the printer', 'add'],
  ['add the printer to the list of things to clean', 'add'],
  ["I'm not handing over to Priya yet", 'handOver'],
  ['is everything fine on birch as of today?', 'baseline'],
  ['birch starts now and then on its own', 'baseline'],
  ['start now or we miss the deadline for the 20 h print', 'baseline'],
  ['do we oil the rods every 300 h?', 'interval'],
  ['the fan on alder rattles every 10 minutes', 'interval'],
  ['I oil the rods every 250 h', 'interval'],
  ['oiled the rods on alder after 250 h', 'interval'],
  ['we need another one like hazel', 'add'],
  ['should we get another one like hazel, call it willow?', 'add'],
  ['another jam like on hazel', 'add'],
  ['we got another nozzle like the one on hazel', 'add'],
  ['will alder get a direct feed?', 'convert'],
  ['alder would be better with a direct feed', 'convert'],
  ["I got dibs on rowan's bed springs, swapping em tonight", 'convert'],
  ['call alder ready', 'rename'],
  ['sold alder boards to the joiner', 'retire'],
  ['retired the old nozzle on alder', 'retire'],
  ['should we sell alder?', 'retire'],
  ['we might have sold alder', 'retire'],
  ["binned alder's print", 'retire'],
  ['was it a false alarm?', 'falseAlarm'],
  ['if it was a false alarm, fine', 'falseAlarm'],
  ['it was me who smelled it', 'falseAlarm'],
  ['it was 5 h', 'falseAlarm'],
  ['juniper is back', 'lift'],
  ['I fixed lunch', 'lift'],
  ['is juniper back, was it the plug?', 'lift'],
  ['what do I hand over?', 'handOver'],
  ['I took over the world', 'note'],
  ['note to self: buy milk', 'note'],
  ['note: oiled the rods on alder', 'note'],
  ['stop telling me about the firmware until friday', 'quiet'],
  ['stop telling jokes', 'quiet'],
  ["starting on birch's belts", 'start'],
  ['nobody start birch', 'start'],
  ['birch starts to squeak', 'start'],
  ['how many jams did birch have?', 'blame'],
  ['how often did Tomasz level the bed?', 'blame'],
  ['the grill is on fire', 'maybeJoke'],
];

describe('what only looks like an order is none', () => {
  it.each(NEAR_MISSES)('%s (no %s)', (text, kind) => {
    expect(kindsOf(text)).not.toContain(kind);
  });
});

describe('an order is no act, and an act beside it stays one', () => {
  it.each([
    'birch: everything done as of 1 March',
    'set the interval for the belts on elm to 60 days',
    "stop nagging about birch's belts",
    'we got another one like hazel, call it willow',
    'sold alder, goes friday',
    'rename alder to ash',
  ])('%s', (text) => {
    expect(actsOf(text)).toEqual([]);
  });

  it('a swap that is also a conversion is written as a swap', () => {
    expect(actsOf('birch got a brass z nut')).toMatchObject([{ kind: 'swap', part: 'screw-nut' }]);
  });

  it('coming back with what was mended covers the coming back, the trouble and the swap of what was in trouble', () => {
    const { acts, orders } = readDemo("juniper's back, was just a loose plug, replaced by tomasz", NOW);
    expect(orders[0]?.covers.map((i) => acts[i]?.act.kind)).toEqual(['up', 'symptom', 'swap']);
  });

  it('“the lot” after names is in doubt, the named ones are not', () => {
    const { acts, orders } = readDemo('did the belts on hazel and rowan and dusted the lot', NOW);
    expect(orders).toMatchObject([{ order: { kind: 'whichAll', named: ['hazel', 'rowan'] } }]);
    expect(new Set(orders[0]?.covers.map((i) => JSON.stringify(acts[i]?.act)))).toHaveLength(8);
  });
});

describe('a day that its teller is not sure of', () => {
  const unsure = (text: string): unknown[] =>
    readDemo(text, NOW).acts.map(({ assumed }) => assumed?.['on']?.from);
  it.each([
    ['forgot: swapped the nozzle on maple some time last week, think Thursday', ['unsure']],
    ["levelled alder's bed on Monday, I think", ['unsure']],
    ["levelled alder's bed on Monday", [undefined]],
    ["I think alder squeaks, levelled birch's bed on Monday", [undefined, undefined]],
  ])('%s', (text, expected) => {
    expect(unsure(text)).toEqual(expected);
  });
});
