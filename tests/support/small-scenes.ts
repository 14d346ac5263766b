import type { Scene, Surface } from '#core/picture/scene.ts';

/** Samples of a scene, counted from its middle; at an even number of columns the middle lies between two of them. */
export type At = (x: number, y: number) => number;

/** What a test says of a surface: grey light, height and coverage at each sample; all of it covered unless said. */
export interface SmallSurface {
  readonly light: At;
  readonly height: number | At;
  readonly coverage?: At;
}

/** A scene of few samples, described by formulas instead of arrays. Front surfaces first. */
export function smallScene(
  { columns, rows, pitch }: Pick<Scene, 'columns' | 'rows' | 'pitch'>,
  ...surfaces: readonly SmallSurface[]
): Scene {
  const size = columns * rows;
  let depth = 0;
  const made = surfaces.map(({ light, height, coverage = () => 1 }): Surface => {
    const surface = {
      albedo: new Float32Array(3 * size),
      height: new Float32Array(size),
      coverage: new Float32Array(size),
    };
    for (let at = 0; at < size; at++) {
      const [x, y] = [(at % columns) - (columns - 1) / 2, Math.floor(at / columns) - (rows - 1) / 2];
      for (let channel = 0; channel < 3; channel++) surface.albedo[channel * size + at] = light(x, y);
      surface.height[at] = typeof height === 'number' ? height : height(x, y);
      surface.coverage[at] = coverage(x, y);
      depth = Math.max(depth, surface.height[at]!);
    }
    return surface;
  });
  return { columns, rows, pitch, depth, surfaces: made };
}

/** One sample that shines, in the middle of a black plane. */
export const point: At = (x, y) => (x === 0 && y === 0 ? 1 : 0);
