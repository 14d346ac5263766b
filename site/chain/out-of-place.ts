import { printQuantity } from '#core/quantity/print.ts';
import type { ElementPoints } from '#core/rig/element-points.ts';
import type { RigPositions } from '#core/rig/positions.ts';
import { numberIn } from '#site/kit/part.ts';
import type { Chain } from './chain.ts';
import type { Misfit } from './fit.ts';

/** So much nearer or farther than it is made for an objective still works about as it is engraved. */
const tolerance = 0.1;

/**
 * Objectives that hold where they are but do not stand where they are made for: one for parallel light whose lens behind it gives none, one for a tube
 * on another length.
 *
 * @param positions where the parts of the chain stand
 * @param linkOf which link of the chain each of them belongs to
 */
export function outOfPlace(chain: Chain, positions: RigPositions, linkOf: readonly number[]): readonly Misfit[] {
  const { elements, parts } = positions;
  return parts.flatMap(({ part, from }, index): Misfit[] => {
    if (part.part !== 'objective') return [];
    const at = linkOf[index]!;
    const { name, part: own } = chain[at]!.thing;
    const behind = elements.filter((element) => element.part < index);
    if ('imageDistance' in part.design) {
      const { imageDistance } = part.design;
      if (behind.length > 0 || Math.abs(from / imageDistance - 1) <= tolerance) return [];
      const words = `${name} is made for a tube of ${length(numberIn(own, 'tube-length')!)}, its image ${length(imageDistance)} behind it: here the sensor lies ${length(from)} behind it.`;
      return [{ at, words }];
    }
    if (behind.length === 0 || Math.abs(slopeBefore(behind)) <= tolerance) return [];
    const tube = behind.length === 1 && parts[behind[0]!.part]!;
    const words =
      tube && tube.part.part === 'tube lens'
        ? `${name} is made for parallel light: the tube lens behind it has to stand its focal length, ${length(tube.part.focalLength)}, before the sensor. Here it is ${length(tube.from)}.`
        : `${name} is made for parallel light: what is behind it has to be focused at infinity.`;
    return [{ at, words }];
  });
}

const length = (value: number) => printQuantity('extension', value);

/** The slope with which light from the middle of the sensor, at slope 1 there, comes out in front: 0 where it is parallel, 1 − s′/f of one lens *s′* before the sensor. */
function slopeBefore(elements: readonly ElementPoints[]): number {
  let [height, slope, before] = [0, 1, 0];
  for (const { points } of elements) {
    if (!points) continue;
    height += (points.rearPrincipal - before) * slope;
    slope -= height / points.focalLength;
    before = points.frontPrincipal;
  }
  return slope;
}
