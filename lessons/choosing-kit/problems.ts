import { subjectDepthInOneFrameFormula } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { stopsInHandFormula } from '#core/exposure/stops-in-hand.formula.ts';
import { extensionForMagnificationFormula } from '#core/gaussian/extension-for-magnification.formula.ts';
import { magnificationFromFieldFormula } from '#core/gaussian/magnification-from-field.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { closeUpPowerForMagnificationFormula } from '#core/rig/close-up-power-for-magnification.formula.ts';
import { magnificationOfReversedLensFormula } from '#core/rig/magnification-of-reversed-lens.formula.ts';
import { circlesOfBodies } from '#site/state/body-circle.ts';
import { crateRegister } from '#site/state/lens-marks.ts';

/** What three rings of 12, 24 and 36 mm can be put together to. */
const sums = [12, 24, 36, 48, 60, 72];
const least = (length: number) => sums.find((sum) => sum >= length) ?? NaN;

const shortestRings = numberFamily({
  id: 'shortest-rings',
  asks: 'rings.extension',
  question:
    '{A focal-length} lens gives {focus-magnification} by itself at its closest. You have rings of 12, 24 and 36 mm, and want at least {magnification}. How long are the shortest rings that reach it, all together?',
  givens: (draw) => {
    const [focalLength, own, sizes] = draw.pick([
      [50, 0.15, [0.5, 0.6, 0.8]],
      [55, 0.3, [0.8, 0.9, 1.1]],
      [60, 0.2, [0.5, 0.7, 0.9]],
      [35, 0.2, [0.8, 0.9]],
    ] as const);
    return { 'focal-length': focalLength, 'focus-magnification': own, magnification: draw.pick<number>(sizes) };
  },
  tolerance: { absolute: 0.5, because: 'rings come in whole millimetres' },
  answer: (given) => least(evaluateFormula(extensionForMagnificationFormula, given)),
  mistakes: [
    {
      id: 'own-forgotten',
      value: (given) => least(given['focal-length'] * given.magnification),
      because:
        'That has the rings give all of {magnification}. The lens gives {focus-magnification} by itself: the rings need to add the rest only.',
    },
    {
      id: 'no-such-ring',
      value: (given) => evaluateFormula(extensionForMagnificationFormula, given),
      because: 'So much extension is needed. No rings of yours are just so long: take the next longer sum.',
    },
    {
      id: 'shorter',
      value: (given) => least(evaluateFormula(extensionForMagnificationFormula, given)) - 12,
      because:
        'That is the next shorter sum. It does not quite reach {magnification}; a little too much is mended by focusing farther away.',
    },
  ],
  hint: 'How much does the lens lack? How many millimetres is that, and which sum of rings is at least as long?',
  working: [
    {
      formula: extensionForMagnificationFormula,
      note: 'The rings have to add what the lens lacks:',
    },
    {
      values: (known) => ({ 'rings.extension': least(known.extension) }),
      note: 'The sums of the rings are 12, 24, 36, 48, 60 and 72 mm. The first that is long enough is {rings.extension}.',
    },
  ],
});

const whichCloseUpLens = numberFamily({
  id: 'which-close-up-lens',
  asks: 'close-up-power',
  question:
    'A subject is {subject-width} wide and should fill the frame of a sensor {sensor-width} wide. Your lens has {focal-length} and stays at infinity. Which power must the close-up lens have?',
  givens: (draw) => ({
    'subject-width': draw.pick([60, 75, 90, 120]),
    'sensor-width': draw.pick([36, 23.5]),
    'focal-length': draw.pick([85, 135, 180]),
  }),
  tolerance: { relative: 0.03, because: 'powers of close-up lenses are rounded by a few per cent' },
  mistakes: [
    {
      id: 'own-power',
      value: (given) => 1000 / given['focal-length'],
      because: 'That is the power of your lens itself. Multiply by the magnification that the subject asks for.',
    },
    {
      id: 'upside-down',
      value: (given) => (1000 * given['subject-width']) / (given['sensor-width'] * given['focal-length']),
      because: 'That divides the subject by the sensor. The magnification is the sensor’s width over the subject’s.',
    },
    {
      id: 'as-rings',
      value: (given) => {
        const m = given['sensor-width'] / given['subject-width'];
        return ((1000 / given['focal-length']) * m) / (1 + m);
      },
      because:
        'That divides by 1 + m, as for a lens that moves away from the sensor. Yours stays at infinity: the power is 1000 m over the focal length.',
    },
  ],
  hint: 'Which magnification fills the frame? And which focal length of the close-up lens gives it?',
  working: [
    {
      formula: magnificationFromFieldFormula,
      values: (known) => ({ 'field-width': known['subject-width'] }),
      note: 'The subject is to be as wide as the field:',
    },
    { formula: closeUpPowerForMagnificationFormula, note: 'The close-up lens that gives it:' },
  ],
});

