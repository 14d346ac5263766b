import { constructionRays } from '#core/rig/construction-rays.ts';
import { strokeOf } from './rays-of-chain.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { DrawnRays } from './shown.ts';
import type { SideViewChain } from './side-view.ts';

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

/** The ruler's rays, of which two are enough: parallel, and through H and H′; where foci are shown the third, through F. */
export const ruledRays: DrawnRays = (chain, shown, place) => {
  const { positions } = chain;
  const rays = constructionRays(positions, objectHeight(chain, place));
  const needed = positions.sharpPlane === null || shown.foci ? rays : rays.slice(0, 2);
  return needed.flatMap((ray, index) => strokeOf(`construction ${index}`, ray, place, positions.sharpPlane, 'ray'));
};

/** Light from far away as wide as the entrance pupil, dashed: it comes together in F′, wherever the lens is focused. */
export const farRays: DrawnRays = ({ positions }, _, place) => {
  const half = (positions.entrancePupil?.diameter ?? 0) / 2;
  const rays = constructionRays({ whole: positions.whole, sharpPlane: null, signedMagnification: null }, half);
  return rays.flatMap((ray, index) => strokeOf(`far ${index}`, ray, place, null, 'ray far', 'focal-length'));
};
