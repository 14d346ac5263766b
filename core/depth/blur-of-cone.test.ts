import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import {
  backgroundWidthOfCone,
  defocusBlurOfCone,
  effectiveFNumberForBlur,
  magnificationOffPlaneOfCone,
} from './blur-of-cone.ts';

/** Life size at an effective f/20; the pupil 100 mm in front, nowhere near, or 100 mm behind. */
const seenFrom = (inverseEntrancePupilDistance: number) => ({
  magnification: 1,
  effectiveFNumber: 20,
  inverseEntrancePupilDistance,
});
const [before, telecentric, behind] = [seenFrom(0.01), seenFrom(0), seenFrom(-0.01)];
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('defocusBlurOfCone', () => {
  it('is 1.25 mm for a point 20 mm towards a pupil at 100 mm, on whichever side that is', () => {
    expect(defocusBlurOfCone({ ...before, offset: -20 })).toBe(1.25);
    expect(defocusBlurOfCone({ ...behind, offset: 20 })).toBe(1.25);
  });

  it('is alike on both sides through a telecentric chain, in proportion to the way off the plane', () => {
    expect(defocusBlurOfCone({ ...telecentric, offset: -20 })).toBe(1);
    expect(defocusBlurOfCone({ ...telecentric, offset: 40 })).toBe(2);
    expect(defocusBlurOfCone({ ...telecentric, offset: 0 })).toBe(0);
  });

  it('tends to m times the width of the pupil, 5 mm, far behind the subject, from above where the pupil lies behind it', () => {
    const wide = closeTo(5, { relative: 1e-6, because: 'u/δ is left' });
    expect(defocusBlurOfCone({ ...before, offset: 1e9 })).toEqual(wide);
    expect(defocusBlurOfCone({ ...behind, offset: 1e9 })).toEqual(wide);
    expect(defocusBlurOfCone({ ...behind, offset: 200 })).toBe(10);
  });

  it('refuses a point at the pupil, one behind a pupil in front, and one that is nowhere', () => {
    expect(() => defocusBlurOfCone({ ...before, offset: -100 })).toThrow(/entrance-pupil-distance is 0/);
    expect(() => defocusBlurOfCone({ ...before, offset: -130 })).toThrow(/entrance-pupil-distance is -30/);
    expect(() => defocusBlurOfCone({ ...behind, offset: 100 })).toThrow(OutOfRange);
    for (const offset of [Infinity, -Infinity, NaN]) {
      for (const cone of [before, telecentric, behind]) {
        expect(() => defocusBlurOfCone({ ...cone, offset })).toThrow(OutOfRange);
      }
    }
  });
});

describe('effectiveFNumberForBlur', () => {
  it('gives back the cone that blurs by so much', () => {
    for (const cone of [before, telecentric, behind]) {
      const defocusBlur = defocusBlurOfCone({ ...cone, offset: 7 });
      expect(effectiveFNumberForBlur({ ...cone, offset: 7, defocusBlur })).toEqual(closeTo(20, rounding));
    }
  });

  it('refuses a point in the sharp plane, and no blur, by name', () => {
    expect(() => effectiveFNumberForBlur({ ...before, offset: 0, defocusBlur: 0.02 })).toThrow(
      /effective-f-number is 0/,
    );
    expect(() => effectiveFNumberForBlur({ ...before, offset: 1, defocusBlur: 0 })).toThrow(/defocus-blur is 0/);
  });
});

describe('magnificationOffPlaneOfCone', () => {
  it('is 0.8 a quarter of the pupil’s distance farther off, and as much nearer with the pupil behind', () => {
    expect(magnificationOffPlaneOfCone({ ...before, offset: 25 })).toBe(0.8);
    expect(magnificationOffPlaneOfCone({ ...behind, offset: -25 })).toBe(0.8);
  });

  it('is the same at every depth through a telecentric chain', () => {
    for (const offset of [-50, 0, 1e6]) expect(magnificationOffPlaneOfCone({ ...telecentric, offset })).toBe(1);
  });

  it('is turned over from behind the pupil on', () => {
    expect(magnificationOffPlaneOfCone({ ...behind, offset: 50 })).toBe(2);
    expect(magnificationOffPlaneOfCone({ ...behind, offset: 300 })).toBe(-0.5);
  });

  it('refuses a magnification of zero by name', () => {
    expect(() => magnificationOffPlaneOfCone({ ...before, magnification: 0, offset: 1 })).toThrow(/magnification is 0/);
  });
});

describe('backgroundWidthOfCone', () => {
  const width = (inverseEntrancePupilDistance: number, backgroundDistance: number) =>
    backgroundWidthOfCone({ fieldWidth: 36, inverseEntrancePupilDistance, backgroundDistance });

  it('widens with distance, stays, or narrows to nothing at the pupil and widens again', () => {
    expect(width(0.01, 50)).toBe(54);
    expect(width(0, 50)).toBe(36);
    expect([50, 100, 200].map((distance) => width(-0.01, distance))).toEqual([18, 0, 36]);
  });

  it('refuses a background before the subject, and a field of no width', () => {
    expect(() => width(0.01, -1)).toThrow(/background-distance is -1/);
    expect(() => width(NaN, 1)).toThrow(OutOfRange);
    const none = { fieldWidth: 0, inverseEntrancePupilDistance: 0, backgroundDistance: 1 };
    expect(() => backgroundWidthOfCone(none)).toThrow(/field-width is 0/);
  });
});
