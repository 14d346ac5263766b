import { describe, expect, it } from 'vitest';
import { coneOfLens } from '#core/depth/cone.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationAfterStep } from './magnification-after-step.ts';
import { scaleBetweenFocusSettings } from './scale-between-focus-settings.ts';
import { scaleBetweenFrames } from './scale-between-frames.ts';
import { scaleChangeOnRail } from './scale-change-on-rail.formula.ts';

const seenFrom = (inverseEntrancePupilDistance: number) => ({
  magnification: 1,
  effectiveFNumber: 16,
  inverseEntrancePupilDistance,
});
const onRail = (inverse: number, step: number) =>
  scaleBetweenFrames({ first: seenFrom(inverse), second: seenFrom(inverse), step });

describe('scaleBetweenFrames', () => {
  it('is that of a rail where the cone stays what it is', () => {
    expect(onRail(0.01, 20)).toBe(1.25);
    const change = scaleChangeOnRail({ frameStep: 0.3, entrancePupilDistance: 100 });
    expect(onRail(0.01, 0.3)).toEqual(closeTo(1 + change, { relative: 1e-15, because: 'a few roundings' }));
  });

  it('is 1 through a telecentric chain, and less for a nearer camera whose pupil lies behind the subject', () => {
    expect(onRail(0, 5)).toBe(1);
    expect(onRail(-0.01, 25)).toBe(0.8);
  });

  it('is that of two focus settings of a lens that moves as a whole', () => {
    const lens = { focalLength: 100, fNumber: 8, pupilMagnification: 0.6 };
    for (const step of [-3, 0.5, 20]) {
      const second = magnificationAfterStep({ focalLength: 100, magnification: 0.5, step });
      const between = scaleBetweenFocusSettings({ ...lens, first: 0.5, second });
      const frames = {
        first: coneOfLens({ ...lens, magnification: 0.5 }),
        second: coneOfLens({ ...lens, magnification: second }),
        step,
      };
      expect(scaleBetweenFrames(frames)).toEqual(closeTo(between, { relative: 1e-13, because: 'a few roundings' }));
    }
  });

  it('refuses a step that carries the pupil to the detail, and one that is none', () => {
    expect(() => onRail(0.01, 100)).toThrow(OutOfRange);
    expect(() => onRail(0.01, 130)).toThrow(/frame-step is 130/);
    expect(() => onRail(0.01, NaN)).toThrow(/frame-step is NaN/);
  });
});
