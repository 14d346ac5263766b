import { ambientShareFormula } from '#core/exposure/ambient-share.formula.ts';
import { ambientUnderexposureFormula } from '#core/exposure/ambient-underexposure.formula.ts';
import { backgroundUnderexposureFormula } from '#core/exposure/background-underexposure.formula.ts';
import {
  effectiveFNumberFromGuideNumber,
  effectiveFNumberFromGuideNumberFormula,
} from '#core/exposure/effective-f-number-from-guide-number.formula.ts';
import { exposureTimeFromIlluminanceFormula } from '#core/exposure/exposure-time-from-illuminance.formula.ts';
import { flashPowerForFNumberFormula } from '#core/exposure/flash-power-for-f-number.formula.ts';
import { motionBlurOfSubjectFormula } from '#core/exposure/motion-blur-of-subject.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { fNumberForEffectiveFNumberFormula } from '#core/gaussian/f-number-for-effective-f-number.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';

interface Lens {
  readonly magnification: number;
  readonly 'pupil-magnification': number;
}
/** How many times the marked f-number the lens works at: 1 + m/P. */
const growth = (given: Lens) => evaluateFormula(effectiveFNumberFormula, { ...given, 'f-number': 1 });

const unequal = [0.6, 0.85, 1.4];
const sizes = [0.5, 1, 2];
const aTwelfth = {
  relative: 0.03,
  because: '3 per cent is a twelfth of a stop, finer than anyone sets a lens',
} as const;

const flashCloseUp = numberFamily({
  id: 'flash-close-up',
  asks: 'f-number',
  question:
    'A flash of guide number {guide-number} gives {flash-power} of its power from {flash-distance} away, at ISO {iso}. The lens is focused to {magnification} and has a pupil magnification of {pupil-magnification}. Which f-number do you set?',
  givens: (draw) => ({
    'guide-number': draw.pick([12, 14, 20]),
    'flash-power': draw.pick([1 / 8, 1 / 16, 1 / 32]),
    'flash-distance': draw.pick([120, 150, 200, 250]),
    iso: draw.pick([200, 400]),
    magnification: draw.pick(sizes),
    'pupil-magnification': draw.pick(unequal),
  }),
  tolerance: aTwelfth,
  mistakes: [
    {
      id: 'as-from-afar',
      value: (given) => evaluateFormula(effectiveFNumberFromGuideNumberFormula, given),
      because:
        'That is the f-number that the lens should work at. Set to it, the lens works at a larger one close up: divide by 1 + m/P.',
    },
    {
      id: 'power-not-rooted',
      value: (given) =>
        (evaluateFormula(effectiveFNumberFromGuideNumberFormula, given) * Math.sqrt(given['flash-power'])) /
        growth(given),
      because: 'That multiplies by the power itself. Light goes with the square of the f-number: take the root of it.',
    },
    {
      id: 'counted-twice',
      value: (given) => evaluateFormula(effectiveFNumberFromGuideNumberFormula, given) / growth(given) ** 2,
      because: 'That divides by 1 + m/P twice. Between two f-numbers it counts once; between two lights it is squared.',
    },
    {
      id: 'pupils-left-out',
      value: (given) => evaluateFormula(effectiveFNumberFromGuideNumberFormula, given) / (1 + given.magnification),
      because: 'That divides by 1 + m. The pupils of this lens are not equally wide: divide by 1 + m/P.',
    },
    {
      id: 'iso-left-out',
      value: (given) => evaluateFormula(effectiveFNumberFromGuideNumberFormula, { ...given, iso: 100 }) / growth(given),
      because:
        'That is the answer at ISO 100. At ISO {iso} less light is enough: multiply by the root of ISO over 100.',
    },
  ],
  hint: 'Which effective f-number does the flash suit? By what does a mark grow at this size?',
  working: [
    { formula: effectiveFNumberFromGuideNumberFormula, note: 'By guide number the lens should work at' },
    { formula: fNumberForEffectiveFNumberFormula, note: 'and the mark is smaller by 1 + m/P:' },
  ],
});

