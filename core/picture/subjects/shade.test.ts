import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import type { Surface } from '../scene.ts';
import type { Direction } from './lamp.ts';
import { lightFrom, lit, mirrored, roundShade } from './shade.ts';
import type { SceneOptions } from './subject.ts';

const rounding = { absolute: 1e-6, because: 'single precision' };
const quarter = Math.PI / 2;
/** Turned so far from the camera towards the right-hand side. */
const turned = (angle: number): Direction => [Math.sin(angle), 0, Math.cos(angle)];

describe('light from a direction', () => {
  it('comes from the right at azimuth 0, from the top a quarter on, from the camera high up', () => {
    const near = (direction: Direction) => direction.map((one) => Number(one.toFixed(12)) + 0);
    expect(near(lightFrom({ azimuth: 0, elevation: 0, angularSize: 1 }))).toEqual([1, 0, 0]);
    expect(near(lightFrom({ azimuth: quarter, elevation: 0, angularSize: 1 }))).toEqual([0, -1, 0]);
    expect(near(lightFrom({ azimuth: 1, elevation: quarter, angularSize: 1 }))).toEqual([0, 0, 1]);
    expect(Math.hypot(...lightFrom({ azimuth: 2.2, elevation: 0.8, angularSize: 1 }))).toEqual(closeTo(1, rounding));
  });

  it('lights what is round by the cosine, and what faces away by the rest of 0.35', () => {
    const light = turned(0.4);
    expect(roundShade(turned(0.4), light)).toEqual(closeTo(1, rounding));
    expect(roundShade(turned(0.4 + Math.PI / 3), light)).toEqual(closeTo(0.35 + 0.65 / 2, rounding));
    expect(roundShade(turned(2.5), light)).toBe(0.35);
  });
});

describe('a mirror', () => {
  it('turned by an angle shows what stands off by twice of it: all of a light within its outline, half of it there', () => {
    const light = turned(0.6);
    const shown = (angle: number) => mirrored(turned(angle), light, 0.4, 0.1);
    expect(shown(0.3)).toBe(1);
    // Its outline is 0.2 off: 0.15 and less is inside of what is spread by 0.1, 0.25 and more outside.
    expect([shown(0.3 + 0.074), shown(0.3 - 0.074)]).toEqual([1, 1]);
    expect([shown(0.3 + 0.126), shown(0.3 - 0.126)]).toEqual([0, 0]);
    expect(shown(0.3 + 0.1)).toEqual(closeTo(0.5, rounding));
    // Smooth: at a quarter of the way 1 − (3/16 − 2/64) = 27/32.
    expect(shown(0.3 + 0.0875)).toEqual(closeTo(27 / 32, rounding));
    expect(mirrored([0, Math.sin(-0.3), Math.cos(0.3)], [0, Math.sin(-0.6), Math.cos(0.6)], 0.4, 0.1)).toBe(1);
  });
});

describe('a surface in the light', () => {
  const options: SceneOptions = {
    columns: 7,
    rows: 5,
    pitch: 0.5,
    seed: 1,
    lighting: { azimuth: 0, elevation: Math.PI / 6, angularSize: 0.6 },
  };
  const size = 35;
  const plane = (across: number, down: number): Surface => ({
    albedo: Float32Array.from({ length: 3 * size }, (_, at) => [0.2, 0.4, 0.8][Math.floor(at / size)]!),
    height: Float32Array.from({ length: size }, (_, at) => 0.5 * (across * (at % 7) + down * Math.floor(at / 7))),
    coverage: new Float32Array(size).fill(1),
  });
  const lightOn = (surface: Surface, finish: Parameters<typeof lit>[2], lighting = options.lighting!) =>
    lit(surface, { ...options, lighting }, finish).albedo;

  it('is lit alike all over a plane, up to its rim, by the cosine between the plane and the light', () => {
    // Flat: the sine of 30°. Facing it: a slope of −√3 to the right. Turned away from it: a slope of +1/√3 and more.
    for (const [across, cosine] of [
      [0, 0.5],
      [-Math.sqrt(3), 1],
      [1 / Math.sqrt(3), 0],
      [3, 0],
    ] as const) {
      const albedo = lightOn(plane(across, 0), { ambient: 0.2 });
      albedo.forEach((value, at) => {
        const own = [0.2, 0.4, 0.8][Math.floor(at / size)]!;
        expect(value).toEqual(closeTo(own * (0.2 + 0.8 * cosine), rounding));
      });
    }
    const fromTop = { azimuth: quarter, elevation: Math.PI / 6, angularSize: 0.6 };
    for (const value of lightOn(plane(0, Math.sqrt(3)), {}, fromTop).subarray(0, size))
      expect(value).toEqual(closeTo(0.2, rounding));
    for (const value of lightOn(plane(0, -Math.sqrt(3)), {}, fromTop).subarray(0, size))
      expect(value).toEqual(closeTo(0.2 * 0.3, rounding));
  });

  it('mirrors as much as it is glossy where it is turned halfway to the light', () => {
    // 30° up from the right: halfway to the camera a plane leans by 30°, a slope of −1/√3; its cosine to the light is √3/2.
    const glossy = lightOn(plane(-1 / Math.sqrt(3), 0), { ambient: 0, gloss: 0.25 });
    for (const [channel, own] of [0.2, 0.4, 0.8].entries()) {
      for (const value of glossy.subarray(channel * size, (channel + 1) * size))
        expect(value).toEqual(closeTo((own * Math.sqrt(3)) / 2 + 0.25, rounding));
    }
    const away = lightOn(plane(1, 0), { ambient: 0.5, gloss: 0.25 });
    expect(away[0]).toEqual(closeTo(0.1, rounding));
  });

  it('is left as it is where there is none of it', () => {
    const surface = plane(0, 0);
    surface.coverage[3] = 0;
    const albedo = lightOn(surface, {});
    expect([albedo[3], albedo[size + 3]]).toEqual([Math.fround(0.2), Math.fround(0.4)]);
    expect(albedo[4]).toBeLessThan(0.15);
  });
});
