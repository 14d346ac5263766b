import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/**
 * A circular pupil, evenly lit, whose light is out of step by W(ρ) = W₀₂₀ ρ² + W₀₄₀ ρ⁴ wavelengths at the share ρ of its radius.
 *
 * `defocusAberration` is W₀₂₀, at most 200 either way; `sphericalAberration` is W₀₄₀, at most 20 either way. Opposite
 * signs work against each other: W₀₂₀ = −W₀₄₀ is the best focus of an aberrated lens.
 * Source: Goodman, Introduction to Fourier Optics, ch. 6 (from memory). See [README](README.md#pupil).
 */
export type Pupil = Named<'defocus-aberration' | 'spherical-aberration'>;

/** Beyond these geometry answers better than waves, and the integrals would take a page's time. */
export const mostDefocus = 200;
const mostSpherical = 20;

/** Throws OutOfRange unless both aberrations are within what {@link Pupil} allows. Returns the pupil alone. */
export function requirePupil({ defocusAberration, sphericalAberration }: Pupil): Pupil {
  requireWithin('defocus-aberration', defocusAberration, mostDefocus);
  requireWithin('spherical-aberration', sphericalAberration, mostSpherical);
  return { defocusAberration, sphericalAberration };
}

function requireWithin(quantity: 'defocus-aberration' | 'spherical-aberration', waves: number, most: number): void {
  if (!(Math.abs(waves) <= most)) throw new OutOfRange(quantity, waves, `from −${most} to ${most} wavelengths`);
}

/** W at the square *t* = ρ² of the radius, in radians of phase. */
export function phaseAt({ defocusAberration, sphericalAberration }: Pupil, t: number): number {
  return 2 * Math.PI * t * (defocusAberration + sphericalAberration * t);
}

/** The most that the phase changes per unit of ρ², anywhere in the pupil: what decides how finely to sample it. */
export function steepestPhase({ defocusAberration, sphericalAberration }: Pupil): number {
  return 2 * Math.PI * Math.max(Math.abs(defocusAberration), Math.abs(defocusAberration + 2 * sphericalAberration));
}

/**
 * Primary spherical aberration once the lens is stopped down: it falls as the fourth power.
 *
 * W₀₄₀ (N_0/N)⁴
 *
 * @param given.sphericalAberration *W₀₄₀*, wavelengths, at the maximum aperture; any finite number
 * @param given.maxAperture *N_0*, smallest marked f-number of the lens; above 0
 * @param given.fNumber *N*, as marked; not below N_0
 * @returns W₀₄₀ at the f-number, wavelengths. Focus is kept: best focus moves with it.
 * @throws OutOfRange for what is not finite, a maximum aperture not above zero, or an f-number below it
 *
 * Source: the aberration's definition, ρ⁴ over a pupil whose radius goes as 1/N; Born & Wolf, 5.3 (from memory).
 *
 * @example stoppedDownAberration({ sphericalAberration: 1.6, maxAperture: 2.8, fNumber: 5.6 }) // 0.1
 */
export function stoppedDownAberration(given: Named<'spherical-aberration' | 'max-aperture' | 'f-number'>): number {
  requireFinite('spherical-aberration', given.sphericalAberration);
  requirePositive('max-aperture', given.maxAperture);
  if (requirePositive('f-number', given.fNumber) < given.maxAperture) {
    throw new OutOfRange('f-number', given.fNumber, `not below the lens's maximum aperture, f/${given.maxAperture}`);
  }
  return given.sphericalAberration * (given.maxAperture / given.fNumber) ** 4;
}
