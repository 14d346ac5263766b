import { defocusBlurOfEnds, defocusBlurOfEndsFormula } from '#core/depth/defocus-blur-of-ends.formula.ts';
import { depthOfFieldCloseUp, depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { frameCount, frameCountFormula } from '#core/stack/frame-count.formula.ts';
import { airyDiameter, airyDiameterFormula } from '#core/wave/airy-diameter.formula.ts';
import { balancedFNumberFormula } from '#core/wave/balanced-f-number.formula.ts';
import { bestEffectiveFNumber, bestEffectiveFNumberFormula } from '#core/wave/best-effective-f-number.formula.ts';
import { circlesOfBodies } from '#site/state/body-circle.ts';

const pupils = [0.6, 0.7, 0.8, 1.3, 1.5];
const colours = [0.0005, 0.00055, 0.0006];
const marks = [4, 5.6, 8, 11, 16];

interface Lens {
  readonly magnification: number;
  readonly 'f-number': number;
  readonly 'pupil-magnification': number;
}
const cone = (given: Lens) => evaluateFormula(effectiveFNumberFormula, given);
const equalPupils = <Given extends Lens>(given: Given) => ({ ...given, 'pupil-magnification': 1 });

interface Subject {
  readonly magnification: number;
  readonly 'subject-depth': number;
  readonly wavelength: number;
}
/** The effective f-number at which both blurs are alike. */
const balancedCone = ({ magnification, wavelength, ...given }: Subject) =>
  bestEffectiveFNumber({ magnification, wavelength, subjectDepth: given['subject-depth'] });

const balanced = numberFamily({
  id: 'balanced',
  asks: 'balanced-f-number',
  question:
    'At {magnification} a subject is {subject-depth} deep, and the light has {wavelength}. The lens has a pupil magnification of {pupil-magnification}. At which marked f-number are the ends of the depth blurred as widely as the Airy disc?',
  givens: (draw) => ({
    magnification: draw.pick([0.5, 0.7, 1.5, 2, 3]),
    'subject-depth': draw.pick([2, 3, 4, 6]),
    wavelength: draw.pick(colours),
    'pupil-magnification': draw.pick(pupils),
  }),
  // Where always f/8 would be right by chance it would teach nothing.
  answer(given) {
    const fNumber = evaluateFormula(balancedFNumberFormula, given);
    return fNumber > 8.6 ? fNumber : evaluateFormula(balancedFNumberFormula, { ...given, 'subject-depth': NaN });
  },
  tolerance: { relative: 0.04, because: '4 % is a ninth of a stop: no ring is set more finely' },
  mistakes: [
    {
      id: 'effective',
      value: balancedCone,
      because:
        'That is the effective f-number. The mark on the ring is smaller: divide by 1 + m/P, with P {pupil-magnification}.',
    },
    {
      id: 'pupils-forgotten',
      value: (given) => balancedCone(given) / (1 + given.magnification),
      because:
        'That divides by 1 + m, right only for equal pupils. First divide m by {pupil-magnification}, then add 1.',
    },
    {
      id: 'root-forgotten',
      value: (given) => (evaluateFormula(balancedFNumberFormula, given) * balancedCone(given)) / given.magnification,
      because: 'That leaves out the root. Take the root of the depth divided by 4.88 λ before you multiply by m.',
    },
    {
      id: 'always-eight',
      value: () => 8,
      because:
        'That is the mark at which many lenses are sharpest in one plane. This subject is {subject-depth} deep: work out where its ends blur as widely as the Airy disc.',
    },
    {
      id: 'size-forgotten',
      value: (given) => evaluateFormula(balancedFNumberFormula, given) / given.magnification,
      because: 'That leaves out the m in front of the root. The larger the image, the wider its blur: multiply.',
    },
  ],
  hint: 'Which f-number does the cone at the sensor have there? And what does the ring read for that cone?',
  working: [
    {
      formula: bestEffectiveFNumberFormula,
      note: 'Both blurs are alike at this effective f-number, lengths in millimetres:',
    },
    { formula: balancedFNumberFormula, note: 'The ring reads less, by 1 + m/P:' },
  ],
});

const deeper = numberFamily({
  id: 'deeper',
  asks: 'balanced-f-number',
  question:
    'At {magnification}, in {wavelength} light, through a lens of pupil magnification {pupil-magnification}, the balanced f-number of a subject {first.subject-depth} deep is {first.balanced-f-number}. You turn the subject, and it is {subject-depth} deep. What is its balanced f-number now?',
  givens: (draw) => {
    const given = {
      magnification: draw.pick([0.5, 0.75, 1, 1.5]),
      wavelength: draw.pick(colours),
      'pupil-magnification': draw.pick(pupils),
      'first.subject-depth': draw.pick([1, 1.5, 2, 3]),
    };
    const first = evaluateFormula(balancedFNumberFormula, { ...given, 'subject-depth': given['first.subject-depth'] });
    return {
      ...given,
      'subject-depth': given['first.subject-depth'] * draw.pick([1.5, 3, 5]),
      'first.balanced-f-number': Number(first.toPrecision(3)),
    };
  },
  tolerance: { relative: 0.04, because: '4 % is a ninth of a stop: no ring is set more finely' },
  mistakes: [
    {
      id: 'like-the-depth',
      value: (given) => given['first.balanced-f-number'] * timesAsDeep(given),
      because:
        'That makes the f-number grow as the depth does: two stops for twice the depth. The depth is under a root: twice the depth asks for one stop.',
    },
    {
      id: 'half-the-stops',
      value: (given) => given['first.balanced-f-number'] * timesAsDeep(given) ** 0.25,
      because:
        'That goes half as far: half a stop for twice the depth. Multiply the f-number by the root of the ratio, once.',
    },
    {
      id: 'ratio-as-stops',
      value: (given) => given['first.balanced-f-number'] * 2 ** (timesAsDeep(given) / 2),
      because:
        'That takes the ratio of the depths as a number of stops. A doubling of the depth is one stop, another doubling one more.',
    },
    {
      id: 'as-before',
      value: (given) => given['first.balanced-f-number'],
      because:
        'That is the old one. The ends are farther out of focus now: close further until both blurs are alike again.',
    },
  ],
  hint: 'How many times as deep is it? And what does the formula do with the depth?',
  working: [
    {
      formula: balancedFNumberFormula,
      note: 'With the new depth. A shortcut: only the depth has changed, so multiply {first.balanced-f-number} by the root of the ratio of the depths.',
    },
  ],
});

function timesAsDeep(given: { readonly 'subject-depth': number; readonly 'first.subject-depth': number }): number {
  return given['subject-depth'] / given['first.subject-depth'];
}

const endBlur = numberFamily({
  id: 'end-blur',
  asks: 'defocus-blur',
  question:
    'At {magnification} a lens of pupil magnification {pupil-magnification} is set to {f-number} and focused on the middle of a subject {subject-depth} deep. By geometry alone, how wide is the blur of its nearest point on the sensor?',
  givens: (draw) => ({
    magnification: draw.pick([0.4, 0.6, 1.5, 2.5, 3]),
    'f-number': draw.pick(marks),
    'pupil-magnification': draw.pick(pupils),
    'subject-depth': draw.pick([0.5, 1, 2, 3, 5]),
  }),
  tolerance: { relative: 0.03, because: 'marked f-numbers are rounded by up to three per cent' },
  mistakes: [
    {
      id: 'whole-depth',
      value: (given) => 2 * endOf(given),
      because: 'That counts the whole depth. The sharp plane is in the middle: either end is half of it away.',
    },
    {
      id: 'marked-f-number',
      value: (given) => (endOf(given) * cone(given)) / given['f-number'],
      because:
        'That uses the marked {f-number}. At {magnification} the effective f-number is larger, and the blur smaller.',
    },
    {
      id: 'not-squared',
      value: (given) => endOf(given) / given.magnification,
      because: 'That counts m once. It counts twice: the image is larger, and the nearer lens takes in a wider cone.',
    },
    {
      id: 'divided-by-size',
      value: (given) => endOf(given) / given.magnification ** 4,
      because: 'That divides by m squared, as a depth does. A blur on the sensor grows with size: multiply.',
    },
    {
      id: 'pupils-forgotten',
      value: (given) => endOf(equalPupils(given)),
      because: 'That takes N (1 + m) as the effective f-number. First divide m by {pupil-magnification}.',
    },
  ],
  hint: 'How far is the nearest point from the sharp plane? And which f-number counts?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The cone that reaches the sensor:' },
    { formula: defocusBlurOfEndsFormula, note: 'Either end, half of the depth off the sharp plane:' },
  ],
});

