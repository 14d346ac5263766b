import { arcminute, circleOfConfusionByViewingFormula } from '#core/depth/circle-of-confusion-by-viewing.formula.ts';
import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { farLimitFormula } from '#core/depth/far-limit.formula.ts';
import { nearLimitFormula } from '#core/depth/near-limit.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { magnificationOfSubjectFormula } from '#core/gaussian/magnification-of-subject.formula.ts';
import { numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { circlesOfBodies } from '#site/state/body-circle.ts';

const apertures = [4, 5.6, 8, 11, 16];
const symmetric = { 'pupil-magnification': 1 };
const focalLengths = [50, 60, 85, 100];

interface CloseUp {
  readonly magnification: number;
  readonly 'f-number': number;
  readonly 'pupil-magnification': number;
  readonly 'circle-of-confusion': number;
}

/** The close-up depth by the right way; wrong ones change one of the numbers. */
function closeUp(given: CloseUp): number {
  return evaluateFormula(depthOfFieldCloseUpFormula, {
    ...given,
    'effective-f-number': evaluateFormula(effectiveFNumberFormula, given),
  });
}

/** As one would read it off: three figures. */
function rounded(depth: number): number {
  return Number(depth.toPrecision(3));
}

const depthAtASize = numberFamily({
  id: 'depth-at-a-size',
  asks: 'depth-of-field-close-up',
  question:
    'At {magnification} a lens with a pupil magnification of {pupil-magnification} is set to {f-number}. The circle of confusion is {circle-of-confusion}. How deep is the sharp part, from front to back?',
  givens: (draw) => ({
    magnification: draw.pick([0.25, 0.4, 0.75, 1.5, 2.5, 3]),
    'f-number': draw.pick(apertures),
    'pupil-magnification': draw.pick([0.6, 0.7, 0.8, 1.4, 1.6]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
  }),
  tolerance: { relative: 0.03, because: 'nobody can see to three per cent where sharpness ends' },
  mistakes: [
    {
      id: 'marked-f-number',
      value: (given) =>
        evaluateFormula(depthOfFieldCloseUpFormula, { ...given, 'effective-f-number': given['f-number'] }),
      because:
        'That uses the marked {f-number}. The cone of light that reaches the sensor is narrower: first work out the effective f-number.',
    },
    {
      id: 'one-side',
      value: (given) => closeUp(given) / 2,
      because: 'That is the depth on one side of the sharp plane. There is as much again on the other.',
    },
    {
      id: 'not-squared',
      value: (given) => closeUp(given) * given.magnification,
      because:
        'That divides by m once. Divide by m twice: the blur on the subject is c divided by m, and the nearer lens takes in a wider cone.',
    },
    {
      id: 'pupils-forgotten',
      value: (given) => closeUp({ ...given, 'pupil-magnification': 1 }),
      because:
        'That takes N (1 + m) as the effective f-number, which is right only if both pupils are equally wide. First divide m by {pupil-magnification}.',
    },
    {
      id: 'doubled',
      value: (given) => 2 * closeUp(given),
      because: 'That is twice the depth. The formula already counts both sides of the sharp plane, in its factor of 2.',
    },
    {
      id: 'multiplied',
      value: (given) => closeUp(given) * given.magnification ** 4,
      because:
        'That multiplies by m squared. Divide: the more an image is magnified, the less of the subject’s depth is sharp.',
    },
  ],
  hint: 'Which f-number counts this close? And does m count once or twice?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The effective f-number, this close:' },
    { formula: depthOfFieldCloseUpFormula, note: 'Then the depth, both sides together:' },
  ],
});

const depthFromADistance = numberFamily({
  id: 'depth-from-a-distance',
  asks: 'depth-of-field-close-up',
  question:
    'A postage stamp is {subject-distance} from the front principal plane H of {a focal-length} lens, whose pupils are equally wide (P = 1). The lens is set to {f-number}, and the circle of confusion is {circle-of-confusion}. How deep is the sharp part?',
  givens: (draw) => {
    const focalLength = draw.pick(focalLengths);
    return {
      ...symmetric,
      'focal-length': focalLength,
      'subject-distance': focalLength * draw.pick([2, 2.5, 3, 4, 5]),
      'f-number': draw.pick(apertures),
      'circle-of-confusion': draw.pick(circlesOfBodies),
    };
  },
  tolerance: { relative: 0.03, because: 'nobody can see to three per cent where sharpness ends' },
  mistakes: [
    {
      id: 'distant-subject',
      value: (given) =>
        2 * given['f-number'] * given['circle-of-confusion'] * (given['subject-distance'] / given['focal-length']) ** 2,
      because:
        'That is the rule for distant subjects, 2 N c s²/f². Here the subject is only a few focal lengths away, and it gives too large a depth.',
    },
    {
      id: 'marked-f-number',
      value: (given) =>
        evaluateFormula(depthOfFieldCloseUpFormula, {
          ...given,
          magnification: sizeAt(given),
          'effective-f-number': given['f-number'],
        }),
      because: 'The magnification is right, but you used the marked {f-number}. The effective f-number is larger.',
    },
    {
      id: 'size-of-a-distant-subject',
      value: (given) => closeUp({ ...given, magnification: given['focal-length'] / given['subject-distance'] }),
      because:
        'That takes {focal-length} divided by {subject-distance} as the magnification, which is right only for distant subjects. First subtract the focal length from the distance.',
    },
    {
      id: 'one-side',
      value: (given) => closeUp({ ...given, magnification: sizeAt(given) }) / 2,
      because: 'That is the depth on one side of the sharp plane. There is as much again on the other.',
    },
    {
      id: 'not-squared',
      value: (given) => closeUp({ ...given, magnification: sizeAt(given) }) * sizeAt(given),
      because:
        'That divides by m once. Divide by m twice: the blur on the subject is c divided by m, and the nearer lens takes in a wider cone.',
    },
    {
      id: 'doubled',
      value: (given) => 2 * closeUp({ ...given, magnification: sizeAt(given) }),
      because: 'That is twice the depth. The formula already counts both sides of the sharp plane, in its factor of 2.',
    },
  ],
  hint: 'Distance and focal length give you one thing: the magnification. After that you no longer need them.',
  working: [
    { formula: magnificationOfSubjectFormula, note: 'How large the stamp is on the sensor:' },
    { formula: effectiveFNumberFormula, note: 'The effective f-number at that magnification:' },
    { formula: depthOfFieldCloseUpFormula, note: 'And the depth. Distance and focal length no longer count.' },
  ],
});

