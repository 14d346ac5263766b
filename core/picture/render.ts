import { blurredSlice, grown, within } from './blur-slice.ts';
import { closeSurface, emptyLayers, fillOpen, laySlice } from './composite.ts';
import { reachOf } from './damping.ts';
import { framed } from './grid.ts';
import { withNoise } from './noise.ts';
import type { Picture, RenderOptions, View } from './picture.ts';
import { pictureOf, prepared } from './prepared.ts';
import { projected } from './project.ts';
import type { Scene } from './scene.ts';
import { sheetOf } from './sheet.ts';
import { slicesOf, type Slices } from './slices.ts';
import { radialTransfer, type RadialTransfer } from './transfer.ts';

/** The picture of a scene, slice by slice; yields the share that is done. See `renderPicture`. */
export function* rendering(scene: Scene, view: View, options: RenderOptions = {}): Generator<number, Picture> {
  const { reduced, low, high, spacing, oversampling, pixels } = prepared(scene, view, options);
  const slices = slicesOf(view, low, high, options.slices ?? 24, options.sharpAt);
  const reaches = reachesOf(view, slices, spacing, oversampling);
  const { grid, picture } = framed(view, oversampling, Math.max(...reaches));
  const layers = emptyLayers(picture.right - picture.left, picture.bottom - picture.top, view.colour ? 3 : 1);
  const known: RadialTransfer[] = [];

  for (const [number, surface] of reduced.surfaces.entries()) {
    const sheet = sheetOf(projected(reduced, surface, view, grid), grid.columns, slices);
    for (const [slice, box] of sheet.boxes.entries()) {
      const reach = reaches[slice]!;
      const seen = box && within(box, grown(picture, reach));
      if (seen && seen.right > seen.left && seen.bottom > seen.top) {
        const optics = (known[slice] ??= radialTransfer(view, slices.blurs[slice]!, reachOf(spacing)));
        laySlice(layers, blurredSlice(sheet, slice, seen, { ...pixels, optics }, reach, picture));
      }
      yield (number + (slice + 1) / sheet.boxes.length) / reduced.surfaces.length;
    }
    closeSurface(layers);
  }
  fillOpen(layers);
  return withNoise(pictureOf(layers, view, oversampling), view);
}

/** For each slice, over how many places of the grid its blur carries light: at most over a picture's longer side. */
export function reachesOf(view: View, { blurs }: Slices, spacing: number, oversampling: number): number[] {
  const widest = Math.max(view.columns, view.rows) * oversampling;
  return blurs.map((blur) => Math.min(widest, Math.ceil(carriedBy(view, blur) / spacing)));
}

/** How far from its middle the image of a point out of focus still has light that counts, mm on the sensor. */
function carriedBy(view: View, blur: number): number {
  const { pitch, effectiveFNumber, wavelength = 0.000555, sphericalAberration = 0, motionBlur } = view;
  const waves = wavelength * effectiveFNumber * (4 + 8 * Math.abs(sphericalAberration));
  return (Math.abs(blur) + (motionBlur?.width ?? 0)) / 2 + waves + 2 * pitch;
}
