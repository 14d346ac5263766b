import type { PlacedRay } from '#core/rig/glass-positions.ts';
import { clippedPath, type Point } from './rays-on-sheet.ts';
import type { Stroke } from './shapes.ts';
import { breakGap, type SheetPlace } from './sheet-place.ts';
import type { GlassOnSheet } from './shown.ts';
import type { SideViewChain } from './side-view.ts';

/** Glass as its surfaces, between each two that hold it; the stop as two strokes. */
function surfacesOf({ glass = [] }: SideViewChain, place: SheetPlace): Stroke[] {
  const window = { left: 4, right: place.width - 4, top: place.top, bottom: place.bottom };
  return glass.flatMap(({ part, surfaces, stop }) => {
    const pieces = surfaces.slice(0, -1).flatMap((surface, index): Stroke[] => {
      if (surface.index === 1) return [];
      const outline = [...surface.outline, ...surfaces[index + 1]!.outline.toReversed(), surface.outline[0]!];
      const points = outline.map(({ z, y }) => [place.x(z), place.y(y)] as const);
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      const box = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
      return [{ key: `glass ${part} ${index}`, path: clippedPath(points, window), className: 'glass', box }];
    });
    const x = place.x(stop.at).toFixed(1);
    const { half } = place.half(stop.radius);
    const reach = Math.min(half + 10, place.axisY - place.top);
    const path = `M${x} ${place.axisY - half}V${place.axisY - reach}M${x} ${place.axisY + half}V${place.axisY + reach}`;
    return [...pieces, { key: `stop ${part}`, path, className: 'stop' }];
  });
}

/** An exact ray on the sheet; before a break, and from infinity, it comes in at the slope that it has in front of the glass. */
function rayOnSheet({ points }: PlacedRay, place: SheetPlace, sharpPlane: number | null): string {
  const onSheet = points.map(({ z, y }): Point => [place.x(z), place.y(y)]);
  const [[x, y], next] = [onSheet[0]!, onSheet[1]];
  const isOpen = sharpPlane === null && next !== undefined && next[0] > x && x > 0;
  const start: Point[] = isOpen ? [[0, y - (x * (next[1] - y)) / (next[0] - x)]] : [];
  const left = place.breakX === null || isOpen ? 4 : place.breakX + breakGap;
  return clippedPath([...start, ...onSheet], { left, right: place.width - 4, top: place.top, bottom: place.bottom });
}

/** The exact rays of a chain. */
const raysOf = ({ glassRays = [], positions }: SideViewChain, place: SheetPlace): Stroke[] =>
  glassRays.flatMap((ray, index) => {
    const path = rayOnSheet(ray, place, positions.sharpPlane);
    return path === '' ? [] : [{ key: `exact ${index}`, path, className: ray.lost ? 'ray lost' : 'ray marginal' }];
  });

/** All of it, for the figure that has lenses whose surfaces are known. */
export const glassOnSheet: GlassOnSheet = { surfaces: surfacesOf, rays: raysOf };
