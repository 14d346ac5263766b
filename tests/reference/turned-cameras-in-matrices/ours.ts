import { exposureTimeForMotionBlur } from '#core/exposure/exposure-time-for-motion-blur.formula.ts';
import { motionBlurOfSubject } from '#core/exposure/motion-blur-of-subject.formula.ts';
import { motionBlurSideways } from '#core/exposure/motion-blur-sideways.formula.ts';
import { motionBlurTogether } from '#core/exposure/motion-blur-together.formula.ts';
import { motionBlurTurningAboutPupil } from '#core/exposure/motion-blur-turning-about-pupil.formula.ts';
import { motionBlurTurningAboutSensor } from '#core/exposure/motion-blur-turning-about-sensor.formula.ts';

interface Held {
  focalLength: number;
  principalSeparation: number;
  pupilMagnification: number;
  magnification: number;
  about: string;
  shakeRate: number;
  stabilisation: number;
  sidewaysSpeed: number;
  subjectSpeed: number;
  exposureTime: number;
  circleOfConfusion: number;
}

/** What the core makes of a row, in base units: the keys of its `expected`. */
export function ours(held: Held) {
  const turning = held.about === 'sensor' ? motionBlurTurningAboutSensor(held) : motionBlurTurningAboutPupil(held);
  const sideways = motionBlurSideways(held);
  const subject = motionBlurOfSubject(held);
  const together = motionBlurTogether({
    turningMotionBlur: turning,
    sidewaysMotionBlur: sideways,
    subjectMotionBlur: subject,
  });
  return {
    turning,
    sideways,
    subject,
    together,
    slowest: exposureTimeForMotionBlur({ ...held, motionBlur: together }),
  };
}
