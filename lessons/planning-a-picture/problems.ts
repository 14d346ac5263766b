import { depthOfFieldCloseUp, depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { defocusBlurOfEndsFormula } from '#core/depth/defocus-blur-of-ends.formula.ts';
import { subjectDepthInOneFrameFormula } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { correctedExposureTimeFormula } from '#core/exposure/corrected-exposure-time.formula.ts';
import { exposureTimeFromLuminanceFormula } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { flashPowerForFNumber, flashPowerForFNumberFormula } from '#core/exposure/flash-power-for-f-number.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { extensionForMagnificationFormula } from '#core/gaussian/extension-for-magnification.formula.ts';
import { magnificationFromFrameFillFormula } from '#core/gaussian/magnification-from-frame-fill.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { depthOfStackFormula } from '#core/stack/depth-of-stack.formula.ts';
import { frameCount, frameCountFormula } from '#core/stack/frame-count.formula.ts';
import { framesBeforeDeadline, framesBeforeDeadlineFormula } from '#core/stack/frames-before-deadline.formula.ts';
import { oneFrameOrStack } from '#core/stack/one-frame-or-stack.ts';
import { exposureTimeFromLuminance } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { shutterOrFlash } from '#core/exposure/shutter-or-flash.ts';
import { twinArm } from '#site/state/crate-light.ts';

const ringForThis = numberFamily({
  id: 'ring-for-this-picture',
  asks: 'extension',
  question:
    'A thing {subject-width} wide is to take {frame-fill} of the width of a sensor of {sensor-width}. Your lens of {focal-length} gives {focus-magnification} by its own focusing. How much extension does it need?',
  givens: (draw) => ({
    'frame-fill': draw.pick([0.5, 0.6, 0.7]),
    'sensor-width': draw.pick([36, 23.5]),
    'subject-width': draw.pick([12, 15, 18]),
    'focal-length': draw.pick([50, 60]),
    'focus-magnification': draw.pick([0.1, 0.15]),
  }),
  tolerance: { relative: 0.02, because: 'rounding while working it out' },
  mistakes: [
    {
      id: 'whole-picture',
      value: (given) =>
        given['focal-length'] * (given['sensor-width'] / given['subject-width'] - given['focus-magnification']),
      because: 'That lets it fill the whole width. It is to take {frame-fill} of it only.',
    },
    {
      id: 'own-focusing-forgotten',
      value: (given) => (given['focal-length'] * given['frame-fill'] * given['sensor-width']) / given['subject-width'],
      because: 'That makes all of the magnification by extension. The lens gives a part of it by itself: take it off.',
    },
    {
      id: 'upside-down',
      value: (given) =>
        given['focal-length'] *
        (given['subject-width'] / (given['frame-fill'] * given['sensor-width']) + given['focus-magnification']),
      because:
        'That divides the thing by its image, and adds what the lens gives. Magnification is image over thing, and the lens’s own is taken off.',
    },
  ],
  hint: 'How wide is its image to be on the sensor? What magnification is that, and what of it is still missing?',
  working: [
    { formula: magnificationFromFrameFillFormula, note: 'On the sensor it must be so large:' },
    {
      formula: extensionForMagnificationFormula,
      note: 'and what the lens does not give by itself, the extension does:',
    },
  ],
});

interface Stop {
  readonly magnification: number;
  readonly 'f-number': number;
  readonly 'pupil-magnification': number;
}
const worksAt = (given: Stop) => evaluateFormula(effectiveFNumberFormula, given);

const framesForThis = numberFamily({
  id: 'frames-for-this-one',
  asks: 'frame-count',
  question:
    'A thing {subject-width} wide and {subject-depth} deep is to take {frame-fill} of the width of a sensor of {sensor-width}. The lens, of pupil magnification {pupil-magnification}, is set to {f-number}. A blur of {circle-of-confusion} is allowed, and neighbouring frames share {overlap} of their depth. How many frames does it need?',
  givens: (draw) => ({
    'frame-fill': draw.pick([0.5, 0.6]),
    'sensor-width': 36,
    'subject-width': draw.pick([6, 8, 9]),
    'subject-depth': draw.pick([3, 4]),
    'f-number': draw.pick([5.6, 8]),
    'pupil-magnification': 0.85,
    'circle-of-confusion': 0.02,
    overlap: draw.pick([0.25, 0.3]),
  }),
  tolerance: { absolute: 0.4, because: 'frames are counted whole' },
  mistakes: [
    {
      id: 'marked-f-number',
      value: (given) => {
        const magnification = evaluateFormula(magnificationFromFrameFillFormula, given);
        return framesOf(given, magnification, given['f-number']);
      },
      because:
        'That takes the marked f-number. So close the cone is much narrower, and each frame deeper: take N (1 + m/P).',
    },
    {
      id: 'whole-picture',
      value: (given) => {
        const magnification = given['sensor-width'] / given['subject-width'];
        return framesOf(given, magnification, worksAt({ ...given, magnification }));
      },
      because: 'That lets it fill the whole width. It takes {frame-fill} of it, and is less magnified.',
    },
    {
      id: 'no-overlap',
      value: (given) => {
        const magnification = evaluateFormula(magnificationFromFrameFillFormula, given);
        return framesOf({ ...given, overlap: 0 }, magnification, worksAt({ ...given, magnification }));
      },
      because: 'That lays frames end to end. They share {overlap}, so that each adds less than its depth.',
    },
  ],
  hint: 'First the magnification, then the effective f-number, then how deep one frame is. What does each further frame add?',
  working: [
    { formula: magnificationFromFrameFillFormula, note: 'On the sensor it is so large:' },
    { formula: effectiveFNumberFormula, note: 'There the lens works at' },
    { formula: depthOfFieldCloseUpFormula, note: 'so that one frame holds' },
    {
      formula: frameCountFormula,
      values: (known) => ({ 'depth-of-field': known['depth-of-field-close-up'] }),
      note: 'and frames to cover all of it:',
    },
  ],
});

function framesOf(
  given: { readonly 'circle-of-confusion': number; readonly 'subject-depth': number; readonly overlap: number },
  magnification: number,
  effectiveFNumber: number,
): number {
  const circleOfConfusion = given['circle-of-confusion'];
  const depthOfField = depthOfFieldCloseUp({ circleOfConfusion, magnification, effectiveFNumber });
  return frameCount({ depthOfField, subjectDepth: given['subject-depth'], overlap: given.overlap });
}

/** The others of a choice, in their order. */
const otherThan = <Option extends string>(options: readonly Option[], truth: Option, at: number) =>
  options.filter((option) => option !== truth)[at]!;

/** A frame of a stack and the wait after it, s. */
const pace = { exposureTime: 0.005, settlingTime: 1, recyclingTime: 0.5 };
const ways = ['one-frame', 'close-further', 'stack', 'too-slow'] as const;
/** Magnification, f-number, depth and how long it holds still: each way thrice and once more. */
const depths = [
  [0.5, 11, [1.9, 2, 2.2], 5],
  [0.25, 11, [7, 7.5], 60],
  [1, 11, [0.58, 0.6, 0.62], 10],
  [0.5, 5.6, [1.8, 2, 2.4], 60],
  [0.25, 5.6, [7, 8, 9], 5],
  [1, 5.6, [0.58, 0.6, 0.64], 30],
  [2, 8, [2, 2.2, 2.5], 180],
  [1, 8, [5, 5.5, 6], 120],
  [3, 5.6, [1.5, 1.8], 300],
  [2, 8, [2, 2.2, 2.5], 5],
  [1, 8, [5, 5.5, 6], 4],
  [3, 5.6, [1.5, 1.8], 8],
] as const;

interface Deep {
  readonly magnification: number;
  readonly 'f-number': number;
  readonly 'pupil-magnification': number;
  readonly 'circle-of-confusion': number;
  readonly wavelength: number;
  readonly 'subject-depth': number;
  readonly 'time-limit': number;
}

function wayOf(given: Deep): (typeof ways)[number] {
  const seen = {
    circleOfConfusion: given['circle-of-confusion'],
    wavelength: given.wavelength,
    magnification: given.magnification,
    effectiveFNumber: worksAt(given),
    subjectDepth: given['subject-depth'],
  };
  const way = oneFrameOrStack({
    ...seen,
    frameCount: frameCount({ ...seen, depthOfField: depthOfFieldCloseUp(seen), overlap: 0.3 }),
    inTimeFrameCount: framesBeforeDeadline({ ...pace, timeLimit: given['time-limit'] }),
  });
  if (way === 'open-up') throw new Error('none of these is closed too far');
  return way;
}

const oneOrStack = choiceFamily({
  id: 'one-frame-or-a-stack',
  question:
    'At {magnification} and {f-number} you want {subject-depth} of depth sharp. The pupils are equally wide (P = 1), a blur of {circle-of-confusion} is allowed, and the light has a wavelength of {wavelength}. It holds still for {time-limit}. Frames of a stack would share three tenths of their depth and come one a second. How do you take it?',
  givens: (draw) => {
    const [magnification, fNumber, deep, limit] = draw.pick(depths);
    return {
      magnification,
      'f-number': fNumber,
      'pupil-magnification': 1,
      'circle-of-confusion': 0.02,
      wavelength: 0.00055,
      'subject-depth': draw.pick<number>(deep),
      'time-limit': limit,
    };
  },
  options: {
    'one-frame': 'One frame at this mark',
    'close-further': 'One frame, the opening closed further',
    stack: 'Many frames',
    'too-slow': 'Not so: there is no time for the frames; smaller on the sensor',
  },
  answer: wayOf,
  mistakes: [
    {
      id: 'm-once',
      value: (given) => otherThan(ways, wayOf(given), 0),
      because:
        'One frame holds at most c²/(λ m²). What is less deep may still be blurred: add the squares of m² Z over twice the effective f-number, and of λ times it. In both, the magnification counts twice.',
    },
    {
      id: 'marked-f-number',
      value: (given) => otherThan(ways, wayOf(given), 1),
      because: 'Is that the effective f-number, N (1 + m)? The marked one makes the blur of the ends too wide.',
    },
    {
      id: 'deadline',
      value: (given) => otherThan(ways, wayOf(given), 2),
      because: 'Ask in order, least effort first. Only where none serves count seconds, against how long it holds.',
    },
  ],
  hint: 'How deep can one frame be at most? If that is enough, do both blurs together keep to the circle of confusion as it is set? If not, is there time?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The lens works at' },
    { formula: defocusBlurOfEndsFormula, note: 'so that the ends of the depth are blurred by' },
    {
      values: (known) => ({
        'allowed.defocus-blur': Math.sqrt(
          known['circle-of-confusion'] ** 2 - (known.wavelength * known['effective-f-number']) ** 2,
        ),
      }),
      note: 'Diffraction takes λ times the effective f-number. Of {circle-of-confusion} it leaves, by squares, {allowed.defocus-blur}. Are the ends blurred no more? Then one frame at this mark.',
    },
    {
      formula: subjectDepthInOneFrameFormula,
      note: 'If they are, close further, unless the subject is deeper than any opening holds. Then it takes many frames, a second each, if it holds still for so long.',
    },
  ],
});

