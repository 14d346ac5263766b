import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { lensAt } from './lens-in-use.ts';

describe('a lens of the crate at a magnification', () => {
  it('stays as it is where it moves as a whole', () => {
    expect(lensAt('lens-50', 0.05)).toEqual(lensAt('lens-50', 2));
    expect(lensAt('lens-50', 2)).toMatchObject({ 'focal-length': 50, 'focus-magnification': 0.15, 'rim-diameter': 53 });
  });

  it('is shorter close up where it focuses inside, and no shorter than at its closest, where rings go on', () => {
    expect(lensAt('lens-90', 0.02)['focal-length']).toBeGreaterThan(89);
    expect(lensAt('lens-90', 1)['focal-length']).toEqual(
      closeTo(72.5, { absolute: 1e-3, because: 'a quarter of the 290 mm that are marked, H and H′ in one place' }),
    );
    expect(lensAt('lens-90', 3)).toEqual(lensAt('lens-90', 1));
  });
});
