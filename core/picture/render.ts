import { blurredSlice } from './blur-slice.ts';
import { expanded, intersection } from './box.ts';
import { closeSurface, compositeSlice, emptyLayers, fillOpen } from './composite.ts';
import { withNoise } from './photon-noise.ts';
import type { Picture } from './picture.ts';
import { pictureOf, prepared } from './prepared.ts';
import { projected } from './project.ts';
import { radialOtf, type RadialOtf } from './radial-otf.ts';
import { usualSlices, type RenderOptions } from './render-options.ts';
import { samplingGrid } from './sampling-grid.ts';
import type { Scene } from './scene.ts';
import { slicedSurface } from './sliced-surface.ts';
import { type Slices, slicesOf } from './slices.ts';
import { cornerFrequency } from './system-otf.ts';
import type { View } from './view.ts';

/**
 * What the sensor records of a scene: blurred by defocus, waves, aberration and movement, near edges before what is behind, averaged over
 * each pixel, with photon noise where the view has electrons.
 *
 * @param scene what is looked at; beyond its rim it goes on as it ends (`fieldOf` says how large it should be)
 * @param view see {@link View}
 * @param options see {@link RenderOptions}. A coarse picture takes a view of fewer and larger pixels, and fewer slices.
 * @returns linear light. One blur for all channels: the optics have no colour error. Blurs wider than the picture's longer side are
 *   rendered from what lies within one such side of it.
 * @throws OutOfRange, RangeError for a view or a scene that cannot be rendered, in words: above all a sharp plane inside the lens
 *
 * Assumes incoherent light, a blur that is the same over the picture at one depth, and no light reflected between surfaces.
 * Derived in [README](README.md).
 *
 * @example renderPicture(scene, { ...view, effectiveFNumber: 16 }, { slices: 32 }).light[0]
 */
export function renderPicture(scene: Scene, view: View, options?: RenderOptions): Picture {
  const steps = renderSteps(scene, view, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same as {@link renderPicture} in steps: yields the share that is done after each slice, so that it can be left off between two. */
export function* renderSteps(scene: Scene, view: View, options: RenderOptions = {}): Generator<number, Picture> {
  const { binned, low, high, spacing, oversampling, pixels } = prepared(scene, view, options);
  const slices = slicesOf(view, low, high, options.slices ?? usualSlices, options.sharpAt);
  const radii = psfRadii(view, slices, spacing, oversampling);
  const { grid, picture } = samplingGrid(view, oversampling, Math.max(...radii));
  const layers = emptyLayers(picture.right - picture.left, picture.bottom - picture.top, view.colour ? 3 : 1);
  const otfs: RadialOtf[] = [];

  for (const [number, surface] of binned.surfaces.entries()) {
    const sliced = slicedSurface(projected(binned, surface, view, grid), grid.columns, slices);
    for (const [slice, box] of sliced.boxes.entries()) {
      const radius = radii[slice]!;
      const seen = box && intersection(box, expanded(picture, radius));
      if (seen && seen.right > seen.left && seen.bottom > seen.top) {
        const optics = (otfs[slice] ??= radialOtf(view, slices.blurs[slice]!, cornerFrequency(spacing)));
        compositeSlice(layers, blurredSlice(sliced, slice, seen, { ...pixels, optics }, radius, picture));
      }
      yield (number + (slice + 1) / sliced.boxes.length) / binned.surfaces.length;
    }
    closeSurface(layers);
  }
  fillOpen(layers);
  return withNoise(pictureOf(layers, view, oversampling), view);
}

/** For each slice, the radius of its point spread function in places of the grid: at most a picture's longer side. */
export function psfRadii(view: View, { blurs }: Slices, spacing: number, oversampling: number): number[] {
  const widest = Math.max(view.columns, view.rows) * oversampling;
  return blurs.map((blur) => Math.min(widest, Math.ceil(psfRadius(view, blur) / spacing)));
}

/** How far from its middle the image of a point out of focus still has light that counts, mm on the sensor. */
function psfRadius(view: View, blur: number): number {
  const { pitch, effectiveFNumber, wavelength = 0.000555, sphericalAberration = 0, motionBlur } = view;
  const waves = wavelength * effectiveFNumber * (4 + 8 * Math.abs(sphericalAberration));
  return (Math.abs(blur) + (motionBlur?.width ?? 0)) / 2 + waves + 2 * pitch;
}
