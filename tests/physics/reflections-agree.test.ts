import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catchlightOutline, catchlightPoint, type CameraPlace } from '#core/light/catchlight-outline.ts';
import { catchlightWidth } from '#core/light/catchlight-width.ts';
import { convexMirrorImage } from '#core/light/convex-mirror.ts';
import type { FlatSource } from '#core/light/flat-source.ts';
import { across, cross, direction, dot, length, scaled, sum, type Vector } from '#core/light/vector.ts';
import { closeTo } from '#tests/support/close-to.ts';

const coordinate = fc.double({ min: -1, max: 1, noNaN: true });
const anyDirection = fc
  .tuple(coordinate, coordinate, coordinate)
  .filter((vector) => length(vector) > 0.1)
  .map((vector) => direction(vector));
const anyCamera = fc.record({
  towards: anyDirection,
  distance: fc.oneof(fc.constant(Infinity), fc.double({ min: 12, max: 1000, noNaN: true })),
});
const radius = 5;

/** Where a ray from *eye* along *ray* meets the ball first, or undefined. */
function hit(eye: Vector, ray: Vector): Vector | undefined {
  const nearest = sum(eye, ray, -dot(eye, ray));
  const depth = radius ** 2 - dot(nearest, nearest);
  return depth > 0 ? sum(nearest, ray, -Math.sqrt(depth)) : undefined;
}

/** The mirrored ray of one that meets the ball at *place*. */
function mirrored(ray: Vector, place: Vector): Vector {
  return sum(ray, place, (-2 * dot(ray, place)) / radius ** 2);
}

/** The ray of sight that shows the ball at (x, y) of the plane through its centre. */
function sightOf(camera: CameraPlace, x: number, y: number): { eye: Vector; ray: Vector } {
  const ahead = direction(camera.towards);
  const up = across(ahead, [0, 1, 0]);
  const right = cross(up, ahead);
  const target = sum(scaled(right, x), up, y);
  const isFar = camera.distance === Infinity;
  const eye = isFar ? sum(target, ahead, 1000) : scaled(ahead, camera.distance);
  return { eye, ray: isFar ? scaled(ahead, -1) : direction(sum(target, eye, -1)) };
}

describe('the mirroring point of a light', () => {
  it('turns the ray of sight to the light itself, wherever light and camera stand', () => {
    let seenOnes = 0;
    fc.assert(
      fc.property(
        anyCamera,
        anyDirection,
        fc.double({ min: 8, max: 400, noNaN: true }),
        (camera, towards, distance) => {
          const light = scaled(towards, distance);
          const { x, y, place, seen } = catchlightPoint(light, radius, camera);
          expect(length(place)).toEqual(closeTo(radius, { relative: 1e-12, because: 'on the ball' }));
          if (!seen) return;
          seenOnes++;
          const { eye, ray } = sightOf(camera, x, y);
          const met = hit(eye, ray);
          // Right at the rim rounding decides whether a ray still meets the ball.
          if (!met || Math.hypot(x, y) > 0.999 * radius) return;
          const because = 'rounding over 1000 mm; close to the rim a ray meets the ball at a slant';
          const absolute = Math.hypot(x, y) < 0.9 * radius ? 1e-12 : 1e-9;
          expect(length(sum(met, place, -1))).toEqual(closeTo(0, { absolute, because }));
          const [found, wanted] = [direction(mirrored(ray, place)), direction(sum(light, place, -1))];
          expect(length(cross(found, wanted))).toEqual(closeTo(0, { absolute, because }));
          expect(dot(found, wanted)).toBeGreaterThan(0);
        },
      ),
      { seed: 11, numRuns: 400 },
    );
    expect(seenOnes).toBeGreaterThan(200);
  });

  it('hides a light just where the ball stands between it and every point that the camera sees', () => {
    // A camera far ahead: what is hidden is the ball's shadow, as wide as the ball.
    const behind = (aside: number) => catchlightPoint([aside, 0, -70], radius).seen;
    expect([behind(4.999), behind(5.001)]).toEqual([false, true]);
  });
});

describe('the outline of a catchlight', () => {
  const box: FlatSource = {
    shape: 'rectangle',
    sourceSize: 90,
    height: 60,
    luminance: 1,
    centre: [-50, 45, 40],
    facing: [50, -45, -40],
  };
  const cameras: CameraPlace[] = [
    { towards: [0, 0, 1], distance: Infinity },
    { towards: [1, -1, 4], distance: 60 },
  ];

  it.each(cameras)('holds just those rays of sight that end on the light: camera %o', (camera) => {
    const outline = catchlightOutline(box, radius, camera, 400);
    let [inside, wrong] = [0, 0];
    for (let i = -60; i <= 60; i++) {
      for (let j = -60; j <= 60; j++) {
        const [x, y] = [(i * radius) / 60 + 0.003, (j * radius) / 60 + 0.002];
        const { eye, ray } = sightOf(camera, x, y);
        const place = hit(eye, ray);
        const lit = place !== undefined && endsOn(box, place, mirrored(ray, place));
        if (lit) inside++;
        if (lit !== isInside(outline, x, y)) wrong++;
      }
    }
    expect(inside).toBeGreaterThan(300);
    // Only rays that pass the outline within the sagitta of its 400 straight pieces may differ.
    expect(wrong).toBeLessThanOrEqual(1);
  });

  it('is as wide as catchlightWidth says for a light ahead', () => {
    const ahead: FlatSource = { shape: 'disc', sourceSize: 70, luminance: 1, centre: [0, 0, 45], facing: [0, 0, -1] };
    const [right, left] = [0, 32].map((index) => catchlightOutline(ahead, radius)[index]!);
    const width = catchlightWidth({ sourceSize: 70, ballRadius: radius, flashDistance: 40 });
    expect(Math.hypot(right!.x - left!.x, right!.y - left!.y)).toEqual(
      closeTo(width, { relative: 1e-13, because: 'found to the last digits' }),
    );
  });

  it('is for a small light the image by the mirror equation', () => {
    const size = 0.01;
    for (const flashDistance of [1, 10, 100]) {
      const { magnification } = convexMirrorImage({ subjectDistance: flashDistance, ballRadius: radius });
      const width = catchlightWidth({ sourceSize: size, ballRadius: radius, flashDistance });
      expect(width).toEqual(
        closeTo(size * magnification, { relative: 1e-4, because: 'the square of the half angle, at 1 mm' }),
      );
    }
  });
});

/** True where a ray from a point ends on the lit side of a rectangle. */
function endsOn(source: FlatSource & { shape: 'rectangle' }, from: Vector, ray: Vector): boolean {
  const facing = direction(source.facing);
  const up = across(facing, [0, 1, 0]);
  const right = cross(up, facing);
  const towards = dot(ray, facing);
  if (towards >= 0) return false;
  const end = sum(from, ray, dot(sum(source.centre, from, -1), facing) / towards);
  const offset = sum(end, source.centre, -1);
  const isAhead = dot(sum(source.centre, from, -1), facing) < 0;
  return (
    isAhead && Math.abs(dot(offset, right)) < source.sourceSize / 2 && Math.abs(dot(offset, up)) < source.height / 2
  );
}

/** Even-odd rule. */
function isInside(outline: readonly { x: number; y: number }[], x: number, y: number): boolean {
  return outline.reduce((inside, to, index) => {
    const from = outline.at(index - 1)!;
    const crosses = from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x);
    return crosses ? !inside : inside;
  }, false);
}
