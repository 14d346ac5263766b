import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { airyDiameter, airyDiameterFormula } from '#core/wave/airy-diameter.formula.ts';
import { contrast, contrastFormula } from '#core/wave/contrast.formula.ts';
import { cutoffFrequency, cutoffFrequencyFormula } from '#core/wave/cutoff-frequency.formula.ts';

const colours = [0.00045, 0.0005, 0.00055, 0.0006, 0.00065];
const marks = [4, 5.6, 8, 11, 16, 22];

interface Lens {
  readonly 'f-number': number;
  readonly magnification: number;
  readonly 'pupil-magnification': number;
  readonly wavelength: number;
}

/** The cone at the sensor, by the lens's marked number. */
const cone = (given: Lens) => ({
  wavelength: given.wavelength,
  effectiveFNumber: evaluateFormula(effectiveFNumberFormula, given),
});
/** The cone the mark alone would make, as for a subject at infinity. */
const markedCone = (given: Lens) => ({ wavelength: given.wavelength, effectiveFNumber: given['f-number'] });

/** Contrast that is left, 0 from the cutoff on. */
const remaining = (spatialFrequency: number, cutoff: number) => contrast({ spatialFrequency, cutoffFrequency: cutoff });

const discOnSensor = numberFamily({
  id: 'disc-on-the-sensor',
  asks: 'airy-diameter',
  question:
    'A lens with equal pupils (P = 1) is set to {f-number} and works at {magnification}, in {wavelength} light. How wide is the Airy disc on the sensor, from dark ring to dark ring?',
  givens: (draw) => ({
    'f-number': draw.pick(marks),
    magnification: draw.pick([0.2, 0.5, 1.5, 2.5, 3, 4]),
    'pupil-magnification': 1,
    wavelength: draw.pick(colours),
  }),
  tolerance: { relative: 0.02, because: 'rounding 1.22 to 1.2 already makes 2 %' },
  mistakes: [
    {
      id: 'marked-cone',
      value: (given) => airyDiameter(markedCone(given)),
      because:
        'That is the disc of the marked {f-number}, right for a distant subject. At {magnification} the cone that reaches the sensor is narrower: multiply the f-number by 1 + m first.',
    },
    {
      id: 'radius',
      value: (given) => airyDiameter(cone(given)) / 2,
      because:
        'That is the radius, 1.22 λ times the effective f-number, from the middle to the dark ring. The disc is twice as wide.',
    },
    {
      id: 'on-the-subject',
      // N (1 + m)/m is N (1 + 1/m): one number, reached in two ways.
      value: (given) => airyDiameter(cone(given)) / given.magnification,
      because:
        'That is the disc divided by m, which is what it covers of the subject; N (1 + 1/m) leads there too. On the sensor the disc is 2.44 λ N (1 + m) wide.',
    },
    {
      id: 'radius-of-the-marked-cone',
      value: (given) => airyDiameter(markedCone(given)) / 2,
      because:
        'Two slips: 1.22 λ N gives the radius, and {f-number} is not yet the cone at {magnification}. The disc is 2.44 λ times the effective f-number wide.',
    },
  ],
  hint: 'Which f-number describes the cone at the sensor? And from dark ring to dark ring the factor is twice 1.22.',
  working: [
    { formula: effectiveFNumberFormula, note: 'The cone that reaches the sensor; with equal pupils P is 1:' },
    {
      formula: airyDiameterFormula,
      note: 'The disc, from dark ring to dark ring. Divide the nanometres of {wavelength} by 1000, and you have micrometres:',
    },
  ],
});

