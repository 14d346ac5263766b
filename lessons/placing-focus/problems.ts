import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { fNumberForDepthFormula } from '#core/depth/f-number-for-depth.formula.ts';
import { focusOffsetOfTurnFormula } from '#core/depth/focus-offset-of-turn.formula.ts';
import { subjectDepthOfTiltFormula } from '#core/depth/subject-depth-of-tilt.formula.ts';
import { keeperFramesFormula } from '#core/exposure/keeper-frames.formula.ts';
import { keeperShareFormula } from '#core/exposure/keeper-share.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { circlesOfBodies } from '#site/state/body-circle.ts';
import { degree } from '#core/quantity/units.ts';

/** The share of frames in focus with half the sharp part on each side, whatever is given besides. */
function shareOf(depth: number, sway: number, offset = 0): number {
  return evaluateFormula(keeperShareFormula, {
    'near-limit': depth / 2,
    'far-limit': depth / 2,
    sway,
    'focus-offset': offset,
  });
}

const howFar = numberFamily({
  id: 'how-far-may-it-lean',
  asks: 'subject-tilt',
  question:
    'A wing is {subject-width} long. Your setting makes {depth-of-field} of depth sharp. By how many degrees may the wing lean away from the camera, and still be sharp from root to tip?',
  givens: (draw) => ({
    'depth-of-field': draw.pick([2, 2.4, 3, 3.6]),
    'subject-width': draw.pick([6.5, 7, 8]),
  }),
  tolerance: { relative: 0.01, because: 'the angle of a wing is seldom known to better than a degree' },
  answer: (given) => Math.asin(given['depth-of-field'] / given['subject-width']),
  mistakes: [
    {
      id: 'tangent',
      value: (given) => Math.atan(given['depth-of-field'] / given['subject-width']),
      because:
        'That uses the tangent. The {subject-width} are measured along the slope, the long side of the triangle: use the sine.',
    },
    {
      id: 'from-the-axis',
      value: (given) => Math.acos(given['depth-of-field'] / given['subject-width']),
      because: 'That is the angle from the axis. A lean is counted from the sharp plane: square to the camera is 0°.',
    },
    {
      id: 'one-side',
      value: (given) => Math.asin(given['depth-of-field'] / given['subject-width'] / 2),
      because:
        'That uses half of the sharp part. It has two sides: focus on the middle of the wing, and the wing has both.',
    },
  ],
  hint: 'In the triangle of slope and depth, which side is the depth, seen from the angle of the lean?',
  working: [
    {
      values: (known) => ({ 'subject-tilt': Math.asin(known['depth-of-field'] / known['subject-width']) }),
      note: 'The depth of the wing may be {depth-of-field}. Divide by its length: that is the sine of the lean, {subject-tilt}. Indeed:',
      formula: subjectDepthOfTiltFormula,
    },
  ],
});

type Leaning = Readonly<
  Record<'magnification' | 'pupil-magnification' | 'circle-of-confusion' | 'subject-width' | 'subject-tilt', number>
>;

/** The f-number for all of a lean. */
function forLean(given: Leaning): number {
  return evaluateFormula(fNumberForDepthFormula, {
    ...given,
    'subject-depth': evaluateFormula(subjectDepthOfTiltFormula, given),
  });
}

