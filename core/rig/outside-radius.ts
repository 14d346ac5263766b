import { requirePositive } from '#core/quantity/errors.ts';
import type { Part } from './part.ts';
import type { RayPath } from './ray-paths.ts';
import type { Rig } from './rig.ts';

/** Half of what such parts usually measure across, mm: common practice, for drawings alone. */
const usual: Readonly<Record<Part['part'], number>> = {
  camera: 36,
  ring: 31,
  bellows: 31,
  converter: 31,
  'converter by points': 31,
  lens: 30,
  'close-up lens': 28,
  'tube lens': 20,
  objective: 13,
};

/** How much wider than the light in it a part is at least. */
const wall = 1.12;

/**
 * Half the outside width of a part: stated, or usual for its kind, wider where the cone of light is.
 *
 * @throws OutOfRange for a stated width that is none
 */
export function outsideRadius(rig: Rig, index: number, marginal: RayPath): number {
  const part = rig.parts[index] as Part;
  if (part.rimDiameter !== undefined) return requirePositive('rim-diameter', part.rimDiameter) / 2;
  if (part.part === 'camera') return Math.max(usual.camera, part.sensorWidth / 2 + 18);
  const { from, to } = rig.places[index]!;
  const own = rig.elements.find((element) => element.part === index);
  const light = Math.max(
    heightOn(marginal, from),
    heightOn(marginal, to),
    own && own.exitRadius < Infinity ? own.exitRadius : 0,
  );
  return Math.max(usual[part.part], wall * light);
}

/** How high a ray is over a place on the axis: the least of its heights there, for between crossed planes it passes more than once. */
function heightOn({ points }: RayPath, z: number): number {
  let least = Infinity;
  for (let index = 1; index < points.length; index++) {
    const [one, other] = [points[index - 1]!, points[index]!];
    if ((one.z - z) * (other.z - z) > 0) continue;
    const share = one.z === other.z ? 0 : (z - one.z) / (other.z - one.z);
    least = Math.min(least, Math.abs(one.y + share * (other.y - one.y)));
  }
  return Number.isFinite(least) ? least : 0;
}
