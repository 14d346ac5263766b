import {
  arcminute,
  circleOfConfusionByViewing,
  circleOfConfusionByViewingFormula,
} from '#core/depth/circle-of-confusion-by-viewing.formula.ts';
import { depthOfFieldCloseUp, depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { farLimit, farLimitFormula } from '#core/depth/far-limit.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { effectiveFNumber, effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance, entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil, entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { magnificationOfSubject, magnificationOfSubjectFormula } from '#core/gaussian/magnification-of-subject.formula.ts';
import { numberFamily } from '#core/practice/family.ts';

const circles = [0.01, 0.015, 0.02, 0.025, 0.03];
const apertures = [4, 5.6, 8, 11, 16];
const focalLengths = [50, 60, 85, 100];

interface CloseUp {
  readonly magnification: number;
  readonly 'f-number': number;
  readonly 'pupil-magnification': number;
  readonly 'circle-of-confusion': number;
}

/** The close-up depth by the right way; wrong ones change one of the numbers. */
function closeUp(given: CloseUp): number {
  const { magnification } = given;
  const lens = { magnification, fNumber: given['f-number'], pupilMagnification: given['pupil-magnification'] };
  return depthOfFieldCloseUp({ magnification, circleOfConfusion: given['circle-of-confusion'], effectiveFNumber: effectiveFNumber(lens) });
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
    'circle-of-confusion': draw.pick(circles),
  }),
  answer: closeUp,
  tolerance: { relative: 0.03, because: 'nobody sees the end of sharpness to three per cent' },
  mistakes: [
    {
      id: 'marked-f-number',
      value: (given) => (2 * given['circle-of-confusion'] * given['f-number']) / given.magnification ** 2,
      because: 'That puts in the marked {f-number}. The cone of light that reaches the sensor is narrower: first work out the effective f-number.',
    },
    {
      id: 'one-side',
      value: (given) => closeUp(given) / 2,
      because: 'That is the depth on one side of the sharp plane. There is as much again on the other.',
    },
    {
      id: 'not-squared',
      value: (given) => closeUp(given) * given.magnification,
      because: 'That divides by m only once. Once for the blur carried back to the subject, and once more because the lens has come closer: m is squared.',
    },
  ],
  hint: 'Which f-number does the lens work at, this close? And how often does the magnification count?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The f-number at which the lens works:' },
    { formula: depthOfFieldCloseUpFormula, note: 'Then the depth, both sides together:' },
  ],
});

