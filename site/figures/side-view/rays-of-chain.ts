import { constructionRays, rayThrough, type RayPath } from '#core/rig/ray-paths.ts';
import { coneOnSheet, glassRayOnSheet, rayOnSheet } from './rays-on-sheet.ts';
import type { Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewChain, SideViewShown } from './side-view.ts';

/** How much of the height that sensor and sheet allow the point of the ruler's rays takes. */
const pointHeight = 0.8;

/** Where the ruler's rays start: as high as field, sensor and sheet allow, mm. */
function objectHeight({ positions }: SideViewChain, place: SheetPlace): number {
  const room = (place.axisY - place.top) / place.pixelsPerMillimetre;
  const { field, sensor, signedMagnification, parts } = positions;
  if (!field) return 0.7 * Math.min(room, parts.at(-1)!.radius);
  const onSensor = Math.min(sensor.width / 2, room) / Math.max(Math.abs(signedMagnification!), 1e-6);
  return pointHeight * Math.min(field.width / 2, room, onSensor);
}

/** All rays that are asked for. */
export function raysOf(chain: SideViewChain, shown: SideViewShown, place: SheetPlace): Stroke[] {
  const { positions } = chain;
  const strokes: Stroke[] = [];
  const draw = (key: string, ray: RayPath, className: string, quantity?: string) => {
    const path = rayOnSheet(ray, place, positions.sharpPlane);
    if (path !== '') strokes.push({ key, path, className, ...(quantity && { quantity }) });
  };
  const through = (field: number, aperture: number) => rayThrough(positions, { field, aperture });
  for (const kind of shown.rays ?? []) {
    if (kind === 'cone') {
      const path = coneOnSheet(through(0, 1), through(0, -1), place, positions.sharpPlane);
      strokes.push({ key: 'cone', path, className: 'cone', quantity: 'effective-f-number' });
      for (const side of [1, -1]) draw(`marginal ${side}`, through(0, side), 'ray marginal', 'effective-f-number');
    } else if (kind === 'chief') {
      for (const side of [1, -1]) draw(`chief ${side}`, through(side, 0), 'ray chief');
    } else if (kind === 'edge') {
      for (const side of [1, -1]) draw(`edge ${side}`, through(1, side), 'ray');
    } else if (kind === 'far') {
      const half = (positions.entrancePupil?.diameter ?? 0) / 2;
      const rays = constructionRays({ whole: positions.whole, sharpPlane: null, signedMagnification: null }, half);
      for (const [index, ray] of rays.entries()) {
        const path = rayOnSheet(ray, place, null);
        if (path !== '') strokes.push({ key: `far ${index}`, path, className: 'ray far', quantity: 'focal-length' });
      }
    } else {
      const rays = constructionRays(positions, objectHeight(chain, place));
      const needed = positions.sharpPlane === null || shown.foci ? rays : rays.slice(0, 2);
      needed.forEach((ray, index) => draw(`construction ${index}`, ray, 'ray'));
    }
  }
  chain.glassRays?.forEach((ray, index) => {
    const path = glassRayOnSheet(ray, place, positions.sharpPlane);
    if (path !== '') strokes.push({ key: `exact ${index}`, path, className: ray.lost ? 'ray lost' : 'ray marginal' });
  });
  return strokes;
}
