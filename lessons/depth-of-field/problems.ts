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
    'At {magnification} a lens with a pupil magnification of {pupil-magnification} is set to {f-number}. The circle of confusion is {circle-of-confusion}. How deep is the sharp part, front to back?',
  givens: (draw) => ({
    magnification: draw.pick([0.25, 0.4, 0.75, 1.5, 2, 3]),
    'f-number': draw.pick(apertures),
    'pupil-magnification': draw.pick([0.7, 0.8, 1, 1.4]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
  }),
  answer: closeUp,
  tolerance: { relative: 0.03, because: 'nobody sees the end of sharpness to three per cent' },
  mistakes: [
    {
      id: 'marked-f-number',
      value: (given) => (2 * given['circle-of-confusion'] * given['f-number']) / given.magnification ** 2,
      because:
        'That puts in the marked {f-number}. The cone of light that reaches the sensor is narrower: first work out the effective f-number.',
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
        'That divides by m only once. Once for the blur carried back to the subject, and once more because the lens has come closer: m is squared.',
    },
  ],
  hint: 'Which f-number does the lens work at, this close? And how often does the magnification count?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The f-number at which the lens works:' },
    { formula: depthOfFieldCloseUpFormula, note: 'Then the depth, both sides together:' },
  ],
});

const depthFromADistance = numberFamily({
  id: 'depth-from-a-distance',
  asks: 'depth-of-field-close-up',
  question:
    '{A focal-length} lens with pupils of one size is {subject-distance} from a postage stamp, counted from H. It is set to {f-number}, and the circle of confusion is {circle-of-confusion}. How deep is the sharp part?',
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
  answer: (given) => closeUp({ ...given, magnification: sizeAt(given) }),
  tolerance: { relative: 0.03, because: 'nobody sees the end of sharpness to three per cent' },
  mistakes: [
    {
      id: 'distant-subject',
      value: (given) =>
        2 * given['f-number'] * given['circle-of-confusion'] * (given['subject-distance'] / given['focal-length']) ** 2,
      because:
        'That is the rule for distant subjects, 2 N c s²/f². Here the subject is only a few focal lengths away, and it makes too much of it.',
    },
    {
      id: 'marked-f-number',
      value: (given) => (2 * given['f-number'] * given['circle-of-confusion']) / sizeAt(given) ** 2,
      because:
        'The magnification is right, but the marked {f-number} went in. This close the lens works at a larger one.',
    },
    {
      id: 'one-side',
      value: (given) => closeUp({ ...given, magnification: sizeAt(given) }) / 2,
      because: 'That is the depth on one side of the sharp plane. There is as much again on the other.',
    },
  ],
  hint: 'Distance and focal length serve for one thing only: the magnification. Then forget them.',
  working: [
    { formula: magnificationOfSubjectFormula, note: 'How large the stamp is on the sensor:' },
    { formula: effectiveFNumberFormula, note: 'The f-number at which the lens then works:' },
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
    'A lens with pupils of one size shows a bay leaf at {magnification}. With {circle-of-confusion} as the circle of confusion the leaf is sharp over {first.depth-of-field} at {first.f-number}. You set {f-number} and move nothing else. Over how much is it sharp now?',
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
  answer: closeUp,
  tolerance: { relative: 0.04, because: 'marked f-numbers are rounded by up to three per cent' },
  mistakes: [
    {
      id: 'other-way-round',
      value: (given) => (given['first.depth-of-field'] * given['first.f-number']) / given['f-number'],
      because: 'That goes the wrong way. A larger f-number is a smaller hole, a more slender cone and more depth.',
    },
    {
      id: 'like-the-light',
      value: (given) => given['first.depth-of-field'] * (given['f-number'] / given['first.f-number']) ** 2,
      because:
        'That is how the exposure goes, with the area of the hole. Depth goes with its width: once, not squared.',
    },
    {
      id: 'as-before',
      value: (given) => given['first.depth-of-field'],
      because: 'That is as much as before. Magnification fixes the depth only together with the f-number.',
    },
  ],
  hint: 'How many times as large is the new f-number?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The new f-number, as the lens works this close:' },
    {
      formula: depthOfFieldCloseUpFormula,
      note: 'The depth with it. Shorter: all but the f-number stayed, so {first.depth-of-field} times {f-number} over {first.f-number}.',
    },
  ],
});

