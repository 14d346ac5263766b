import { estimateScale } from '#core/picture/merge/estimate-scale.ts';
import { Merge } from '#core/picture/merge/merge.ts';
import { narrowestOf, scaleOf } from '#core/picture/merge/scale-of.ts';
import type { Picture } from '#core/picture/picture.ts';
import { renderPicture } from '#core/picture/render.ts';
import type { Scene } from '#core/picture/scene.ts';
import type { View } from '#core/picture/view.ts';
import { lifeSize } from './in-view.ts';
import { smallScene, type At } from './small-scenes.ts';

/** A view of 1.44 mm by 0.96 mm at life size. */
export const small: View = {
  ...lifeSize,
  effectiveFNumber: 11,
  focusHeight: 3,
  pitch: 0.01,
  columns: 144,
  rows: 96,
};

const grid = { columns: 192, rows: 144, pitch: 0.01 };

function hash(x: number, y: number): number {
  const value = Math.sin(x * 127.1 + y * 311.7) * 43758.5453;
  return value - Math.floor(value);
}

/** Noise that has nothing finer than `size` samples. */
function spots(x: number, y: number, size: number): number {
  const [i, j] = [Math.floor(x / size), Math.floor(y / size)];
  const [f, g] = [x / size - i, y / size - j].map((t) => t * t * (3 - 2 * t)) as [number, number];
  return (
    (hash(i, j) * (1 - f) + hash(i + 1, j) * f) * (1 - g) + (hash(i, j + 1) * (1 - f) + hash(i + 1, j + 1) * f) * g
  );
}

/** Light of a rough surface: something to see at every scale, everywhere. */
export const rough: At = (x, y) => 0.15 + 0.3 * spots(x, y, 3) + 0.2 * spots(x + 50, y, 9) + 0.2 * spots(x, y + 90, 27);

/** A rough plane, from the height 0 at the left to 3 mm at the right. */
export const slope = smallScene(grid, { light: rough, height: (x) => 1.5 + (3 * x) / grid.columns });
/** A rough plane square to the axis. */
export const level = smallScene(grid, { light: rough, height: 1.5 });
/** How high the left or the right of it lies above a rough plane. */
export const edgeHeight = 2;
/** A white half on the left, 2 mm above a rough plane. */
export const edge = smallScene(
  grid,
  { light: () => 0.9, height: edgeHeight, coverage: (x) => (x < 0 ? 1 : 0) },
  { light: (x, y) => 0.4 * rough(x, y), height: 0 },
);

/** A stack rendered and merged. The frames come from the one whose scale they are brought to. */
export function mergedStack(
  scene: Scene,
  views: readonly View[],
  how: 'known' | 'estimated' | 'uncorrected' = 'known',
  picture: (scene: Scene, view: View) => Picture = renderPicture,
): { readonly picture: Picture; readonly view: View } {
  const view = narrowestOf(views);
  const { columns, rows, colour } = view;
  const merge = new Merge(columns, rows, colour ? 3 : 1);
  let before: Picture | undefined;
  let scale = 1;
  for (const frame of view === views[0] ? views : [...views].reverse()) {
    const seen = picture(scene, frame);
    if (how === 'known') scale = scaleOf(frame, view);
    else if (how === 'estimated' && before) scale *= estimateScale(seen, before);
    merge.add(seen, scale);
    before = seen;
  }
  return { picture: merge.result(), view };
}

/** How much fine detail there is in each strip of so many columns: the mean square of what a neighbourhood of 3 × 3 lacks of a pixel. */
export function detailOfStrips({ columns, rows, light }: Picture, width: number): readonly number[] {
  const rim = 8;
  return Array.from({ length: Math.floor((columns - 2 * rim) / width) }, (_, strip) => {
    let sum = 0;
    for (let x = rim + strip * width; x < rim + (strip + 1) * width; x++)
      for (let y = rim; y < rows - rim; y++) {
        let around = 0;
        for (let dy = -1; dy <= 1; dy++) for (let dx = -1; dx <= 1; dx++) around += light[(y + dy) * columns + x + dx]!;
        sum += (light[y * columns + x]! - around / 9) ** 2;
      }
    return sum / (width * (rows - 2 * rim));
  });
}
