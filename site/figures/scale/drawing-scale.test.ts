import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acrossInWords, drawingScale, timesAsLarge, labelOfPixels, scaleLabel, steadyScale } from './drawing-scale.ts';

describe('the scale of a drawing', () => {
  it('is life size where 96 pixels hold the inch', () => {
    expect(drawingScale(25.4, 96)).toEqual({ pixelsPerMillimetre: 96 / 25.4, label: '1:1' });
  });

  it('is the largest recommended one that fits', () => {
    expect(drawingScale(207, 590).label).toBe('1:2');
    expect(drawingScale(2, 590).label).toBe('50:1');
  });

  it('always fits, by less than a factor of two and a half', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 50000, noNaN: true }),
        fc.integer({ min: 100, max: 2000 }),
        (length, room) => {
          const drawn = length * drawingScale(length, room).pixelsPerMillimetre;
          expect(drawn).toBeLessThanOrEqual(room * (1 + 1e-6));
          expect(drawn).toBeGreaterThan(room / 2.501);
        },
      ),
    );
  });

  it('is said in words where a drawing has two', () => {
    const along = drawingScale(100, 400);
    expect(acrossInWords(drawingScale(10, 400), along)).toBe('across 10 times that along');
    expect(acrossInWords(along, along)).toBeUndefined();
    expect(timesAsLarge(7, 2)).toBe('3.5');
  });

  it('is a ratio to one', () => {
    expect([0.5, 2, 1, 0.3].map(scaleLabel)).toEqual(['1:2', '2:1', '1:1', '1:3.3']);
    expect(labelOfPixels(96 / 25.4 / 2)).toBe('1:2');
  });
});

describe('a steady scale', () => {
  it('fits the usual length to its share of the room', () => {
    expect(10 * steadyScale(10, 10, 400, 0.5).pixelsPerMillimetre).toBeLessThanOrEqual(200);
  });

  it('gives way to a length that would not fit, or not be seen', () => {
    expect(100 * steadyScale(10, 100, 400, 0.5).pixelsPerMillimetre).toBeLessThanOrEqual(400);
    expect(0.01 * steadyScale(10, 0.01, 400, 0.5).pixelsPerMillimetre).toBeGreaterThan(20);
  });
});