const forALean = numberFamily({
  id: 'f-number-for-a-lean',
  asks: 'f-number',
  question:
    'A petal, {subject-width} long, leans by {subject-tilt}. You photograph it at {magnification}; the lens has a pupil magnification of {pupil-magnification}. The circle of confusion is {circle-of-confusion}. Which f-number makes the whole petal sharp?',
  givens: (draw) => {
    const [magnification, lengths] = draw.pick([
      [0.5, [7, 9, 12]],
      [0.75, [4, 5, 6]],
      [1.5, [1.1, 1.4, 1.7]],
      [2, [0.6, 0.8, 1]],
    ] as const);
    return {
      magnification,
      'subject-width': draw.pick<number>(lengths),
      // Less steep, the tangent would pass for the sine.
      'subject-tilt': draw.pick([22, 25, 30, 35]) * degree,
      'pupil-magnification': draw.pick([0.7, 0.85, 1.2]),
      'circle-of-confusion': draw.pick(circlesOfBodies),
    };
  },
  tolerance: { relative: 0.03, because: 'marked f-numbers are rounded by up to three per cent' },
  mistakes: [
    {
      id: 'effective',
      value: (given) => forLean(given) * (1 + given.magnification / given['pupil-magnification']),
      because:
        'That is the effective f-number. You set the marked one: divide by 1 + m/P, for this close the lens works at a larger number than it is set to.',
    },
    {
      id: 'cosine',
      value: (given) => forLean(given) / Math.tan(given['subject-tilt']),
      because:
        'That takes the cosine of the lean, which is how long the petal looks from the camera. Its depth takes the sine.',
    },
    {
      id: 'tangent',
      value: (given) => forLean(given) / Math.cos(given['subject-tilt']),
      because:
        'That takes the tangent of the lean. The petal is measured along its slope, so its depth takes the sine.',
    },
    {
      id: 'one-side',
      value: (given) => 2 * forLean(given),
      because:
        'That asks for the whole depth on one side of the sharp plane. Focus on the middle of the petal: half of it on each side is enough.',
    },
    {
      id: 'not-squared',
      value: (given) => forLean(given) / given.magnification,
      because:
        'That counts m once. It counts twice: the blur on the sensor is enlarged m times, and the nearer lens takes in a cone m times as wide.',
    },
  ],
  hint: 'How deep is the petal along the axis? And which f-number makes the sharp part as deep as that?',
  working: [
    { formula: subjectDepthOfTiltFormula, note: 'How deep the petal is along the axis:' },
    { formula: fNumberForDepthFormula, note: 'The f-number that makes so much sharp:' },
  ],
});

/** Half the sharp part in sways, as the lesson's table has it. */
const inSways = [0.1, 0.2, 0.25, 0.3, 0.4, 0.5, 0.75, 1];
const sways = [0.4, 0.5, 0.8, 1, 2];
const fromTable = { relative: 0.03, because: 'a table of the bell curve is read between its lines' } as const;

const shareInFocus = numberFamily({
  id: 'share-in-focus',
  asks: 'keeper-share',
  question:
    'You sway by {sway}, and the sharp part is {depth-of-field} deep, half of it on each side of the sharp plane. On average the focus is right. What share of your frames has the eye in focus?',
  givens: (draw) => {
    const sway = draw.pick(sways);
    return { sway, 'depth-of-field': Number((2 * draw.pick(inSways) * sway).toPrecision(6)) };
  },
  tolerance: fromTable,
  mistakes: [
    {
      id: 'twice-the-depth',
      value: (given) => shareOf(2 * given['depth-of-field'], given.sway),
      because:
        'That puts {depth-of-field} on each side of the sharp plane. It is the whole of the sharp part: half of it is on each side.',
    },
    {
      id: 'one-side',
      value: (given) => shareOf(given['depth-of-field'], given.sway) / 2,
      because: 'That counts one side of the bell curve. The eye may be nearer or farther: count both.',
    },
    {
      id: 'all-places-alike',
      value: (given) => given['depth-of-field'] / (2 * given.sway),
      because:
        'That divides lengths, as if all places within one sway were equally likely and none beyond. The curve is a bell: it is high in the middle, and it has tails.',
    },
  ],
  hint: 'How many sways is half of the sharp part? The table in the part with the formulas knows the rest.',
  working: [
    {
      values: (known) => ({
        'near-limit': known['depth-of-field'] / 2,
        'far-limit': known['depth-of-field'] / 2,
        'focus-offset': 0,
      }),
      note: 'Half of {depth-of-field} on each side, and no offset:',
      formula: keeperShareFormula,
    },
  ],
});