const turnedLens = numberFamily({
  id: 'what-a-turned-lens-gives',
  asks: 'magnification',
  question:
    'You think of buying a reversing ring {extension} long for your {focal-length} lens. The camera’s register distance is {register-distance}, and the rim of the lens is {front-principal-depth} from H. What would it give?',
  givens: (draw) => ({
    extension: draw.pick([3, 4, 6]),
    'focal-length': draw.pick([24, 28, 35]),
    'register-distance': crateRegister,
    'front-principal-depth': draw.pick([22, 28, 34]),
  }),
  tolerance: { relative: 0.02, because: 'focal lengths on lenses are rounded to two or three figures' },
  mistakes: [
    {
      id: 'no-one',
      value: (given) =>
        (given['register-distance'] + given.extension + given['front-principal-depth']) / given['focal-length'],
      because: 'That is the distance of the sensor in focal lengths. The first of them gives infinity: take off 1.',
    },
    {
      id: 'no-depth',
      value: (given) => (given['register-distance'] + given.extension) / given['focal-length'] - 1,
      because: 'That counts to the rim. H lies {front-principal-depth} farther from the sensor.',
    },
    {
      id: 'ring-alone',
      value: (given) => given.extension / given['focal-length'],
      because:
        'That is what a ring of {extension} adds to a lens the right way round. Turned round, register and rim count as well.',
    },
  ],
  hint: 'How far is H from the sensor, and how many focal lengths is that?',
  working: [
    {
      formula: magnificationOfReversedLensFormula,
      note: 'Register, ring and rim hold H away from the sensor:',
    },
  ],
});

const places = ['first', 'second', 'third'] as const;
type Place = (typeof places)[number];

/** Magnification; then f and how deep H is behind the rim, mm: of the one with most room, of the longest lens, of the shallowest. */
const lensesAside = [
  [0.5, [90, 24], [100, 79], [60, 8]],
  [1, [80, 20], [100, 75], [50, 5]],
  [0.25, [70, 15], [85, 100], [50, 10]],
  [0.5, [75, 10], [85, 60], [55, 6]],
] as const;