const howMuchPower = numberFamily({
  id: 'how-much-power',
  asks: 'flash-power',
  question:
    'You set {f-number} and ISO {iso}, focused to {magnification}, with a pupil magnification of {pupil-magnification}. The flash, guide number {guide-number}, is {flash-distance} away. Which share of its power must it give?',
  givens: (draw) => ({
    'f-number': draw.pick([5.6, 8, 11]),
    iso: draw.pick([200, 400]),
    magnification: draw.pick([0.5, 1]),
    'pupil-magnification': draw.pick(unequal),
    'guide-number': draw.pick([14, 20]),
    'flash-distance': draw.pick([100, 130, 160]),
  }),
  tolerance: { relative: 0.05, because: 'a fourteenth of a stop; flashes are set in thirds at best' },
  mistakes: [
    {
      id: 'marked-f-number',
      value: (given) =>
        evaluateFormula(flashPowerForFNumberFormula, { ...given, 'effective-f-number': given['f-number'] }),
      because: 'That is for {f-number} as marked. At {magnification} the lens works at a larger number.',
    },
    {
      id: 'growth-once',
      value: (given) =>
        evaluateFormula(flashPowerForFNumberFormula, { ...given, 'effective-f-number': given['f-number'] }) *
        growth(given),
      because: 'That multiplies by 1 + m/P once. Power goes with the square of the f-number: multiply by it twice.',
    },
    {
      id: 'not-squared',
      value: (given) => {
        const right = evaluateFormula(flashPowerForFNumberFormula, {
          ...given,
          'effective-f-number': given['f-number'] * growth(given),
          iso: 100,
        });
        return (Math.sqrt(right) * 100) / given.iso;
      },
      because: 'That takes f-number times distance over guide number once. Light goes with the square of it.',
    },
    {
      id: 'iso-left-out',
      value: (given) =>
        evaluateFormula(flashPowerForFNumberFormula, {
          ...given,
          'effective-f-number': given['f-number'] * growth(given),
          iso: 100,
        }),
      because: 'That is the power at ISO 100. At ISO {iso} less of it is enough.',
    },
  ],
  hint: 'At which f-number does the lens work? How does that times the distance compare with the guide number?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The lens works at' },
    { formula: flashPowerForFNumberFormula, note: 'and needs of the full power' },
  ],
});

interface HowFar extends Lens {
  readonly 'guide-number': number;
  readonly iso: number;
  readonly 'f-number': number;
}
/** F-number and distance stand for each other: what would suit at 1 m, over what the lens works at, in metres. */
const distanceFor = (given: HowFar, worksAt: number) =>
  (1000 *
    effectiveFNumberFromGuideNumber({
      guideNumber: given['guide-number'],
      iso: given.iso,
      flashPower: 1,
      flashDistance: 1000,
    })) /
  worksAt;

const howFar = numberFamily({
  id: 'how-far-the-flash',
  asks: 'flash-distance',
  question:
    'A small flash without power settings has guide number {guide-number}. You set {f-number} and ISO {iso} at {magnification}, pupil magnification {pupil-magnification}. How far from the subject do you put the flash?',
  givens: (draw) => ({
    'guide-number': draw.pick([4, 5, 8]),
    'f-number': draw.pick([8, 11, 16]),
    iso: draw.pick([200, 400]),
    magnification: draw.pick(sizes),
    'pupil-magnification': draw.pick(unequal),
  }),
  answer: (given) => distanceFor(given, given['f-number'] * growth(given)),
  tolerance: aTwelfth,
  mistakes: [
    {
      id: 'marked-f-number',
      value: (given) => distanceFor(given, given['f-number']),
      because: 'That is for {f-number} as marked: too far. Close up the lens works at a larger number.',
    },
    {
      id: 'iso-not-rooted',
      value: (given) => distanceFor({ ...given, iso: 100 }, given['f-number'] * growth(given)) * (given.iso / 100),
      because:
        'That multiplies the guide number by ISO over 100. Twice the light is 1.4 times the distance: take the root.',
    },
    {
      id: 'counted-twice',
      value: (given) => distanceFor(given, given['f-number'] * growth(given) ** 2),
      because: 'That counts 1 + m/P twice. Distance and f-number go together, each once.',
    },
  ],
  hint: 'At which f-number does the lens work, and what does the guide number come to at this ISO?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The lens works at' },
    {
      note: 'At this ISO the guide number is {guide-number} times the root of ISO over 100. Divided by {effective-f-number} that is {flash-distance}.',
      values: (known) => ({ 'flash-distance': distanceFor(known, known['effective-f-number']) }),
    },
  ],
});