const lightWays = ['daylight', 'flash', 'nearer', 'iso'] as const;
/** Effective f-number, luminance, ISO, magnification, speed, distance of the flash. */
const lightTasks = [
  [12, 4096, 400, 0.5, [5, 6], 200],
  [18, 4096, 400, 0.5, [4, 5], 300],
  [24, 512, 200, 1, [0.1, 0.15], 200],
  [32, 512, 200, 2, [5, 8], 100],
  [22, 64, 400, 1, [20, 30], 200],
  [28, 512, 100, 2, [5, 8], 150],
  [45, 512, 100, 2, [5, 8], 400],
  [32, 64, 100, 1, [10, 20], 600],
  [24, 64, 100, 1, [10, 20], 800],
  [64, 512, 100, 3, [5, 8], 600],
  [45, 64, 100, 2, [5, 8], 800],
  [45, 8, 200, 1, [10, 20], 1500],
] as const;

interface Lit {
  readonly 'effective-f-number': number;
  readonly luminance: number;
  readonly iso: number;
  readonly magnification: number;
  readonly 'subject-speed': number;
  readonly 'flash-distance': number;
  readonly 'guide-number': number;
  readonly 'circle-of-confusion': number;
}

function lightOf(given: Lit): (typeof lightWays)[number] {
  const cone = { effectiveFNumber: given['effective-f-number'], iso: given.iso };
  const from = (flashDistance: number) =>
    shutterOrFlash({
      ambientExposureTime: exposureTimeFromLuminance({
        ...cone,
        luminance: given.luminance,
        reflectedLightConstant: 12.5,
      }),
      slowestExposureTime: given['circle-of-confusion'] / (given.magnification * given['subject-speed']),
      neededFlashPower: flashPowerForFNumber({ ...cone, flashDistance, guideNumber: given['guide-number'] }),
    });
  const here = from(given['flash-distance']);
  if (here !== 'higher-iso') return here === 'ambient' ? 'daylight' : 'flash';
  return from(given['flash-distance'] / 2) === 'flash' ? 'nearer' : 'iso';
}

