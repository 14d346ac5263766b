import { evenDepthOf } from '#core/depth/balanced-focus.ts';
import { rounding, type Case, type Judgement } from './case.ts';

/**
 * Opens the iris of a chain as far as the blur of the subject's ends allows, and leaves *N* and *N_w* in *out*.
 *
 * b² + (λ N_w)² = c², b the blur of the ends by defocus; derived in [README](README.md#judging)
 *
 * @param one the chain, walked at the setting in question
 * @param c the largest blur allowed, mm
 * @returns what stands against it, if anything; the iris then stands where it comes nearest
 */
export function setIris(one: Case, c: number, out: Judgement): 'suited' | 'too shallow' | 'too soft' {
  const { walk, lens, stopsDown, subject } = one;
  const { maxAperture, smallestAperture } = lens;
  const { wavelength } = subject;
  const open = walk.conePerStop * maxAperture;
  const most = stopsDown ? smallestAperture : maxAperture;
  let blur = endBlur(one, open >= walk.coneAtLeast);
  let wanted = leastCone(blur, c, wavelength);
  if (walk.coneAtLeast > open && !(walk.coneAtLeast >= wanted)) {
    // Another stop limits the open chain, and not enough: the main lens is stopped down until it does.
    blur = endBlur(one, true);
    wanted = Math.max(leastCone(blur, c, wavelength), walk.coneAtLeast);
  }
  // Without a cone that will do the one that blurs least.
  const set = Number.isNaN(wanted) ? Math.sqrt(blur / wavelength) : wanted;
  out.fNumber = Math.min(most, Math.max(maxAperture, set / walk.conePerStop));
  out.effectiveFNumber = Math.max(walk.conePerStop * out.fNumber, walk.coneAtLeast);
  const deep = Number.isNaN(wanted) ? blur / c : wanted;
  const slowest = Math.max(walk.conePerStop * most, walk.coneAtLeast);
  if (slowest < deep * (1 - rounding)) return 'too shallow';
  const both = Math.hypot(blur / out.effectiveFNumber, wavelength * out.effectiveFNumber);
  return both <= c * (1 + rounding) ? 'suited' : 'too soft';
}

/** The blur of the subject's ends times N_w, mm, the sharp plane where both are blurred alike. */
function endBlur({ walk, subject }: Case, byMain: boolean): number {
  const inverse = byMain ? walk.inverseByMain : walk.inverseByOther;
  return walk.magnification * walk.magnification * evenDepthOf(subject.subjectDepth, inverse);
}

/** The least N_w with which the ends are blurred by c at most, defocus and diffraction together; NaN where there is none. */
function leastCone(blur: number, c: number, wavelength: number): number {
  const square = c * c;
  const spare = square * square - 4 * (wavelength * blur) ** 2;
  // What misses by rounding alone meets the limit.
  const root = Math.sqrt(spare > -rounding * square * square ? Math.max(0, spare) : NaN);
  return blur * Math.sqrt(2 / (square + root));
}
