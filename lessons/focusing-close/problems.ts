import { closeFocusFocalLengthFormula } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { imageDistanceOfSubjectFormula } from '#core/gaussian/image-distance-of-subject.formula.ts';
import { imageDistanceFormula } from '#core/gaussian/image-distance.formula.ts';
import { magnificationAtFocusDistanceFormula } from '#core/gaussian/magnification-at-focus-distance.formula.ts';
import { magnificationsAtFocusDistance } from '#core/gaussian/magnifications-at-focus-distance.ts';
import { nearestFocusDistanceFormula } from '#core/gaussian/nearest-focus-distance.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';

const focalLengths = [28, 35, 50, 60, 85, 100, 135];
const separations = [-12, 12, 16, 20];

const travel = numberFamily({
  id: 'travel',
  asks: 'focus-travel',
  question:
    '{A focal-length} lens moves as a whole. You want a magnification of {magnification}. How far must the lens stand out from its infinity setting?',
  givens: (draw) => ({
    'focal-length': draw.pick(focalLengths),
    magnification: draw.pick([0.15, 0.25, 0.3, 0.4, 0.5, 0.75]),
  }),
  answer: (given) => given['focal-length'] * given.magnification,
  tolerance: { relative: 0.02, because: 'a focal length is engraved to a few per cent' },
  mistakes: [
    {
      id: 'all-of-the-image-side',
      value: (given) => evaluateFormula(imageDistanceFormula, given),
      because:
        'That is the whole distance from H′ to the sensor. At infinity the lens already stands {focal-length} of it away: subtract that.',
    },
    {
      id: 'divided',
      value: (given) => given['focal-length'] / given.magnification,
      because:
        'That divides by m, so a larger image would take less travel. On the side of the subject distances go with one over m; on the side of the sensor they go with m.',
    },
    {
      id: 'side-of-the-subject',
      value: (given) => given['focal-length'] * (1 + 1 / given.magnification),
      because: 'That is the distance of the subject from H. The lens moves on the side of the sensor.',
    },
    {
      id: 'over-the-sum',
      value: (given) => (given['focal-length'] * given.magnification) / (1 + given.magnification),
      because: 'That divides by 1 + m. Travel is counted from infinity, so m alone counts, times the focal length.',
    },
    {
      id: 'life-size',
      value: (given) => given['focal-length'],
      because: 'That is the travel for life size. You want less: {magnification}.',
    },
  ],
  hint: 'How far from the sensor is H′ at infinity, and how far at this magnification?',
  working: [
    { formula: imageDistanceFormula, note: 'From H′ to the sensor at this magnification:' },
    {
      values: (known) => ({ 'focus-travel': known['focal-length'] * known.magnification }),
      note: 'At infinity it is one focal length, {focal-length}. The rest is travel, m focal lengths: {focus-travel}.',
    },
  ],
});

interface OnTheScale {
  readonly 'focal-length': number;
  readonly 'focus-distance': number;
  readonly 'principal-separation': number;
}

const sizeOf = (given: OnTheScale) =>
  magnificationsAtFocusDistance({
    focusDistance: given['focus-distance'],
    focalLength: given['focal-length'],
    principalSeparation: given['principal-separation'],
  })[0];

const sizeOnTheScale = numberFamily({
  id: 'size-on-the-scale',
  asks: 'magnification',
  question:
    '{A focal-length} lens moves as a whole; its H′ is {principal-separation} behind H (negative: in front). You set its focus ring to {focus-distance}. What is the magnification there, below life size?',
  givens: (draw) => {
    const lens = {
      'focal-length': draw.pick([35, 50, 60]),
      'principal-separation': draw.pick(separations),
      magnification: draw.pick([0.15, 0.2, 0.25, 0.3, 0.4]),
    };
    return {
      'focal-length': lens['focal-length'],
      'principal-separation': lens['principal-separation'],
      'focus-distance': Math.round(evaluateFormula(focusDistanceFormula, lens)),
    };
  },
  answer: sizeOf,
  tolerance: { relative: 0.015, because: 'a distance on a ring is read to a per cent or so' },
  mistakes: [
    {
      id: 'as-from-h',
      value: (given) => given['focal-length'] / (given['focus-distance'] - given['focal-length']),
      because:
        'That takes {focus-distance} as the distance from H. The ring counts from the sensor: the image side and HH′ are in it too.',
    },
    {
      id: 'one-ratio',
      value: (given) => given['focal-length'] / given['focus-distance'],
      because:
        'That is f divided by the distance, which is near enough only for far subjects. Use L = f (2 + m + 1/m) + HH′.',
    },
    {
      id: 'planes-in-one-place',
      value: (given) => sizeOf({ ...given, 'principal-separation': 0 }),
      because: 'That leaves out HH′, {principal-separation}. Subtract it from the distance first.',
    },
    {
      id: 'other-place',
      value: (given) => 1 / sizeOf(given),
      because:
        'That is the other place of the lens at this distance, beyond life size. The question asks for the smaller magnification.',
    },
    {
      id: 'planes-added',
      value: (given) => sizeOf({ ...given, 'principal-separation': -given['principal-separation'] }),
      because: 'That adds HH′ to the distance. It is in the distance already: subtract {principal-separation}.',
    },
  ],
  hint: 'Take HH′ off the distance and count the rest in focal lengths: that is 2 + m + 1/m. “What do the numbers on a lens say?” has a formula that is solved for m.',
  working: [
    {
      note: 'Take {principal-separation} off {focus-distance}, divide by {focal-length} and take off 2: that is m + 1/m. Two magnifications have that sum, each one over the other.',
    },
    { formula: magnificationAtFocusDistanceFormula, note: 'Solved for m, the smaller of the two:' },
  ],
});

