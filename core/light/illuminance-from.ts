import { discIlluminance } from './disc-illuminance.ts';
import { cornersOf, isBefore, type FlatSource } from './flat-source.ts';
import { polygonIlluminance, type SurfaceElement } from './polygon-illuminance.ts';
import { requirePlace } from './require.ts';
import { direction } from './vector.ts';

/**
 * The illuminance on a small piece of surface from any set of flat lights. Exact for each light.
 *
 * E = Σ L_v × (what the light fills of the surface's sky, weighted by the cosine)
 *
 * @param sources discs, rings and rectangles; each shines to the side it faces
 * @param element where the piece is, mm, and the direction it faces, of any length
 * @returns lx. Nothing from a light behind the surface's horizon, or one that shows its back.
 * @throws OutOfRange for a size, luminance, place or direction that is none, and for a piece that touches the rim of a disc
 *
 * Assumes diffusing lights, no light from anywhere else, and that no light hides another: two that overlap are both counted.
 * Source: see polygonIlluminance and discIlluminance. Derived in [README](README.md#form-factors).
 *
 * @example illuminanceFrom([{ shape: 'disc', sourceSize: 200, luminance: 1000, centre: [0, 0, 100], facing: [0, 0, -1] }], { point: [0, 0, 0], normal: [0, 0, 1] }) // 1570.796...
 */
export function illuminanceFrom(sources: readonly FlatSource[], element: SurfaceElement): number {
  requirePlace(element.point);
  const facing = { point: element.point, normal: direction(element.normal) };
  return sources.reduce((total, source) => total + source.luminance * fromOne(source, facing), 0);
}

function fromOne(source: FlatSource, element: SurfaceElement): number {
  const shining = source.shape === 'disc' ? fromDisc(source, element) : fromRectangle(source, element);
  return isBefore(source, element.point) ? shining : 0;
}

/** What a hole would give is missing. */
function fromDisc(source: FlatSource & { shape: 'disc' }, element: SurfaceElement): number {
  const whole = discIlluminance(source, element);
  if (!source.hole) return whole;
  return Math.max(0, whole - discIlluminance({ ...source, sourceSize: source.hole, hole: 0 }, element));
}

function fromRectangle(source: FlatSource & { shape: 'rectangle' }, element: SurfaceElement): number {
  return polygonIlluminance(cornersOf(source), element);
}
