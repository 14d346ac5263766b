import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { penumbra } from './penumbra.formula.ts';

const shadow = { sourceSize: 100, edgeHeight: 20, flashDistance: 220 };

describe('penumbra', () => {
  it('is 10 mm for an edge 20 mm up under a light 100 mm wide, 220 mm away', () => {
    expect(penumbra(shadow)).toBe(10);
  });

  it('grows in step with the width of the light', () => {
    expect(penumbra({ ...shadow, sourceSize: 300 })).toBe(30);
  });

  it('vanishes as the edge comes down to the surface', () => {
    const low = penumbra({ ...shadow, edgeHeight: 1e-6 });
    expect(low).toEqual(
      closeTo(1e-4 / 220, { relative: 1e-8, because: 'the edge’s height no longer shortens the way' }),
    );
  });

  it('is the strip between the shadows that the two ends of the light cast', () => {
    const shadowOf = (lamp: number) => -lamp * (shadow.edgeHeight / (shadow.flashDistance - shadow.edgeHeight));
    expect(penumbra(shadow)).toEqual(
      closeTo(shadowOf(-50) - shadowOf(50), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('refuses an edge as high as the light', () => {
    expect(() => penumbra({ ...shadow, edgeHeight: 220 })).toThrow(OutOfRange);
    expect(() => penumbra({ ...shadow, edgeHeight: 0 })).toThrow(/edge-height is 0/);
  });
});