const sensorToSubject = numberFamily({
  id: 'sensor-to-subject',
  asks: 'focus-distance',
  question:
    '{A focal-length} lens gives {magnification}. Its H′ is {principal-separation} behind H (negative: in front). How far is it from the sensor to the subject?',
  givens: (draw) => ({
    'focal-length': draw.pick([50, 60, 85, 100]),
    // Not 1, where any lens is four focal lengths long, as the question about the floor has it.
    magnification: draw.pick([0.25, 0.4, 0.5, 1.5, 2]),
    'principal-separation': draw.pick(separations),
  }),
  tolerance: { relative: 0.01, because: 'a tape along the lens is read to a few millimetres' },
  mistakes: [
    {
      id: 'from-h',
      value: (given) => evaluateFormula(subjectDistanceFormula, given),
      because: 'That is the distance from H to the subject. Add what is behind it: HH′ and the image distance.',
    },
    {
      id: 'one-over-m-forgotten',
      value: (given) => given['focal-length'] * (2 + given.magnification) + given['principal-separation'],
      because: 'That takes one focal length for the side of the subject. It is f (1 + 1/m) long: add f divided by m.',
    },
    {
      id: 'planes-in-one-place',
      value: (given) => evaluateFormula(focusDistanceFormula, { ...given, 'principal-separation': 0 }),
      because: 'That takes H and H′ to be in one place. Add HH′, {principal-separation}.',
    },
    {
      id: 'planes-subtracted',
      value: (given) =>
        evaluateFormula(focusDistanceFormula, { ...given, 'principal-separation': -given['principal-separation'] }),
      because: 'That subtracts HH′. It is part of the way from sensor to subject, with its sign: add it.',
    },
    {
      id: 'm-forgotten',
      value: (given) => given['focal-length'] * (2 + 1 / given.magnification) + given['principal-separation'],
      because: 'That takes one focal length for the side of the sensor. It is f (1 + m) long: add f times m.',
    },
  ],
  hint: 'The way has three parts: from the subject to H, from H to H′, from H′ to the sensor.',
  working: [
    { formula: focusDistanceFormula, note: 'Both sides together are f (2 + m + 1/m). HH′ comes with its sign:' },
  ],
});

/** The slip wants bare numbers: those of the lens in millimetres, those of the subject in metres. */
const bareMetres = (millimetres: number) => millimetres / 1000;

const imageSide = numberFamily({
  id: 'image-side',
  asks: 'image-distance',
  question:
    'A bay leaf is {subject-distance} from H of {a focal-length} lens. How far behind H′ is its image, where the sensor must be?',
  givens: (draw) => ({
    'focal-length': draw.pick([50, 60, 85, 100, 135]),
    'subject-distance': draw.pick([1200, 1500, 2000, 2500, 3000]),
  }),
  tolerance: { relative: 0.01, because: 'three figures are enough for a focus ring' },
  mistakes: [
    {
      id: 'mixed-units',
      value: ({ 'focal-length': f, 'subject-distance': s }) => Math.abs((f * bareMetres(s)) / (bareMetres(s) - f)),
      because:
        'That mixes millimetres and metres. Write {subject-distance} in millimetres before you put it beside {focal-length}.',
    },
    {
      id: 'sum-below',
      value: ({ 'focal-length': f, 'subject-distance': s }) => (f * s) / (s + f),
      because:
        'That divides by s + f, and the image would be nearer than one focal length. From 1/s + 1/s′ = 1/f comes s − f.',
    },
    {
      id: 'travel',
      value: ({ 'focal-length': f, 'subject-distance': s }) => (f * f) / (s - f),
      because:
        'That is how far the lens stands out from infinity. At infinity the image is one focal length behind H′: add that.',
    },
    {
      id: 'added',
      value: ({ 'focal-length': f, 'subject-distance': s }) => f + s,
      because: 'That adds the distances. It is their reciprocals that add up: 1/s + 1/s′ = 1/f.',
    },
    {
      id: 'at-infinity',
      value: (given) => given['focal-length'],
      because: 'That is where the image of the horizon is. The leaf is nearer, so its image is farther behind.',
    },
    {
      id: 'not-turned-over',
      value: (given) => 1 / given['focal-length'] - 1 / given['subject-distance'],
      because: 'That is one over the image distance. Divide 1 by it.',
    },
  ],
  hint: 'Put both lengths into one unit. Which is then a little longer than the focal length?',
  working: [{ formula: imageDistanceOfSubjectFormula, note: 'Both in millimetres, 1/s + 1/s′ = 1/f solved for s′:' }],
});

