import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';

/** Two focus settings of a lens that moves as a whole before a camera that stands still. */
export interface TwoFocusSettings {
  /** *f*, mm, above 0 */
  readonly focalLength: number;
  /** *P*, the lens as it stands, above 0 */
  readonly pupilMagnification: number;
  /** *m*, in the sharp plane of the first setting, where the detail lies, above 0 */
  readonly first: number;
  /** *m*, in the sharp plane of the second setting, above 0 */
  readonly second: number;
}

/**
 * How many times larger a fixed detail is in the second of two frames. Exact.
 *
 * (P + m₂)/(P + m₁) · u₁/(u₁ − f (m₂ − m₁)), u₁ from the entrance pupil to the detail
 *
 * @param settings see {@link TwoFocusSettings}
 * @returns a ratio: above 1 where the lens was racked out
 * @throws OutOfRange for anything not finite and above zero, and for a travel that carries the entrance pupil to the detail
 *
 * Derived in [README](README.md#focusing-by-the-ring).
 *
 * @example scaleBetweenFocusSettings({ focalLength: 100, pupilMagnification: 1, first: 0.5, second: 0.6 }) // 1.1034...
 */
export function scaleBetweenFocusSettings(settings: TwoFocusSettings): number {
  const { focalLength, pupilMagnification, first, second } = settings;
  requirePositive('focal-length', focalLength);
  requirePositive('pupil-magnification', pupilMagnification);
  requirePositive('magnification', first);
  requirePositive('magnification', second);
  const before = focalLength * (1 / first + 1 / pupilMagnification);
  const after = before - focalLength * (second - first);
  if (!(after > 0)) throw new OutOfRange('magnification', second, 'one that keeps the lens off the detail');
  return ((pupilMagnification + second) / (pupilMagnification + first)) * (before / after);
}
