import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { backgroundUnderexposure } from './background-underexposure.formula.ts';

describe('backgroundUnderexposure', () => {
  it('is four stops for a background four times as far from the flash', () => {
    expect(backgroundUnderexposure({ flashDistance: 150, backgroundDistance: 450 })).toBe(4);
  });

  it('stays where all distances grow alike, and falls where the flash alone is drawn back', () => {
    const near = backgroundUnderexposure({ flashDistance: 150, backgroundDistance: 300 });
    const alike = backgroundUnderexposure({ flashDistance: 300, backgroundDistance: 600 });
    expect(alike).toEqual(closeTo(near, { relative: 1e-14, because: 'a few roundings' }));
    expect(backgroundUnderexposure({ flashDistance: 300, backgroundDistance: 300 })).toBeLessThan(near);
  });

  it('is nothing for a subject that lies on its background', () => {
    expect(backgroundUnderexposure({ flashDistance: 150, backgroundDistance: 0 })).toBe(0);
  });

  it('refuses a background before the subject, and a flash on it, by name', () => {
    expect(() => backgroundUnderexposure({ flashDistance: 150, backgroundDistance: -1 })).toThrow(OutOfRange);
    expect(() => backgroundUnderexposure({ flashDistance: 150, backgroundDistance: -1 })).toThrow(
      /background-distance is -1/,
    );
    expect(() => backgroundUnderexposure({ flashDistance: 0, backgroundDistance: 1 })).toThrow(/flash-distance is 0/);
  });
});