const keepsItsDistance = choiceFamily({
  id: 'which-keeps-its-distance',
  question:
    'Three lenses reach {magnification} on rings. The first has a focal length of {first.focal-length} there, and H {first.front-principal-depth} behind its rim; the second {second.focal-length} and {second.front-principal-depth}; the third {third.focal-length} and {third.front-principal-depth}. Which leaves the most room before its rim?',
  givens: (draw) => {
    const [magnification, ...three] = draw.pick(lensesAside);
    const size: number = magnification;
    // The same three in another order.
    const turn = draw.pick([0, 1, 2]);
    const [truth, longest, shallow] = [0, 1, 2].map((at) => places[(at + turn) % 3]!);
    const at = (place: Place) => three[([truth, longest, shallow] as Place[]).indexOf(place)]!;
    return {
      magnification: size,
      'first.focal-length': at('first')[0] as number,
      'first.front-principal-depth': at('first')[1] as number,
      'second.focal-length': at('second')[0] as number,
      'second.front-principal-depth': at('second')[1] as number,
      'third.focal-length': at('third')[0] as number,
      'third.front-principal-depth': at('third')[1] as number,
      truth: truth as string,
      longest: longest as string,
      shallow: shallow as string,
    };
  },
  options: { first: 'The first', second: 'The second', third: 'The third', alike: 'All leave the same' },
  answer: (given) => given.truth as Place,
  mistakes: [
    {
      id: 'longest',
      value: (given) => given.longest as Place,
      because:
        'That has the longest focal length, and the subject is farthest from its H. But its H lies deep behind the rim, and the barrel takes that away again.',
    },
    {
      id: 'shallowest',
      value: (given) => given.shallow as Place,
      because:
        'That has the shortest barrel before H. But the distance from H to the subject goes by the focal length, and this one has least of it.',
    },
    {
      id: 'one-size-one-room',
      value: () => 'alike',
      because:
        'One magnification fixes how many focal lengths the subject is away from H. How many millimetres that is, and how many of them the barrel takes, differs from lens to lens.',
    },
  ],
  hint: 'How far is the subject from H, for each of the three? And how much of that is inside the barrel?',
  working: [
    {
      values: (known) => ({ 'focal-length': known['first.focal-length'] }),
      formula: subjectDistanceFormula,
      note: 'The first lens, from H to the subject:',
    },
    {
      values: (known) => ({ 'front-principal-depth': known['first.front-principal-depth'] }),
      formula: workingDistanceFormula,
      note: 'From that take off what is inside the barrel:',
    },
    {
      values: (known) => ({ 'focal-length': known['second.focal-length'] }),
      formula: subjectDistanceFormula,
      note: 'The second lens, from H to the subject:',
    },
    {
      values: (known) => ({ 'front-principal-depth': known['second.front-principal-depth'] }),
      formula: workingDistanceFormula,
      note: 'From that take off what is inside the barrel:',
    },
    {
      values: (known) => ({ 'focal-length': known['third.focal-length'] }),
      formula: subjectDistanceFormula,
      note: 'The third lens, from H to the subject:',
    },
    {
      values: (known) => ({ 'front-principal-depth': known['third.front-principal-depth'] }),
      formula: workingDistanceFormula,
      note: 'From that take off what is inside the barrel:',
    },
  ],
});

type Reason = 'large' | 'small' | 'near' | 'shallow' | 'dark';
/** Truth; farthest and closest magnification; room; needed and smallest effective f-number; allowed and needed time; a reason that comes later, or is no reason. */
const failing = [
  ['large', 1.1, 1.6, 70, 18, 40, 1 / 125, 1 / 250, 'near'],
  ['large', 1, 1.3, 85, 16, 45, 1 / 60, 1 / 125, 'near'],
  ['small', 0, 0.3, 80, 14, 40, 1 / 125, 1 / 60, 'near'],
  ['small', 0.1, 0.55, 140, 14, 12, 1 / 125, 1 / 500, 'shallow'],
  ['near', 0.4, 1, 75, 22, 16, 1 / 250, 1 / 500, 'shallow'],
  ['near', 0, 1, 60, 18, 40, 1 / 250, 1 / 60, 'dark'],
  ['shallow', 0.2, 1, 130, 22, 12, 1 / 250, 1 / 60, 'dark'],
  ['shallow', 0.5, 1.1, 120, 20, 9, 1 / 500, 1 / 125, 'dark'],
] as const;

/** What seems to be short where the greater f-number is taken for the wider opening, or the greater number below the line for the longer time. */
function fooledByNumbers(given: {
  readonly 'needed.effective-f-number': number;
  readonly 'smallest.effective-f-number': number;
}): Reason {
  return given['smallest.effective-f-number'] > given['needed.effective-f-number'] ? 'shallow' : 'dark';
}

