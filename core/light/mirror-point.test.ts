import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { mirrorPoint } from './mirror-point.ts';

const eye = { ballRadius: 4, lightDistance: 60, cameraDistance: 60, apart: 0.8 };

describe('mirrorPoint', () => {
  it('lies halfway between a light and a camera equally far', () => {
    const { angle, seen } = mirrorPoint(eye);
    expect(angle).toEqual(closeTo(0.4, { relative: 1e-15, because: 'found to the last digit' }));
    expect(seen).toBe(true);
  });

  it('shares the angle out anew when light and camera change places', () => {
    const there = mirrorPoint({ ...eye, lightDistance: 20, cameraDistance: 90 }).angle;
    const back = mirrorPoint({ ...eye, lightDistance: 90, cameraDistance: 20 }).angle;
    expect(there + back).toEqual(closeTo(0.8, { relative: 1e-14, because: 'found to the last digits' }));
  });

  it('comes to half the angle between them as both go far away', () => {
    const { angle } = mirrorPoint({ ...eye, lightDistance: 1e9, cameraDistance: Infinity });
    expect(angle).toEqual(closeTo(0.4, { relative: 1e-8, because: 'r over the distance is left' }));
  });

  it('is the middle of the ball for a light behind the camera', () => {
    expect(mirrorPoint({ ...eye, apart: 0 }).angle).toBe(0);
  });

  it('is the rim that the camera sees where the ball hides the light, without a step', () => {
    const limit = Math.acos(4 / 60) + Math.acos(4 / 60);
    const [last, hidden] = [limit - 1e-12, limit + 1e-12].map((apart) => mirrorPoint({ ...eye, apart }));
    expect([last!.seen, hidden!.seen]).toEqual([true, false]);
    expect(hidden!.angle).toBe(Math.acos(4 / 60));
    expect(last!.angle).toEqual(closeTo(hidden!.angle, { absolute: 1e-9, because: 'a hair before the limit' }));
  });

  it.each([
    { lightDistance: 4 },
    { lightDistance: Infinity },
    { cameraDistance: 3 },
    { cameraDistance: NaN },
    { ballRadius: 0 },
    { apart: -0.1 },
    { apart: NaN },
  ])('refuses %o', (wrong) => {
    expect(() => mirrorPoint({ ...eye, ...wrong })).toThrow(OutOfRange);
  });
});
