import type { Layers } from './composite.ts';
import type { Blur } from './damping.ts';
import { thinned } from './grid.ts';
import type { Picture, RenderOptions, View } from './picture.ts';
import { reducedScene, type Reduced } from './reduced.ts';
import { requireScene } from './require-scene.ts';
import type { Scene } from './scene.ts';
import { requireView } from './view.ts';

/** What every rendering starts from. */
export interface Prepared {
  /** the scene, sampled about as finely as the grid */
  readonly reduced: Reduced;
  /** heights of its lowest and its highest place, mm */
  readonly low: number;
  readonly high: number;
  /** mm on the sensor from one place of the grid to the next */
  readonly spacing: number;
  readonly oversampling: number;
  /** pixels and movement, as yet without optics */
  readonly pixels: Blur;
}

/** Checks what is given and brings the scene to about one sample a place of the grid. */
export function prepared(
  scene: Scene,
  view: View,
  { slices = 24, oversampling = 1, sharpAt }: RenderOptions,
): Prepared {
  requireFrom1('slices', slices, 1000);
  requireFrom1('places of the grid in a pixel', oversampling, 8);
  if (sharpAt && !(sharpAt.length > 0 && sharpAt.every(Number.isFinite)))
    throw new RangeError('the sharp planes lie at no heights; accepted: one finite height or more');
  const heights = checked.get(scene) ?? requireScene(scene);
  checked.set(scene, heights);
  requireView(view, heights.high);
  const spacing = view.pitch / oversampling;
  const sample = scene.pitch * view.magnification;
  const factor = Math.max(1, Math.round(spacing / sample));
  const reduced = reducedOnce(scene, factor, view.colour ? 3 : 1);
  const averaged = factor === 1 ? 0 : reduced.pitch * view.magnification;
  const pixels = { spacing, pixel: view.pitch, averaged, ...(view.motionBlur && { motion: view.motionBlur }) };
  return { ...heights, reduced, spacing, oversampling, pixels };
}

/** A scene is looked at many times: checked once, and kept as it was last wanted. Its arrays are taken never to change. */
const checked = new WeakMap<Scene, { readonly low: number; readonly high: number }>();
const kept = new WeakMap<Scene, { readonly factor: number; readonly channels: 1 | 3; readonly reduced: Reduced }>();

function reducedOnce(scene: Scene, factor: number, channels: 1 | 3): Reduced {
  const last = kept.get(scene);
  if (last?.factor === factor && last.channels === channels) return last.reduced;
  const reduced = reducedScene(scene, factor, channels);
  kept.set(scene, { factor, channels, reduced });
  return reduced;
}

function requireFrom1(what: string, count: number, most: number): void {
  if (Number.isInteger(count) && count >= 1 && count <= most) return;
  throw new RangeError(`the number of ${what} is ${count}; accepted: a whole number from 1 to ${most}`);
}

/** The pixels among the places of the grid. */
export function pictureOf({ columns, rows, light }: Layers, view: View, oversampling: number): Picture {
  const size = view.columns * view.rows;
  const planes = new Float32Array(size * light.length);
  light.forEach((plane, k) => planes.set(thinned(plane, columns, rows, oversampling), k * size));
  return { columns: view.columns, rows: view.rows, channels: view.colour ? 3 : 1, light: planes };
}
