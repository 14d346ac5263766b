import { motionBlurTurningAboutPupil } from '#core/exposure/motion-blur-turning-about-pupil.formula.ts';
import { motionBlurTurning } from '#core/exposure/motion-blur-turning.ts';
import { slowestExposureTime } from '#core/exposure/slowest-exposure-time.formula.ts';
import { subjectSpeedOfSwing } from '#core/exposure/subject-speed-of-swing.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

const held = {
  focalLength: 100,
  magnification: 1e-6,
  principalSeparation: 0,
  shakeRate: 0.03,
  stabilisation: 0,
  sidewaysSpeed: 0,
  subjectSpeed: 0,
};

const slowest = (circleOfConfusion: number, stabilisation = 0) =>
  slowestExposureTime({ ...held, circleOfConfusion, stabilisation });

export const ours = oursById({
  'iso-20954-threshold': (given: { threshold: number; detail: number; sensorWidth: number; sensorHeight: number }) => ({
    timesSlower: slowest(given.threshold) / slowest(given.detail),
    // From so far away it does not matter about which point the camera turns.
    streakAtSlowest: motionBlurTurning({
      ...held,
      distance: held.focalLength / held.magnification,
      exposureTime: slowest(given.threshold),
    }),
    partOfDiagonal: Math.hypot(given.sensorWidth, given.sensorHeight) / given.threshold,
  }),
  // What swings by one unit to each side passes the middle at this speed; for turning, in degrees both.
  'tremor-amplitude': ({ frequencies, fastest }: { frequencies: readonly number[]; fastest: number }) => ({
    amplitude: frequencies.map((each) => fastest / subjectSpeedOfSwing({ swingAmplitude: 1, swingPeriod: 1 / each })),
  }),
  'reciprocal-rule': (given: { focalLength: number; exposureTime: number; blur: number }) => {
    const far = { magnification: 1e-9, pupilMagnification: 1, stabilisation: 0, shakeRate: 1 };
    return { shakeRate: given.blur / motionBlurTurningAboutPupil({ ...given, ...far }) };
  },
  'stabilisation-times': ({ stabilisation }: { stabilisation: readonly number[] }) => ({
    timesLonger: stabilisation.map((stops) => slowest(0.03, stops) / slowest(0.03)),
  }),
});
