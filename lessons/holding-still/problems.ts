import { exposureTimeForMotionBlurFormula } from '#core/exposure/exposure-time-for-motion-blur.formula.ts';
import { motionBlurOfSubjectFormula } from '#core/exposure/motion-blur-of-subject.formula.ts';
import { motionBlurTogether } from '#core/exposure/motion-blur-together.formula.ts';
import { motionBlurTurningAboutSensor } from '#core/exposure/motion-blur-turning-about-sensor.formula.ts';
import { signalToNoise, signalToNoiseFormula } from '#core/exposure/signal-to-noise.formula.ts';
import { subjectSpeedOfSwingFormula } from '#core/exposure/subject-speed-of-swing.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { degree } from '#core/quantity/units.ts';
import { circlesOfBodies } from '#site/state/body-circle.ts';

const focalLengths = [50, 60, 72, 90, 100];
/** Of which a working finds the streak first: any would do. */
const anyTime = 1 / 125;

/** Of a camera that turns about its sensor in one second, with H and H′ in one place. */
const turningInASecond = (given: {
  readonly 'focal-length': number;
  readonly magnification: number;
  readonly 'shake-rate': number;
}) =>
  motionBlurTurningAboutSensor({
    focalLength: given['focal-length'],
    magnification: given.magnification,
    shakeRate: given['shake-rate'],
    principalSeparation: 0,
    stabilisation: 0,
    exposureTime: 1,
  });

const fine = { relative: 0.02, because: 'the givens have two or three figures' } as const;

const turningStreak = numberFamily({
  id: 'turning-streak',
  asks: 'motion-blur',
  question:
    'By hand, your camera turns by {shake-rate} about its sensor. The focal length in use is {focal-length}, the magnification {magnification}, the exposure time {exposure-time}. H and H′ are in one place. How long is the streak on the sensor?',
  givens: (draw) => ({
    'focal-length': draw.pick(focalLengths),
    // At life size m, m² and 1 look alike, and so would routes that take one for the other.
    magnification: draw.pick([0.5, 1.5, 2]),
    'shake-rate': draw.pick([0.5, 1, 1.5, 2]) * degree,
    'exposure-time': draw.pick([1 / 50, 1 / 100, 1 / 200]),
  }),
  tolerance: fine,
  answer: (given) => turningInASecond(given) * given['exposure-time'],
  mistakes: [
    {
      id: 'far-subject',
      value: (given) => given['focal-length'] * given['shake-rate'] * given['exposure-time'],
      because: 'That is f times the turn, right for a far subject. Close up, multiply by (1 + m)².',
    },
    {
      id: 'each-once',
      value: (given) =>
        given['focal-length'] * (1 + given.magnification) * given['shake-rate'] * given['exposure-time'],
      because:
        'That has 1 + m once. It counts twice: once for the way from sensor to subject, once for what the image adds.',
    },
    {
      id: 'bare-degrees',
      value: (given) => (turningInASecond(given) * given['exposure-time']) / degree,
      because: 'That puts the degrees in as they are. The formula takes radians: divide by 57.3.',
    },
  ],
  hint: 'By what angle does it turn in that time, in radians? And how long is f (1 + m)²?',
  working: [
    {
      values: (known) => ({ 'turned.subject-tilt': known['shake-rate'] * known['exposure-time'] }),
      note: 'In {exposure-time} the camera turns by {turned.subject-tilt}. That divided by 57.3 is the turn in radians.',
    },
    {
      values: (known) => ({
        'lever.focus-distance': known['focal-length'] * (1 + known.magnification) ** 2,
        'motion-blur': turningInASecond(known) * known['exposure-time'],
      }),
      note: 'The streak is f (1 + m)², here {lever.focus-distance}, times the turn: {motion-blur}.',
    },
  ],
});