const symmetric = { 'pupil-magnification': 1 };

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
      'circle-of-confusion': draw.pick(circles),
    };
  },
  answer: (given) => closeUp({ ...given, magnification: sizeAt(given) }),
  tolerance: { relative: 0.03, because: 'nobody sees the end of sharpness to three per cent' },
  mistakes: [
    {
      id: 'distant-subject',
      value: (given) => 2 * given['f-number'] * given['circle-of-confusion'] * (given['subject-distance'] / given['focal-length']) ** 2,
      because: 'That is the rule for distant subjects, 2 N c s²/f². Here the subject is only a few focal lengths away, and it makes too much of it.',
    },
    {
      id: 'marked-f-number',
      value: (given) => (2 * given['f-number'] * given['circle-of-confusion']) / sizeAt(given) ** 2,
      because: 'The magnification is right, but the marked {f-number} went in. This close the lens works at a larger one.',
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
  return magnificationOfSubject({ focalLength: given['focal-length'], subjectDistance: given['subject-distance'] });
}

const anotherAperture = numberFamily({
  id: 'another-aperture',
  asks: 'depth-of-field',
  question:
    'At {first.f-number} a bay leaf is sharp over {first.depth-of-field}. You set {second.f-number} and move nothing else. Over how much is it sharp now?',
  givens: (draw) => ({
    'first.f-number': draw.pick([4, 5.6, 8, 11, 16]),
    'second.f-number': draw.pick([4, 8, 16, 22]),
    'first.depth-of-field': draw.logStep(0.2, 20),
  }),
  answer: (given) => (given['first.depth-of-field'] * given['second.f-number']) / given['first.f-number'],
  tolerance: { relative: 0.04, because: 'marked f-numbers are rounded by up to three per cent' },
  mistakes: [
    {
      id: 'other-way-round',
      value: (given) => (given['first.depth-of-field'] * given['first.f-number']) / given['second.f-number'],
      because: 'That goes the wrong way. A larger f-number is a smaller hole, a more slender cone and more depth.',
    },
    {
      id: 'like-the-light',
      value: (given) => given['first.depth-of-field'] * (given['second.f-number'] / given['first.f-number']) ** 2,
      because: 'That is how the exposure goes, with the area of the hole. Depth goes with its width: once, not squared.',
    },
    {
      id: 'as-before',
      value: (given) => given['first.depth-of-field'],
      because: 'That is as much as before. Magnification fixes the depth only together with the f-number.',
    },
  ],
  hint: 'How many times as large is the new f-number?',
  working: [
    {
      values: (known) => ({ 'depth-of-field': (known['first.depth-of-field'] * known['second.f-number']) / known['first.f-number'] }),
      note: 'Depth goes with the f-number. From {first.f-number} to {second.f-number} the {first.depth-of-field} become {depth-of-field}.',
    },
  ],
});

const anotherLens = numberFamily({
  id: 'another-lens',
  asks: 'depth-of-field',
  question:
    '{A first.focal-length} lens shows a jumping spider at {magnification} and {f-number}, sharp over {first.depth-of-field}. You change to {a second.focal-length} lens and step back until the spider is as large as before, at the same f-number. Both have pupils of one size. Over how much is it sharp now?',
  givens: (draw) => {
    const given = { magnification: draw.pick([0.25, 0.5, 1, 1.5]), 'f-number': draw.pick(apertures) };
    return {
      ...given,
      'first.focal-length': draw.pick([50, 60]),
      'second.focal-length': draw.pick([85, 100, 135, 180]),
      'first.depth-of-field': Number(closeUp({ ...given, ...symmetric, 'circle-of-confusion': draw.pick(circles) }).toPrecision(2)),
    };
  },
  answer: (given) => given['first.depth-of-field'],
  tolerance: { relative: 0.05, because: 'nobody sees the end of sharpness to five per cent' },
  mistakes: [
    {
      id: 'same-distance',
      value: (given) => given['first.depth-of-field'] * (given['first.focal-length'] / given['second.focal-length']) ** 2,
      because: 'That would be a long lens from the same place. You stepped back until the picture was the same, and that makes up for all of it.',
    },
    {
      id: 'longer-is-thinner',
      value: (given) => (given['first.depth-of-field'] * given['first.focal-length']) / given['second.focal-length'],
      because: 'That lets depth shrink as the focal length grows. The hole is wider at the same f-number, but it is farther away by as much.',
    },
    {
      id: 'farther-is-deeper',
      value: (given) => (given['first.depth-of-field'] * given['second.focal-length']) / given['first.focal-length'],
      because: 'That counts the longer distance but not the wider hole. Seen from the spider the hole is as wide as before.',
    },
  ],
  hint: 'Which letters stand in the close-up formula, and which one is missing?',
  working: [
    {
      values: (known) => ({ 'depth-of-field': known['first.depth-of-field'] }),
      note: 'Magnification, f-number and circle of confusion are as before; the focal length does not appear. It stays {depth-of-field}.',
    },
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
  answer: (given) =>
    circleOfConfusionByViewing({
      viewingDistance: given['viewing-distance'],
      printWidth: given['print-width'],
      sensorWidth: given['sensor-width'],
    }),
  tolerance: { relative: 0.04, because: 'one arcminute is 0.00029, or 0.0003 in round numbers' },
  mistakes: [
    {
      id: 'on-the-print',
      value: (given) => given['viewing-distance'] * arcminute,
      because: 'That is the blur on the print. On the sensor the picture is {sensor-width} wide instead of {print-width}, and the blur smaller in proportion.',
    },
    {
      id: 'enlarged',
      value: (given) => (given['viewing-distance'] * arcminute * given['print-width']) / given['sensor-width'],
      because: 'That scales the wrong way. From print to sensor everything gets smaller.',
    },
    {
      id: 'pair-of-lines',
      value: (given) => (given['viewing-distance'] * arcminute * given['sensor-width']) / (2 * given['print-width']),
      because: 'That takes the arcminute for a pair of a dark and a bright line. Here it is one of the two; some authors choose the other.',
    },
  ],
  hint: 'First how much an arcminute is on the print. Then how much of that it is on the sensor.',
  working: [{ formula: circleOfConfusionByViewingFormula, note: 'An arcminute at that distance, scaled from print to sensor:' }],
});

interface FarAway extends CloseUp {
  readonly 'focal-length': number;
}

/** What the exact limits need. */
function cone(given: FarAway) {
  const lens = {
    focalLength: given['focal-length'],
    fNumber: given['f-number'],
    magnification: given.magnification,
    pupilMagnification: given['pupil-magnification'],
  };
  return {
    magnification: given.magnification,
    circleOfConfusion: given['circle-of-confusion'],
    entrancePupil: entrancePupil(lens),
    entrancePupilDistance: entrancePupilDistance(lens),
  };
}

const howFarBehind = numberFamily({
  id: 'how-far-behind',
  asks: 'far-limit',
  question:
    'No longer close up: {a focal-length} lens with pupils of one size shows a garden gate at {magnification}. It is set to {f-number}, and the circle of confusion is {circle-of-confusion}. How far behind the gate does sharpness reach?',
  givens: (draw) => ({
    ...symmetric,
    'focal-length': draw.pick([28, 35, 50]),
    magnification: draw.pick([0.02, 0.025, 0.03, 0.04]),
    'f-number': draw.pick([8, 11, 16]),
    'circle-of-confusion': draw.pick([0.02, 0.025, 0.03]),
  }),
  answer: (given) => farLimit(cone(given)),
  tolerance: { relative: 0.03, because: 'numbers of three figures, one taken from the other' },
  mistakes: [
    {
      id: 'near-limit',
      value: (given) => nearLimit(cone(given)),
      because: 'That is how far sharpness reaches in front of the gate. Behind it the cone of light widens more slowly: c is taken away below the line, not added.',
    },
    {
      id: 'half-the-close-up-depth',
      value: (given) => closeUp(given) / 2,
      because: 'That is half of the close-up depth. This far away the two sides are no longer equal; use the exact limit.',
    },
    {
      id: 'from-the-pupil',
      value: (given) => farLimit(cone(given)) + cone(given).entrancePupilDistance,
      because: 'That is counted from the entrance pupil. The limits here are counted from the sharp plane.',
    },
  ],
  hint: 'Find the width of the entrance pupil and its distance. The rest is similar triangles.',
  working: [
    { formula: entrancePupilFormula, note: 'How wide the entrance pupil is:' },
    { formula: entrancePupilDistanceFormula, note: 'How far it is from the gate:' },
    { formula: farLimitFormula, note: 'And how far behind the gate a point may lie:' },
  ],
});

export const families = [depthAtASize, depthFromADistance, anotherAperture, anotherLens, circleByViewing, howFarBehind] as const;
