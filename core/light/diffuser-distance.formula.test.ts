import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { diffuserDistance } from './diffuser-distance.formula.ts';
import { sourceAngle } from './source-angle.formula.ts';

describe('diffuserDistance', () => {
  it('is half the width for a right angle', () => {
    expect(diffuserDistance({ sourceSize: 200, sourceAngle: Math.PI / 2 })).toEqual(
      closeTo(100, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('gives back the distance from which the angle was worked out', () => {
    const angle = sourceAngle({ sourceSize: 73, flashDistance: 41 });
    expect(diffuserDistance({ sourceSize: 73, sourceAngle: angle })).toEqual(
      closeTo(41, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('shrinks to nothing as the light is to fill half the sky', () => {
    expect(diffuserDistance({ sourceSize: 200, sourceAngle: Math.PI - 1e-6 })).toBeLessThan(1e-4);
  });

  it.each([0, Math.PI, 4])('refuses an angle of %s', (angle) => {
    expect(() => diffuserDistance({ sourceSize: 200, sourceAngle: angle })).toThrow(OutOfRange);
  });
});
