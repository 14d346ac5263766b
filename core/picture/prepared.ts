import { binnedScene, type BinnedScene } from './binned.ts';
import type { Layers } from './composite.ts';
import type { Picture } from './picture.ts';
import { requireRenderOptions, type RenderOptions } from './render-options.ts';
import { decimated } from './sampling-grid.ts';
import { requireScene, type Scene } from './scene.ts';
import type { SystemBlur } from './system-otf.ts';
import { requireView, type View } from './view.ts';

/** What every rendering starts from. */
export interface Prepared {
  /** the scene, sampled about as finely as the grid */
  readonly binned: BinnedScene;
  /** heights of its lowest and its highest place, mm */
  readonly low: number;
  readonly high: number;
  /** mm on the sensor from one place of the grid to the next */
  readonly spacing: number;
  readonly oversampling: number;
  /** pixels and movement, as yet without optics */
  readonly pixels: SystemBlur;
}

/** Checks what is given and brings the scene to about one sample a place of the grid. */
export function prepared(scene: Scene, view: View, options: RenderOptions): Prepared {
  requireRenderOptions(options);
  const { oversampling = 1 } = options;
  const heights = checked.get(scene) ?? requireScene(scene);
  checked.set(scene, heights);
  requireView(view, heights.high);
  const spacing = view.pitch / oversampling;
  const sample = scene.pitch * view.magnification;
  const factor = Math.max(1, Math.round(spacing / sample));
  const binned = binnedOnce(scene, factor, view.colour ? 3 : 1);
  const averaged = factor === 1 ? 0 : binned.pitch * view.magnification;
  const pixels = { spacing, pixel: view.pitch, averaged, ...(view.motionBlur && { motion: view.motionBlur }) };
  return { ...heights, binned, spacing, oversampling, pixels };
}

/** A scene is looked at many times: checked once, and cached as it was last wanted. Its arrays are taken never to change. */
const checked = new WeakMap<Scene, { readonly low: number; readonly high: number }>();
const cache = new WeakMap<Scene, { readonly factor: number; readonly channels: 1 | 3; readonly binned: BinnedScene }>();

function binnedOnce(scene: Scene, factor: number, channels: 1 | 3): BinnedScene {
  const last = cache.get(scene);
  if (last?.factor === factor && last.channels === channels) return last.binned;
  const binned = binnedScene(scene, factor, channels);
  cache.set(scene, { factor, channels, binned });
  return binned;
}

/** The pixels among the places of the grid. */
export function pictureOf({ columns, rows, light }: Layers, view: View, oversampling: number): Picture {
  const size = view.columns * view.rows;
  const planes = new Float32Array(size * light.length);
  light.forEach((plane, k) => planes.set(decimated(plane, columns, rows, oversampling), k * size));
  return { columns: view.columns, rows: view.rows, channels: view.colour ? 3 : 1, light: planes };
}