function endOf(given: Lens & { readonly 'subject-depth': number }): number {
  const { magnification } = given;
  return defocusBlurOfEnds({ magnification, subjectDepth: given['subject-depth'], effectiveFNumber: cone(given) });
}

const airy = numberFamily({
  id: 'airy',
  asks: 'airy-diameter',
  question:
    'A lens of pupil magnification {pupil-magnification} is set to {f-number} and works at {magnification}, in {wavelength} light. How wide is the Airy disc on the sensor?',
  givens: (draw) => ({
    'f-number': draw.pick([8, 11, 16, 22]),
    magnification: draw.pick([0.4, 0.75, 1.5, 2.5, 3]),
    'pupil-magnification': draw.pick(pupils),
    wavelength: draw.pick(colours),
  }),
  tolerance: { relative: 0.02, because: 'rounding 1.22 to 1.2 already makes 2 %' },
  mistakes: [
    {
      id: 'marked-f-number',
      value: ({ wavelength, ...given }) => airyDiameter({ wavelength, effectiveFNumber: given['f-number'] }),
      because: 'That is the disc of the marked {f-number}. Multiply it by 1 + m/P first.',
    },
    {
      id: 'radius',
      value: (given) => discOf(given) / 2,
      because:
        'That is the radius, 1.22 λ times the effective f-number. From dark ring to dark ring the disc is twice as wide.',
    },
    {
      id: 'on-the-subject',
      value: (given) => discOf(given) / given.magnification,
      because:
        'That is the disc divided by m: what it covers of the subject. The question asks for the disc on the sensor.',
    },
    {
      id: 'one-over-m',
      value: (given) => discOf({ ...given, magnification: 1 / given.magnification }),
      because: 'That takes 1/m for m. The larger the image, the slimmer its cone: m itself goes into N (1 + m/P).',
    },
    {
      id: 'pupils-forgotten',
      value: (given) => discOf(equalPupils(given)),
      because: 'That takes N (1 + m) as the effective f-number. First divide m by {pupil-magnification}.',
    },
  ],
  hint: 'First the effective f-number. Then, from dark ring to dark ring, the factor is twice 1.22.',
  working: [
    { formula: effectiveFNumberFormula, note: 'The cone that reaches the sensor:' },
    { formula: airyDiameterFormula, note: 'The disc, from dark ring to dark ring:' },
  ],
});

