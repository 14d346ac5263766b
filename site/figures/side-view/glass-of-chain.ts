import { thinLens, type Outline } from './outlines.ts';
import type { Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewChain } from './side-view.ts';

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
