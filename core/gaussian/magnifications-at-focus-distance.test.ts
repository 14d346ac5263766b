import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusDistance } from './focus-distance.formula.ts';
import { magnificationsAtFocusDistance } from './magnifications-at-focus-distance.ts';

const lens = { focalLength: 50, principalSeparation: -4 };

describe('magnificationsAtFocusDistance', () => {
  it('solves the focus distance for both magnifications that share it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 20, noNaN: true }), (magnification) => {
        const both = magnificationsAtFocusDistance({
          ...lens,
          focusDistance: focusDistance({ ...lens, magnification }),
        });
        const known = [magnification, 1 / magnification].sort((one, other) => one - other);
        // Near life size a distance hardly changes with m: half the digits are lost.
        expect(both).toEqual(known.map((m) => closeTo(m, { relative: 1e-6, because: 'a square root near zero' })));
      }),
      { seed: 61, numRuns: 300 },
    );
  });

  it('is life size twice at the nearest distance, and refuses one nearer by name', () => {
    expect(magnificationsAtFocusDistance({ ...lens, focusDistance: 196 })).toEqual([1, 1]);
    for (const nearer of [195.9, 0, NaN, Infinity]) {
      const attempt = () => magnificationsAtFocusDistance({ ...lens, focusDistance: nearer });
      expect(attempt).toThrow(OutOfRange);
      expect(attempt).toThrow(`focus-distance is ${nearer}; accepted: at least 196`);
    }
  });
});