const heldInTheLight = numberFamily({
  id: 'held-in-the-light',
  asks: 'exposure-time',
  question:
    'A hand meter held at the subject, C {incident-light-constant}, measures {illuminance}. You set {f-number} and ISO {iso} at {magnification}, pupil magnification {pupil-magnification}. Which exposure time is right?',
  givens: (draw) => ({
    'incident-light-constant': 250,
    illuminance: draw.pick([400, 2000, 12_000]),
    'f-number': draw.pick([5.6, 8, 11]),
    iso: draw.pick([100, 400]),
    magnification: draw.pick(sizes),
    'pupil-magnification': draw.pick(unequal),
  }),
  tolerance: aTwelfth,
  mistakes: [
    {
      id: 'marked-f-number',
      value: (given) =>
        evaluateFormula(exposureTimeFromIlluminanceFormula, { ...given, 'effective-f-number': given['f-number'] }),
      because:
        'That is for {f-number} as marked. The meter was not behind the lens: it has not seen what is lost there.',
    },
    {
      id: 'not-squared',
      value: (given) =>
        evaluateFormula(exposureTimeFromIlluminanceFormula, { ...given, 'effective-f-number': given['f-number'] }) *
        growth(given),
      because: 'That multiplies by 1 + m/P once. The time goes with the square of the f-number.',
    },
    {
      id: 'other-constant',
      value: (given) =>
        evaluateFormula(exposureTimeFromIlluminanceFormula, {
          ...given,
          'effective-f-number': given['f-number'] * growth(given),
        }) *
        (12.5 / 250),
      because:
        'That takes 12.5, the constant of meters that are pointed at the subject. One held at it measures the light that falls, and has its own.',
    },
  ],
  hint: 'At which f-number does the lens work? That number counts, squared.',
  working: [
    { formula: effectiveFNumberFormula, note: 'The lens works at' },
    { formula: exposureTimeFromIlluminanceFormula, note: 'and that asks for' },
  ],
});

const behindTheLens = numberFamily({
  id: 'behind-the-lens',
  asks: 'exposure-time',
  question:
    'The camera’s own meter, which looks through the lens, says {metered.exposure-time} at {magnification}. The pupil magnification is {pupil-magnification}. Which exposure time do you set?',
  givens: (draw) => ({
    'metered.exposure-time': draw.pick([1 / 2, 1 / 4, 1 / 15, 1 / 30, 1 / 60]),
    magnification: draw.pick(sizes),
    'pupil-magnification': draw.pick(unequal),
  }),
  answer: (given) => given['metered.exposure-time'],
  tolerance: { relative: 0.12, because: 'times are marked in thirds of a stop; half of one is 12 per cent' },
  mistakes: [
    {
      id: 'counted-twice',
      value: (given) => given['metered.exposure-time'] * growth(given) ** 2,
      because: 'That makes up for a loss that the meter has seen already. It looks through the lens.',
    },
    {
      id: 'counted-once-more',
      value: (given) => given['metered.exposure-time'] * growth(given),
      because: 'That corrects by 1 + m/P. Nothing is to be corrected: the meter sees the light that is left.',
    },
    {
      id: 'taken-away',
      value: (given) => given['metered.exposure-time'] / growth(given) ** 2,
      because: 'That takes away a loss which is really there. The meter measured it with all the rest.',
    },
  ],
  hint: 'Where has the light been before it comes to this meter?',
  working: [
    {
      note: 'The meter sees the light that is left and has counted the loss. Set what it says: {exposure-time}.',
      values: (known) => ({ 'exposure-time': known['metered.exposure-time'] }),
    },
  ],
});