const shutterOrFlashFamily = choiceFamily({
  id: 'shutter-or-flash',
  question:
    'On a tripod, at {magnification}, a subject moves across the picture at {subject-speed}. The lens works at {effective-f-number}, the camera is set to ISO {iso}, and a mid-tone shines with {luminance} (K = 12.5). A streak of {circle-of-confusion} is allowed. Your flash, guide number {guide-number}, is {flash-distance} away. What lights the picture?',
  givens: (draw) => {
    const [cone, luminance, iso, magnification, speeds, distance] = draw.pick(lightTasks);
    return {
      'effective-f-number': cone,
      luminance,
      iso,
      magnification,
      'subject-speed': draw.pick<number>(speeds),
      'flash-distance': distance,
      'guide-number': twinArm['guide-number'],
      'circle-of-confusion': 0.02,
    };
  },
  options: {
    daylight: 'Daylight alone',
    flash: 'The flash, where it is',
    nearer: 'The flash, from half as far',
    iso: 'Neither, unless the ISO goes up',
  },
  answer: lightOf,
  mistakes: [
    {
      id: 'no-magnification',
      value: (given) => otherThan(lightWays, lightOf(given), 0),
      because:
        'How long may the exposure be? On the sensor the subject moves m times as fast: c/(m v). Compare that with what the meter asks for.',
    },
    {
      id: 'held-still',
      value: (given) => otherThan(lightWays, lightOf(given), 1),
      because: 'A tripod holds the camera, not the subject. And a power above 1 is more than there is.',
    },
    {
      id: 'not-squared',
      value: (given) => otherThan(lightWays, lightOf(given), 2),
      because: 'Power goes with the square of f-number times distance. It falls quickly as the flash comes closer.',
    },
  ],
  hint: 'Which time may it take at most, and which one does the meter ask for? If that is too long, which power would be needed?',
  working: [
    {
      formula: exposureTimeFromLuminanceFormula,
      values: () => ({ 'reflected-light-constant': 12.5 }),
      note: 'The meter asks for the time below. It may be c/(m v) at most.',
    },
    {
      formula: flashPowerForFNumberFormula,
      note: 'A flash where it is would need the share of its power below; from half as far a quarter of that. Above 1 it has not got it.',
    },
  ],
});