function sizeAt(given: { readonly 'focal-length': number; readonly 'subject-distance': number }): number {
  return evaluateFormula(magnificationOfSubjectFormula, given);
}

const anotherAperture = numberFamily({
  id: 'another-aperture',
  asks: 'depth-of-field-close-up',
  question:
    'A lens whose pupils are equally wide shows a bay leaf at {magnification}. At {first.f-number}, {first.depth-of-field} of the leaf’s depth is sharp; the circle of confusion is {circle-of-confusion}. You set {f-number} and change nothing else. How much of its depth is sharp now?',
  givens: (draw) => {
    const given = {
      ...symmetric,
      magnification: draw.pick([0.25, 0.5, 1, 1.5]),
      'circle-of-confusion': draw.pick(circlesOfBodies),
      'first.f-number': draw.pick(apertures),
    };
    return {
      ...given,
      'f-number': draw.pick([4, 8, 16, 22]),
      'first.depth-of-field': rounded(closeUp({ ...given, 'f-number': given['first.f-number'] })),
    };
  },
  tolerance: { relative: 0.04, because: 'marked f-numbers are rounded by up to three per cent' },
  mistakes: [
    {
      id: 'other-way-round',
      value: (given) => (given['first.depth-of-field'] * given['first.f-number']) / given['f-number'],
      because: 'That goes the other way. A larger f-number is a smaller opening, a narrower cone and more depth.',
    },
    {
      id: 'like-the-light',
      value: (given) => given['first.depth-of-field'] * (given['f-number'] / given['first.f-number']) ** 2,
      because:
        'That is how the light changes: with the area of the opening. Depth depends on its width: do not square.',
    },
    {
      id: 'one-side',
      value: (given) => (given['first.depth-of-field'] * given['f-number']) / given['first.f-number'] / 2,
      because: 'That is one side of the sharp plane. The depth that is given counts both: do not halve it.',
    },
    {
      id: 'as-before',
      value: (given) => given['first.depth-of-field'],
      because: 'That is the old depth. A new f-number changes it, even at the same magnification.',
    },
  ],
  hint: 'How many times the old f-number is the new one?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The new effective f-number:' },
    {
      formula: depthOfFieldCloseUpFormula,
      note: 'The depth with it. A shortcut: only the f-number has changed, so multiply {first.depth-of-field} by the new f-number and divide by the old one.',
    },
  ],
});

const anotherLens = numberFamily({
  id: 'another-lens',
  asks: 'depth-of-field-close-up',
  question:
    '{A first.focal-length} lens shows a jumping spider at {magnification} and {f-number}. The circle of confusion is {circle-of-confusion}, and {first.depth-of-field} of the spider’s depth is sharp. You change to {a second.focal-length} lens and step back until the spider is as large as before, at the same f-number. Both lenses have pupils that are equally wide. How much of its depth is sharp now?',
  givens: (draw) => {
    const given = {
      ...symmetric,
      magnification: draw.pick([0.25, 0.5, 1, 1.5]),
      'circle-of-confusion': draw.pick(circlesOfBodies),
      'f-number': draw.pick(apertures),
    };
    return {
      ...given,
      'first.focal-length': draw.pick([50, 60]),
      'second.focal-length': draw.pick([85, 100, 135, 180]),
      'first.depth-of-field': rounded(closeUp(given)),
    };
  },
  tolerance: { relative: 0.05, because: 'nobody can see to five per cent where sharpness ends' },
  mistakes: [
    {
      id: 'same-distance',
      value: (given) =>
        given['first.depth-of-field'] * (given['first.focal-length'] / given['second.focal-length']) ** 2,
      because:
        'That is roughly what the longer lens gives from the same place. But you stepped back, and distance counts as well.',
    },
    {
      id: 'longer-is-thinner',
      value: (given) => (given['first.depth-of-field'] * given['first.focal-length']) / given['second.focal-length'],
      because:
        'That makes the depth smaller as the focal length grows, because the opening is wider at the same f-number. But how far away is it now? Depth hangs on the cone, seen from the spider.',
    },
    {
      id: 'farther-is-deeper',
      value: (given) => (given['first.depth-of-field'] * given['second.focal-length']) / given['first.focal-length'],
      because:
        'That counts the longer distance, but at the same f-number the opening is wider as well. Depth hangs on the cone, seen from the spider.',
    },
  ],
  hint: 'Which letters are in the close-up formula? Which one is not?',
  working: [
    {
      formula: effectiveFNumberFormula,
      note: 'Nothing in the effective f-number has changed, and the focal length is not in it:',
    },
    {
      formula: depthOfFieldCloseUpFormula,
      note: 'The focal length is not in the depth either: the wider opening is farther away in the same proportion. The depth is what it was:',
    },
  ],
});

