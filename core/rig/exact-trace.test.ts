import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptions } from '#tests/support/prescriptions.ts';
import { exactRay, heightAt, outline, type Place } from './exact-trace.ts';
import type { Surface } from './prescription.ts';

const rounding = { absolute: 1e-12, because: 'rounding of lengths of some 10 mm' };
const ball: readonly Surface[] = [
  { radius: 10, thickness: 20, index: 1.5 },
  { radius: -10, thickness: 0, index: 1 },
];
const window: readonly Surface[] = [
  { radius: Infinity, thickness: 6, index: 1.5 },
  { radius: Infinity, thickness: 0, index: 1 },
];

describe('exactRay', () => {
  it('shifts a ray through a plate as Snell says, and leaves its direction alone', () => {
    const angle = 0.5;
    const { path, angle: behind, lost } = exactRay(window, { z: 0, y: 0 }, angle);
    expect(lost).toBeNull();
    expect(behind).toEqual(closeTo(angle, rounding));
    expect(path.at(-1)).toEqual({ z: 6, y: closeTo(6 * Math.tan(Math.asin(Math.sin(angle) / 1.5)), rounding) });
  });

  it('turns a ray in a ball twice by i − i′, which the geometry of the circle demands', () => {
    for (const height of [1, 5, 9, -7]) {
      const { angle, path } = exactRay(ball, { z: -5, y: height }, 0);
      const incidence = Math.asin(height / 10);
      expect(angle).toEqual(closeTo(-2 * (incidence - Math.asin(height / 15)), rounding));
      for (const { z, y } of path.slice(1)) expect(Math.hypot(z - 10, y)).toEqual(closeTo(10, rounding));
    }
  });

  it('sends every ray from a ball’s aplanatic point as if from one point, however wide', () => {
    // Inside glass of radius r and index n, r/n from the middle, seen from r n: the same for all angles, not only small ones.
    const [radius, index] = [10, 1.5];
    const surface: readonly Surface[] = [
      { radius: Infinity, thickness: radius + radius / index, index },
      { radius: -radius, thickness: 0, index: 1 },
    ];
    fc.assert(
      fc.property(fc.double({ min: -1.2, max: 1.2, noNaN: true }), (inside) => {
        if (Math.abs(inside) < 1e-3) return;
        if (Math.abs(index * Math.sin(inside)) >= 1) return;
        // Started at the point itself, in the glass: the flat surface is met at once, and without air before it does nothing.
        const from: Place = { z: 0, y: 0 };
        const { path, angle } = exactRay(surface, from, Math.asin(index * Math.sin(inside)));
        const last = path.at(-1) as Place;
        const meetsAxis = last.z - last.y / Math.tan(angle);
        const seenFrom = radius + radius / index - radius - radius * index;
        expect(meetsAxis).toEqual(closeTo(seenFrom, { absolute: 1e-8, because: 'small angles divide small heights' }));
      }),
      { seed: 41, numRuns: 200 },
    );
  });

  it('says on what a ray is lost, and where it got to', () => {
    const narrow = ball.map((surface) => ({ ...surface, clearAperture: 8 }));
    expect(exactRay(ball, { z: -5, y: 11 }, 0)).toMatchObject({
      lost: { surface: 0, why: 'missed' },
      path: [{ y: 11 }],
    });
    expect(exactRay(narrow, { z: -5, y: 5 }, 0).lost).toEqual({ surface: 0, why: 'clear aperture' });
    expect(exactRay(ball, { z: -5, y: 5 }, 0, { surface: 0, diameter: 8 }).lost).toEqual({ surface: 0, why: 'stop' });
    expect(exactRay(ball, { z: -5, y: 3.9 }, 0, { surface: 0, diameter: 8 }).lost).toBeNull();
    const steep: readonly Surface[] = [
      { radius: Infinity, thickness: 12, index: 1.5 },
      { radius: -10, thickness: 0, index: 1 },
    ];
    expect(exactRay(steep, { z: -1, y: 8 }, 0).lost).toEqual({ surface: 1, why: 'total reflection' });
  });

  it('is lost where the glass turns it round, and where surfaces have crossed before it comes to them', () => {
    const outcomes = new Map<string, number>();
    for (const { surfaces } of Object.values(prescriptions)) {
      for (let y = -60; y <= 60; y += 3) {
        for (let direction = -1.2; direction <= 1.2; direction += 0.05) {
          const { path, angle, lost } = exactRay(surfaces, { z: -1, y }, direction);
          outcomes.set(lost?.why ?? 'through', (outcomes.get(lost?.why ?? 'through') ?? 0) + 1);
          if (lost === null) expect(Math.abs(angle)).toBeLessThan(Math.PI / 2);
          expect(path.flatMap((place) => [place.z, place.y])).toSatisfy((all: number[]) => all.every(Number.isFinite));
        }
      }
    }
    for (const outcome of ['through', 'missed', 'total reflection', 'turned back']) {
      expect(outcomes.get(outcome) ?? 0, outcome).toBeGreaterThan(5);
    }
    // Two bulging surfaces of a thin lens cross at the height 4.4.
    const crossed: readonly Surface[] = [
      { radius: 10, thickness: 2, index: 1.5 },
      { radius: -10, thickness: 0, index: 1 },
    ];
    expect(exactRay(crossed, { z: -1, y: 4 }, 0).lost).toBeNull();
    expect(exactRay(crossed, { z: -1, y: 6 }, 0).lost).toEqual({ surface: 1, why: 'missed' });
  });

  it('refuses what is no place and no direction towards the glass', () => {
    expect(() => exactRay(ball, { z: NaN, y: 0 }, 0)).toThrow(OutOfRange);
    expect(() => exactRay(ball, { z: -1, y: Infinity }, 0)).toThrow(OutOfRange);
    for (const angle of [NaN, Math.PI / 2, -2])
      expect(() => exactRay(ball, { z: -1, y: 0 }, angle)).toThrow(OutOfRange);
  });

  it('sees a flat surface as the limit of an ever flatter one', () => {
    const nearly = window.map((surface) => ({ ...surface, radius: 1e12 }));
    const [flat, curved] = [window, nearly].map((surfaces) => exactRay(surfaces, { z: -3, y: 2 }, 0.3));
    expect(curved!.angle).toEqual(closeTo(flat!.angle, { absolute: 1e-11, because: 'a curvature of 1e-12/mm' }));
  });
});

