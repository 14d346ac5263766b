import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { OutOfRange } from './errors.ts';
import {
  asMarkedFNumber,
  asMarkedShutterTime,
  exactFNumber,
  exactShutterTime,
  fNumberSeries,
  fullStopFNumbers,
  nominalFNumber,
  nominalShutterTime,
  shutterTimeSeries,
} from './nominal.ts';

const families = [
  {
    what: 'f-numbers',
    series: fNumberSeries,
    exact: exactFNumber,
    nominal: nominalFNumber,
    asMarked: asMarkedFNumber,
    step: 2 ** (1 / 6),
  },
  {
    what: 'shutter times',
    series: shutterTimeSeries,
    exact: exactShutterTime,
    nominal: nominalShutterTime,
    asMarked: asMarkedShutterTime,
    step: 2 ** (1 / 3),
  },
];

describe.each(families)('marked $what', ({ series, exact, nominal, asMarked, step }) => {
  it('rise from mark to mark, a third of a stop apart in exact value', () => {
    for (let index = 1; index < series.length; index++) {
      expect(series[index]!).toBeGreaterThan(series[index - 1]!);
      const ratio = exact(series[index]!)! / exact(series[index - 1]!)!;
      expect(ratio).toEqual(closeTo(step, { relative: 1e-14, because: 'two powers of two, each rounded' }));
    }
  });

  it('lie nearer to the value they stand for than to the next', () => {
    for (const mark of series) expect(Math.abs(Math.log(mark / exact(mark)!))).toBeLessThan(Math.log(step) / 2);
  });

  it('stand for one exact value each, and are found again from it', () => {
    for (const mark of series) {
      expect(nominal(exact(mark)!)).toBe(mark);
      expect(asMarked(exact(mark)!)).toBe(mark);
    }
  });

  it('are the nearest of all to a value, by ratio of exact values', () => {
    const [first, last] = [series[0]!, series.at(-1)!];
    fc.assert(
      fc.property(fc.double({ min: Math.log(first), max: Math.log(last), noNaN: true }), (logarithm) => {
        const distance = (mark: number) => Math.abs(Math.log(exact(mark)!) - logarithm);
        const nearest = distance(nominal(Math.exp(logarithm)));
        for (const mark of series) expect(nearest).toBeLessThanOrEqual(distance(mark) + 1e-12);
      }),
      { seed: 1 },
    );
  });

  it.each([0, -1, NaN, Infinity])('refuse %d, which is near no mark', (value) => {
    expect(() => nominal(value)).toThrow(OutOfRange);
  });

  it('refuse a value beyond either end instead of taking the end for it', () => {
    expect(() => nominal(exact(series[0]!)! / step)).toThrow(OutOfRange);
    expect(() => nominal(exact(series.at(-1)!)! * step)).toThrow(OutOfRange);
  });

  it.each([0, -2, NaN, Infinity, 11.5, 1e9])('leave %d as it is', (value) => {
    expect(asMarked(value)).toBe(value);
    expect(exact(value)).toBeUndefined();
  });
});

describe('exact values', () => {
  it('of f/11 and 1/125 s are the square root of 128 and 1/128 s', () => {
    expect(exactFNumber(11)).toEqual(closeTo(Math.sqrt(128), { relative: 1e-15, because: 'one rounding' }));
    expect(exactShutterTime(1 / 125)).toBe(1 / 128);
  });

  it('hold for a time as it is read from 1/60', () => {
    expect(exactShutterTime(Number('1') / Number('60'))).toBe(1 / 64);
  });
});

describe('asMarkedFNumber', () => {
  it('leaves a value that only passes by a mark as it is', () => {
    expect(asMarkedFNumber(11.31)).toBe(11.31);
    expect(asMarkedFNumber(11.2)).toBe(11.2);
  });
});

describe('fullStopFNumbers', () => {
  it('are those of every lens, each letting through half the light of the one before', () => {
    expect(fullStopFNumbers()).toEqual([0.5, 0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32, 45, 64, 90, 128]);
  });
});
