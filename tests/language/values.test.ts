import { describe, expect, it } from 'vitest';
import { actsOf } from './support/workshop.ts';

const hoursOf = (text: string): number | undefined => {
  const act = actsOf(text).find(({ kind }) => kind === 'usage' || kind === 'meter');
  return act && 'hours' in act ? act.hours : undefined;
};

describe('running time, however it is written', () => {
  it.each([
    ['alder ran 6h30', 6.5],
    ['alder ran 6:30', 6.5],
    ['alder 6.5 h', 6.5],
    ['alder 6,5 h', 6.5],
    ['alder ran 390 min', 6.5],
    ['alder ran 6 hours and 30 minutes', 6.5],
    ['alder ran an hour and a half', 1.5],
    ['alder ran half an hour', 0.5],
    ['alder ran two and a half hours', 2.5],
    ['alder ran from 8 to 2:30', 6.5],
    ['three 2-hour prints on alder', 6],
    ['alder ran 2 x 3h', 6],
    ['alder counter 127 d 6 h', 3054],
    ['counter on alder reads 2,350', 2350],
    ['odometer on alder: 2 350 h', 2350],
    ['meter on alder: 2.3k', 2300],
  ])('%s is %d h', (text, hours) => expect(hoursOf(text)).toBeCloseTo(hours, 6));

  it.each([
    'alder 0.4 nozzle',
    'alder at 60 mm/s',
    'bed of alder at 60 °C',
    'layer 40 on alder',
    'belts on alder at 110 Hz',
    'alder M3 screw',
    'alder ran 2-3 h',
  ])('%s gives no hours', (text) => expect(hoursOf(text)).toBeUndefined());
  it('a drying time is no running time', () =>
    expect(hoursOf('dried the nylon 8 h for cedar')).toBeUndefined());
});
