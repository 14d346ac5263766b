import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ballIlluminance } from '#core/light/ball-illuminance.ts';
import { discIlluminance } from '#core/light/disc-illuminance.ts';
import { cornersOf, isBefore, sourceAxes, type DiscSource, type RectangleSource } from '#core/light/flat-source.ts';
import { illuminanceFrom } from '#core/light/illuminance-from.ts';
import { polygonIlluminance, type SurfaceElement } from '#core/light/polygon-illuminance.ts';
import { direction, dot, length, scaled, sum, type Vector } from '#core/light/vector.ts';
import { closeTo } from '#tests/support/close-to.ts';

const coordinate = fc.double({ min: -1, max: 1, noNaN: true });
const anyDirection = fc
  .tuple(coordinate, coordinate, coordinate)
  .filter((vector) => length(vector) > 0.1)
  .map((vector) => direction(vector));
const anyPlace = fc
  .tuple(coordinate, coordinate, coordinate)
  .filter((vector) => length(vector) > 0.4)
  .map((vector): Vector => scaled(vector, 200));

const anyDisc = fc
  .record({ centre: anyPlace, facing: anyDirection, size: fc.double({ min: 5, max: 120, noNaN: true }) })
  .map(({ centre, facing, size }): DiscSource => ({
    shape: 'disc',
    sourceSize: size,
    luminance: 1,
    centre,
    // Towards the origin, where the lit surface is.
    facing: dot(facing, centre) < 0 ? facing : scaled(facing, -1),
  }));

/** The rim as a polygon, its corners on a circle so much wider that the area is the disc's. */
function polygonOf(source: DiscSource, sides: number): Vector[] {
  const { first, second } = sourceAxes(source);
  const turn = (2 * Math.PI) / sides;
  const radius = (source.sourceSize / 2) * Math.sqrt(turn / Math.sin(turn));
  return Array.from({ length: sides }, (_, side) =>
    sum(sum(source.centre, first, radius * Math.cos(side * turn)), second, radius * Math.sin(side * turn)),
  );
}

/** L ∫ cos θ cos θ'/r² dA over a disc, ring by ring and step by step: the definition. */
function quadrature(source: DiscSource, { point, normal }: SurfaceElement, rings: number, steps: number): number {
  const { first, second } = sourceAxes(source);
  const radius = source.sourceSize / 2;
  let total = 0;
  for (let ring = 0; ring < rings; ring++) {
    const rho = radius * Math.sqrt((ring + 0.5) / rings);
    for (let step = 0; step < steps; step++) {
      const turn = (2 * Math.PI * (step + 0.5)) / steps;
      const place = sum(sum(source.centre, first, rho * Math.cos(turn)), second, rho * Math.sin(turn));
      const ray = sum(place, point, -1);
      const cosines = Math.max(0, dot(ray, normal)) * Math.max(0, -dot(ray, source.facing));
      total += cosines / length(ray) ** 4 / length(source.facing);
    }
  }
  return (total * Math.PI * radius ** 2) / (rings * steps);
}

const origin: Vector = [0, 0, 0];

