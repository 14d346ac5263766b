import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { circleOfConfusionByPixels } from './circle-of-confusion-by-pixels.formula.ts';
import { circleOfConfusionByDiagonal } from './circle-of-confusion-by-diagonal.formula.ts';
import { circleOfConfusionByViewing } from './circle-of-confusion-by-viewing.formula.ts';
import { circleOfConfusionByWidth } from './circle-of-confusion-by-width.formula.ts';

describe('circleOfConfusionByWidth', () => {
  it('is 0.02 mm for a sensor 36 mm wide', () => {
    expect(circleOfConfusionByWidth({ sensorWidth: 36 })).toBe(0.02);
  });

  it('is one arcminute in a picture seen from six times its width over pi, and on an A5 page from 401 mm', () => {
    const byWidth = circleOfConfusionByWidth({ sensorWidth: 36 });
    expect(
      circleOfConfusionByViewing({ sensorWidth: 36, printWidth: 210, viewingDistance: (6 / Math.PI) * 210 }),
    ).toEqual(closeTo(byWidth, { relative: 1e-15, because: 'a few roundings' }));
    expect(circleOfConfusionByViewing({ sensorWidth: 36, printWidth: 210, viewingDistance: 401 })).toEqual(
      closeTo(byWidth, { relative: 0.5 / 401, because: 'the distance is given in whole millimetres' }),
    );
  });

  it('lies between the usual extremes, two pixels and a 1500th of the diagonal, on both bodies of the crate', () => {
    for (const [sensorWidth, sensorHeight] of [
      [36, 24],
      [23.5, 15.6],
    ] as const) {
      const circle = circleOfConfusionByWidth({ sensorWidth });
      expect(circle).toBeGreaterThan(circleOfConfusionByPixels({ pixelPitch: sensorWidth / 6000 }));
      expect(circle).toBeLessThan(circleOfConfusionByDiagonal({ sensorWidth, sensorHeight }));
    }
  });

  it('halves with the width of the sensor, and tends to nothing with it', () => {
    expect(circleOfConfusionByWidth({ sensorWidth: 18 })).toBe(circleOfConfusionByWidth({ sensorWidth: 36 }) / 2);
    expect(circleOfConfusionByWidth({ sensorWidth: 1e-9 })).toBeLessThan(1e-12);
  });

  it('refuses a sensor without width by name', () => {
    expect(() => circleOfConfusionByWidth({ sensorWidth: 0 })).toThrow(OutOfRange);
    expect(() => circleOfConfusionByWidth({ sensorWidth: 0 })).toThrow(/sensor-width is 0/);
  });
});
