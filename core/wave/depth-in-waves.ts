import { balancedFocus } from '#core/depth/balanced-focus.ts';
import { requireCone, type Cone } from '#core/depth/cone.ts';
import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/** A deep subject before a chain, counted in waves of defocus. */
export interface SubjectInWaves extends Readonly<Named<'subject-depth' | 'inverse-entrance-pupil-distance'>> {
  /** m²/(8 λ N_w²): waves of defocus a millimetre off the sharp plane, close to it. */
  readonly wavesPerMillimetre: number;
}

/** The ends of a subject about its sharp plane: how much W₀₂₀ the nearest and the farthest part have, both counted positive. */
export interface DepthInWaves {
  readonly near: number;
  readonly far: number;
  /** From the nearest part to the sharp plane, mm. */
  readonly planeDepth: number;
}

/** Throws OutOfRange for what lies outside. */
export function inWaves(cone: Cone, given: Readonly<Named<'subject-depth' | 'wavelength'>>): SubjectInWaves {
  const { magnification, effectiveFNumber, inverseEntrancePupilDistance } = requireCone(cone);
  const wavelength = requirePositive('wavelength', given.wavelength);
  return {
    subjectDepth: requirePositive('subject-depth', given.subjectDepth),
    inverseEntrancePupilDistance,
    wavesPerMillimetre: magnification ** 2 / (8 * wavelength * effectiveFNumber ** 2),
  };
}

/**
 * W₀₂₀ of a place δ off the plane, b/(8 λ N_w) with the sign of δ: far points come to focus early, in front of the sensor.
 * Infinite at the entrance pupil and on its other side, for what lies between has been lost already.
 */
export function wavesAt({ wavesPerMillimetre, inverseEntrancePupilDistance }: SubjectInWaves, offset: number): number {
  const stretch = 1 + inverseEntrancePupilDistance * offset;
  return stretch > 0 ? (wavesPerMillimetre * offset) / stretch : Infinity;
}

/** With the sharp plane so far behind the nearest part. Throws OutOfRange for a plane outside the subject, or a subject at the pupil. */
export function depthAround(subject: SubjectInWaves, planeDepth: number): DepthInWaves {
  const { subjectDepth, inverseEntrancePupilDistance: inverse } = subject;
  if (!(planeDepth >= 0 && planeDepth <= subjectDepth)) {
    throw new OutOfRange('near-limit', planeDepth, `from 0 to ${subjectDepth} mm, inside the subject`);
  }
  if (inverse * planeDepth >= 1) {
    throw new OutOfRange('entrance-pupil-distance', 1 / inverse, `more than the ${planeDepth} mm to the nearest part`);
  }
  return { planeDepth, near: -wavesAt(subject, -planeDepth), far: wavesAt(subject, subjectDepth - planeDepth) };
}

/** With the sharp plane where both ends are blurred alike. */
export function balancedDepth(subject: SubjectInWaves): DepthInWaves {
  const { toNearest, evenDepth } = balancedFocus(subject);
  const waves = subject.wavesPerMillimetre * evenDepth;
  return { planeDepth: toNearest, near: waves, far: waves };
}

/** How far in front of the plane a place has so many waves; Infinity where none has, before a pupil behind the subject. */
export function inFrontBy({ wavesPerMillimetre, inverseEntrancePupilDistance }: SubjectInWaves, waves: number): number {
  const slowing = wavesPerMillimetre + inverseEntrancePupilDistance * waves;
  return slowing > 0 ? waves / slowing : Infinity;
}
