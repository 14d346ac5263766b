import { thinLens, type Outline } from './outlines.ts';
import { clippedPath } from './rays-on-sheet.ts';
import type { Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewChain } from './side-view.ts';

/** Glass as its surfaces, between each two that hold it; the stop as two strokes. */
export function glassOf({ glass = [] }: SideViewChain, place: SheetPlace): Stroke[] {
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

/** Room for a thin lens, pixels. */
const thinnest = 8;

/** Thin glass: close-up lenses, tube lenses and, faint, what a converter does. */
export function thinGlass({ positions }: SideViewChain, outlines: readonly Outline[], place: SheetPlace): Stroke[] {
  return positions.elements.flatMap(({ part, points }): Stroke[] => {
    const kind = positions.parts[part]!.part.part;
    const half = 0.92 * outlines[part]!.half;
    if (kind === 'close-up lens' || kind === 'tube lens') {
      const gathers = (points?.focalLength ?? Infinity) > 0;
      return [
        {
          key: `thin ${part}`,
          path: thinLens(place.x(positions.parts[part]!.to), place.axisY, half, gathers),
          className: 'glass',
        },
      ];
    }
    if (!kind.startsWith('converter') || !points) return [];
    const x = place.x(points.rearPrincipal);
    // The thin lens that does what a long converter of small factor does may stand outside of its body: that is no glass.
    if (x < outlines[part]!.left || x + thinnest > outlines[part]!.right) return [];
    return [{ key: `thin ${part}`, path: thinLens(x, place.axisY, 0.5 * half, false), className: 'glass' }];
  });
}
