import { exposureTimeForMotionBlur } from '#core/exposure/exposure-time-for-motion-blur.formula.ts';
import { motionBlurTogether } from '#core/exposure/motion-blur-together.formula.ts';
import { motionBlurTurningAboutPupil } from '#core/exposure/motion-blur-turning-about-pupil.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Sky {
  focalLength: number;
  pixelPitch: number;
  dayLength: number;
}

/** A sky that turns over a still camera is a camera that turns under a still sky. */
const streak = ({ focalLength, dayLength }: Sky, exposureTime: number) =>
  motionBlurTurningAboutPupil({
    focalLength,
    exposureTime,
    magnification: 0,
    pupilMagnification: 1,
    shakeRate: (2 * Math.PI) / dayLength,
    stabilisation: 0,
  });

const together = ({ parts: [one, two, three] }: { parts: readonly [number, number, number] }) => ({
  together: motionBlurTogether({ turningMotionBlur: one, sidewaysMotionBlur: two, subjectMotionBlur: three }),
});

export const ours = oursById({
  'rule-of-600': (sky: Sky & { exposureTime: number }) => {
    const motionBlur = streak(sky, sky.exposureTime);
    return {
      pixels: motionBlur / sky.pixelPitch,
      secondsPerPixel: exposureTimeForMotionBlur({ ...sky, motionBlur, circleOfConfusion: sky.pixelPitch }),
    };
  },
  'arcseconds-per-pixel': (sky: Sky & { exposureTimes: readonly number[] }) => ({
    pixels: sky.exposureTimes.map((time) => streak(sky, time) / sky.pixelPitch),
  }),
  'root-sum-square': together,
  'root-of-29': together,
});
