import type { KitConverter } from '#core/rig/kit/kit.ts';
import { numberIn, type NewPart } from './part.ts';

/** What says where the planes of a converter are. */
export const pointKeys = ['focal-length', 'principal-separation', 'front-principal-depth'] as const;

/** The planes of a converter as the core takes them: *f* below 0, for it spreads light; undefined where they are not known. */
export function converterPoints(part: NewPart): NonNullable<KitConverter['points']> | undefined {
  const [focalLength, principalSeparation, frontPrincipalDepth] = pointKeys.map((key) => numberIn(part, key));
  if (focalLength === undefined || principalSeparation === undefined || frontPrincipalDepth === undefined) {
    return undefined;
  }
  return { focalLength: -focalLength, principalSeparation, frontPrincipalDepth };
}
