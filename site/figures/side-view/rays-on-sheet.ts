import type { RayPath } from '#core/rig/ray-paths.ts';
import { breakGap, type SheetPlace } from './sheet-place.ts';

interface Window {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export type Point = readonly [x: number, y: number];

/** The part of a straight line inside a window, or null; after Liang and Barsky. */
export function clipLine([x0, y0]: Point, [x1, y1]: Point, window: Window): [Point, Point] | null {
  let [from, to] = [0, 1];
  const edges = [
    [x0 - x1, x0 - window.left],
    [x1 - x0, window.right - x0],
    [y0 - y1, y0 - window.top],
    [y1 - y0, window.bottom - y0],
  ] as const;
  for (const [step, room] of edges) {
    if (step === 0) {
      if (room < 0) return null;
      continue;
    }
    const share = room / step;
    if (step < 0) from = Math.max(from, share);
    else to = Math.min(to, share);
  }
  if (!(from <= to)) return null;
  const at = (share: number): Point => [x0 + share * (x1 - x0), y0 + share * (y1 - y0)];
  return [at(from), at(to)];
}

const figure = (value: number) => String(Math.round(10 * value) / 10);

/** A polyline clipped to a window, as a path; '' where nothing of it is inside. */
export function clippedPath(points: readonly Point[], window: Window): string {
  let path = '';
  let last = '';
  for (let index = 1; index < points.length; index++) {
    const piece = clipLine(points[index - 1]!, points[index]!, window);
    if (!piece) continue;
    const [start, end] = piece.map(([x, y]) => `${figure(x)} ${figure(y)}`) as [string, string];
    path += start === last ? `L${end}` : `M${start}L${end}`;
    last = end;
  }
  return path;
}

/** A ray of the rig on the sheet, from the sensor to the subject or to the edge; over a break it goes on at its own slope. */
export function rayOnSheet({ points, slope }: RayPath, place: SheetPlace, sharpPlane: number | null): string {
  const onSheet = points.map(({ z, y }): Point => [place.x(z), place.y(y)]);
  const window = { left: 4, right: place.width - 4, top: place.top, bottom: place.bottom };
  if (sharpPlane !== null && place.breakX === null) return clippedPath(onSheet, window);
  const bends = sharpPlane === null ? onSheet : onSheet.slice(0, -1);
  const [x, y] = bends.at(-1)!;
  // One pixel to the left is as many millimetres up as to the right: one scale both ways.
  const atEdge: Point = [Math.min(x, 0), y - slope * (x - Math.min(x, 0))];
  if (sharpPlane === null) return clippedPath([...bends, atEdge], window);
  const near = clippedPath([...bends, atEdge], { ...window, left: place.breakX! + breakGap });
  const start: Point = [place.subjectX, place.y(points.at(-1)!.y)];
  const end: Point = [place.width, start[1] + slope * (place.width - place.subjectX)];
  return near + clippedPath([start, end], { ...window, right: place.breakX! - breakGap });
}

/** The ground between two rays that run over the same places, clipped above and below. */
export function coneOnSheet(one: RayPath, other: RayPath, place: SheetPlace, sharpPlane: number | null): string {
  const clamp = (y: number) => Math.min(place.bottom, Math.max(place.top, y));
  const left = place.breakX === null || sharpPlane === null ? 4 : place.breakX + breakGap;
  const edge = ({ points, slope }: RayPath): string[] => {
    const all: Point[] = points.map(({ z, y }) => [place.x(z), place.y(y)]);
    const last = all.findIndex(([x]) => x < left);
    const kept = last < 0 ? all : all.slice(0, last);
    const [x, y] = kept.at(-1)!;
    const isOpen = last >= 0 || place.breakX !== null || sharpPlane === null;
    const ends: Point[] = isOpen ? [...kept, [left, y - slope * (x - left)]] : kept;
    return ends.map(([endX, endY]) => `${figure(Math.min(place.width - 4, Math.max(4, endX)))} ${figure(clamp(endY))}`);
  };
  return `M${[...edge(one), ...edge(other).reverse()].join('L')}Z`;
}
