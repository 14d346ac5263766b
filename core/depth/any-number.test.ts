import fc from 'fast-check';
import { anyNumber, describeAnyNumber } from '#tests/support/any-number.ts';
import { balancedFocus } from './balanced-focus.ts';
import {
  backgroundWidthOfCone,
  defocusBlurOfCone,
  effectiveFNumberForBlur,
  magnificationOffPlaneOfCone,
} from './blur-of-cone.ts';
import { combinedDepth } from './combined-depth.ts';
import { coneOfLens, coneOfPupil } from './cone.ts';
import { defocusBlur } from './defocus-blur.ts';
import { magnificationOffPlane } from './magnification-off-plane.ts';

const given = fc.record({
  backgroundDistance: anyNumber,
  defocusBlur: anyNumber,
  depthOfField: anyNumber.filter((depth) => depth !== Infinity),
  effectiveFNumber: anyNumber,
  entrancePupil: anyNumber,
  entrancePupilDistance: anyNumber,
  fieldWidth: anyNumber,
  fNumber: anyNumber,
  focalLength: anyNumber,
  inverseEntrancePupilDistance: fc.oneof(
    fc.integer({ min: -200, max: 200 }).map((inverse) => inverse / 1000),
    anyNumber,
  ),
  magnification: anyNumber,
  offset: fc.oneof(
    fc.integer({ min: -3000, max: 3000 }).map((hundredths) => hundredths / 100),
    anyNumber,
  ),
  pupilMagnification: anyNumber,
  subjectDepth: anyNumber,
  waveDepth: anyNumber,
});

describeAnyNumber(
  {
    backgroundWidthOfCone,
    balancedFocus,
    combinedDepth,
    coneOfLens,
    coneOfPupil,
    defocusBlur,
    defocusBlurOfCone,
    effectiveFNumberForBlur,
    magnificationOffPlane,
    magnificationOffPlaneOfCone,
  },
  given,
);
