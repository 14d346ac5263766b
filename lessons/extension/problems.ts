import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { extensionForMagnificationFormula } from '#core/gaussian/extension-for-magnification.formula.ts';
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
    '{A focal-length} lens gives {focus-magnification} at its closest focus. You add {extension} of rings and leave the focus there. What is the magnification?',
  givens: (draw) => ({
    'focal-length': draw.pick(focalLengths),
    extension: draw.pick(ringSets),
    'focus-magnification': draw.pick([0.1, 0.12, 0.15, 0.2, 0.25]),
  }),
  tolerance: { relative: 0.02, because: 'ring lengths are good to half a millimetre' },
  mistakes: [
    {
      id: 'own-focusing-forgotten',
      value: (given) => given.extension / given['focal-length'],
      because:
        'That is the rings’ part alone, {extension} over {focal-length}. The lens’s own {focus-magnification} comes on top.',
    },
    {
      id: 'over-the-sum',
      value: (given) => given['focus-magnification'] + given.extension / (given['focal-length'] + given.extension),
      because:
        'That divides the rings by focal length and rings together. Only the focal length belongs below the line.',
    },
    {
      id: 'multiplied',
      value: (given) => given['focus-magnification'] * (1 + given.extension / given['focal-length']),
      because:
        'That multiplies the lens’s own part by what the rings give. The two add up: each millimetre of extension counts the same, wherever it comes from.',
    },
  ],
  hint: 'How many focal lengths long are the rings? And what was there before they went in?',
  working: [
    {
      formula: magnificationFromExtensionFormula,
      note: 'The rings add their length counted in focal lengths to what the lens gives by itself.',
    },
  ],
});

const ringToBuy = numberFamily({
  id: 'ring-for-a-size',
  asks: 'extension',
  question:
    'You want {magnification} with {a focal-length} lens that reaches {focus-magnification} by itself. How much extension does it take?',
  givens: (draw) => ({
    'focal-length': draw.pick(focalLengths),
    magnification: draw.pick([0.4, 0.5, 0.75, 1, 1.25, 1.5]),
    'focus-magnification': draw.pick([0.1, 0.15, 0.2, 0.25]),
  }),
  tolerance: { relative: 0.02, because: 'rings come in whole millimetres' },
  mistakes: [
    {
      id: 'own-focusing-forgotten',
      value: (given) => given['focal-length'] * given.magnification,
      because:
        'That is what it would take with the lens set to infinity. It already gives {focus-magnification}, so only the rest is missing.',
    },
    {
      id: 'whole-image-distance',
      value: (given) => given['focal-length'] * (1 + given.magnification),
      because: 'That is the whole way from H′ to the sensor. One focal length of it was there before any ring.',
    },
    {
      id: 'own-focusing-added',
      value: (given) => given['focal-length'] * (given.magnification + given['focus-magnification']),
      because:
        'That adds what the lens gives by itself. It is taken off: {focus-magnification} of the {magnification} need no ring.',
    },
  ],
  hint: 'How much magnification is missing? Each focal length of extension brings one.',
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
    'Rings bring {a focal-length} lens to {magnification}. H stands {front-principal-depth} behind its front rim. How far is the subject from the rim?',
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
      because:
        'That is the distance from H. The rim stands {front-principal-depth} in front of H, and that much of the room is gone.',
    },
    {
      id: 'image-side',
      value: (given) => given['focal-length'] * (1 + given.magnification) - given['front-principal-depth'],
      because:
        'That uses f (1 + m), which is the distance behind the lens. In front of it the subject stands at f (1 + 1/m).',
    },
    {
      id: 'focal-length',
      value: (given) => given['focal-length'] - given['front-principal-depth'],
      because: 'That puts the subject at the focal point. It stands beyond it, by the focal length over m.',
    },
  ],
  hint: 'First the distance from H, which needs only f and m. Then take away what stands in front of H.',
  working: [
    { formula: subjectDistanceFormula, note: 'From H to the subject:' },
    { formula: workingDistanceFormula, note: 'From the rim, which stands in front of H:' },
  ],
});

const lightPaid = numberFamily({
  id: 'light-paid',
  asks: 'effective-f-number',
  question:
    'With rings a lens works at {magnification}. Its pupil magnification is {pupil-magnification} and you set {f-number}. Which f-number does it work at?',
  givens: (draw) => ({
    magnification: draw.pick([0.5, 0.75, 1, 1.5, 2]),
    'pupil-magnification': draw.pick([0.6, 0.7, 1.3, 1.5, 1.8]),
    'f-number': draw.pick([4, 5.6, 8, 11]),
  }),
  tolerance: { relative: 0.03, because: 'a sixth of a stop is 6 per cent, and nobody sets finer' },
  mistakes: [
    {
      id: 'symmetric-lens',
      value: (given) => given['f-number'] * (1 + given.magnification),
      because:
        'That is N (1 + m), right only where both pupils are of one size. Here m is first divided by {pupil-magnification}.',
    },
    {
      id: 'multiplied-by-pupils',
      value: (given) => given['f-number'] * (1 + given.magnification * given['pupil-magnification']),
      because:
        'That multiplies m by the pupil magnification. It divides: a larger exit pupil sends a wider cone to the sensor.',
    },
    {
      id: 'nothing-lost',
      value: (given) => given['f-number'],
      because:
        'That is the number on the ring. The lens is farther from the sensor now, so the cone that arrives is narrower.',
    },
  ],
  hint: 'The marked number grows by the part m over P.',
  working: [{ formula: effectiveFNumberFormula, note: 'The marked number, grown by m over P:' }],
});

export const families = [ringOnALens, ringToBuy, roomLeft, lightPaid] as const;