/** Frames for a chance of one in focus, before they are made whole. */
const framesFor = (missing: number, share: number) => Math.log(missing) / Math.log(1 - share);

const framesForOne = numberFamily({
  id: 'frames-for-one',
  asks: 'keeper-frames',
  question:
    'By hand, {keeper-share} of your frames have the spider’s eyes in focus. You want one that has, nineteen times out of twenty. How many frames do you take?',
  givens: (draw) => ({
    'keeper-share': draw.pick([0.06, 0.08, 0.1, 0.12, 0.14, 0.16, 0.18, 0.2, 0.22, 0.25, 0.3, 0.35, 0.4]),
  }),
  tolerance: { absolute: 0, because: 'frames are counted' },
  mistakes: [
    {
      id: 'one-over-share',
      value: (given) => Math.ceil(1 / given['keeper-share']),
      because:
        'That is one divided by the share. So many frames hold one in focus on average, but at least one time in five they hold none.',
    },
    {
      id: 'rounded-down',
      value: (given) => Math.floor(framesFor(0.05, given['keeper-share'])),
      because: 'That is rounded down: the chance is then a little too small. Frames come whole, so round up.',
    },
    {
      id: 'every-other-time',
      value: (given) => Math.ceil(framesFor(0.5, given['keeper-share'])),
      because: 'That gives one in focus every other time. Here all frames may miss one time in twenty: 0.05.',
    },
  ],
  hint: 'With what chance does one frame miss? And two in a row, and three?',
  working: [{ formula: keeperFramesFormula, note: 'All of them miss together one time in twenty, or less:' }],
});

const alwaysTooNear = numberFamily({
  id: 'always-too-near',
  asks: 'keeper-share',
  question:
    'You sway by {sway}. The sharp part is {depth-of-field} deep, half of it on each side of the sharp plane. On average the eye is {focus-offset} beyond the sharp plane. What share of your frames has the eye in focus?',
  givens: (draw) => {
    const sway = draw.pick(sways);
    // An offset as small as half the sharp part would hide a slip: added to the sway by squares it gives next to the same.
    const [half, offset] = draw.pick([
      [1, 1],
      [0.25, 0.75],
      [0.5, 1.5],
      [0.75, 0.75],
      [0.3, 0.7],
    ] as const);
    return {
      sway,
      'depth-of-field': Number((2 * half * sway).toPrecision(6)),
      'focus-offset': Number((offset * sway).toPrecision(6)),
    };
  },
  tolerance: fromTable,
  mistakes: [
    {
      id: 'offset-forgotten',
      value: (given) => shareOf(given['depth-of-field'], given.sway),
      because: 'That leaves out the offset. The bell curve is centred {focus-offset} beyond the sharp plane.',
    },
    {
      id: 'half-of-that',
      value: (given) => shareOf(given['depth-of-field'], given.sway) / 2,
      because:
        'That halves the share without an offset, as if the side towards the lens were lost. Part of it still hits: count from the middle of the bell curve to both ends of the sharp part.',
    },
    {
      id: 'offset-as-sway',
      value: (given) => shareOf(given['depth-of-field'], given.sway + given['focus-offset']),
      because:
        'That adds the offset to the sway. A steady miss is no spread: it moves the bell curve and does not widen it.',
    },
  ],
  hint: 'Seen from the middle of the bell curve, where does the sharp part begin, and where does it end?',
  working: [
    {
      values: (known) => ({
        'near-limit': known['depth-of-field'] / 2,
        'far-limit': known['depth-of-field'] / 2,
      }),
      note: 'Half of {depth-of-field} on each side, seen from a middle that is {focus-offset} beyond:',
      formula: keeperShareFormula,
    },
  ],
});

