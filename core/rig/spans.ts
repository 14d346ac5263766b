import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { RigPositions } from './positions.ts';

/** From where to where a distance reaches along the axis, mm from the sensor: the end nearer to the sensor first, unless it is negative. */
export type AxialSpan = readonly [from: number, to: number];

/**
 * The distances that can be dimensioned in a drawing of a rig: where each begins and ends.
 *
 * to − from is the quantity itself, with its sign
 *
 * @param positions of the rig
 * @returns spans by quantity. Left out is what the rig does not have: distances to a sharp plane at infinity, a converter's length without
 *   one. s, s′, HH′ and f are those of the rig as one lens; h of the foremost lens; e of the first run of rings and bellows.
 *
 * Source: derived in [README](README.md#where-everything-stands).
 */
export function rigSpans(positions: RigPositions): Readonly<Partial<Record<QuantityName, AxialSpan>>> {
  const { parts, foremost, sharpPlane, whole, entrancePupil } = positions;
  const spans: Partial<Record<QuantityName, AxialSpan>> = { 'register-distance': [0, parts[0]!.to] };
  if (sharpPlane !== null) {
    spans['focus-distance'] = [0, sharpPlane];
    spans['working-distance'] = [foremost, sharpPlane];
    if (entrancePupil) spans['entrance-pupil-distance'] = [entrancePupil.at, sharpPlane];
    if (whole) spans['subject-distance'] = [whole.frontPrincipal, sharpPlane];
  }
  if (whole) {
    spans['image-distance'] = [0, whole.rearPrincipal];
    spans['principal-separation'] = [whole.rearPrincipal, whole.frontPrincipal];
    spans['focal-length'] = [whole.rearFocus, whole.rearPrincipal];
  }
  const extension = extensionSpan(positions);
  if (extension) spans.extension = extension;
  const converter = parts.find(({ part }) => part.part === 'converter' || part.part === 'converter by points');
  if (converter) spans['converter-length'] = [converter.from, converter.to];
  Object.assign(spans, lensSpans(positions));
  return spans;
}

/** From the first ring or bellows on, as long as nothing else stands between them. */
function extensionSpan({ parts }: RigPositions): AxialSpan | null {
  const isSpacer = (index: number) => ['ring', 'bellows'].includes(parts[index]?.part.part ?? '');
  const first = parts.findIndex((_, index) => isSpacer(index));
  if (first < 0) return null;
  let last = first;
  while (isSpacer(last + 1)) last++;
  const span = [parts[first]!.from, parts[last]!.to] as const;
  return span[1] > span[0] ? span : null;
}

/** h of the foremost lens, from its own H to its own rim, and g of a close-up lens before it. */
function lensSpans({ parts, elements }: RigPositions): Partial<Record<QuantityName, AxialSpan>> {
  const index = parts.findLastIndex(({ part }) => part.part === 'lens');
  const points = elements.find(({ part }) => part === index)?.points;
  if (!points) return {};
  const { part, from, to } = parts[index]!;
  const reversed = part.part === 'lens' && part.reversed === true;
  const closeUp = parts.find((placed) => placed.part.part === 'close-up lens');
  return {
    'front-principal-depth': reversed ? [from, points.rearPrincipal] : [points.frontPrincipal, to],
    ...(closeUp && { 'close-up-gap': [points.frontPrincipal, closeUp.to] as const }),
  };
}