const floor = numberFamily({
  id: 'floor',
  asks: 'focus-distance',
  question:
    '{A focal-length} lens moves as a whole, on a tube as long as you like. Its H′ is {principal-separation} behind H (negative: in front). How near to the sensor can a sharp subject be?',
  givens: (draw) => ({
    'focal-length': draw.pick(focalLengths),
    'principal-separation': draw.pick(separations),
  }),
  tolerance: { relative: 0.01, because: 'a tape along the lens is read to a few millimetres' },
  mistakes: [
    {
      id: 'one-side',
      value: (given) => 2 * given['focal-length'],
      because: 'That is one side only. At life size there are two focal lengths on each side of the lens.',
    },
    {
      id: 'planes-in-one-place',
      value: (given) => 4 * given['focal-length'],
      because: 'That takes H and H′ to be in one place. Add HH′, {principal-separation}.',
    },
    {
      id: 'planes-subtracted',
      value: (given) => 4 * given['focal-length'] - given['principal-separation'],
      because: 'That subtracts HH′. It is part of the way from sensor to subject, with its sign: add it.',
    },
  ],
  hint: 'At which magnification are both sides of the lens alike? How long is each there?',
  working: [
    { formula: nearestFocusDistanceFormula, note: 'At life size: two focal lengths before H, two behind H′, and HH′.' },
  ],
});

const inside = numberFamily({
  id: 'inside',
  asks: 'focal-length',
  question:
    'A macro lens engraved {engraved.focal-length} focuses inside. Its maker prints a closest focus distance of {focus-distance} and a magnification of {magnification} there. Take its H′ to be {principal-separation} behind H (negative: in front). What focal length has it there?',
  givens: (draw) => {
    const engraved = draw.pick([60, 90, 100, 150]);
    const close = {
      'focal-length': engraved * draw.pick([0.68, 0.74, 0.8]),
      magnification: draw.pick([0.5, 1]),
      'principal-separation': draw.pick([-15, 15, 20]),
    };
    return {
      'engraved.focal-length': engraved,
      magnification: close.magnification,
      'principal-separation': close['principal-separation'],
      'focus-distance': Math.round(evaluateFormula(focusDistanceFormula, close)),
    };
  },
  tolerance: { relative: 0.01, because: 'printed distances are rounded to a few millimetres' },
  mistakes: [
    {
      id: 'engraved',
      value: (given) => given['engraved.focal-length'],
      because: 'That is the engraving, which holds at infinity. Groups have moved since, and f has changed with them.',
    },
    {
      id: 'planes-in-one-place',
      value: (given) => evaluateFormula(closeFocusFocalLengthFormula, { ...given, 'principal-separation': 0 }),
      because: 'That leaves out HH′. Take {principal-separation} off the distance before you divide.',
    },
    {
      id: 'planes-added',
      value: (given) =>
        evaluateFormula(closeFocusFocalLengthFormula, {
          ...given,
          'principal-separation': -given['principal-separation'],
        }),
      because: 'That adds HH′ to the distance. It is already in it: subtract {principal-separation}.',
    },
    {
      id: 'one-over-m-forgotten',
      value: (given) => (given['focus-distance'] - given['principal-separation']) / (2 + given.magnification),
      because: 'That divides by 2 + m. The side of the subject adds 1/m to it.',
    },
  ],
  hint: 'Which part of the distance is not glass bending light? Divide the rest by what f is multiplied with in L.',
  working: [{ formula: closeFocusFocalLengthFormula, note: 'The focus distance, solved for the focal length:' }],
});

export const families = [travel, sizeOnTheScale, sensorToSubject, imageSide, floor, inside] as const;
