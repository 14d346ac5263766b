import { OutOfRange } from '#core/quantity/errors.ts';
import { fullStopFNumbers } from '#core/quantity/nominal.ts';
import { conesOfChain } from '#core/rig/cones-of-chain.ts';
import { bestFNumber } from '#core/wave/best-f-number.ts';
import { spatialFrequencyOfCircle } from '#core/wave/spatial-frequency-of-circle.formula.ts';
import { fNumbersOf, type Chain } from '#site/chain/chain.ts';
import type { BuiltChain } from './answers.ts';
import type { Conditions } from './conditions.ts';

/**
 * The marked full stop of the lens that limits the light which keeps most contrast over the subject's depth, at the fineness that the circle of confusion
 * asks for; null where none keeps any, undefined where no lens limits the light or nothing is sharp. Fetched when the page has come to rest.
 */
export function bestOf(
  chain: Chain,
  { positions, linkOf, circle }: BuiltChain,
  { wavelength, 'subject-depth': subjectDepth }: Conditions,
): number | null | undefined {
  const { solved, parts } = positions;
  if (solved.sharpPlane !== 'in front' || parts[solved.limitedBy]!.part.part !== 'lens') return undefined;
  const { least, most } = fNumbersOf(chain[linkOf[solved.limitedBy]!]!.thing);
  const marks = fullStopFNumbers().filter((fNumber) => fNumber >= least && fNumber <= most);
  const coneAt = conesOfChain(
    parts.map(({ part }) => part),
    solved.limitedBy,
  );
  const spatialFrequency = spatialFrequencyOfCircle({ circleOfConfusion: circle });
  try {
    return bestFNumber({ subjectDepth, wavelength, spatialFrequency, coneAt }, marks)?.fNumber ?? null;
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}