const daylightShare = numberFamily({
  id: 'daylight-share',
  asks: 'ambient-share',
  question:
    'Daylight alone would need {ambient.exposure-time}. The shutter is open for {shutter.exposure-time}, and a flash exposes the subject fully by itself. Which share of all the light is daylight?',
  givens: (draw) => ({
    'ambient.exposure-time': draw.pick([1 / 15, 1 / 20, 1 / 30, 1 / 40]),
    'shutter.exposure-time': draw.pick([1 / 200, 1 / 160, 1 / 125, 1 / 100]),
  }),
  tolerance: { relative: 0.02, because: 'two per cent of a share is less than anyone sees' },
  mistakes: [
    {
      id: 'against-the-flash',
      value: (given) => given['shutter.exposure-time'] / given['ambient.exposure-time'],
      because: 'That is daylight against the flash alone. The whole is both together.',
    },
    {
      id: 'the-flash',
      value: (given) => 1 - shareOf(given),
      because: 'That is the flash’s share. Daylight has the rest.',
    },
    {
      id: 'stops-as-a-ratio',
      value: (given) => 1 / (1 + evaluateFormula(ambientUnderexposureFormula, given)),
      because: 'That adds the stops to 1. A stop is a factor of two: take two to the power of the stops.',
    },
  ],
  hint: 'Say that the flash gives 1. How much does daylight give beside it?',
  working: [
    { formula: ambientUnderexposureFormula, note: 'Daylight falls short by' },
    { formula: ambientShareFormula, note: 'which of the whole is' },
  ],
});
function shareOf(given: { readonly 'ambient.exposure-time': number; readonly 'shutter.exposure-time': number }) {
  const short = evaluateFormula(ambientUnderexposureFormula, given);
  return evaluateFormula(ambientShareFormula, { 'ambient-underexposure': short });
}

const blackBackground = numberFamily({
  id: 'black-background',
  asks: 'background-underexposure',
  question:
    'A flash is {flash-distance} from the subject, the front of the lens {working-distance}. The background is {background-distance} behind the subject. How many stops less flash does it get than the subject?',
  givens: (draw) => ({
    'flash-distance': draw.pick([80, 100, 120]),
    'working-distance': draw.pick([40, 220]),
    'background-distance': draw.pick([300, 400, 500, 600]),
  }),
  tolerance: aTwelfth,
  mistakes: [
    {
      id: 'no-square',
      value: (given) => evaluateFormula(backgroundUnderexposureFormula, given) / 2,
      because: 'That lets the light go with the distance. It goes with its square: twice as far is two stops.',
    },
    {
      id: 'from-the-subject',
      value: (given) => 2 * Math.log2(given['background-distance'] / given['flash-distance']),
      because: 'That counts the background from the subject. Light spreads from the flash: count both from there.',
    },
    {
      id: 'times-as-far',
      value: (given) => 1 + given['background-distance'] / given['flash-distance'],
      because: 'That is how many times as far it is. Each doubling of the distance is two stops.',
    },
    {
      id: 'from-the-lens',
      value: (given) =>
        evaluateFormula(backgroundUnderexposureFormula, { ...given, 'flash-distance': given['working-distance'] }),
      because: 'That counts from the lens. The light comes from the flash.',
    },
  ],
  hint: 'How far from the flash is the background, and how many times as far as the subject?',
  working: [{ formula: backgroundUnderexposureFormula, note: 'From the flash to each of them:' }],
});

