import { closeSurface, emptyLayers, fillOpen, laySlice } from './composite.ts';
import { convolve } from './convolve.ts';
import { dampingOf } from './damping.ts';
import { fastLength } from './fft.ts';
import { framed } from './grid.ts';
import type { Picture, RenderOptions, View } from './picture.ts';
import { pictureOf, prepared } from './prepared.ts';
import { projected } from './project.ts';
import type { Scene } from './scene.ts';

/** What the pixels would record through an entrance pupil that is a point and bends no light. See `sharpPicture`. */
export function sharp(scene: Scene, view: View, options: RenderOptions = {}): Picture {
  const { reduced, pixels, oversampling } = prepared(scene, view, options);
  const moved = (view.motionBlur?.width ?? 0) / 2;
  const { grid, picture } = framed(view, oversampling, Math.ceil((moved + 4 * view.pitch) / pixels.spacing));
  const layers = emptyLayers(grid.columns, grid.rows, view.colour ? 3 : 1);
  const wanted = { left: 0, right: grid.columns, top: 0, bottom: grid.rows };
  for (const surface of reduced.surfaces) {
    laySlice(layers, { ...projected(reduced, surface, view, grid), columns: grid.columns, left: 0, top: 0, wanted });
    closeSurface(layers);
  }
  fillOpen(layers);

  const [columns, rows] = [fastLength(grid.columns), fastLength(grid.rows)];
  const damping = dampingOf(pixels, columns, rows);
  const result = emptyLayers(picture.right - picture.left, picture.bottom - picture.top, layers.light.length);
  layers.light.forEach((plane, channel) => {
    const pair = { columns, rows, re: new Float32Array(columns * rows), im: new Float32Array(columns * rows) };
    spread(plane, grid.columns, grid.rows, pair.re, columns, rows);
    convolve(pair, damping, { filled: [0, rows], wanted: [picture.top, picture.bottom] });
    for (let row = 0; row < result.rows; row++) {
      const from = (row + picture.top) * columns + picture.left;
      result.light[channel]!.set(pair.re.subarray(from, from + result.columns), row * result.columns);
    }
  });
  return pictureOf(result, view, oversampling);
}

/** Copies a plane to a larger one; beyond its right and lower rim it goes on as it ends. */
function spread(
  plane: Float32Array,
  across: number,
  down: number,
  into: Float32Array,
  columns: number,
  rows: number,
): void {
  for (let row = 0; row < rows; row++) {
    const from = Math.min(row, down - 1) * across;
    into.set(plane.subarray(from, from + across), row * columns);
    into.fill(plane[from + across - 1]!, row * columns + across, (row + 1) * columns);
  }
}
