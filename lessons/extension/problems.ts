import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { extensionForMagnificationFormula } from '#core/gaussian/extension-for-magnification.formula.ts';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { magnificationFromExtensionFormula } from '#core/gaussian/magnification-from-extension.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';

const focalLengths = [28, 35, 50, 60, 85, 100, 135];
const ringSets = [12, 24, 36, 48, 60, 72];

const ringOnALens = numberFamily({
  id: 'ring-on-a-lens',
  asks: 'magnification',
  question:
    '{A focal-length} lens gives {focus-magnification} at its closest focus, on a camera with crop factor {crop-factor}. You add {extension} of rings and leave the focus as it is. What is the magnification?',
  givens: (draw) => ({
    'focal-length': draw.pick(focalLengths),
    extension: draw.pick(ringSets),
    'focus-magnification': draw.pick([0.1, 0.12, 0.15, 0.2, 0.25]),
    'crop-factor': draw.pick([1.5, 1.6, 2]),
  }),
  tolerance: { relative: 0.02, because: 'ring lengths are good to half a millimetre' },
  mistakes: [
    {
      id: 'own-focusing-forgotten',
      value: (given) => given.extension / given['focal-length'],
      because:
        'That is the rings’ part alone, {extension} divided by {focal-length}. The lens’s own {focus-magnification} must be added.',
    },
    {
      id: 'over-the-sum',
      value: (given) => given['focus-magnification'] + given.extension / (given['focal-length'] + given.extension),
      because: 'That divides the rings by focal length and rings together. Divide by the focal length alone.',
    },
    {
      id: 'multiplied',
      value: (given) => given['focus-magnification'] * (1 + given.extension / given['focal-length']),
      because:
        'That multiplies the lens’s own part by what the rings give. The two add up: each millimetre of extension counts the same, wherever it comes from.',
    },
    {
      id: 'upside-down',
      value: (given) => given['focal-length'] / given.extension,
      because:
        'That is the focal length divided by the rings. Count the other way: how many focal lengths are the rings long? Then add the lens’s own {focus-magnification}.',
    },
    {
      id: 'upside-down-added',
      value: (given) => given['focus-magnification'] + given['focal-length'] / given.extension,
      because:
        'That adds the focal length divided by the rings. Count the other way: how many focal lengths are the rings long?',
    },
    {
      id: 'times-crop-factor',
      value: (given) => given['crop-factor'] * (given['focus-magnification'] + given.extension / given['focal-length']),
      because:
        'That is the right number times the crop factor, {crop-factor}. A smaller sensor catches less of the image. It does not make the image larger.',
    },
  ],
  hint: 'How many focal lengths long are the rings? And what did the lens give before they went in?',
  working: [
    {
      formula: magnificationFromExtensionFormula,
      note: 'The rings add their length, counted in focal lengths, to what the lens gives by itself. The sensor does not matter.',
    },
  ],
});

const ringToBuy = numberFamily({
  id: 'ring-for-a-size',
  asks: 'extension',
  question:
    'You want {magnification} with {a focal-length} lens that reaches {focus-magnification} by itself. How much extension do you need?',
  givens: (draw) => ({
    'focal-length': draw.pick(focalLengths),
    magnification: draw.pick([0.4, 0.5, 0.6, 0.75, 1.25, 1.5]),
    'focus-magnification': draw.pick([0.1, 0.15, 0.2, 0.25]),
  }),
  tolerance: { relative: 0.02, because: 'rings come in whole millimetres' },
  mistakes: [
    {
      id: 'own-focusing-forgotten',
      value: (given) => given['focal-length'] * given.magnification,
      because:
        'That is what you would need with the lens set to infinity. At its closest focus it already gives {focus-magnification}, so only the rest is missing.',
    },
    {
      id: 'one-over-the-size',
      value: (given) => given['focal-length'] * (1 / given.magnification - given['focus-magnification']),
      because:
        'That takes one over the size you want, as for the distance of the subject. A ring counts by {magnification} itself.',
    },
    {
      id: 'whole-image-distance',
      value: (given) => given['focal-length'] * (1 + given.magnification),
      because:
        'That is the whole distance from H′ to the sensor. The lens supplies one focal length of it, and what its own focusing adds.',
    },
    {
      id: 'divided',
      value: (given) => given['focal-length'] / given.magnification,
      because:
        'That divides the focal length by the magnification, so a larger image would need less ring. Each focal length of extension adds 1: multiply.',
    },
    {
      id: 'own-focusing-added',
      value: (given) => given['focal-length'] * (given.magnification + given['focus-magnification']),
      because:
        'That adds what the lens gives by itself. Subtract it: {focus-magnification} of the {magnification} needs no ring.',
    },
  ],
  hint: 'How much magnification is missing? Each focal length of extension adds 1.',
  working: [
    {
      formula: extensionForMagnificationFormula,
      note: 'What is missing, {magnification} less {focus-magnification}, times the focal length.',
    },
  ],
});