/** Whether what the chain has is enough there, and no other slip leads to that reason. */
function isNoMatter(
  given: Parameters<typeof fooledByNumbers>[0] & Readonly<Record<'truth' | 'later', string>>,
  reason: Reason,
): boolean {
  if (given.truth === 'near' && fooledByNumbers(given) === reason) return false;
  return given.truth !== reason && given.later !== reason;
}

const standsAgainst = choiceFamily({
  id: 'what-stands-against-it',
  question:
    'A subject {subject-width} wide should fill at least {least.frame-fill} of a frame {sensor-width} wide, from {wanted.working-distance} or more. Its depth needs {needed.effective-f-number}, its movement allows {allowed.exposure-time}. A chain can be focused from {farthest.magnification} to {closest.magnification}. Set for the subject as well as it can be, it is {working-distance} away, closes to {smallest.effective-f-number} at most, and needs {needed.exposure-time} at the opening that the depth asks for. What is the first thing against it?',
  givens: (draw) => {
    const [truth, far, close, room, needed, smallest, allowed, time, later] = draw.pick(failing);
    return {
      'subject-width': 40,
      'least.frame-fill': 0.7,
      'sensor-width': 36,
      'wanted.working-distance': 100,
      'farthest.magnification': far as number,
      'closest.magnification': close as number,
      'working-distance': room as number,
      'needed.effective-f-number': needed as number,
      'smallest.effective-f-number': smallest as number,
      'allowed.exposure-time': allowed as number,
      'needed.exposure-time': time as number,
      truth: truth as string,
      later: later as string,
    };
  },
  options: {
    large: 'It shows too large a picture',
    small: 'It shows too small a picture',
    near: 'It is too near',
    shallow: 'It cannot close far enough',
    dark: 'It gets too little light',
    nothing: 'Nothing: it suits',
  },
  answer: (given) => given.truth as Reason | 'nothing',
  mistakes: [
    {
      id: 'later',
      value: (given) => given.later as Reason,
      because:
        'That comes later. Ask in order: does it frame the subject, is there room, does it hold the depth, is there light? The first no is the reason, and mending a later one mends nothing.',
    },
    {
      id: 'none',
      value: () => 'nothing',
      because:
        'Work out the magnification that fills the frame, {sensor-width} over {subject-width}, and seven tenths of it: the chain has to reach a size between them. Then compare the other pairs of numbers.',
    },
    {
      id: 'wrong-end',
      value: ({ truth }) => (truth === 'large' ? 'small' : truth === 'small' ? 'large' : undefined),
      because:
        'Size is what is against it, but at the other end. The sizes that frame this subject go up to {sensor-width} over {subject-width}: are {farthest.magnification} to {closest.magnification} above those sizes, or below?',
    },
    {
      id: 'greater-number',
      value: (given) => (given.truth === 'near' ? fooledByNumbers(given) : undefined),
      because:
        'Two numbers can be read the wrong way round. The greater f-number is the narrower opening, and the greater number under the line is the shorter time. Compare both pairs again, and what comes before them in the list.',
    },
    {
      id: 'not-too-large',
      value: (given) => (isNoMatter(given, 'large') && given.truth !== 'small' ? 'large' : undefined),
      because:
        'It can be set from {farthest.magnification} on. The sizes that frame this subject go up to {sensor-width} over {subject-width}, and that is more.',
    },
    {
      id: 'not-too-small',
      value: (given) => (isNoMatter(given, 'small') && given.truth !== 'large' ? 'small' : undefined),
      because:
        'It reaches {closest.magnification}. Seven tenths of {sensor-width} over {subject-width} would do, and that is less.',
    },
    {
      id: 'not-too-near',
      value: (given) => (isNoMatter(given, 'near') ? 'near' : undefined),
      because:
        'It is {working-distance} away, and {wanted.working-distance} is wanted: there is room. Look at the other pairs.',
    },
    {
      id: 'closes-far',
      value: (given) => (isNoMatter(given, 'shallow') ? 'shallow' : undefined),
      because:
        'The depth needs {needed.effective-f-number}, and it closes to {smallest.effective-f-number}: the greater f-number is the narrower opening. Look at what comes before.',
    },
    {
      id: 'has-light',
      value: (given) => (isNoMatter(given, 'dark') ? 'dark' : undefined),
      because:
        'It needs {needed.exposure-time}, and the movement allows {allowed.exposure-time}, which is longer: there is light. Look at what comes before.',
    },
  ],
  hint: 'Between which two magnifications does the chain have to be set? Then room, then depth, then light.',
  working: [
    {
      values: (known) => ({ 'field-width': known['subject-width'] }),
      formula: magnificationFromFieldFormula,
      note: 'It fills the frame at this magnification, and takes seven tenths of it at seven tenths of that:',
    },
    {
      note: 'The chain reaches {farthest.magnification} to {closest.magnification}. Room: {working-distance}, wanted {wanted.working-distance}. Depth: {needed.effective-f-number}, at most {smallest.effective-f-number}. Time: {needed.exposure-time}, allowed {allowed.exposure-time}. The first that does not fit counts.',
    },
  ],
});

