import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { jobOf } from './pictures.ts';

const view = {
  magnification: 1,
  effectiveFNumber: 16,
  pupilMagnification: 1,
  entrancePupilDistance: 180,
  pixelPitch: 0.006,
  readNoise: 3,
};

describe('the picture of the eye', () => {
  it('has a pixel for each of the sensor’s, whatever the magnification, within what a sheet shows', () => {
    for (const magnification of [0.02, 0.3, 1, 5, 20]) {
      const { view: seen } = jobOf({ ...view, magnification }, 0.01, 100);
      expect(seen.pitch).toBe(0.006);
      expect(seen.rows).toBeGreaterThanOrEqual(24);
      expect(seen.rows).toBeLessThanOrEqual(240);
      expect(seen.columns / seen.rows).toEqual(closeTo(1.15, { absolute: 0.03, because: 'whole pixels' }));
    }
  });

  it('carries the streak as it is on the sensor, and the light of a mid-tone as that of white', () => {
    const { view: seen } = jobOf(view, 0.034, 1000);
    expect(seen.motionBlur).toEqual({ width: 0.034, angle: 0 });
    // White reflects all, the mid-tone of a meter with K 12.5 and C 250 a share of π K/C.
    expect(1000 / seen.electronsAtWhite!).toEqual(
      closeTo((Math.PI * 12.5) / 250, { relative: 1e-12, because: 'rounding' }),
    );
    expect(seen.readNoise).toBe(3);
  });
});