const finestPattern = numberFamily({
  id: 'finest-pattern',
  asks: 'cutoff-frequency',
  question:
    'A lens of pupil magnification {pupil-magnification} is set to {f-number} and works at {magnification}, in {wavelength} light. From which spatial frequency on is no contrast left on the sensor?',
  givens: (draw) => ({
    'f-number': draw.pick(marks),
    magnification: draw.pick([0.4, 0.5, 1.5, 2, 3]),
    'pupil-magnification': draw.pick([0.6, 0.7, 1.4, 1.6]),
    wavelength: draw.pick(colours),
  }),
  tolerance: { relative: 0.03, because: '3 % is a twelfth of a stop, finer than anyone sets a lens' },
  mistakes: [
    {
      id: 'marked-cone',
      value: (given) => cutoffFrequency(markedCone(given)),
      because:
        'That is the cutoff of the marked {f-number}. At {magnification} the cone is narrower, and the cutoff lower.',
    },
    {
      id: 'pupils-forgotten',
      value: (given) => cutoffFrequency(cone({ ...given, 'pupil-magnification': 1 })),
      because:
        'That takes N (1 + m) for the cone, right for equal pupils (P = 1). Here m is first divided by {pupil-magnification}.',
    },
    {
      id: 'one-over-m',
      value: (given) => cutoffFrequency(cone({ ...given, magnification: 1 / given.magnification })),
      because: 'That takes 1/m for m. The larger the image, the narrower its cone: m itself goes into N (1 + m/P).',
    },
    {
      id: 'on-the-subject',
      value: (given) => cutoffFrequency(cone(given)) * given.magnification,
      because: 'That is the cutoff on the subject, m times as high. The question asks for the sensor.',
    },
    {
      id: 'one-over-the-disc',
      value: (given) => 1 / airyDiameter(cone(given)),
      because:
        'That is one line pair for each Airy disc, one over its width. Patterns up to 2.44 times finer than that still pass, ever more faintly: the cutoff is one over λ times the effective f-number.',
    },
  ],
  hint: 'First the cone at the sensor. Then one over λ times its f-number, λ in millimetres.',
  working: [
    { formula: effectiveFNumberFormula, note: 'The cone that reaches the sensor:' },
    {
      formula: cutoffFrequencyFormula,
      note: 'Divide the nanometres of {wavelength} by a million for millimetres. The result is in line pairs per millimetre:',
    },
  ],
});

const contrastLeft = numberFamily({
  id: 'contrast-left',
  asks: 'contrast',
  question:
    'A perfect lens with equal pupils (P = 1), set to {f-number}, works at {magnification} in {wavelength} light. A pattern on the sensor has {spatial-frequency}. How much of its contrast is left?',
  givens: (draw) => ({
    'f-number': draw.pick(marks),
    magnification: draw.pick([0.5, 1, 1.5, 2]),
    'pupil-magnification': 1,
    wavelength: draw.pick(colours),
    'spatial-frequency': draw.pick([20, 30, 40, 50, 60, 80]),
  }),
  tolerance: { absolute: 0.02, because: 'nobody reads a curve more finely than to two hundredths' },
  mistakes: [
    {
      id: 'straight-line',
      value: (given) => Math.max(0, 1 - given['spatial-frequency'] / cutoffFrequency(cone(given))),
      because:
        'That takes a straight line from all at zero to nothing at the cutoff. The curve hangs below it: halfway to the cutoff 39 % is left, not 50 %.',
    },
    {
      id: 'marked-cone',
      value: (given) => remaining(given['spatial-frequency'], cutoffFrequency(markedCone(given))),
      because:
        'That is what the marked {f-number} would leave. At {magnification} the cone is narrower and the cutoff lower.',
    },
    {
      id: 'first-term-only',
      value: (given) =>
        (2 / Math.PI) * Math.acos(Math.min(1, given['spatial-frequency'] / cutoffFrequency(cone(given)))),
      because: 'That is the arc cosine alone. The formula then subtracts a sine, which is missing here.',
    },
  ],
  hint: 'How far along to the cutoff is {spatial-frequency}? That share goes into the formula.',
  working: [
    { formula: effectiveFNumberFormula, note: 'The cone that reaches the sensor:' },
    { formula: cutoffFrequencyFormula, note: 'From here on no contrast is left:' },
    { formula: contrastFormula, note: 'And what is left at {spatial-frequency}, the angle in radians:' },
  ],
});

