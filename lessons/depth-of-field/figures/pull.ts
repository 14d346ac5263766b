import { farLimitFormula } from '#core/depth/far-limit.formula.ts';
import { nearLimitFormula } from '#core/depth/near-limit.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { fNumberFromAperture } from '#core/gaussian/f-number-from-aperture.formula.ts';
import type { Range } from '#core/quantity/expected.ts';
import { pulledTo } from '#site/state/pulled-to.ts';

/** Of the lens, what the limits of depth follow from. */
export interface Limits {
  readonly focalLength: number;
  readonly circleOfConfusion: number;
  readonly entrancePupilDistance: number;
  readonly magnification: number;
}

/**
 * The f-number in *range* with which the limit on this *side*, behind the sharp plane or in front of it, lies at *offset*, mm; a limit stays
 * on its own side, and in front of the lens.
 */
export function fNumberOfLimit(lens: Limits, offset: number, side: 1 | -1, { least, most }: Range): number {
  const { focalLength, circleOfConfusion, entrancePupilDistance, magnification } = lens;
  const distance = Math.max(1e-6, side * Math.max(offset, -0.98 * entrancePupilDistance));
  const pupilAt = (fNumber: number) => entrancePupil({ focalLength, fNumber });
  const pupil = pulledTo(
    side > 0 ? farLimitFormula : nearLimitFormula,
    {
      ask: 'entrance-pupil',
      given: {
        [side > 0 ? 'far-limit' : 'near-limit']: distance,
        'circle-of-confusion': circleOfConfusion,
        'entrance-pupil-distance': entrancePupilDistance,
        magnification,
      },
      range: { least: pupilAt(most), most: pupilAt(least) },
    },
    pupilAt(least),
  );
  return fNumberFromAperture({ focalLength, entrancePupil: pupil });
}
