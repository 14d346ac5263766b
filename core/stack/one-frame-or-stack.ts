import { defocusBlurOfEnds } from '#core/depth/defocus-blur-of-ends.formula.ts';
import { subjectDepthInOneFrame } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { finestEffectiveFNumber } from '#core/wave/finest-effective-f-number.formula.ts';

/**
 * How a depth is to be taken: in *one frame*; in one, if the lens is *closed further*; *opened* first, where it is closed beyond what keeps the
 * detail; in a *stack*; or not at all as planned, the stack being *too slow* for the subject.
 */
export type FramesWanted = 'one-frame' | 'close-further' | 'open-up' | 'stack' | 'too-slow';

type Inputs =
  | 'subject-depth'
  | 'magnification'
  | 'effective-f-number'
  | 'circle-of-confusion'
  | 'wavelength'
  | 'frame-count'
  | 'in-time.frame-count';

/** What differs by less than this part of itself is equal but for rounding. */
const rounding = 1e-9;

/**
 * One frame or a stack, by depth, detail and patience.
 *
 * @param given.subjectDepth *Z*, that should be sharp, mm; above 0
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.effectiveFNumber *N_w*, as it is set; above 0
 * @param given.circleOfConfusion *c*, mm; above 0
 * @param given.wavelength *λ*, mm; above 0
 * @param given.frameCount of a stack of frames so set; above 0
 * @param given.inTimeFrameCount frames that are done while the subject keeps still; 0 or above
 * @returns *one frame* where b² + (λ N_w)² ≤ c² for the ends of the depth; where not, the first of these that holds: *open-up* beyond
 *   c/(√2 λ); *close-further* for Z ≤ c²/(λ m²); *open-up* where a stack would be of one frame, soft at its ends; *too-slow*; *stack*
 * @throws OutOfRange for what must be above zero and is not
 *
 * Assumes what `effectiveFNumberForDepth` does. See [README](README.md#one-frame-or-a-stack).
 *
 * @example oneFrameOrStack({ subjectDepth: 3, magnification: 3, effectiveFNumber: 25, circleOfConfusion: 0.02, wavelength: 0.00055, frameCount: 40, inTimeFrameCount: 16 }) // 'too-slow'
 */
export function oneFrameOrStack(given: Named<Inputs>): FramesWanted {
  const { subjectDepth, effectiveFNumber, circleOfConfusion, wavelength, frameCount } = given;
  requirePositive('subject-depth', subjectDepth);
  requirePositive('frame-count', frameCount);
  const atMost = (value: number, limit: number) => value <= limit * (1 + rounding);
  const deepest = subjectDepthInOneFrame(given);
  const blur = Math.hypot(defocusBlurOfEnds(given), wavelength * effectiveFNumber);
  if (atMost(blur, circleOfConfusion)) return 'one-frame';
  if (!atMost(effectiveFNumber, finestEffectiveFNumber(given))) return 'open-up';
  if (atMost(subjectDepth, deepest)) return 'close-further';
  if (frameCount < 2) return 'open-up';
  return frameCount > given.inTimeFrameCount ? 'too-slow' : 'stack';
}