const whatFreezesIt = numberFamily({
  id: 'what-freezes-it',
  asks: 'motion-blur',
  question:
    'At {magnification} an insect moves across the picture at {subject-speed}. The shutter is open for {shutter.exposure-time}, the flash shines for {flash-duration}. How long is the streak in the flash’s part, on the sensor?',
  givens: (draw) => ({
    magnification: draw.pick([0.5, 2, 3]),
    'subject-speed': draw.pick([50, 200, 500]),
    'shutter.exposure-time': draw.pick([1 / 60, 1 / 125, 1 / 200]),
    'flash-duration': draw.pick([1 / 2000, 1 / 4000, 1 / 10_000]),
  }),
  tolerance: { relative: 0.02, because: 'rounding while working it out' },
  mistakes: [
    {
      id: 'time-of-the-shutter',
      value: (given) => given.magnification * given['subject-speed'] * given['shutter.exposure-time'],
      because: 'That is what daylight draws. The flash is over long before the shutter closes.',
    },
    {
      id: 'on-the-subject',
      value: (given) => given['subject-speed'] * given['flash-duration'],
      because: 'That is how far the insect comes. On the sensor it is m times as far.',
    },
    {
      id: 'divided',
      value: (given) => (given['subject-speed'] * given['flash-duration']) / given.magnification,
      because: 'That divides by m. The larger something is on the sensor, the faster it moves there: multiply.',
    },
  ],
  hint: 'Which of the two times is the flash’s own shutter?',
  working: [
    {
      formula: motionBlurOfSubjectFormula,
      note: 'Here the flash duration is the exposure time:',
      values: (known) => ({ 'exposure-time': known['flash-duration'] }),
    },
  ],
});

const tooShort = choiceFamily({
  id: 'too-short-for-the-flash',
  question:
    'In a dark room a flash lights the subject. The sync speed of the camera is {sync-speed}, and you set {exposure-time}. How does the picture compare with one at 1/30 s?',
  givens: (draw) => {
    const sync = draw.pick([1 / 125, 1 / 160, 1 / 200]);
    const isShort = draw.pick(['yes', 'no'] as const);
    const time = draw.pick(
      isShort === 'yes' ? [1 / 320, 1 / 400, 1 / 500, 1 / 1000] : [1 / 50, 1 / 60, 1 / 80, 1 / 100],
    );
    return { 'sync-speed': sync, 'exposure-time': time, isShort };
  },
  options: {
    band: 'It has a dark band along one side',
    darker: 'It is darker all over',
    black: 'It is black: the flash comes too late',
    nothing: 'It looks alike',
  },
  answer: ({ isShort }) => (isShort === 'yes' ? 'band' : 'nothing'),
  mistakes: [
    {
      id: 'as-daylight',
      value: () => 'darker',
      because: 'A shorter time takes light from daylight. The whole flash is over in a moment, and the room is dark.',
    },
    {
      id: 'other-side',
      value: ({ isShort }) => (isShort === 'yes' ? 'nothing' : 'band'),
      because: 'Which of the two times is the longer one? Ask whether the sensor is wholly free when the flash fires.',
    },
    {
      id: 'flash-missed',
      value: () => 'black',
      because:
        'The flash waits for the first curtain: it fires as that one arrives, whatever the time. Some of the sensor is free at that moment, or all of it. Which, at {exposure-time}?',
    },
  ],
  hint: 'Has the second curtain set out before the first one has arrived?',
  working: [
    {
      note: 'At the sync speed of {sync-speed} and at longer times the shutter is wholly open for a moment, and the flash fires then. At shorter times the second curtain is in the way.',
    },
  ],
});

export const families = [
  flashCloseUp,
  howMuchPower,
  howFar,
  heldInTheLight,
  behindTheLens,
  daylightShare,
  blackBackground,
  whatFreezesIt,
  tooShort,
] as const;