const focusThenTurn = numberFamily({
  id: 'focus-then-turn',
  asks: 'focus-offset',
  question:
    'You focus on a beetle’s eye in the middle of the picture, {entrance-pupil-distance} from the entrance pupil and {focus-distance} from the sensor. To frame, you turn the camera by {turn-angle} about the entrance pupil. Which focus offset is left? (Nearer to the lens than the sharp plane counts below zero.)',
  givens: (draw) => {
    const pupil = draw.pick([120, 160, 200, 250, 320]);
    return {
      'entrance-pupil-distance': pupil,
      'focus-distance': pupil + draw.pick([90, 120, 150]),
      'turn-angle': draw.pick([3, 4, 5, 6, 8, 10]) * degree,
    };
  },
  tolerance: { relative: 0.02, because: 'the angle of a turn by hand is known to a few per cent at best' },
  mistakes: [
    {
      id: 'side',
      value: (given) => -evaluateFormula(focusOffsetOfTurnFormula, given),
      because:
        'The distance is right, the side is not: the sharp plane has swung away beyond the eye. The eye is nearer to the lens, so the offset is below zero.',
    },
    {
      id: 'sideways',
      value: (given) => -given['entrance-pupil-distance'] * Math.sin(given['turn-angle']),
      because: 'That is how far the eye moves sideways in the field. Along the axis it is 1 minus the cosine.',
    },
    {
      id: 'about-the-sensor',
      value: (given) =>
        evaluateFormula(focusOffsetOfTurnFormula, { ...given, 'entrance-pupil-distance': given['focus-distance'] }),
      because: 'That counts from the sensor. The camera turns about the entrance pupil: take the distance from there.',
    },
    {
      id: 'square-without-half',
      value: (given) => -given['entrance-pupil-distance'] * given['turn-angle'] ** 2,
      because:
        'That is the distance times the angle squared, twice too much: 1 minus the cosine is about half of that square.',
    },
  ],
  hint: 'After the turn, how far from the pupil is the eye, counted along the axis?',
  working: [
    {
      formula: focusOffsetOfTurnFormula,
      note: 'The eye is as far as before, but aslant; along the axis it is nearer than the plane:',
    },
  ],
});

const fromAnywhere = 'You can walk round it.';
const fromHere = 'It can be seen from this side only, and it keeps still.';
/** Truth, where one may stand, what leans, magnification, lengths, lean in degrees, f-number. */
const tasks = [
  ['sharp', fromHere, 'a leaf', 0.25, [28, 30], 11, 8],
  ['sharp', fromAnywhere, 'a feather', 0.5, [11, 12], 11, 11],
  ['sharp', fromHere, 'a scale of a cone', 1, [5, 6], 10, 16],
  ['turn', fromAnywhere, 'a butterfly’s wing', 0.5, [25, 30], 12, 8],
  ['turn', fromAnywhere, 'a fern’s tip', 1, [12, 15], 15, 8],
  ['turn', fromAnywhere, 'a leaf', 0.25, [50, 60], 20, 5.6],
  ['stop', fromHere, 'a leaf on a wall', 0.25, [26, 30], 15, 5.6],
  ['stop', fromHere, 'a moth’s wing', 0.5, [13, 15], 12, 8],
  ['stop', fromHere, 'a flake of lichen', 1, [4, 4.5], 15, 5.6],
  ['stack', fromHere, 'a strip of bark', 1, [12, 15], 20, 8],
  ['stack', fromHere, 'a seed’s wing', 2, [5, 6], 20, 8],
  ['stack', fromHere, 'a bracket fungus', 0.5, [35, 40], 30, 8],
] as const;

type Remedy = (typeof tasks)[number][0];

/** What is to be done about a depth of *deep* mm where the cone is *times* as narrow as the mark says, T = 2cN × times/m². */
function remedyFor(given: LeaningThere, deep: number, times: number): Remedy {
  const needed = (deep * given.magnification ** 2) / (2 * given['circle-of-confusion'] * times);
  if (needed <= given['f-number']) return 'sharp';
  if (given.place === fromAnywhere) return 'turn';
  return needed <= 22 ? 'stop' : 'stack';
}

interface LeaningThere {
  readonly truth: Remedy;
  readonly place: string;
  readonly magnification: number;
  readonly 'subject-width': number;
  readonly 'subject-tilt': number;
  readonly 'f-number': number;
  readonly 'circle-of-confusion': number;
}