type Part = 'ring' | 'close-up' | 'reversing' | 'converter' | 'nothing';
/** Truth; least magnifications, least rooms and budgets that make it so. */
const wantedOf = [
  ['ring', [0.7, 0.75, 0.8, 0.85], [60, 70, 80], [50, 100]],
  ['close-up', [0.25, 0.3, 0.35], [100, 120, 150], [50, 80]],
  ['nothing', [0.1, 0.12, 0.15], [200, 250, 300], [50, 100]],
] as const;

const forTheMoney = choiceFamily({
  id: 'which-part-for-the-money',
  question:
    'You want at least {wanted.magnification} from {wanted.working-distance} or more, and have {budget} points. What you have gives 0.15× from 361 mm. One more ring: 0.87× from 86 mm, 15 points. A close-up lens: 0.38× from 170 mm, 40 points. A reversing ring: 1.9× from 39 mm, 12 points. A converter: 0.3× from 361 mm, 90 points. What do you buy?',
  givens: (draw) => {
    const [truth, sizes, rooms, budgets] = draw.pick(wantedOf);
    return {
      'wanted.magnification': draw.pick<number>(sizes),
      'wanted.working-distance': draw.pick<number>(rooms),
      budget: draw.pick<number>(budgets),
      truth: truth as string,
    };
  },
  options: {
    ring: 'One more ring',
    'close-up': 'A close-up lens',
    reversing: 'A reversing ring',
    converter: 'A converter',
    nothing: 'Nothing',
  },
  answer: (given) => given.truth as Part,
  mistakes: [
    {
      id: 'most',
      value: () => 'reversing',
      because:
        'That gives the most magnification, from 39 mm. Size beyond what is wanted is no use, and the room is too small.',
    },
    {
      id: 'dearest',
      value: () => 'converter',
      because:
        'That is the dearest. It gives 0.3× from as far as before: ask whether it opens what you want, or something cheaper does, or what you have.',
    },
    {
      id: 'room-alone',
      value: ({ truth }) => (truth === 'nothing' ? undefined : 'nothing'),
      because: 'What you have leaves room enough. But it ends at 0.15×: is that as large as you want?',
    },
    {
      id: 'larger-to-be-safe',
      value: ({ truth }) => (truth === 'ring' ? undefined : truth === 'nothing' ? 'close-up' : 'ring'),
      because:
        'That gives a good deal more size than you want, and each step of size costs room. Begin with the least that is large enough, and see how far away it leaves you.',
    },
    {
      id: 'room-before-size',
      value: ({ truth }) => (truth === 'ring' ? 'close-up' : undefined),
      because: 'That leaves the more room. But it gives 0.38×, and you want {wanted.magnification} at least.',
    },
    {
      id: 'room-forgotten',
      value: ({ truth }) => (truth === 'nothing' ? 'ring' : undefined),
      because:
        'That works from 86 mm, and you want {wanted.working-distance} at least. Is the size that you want more than what you have gives?',
    },
  ],
  hint: 'Which of the five has size and room enough? Begin with what you have.',
  working: [
    {
      note: 'Size at least {wanted.magnification}, room at least {wanted.working-distance}, price at most {budget}: go through the list from the cheapest, which is to buy nothing. The first that passes all three is it.',
    },
  ],
});