const slowestStabilised = numberFamily({
  id: 'slowest-with-stabilisation',
  asks: 'slowest.exposure-time',
  question:
    'Only turning counts: {shake-rate} about the sensor, and the stabilisation is good for {stabilisation} at this size too. The focal length in use is {focal-length}, the magnification {magnification}, H and H′ in one place. What is the longest time for a streak of {circle-of-confusion}?',
  givens: (draw) => ({
    'shake-rate': draw.pick([1, 1.5, 2]) * degree,
    stabilisation: draw.pick([2, 3, 4]),
    'focal-length': draw.pick(focalLengths),
    magnification: draw.pick([0.5, 1.5, 2]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
  }),
  tolerance: { relative: 0.03, because: 'shutter times are set in thirds of a stop, 26 per cent apart' },
  mistakes: [
    {
      id: 'rule-of-thumb',
      value: (given) => 1 / given['focal-length'],
      because:
        'That is one over the focal length, a rule for far subjects without stabilisation. It knows neither m nor c.',
    },
    {
      id: 'far-subject',
      value: (given) =>
        (given['circle-of-confusion'] * 2 ** given.stabilisation) / (given['focal-length'] * given['shake-rate']),
      because: 'That leaves the magnification out. The streak of a turn is (1 + m)² times as long as far away.',
    },
    {
      id: 'each-once',
      value: (given) =>
        (given['circle-of-confusion'] * 2 ** given.stabilisation * (1 + given.magnification)) / turningInASecond(given),
      because: 'That has 1 + m once. It counts twice: once for the way to the subject, once for what the image adds.',
    },
    {
      id: 'wrong-way',
      value: (given) => given['circle-of-confusion'] / 2 ** given.stabilisation / turningInASecond(given),
      because: 'That makes the time shorter. Stabilisation shrinks the streak, so the time may be longer: multiply.',
    },
    {
      id: 'stops-as-a-factor',
      value: (given) => (given['circle-of-confusion'] * given.stabilisation) / turningInASecond(given),
      because: 'That multiplies by the number of stops. Each stop doubles the time: raise 2 to that number.',
    },
  ],
  hint: 'How long is the streak of any time, after stabilisation? Streaks grow with the time.',
  working: [
    {
      values: (known) => ({
        'exposure-time': anyTime,
        'motion-blur': (turningInASecond(known) * anyTime) / 2 ** known.stabilisation,
      }),
      note: 'Take any time, say {exposure-time}: the turn would draw f (1 + m)² ω t. Halved as often as there are stops, that leaves {motion-blur}.',
    },
    { formula: exposureTimeForMotionBlurFormula, note: 'Streaks grow with the time, so the longest time is' },
  ],
});

const walking = numberFamily({
  id: 'walking-subject',
  asks: 'slowest.exposure-time',
  question:
    'A beetle walks across the picture at {subject-speed}, magnification {magnification}. Your lens is stabilised by {stabilisation}. What is the longest time for which its streak is no longer than {circle-of-confusion}?',
  givens: (draw) => ({
    'subject-speed': draw.pick([3, 5, 8, 12]),
    magnification: draw.pick([0.5, 1.5, 3]),
    stabilisation: draw.pick([3, 4, 5]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
  }),
  tolerance: fine,
  mistakes: [
    {
      id: 'on-the-subject',
      value: (given) => given['circle-of-confusion'] / given['subject-speed'],
      because: 'That lets it walk by c itself. On the sensor its path is m times as long: divide by m too.',
    },
    {
      id: 'stabilised',
      value: (given) =>
        (given['circle-of-confusion'] * 2 ** given.stabilisation) / (given.magnification * given['subject-speed']),
      because: 'That counts the stabilisation. It moves against your hands and knows nothing of the beetle.',
    },
    {
      id: 'upside-down',
      value: (given) => (given['circle-of-confusion'] * given.magnification) / given['subject-speed'],
      because: 'That multiplies by m. The larger it is on the sensor, the faster it crosses the pixels: divide.',
    },
  ],
  hint: 'How fast does its image move over the sensor?',
  working: [
    {
      formula: motionBlurOfSubjectFormula,
      values: () => ({ 'exposure-time': anyTime }),
      note: 'Take any time, say {exposure-time}. In that its image would cover',
    },
    { formula: exposureTimeForMotionBlurFormula, note: 'The longest time is as much shorter as c is:' },
  ],
});

const twoCauses = numberFamily({
  id: 'two-causes',
  asks: 'motion-blur',
  question:
    'The turning of your camera draws a streak of {turning.motion-blur}, the walk of the subject one of {subject.motion-blur}. They have nothing to do with each other. How long is the streak of both on average?',
  givens: (draw) => {
    const long = draw.pick([24, 30, 36, 40, 50]);
    return {
      'turning.motion-blur': long / 1000,
      'subject.motion-blur': Math.round(long * draw.pick([0.5, 0.6, 0.75, 0.9])) / 1000,
    };
  },
  tolerance: fine,
  answer: (given) =>
    motionBlurTogether({
      turningMotionBlur: given['turning.motion-blur'],
      subjectMotionBlur: given['subject.motion-blur'],
      sidewaysMotionBlur: 0,
    }),
  mistakes: [
    {
      id: 'sum',
      value: (given) => given['turning.motion-blur'] + given['subject.motion-blur'],
      because: 'That is the worst case, both in one direction. On average they point anywhere: add the squares.',
    },
    {
      id: 'larger-alone',
      value: (given) => Math.max(given['turning.motion-blur'], given['subject.motion-blur']),
      because: 'That is the longer one alone. The other is more than a third of it and still counts.',
    },
    {
      id: 'mean',
      value: (given) => (given['turning.motion-blur'] + given['subject.motion-blur']) / 2,
      because: 'That is the mean, shorter than one of them alone. A second movement makes nothing sharper.',
    },
  ],
  hint: 'What is the long side of a right-angled triangle with these two sides?',
  working: [
    {
      values: (known) => ({
        'motion-blur': Math.hypot(
          known['turning.motion-blur' as 'motion-blur'],
          known['subject.motion-blur' as 'motion-blur'],
        ),
      }),
      note: 'The root of the sum of the squares of {turning.motion-blur} and {subject.motion-blur} is {motion-blur}.',
    },
  ],
});

const flower = numberFamily({
  id: 'flower-in-the-wind',
  asks: 'slowest.exposure-time',
  question:
    'A flower swings by {swing-amplitude} to each side, once to and fro in {swing-period}. You photograph it at {magnification}, as it passes the middle. What is the longest time for a streak of {circle-of-confusion}?',
  givens: (draw) => ({
    'swing-amplitude': draw.pick([2, 3, 5, 8]),
    'swing-period': draw.pick([0.5, 0.8, 1, 1.5]),
    magnification: draw.pick([0.3, 0.5, 0.75, 1.5]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
  }),
  tolerance: { relative: 0.03, because: 'nobody times a swing or measures its width more closely' },
  mistakes: [
    {
      id: 'mean-speed',
      value: (given) =>
        (given['circle-of-confusion'] * given['swing-period']) / (4 * given['swing-amplitude'] * given.magnification),
      because: 'That goes by its mean speed. In the middle it is faster than on average: by π divided by 2.',
    },
    {
      id: 'whole-swing',
      value: (given) =>
        (given['circle-of-confusion'] * given['swing-period']) /
        (Math.PI * given['swing-amplitude'] * given.magnification),
      because: 'That takes {swing-amplitude} for the whole swing from side to side. It is only half of that.',
    },
    {
      id: 'no-magnification',
      value: (given) =>
        (given['circle-of-confusion'] * given['swing-period']) / (2 * Math.PI * given['swing-amplitude']),
      because: 'That leaves out the magnification. On the sensor its path is {magnification} of what it is.',
    },
  ],
  hint: 'How fast is it in the middle? And how fast is its image?',
  working: [
    { formula: subjectSpeedOfSwingFormula, note: 'In the middle of its swing it moves at' },
    {
      formula: motionBlurOfSubjectFormula,
      values: () => ({ 'exposure-time': anyTime }),
      note: 'Take any time, say {exposure-time}. In that its image would cover',
    },
    { formula: exposureTimeForMotionBlurFormula, note: 'The longest time is as much shorter as c is:' },
  ],
});

const priceInIso = numberFamily({
  id: 'price-in-iso',
  asks: 'signal-to-noise',
  question:
    'At ISO {first.iso} a mid-tone frees {first.electrons} electrons in a pixel. Counting them adds a read noise of {read-noise}. You need a shorter time, and ISO {iso}. What is the signal to noise then?',
  givens: (draw) => {
    const first = draw.pick([200, 400]);
    return {
      'first.iso': first,
      'first.electrons': draw.pick([400, 600, 800]),
      'read-noise': draw.pick([3, 4, 5]),
      iso: first * draw.pick([8, 16]),
    };
  },
  tolerance: { relative: 0.015, because: 'one more figure than the givens have' },
  mistakes: [
    {
      id: 'noise-stays',
      value: (given) => (firstRatio(given) * given['first.iso']) / given.iso,
      because: 'That takes the noise for what it was. With less light its random part is smaller too: by the root.',
    },
    {
      id: 'light-alone',
      value: (given) => Math.sqrt(fewer(given)),
      because: 'That is the root of the electrons, as if counting them added nothing. Add the square of {read-noise}.',
    },
    {
      id: 'noises-added',
      value: (given) => fewer(given) / (Math.sqrt(fewer(given)) + given['read-noise']),
      because:
        'That adds the two noises as they are. Neither knows of the other: add their squares, then take the root.',
    },
    {
      id: 'unchanged',
      value: (given) => firstRatio(given),
      because: 'That is what it was. A higher ISO makes no light: there are fewer electrons now.',
    },
  ],
  hint: 'How many electrons are left? Then divide them by their noise.',
  working: [
    {
      values: (known) => ({
        electrons: fewer(known as unknown as Shorter),
      }),
      note: 'The light, and with it the electrons, goes as one over the ISO. That leaves {electrons}.',
    },
    {
      formula: signalToNoiseFormula,
      note: 'Their noise is the root of their number and the square of the read noise together:',
    },
  ],
});

interface Shorter {
  readonly 'first.iso': number;
  readonly 'first.electrons': number;
  readonly 'read-noise': number;
  readonly iso: number;
}
const fewer = (given: Shorter) => (given['first.electrons'] * given['first.iso']) / given.iso;
const firstRatio = (given: Shorter) =>
  signalToNoise({ electrons: given['first.electrons'], readNoise: given['read-noise'] });

const cases = [
  ['A spider runs across a leaf. Your camera is on a tripod.', 'short'],
  ['A beetle walks, the sun is out, and your lens is stabilised.', 'short'],
  ['A bee hovers before a flower, and its wings are a blur.', 'short'],
  ['A stamp on the table at dusk, on which a flash would glare. Only your hands move.', 'tripod'],
  ['A coin in a dim room without flash, hand-held at life size: drift and turning alike smear it.', 'tripod'],
  ['A far hill with a long lens from a wall where no tripod may stand. Only turning smears it.', 'stabilise'],
  ['A distant tower on a calm evening, hand-held at 200 mm. Tripods are not allowed.', 'stabilise'],
  ['A daisy nods in a slow breeze; the light gives no shorter time, and flash would spoil it.', 'wait'],
  ['A spider’s web swings to and fro at dusk, without flash; the camera is on a tripod.', 'wait'],
] as const;

const whatHoldsIt = choiceFamily({
  id: 'what-holds-it',
  question: '{scene} What helps most?',
  options: {
    short: 'a shorter time, or a flash',
    tripod: 'a tripod',
    stabilise: 'stabilisation',
    wait: 'to wait for the end of the swing',
  },
  givens: (draw) => {
    const [scene, truth] = draw.pick(cases);
    return { scene, truth };
  },
  answer: ({ truth }) => truth,
  mistakes: [
    {
      id: 'camera-held-subject-moves',
      value: ({ truth }) => (truth === 'short' || truth === 'wait' ? 'tripod' : undefined),
      because: 'That keeps the camera still. Is it the camera that moves here?',
    },
    {
      id: 'tripod-out-of-place',
      value: ({ truth }) => (truth === 'stabilise' ? 'tripod' : undefined),
      because:
        'It would hold the camera, if it could be used where you are. What is left, and is it enough for what moves?',
    },
    {
      id: 'turning-only',
      value: ({ truth }) => (truth === 'stabilise' ? undefined : 'stabilise'),
      because: 'That works against one kind of movement alone, and here another one matters. Which one?',
    },
    {
      id: 'light-to-spare',
      value: ({ truth }) => (truth === 'short' ? undefined : 'short'),
      because:
        'That holds whatever moves, and takes light for it. Ask first what moves here, the camera or the subject; then whether there is light to spare, or something that costs none.',
    },
    {
      id: 'nothing-swings',
      value: ({ truth }) => (truth === 'wait' ? undefined : 'wait'),
      because: 'A thing that swings is still for a moment wherever it turns back. Does what moves here turn back?',
    },
  ],
  hint: 'Name what moves. Then ask what works on that.',
  working: [
    {
      note: 'A tripod stops all movement of the camera. Stabilisation stops its turning alone. Against what the subject does only a short time or a flash helps, or the end of a swing, where it stands still for a moment.',
    },
  ],
});

export const families = [
  turningStreak,
  slowestStabilised,
  walking,
  twoCauses,
  flower,
  priceInIso,
  whatHoldsIt,
] as const;
