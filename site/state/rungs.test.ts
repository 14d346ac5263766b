import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantityIds, vocabulary } from '#core/quantity/vocabulary.ts';
import { nearestRung, roundStep, rungs } from './rungs.ts';

describe('the rungs of a slider', () => {
  it('are third stops for f-numbers, with the ends of the range', () => {
    expect(rungs('f-number', { least: 2.8, most: 5.6 })).toEqual([2.8, 3.2, 3.5, 4, 4.5, 5, 5.6]);
  });

  it('are whole millimetres for extension', () => {
    expect(rungs('extension', vocabulary.extension).slice(0, 4)).toEqual([0, 1, 2, 3]);
  });

  it('are two-figure numbers where the trade thinks in ratios', () => {
    expect(rungs('magnification', { least: 0.9, most: 1.3 })).toEqual([
      0.9, 0.91, 0.92, 0.93, 0.94, 0.95, 0.96, 0.97, 0.98, 0.99, 1, 1.1, 1.2, 1.3,
    ]);
  });

  it('are fine near zero and coarse away from it where a quantity goes both ways from none', () => {
    const ladder = rungs('focus-offset', vocabulary['focus-offset']);
    const zero = ladder.indexOf(0);
    expect(ladder.slice(zero - 2, zero + 3)).toEqual([-0.011, -0.01, 0, 0.01, 0.011]);
    expect(ladder.slice(-3)).toEqual([48, 49, 50]);
    expect(ladder.slice(0, 2)).toEqual([-50, -49]);
  });

  it('are round in degrees for angles', () => {
    const ladder = rungs('subject-tilt', { least: 0, most: Math.PI / 2 });
    expect(ladder.slice(0, 3).map((angle) => Number(((angle * 180) / Math.PI).toPrecision(12)))).toEqual([0, 0.5, 1]);
  });

  it.each(quantityIds)('rise from the least to the most of %s', (id) => {
    const ladder = rungs(id, vocabulary[id]);
    expect(ladder[0]).toBe(vocabulary[id].least);
    expect(ladder.at(-1)).toBe(vocabulary[id].most);
    expect(ladder.every((value, index) => index === 0 || value > ladder[index - 1]!)).toBe(true);
    expect(ladder.length).toBeLessThan(1000);
  });

  it('are found again from any of them', () => {
    const ladder = rungs('focal-length', vocabulary['focal-length']);
    fc.assert(
      fc.property(fc.nat({ max: ladder.length - 1 }), (index) => nearestRung(ladder, ladder[index]!) === index),
    );
  });
});

describe('roundStep', () => {
  it('is the next of 1, 2, 5 times a power of ten', () => {
    expect([0.03, 0.5, 1, 1.1, 4, 51].map(roundStep)).toEqual([0.05, 0.5, 1, 2, 5, 100]);
  });
});
