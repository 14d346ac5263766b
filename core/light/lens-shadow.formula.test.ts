import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { illuminanceFrom } from './illuminance-from.ts';
import { lensShadow } from './lens-shadow.formula.ts';

describe('lensShadow', () => {
  it('is half of the light where the rim is its own radius away', () => {
    expect(lensShadow({ rimDiameter: 60, workingDistance: 30 })).toBe(0.5);
  });

  it('depends on the distance in rim diameters alone', () => {
    expect(lensShadow({ rimDiameter: 104, workingDistance: 150 })).toBe(
      lensShadow({ rimDiameter: 52, workingDistance: 75 }),
    );
  });

  it('falls with the square of the distance far away, and is everything close up', () => {
    const far = lensShadow({ rimDiameter: 60, workingDistance: 30_000 });
    expect(far).toEqual(closeTo(1e-6, { relative: 2e-6, because: 'the limit is approached as (⌀/2w)²' }));
    expect(lensShadow({ rimDiameter: 60, workingDistance: 1e-4 })).toBeGreaterThan(0.9999999);
  });

  it('is the light that a disc as bright as the sky would give, over that of the whole sky', () => {
    const rimDiameter = 53;
    const workingDistance = 41;
    const disc = illuminanceFrom(
      [{ shape: 'disc', sourceSize: rimDiameter, luminance: 1, centre: [0, 0, workingDistance], facing: [0, 0, -1] }],
      { point: [0, 0, 0], normal: [0, 0, 1] },
    );
    expect(lensShadow({ rimDiameter, workingDistance })).toEqual(
      closeTo(disc / Math.PI, { relative: 1e-12, because: 'a few roundings' }),
    );
  });

  it('refuses a rim on the subject by name', () => {
    expect(() => lensShadow({ rimDiameter: 60, workingDistance: 0 })).toThrow(OutOfRange);
    expect(() => lensShadow({ rimDiameter: 60, workingDistance: -3 })).toThrow(/working-distance is -3/);
  });
});
