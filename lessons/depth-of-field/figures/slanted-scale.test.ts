import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defocusBlur } from '#core/depth/defocus-blur.ts';
import { magnificationOffPlane } from '#core/depth/magnification-off-plane.ts';
import { closeTo } from '#tests/support/close-to.ts';
import type { Slab } from './layout.ts';
import { slantedScale } from './slanted-scale.ts';

/** A lens at life size: pupil of 5 mm at 100 mm. */
const slab: Slab = {
  magnification: 1,
  circleOfConfusion: 0.02,
  entrancePupil: 5,
  entrancePupilDistance: 100,
  nearLimit: 2 / 5.02,
  farLimit: 2 / 4.98,
  usualDepth: 0.5,
  usualCircle: 0.015,
};

function pictureOf(of: Slab) {
  const seen = (offset: number) => ({
    enlargement: magnificationOffPlane({ ...of, offset }),
    blur: defocusBlur({ ...of, offset }),
  });
  return slantedScale(of, seen, 160, 300, 26);
}

describe('the slanted scale', () => {
  it('is evenly sharp on both sides of its middle, though more is sharp behind', () => {
    const [[, , near], [, , far]] = pictureOf(slab).strokes as [[string, string, string], [string, string, string]];
    const y = (path: string) => Number(/^M0 (-?[\d.]+)/.exec(path)![1]);
    expect(150 - y(far)).toEqual(closeTo(y(near) - 150, { relative: 1e-9, because: 'a few roundings' }));
    expect(y(far)).toBeLessThan(150);
  });

  it('shows a mark in the sharp plane at its full ink and the others wider and fainter, with no more ink', () => {
    const { marks } = pictureOf(slab);
    const sharpest = marks.reduce((best, mark) => (mark.thick < best.thick ? mark : best));
    expect(sharpest.ink).toBe(1);
    expect(sharpest.shape).toContain('a0 ');
    for (const { ink, thick } of marks) expect(ink * thick).toBeLessThanOrEqual((4 * sharpest.thick) / Math.PI + 1e-9);
  });

  it('spreads each mark by the blur of the core at its offset', () => {
    const { marks, scale, tilt } = pictureOf(slab);
    const pen = Math.min(...marks.map(({ thick }) => thick));
    for (const { shape, thick } of marks) {
      const top = Number(/ (-?[\d.]+)h/.exec(shape)![1]);
      // In the picture the blur grows evenly with the distance from the middle: D over u, by the slope of the scale.
      const spread = (Math.abs(150 - (top + thick / 2)) * 5) / 100 / Math.tan((tilt * Math.PI) / 180);
      expect(thick - pen).toEqual(closeTo(spread, { absolute: 1e-9, because: 'a few roundings' }));
    }
    expect(scale.pixelsPerMillimetre).toBeGreaterThan(0);
  });

  it('has marks, and not too many, whatever the lens, and no number that is none', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        fc.double({ min: 5, max: 40000, noNaN: true }),
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        (magnification, entrancePupil, entrancePupilDistance, circleOfConfusion) => {
          const edge = magnification * entrancePupil;
          const near = (circleOfConfusion * entrancePupilDistance) / (edge + circleOfConfusion);
          const far =
            edge > circleOfConfusion
              ? (circleOfConfusion * entrancePupilDistance) / (edge - circleOfConfusion)
              : Infinity;
          const usualDepth = (0.24 * (1 + magnification)) / magnification ** 2;
          const lens = {
            ...slab,
            magnification,
            entrancePupil,
            entrancePupilDistance,
            circleOfConfusion,
            nearLimit: near,
            farLimit: far,
            usualDepth,
          };
          const { marks, labels, strokes } = pictureOf(lens);
          expect(marks.length).toBeGreaterThan(0);
          expect(marks.length).toBeLessThan(200);
          expect(JSON.stringify([marks, labels, strokes.map(([, , path]) => path)])).not.toMatch(/null|NaN|Infinity/);
        },
      ),
    );
  });
});