const deepInTime = numberFamily({
  id: 'how-deep-in-time',
  asks: 'subject-depth',
  question:
    'One frame is sharp over {depth-of-field}, and neighbouring frames share {overlap} of it. A frame takes {exposure-time}, then you wait {settling-time} for the next. After {time-limit} the crystal has melted. How deep is it sharp by then?',
  givens: (draw) => ({
    'depth-of-field': draw.pick([0.15, 0.2, 0.25]),
    overlap: draw.pick([0.2, 0.25, 0.3]),
    'exposure-time': draw.pick([0.5, 1]),
    'settling-time': draw.pick([1.5, 2]),
    'recycling-time': 0.1,
    'time-limit': draw.pick([20, 25, 30]),
  }),
  tolerance: { relative: 0.015, because: 'rounding while working it out' },
  mistakes: [
    {
      id: 'no-overlap',
      value: (given) => inTime(given) * given['depth-of-field'],
      because: 'That lays frames end to end. They share {overlap}: each further one adds less.',
    },
    {
      id: 'first-frame-cut',
      value: (given) => inTime(given) * given['depth-of-field'] * (1 - given.overlap),
      because: 'That takes the overlap off every frame. The first one is sharp over its whole depth.',
    },
    {
      id: 'waits-forgotten',
      value: (given) => stackedDepth(given, Math.floor(given['time-limit'] / given['exposure-time'])),
      because: 'That counts exposures alone. Between two frames you wait, and most of the time goes there.',
    },
  ],
  hint: 'How many frames are finished in time, waits included? What does the first one hold, and what does each of the others add?',
  working: [
    { formula: framesBeforeDeadlineFormula, note: 'Finished in time, after the last one there is no wait:' },
    { formula: depthOfStackFormula, note: 'The first holds its depth, the others a step each:' },
  ],
});

interface Paced {
  readonly 'exposure-time': number;
  readonly 'settling-time': number;
  readonly 'recycling-time': number;
  readonly 'time-limit': number;
}
const inTime = (given: Paced) => evaluateFormula(framesBeforeDeadlineFormula, given);
const stackedDepth = (given: { readonly 'depth-of-field': number; readonly overlap: number }, count: number) =>
  evaluateFormula(depthOfStackFormula, { ...given, 'frame-count': count });

