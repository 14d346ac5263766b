import { correctedExposureTime } from '#core/exposure/corrected-exposure-time.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { fNumberForEffectiveFNumber } from '#core/gaussian/f-number-for-effective-f-number.formula.ts';
import { finderLoss } from '#core/gaussian/finder-loss.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import type { Answer } from '#tests/support/reference-case.ts';

interface Given {
  readonly exposureTime: number;
  readonly fNumber: number;
  readonly magnification: number;
  readonly pupilMagnification: number;
  readonly focalLength: number;
  readonly subjectDistance: number;
  readonly effectiveFNumber: number;
  readonly maxAperture: number;
}

export function ours(given: Given): Answer {
  if ('maxAperture' in given) return { finderLoss: finderLoss(given) };
  if ('effectiveFNumber' in given) return { fNumber: fNumberForEffectiveFNumber(given) };
  const lens =
    'subjectDistance' in given
      ? { fNumber: given.fNumber, magnification: magnificationOfSubject(given), pupilMagnification: 1 }
      : given;
  return { correctedExposureTime: correctedExposureTime({ ...given, effectiveFNumber: effectiveFNumber(lens) }) };
}
