import fc from 'fast-check';
import { anyNumber, anyShare, describeAnyNumber } from '#tests/support/any-number.ts';
import { focusRingPlan } from './focus-ring-plan.ts';
import { focusedPlan, type FocusedFrame } from './focused-plan.ts';
import { framesInTime, framesLost } from './frames-in-time.ts';
import { hiddenBandOfCone } from './hidden-band-of-cone.ts';
import { magnificationAfterStep } from './magnification-after-step.ts';
import { railPlan } from './rail-plan.ts';
import { scaleBetweenFocusSettings } from './scale-between-focus-settings.ts';
import { scaleBetweenFrames } from './scale-between-frames.ts';

const given = fc.record({
  circleOfConfusion: anyNumber,
  edgeHeight: anyNumber,
  effectiveFNumber: anyNumber,
  exposureTime: anyNumber,
  fNumber: anyNumber,
  farLimit: anyNumber,
  focalLength: anyNumber,
  frameCount: anyNumber,
  inverseEntrancePupilDistance: fc.oneof(
    fc.integer({ min: -200, max: 200 }).map((inverse) => inverse / 1000),
    anyNumber,
  ),
  magnification: anyNumber,
  nearLimit: anyNumber,
  overlap: anyShare,
  pupilMagnification: anyNumber,
  recyclingTime: anyNumber,
  second: anyNumber,
  settlingTime: anyNumber,
  step: anyNumber,
  subjectDepth: anyNumber,
  timeLimit: anyNumber,
});

/** The last frame may have no end. */
const bounded = (frames: readonly FocusedFrame[]) =>
  frames.map(({ far, ...frame }, index) => (index < frames.length - 1 ? { ...frame, far } : frame));

describeAnyNumber(
  {
    hiddenBandOfCone,
    magnificationAfterStep,
    railPlan,
    focusRingPlan: (values) => bounded(focusRingPlan({ ...values, overlap: Math.min(0.5, values.overlap) })),
    focusedPlan: (values) =>
      bounded(focusedPlan({ ...values, overlap: Math.min(0.5, values.overlap), coneAfter: () => values })),
    framesInTime: (values) => framesInTime(values, values.timeLimit),
    framesLost: (values) => framesLost(values, { ...values, frameCount: Math.ceil(values.frameCount) }),
    scaleBetweenFocusSettings: (values) => scaleBetweenFocusSettings({ ...values, first: values.magnification }),
    scaleBetweenFrames: (values) =>
      scaleBetweenFrames({ first: values, second: { ...values, magnification: values.second }, step: values.step }),
  },
  given,
);