const byMarkedNumber = (given: LeaningThere) =>
  remedyFor(given, given['subject-width'] * Math.sin(given['subject-tilt']), 1);
const byCosine = (given: LeaningThere) =>
  remedyFor(given, given['subject-width'] * Math.cos(given['subject-tilt']), 1 + given.magnification);
const byDepths = (given: LeaningThere) => [byMarkedNumber(given), byCosine(given)];

/** *led*, unless that is right, or where an *earlier* slip leads. */
const onlyWrong = ({ truth }: LeaningThere, led: Remedy, ...earlier: readonly Remedy[]) =>
  led === truth || earlier.includes(led) ? undefined : led;

const turnOrStopDown = choiceFamily({
  id: 'turn-or-stop-down',
  question:
    'You photograph {scene}, {subject-width} long and leaning by {subject-tilt}, at {magnification} and {f-number}. {place} The pupils are equally wide (P = 1), and the circle of confusion is {circle-of-confusion}. The lens closes to f/22. What do you do first to have the whole length sharp?',
  givens: (draw) => {
    const [truth, place, scene, magnification, lengths, lean, fNumber] = draw.pick(tasks);
    return {
      truth: truth as Remedy,
      place: place as string,
      scene: scene as string,
      magnification,
      'subject-width': draw.pick<number>(lengths),
      'subject-tilt': lean * degree,
      'f-number': fNumber,
      'pupil-magnification': 1,
      'circle-of-confusion': 0.02,
    };
  },
  options: {
    turn: 'Turn until it is square to the axis',
    stop: 'Close the opening further',
    stack: 'Take a stack: several frames, to be put together',
    sharp: 'Press: nothing is missing',
  },
  answer: (given) => given.truth,
  mistakes: [
    {
      id: 'marked-f-number',
      value: (given) => onlyWrong(given, byMarkedNumber(given)),
      because:
        'That goes by {f-number} as it is marked, which makes the sharp part too thin and asks for too much. At {magnification} the cone is narrower: take the effective f-number.',
    },
    {
      id: 'cosine',
      value: (given) => onlyWrong(given, byCosine(given), byMarkedNumber(given)),
      because:
        'That takes the subject’s length times the cosine of the lean, which is how long it looks from the camera. How deep it is goes by the sine.',
    },
    {
      id: 'which-depth',
      value: (given) => onlyWrong(given, given.truth === 'sharp' ? 'stop' : 'sharp', ...byDepths(given)),
      because:
        'Compare two depths. The subject’s is its length times the sine of the lean. The sharp part goes by the effective f-number, and c and m count in it: m by its square.',
    },
    {
      id: 'which-order',
      value: (given) => onlyWrong(given, given.truth === 'turn' ? 'stop' : 'turn', ...byDepths(given)),
      because:
        'Ask in this order. Is it deep enough as it is? If not, what costs no light? If that cannot be done, is the f-number for all of the depth one that the lens has? The first yes decides.',
    },
    {
      id: 'which-limit',
      value: (given) => onlyWrong(given, given.truth === 'stack' ? 'stop' : 'stack', ...byDepths(given)),
      because:
        'Work out the f-number for all of the depth, and set it beside the one in use and beside f/22. Then look at where you may stand.',
    },
  ],
  hint: 'How deep is it along the axis, and how deep is the sharp part?',
  working: [
    { formula: subjectDepthOfTiltFormula, note: 'How deep the subject is along the axis:' },
    { formula: effectiveFNumberFormula, note: 'The effective f-number:' },
    { formula: depthOfFieldCloseUpFormula, note: 'How deep the sharp part is:' },
    { formula: fNumberForDepthFormula, note: '{place} For all of its depth it would take:' },
  ],
});

export const families = [howFar, forALean, shareInFocus, framesForOne, alwaysTooNear, focusThenTurn, turnOrStopDown];
