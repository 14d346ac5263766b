import { convolve } from '#core/fourier/convolve.ts';
import { fastLength } from '#core/fourier/fast-length.ts';
import { closeSurface, compositeSlice, emptyLayers, fillOpen } from './composite.ts';
import type { Picture } from './picture.ts';
import { pictureOf, prepared } from './prepared.ts';
import { projected } from './project.ts';
import type { RenderOptions } from './render-options.ts';
import { samplingGrid } from './sampling-grid.ts';
import type { Scene } from './scene.ts';
import { systemOtf } from './system-otf.ts';
import type { View } from './view.ts';

/**
 * The same frame through a pupil that is a point and bends no light: everything sharp, seen in the same perspective by the same pixels.
 *
 * @returns what a stack is measured by; not a picture that any lens takes. No noise.
 * @throws as `renderPicture`
 */
export function sharpPicture(scene: Scene, view: View, options: RenderOptions = {}): Picture {
  const { binned, pixels, oversampling } = prepared(scene, view, options);
  const moved = (view.motionBlur?.width ?? 0) / 2;
  const { grid, picture } = samplingGrid(view, oversampling, Math.ceil((moved + 4 * view.pitch) / pixels.spacing));
  const layers = emptyLayers(grid.columns, grid.rows, view.colour ? 3 : 1);
  const wanted = { left: 0, right: grid.columns, top: 0, bottom: grid.rows };
  for (const surface of binned.surfaces) {
    compositeSlice(layers, {
      ...projected(binned, surface, view, grid),
      columns: grid.columns,
      left: 0,
      top: 0,
      wanted,
    });
    closeSurface(layers);
  }
  fillOpen(layers);

  const [columns, rows] = [fastLength(grid.columns), fastLength(grid.rows)];
  const otf = systemOtf(pixels, columns, rows);
  const result = emptyLayers(picture.right - picture.left, picture.bottom - picture.top, layers.light.length);
  layers.light.forEach((plane, channel) => {
    const pair = { columns, rows, re: new Float32Array(columns * rows), im: new Float32Array(columns * rows) };
    padded(plane, grid.columns, grid.rows, pair.re, columns, rows);
    convolve(pair, otf, { filled: [0, rows], wanted: [picture.top, picture.bottom] });
    for (let row = 0; row < result.rows; row++) {
      const from = (row + picture.top) * columns + picture.left;
      result.light[channel]!.set(pair.re.subarray(from, from + result.columns), row * result.columns);
    }
  });
  return pictureOf(result, view, oversampling);
}

/** Copies a plane to a larger one, padded on its right and lower sides by its outermost samples. */
function padded(
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
