import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildableRigs } from '#tests/support/chains.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { assembleRig } from './assemble.ts';
import { rigPositions } from './positions.ts';
import { constructionRays } from './construction-rays.ts';
import { rayThrough, type RayPath } from './ray-paths.ts';

const found = rigPositions(assembleRig([camera, ring(36), on(lens50, { at: 0.1 })]));
const last = ({ points }: RayPath) => points.at(-1)!;
const rounding = { absolute: 1e-10, because: 'rounding, of lengths in mm' };

describe('rays of a rig', () => {
  it('start at one place on the sensor and meet in its image, whichever way through the stop', () => {
    for (const field of [-1, 0, 0.5]) {
      const rays = [-1, 0, 1].map((aperture) => rayThrough(found, { field, aperture }));
      for (const ray of rays) {
        expect(ray.points[0]!.y).toEqual(closeTo(-18 * field, rounding));
        expect(last(ray).y).toEqual(closeTo((18 * field) / 0.82, rounding));
      }
    }
  });

  it('cross the axis in both pupils where they go through the middle of the stop', () => {
    const { chief, entrancePupil, exitPupil } = found;
    const at = last(chief);
    expect(at.y + (entrancePupil!.at - at.z) * chief.slope).toEqual(closeTo(0, rounding));
    const [one, other] = chief.points;
    const slope = (other!.y - one!.y) / (other!.z - one!.z);
    expect(one!.y + slope * exitPupil!.at).toEqual(closeTo(0, rounding));
  });

  it('keep height times slope, so that field and cone trade against each other, in any chain', () => {
    fc.assert(
      fc.property(buildableRigs, (rig) => {
        const { marginal, chief } = rigPositions(rig);
        const [start, next] = [marginal.points[0]!, marginal.points[1]!];
        const slopeAtSensor = (next.y - start.y) / (next.z - start.z);
        const before = chief.points[0]!.y * slopeAtSensor;
        const behind = last(chief).y * marginal.slope - last(marginal).y * chief.slope;
        const terms = Math.abs(last(chief).y * marginal.slope) + Math.abs(last(marginal).y * chief.slope);
        const because = 'large terms cancel';
        expect(behind).toEqual(closeTo(before, { absolute: 1e-9 * (terms + Math.abs(before)), because }));
      }),
      { seed: 5, numRuns: 1000 },
    );
  });
});

describe('constructionRays', () => {
  it('meet in the image: parallel to the axis, through H and H′, and through F', () => {
    const rays = constructionRays(found, 10);
    expect(rays).toHaveLength(3);
    for (const ray of rays) {
      expect(ray.points[0]!.y).toEqual(closeTo(-8.2, rounding));
      expect(last(ray)).toEqual({ z: found.sharpPlane, y: 10 });
    }
    const [parallel, central, focal] = rays as [RayPath, RayPath, RayPath];
    expect(parallel.slope).toBe(0);
    expect(central.points[1]!.y).toBe(0);
    const atFocus = last(focal).y + (found.whole!.frontFocus - last(focal).z) * focal.slope;
    expect(atFocus).toEqual(closeTo(0, rounding));
  });

  it('are parallel light that meets on the sensor at infinity, and behind it past infinity', () => {
    const heights = (registerDistance: number) =>
      constructionRays(rigPositions(assembleRig([camera, on({ ...lens50, registerDistance })])), 6).map(
        ({ points }) => points[0]!.y,
      );
    for (const height of heights(44)) expect(height).toEqual(closeTo(0, rounding));
    expect(heights(46.5)[0]).toEqual(closeTo(6 * (2.5 / 50), rounding));
  });
});
