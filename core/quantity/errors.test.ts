import { describe, expect, it } from 'vitest';
import { OutOfRange, requireFinite, requireNotNegative, requirePositive } from './errors.ts';

describe('OutOfRange', () => {
  it('carries quantity, value and range, and says all three', () => {
    const error = new OutOfRange('focal-length', -5, 'a finite number above 0');
    expect(error).toMatchObject({ quantity: 'focal-length', value: -5, accepted: 'a finite number above 0' });
    expect(error.message).toBe('focal-length is -5; accepted: a finite number above 0');
    expect(error).toBeInstanceOf(RangeError);
    expect(error.name).toBe('OutOfRange');
  });
});

describe.each([
  { require: requirePositive, accepts: [5e-324, 1, 1e308], refuses: [0, -0, -1, NaN, Infinity, -Infinity] },
  { require: requireNotNegative, accepts: [0, 1, 1e308], refuses: [-5e-324, -1, NaN, Infinity, -Infinity] },
  { require: requireFinite, accepts: [-1e308, 0, 1e308], refuses: [NaN, Infinity, -Infinity] },
])('$require.name', ({ require, accepts, refuses }) => {
  it.each(accepts)('returns %d', (value) => {
    expect(require('extension', value)).toBe(value);
  });

  it.each(refuses)('refuses %d by name', (value) => {
    expect(() => require('extension', value)).toThrow(OutOfRange);
    expect(() => require('extension', value)).toThrow(/^extension is/);
  });
});
