import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { scaleBetweenFocusSettings } from './scale-between-focus-settings.ts';
import { scaleChangeFocusing } from './scale-change-focusing.formula.ts';
import { magnificationAfterStep } from './magnification-after-step.ts';

const settings = { focalLength: 100, pupilMagnification: 1, first: 0.5, second: 0.6 };

describe('scaleBetweenFocusSettings', () => {
  it('is 1.6/1.5 · 300/290 from half life size to 0.6 with a symmetric 100 mm lens', () => {
    expect(scaleBetweenFocusSettings(settings)).toEqual(
      closeTo((1.6 / 1.5) * (300 / 290), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is 1 for the same setting, above it racked out and below it racked in', () => {
    expect(scaleBetweenFocusSettings({ ...settings, second: 0.5 })).toBe(1);
    expect(scaleBetweenFocusSettings({ ...settings, second: 0.51 })).toBeGreaterThan(1);
    expect(scaleBetweenFocusSettings({ ...settings, second: 0.49 })).toBeLessThan(1);
  });

  it('becomes the small-step form as the step shrinks, the two parting in proportion to it', () => {
    const lens = { focalLength: 100, pupilMagnification: 0.6, magnification: 0.5 };
    const parts = [0.1, 0.01].map((frameStep) => {
      const second = magnificationAfterStep({ ...lens, step: -frameStep });
      const exact = scaleBetweenFocusSettings({ ...lens, first: 0.5, second }) - 1;
      return exact / scaleChangeFocusing({ ...lens, frameStep }) - 1;
    });
    expect(parts[0]! / parts[1]!).toEqual(closeTo(10, { relative: 0.02, because: 'what is left is of second order' }));
    expect(Math.abs(parts[1]!)).toBeLessThan(1e-3);
  });

  it('refuses a lens racked out as far as the detail by name', () => {
    expect(() => scaleBetweenFocusSettings({ ...settings, second: 4 })).toThrow(OutOfRange);
    expect(() => scaleBetweenFocusSettings({ ...settings, second: 4 })).toThrow(/magnification is 4/);
  });
});
