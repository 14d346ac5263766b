import { subjectDepthInOneFrame } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { magnificationFromFrameFill } from '#core/gaussian/magnification-from-frame-fill.formula.ts';
import { depthOfStack } from '#core/stack/depth-of-stack.formula.ts';
import { finestEffectiveFNumber } from '#core/wave/finest-effective-f-number.formula.ts';

type Fill = Parameters<typeof magnificationFromFrameFill>[0];
type Stack = Parameters<typeof depthOfStack>[0];
type Depth = Parameters<typeof subjectDepthInOneFrame>[0];
interface Objective {
  readonly numericalAperture: number;
  readonly wavelength: number;
}

export function ours(given: Fill | Depth | Objective | Stack) {
  if ('frameFill' in given) return { magnification: magnificationFromFrameFill(given) };
  if ('frameCount' in given) return { stackedDepth: depthOfStack(given) };
  if ('numericalAperture' in given) return { quarterWaveDepth: quarterWaveDepth(given) };
  return { effectiveFNumber: finestEffectiveFNumber(given), subjectDepth: subjectDepthInOneFrame(given) };
}

/** The rule's cone in front of a lens at life size has NA = λ/(√2 c), and its depth ends an eighth of a wave out of focus: twice that is a quarter. */
function quarterWaveDepth({ numericalAperture, wavelength }: Objective): number {
  const circleOfConfusion = wavelength / (Math.SQRT2 * numericalAperture);
  return 2 * subjectDepthInOneFrame({ wavelength, magnification: 1, circleOfConfusion });
}
