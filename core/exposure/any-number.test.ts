import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { focusRingPlan } from '#core/stack/focus-ring-plan.ts';
import { framesInTime, framesLost } from '#core/stack/frames-in-time.ts';
import { magnificationAfterStep } from '#core/stack/magnification-after-step.ts';
import { railPlan } from '#core/stack/rail-plan.ts';
import { scaleBetweenFocusSettings } from '#core/stack/scale-between-focus-settings.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { combinedMotionBlur } from './combined-motion-blur.ts';
import { framesForChance } from './frames-for-chance.ts';
import { keeperShare } from './keeper-share.ts';
import { luminousExposure } from './luminous-exposure.ts';
import { motionBlurTurning } from './motion-blur-turning.ts';
import { midToneExposure, saturationExposure } from './photons.ts';
import { ambientUnderexposure, movementUnderFlash, shutterTimeWithFlash } from './shutter-with-flash.ts';
import {
  apertureValue,
  exposureTimeOfTimeValue,
  fNumberOfApertureValue,
  timeForLightLoss,
  timeValue,
} from './stops.ts';
import { swingDuring } from './swing.ts';

/** Numbers such as fields and addresses hold: sensible ones, any size that a slip of units makes, and garbage. */
const anyNumber = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: 0.01, max: 30, noNaN: true }) },
  { weight: 1, arbitrary: fc.double({ min: -1e30, max: 1e30, noNaN: true }).map((x) => (Math.abs(x) < 1e-30 ? 0 : x)) },
  { weight: 1, arbitrary: fc.constantFrom(0, -0, NaN, Infinity, -Infinity, -1, 1e-30, 1e30) },
);
const share = fc.oneof({ weight: 8, arbitrary: fc.double({ min: 1e-6, max: 1, noNaN: true }) }, anyNumber);
const given = fc.record({
  ambientShare: share,
  circleOfConfusion: anyNumber,
  distance: anyNumber,
  effectiveFNumber: anyNumber,
  exposureTime: anyNumber,
  fNumber: anyNumber,
  farLimit: anyNumber,
  flashDuration: anyNumber,
  focalLength: anyNumber,
  frameCount: anyNumber,
  lightLoss: anyNumber,
  luminance: anyNumber,
  magnification: anyNumber,
  nearLimit: anyNumber,
  neededTime: anyNumber,
  overlap: share,
  pupilMagnification: anyNumber,
  recyclingTime: anyNumber,
  second: anyNumber,
  settlingTime: anyNumber,
  shakeRate: anyNumber,
  share,
  stabilisation: anyNumber,
  step: anyNumber,
  subjectDepth: anyNumber,
  subjectSpeed: anyNumber,
  sway: anyNumber,
  swingAmplitude: anyNumber,
  swingPeriod: anyNumber,
  syncSpeed: anyNumber,
  timeLimit: anyNumber,
});
type Given = typeof given extends fc.Arbitrary<infer Each> ? Each : never;

const functions: Readonly<Record<string, (values: Given) => unknown>> = {
  ambientUnderexposure,
  keeperShare,
  luminousExposure,
  magnificationAfterStep,
  motionBlurTurning,
  movementUnderFlash,
  railPlan,
  shutterTimeWithFlash,
  swingDuring,
  timeForLightLoss,
  apertureValue: ({ fNumber }) => apertureValue(fNumber),
  combinedMotionBlur: ({ sway, step }) => combinedMotionBlur([sway, step]),
  exposureTimeOfTimeValue: ({ lightLoss }) => exposureTimeOfTimeValue(lightLoss),
  fNumberOfApertureValue: ({ lightLoss }) => fNumberOfApertureValue(lightLoss),
  focusRingPlan: (values) => {
    const frames = focusRingPlan({ ...values, overlap: Math.min(0.5, values.overlap) });
    // The last one may have no end.
    return frames.map(({ far, ...frame }, index) => (index < frames.length - 1 ? { ...frame, far } : frame));
  },
  framesForChance: (values) => framesForChance(values.share, 0.95),
  framesInTime: (values) => framesInTime(values, values.timeLimit),
  framesLost: (values) => framesLost(values, { ...values, frameCount: Math.ceil(values.frameCount) }),
  midToneExposure: ({ fNumber }) => midToneExposure(fNumber),
  saturationExposure: ({ fNumber }) => saturationExposure(fNumber),
  scaleBetweenFocusSettings: (values) => scaleBetweenFocusSettings({ ...values, first: values.magnification }),
  timeValue: ({ exposureTime }) => timeValue(exposureTime),
};

/** Every number in an answer, however deep. */
const numbersIn = (answer: unknown): number[] =>
  typeof answer === 'number'
    ? [answer]
    : typeof answer === 'object' && answer !== null
      ? Object.values(answer).flatMap(numbersIn)
      : [];

describe.each(Object.keys(functions))('%s, whatever numbers come', (name) => {
  it('answers with finite numbers or refuses with OutOfRange', () => {
    let answered = 0;
    fc.assert(
      fc.property(given, (values) => {
        try {
          const numbers = numbersIn(functions[name]?.(values));
          answered++;
          for (const number of numbers) expect(Number.isFinite(number), JSON.stringify(values)).toBe(true);
        } catch (error) {
          if (!(error instanceof OutOfRange)) throw error;
        }
      }),
      { seed: 7, numRuns: 200, endOnFailure: true },
    );
    expect(answered).toBeGreaterThan(10);
  }, 60_000);
});