const timeForTheLoss = numberFamily({
  id: 'time-for-the-loss',
  asks: 'corrected.exposure-time',
  question:
    'Your plan says {magnification}, {f-number}, and a lens of pupil magnification {pupil-magnification}. A hand meter, held where the subject is, says {exposure-time} for that mark. Which time do you write on the card?',
  givens: (draw) => ({
    magnification: draw.pick([1.5, 2, 3]),
    'f-number': draw.pick([5.6, 8]),
    'pupil-magnification': draw.pick([0.7, 1.4]),
    'exposure-time': draw.pick([1 / 15, 1 / 30, 1 / 60]),
  }),
  tolerance: { relative: 0.03, because: 'marks are rounded' },
  mistakes: [
    {
      id: 'not-squared',
      value: (given) => given['exposure-time'] * (1 + given.magnification / given['pupil-magnification']),
      because: 'That counts the factor once. Light goes with the square of the f-number.',
    },
    {
      id: 'as-read',
      value: (given) => given['exposure-time'],
      because: 'That is what the meter says. It has not seen how narrow the cone is so close.',
    },
    {
      id: 'pupils-alike',
      value: (given) => given['exposure-time'] * (1 + given.magnification) ** 2,
      because: 'That takes both pupils as equally wide. Here P is {pupil-magnification}: divide m by it.',
    },
  ],
  hint: 'As what f-number does the lens work? And how does light go with f-numbers?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The lens works at' },
    { formula: correctedExposureTimeFormula, note: 'and the time grows with the square of the two numbers’ ratio:' },
  ],
});

const earlier = ['size', 'lens', 'mark', 'flash'] as const;
type Earlier = (typeof earlier)[number];
const mm = (length: number) => printQuantity('working-distance', length);
/** What failed, in words, and which answer to change. */
const failures: readonly (readonly [Earlier, string])[] = [
  ...[20, 24].map(
    (room) => ['lens', `The rim would be ${mm(room)} from a fly that lets nothing come nearer than 40 mm.`] as const,
  ),
  ['lens', 'The rim would be 15 mm from the leaf, and the flash arms need 30 mm.'],
  ...[16, 20].map(
    (count) => ['size', `The stack needs 45 frames, and ${count} get done before the snail turns round.`] as const,
  ),
  ['size', 'The stack needs 60 frames, and 25 get done before the crystal has melted.'],
  ...[32, 36].map(
    (cone) =>
      ['mark', `The lens would work at f/${cone}, and one frame holds most at c/(√2 λ), which is f/26.`] as const,
  ),
  [
    'mark',
    'By its rays alone one frame would hold all of the depth, but the lens would work at f/64, and the detail that you want allows f/26.',
  ],
  ...[2, 3].map(
    (power) =>
      [
        'flash',
        `At the highest ISO that you like, the flash would have to give ${power} times its full power from 300 mm.`,
      ] as const,
  ),
  ['flash', 'The shadow has a hard edge: from the subject the light looks 5° wide.'],
];

const whatFirst = choiceFamily({
  id: 'what-first',
  question:
    'You go through the eight questions, and one answer fails. {failed} Everything else is as you want it. Which earlier answer do you change first?',
  givens: (draw) => {
    const [truth, failed] = draw.pick(failures);
    return { truth: truth as string, failed };
  },
  options: {
    size: 'Its share of the picture',
    lens: 'The chain, for one that stays farther off',
    mark: 'How far the lens is closed',
    flash: 'How near the light is',
  },
  answer: ({ truth }) => truth as Earlier,
  mistakes: [
    {
      id: 'everything-again',
      value: ({ truth }) => otherThan(earlier, truth as Earlier, 0),
      because: 'Would that change the number that failed? Ask what it is made of.',
    },
    {
      id: 'another-number',
      value: ({ truth }) => otherThan(earlier, truth as Earlier, 1),
      because: 'That changes other numbers more than this one. Which one is at fault is in the sentence.',
    },
    {
      id: 'costly',
      value: ({ truth }) => otherThan(earlier, truth as Earlier, 2),
      because: 'Everything else is as you want it. Change what leaves the rest alone, or most of it.',
    },
  ],
  hint: 'From which decision does the failing number follow most directly?',
  working: [
    {
      note: 'Room comes from the chain. Frames in time come from the depth of one frame, which goes with one over m squared, so from the size. Detail is lost by closing too far. Power and softness go with how near the light is.',
    },
  ],
});

export const families = [
  ringForThis,
  framesForThis,
  oneOrStack,
  shutterOrFlashFamily,
  deepInTime,
  timeForTheLoss,
  whatFirst,
] as const;