function discOf(given: Lens & { readonly wavelength: number }): number {
  return airyDiameter({ wavelength: given.wavelength, effectiveFNumber: cone(given) });
}

interface Stack extends Lens {
  readonly 'subject-depth': number;
  readonly 'circle-of-confusion': number;
  readonly overlap: number;
}

function depthWith({ magnification, ...given }: Stack, effectiveFNumber: number): number {
  return depthOfFieldCloseUp({ magnification, effectiveFNumber, circleOfConfusion: given['circle-of-confusion'] });
}

/** Frames whose depth is so many times the right one. */
function framesWith(given: Stack, effectiveFNumber: number, { overlap = given.overlap, times = 1 } = {}): number {
  const depthOfField = times * depthWith(given, effectiveFNumber);
  return frameCount({ subjectDepth: given['subject-depth'], depthOfField, overlap });
}

/** How many steps the whole depth is long. */
function stepsThrough(given: Stack): number {
  return Math.ceil(given['subject-depth'] / ((1 - given.overlap) * depthWith(given, cone(given))));
}

const framesInstead = numberFamily({
  id: 'frames-instead',
  asks: 'frame-count',
  question:
    'No single f-number keeps a subject {subject-depth} deep at {magnification}. You stack: {f-number}, pupil magnification {pupil-magnification}, circle of confusion {circle-of-confusion}, neighbouring frames to overlap by {overlap}. How many frames?',
  givens: (draw) => ({
    magnification: draw.pick([2, 2.5, 3]),
    'subject-depth': draw.pick([2, 2.5, 3]),
    'f-number': draw.pick([5.6, 8]),
    'pupil-magnification': draw.pick([0.7, 0.8, 0.9]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
    overlap: draw.pick([0.35, 0.4, 0.45]),
  }),
  // Numbers with which the depth of a frame, a per cent off by rounding, leads to another count are drawn anew.
  answer(given) {
    const [fewest, most] = [1.01, 0.99].map((times) => framesWith(given, cone(given), { times }));
    if (fewest !== most) throw new OutOfRange('frame-count', most!, 'a count that no rounding changes');
    return most!;
  },
  tolerance: { absolute: 0.4, because: 'frames are counted whole' },
  mistakes: [
    {
      id: 'no-overlap',
      value: (given) => framesWith(given, cone(given), { overlap: 0 }),
      because:
        'That lays the frames edge to edge. They are to overlap by {overlap}: each adds only the rest of its depth.',
    },
    {
      id: 'marked-f-number',
      value: (given) => framesWith(given, given['f-number']),
      because:
        'That takes the depth of the marked {f-number}. The effective f-number is larger, each frame is deeper, and fewer are enough.',
    },
    {
      id: 'pupils-forgotten',
      value: (given) => framesWith(given, cone(equalPupils(given))),
      because: 'That takes N (1 + m) as the effective f-number. First divide m by {pupil-magnification}.',
    },
    {
      id: 'depth-over-step',
      value: stepsThrough,
      because:
        'That divides the whole depth by the step. The first frame covers its own depth without any step: divide what is left, and add that first frame.',
    },
    {
      id: 'depth-over-step-and-one',
      value: (given) => 1 + stepsThrough(given),
      because:
        'That counts the first frame and then steps through the whole depth. The first frame has covered its own depth already: only what is left needs steps.',
    },
    {
      id: 'one-side',
      value: (given) => framesWith(given, cone(given), { times: 0.5 }),
      because: 'That takes the depth on one side of the sharp plane. A frame is sharp on both.',
    },
  ],
  hint: 'How deep is one frame, both sides together? The first covers that, each further one a step.',
  working: [
    { formula: effectiveFNumberFormula, note: 'The cone that reaches the sensor:' },
    { formula: depthOfFieldCloseUpFormula, note: 'The depth of one frame:' },
    {
      formula: frameCountFormula,
      values: (known) => ({ 'depth-of-field': known['depth-of-field-close-up'] }),
      note: 'The first frame covers that depth, each further one the rest after the overlap; round up:',
    },
  ],
});

/**
 * Sizes and depths at which one frame keeps a third or more of the contrast of 25 lp/mm in its worst place, and others that leave next to
 * none.
 */
const tasks = [
  [['a coin’s rim', 'a hoverfly’s head', 'a seed'], 1, [0.8, 1, 1.5, 2], 'balanced'],
  [['a bay leaf at a slant', 'a snail’s shell'], 0.5, [4, 5, 7], 'balanced'],
  [['a row of buds', 'a mushroom’s cap'], 0.2, [20, 30, 40], 'balanced'],
  [['an ant’s head', 'a moth’s antenna'], 4, [1.5, 2, 3], 'stack'],
  [['a jumping spider’s face', 'a stamen'], 3, [2.5, 3, 4], 'stack'],
  [['a frost crystal', 'a fly’s eye'], 5, [1, 1.5, 2], 'stack'],
] as const;

const which = choiceFamily({
  id: 'which',
  question:
    'You photograph {scene}, {subject-depth} deep, at {magnification}, through a lens with equal pupils, in green light. Detail as fine as a circle of confusion of {circle-of-confusion} should show from front to back. What do you do?',
  givens: (draw) => {
    const [scenes, magnification, depths, truth] = draw.pick(tasks);
    return {
      scene: draw.pick<string>(scenes),
      magnification,
      'subject-depth': draw.pick<number>(depths),
      'pupil-magnification': 1,
      wavelength: 0.00055,
      'circle-of-confusion': 0.02,
      truth,
      tempting: draw.pick(['eight', 'smallest'] as const),
    };
  },
  options: {
    eight: 'f/8, as always',
    smallest: 'The smallest opening the lens has',
    balanced: 'One frame, at about the balanced f-number',
    stack: 'A stack',
  },
  answer: (given) => given.truth,
  mistakes: [
    {
      id: 'a-habit',
      value: (given) => given.tempting,
      because:
        'That is a habit; it asks neither how deep the subject is nor how large. Work out where the ends of this depth blur as widely as the Airy disc, and how wide both are there.',
    },
    {
      id: 'the-other-habit',
      value: (given) => (given.tempting === 'eight' ? 'smallest' : 'eight'),
      because:
        'The same mark for every subject cannot be right. Where do the ends of this depth blur as widely as the Airy disc, and how wide are both there?',
    },
    {
      id: 'one-frame-or-many',
      value: (given) => (given.truth === 'stack' ? 'balanced' : 'stack'),
      because:
        'Compare the Airy disc at the balanced f-number with the circle of confusion. Where it is twice as wide, the worst place keeps about a third of its contrast; four times, about a tenth; six times, next to nothing.',
    },
  ],
  hint: 'At the balanced f-number, how wide is the Airy disc beside the circle of confusion?',
  working: [
    { formula: bestEffectiveFNumberFormula, note: 'Where both blurs are alike:' },
    {
      formula: airyDiameterFormula,
      note: 'And how wide they are there. Up to about twice {circle-of-confusion} one frame will do; from six times on only a stack will:',
    },
  ],
});

export const families = [balanced, deeper, endBlur, airy, framesInstead, which] as const;
