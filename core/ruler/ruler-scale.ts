import { pixelPitch } from '#core/gaussian/pixel-pitch.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { Estimate } from '#core/rig/fit/lens-fit.ts';
import { densityAt, type CombShape } from './comb.ts';

/** What was measured of the marks, and what is known beside it. Lengths in mm unless it says pixels. */
export interface ScaleOfMarks extends CombShape {
  readonly variances: { readonly cycles: number; readonly both: number; readonly drift: number };
  /** Of the line, pixels. */
  readonly length: number;
  /** *ψ*, rad, how much marks lean from square to the line. */
  readonly lean: { readonly value: number; readonly standardError: number };
  /** From the foot of the optical axis to the middle of the line, along the line, pixels: below 0 before the foot. */
  readonly offAxis: number;
  /** *d*, from mark to mark on the ruler. */
  readonly spacing: number;
  /** *W_x*, the longer side of the sensor, and how many pixels of the photograph it has. */
  readonly sensorWidth: number;
  readonly pixelsAcross: number;
  /** *f*, roughly; without it a drift is no angle. */
  readonly focalLength?: number;
  /** *P*; 1 where nothing is known. */
  readonly pupilMagnification?: number;
}

export interface RulerScale {
  /** *m*, square to the axis where the ruler's line passes it. */
  readonly magnification: Estimate;
  /** mm in that plane. */
  readonly fieldWidth: Estimate;
  /** Pixels of the photograph for one millimetre there. */
  readonly pixelsPerMillimetre: Estimate;
  /** *τ*, rad: above 0 where the end of the line is farther away; undefined where *f* is not known. */
  readonly tilt?: Estimate;
  /** How much farther apart the marks are at the beginning of the line than at its end, as a share of their spacing in its middle. */
  readonly change: Estimate;
}

/**
 * Magnification, field and tilt from the marks of a ruler.
 *
 * m = (p W_x/n) cos ψ/(d cos τ), p from mark to mark at the axis in pixels; tan τ = q f (1 + m/P), q = −γ/(L − γ X) on the sensor
 *
 * @param marks see {@link ScaleOfMarks}; *d*, *W_x* and *n* are taken as exact
 * @returns with standard errors, to first order
 * @throws OutOfRange for a spacing, a sensor, a number of pixels or a focal length that is none
 *
 * Assumes marks square to the ruler's length, a flat sensor square to the axis, the axis in the middle of the picture (the whole picture, not a part of it), no
 * distortion, and a ruler that leans along the line. Source: central projection through the entrance pupil; derived in [README](README.md#tilt).
 *
 * @example rulerScale({ ...marks, spacing: 1, sensorWidth: 36, pixelsAcross: 6000 }).magnification.value
 */
export function rulerScale(marks: ScaleOfMarks): RulerScale {
  const { cycles, drift, length, offAxis, spacing, sensorWidth, pixelsAcross, focalLength } = marks;
  requirePositive('extension', spacing);
  requirePositive('sensor-width', sensorWidth);
  const pitch = pixelPitch({ sensorWidth, pixelsAcross });
  const pupil = requirePositive('pupil-magnification', marks.pupilMagnification ?? 1);
  const foot = -offAxis / length;
  const seen = (length * pitch * Math.cos(marks.lean.value)) / (spacing * densityAt({ cycles, drift }, foot));
  const stretch = 1 + drift * foot;
  // ln m by γ; by κ it is −1/κ.
  let byDrift = (2 * foot) / stretch;
  let magnification = seen;
  let tilt: Estimate | undefined;
  if (focalLength !== undefined) {
    requirePositive('focal-length', focalLength);
    const onSensor = (length - drift * offAxis) * pitch;
    let tangent = 0;
    // m = seen/cos τ, and τ follows from m: the two settle in a few rounds, for m counts little in τ.
    for (let round = 0; round < 30; round++) {
      magnification = seen * Math.hypot(1, tangent);
      tangent = (-drift / onSensor) * focalLength * (1 + magnification / pupil);
    }
    const slope = -(length * pitch * focalLength * (1 + magnification / pupil)) / onSensor ** 2;
    const value = Math.atan(tangent);
    const byTangent = 1 / (1 + tangent * tangent);
    tilt = { value, standardError: Math.abs(slope) * byTangent * Math.sqrt(marks.variances.drift) };
    byDrift += tangent * byTangent * slope;
  }
  const { cycles: ofCycles, both, drift: ofDrift } = marks.variances;
  const share = Math.sqrt(
    Math.max(0, ofCycles / cycles ** 2 - (2 * byDrift * both) / cycles + byDrift ** 2 * ofDrift) +
      (Math.tan(marks.lean.value) * marks.lean.standardError) ** 2,
  );
  const estimate = (value: number): Estimate => ({ value, standardError: share * value });
  return {
    magnification: estimate(magnification),
    fieldWidth: estimate(sensorWidth / magnification),
    pixelsPerMillimetre: estimate(magnification / pitch),
    ...(tilt && { tilt }),
    // (1 − γ/2)² at the beginning and (1 + γ/2)² at the end.
    change: { value: -2 * drift, standardError: 2 * Math.sqrt(ofDrift) },
  };
}

/** From the foot of the axis, the middle of the photograph, to the middle of a line, along the line: what {@link rulerScale} asks for. Throws RangeError for a line of no length. */
export function offAxisOf(
  { columns, rows }: { readonly columns: number; readonly rows: number },
  { from, to }: { readonly from: { x: number; y: number }; readonly to: { x: number; y: number } },
): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [x, y] = [(from.x + to.x - columns) / 2, (from.y + to.y - rows) / 2];
  const off = (x * (to.x - from.x) + y * (to.y - from.y)) / length;
  if (!Number.isFinite(off))
    throw new RangeError(`the line is ${length} pixels long; accepted: a finite length above 0`);
  return off;
}
