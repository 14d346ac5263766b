import { farLimit } from '#core/depth/far-limit.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { extensionForMagnification } from '#core/gaussian/extension-for-magnification.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistance } from '#core/gaussian/working-distance.formula.ts';
import type { Named } from '#core/quantity/formula.ts';
import type { ChainNumbers } from './planned-chain.ts';

/** What one lens is known by, and what it is asked for. */
export type OfOneLens =
  | 'magnification'
  | 'focal-length'
  | 'focus-magnification'
  | 'front-principal-depth'
  | 'principal-separation'
  | 'pupil-magnification'
  | 'f-number';

type Given = Readonly<Named<OfOneLens | 'circle-of-confusion'>>;

/** One lens, moved as a whole until it gives what is wanted: by the lessons' formulas. Throws OutOfRange as they do. */
export function ownLensNumbers(given: Given): ChainNumbers & { readonly extension: number | undefined } {
  const seen = {
    ...given,
    entrancePupil: entrancePupil(given),
    entrancePupilDistance: entrancePupilDistance(given),
  };
  return {
    ...given,
    extension: given.magnification >= given.focusMagnification ? extensionForMagnification(given) : undefined,
    workingDistance: workingDistance({ ...given, subjectDistance: subjectDistance(given) }),
    effectiveFNumber: effectiveFNumber(given),
    entrancePupilDistance: seen.entrancePupilDistance,
    nearLimit: nearLimit(seen),
    farLimit: farLimit(seen),
  };
}