const anotherLens = numberFamily({
  id: 'another-lens',
  asks: 'depth-of-field-close-up',
  question:
    '{A first.focal-length} lens shows a jumping spider at {magnification} and {f-number}. With {circle-of-confusion} as the circle of confusion it is sharp over {first.depth-of-field}. You change to {a second.focal-length} lens and step back until the spider is as large as before, at the same f-number. Both have pupils of one size. Over how much is it sharp now?',
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
  answer: closeUp,
  tolerance: { relative: 0.05, because: 'nobody sees the end of sharpness to five per cent' },
  mistakes: [
    {
      id: 'same-distance',
      value: (given) =>
        given['first.depth-of-field'] * (given['first.focal-length'] / given['second.focal-length']) ** 2,
      because:
        'That would be a long lens from the same place. You stepped back until the picture was the same, and that makes up for all of it.',
    },
    {
      id: 'longer-is-thinner',
      value: (given) => (given['first.depth-of-field'] * given['first.focal-length']) / given['second.focal-length'],
      because:
        'That lets depth shrink as the focal length grows. The hole is wider at the same f-number, but it is farther away by as much.',
    },
    {
      id: 'farther-is-deeper',
      value: (given) => (given['first.depth-of-field'] * given['second.focal-length']) / given['first.focal-length'],
      because:
        'That counts the longer distance but not the wider hole. Seen from the spider the hole is as wide as before.',
    },
  ],
  hint: 'Which letters stand in the close-up formula, and which one is missing?',
  working: [
    { formula: effectiveFNumberFormula, note: 'Nothing in this has changed, and the focal length is not in it:' },
    { formula: depthOfFieldCloseUpFormula, note: 'Nor is it in this. The depth is what it was:' },
  ],
});

const circleByViewing = numberFamily({
  id: 'circle-by-viewing',
  asks: 'circle-of-confusion',
  question:
    'A print {print-width} wide will be looked at from {viewing-distance}. The sensor is {sensor-width} wide. Which circle of confusion suits that, at one arcminute?',
  givens: (draw) => ({
    'print-width': draw.pick([180, 240, 300, 400, 600]),
    'viewing-distance': draw.pick([250, 300, 400, 500, 700, 1000]),
    'sensor-width': draw.pick([17.3, 23.5, 36]),
  }),
  answer: (given) => evaluateFormula(circleOfConfusionByViewingFormula, given),
  tolerance: { relative: 0.04, because: 'one arcminute is 0.00029, or 0.0003 in round numbers' },
  mistakes: [
    {
      id: 'on-the-print',
      value: (given) => given['viewing-distance'] * arcminute,
      because:
        'That is the blur on the print. On the sensor the picture is {sensor-width} wide instead of {print-width}, and the blur smaller in proportion.',
    },
    {
      id: 'enlarged',
      value: (given) => (given['viewing-distance'] * arcminute * given['print-width']) / given['sensor-width'],
      because: 'That scales the wrong way. From print to sensor everything gets smaller.',
    },
    {
      id: 'pair-of-lines',
      value: (given) => (given['viewing-distance'] * arcminute * given['sensor-width']) / (2 * given['print-width']),
      because:
        'That takes the arcminute for a pair of a dark and a bright line. Here it is one of the two; some authors choose the other.',
    },
  ],
  hint: 'First how much an arcminute is on the print. Then how much of that it is on the sensor.',
  working: [
    { formula: circleOfConfusionByViewingFormula, note: 'An arcminute at that distance, scaled from print to sensor:' },
  ],
});

const howFarBehind = numberFamily({
  id: 'how-far-behind',
  asks: 'far-limit',
  question:
    'No longer close up: a garden gate stands {entrance-pupil-distance} from the entrance pupil of a lens, which is {entrance-pupil} wide. The sensor shows the gate at {magnification}, and the circle of confusion is {circle-of-confusion}. How far behind the gate does sharpness reach?',
  givens: (draw) => ({
    'entrance-pupil-distance': draw.pick([1000, 1200, 1500, 2000]),
    'entrance-pupil': draw.pick([2, 3, 4, 5]),
    magnification: draw.pick([0.02, 0.025, 0.03, 0.04]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
  }),
  answer: (given) => evaluateFormula(farLimitFormula, given),
  tolerance: { relative: 0.03, because: 'a difference of two small numbers, of two or three figures each' },
  mistakes: [
    {
      id: 'near-limit',
      value: (given) => evaluateFormula(nearLimitFormula, given),
      because:
        'That is how far sharpness reaches in front of the gate. Behind it the cone of light widens more slowly: c is taken away below the line, not added.',
    },
    {
      id: 'even-halves',
      value: (given) =>
        (given['circle-of-confusion'] * given['entrance-pupil-distance']) /
        (given.magnification * given['entrance-pupil']),
      because:
        'That is half of the close-up depth. This far away the two sides are no longer equal; use the exact limit.',
    },
    {
      id: 'from-the-pupil',
      value: (given) => evaluateFormula(farLimitFormula, given) + given['entrance-pupil-distance'],
      because: 'That is counted from the entrance pupil. The limits here are counted from the sharp plane.',
    },
  ],
  hint: 'Which of the two limits is it, and where does the circle of confusion stand below the line?',
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
