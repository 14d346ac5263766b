import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degree } from '#core/quantity/units.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { pathPoints } from '#tests/support/path-points.ts';
import { leanLayout, sharpPart, type Lean } from './lean-layout.ts';

const box = { width: 695, height: 450, text: 14.5, small: 12.3 };
const eyes: Lean = { subjectWidth: 1.5, subjectTilt: 20 * degree, focusOffset: 0, nearLimit: 0.2, farLimit: 0.2 };
const leans: fc.Arbitrary<Lean> = fc.record({
  subjectWidth: fc.double({ min: 0.1, max: 500, noNaN: true }),
  subjectTilt: fc.double({ min: 0, max: 80 * degree, noNaN: true }),
  focusOffset: fc.double({ min: -50, max: 50, noNaN: true }),
  nearLimit: fc.double({ min: 0.001, max: 100, noNaN: true }),
  farLimit: fc.oneof(fc.constant(Infinity), fc.double({ min: 0.001, max: 100, noNaN: true })),
});
const rounding = { absolute: 1e-9, because: 'rounding' };

describe('the sharp part of what leans', () => {
  it('is all of it square on in the slab, and none of it beside', () => {
    expect(sharpPart({ ...eyes, subjectTilt: 0 })).toEqual([-0.75, 0.75]);
    expect(sharpPart({ ...eyes, subjectTilt: 0, focusOffset: 0.3 })).toBeUndefined();
    expect(sharpPart({ ...eyes, focusOffset: 5 })).toBeUndefined();
  });

  it('ends where the slab ends, both limits over the sine', () => {
    expect(sharpPart(eyes)!.map((end) => end * Math.sin(20 * degree))).toEqual([
      closeTo(-0.2, rounding),
      closeTo(0.2, rounding),
    ]);
  });
});

describe('the sheet of the lean', () => {
  it('has slab, plane and lean to one scale, the lens to the right', () => {
    const { scale, planeX, nearX, farX, ends, middleX } = leanLayout({ ...eyes, focusOffset: 0.1 }, box);
    const pixels = scale.pixelsPerMillimetre;
    expect(planeX - middleX).toEqual(closeTo(0.1 * pixels, rounding));
    expect(nearX - planeX).toEqual(closeTo(0.2 * pixels, rounding));
    expect(planeX - farX).toEqual(closeTo(0.2 * pixels, rounding));
    const [one, other] = ends as [(typeof ends)[number], (typeof ends)[number]];
    expect(Math.hypot(one.x - other.x, one.y - other.y)).toEqual(closeTo(1.5 * pixels, rounding));
  });

  it('draws sharp only what lies in the slab, and nothing without a number, however it stands', () => {
    fc.assert(
      fc.property(leans, (lean) => {
        const layout = leanLayout(lean, box);
        expect(JSON.stringify(layout)).not.toMatch(/NaN|null/);
        for (const { x } of pathPoints(layout.sharp ?? '')) {
          expect(x).toBeGreaterThanOrEqual(layout.farX - 0.1);
          expect(x).toBeLessThanOrEqual(layout.nearX + 0.1);
        }
        for (const { x, y } of pathPoints(layout.lean)) {
          expect(x > 0 && x < box.width && y > 0 && y < layout.bottom + 0.1).toBe(true);
        }
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it('stays while a hand drags', () => {
    const { scale } = leanLayout(eyes, box);
    expect(leanLayout({ ...eyes, subjectWidth: 4 }, box, { scale }).scale).toBe(scale);
  });
});
