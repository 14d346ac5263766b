import fc from 'fast-check';
import { anyNumber, anyShare, describeAnyNumber } from '#tests/support/any-number.ts';
import { combinedMotionBlur } from './combined-motion-blur.ts';
import { framesForChance } from './frames-for-chance.ts';
import { keeperShare } from './keeper-share.formula.ts';
import { luminousExposure } from './luminous-exposure.ts';
import { motionBlurTurning } from './motion-blur-turning.ts';
import { midToneExposure, saturationExposure } from './photons.ts';
import { movementUnderFlash, shareBehindCurtain, shutterTimeWithFlash } from './shutter-with-flash.ts';
import {
  apertureValue,
  exposureTimeOfTimeValue,
  fNumberOfApertureValue,
  timeForLightLoss,
  timeValue,
} from './stops.ts';
import { swingDuring } from './swing.ts';

const given = fc.record({
  ambientShare: anyShare,
  distance: anyNumber,
  effectiveFNumber: anyNumber,
  exposureTime: anyNumber,
  fNumber: anyNumber,
  farLimit: anyNumber,
  flashDuration: anyNumber,
  focalLength: anyNumber,
  focusOffset: fc.oneof(
    fc.integer({ min: -3000, max: 3000 }).map((hundredths) => hundredths / 100),
    anyNumber,
  ),
  lightLoss: anyNumber,
  luminance: anyNumber,
  magnification: anyNumber,
  nearLimit: anyNumber,
  shakeRate: anyNumber,
  share: anyShare,
  stabilisation: anyNumber,
  step: anyNumber,
  subjectSpeed: anyNumber,
  sway: anyNumber,
  swingAmplitude: anyNumber,
  swingPeriod: anyNumber,
  syncSpeed: anyNumber,
});

describeAnyNumber(
  {
    keeperShare,
    luminousExposure,
    motionBlurTurning,
    movementUnderFlash,
    shareBehindCurtain,
    shutterTimeWithFlash,
    swingDuring,
    timeForLightLoss,
    apertureValue: ({ fNumber }) => apertureValue(fNumber),
    combinedMotionBlur: ({ sway, step }) => combinedMotionBlur([sway, step]),
    exposureTimeOfTimeValue: ({ lightLoss }) => exposureTimeOfTimeValue(lightLoss),
    fNumberOfApertureValue: ({ lightLoss }) => fNumberOfApertureValue(lightLoss),
    framesForChance: ({ share }) => framesForChance(share, 0.95),
    midToneExposure: ({ fNumber }) => midToneExposure(fNumber),
    saturationExposure: ({ fNumber }) => saturationExposure(fNumber),
    timeValue: ({ exposureTime }) => timeValue(exposureTime),
  },
  given,
);