const whereItBegins = choiceFamily({
  id: 'where-it-begins',
  question:
    '“Diffraction begins at {claimed.f-number}”, says a neighbour at the club. You stop a perfect lens with equal pupils (P = 1) down from {wider.f-number} to {narrower.f-number}, at {magnification} in {wavelength} light. A pattern in the sharp plane has {spatial-frequency} on the sensor. What happens to it?',
  options: {
    same: 'Nothing: diffraction has not begun yet',
    lower: 'It loses contrast, and some is left',
    gone: 'It is gone: none is left at all',
  },
  givens: (draw) => {
    const mark = draw.pick([0, 1, 2, 3]);
    return {
      'wider.f-number': marks[mark]!,
      'narrower.f-number': marks[mark + 1]!,
      'claimed.f-number': marks[mark + 2]!,
      magnification: draw.pick([0.5, 1, 2, 4]),
      'pupil-magnification': 1,
      wavelength: draw.pick(colours),
      'spatial-frequency': draw.pick([20, 30, 40, 60, 80]),
    };
  },
  answer: (given) => whatIsLeft(narrower(given)),
  mistakes: [
    {
      id: 'has-not-begun',
      value: () => 'same',
      because:
        'There is no opening at which it begins: every stop brings the cutoff down. How high is the curve at {spatial-frequency}, before and after?',
    },
    {
      id: 'marked-cutoff',
      value: (given) =>
        isGone(given) && remaining(given['spatial-frequency'], cutoffFrequency(markedCone(narrower(given)))) > 0
          ? 'lower'
          : undefined,
      because:
        'With {narrower.f-number} itself some contrast would be left. At {magnification} the lens works at more than that: take the cutoff from the effective f-number.',
    },
    {
      id: 'finer-than-the-disc',
      value: (given) =>
        !isGone(given) && 1 / given['spatial-frequency'] < airyDiameter(cone(narrower(given))) ? 'gone' : undefined,
      because:
        'A pair of its lines is narrower than one Airy disc, and yet it is not lost by that: discs overlap and still leave a ripple. What counts is the cutoff, one over λ times the effective f-number.',
    },
    {
      id: 'wrong-side-of-the-cutoff',
      value: (given) =>
        !isGone(given) && 1 / given['spatial-frequency'] >= airyDiameter(cone(narrower(given))) ? 'gone' : undefined,
      because:
        'Compare {spatial-frequency} with the cutoff at the smaller opening, one over λ times the effective f-number; the magnification counts in that. On which side of it is the pattern?',
    },
  ],
  hint: 'What does the curve do at each stop: stay where it is up to some f-number, or sink a little more each time?',
  working: [
    {
      values: (known) => ({ 'f-number': known['wider.f-number'] }),
      formula: effectiveFNumberFormula,
      note: 'Set to {wider.f-number}:',
    },
    { formula: cutoffFrequencyFormula },
    { formula: contrastFormula, note: 'Contrast at {spatial-frequency}; from the cutoff on it is zero:' },
    {
      values: (known) => ({ 'f-number': known['narrower.f-number'] }),
      formula: effectiveFNumberFormula,
      note: 'The same at {narrower.f-number}:',
    },
    { formula: cutoffFrequencyFormula },
    { formula: contrastFormula, note: 'Less, though both openings are wider than {claimed.f-number}:' },
  ],
});

const narrower = <Given extends Omit<Lens, 'f-number'> & { readonly 'narrower.f-number': number }>(given: Given) => ({
  ...given,
  'f-number': given['narrower.f-number'],
});

const isGone = (given: Parameters<typeof narrower>[0] & { readonly 'spatial-frequency': number }) =>
  whatIsLeft(narrower(given)) === 'gone';

function whatIsLeft(given: Lens & { readonly 'spatial-frequency': number }): 'lower' | 'gone' {
  return remaining(given['spatial-frequency'], cutoffFrequency(cone(given))) > 0 ? 'lower' : 'gone';
}

export const families = [discOnSensor, finestPattern, contrastLeft, whereItBegins] as const;
