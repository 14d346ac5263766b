import type { KnownLens } from '#core/rig/assumed/known-lens.ts';
import { knownIn, numberIn, partsOf, wordsIn, type Kit, type NewPart } from './part.ts';

/** A lens of a kit as the core takes what is known of one. */
export function knownLens(part: NewPart, registerDistance: number): KnownLens {
  const { focalLength, ...rest } = {
    focalLength: knownIn(part, 'focal-length'),
    closestMagnification: knownIn(part, 'focus-magnification'),
    closestFocusDistance: numberIn(part, 'focus-distance'),
    barrelLength: numberIn(part, 'barrel-length'),
    closestBarrelLength: numberIn(part, 'closest-barrel-length'),
    pupilMagnification: knownIn(part, 'pupil-magnification'),
    principalSeparation: knownIn(part, 'principal-separation'),
    frontPrincipalDepth: knownIn(part, 'front-principal-depth'),
    rearProtrusion: numberIn(part, 'rear-protrusion'),
  };
  const said = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
  return {
    focalLength: focalLength!,
    registerDistance,
    focusing: wordsIn(part, 'focusing') === 'inside' ? 'inside' : 'whole',
    apertureControl: wordsIn(part, 'iris') === 'lens' ? 'lens' : 'camera',
    ...said,
  };
}

/** The register that a lens is made for: its own, or that of a camera with the same mount; undefined where neither is known. */
export function registerOf(lens: NewPart, kit: Kit): number | undefined {
  const own = numberIn(lens, 'register-distance');
  if (own !== undefined) return own;
  const camera = partsOf(kit, 'camera').find((one) => wordsIn(one, 'mount') === wordsIn(lens, 'mount'));
  return camera && numberIn(camera, 'register-distance');
}
