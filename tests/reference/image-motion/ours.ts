import { exposureTimeForSubjectSpeed } from '#core/exposure/exposure-time-for-subject-speed.formula.ts';
import { motionBlurOfSubject } from '#core/exposure/motion-blur-of-subject.formula.ts';
import { motionBlurSideways } from '#core/exposure/motion-blur-sideways.formula.ts';
import { subjectSpeedOfSwing } from '#core/exposure/subject-speed-of-swing.formula.ts';
import { swingDuring } from '#core/exposure/swing.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

const milePerHour = 447.04;
const kilometrePerHour = 1000 / 3.6;

/** In which a streak is drawn. */
const timeFor = (blur: number, moving: { magnification: number; subjectSpeed: number }) =>
  exposureTimeForSubjectSpeed({ ...moving, circleOfConfusion: blur });

interface Seen {
  focalLength: number;
  subjectDistance: number;
  subjectSpeed: number;
}

const streak = (seen: Seen) =>
  motionBlurOfSubject({ ...seen, magnification: magnificationOfSubject(seen), exposureTime: 0.01 });

export const ours = oursById({
  'spring-block': (swing: { swingAmplitude: number; swingPeriod: number }) => ({ fastest: subjectSpeedOfSwing(swing) }),
  'aircraft-smear-sideways': ({ speedKmh, exposureTime }: { speedKmh: number; exposureTime: number }) => ({
    smear: motionBlurSideways({ magnification: 1, sidewaysSpeed: speedKmh * kilometrePerHour, exposureTime }),
  }),
  'aerial-exposure': (flight: {
    speedMph: number;
    scale: number;
    linesPerMillimetre: number;
    toleratedMicrometres: readonly number[];
  }) => ({
    perSecond: flight.toleratedMicrometres.map((tolerated) => {
      const moving = { magnification: 1 / flight.scale, subjectSpeed: flight.speedMph * milePerHour };
      return 1 / timeFor(tolerated / 1000 / flight.linesPerMillimetre, moving);
    }),
  }),
  'car-at-two-kilometres': (car: Omit<Seen, 'subjectSpeed'> & { speedKmh: number; blur: number }) => ({
    exposureTime: timeFor(car.blur, {
      magnification: magnificationOfSubject(car),
      subjectSpeed: car.speedKmh * kilometrePerHour,
    }),
  }),
  'manual-shutter-rules': (seen: Seen) => ({
    speedDoubled: streak({ ...seen, subjectSpeed: 2 * seen.subjectSpeed }) / streak(seen),
    distanceHalved: streak({ ...seen, subjectDistance: seen.subjectDistance / 2 }) / streak(seen),
    focalLengthDoubled: streak({ ...seen, focalLength: 2 * seen.focalLength }) / streak(seen),
  }),
  'davidhazy-exposure': (given: { subjectWidth: number; subjectSpeed: number; sensorWidth: number }) => ({
    exposureTime: timeFor(given.sensorWidth / 500, {
      magnification: given.sensorWidth / given.subjectWidth,
      subjectSpeed: given.subjectSpeed,
    }),
  }),
  'aircraft-smear': ({ speedKmh, exposureTime }: { speedKmh: number; exposureTime: number }) => ({
    smear: motionBlurOfSubject({ magnification: 1, subjectSpeed: speedKmh * kilometrePerHour, exposureTime }),
  }),
  wingbeats: ({ beatsPerSecond }: { beatsPerSecond: readonly number[] }) => ({
    timesForWholeSwing: beatsPerSecond.map((beats) => shortestForWholeSwing(1 / beats)),
    inTenthOfBeat: beatsPerSecond.map((beats) => {
      const swing = { swingPeriod: 1 / beats, swingAmplitude: 0.5 };
      return swingDuring({ ...swing, exposureTime: 0.1 / beats });
    }),
  }),
  'nodding-flower': ({ frequencies, amplitude }: { frequencies: readonly number[]; amplitude: number }) => ({
    subjectSpeed: frequencies.map((frequency) =>
      subjectSpeedOfSwing({ swingAmplitude: amplitude, swingPeriod: 1 / frequency }),
    ),
  }),
});

/** Found by trying: the first of ten thousand times in which the whole swing is covered. */
function shortestForWholeSwing(swingPeriod: number): number {
  const times = Array.from({ length: 10_001 }, (_, step) => (step * swingPeriod) / 10_000);
  const whole = (exposureTime: number) => swingDuring({ swingPeriod, swingAmplitude: 0.5, exposureTime }) >= 1 - 1e-12;
  return times.find(whole)!;
}
