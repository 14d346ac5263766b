import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { penumbra } from './penumbra.formula.ts';
import { seenPastEdge, seenPastNeedle, shareBeyond } from './seen-past-edge.ts';

const light = { sourceSize: 60, edgeHeight: 4, flashDistance: 300 };
const aFew = { relative: 1e-12, because: 'a few roundings' } as const;

describe('the share of a disc beyond a line', () => {
  it('is half for a line through the middle, and a fifth of the rest is seen a quarter of the width in', () => {
    expect(shareBeyond(0)).toBe(0.5);
    expect(shareBeyond(0.5)).toEqual(
      closeTo(0.1955011, { absolute: 1e-7, because: '1/3 − √3/(4π), printed to seven decimals' }),
    );
  });

  it('is all or nothing where the line misses the disc', () => {
    expect([-Infinity, -3, -1, 1, 3, Infinity].map(shareBeyond)).toEqual([1, 1, 1, 0, 0, 0]);
  });

  it('adds up to one with what is on the other side', () => {
    for (const offset of [0.1, 0.37, 0.99])
      expect(shareBeyond(offset) + shareBeyond(-offset)).toEqual(closeTo(1, aFew));
  });
});

describe('a light seen past an edge', () => {
  it('is half seen below the edge, not at all at one end of the penumbra and wholly at the other', () => {
    const half = penumbra(light) / 2;
    expect(seenPastEdge(light, 0)).toBe(0.5);
    expect(seenPastEdge(light, -1.0001 * half)).toBe(0);
    expect(seenPastEdge(light, -0.99 * half)).toBeGreaterThan(0);
    expect(seenPastEdge(light, 1.0001 * half)).toBe(1);
    expect(seenPastEdge(light, 0.99 * half)).toBeLessThan(1);
  });

  it('refuses an edge as high as the light', () => {
    expect(() => seenPastEdge({ ...light, edgeHeight: 300 }, 0)).toThrow(OutOfRange);
  });
});

describe('a light seen past a needle', () => {
  it('is hidden in the middle by a wide needle, and hardly covered by a thin one', () => {
    expect(seenPastNeedle(light, 1, 0)).toBe(0);
    expect(seenPastNeedle(light, 0.01, 0)).toBeGreaterThan(0.97);
  });

  it('is what the two edges of it leave, alike on both sides', () => {
    expect(seenPastNeedle(light, 0.5, 0.3)).toEqual(closeTo(seenPastNeedle(light, 0.5, -0.3), aFew));
    expect(seenPastNeedle(light, 0.5, 50)).toBe(1);
  });

  it('is just hidden where the needle looks as wide as the light: 60 × 4/300 mm', () => {
    const width = (60 * 4) / 300;
    expect(seenPastNeedle(light, 1.001 * width, 0)).toBe(0);
    expect(seenPastNeedle(light, 0.999 * width, 0)).toBeGreaterThan(0);
  });

  it('refuses a needle of no width by name', () => {
    expect(() => seenPastNeedle(light, 0, 0)).toThrow(/subject-width is 0/);
  });
});
