import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { FocusingByStates, Lens } from './lens.ts';

/** Throws OutOfRange for what no lens can have, by name: a rim behind its own flange is contradictory as well. */
export function requireLens(lens: Lens): void {
  requirePositive('focal-length', lens.focalLength);
  requireFinite('principal-separation', lens.principalSeparation);
  requireFinite('front-principal-depth', lens.frontPrincipalDepth);
  requirePositive('pupil-magnification', lens.pupilMagnification);
  requirePositive('register-distance', lens.registerDistance);
  if (lens.focusing.by === 'states') requireStates(lens.focusing);
  const least = lens.registerDistance - lens.focalLength - lens.principalSeparation;
  if (lens.frontPrincipalDepth < least) {
    throw new OutOfRange(
      'front-principal-depth',
      lens.frontPrincipalDepth,
      `at least ${least}, or the rim would lie behind the flange`,
    );
  }
}

function requireStates({ states }: FocusingByStates): void {
  if (states.length === 0) throw new OutOfRange('focus-magnification', NaN, 'one known setting or more');
  let before = -1;
  for (const { focusMagnification, focalLength, pupilMagnification, fNumberDrift } of states) {
    if (before < 0 ? focusMagnification !== 0 : !(focusMagnification > before && focusMagnification < Infinity)) {
      throw new OutOfRange(
        'focus-magnification',
        focusMagnification,
        '0 in the first state, more in each that follows',
      );
    }
    before = focusMagnification;
    requirePositive('focal-length', focalLength);
    requirePositive('pupil-magnification', pupilMagnification);
    requirePositive('f-number', fNumberDrift);
  }
}