describe('a disc in closed form', () => {
  it('is the limit of polygons of ever more sides, wherever it stands and the horizon cuts it', () => {
    let cut = 0;
    fc.assert(
      fc.property(anyDisc, anyDirection, (source, normal) => {
        const element = { point: origin, normal };
        const closed = discIlluminance(source, element);
        const [coarse, fine] = [60, 120].map((sides) =>
          Math.abs(polygonIlluminance(polygonOf(source, sides), element) - closed),
        );
        if (closed > 0 && closed < discIlluminance(source, { point: origin, normal: direction(source.centre) }) / 2)
          cut++;
        expect(fine, JSON.stringify({ source, normal })).toBeLessThan(2e-4);
        expect(fine).toBeLessThanOrEqual(coarse! + 1e-6);
      }),
      { seed: 4, numRuns: 300 },
    );
    expect(cut).toBeGreaterThan(20);
  });

  it('is the integral over its area', () => {
    fc.assert(
      fc.property(anyDisc, anyDirection, (source, normal) => {
        const closed = discIlluminance(source, { point: origin, normal });
        const summed = quadrature(source, { point: origin, normal }, 120, 160);
        const because = 'midpoint rule, a horizon between its points, and a near disc';
        expect(summed).toEqual(closeTo(closed, { absolute: 0.004, because }));
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  it('is the integral to nine digits where nothing is cut and the disc is not near', () => {
    const source: DiscSource = {
      shape: 'disc',
      sourceSize: 40,
      luminance: 1,
      centre: [30, -20, 90],
      facing: [-2, 3, -6],
    };
    const element = { point: origin, normal: direction([0.3, 0.2, 1]) };
    const [coarse, fine] = [60, 120].map((rings) => quadrature(source, element, rings, 40));
    // The rule’s error falls with the square of the number of rings: two of them give the limit.
    const limit = fine! + (fine! - coarse!) / 3;
    expect(discIlluminance(source, element)).toEqual(
      closeTo(limit, { relative: 1e-9, because: 'two quadratures and their limit' }),
    );
  });

  it('sends a flow that, counted with its sign, is one vector: cut or not, three axes give any direction', () => {
    fc.assert(
      fc.property(anyDisc, anyDirection, (source, normal) => {
        const there = discIlluminance(source, { point: origin, normal });
        const back = discIlluminance(source, { point: origin, normal: scaled(normal, -1) });
        const flow = (axis: Vector) =>
          discIlluminance(source, { point: origin, normal: axis }) -
          discIlluminance(source, { point: origin, normal: scaled(axis, -1) });
        const projected = dot([flow([1, 0, 0]), flow([0, 1, 0]), flow([0, 0, 1])], normal);
        expect(there - back).toEqual(closeTo(projected, { absolute: 1e-12, because: 'sums of closed forms' }));
      }),
      { seed: 6, numRuns: 200 },
    );
  });
});

describe('a rectangle', () => {
  const softBox: RectangleSource = {
    shape: 'rectangle',
    sourceSize: 80,
    height: 50,
    luminance: 7,
    centre: [40, 30, 70],
    facing: [-1, -1, -2],
  };

  it('is the sum of its parts', () => {
    const { first } = sourceAxes(softBox);
    const halves = [-1, 1].map((side) => ({
      ...softBox,
      sourceSize: 40,
      centre: sum(softBox.centre, first, side * 20),
    }));
    fc.assert(
      fc.property(anyDirection, (normal) => {
        const element = { point: origin, normal };
        const whole = illuminanceFrom([softBox], element);
        expect(illuminanceFrom(halves, element)).toEqual(
          closeTo(whole, { absolute: 1e-12, because: 'a few roundings' }),
        );
      }),
      { seed: 7 },
    );
  });

  it('lights a point of a ball as its corners would, whole or cut', () => {
    fc.assert(
      fc.property(anyDirection, (normal) => {
        const point = scaled(normal, 12);
        fc.pre(isBefore(softBox, point));
        const byCorners = softBox.luminance * polygonIlluminance(cornersOf(softBox), { point, normal });
        expect(ballIlluminance([softBox], { ballRadius: 12 }, normal)).toEqual(
          closeTo(byCorners, { relative: 1e-12, because: 'a few roundings' }),
        );
      }),
      { seed: 8 },
    );
  });
});

describe('the light on a whole ball', () => {
  it('is the light that a far, small source sends through the ball’s cross-section', () => {
    const lamp: DiscSource = {
      shape: 'disc',
      sourceSize: 10,
      luminance: 1000,
      centre: [0, 0, 5000],
      facing: [0, 0, -1],
    };
    const ball = { ballRadius: 3 };
    const rings = 400;
    let flux = 0;
    for (let ring = 0; ring < rings; ring++) {
      const height = 1 - (2 * (ring + 0.5)) / rings;
      const towards: Vector = [Math.sqrt(1 - height ** 2), 0, height];
      flux += (ballIlluminance([lamp], ball, towards) * 4 * Math.PI * 9) / rings;
    }
    const through = (1000 * Math.PI * 25 * Math.PI * 9) / 5000 ** 2;
    expect(flux).toEqual(closeTo(through, { relative: 2e-3, because: 'the ball’s front is 3 mm nearer, of 5000' }));
  });
});
