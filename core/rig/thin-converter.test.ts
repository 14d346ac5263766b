import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { thinConverter } from './thin-converter.ts';

describe('thinConverter', () => {
  it('is −80 mm, 40 mm before the old picture, for a 2 times converter 40 mm long', () => {
    expect(thinConverter({ converterFactor: 2, converterLength: 40 })).toEqual({
      focalLength: -80,
      objectDistance: 40,
    });
  });

  it('forms the picture its own length farther back, its factor larger', () => {
    const { focalLength, objectDistance } = thinConverter({ converterFactor: 1.4, converterLength: 19 });
    const image = 1 / (1 / focalLength + 1 / objectDistance);
    expect(image - objectDistance).toEqual(closeTo(19, { relative: 1e-13, because: 'rounding' }));
    expect(image / objectDistance).toEqual(closeTo(1.4, { relative: 1e-13, because: 'rounding' }));
  });

  it('weakens without end as the factor tends to one', () => {
    expect(thinConverter({ converterFactor: 1.0001, converterLength: 20 }).focalLength).toBeLessThan(-1e9);
  });

  it('refuses a factor of one and a length of zero by name', () => {
    expect(() => thinConverter({ converterFactor: 1, converterLength: 20 })).toThrow(OutOfRange);
    expect(() => thinConverter({ converterFactor: 1, converterLength: 20 })).toThrow(/converter-factor is 1/);
    expect(() => thinConverter({ converterFactor: 2, converterLength: 0 })).toThrow(/converter-length is 0/);
  });
});
