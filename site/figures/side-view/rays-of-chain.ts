import { rayThrough, type RayPath } from '#core/rig/ray-paths.ts';
import { coneOnSheet, rayOnSheet } from './rays-on-sheet.ts';
import type { Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewShown } from './shown.ts';
import type { SideViewChain } from './side-view.ts';

/** All rays that are asked for. */
export function raysOf(chain: SideViewChain, shown: SideViewShown, place: SheetPlace): readonly Stroke[] {
  const { positions } = chain;
  const through = (field: number, aperture: number) => rayThrough(positions, { field, aperture });
  const both = (key: string, at: (side: number) => RayPath, className: string, quantity?: string) =>
    [1, -1].flatMap((side) => strokeOf(`${key} ${side}`, at(side), place, positions.sharpPlane, className, quantity));
  const rays = (shown.rays ?? []).flatMap((kind): readonly Stroke[] => {
    if (typeof kind === 'function') return kind(chain, shown, place);
    if (kind === 'chief') return both('chief', (side) => through(side, 0), 'ray chief');
    const quantity = 'effective-f-number';
    const path = coneOnSheet(through(0, 1), through(0, -1), place, positions.sharpPlane);
    return [
      { key: 'cone', path, className: 'cone', quantity },
      ...both('marginal', (side) => through(0, side), 'ray marginal', quantity),
    ];
  });
  return [...rays, ...(shown.glass?.rays(chain, place) ?? [])];
}

/** A ray as it is drawn; none where nothing of it is on the sheet. */
export function strokeOf(
  key: string,
  ray: RayPath,
  place: SheetPlace,
  sharpPlane: number | null,
  className: string,
  quantity?: string,
): Stroke[] {
  const path = rayOnSheet(ray, place, sharpPlane);
  return path === '' ? [] : [{ key, path, className, ...(quantity && { quantity }) }];
}
