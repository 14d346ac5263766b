import { expect, it } from 'vitest';
import { smallScene } from '#tests/support/small-scenes.ts';
import { requireScene, type Surface } from './scene.ts';

const scene = smallScene(
  { columns: 4, rows: 3, pitch: 0.5 },
  { light: () => 1, height: (x) => 9 + x, coverage: (x) => (x < 0 ? 0.5 : 0) },
  { light: () => 1, height: (_, y) => 5 + y },
);

it('a scene reaches from its lowest to its highest place that is covered', () => {
  // Of the first surface what is at −1.5 and −0.5 is covered; the second is from 4 to 6.
  expect(requireScene(scene)).toEqual({ low: 4, high: 8.5 });
  expect(requireScene({ ...scene, surfaces: [scene.surfaces[0]!] })).toEqual({ low: 7.5, high: 8.5 });
});

it.each([
  [{ columns: 0 }, '0 × 3 samples 0.5 mm apart on 2 surfaces'],
  [{ columns: -4, rows: -3 }, '-4 × -3 samples'],
  [{ columns: -4 }, '-4 × 3 samples'],
  [{ columns: 4.1 }, '4.1 × 3 samples'],
  [{ columns: 2.5, rows: 4 }, '2.5 × 4 samples'],
  [{ columns: 4, rows: 0 }, '4 × 0 samples'],
  [{ rows: NaN }, '4 × NaN samples'],
  [{ pitch: 0 }, 'samples 0 mm apart'],
  [{ pitch: NaN }, 'samples NaN mm apart'],
  [{ pitch: Infinity }, 'samples Infinity mm apart'],
  [{ surfaces: [] }, 'on 0 surfaces'],
])('a scene of %o is none', (change, words) => {
  expect(() => requireScene({ ...scene, ...change })).toThrow(words);
});

it('a surface has as many samples as its scene, in each of its planes', () => {
  const changed = (change: Partial<Surface>) => () =>
    requireScene({ ...scene, surfaces: [scene.surfaces[0]!, { ...scene.surfaces[1]!, ...change }] });
  for (const change of [
    { albedo: new Float32Array(12) },
    { albedo: new Float32Array(37) },
    { height: new Float32Array(11) },
    { coverage: new Float32Array(13).fill(1) },
  ])
    expect(changed(change)).toThrow('has not 4 × 3 samples in each of its planes');
});

it('a height that is no number is refused where it is covered, and so is a scene that is nowhere', () => {
  const height = (value: number, covered: number) => () =>
    requireScene(
      smallScene(
        { columns: 2, rows: 1, pitch: 1 },
        {
          light: () => 1,
          height: (x) => (x < 0 ? value : 1),
          coverage: (x) => (x < 0 ? covered : 1),
        },
      ),
    );
  for (const value of [NaN, Infinity, -Infinity]) {
    expect(height(value, 0.1)).toThrow('heights that are not finite numbers');
    expect(height(value, 0)()).toEqual({ low: 1, high: 1 });
  }
  const nowhere = smallScene({ columns: 2, rows: 1, pitch: 1 }, { light: () => 1, height: 1, coverage: () => 0 });
  expect(() => requireScene(nowhere)).toThrow('heights that are not finite numbers');
});
