/**
 * The forecast against the inverse Gaussian first passage.
 * Source of the figures: scipy.stats.invgauss (reference I-O1 to I-O5; I-O3 also in closed form by R).
 */
import { describe, expect, it } from 'vitest';
import { pathsOf } from '../../src/maintenance/due/weeks.ts';
import { BUILDS } from '../support/builds.ts';
import { passage, passageQuantile, passedBy } from '../support/firstPassage.ts';
import { contextOn, recordOf } from '../support/machines.ts';

const near = (actual: number, expected: number, relative = 1e-8): void =>
  expect(Math.abs(actual / expected - 1)).toBeLessThan(relative);

describe('the reference itself', () => {
  it('I-O1: 500 h at 12 ± 9 h a day', () => {
    const of = passage(500, 12, 9);
    near(of.mu, 41.666666666666664);
    near(of.lambda, 3086.41975308642);
    near(passageQuantile(of, 0.1), 35.67642468842719);
    near(passageQuantile(of, 0.5), 41.38760960182701);
    near(passageQuantile(of, 0.9), 48.01540898443616);
    near(passedBy(of, of.mu), 0.5230990105200876);
    near(passedBy(of, of.mu / 2), 7.77087451904834e-10);
    near(passedBy(of, of.mu * 1.5), 0.999826197406018);
  });
  it('I-O2: 100 h at 4 ± 6 h a day', () => {
    const of = passage(100, 4, 6);
    near(passageQuantile(of, 0.05), 14.781399325179041);
    near(passageQuantile(of, 0.5), 23.930438831258726);
    near(passageQuantile(of, 0.95), 38.866252960732915);
  });
  it('I-O3: the standard one', () => near(passedBy(passage(1, 1, 1), 1), 0.6681020012231706));
  it('I-O4: where a plain exponential would overflow', () => {
    const of = passage(2000, 20, 5);
    near(passageQuantile(of, 0.5), 99.96876138794285, 1e-7);
    near(passageQuantile(of, 0.99), 105.95387848083922, 1e-7);
    near(passedBy(of, of.mu), 0.5049859996858326, 1e-7);
  });
  it('I-O5: from a partly used state', () => {
    const of = passage(500 - 180, 12, 9);
    near(passageQuantile(of, 0.5), 26.388824276257207);
    near(passedBy(of, 21), 0.05694962726400758);
    near(passedBy(of, 28), 0.6587832994359749);
  });
});

describe('every quantile of the reference', () => {
  const QUANTILES: readonly (readonly [string, number, number, number, readonly (readonly [number, number])[]])[] = [
    ['I-O1', 500, 12, 9, [[0.05, 34.20993286616417], [0.1, 35.67642468842719], [0.5, 41.38760960182701], [0.9, 48.01540898443616], [0.95, 50.07528223268026]]],
    ['I-O2', 100, 4, 6, [[0.05, 14.781399325179041], [0.1, 16.414211118929845], [0.5, 23.930438831258726], [0.9, 34.957283652943836], [0.95, 38.866252960732915]]],
    ['I-O3', 1, 1, 1, [[0.05, 0.1841132772142301], [0.1, 0.2376247087271448], [0.5, 0.6758413056952389], [0.9, 2.1430339129571485], [0.95, 2.922075977269224]]],
    ['I-O5', 320, 12, 9, [[0.05, 20.80782091878019], [0.5, 26.388824276257207], [0.95, 33.473242615561176]]],
  ]; // prettier-ignore
  it.each(QUANTILES)('%s', (_, limit, drift, sd, quantiles) => {
    const of = passage(limit, drift, sd);
    for (const [p, days] of quantiles) near(passageQuantile(of, p), days);
  });
  it('I-O4, to 1e-7', () => {
    const of = passage(2000, 20, 5);
    const far = [[0.01, 94.32176446213417], [0.05, 95.9418814164306], [0.5, 99.96876138794285], [0.95, 104.16467620261302], [0.99, 105.95387848083922]] as const; // prettier-ignore
    for (const [p, days] of far) near(passageQuantile(of, p), days, 1e-7);
    near(passedBy(of, 0.98 * of.mu), 0.21310699463057328, 1e-7);
  });
  it('and the chances beside them', () => {
    const second = passage(100, 4, 6);
    near(passedBy(second, second.mu), 0.5585769186177539);
    near(passedBy(second, second.mu / 2), 0.012652677510734376);
    near(passedBy(second, second.mu * 1.5), 0.9359716710310502);
    const standard = passage(1, 1, 1);
    near(passedBy(standard, 0.5), 0.36497554817295974);
    near(passedBy(standard, 1.5), 0.8107679929999789);
  });
});

describe('the forecast beside it', () => {
  // seven days a week, 2 or 10 h by turns that no weekday follows: 6 ± 4 h a day
  const hours = (day: number): number => (Math.floor(day * 0.618_034) % 2 === 0 ? 2 : 10);
  const paths = pathsOf(recordOf('alder', BUILDS.alder, { ran: hours }), {
    ...contextOn(),
    workingDays: [0, 1, 2, 3, 4, 5, 6],
  });
  it.each([60, 200, 500])('has its median within a tenth of it, %i h ahead', (left) => {
    const reference = passageQuantile(passage(left, 6, 4), 0.5);
    const median = (paths?.reach(left, 'hours').p50 ?? Infinity) + 1; // the day on which it is reached is used up
    expect(Math.abs(median - reference)).toBeLessThan(1 + reference * 0.1);
  });
});
