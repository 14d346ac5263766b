import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptions } from '#tests/support/prescriptions.ts';
import { exactRay, heightAt } from './exact-trace.ts';
import { glassPoints, glassPupils } from './paraxial-trace.ts';
import { rayFan, shareThrough } from './ray-fan.ts';

const { surfaces, stop } = prescriptions['double-gauss-100'];
const open = { surface: stop, diameter: 10 };
const parallel = { z: -Infinity, y: 0 };

describe('rayFan', () => {
  it('goes through the stop from rim to rim, straight through its middle', () => {
    const fan = rayFan(surfaces, open, parallel, 5);
    expect(fan).toHaveLength(5);
    expect(fan[2]!.path.every(({ y }) => y === 0)).toBe(true);
    // The path starts in front, so that the stop's surface is one farther on.
    const atStop = fan.map(({ path }) => path[stop + 1]!.y);
    const aimed = { absolute: 1e-10, because: 'aimed to a millionth of a millionth of the stop' };
    expect(atStop).toEqual([-5, -2.5, 0, 2.5, 5].map((height) => closeTo(height, aimed)));
    const slanted = rayFan(surfaces, open, { z: -300, y: 40 }, 2).map(({ path }) => path[stop + 1]!.y);
    expect(slanted).toEqual([-5, 5].map((height) => closeTo(height, aimed)));
  });

  it('meets the focal point closely, ever more closely as the aperture closes', () => {
    const { track, backFocus } = glassPoints(surfaces);
    const misses = [8, 4, 2].map((diameter) =>
      Math.abs(heightAt(rayFan(surfaces, { ...open, diameter }, parallel, 2)[1]!, track + backFocus)),
    );
    expect(misses[0]).toBeLessThan(0.05);
    // Spherical aberration of the third order goes with the cube of the aperture.
    expect(misses[1]! / misses[2]!).toEqual(closeTo(8, { relative: 0.1, because: 'higher orders are left' }));
  });

  it('images a point beside the axis where its magnification says', () => {
    const { focalLength, track, backFocus, frontPrincipal } = glassPoints(surfaces);
    const subject = { z: frontPrincipal - 5 * focalLength, y: 10 };
    const fan = rayFan(surfaces, { ...open, diameter: 2 }, subject, 3);
    const sensor = track + backFocus + focalLength / 4;
    for (const ray of fan)
      expect(heightAt(ray, sensor)).toEqual(closeTo(-2.5, { absolute: 0.01, because: 'a slender fan of real rays' }));
  });

  it('comes slanted from a direction at infinity', () => {
    const { focalLength, track, backFocus } = glassPoints(surfaces);
    const fan = rayFan(surfaces, { ...open, diameter: 2 }, { z: -Infinity, y: 0.1 }, 3);
    for (const ray of fan) {
      expect(ray.path[0]!.z).toBeLessThan(0);
      expect(heightAt(ray, track + backFocus)).toEqual(
        closeTo(0.1 * focalLength, { relative: 0.01, because: 'distortion' }),
      );
    }
  });

  it('is cut by clear apertures off the axis first: vignetting', () => {
    const rimmed = surfaces.map((surface, index) => (index === 0 ? { ...surface, clearAperture: 34 } : surface));
    const share = (slope: number) =>
      shareThrough(rayFan(rimmed, { ...open, diameter: 20 }, { z: -Infinity, y: slope }, 101));
    expect(share(0)).toBeGreaterThan(0.95);
    expect(share(0.1)).toBeLessThan(share(0));
    expect(share(0.2)).toBeLessThan(share(0.1));
  });

  it('aims rays that the paraxial pupil would send astray, and loses those that no aim brings to their place', () => {
    for (const [name, fNumber, slope] of [
      ['double-gauss-100', 4, 0.36],
      ['triplet-50', 5.6, 0.6],
      ['macro-60-us-5751485', 5.6, 0.8],
    ] as const) {
      const { surfaces: glass, stop: at } = prescriptions[name];
      const { focalLength } = glassPoints(glass);
      const { entranceOverStop, entrancePosition } = glassPupils(glass, at);
      const diameter = focalLength / fNumber / entranceOverStop;
      const fan = rayFan(glass, { surface: at, diameter }, { z: -Infinity, y: slope }, 21);
      // Every ray that there is, close together: which of the places in the stop does one come to and through?
      const start = { z: -60, aim: (aim: number) => aim - (entrancePosition + 60) * slope };
      const shot = Array.from({ length: 20_001 }, (_, step) =>
        exactRay(glass, { z: start.z, y: start.aim((step - 10_000) / 100) }, Math.atan(slope)),
      );
      fan.forEach((ray, index) => {
        const wanted = (diameter / 2) * (index / 10 - 1);
        const missed = shot.map(({ path }) => (path[at + 1]?.y ?? NaN) - wanted);
        const reached = shot.filter(
          (_, step) => missed[step]! <= 0 !== missed[step + 1]! <= 0 && Math.abs(missed[step]! - missed[step + 1]!) < 1,
        );
        const through = reached.some(({ lost }) => lost === null);
        if (ray.lost === null) {
          expect(ray.path[at + 1]!.y).toEqual(closeTo(wanted, { absolute: 1e-6, because: 'aimed' }));
        }
        expect(ray.lost === null, `${name}, ray ${index}`).toBe(through);
      });
    }
  });

  it('refuses a stop without width and a fan of one ray', () => {
    for (const diameter of [0, NaN, -1]) {
      expect(() => rayFan(surfaces, { surface: stop, diameter }, parallel, 3)).toThrow(OutOfRange);
    }
    for (const count of [1, 2.5, NaN]) expect(() => rayFan(surfaces, open, parallel, count)).toThrow(/number of rays/);
    expect(() => rayFan(surfaces, open, { z: -Infinity, y: NaN }, 3)).toThrow(OutOfRange);
  });
});