const roomLeft = numberFamily({
  id: 'room-left',
  asks: 'working-distance',
  question:
    'With rings, {a focal-length} lens gives {magnification}. Its front principal plane H is {front-principal-depth} behind its front rim. How far is the subject from the rim?',
  givens: (draw) => ({
    'focal-length': draw.pick([50, 60, 85, 100, 135]),
    magnification: draw.pick([0.4, 0.5, 0.6, 0.75, 1.25, 1.5, 2]),
    'front-principal-depth': draw.pick([12, 18, 22, 30]),
  }),
  tolerance: { relative: 0.03, because: 'a distance to the rim is measured to a few per cent' },
  mistakes: [
    {
      id: 'from-h',
      value: (given) => evaluateFormula(subjectDistanceFormula, given),
      because: 'That is the distance from H. The rim is {front-principal-depth} in front of H: subtract that.',
    },
    {
      id: 'image-side',
      value: (given) => given['focal-length'] * (1 + given.magnification) - given['front-principal-depth'],
      because: 'That uses f (1 + m), the distance from H′ to the sensor. From H to the subject it is f (1 + 1/m).',
    },
    {
      id: 'focal-length',
      value: (given) => given['focal-length'] - given['front-principal-depth'],
      because: 'That puts the subject one focal length from H. It is farther away, by the focal length divided by m.',
    },
    {
      id: 'depth-added',
      value: (given) => evaluateFormula(subjectDistanceFormula, given) + given['front-principal-depth'],
      because:
        'That adds the {front-principal-depth} from rim to H. The rim is nearer to the subject than H: subtract them.',
    },
    {
      id: 'focal-length-over-m',
      value: (given) => given['focal-length'] / given.magnification,
      because:
        'That is the focal length divided by m, counted from one focal length in front of H. Add the focal length, then subtract the {front-principal-depth} from rim to H.',
    },
    {
      id: 'focal-length-over-m-from-the-rim',
      value: (given) => given['focal-length'] / given.magnification - given['front-principal-depth'],
      because:
        'That leaves out one focal length. From H to the subject it is the focal length divided by m, and one focal length more.',
    },
    {
      id: 'from-the-sensor',
      value: (given) => evaluateFormula(focusDistanceFormula, { ...given, 'principal-separation': 0 }),
      because:
        'That is the focus distance, from the sensor to the subject, with H and H′ in one place. The room in front of the rim is f (1 + 1/m) less {front-principal-depth}.',
    },
  ],
  hint: 'How far is the subject from H? That takes only f and m. Then subtract the part of the lens in front of H.',
  working: [
    { formula: subjectDistanceFormula, note: 'From H to the subject:' },
    { formula: workingDistanceFormula, note: 'From the rim, which is in front of H:' },
  ],
});

const lightPaid = numberFamily({
  id: 'light-paid',
  asks: 'effective-f-number',
  question:
    'With rings a lens gives {magnification}. Its pupil magnification is {pupil-magnification}, and you set it to {f-number}. What is its effective f-number?',
  givens: (draw) => ({
    magnification: draw.pick([0.5, 0.75, 1.25, 1.5, 2]),
    'pupil-magnification': draw.pick([0.6, 0.7, 1.3, 1.5, 1.8]),
    'f-number': draw.pick([4, 5.6, 8, 11]),
  }),
  tolerance: { relative: 0.03, because: '3 per cent is a twelfth of a stop, finer than anyone sets a lens' },
  mistakes: [
    {
      id: 'symmetric-lens',
      value: (given) => given['f-number'] * (1 + given.magnification),
      because:
        'That is N (1 + m), right only if both pupils are equally wide (P = 1). Here, first divide m by {pupil-magnification}.',
    },
    {
      id: 'multiplied-by-pupils',
      value: (given) => given['f-number'] * (1 + given.magnification * given['pupil-magnification']),
      because:
        'That multiplies m by P. Divide instead: with a larger exit pupil the cone is wider and less light is lost.',
    },
    {
      id: 'nothing-lost',
      value: (given) => given['f-number'],
      because:
        'That is the marked f-number. The lens is farther from the sensor now, so the cone that arrives is narrower.',
    },
    {
      id: 'times-magnification',
      value: (given) => given['f-number'] * given.magnification,
      because:
        'That is N times m. At a small magnification it would make the image brighter than without rings. N grows by a share of itself, m divided by P.',
    },
    {
      id: 'divided',
      value: (given) => given['f-number'] / (1 + given.magnification),
      because:
        'That divides by 1 + m, as if the image became brighter. Close up the cone is narrower: the effective f-number is larger than the marked one.',
    },
  ],
  hint: 'Divide m by P first. By what share of itself does the f-number then grow?',
  working: [{ formula: effectiveFNumberFormula, note: 'The marked f-number grows by m divided by P:' }],
});

export const families = [ringOnALens, ringToBuy, roomLeft, lightPaid] as const;