describe('heightAt', () => {
  it('runs straight on behind the last surface', () => {
    expect(heightAt({ path: [{ z: 5, y: 2 }], angle: Math.atan(-0.1), lost: null }, 25)).toEqual(closeTo(0, rounding));
  });

  it('refuses a place that is none', () => {
    const ray = { path: [{ z: 0, y: 1 }], angle: 0.1, lost: null };
    for (const z of [NaN, Infinity]) expect(() => heightAt(ray, z)).toThrow(OutOfRange);
  });
});

describe('outline', () => {
  it('runs from rim to rim through the vertex, on the circle', () => {
    const places = outline({ radius: 13, thickness: 0, index: 1 }, 100, 10, 5);
    expect(places).toHaveLength(5);
    expect(places[0]).toEqual({ z: 101, y: -5 });
    expect(places[2]).toEqual({ z: 100, y: 0 });
    for (const { z, y } of places) expect(Math.hypot(z - 113, y)).toEqual(closeTo(13, rounding));
  });

  it('ends where the sphere ends', () => {
    expect(outline({ radius: -13, thickness: 0, index: 1 }, 0, 40)[0]).toEqual({ z: -13, y: -13 });
  });

  it('refuses what cannot be drawn: no diameter, no radius, no vertex, a single place', () => {
    const surface = { radius: 20, thickness: 1, index: 1.5 };
    expect(() => outline(surface, 0, NaN)).toThrow(OutOfRange);
    expect(() => outline({ ...surface, radius: NaN }, 0, 10)).toThrow(OutOfRange);
    expect(() => outline(surface, NaN, 10)).toThrow(OutOfRange);
    expect(() => outline(surface, 0, 10, 1)).toThrow(/number of places is 1/);
  });
});

it.each([
  { radius: 50, thickness: 3, index: NaN },
  { radius: 50, thickness: 3, index: 0 },
  { radius: 50, thickness: Infinity, index: 1.5 },
])('refuses the glass $index, $thickness mm thick, by its place', (surface) => {
  const surfaces = [surface, { radius: -50, thickness: 0, index: 1 }];
  expect(() => exactRay(surfaces, { z: -100, y: 0 }, 0.01)).toThrow(/surface 0/);
});