const circleByViewing = numberFamily({
  id: 'circle-by-viewing',
  asks: 'circle-of-confusion',
  question:
    'A print {print-width} wide will be seen from {viewing-distance}. The sensor is {sensor-width} wide. Which circle of confusion fits this, if the eye can see one arcminute?',
  givens: (draw) => ({
    'print-width': draw.pick([180, 240, 300, 400, 600]),
    'viewing-distance': draw.pick([250, 300, 400, 500, 700, 1000]),
    'sensor-width': draw.pick([17.3, 23.5, 36]),
  }),
  tolerance: { relative: 0.04, because: 'some round one arcminute, 0.00029 radian, to 0.0003' },
  mistakes: [
    {
      id: 'on-the-print',
      value: (given) => given['viewing-distance'] * arcminute,
      because:
        'That is the blur on the print. On the sensor the picture is {sensor-width} wide instead of {print-width}, so the blur is smaller in proportion.',
    },
    {
      id: 'enlarged',
      value: (given) =>
        evaluateFormula(circleOfConfusionByViewingFormula, {
          ...given,
          'print-width': given['sensor-width'],
          'sensor-width': given['print-width'],
        }),
      because: 'That scales the wrong way. From print to sensor everything gets smaller.',
    },
    {
      id: 'pair-of-lines',
      value: (given) => evaluateFormula(circleOfConfusionByViewingFormula, given) / 2,
      because:
        'That takes the arcminute for a dark and a bright line together, as some authors do. Here it is one line.',
    },
  ],
  hint: 'How wide is an arcminute on the print? And how wide is that on the sensor?',
  working: [
    { formula: circleOfConfusionByViewingFormula, note: 'An arcminute at that distance, scaled from print to sensor:' },
  ],
});

const howFarBehind = numberFamily({
  id: 'how-far-behind',
  asks: 'far-limit',
  question:
    'Not close up this time. A garden gate is {entrance-pupil-distance} from the entrance pupil of a lens. The pupil is {entrance-pupil} wide. The lens shows the gate at {magnification}, and the circle of confusion is {circle-of-confusion}. How far behind the gate does sharpness reach?',
  givens: (draw) => ({
    'entrance-pupil-distance': draw.pick([1000, 1200, 1500, 2000]),
    'entrance-pupil': draw.pick([2, 3, 4, 5]),
    magnification: draw.pick([0.02, 0.025, 0.03, 0.04]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
  }),
  tolerance: { relative: 0.03, because: 'the denominator is a small difference of two rounded numbers' },
  mistakes: [
    {
      id: 'near-limit',
      value: (given) => evaluateFormula(nearLimitFormula, given),
      because:
        'That is how far sharpness reaches in front of the gate. Behind it the blur grows more slowly: subtract c in the denominator, do not add it.',
    },
    {
      id: 'even-halves',
      value: (given) =>
        (given['circle-of-confusion'] * given['entrance-pupil-distance']) /
        (given.magnification * given['entrance-pupil']),
      because:
        'That is half of the close-up depth. This far away the two sides are no longer equal: use the exact limit.',
    },
    {
      id: 'from-the-pupil',
      value: (given) => evaluateFormula(farLimitFormula, given) + given['entrance-pupil-distance'],
      because: 'That is counted from the entrance pupil. The limits here are counted from the sharp plane.',
    },
    {
      id: 'both-sides',
      value: (given) => evaluateFormula(farLimitFormula, given) + evaluateFormula(nearLimitFormula, given),
      because:
        'That is the whole depth of field, in front of the gate and behind it. Here only the part behind is asked for.',
    },
  ],
  hint: 'Which of the two limits do you need? Is c added or subtracted in its denominator?',
  working: [
    {
      formula: farLimitFormula,
      note: 'A point behind the gate, whose cone is just as wide at the gate as the circle of confusion is there:',
    },
  ],
});

export const families = [
  depthAtASize,
  depthFromADistance,
  anotherAperture,
  anotherLens,
  circleByViewing,
  howFarBehind,
] as const;
