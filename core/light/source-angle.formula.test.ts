import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { sourceAngle } from './source-angle.formula.ts';

describe('sourceAngle', () => {
  it('is a right angle for a light twice as wide as it is far', () => {
    expect(sourceAngle({ sourceSize: 200, flashDistance: 100 })).toEqual(
      closeTo(Math.PI / 2, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('stays the same when width and distance grow together', () => {
    const near = sourceAngle({ sourceSize: 60, flashDistance: 45 });
    expect(sourceAngle({ sourceSize: 600, flashDistance: 450 })).toEqual(
      closeTo(near, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('tends to width over distance for a light far away', () => {
    const far = sourceAngle({ sourceSize: 1, flashDistance: 1000 });
    expect(far).toEqual(closeTo(1 / 1000, { relative: 1e-7, because: 'the next term is a twelfth of the square' }));
  });

  it('refuses a light at no distance by name', () => {
    expect(() => sourceAngle({ sourceSize: 200, flashDistance: 0 })).toThrow(OutOfRange);
    expect(() => sourceAngle({ sourceSize: 200, flashDistance: 0 })).toThrow(/flash-distance is 0/);
  });
});