const willOneFrameDo = numberFamily({
  id: 'will-one-frame-do',
  asks: 'subject-depth',
  question:
    'You photograph at {magnification}. The circle of confusion is {circle-of-confusion}, and the wavelength {wavelength}. By our rule, how deep may a subject be so that one frame can hold it?',
  givens: (draw) => ({
    magnification: draw.pick([0.3, 0.4, 0.6, 1.5, 2, 3]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
    wavelength: 0.00055,
  }),
  tolerance: { relative: 0.03, because: 'no depth is known to better than that' },
  mistakes: [
    {
      id: 'm-once',
      value: (given) => given['circle-of-confusion'] ** 2 / (given.wavelength * given.magnification),
      because:
        'That counts m once. It counts twice: blur is enlarged with the picture, and so is the cone that makes it.',
    },
    {
      id: 'geometry',
      value: (given) => (2 * given['circle-of-confusion'] ** 2) / (given.wavelength * given.magnification ** 2),
      because:
        'That closes until diffraction alone blurs by c, and still allows defocus all of it. Together they blur by more: half of that depth is left.',
    },
    {
      id: 'm-below',
      value: (given) => given['circle-of-confusion'] ** 2 / given.wavelength,
      because: 'That is the depth at life size. Divide it by the magnification squared.',
    },
  ],
  hint: 'What would it be at life size? And at your size?',
  working: [
    { formula: subjectDepthInOneFrameFormula, note: 'Circle of confusion squared, over wavelength times m squared:' },
  ],
});

const stopsToSpare = numberFamily({
  id: 'stops-to-spare',
  asks: 'merit',
  question:
    'Movement allows an exposure of {longest.exposure-time}. The light asks for {needed.exposure-time}. The subject takes {frame-fill} of the width, and you will crop to it. How many stops are in hand, the crop counted?',
  givens: (draw) => {
    const [allowed, needed] = draw.pick([
      [1 / 30, 1 / 250],
      [1 / 15, 1 / 250],
      [1 / 60, 1 / 1000],
    ] as const);
    return {
      'longest.exposure-time': allowed as number,
      'needed.exposure-time': needed as number,
      'frame-fill': draw.pick([0.5, 0.6, 0.7]),
    };
  },
  tolerance: { absolute: 0.15, because: 'engraved times are rounded by up to a tenth of a stop' },
  mistakes: [
    {
      id: 'a-ratio',
      value: (given) => given['longest.exposure-time'] / given['needed.exposure-time'],
      because: 'That is how many times the one is longer. Stops are doublings: count how often 2 goes into it.',
    },
    {
      id: 'no-crop',
      value: (given) => Math.log2(given['longest.exposure-time'] / given['needed.exposure-time']),
      because: 'That leaves the crop out. It throws away part of the light that made the picture.',
    },
    {
      id: 'crop-once',
      value: (given) =>
        Math.log2(given['longest.exposure-time'] / given['needed.exposure-time']) + Math.log2(given['frame-fill']),
      because: 'That counts the crop in one direction. It cuts width and height: twice as many stops.',
    },
    {
      id: 'crop-gained',
      value: (given) =>
        Math.log2(given['longest.exposure-time'] / given['needed.exposure-time']) - 2 * Math.log2(given['frame-fill']),
      because: 'That adds the crop. It loses light: take its stops off.',
    },
  ],
  hint: 'How many doublings lie between the two times? And what share of the sensor’s area is left?',
  working: [{ formula: stopsInHandFormula, note: 'Stops between the times, less those of the crop:' }],
});

export const families = [
  shortestRings,
  whichCloseUpLens,
  turnedLens,
  keepsItsDistance,
  standsAgainst,
  forTheMoney,
  willOneFrameDo,
  stopsToSpare,
];
