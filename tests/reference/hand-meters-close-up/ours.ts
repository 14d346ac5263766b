import { correctedExposureTime } from '#core/exposure/corrected-exposure-time.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { fNumberForEffectiveFNumber } from '#core/gaussian/f-number-for-effective-f-number.formula.ts';
import { finderLoss } from '#core/gaussian/finder-loss.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import type { Answer } from '#tests/support/reference-case.ts';

interface Metered {
  readonly exposureTime: number;
  readonly fNumber: number;
}
type Given =
  | { readonly maxAperture: number; readonly effectiveFNumber: number }
  | { readonly effectiveFNumber: number; readonly magnification: number; readonly pupilMagnification: number }
  | (Metered & { readonly focalLength: number; readonly subjectDistance: number })
  | (Metered & { readonly magnification: number; readonly pupilMagnification: number });

export function ours(given: Given): Answer {
  if ('maxAperture' in given) return { finderLoss: finderLoss(given) };
  if ('effectiveFNumber' in given) return { fNumber: fNumberForEffectiveFNumber(given) };
  const { exposureTime, fNumber } = given;
  const near =
    'subjectDistance' in given ? { magnification: magnificationOfSubject(given), pupilMagnification: 1 } : given;
  const works = effectiveFNumber({ ...near, fNumber });
  return { correctedExposureTime: correctedExposureTime({ exposureTime, fNumber, effectiveFNumber: works }) };
}
