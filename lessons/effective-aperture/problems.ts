import { correctedExposureTimeFormula } from '#core/exposure/corrected-exposure-time.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { fNumberForEffectiveFNumberFormula } from '#core/gaussian/f-number-for-effective-f-number.formula.ts';
import { fNumberFromApertureFormula } from '#core/gaussian/f-number-from-aperture.formula.ts';
import { lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';

interface Lens {
  readonly magnification: number;
  readonly 'pupil-magnification': number;
}
/** How many times the marked f-number the lens works at. */
const growth = (given: Lens) => evaluateFormula(effectiveFNumberFormula, { ...given, 'f-number': 1 });
const growthOfEqualPupils = (given: Lens) => growth({ ...given, 'pupil-magnification': 1 });

const unequal = [0.5, 0.6, 0.7, 1.4, 1.6, 2];
const aTwelfth = {
  relative: 0.03,
  because: '3 per cent is a twelfth of a stop, finer than anyone sets a lens',
} as const;

const cone = numberFamily({
  id: 'cone',
  asks: 'effective-f-number',
  question:
    'A lens marked {f-number} is focused to {magnification}. Seen from behind, its opening is {pupil-magnification} times as wide as from the front. At which f-number does it really work?',
  givens: (draw) => ({
    'f-number': draw.pick([4, 5.6, 8, 11]),
    magnification: draw.pick([0.5, 0.75, 1.25, 1.5, 2, 3]),
    'pupil-magnification': draw.pick(unequal),
  }),
  tolerance: aTwelfth,
  mistakes: [
    {
      id: 'pupils-ignored',
      value: (given) => given['f-number'] * growthOfEqualPupils(given),
      because:
        'That is N (1 + m), right only where both pupils are equally wide. Here m is first divided by {pupil-magnification}.',
    },
    {
      id: 'upside-down',
      value: (given) => given['f-number'] * (1 + given.magnification * given['pupil-magnification']),
      because:
        'That multiplies m by P. Divide: the wider the opening looks from behind, the less each step away from the sensor costs.',
    },
    {
      id: 'marked',
      value: (given) => given['f-number'],
      because: 'That is the mark, which holds far away. At {magnification} the opening stands farther from the sensor.',
    },
    {
      id: 'times-size',
      value: (given) => given['f-number'] * given.magnification,
      because:
        'That is N times m. N is what the lens has far away, and it grows by a share of itself, m divided by {pupil-magnification}.',
    },
    {
      id: 'divided',
      value: (given) => given['f-number'] / growth(given),
      because: 'That makes the number smaller, as if more light arrived. Close up the cone is slimmer: multiply.',
    },
    {
      id: 'times-magnification',
      value: (given) => (given['f-number'] * given.magnification) / given['pupil-magnification'],
      because: 'That is only what is added. The cone is as slim as the mark says to begin with: add it to {f-number}.',
    },
    {
      id: 'all-divided',
      value: (given) => (given['f-number'] * (1 + given.magnification)) / given['pupil-magnification'],
      because: 'That divides 1 + m by P. Only m is divided: the 1 stands for the mark as it is far away.',
    },
  ],
  hint: 'Divide m by P. By that share of itself the marked f-number grows.',
  working: [{ formula: effectiveFNumberFormula, note: 'The mark grows by m divided by P:' }],
});

/** The loss counted twice, stops; undefined where it could be told from no other slip, each being met within a tenth of a stop. */
function twiceTheLoss(given: Parameters<typeof growth>[0]): number | undefined {
  const twice = 4 * Math.log2(growth(given));
  const others = [growth(given), growth(given) ** 2, 2 * Math.log2(growthOfEqualPupils(given))];
  return others.some((other) => Math.abs(other - twice) < 0.21) ? undefined : twice;
}

const stops = numberFamily({
  id: 'stops',
  asks: 'light-loss',
  question:
    'A lens of pupil magnification {pupil-magnification} is focused to {magnification}. How many stops of light are lost, compared with far away?',
  givens: (draw) => ({
    // Far enough from where the growth of the f-number and its stops are nearly one number, from 1.7 to 4.4 times.
    magnification: draw.pick([0.3, 0.5, 0.75, 1, 2, 2.5, 3]),
    'pupil-magnification': draw.pick(unequal),
    'f-number': 8,
  }),
  tolerance: { absolute: 0.1, because: 'a tenth of a stop is finer than shutters and lenses are made' },
  mistakes: [
    {
      id: 'f-numbers-as-stops',
      value: (given) => Math.log2(growth(given)),
      because:
        'That counts a doubling of the f-number as one stop. Twice the number is half the width, and a quarter of the light: two stops.',
    },
    {
      id: 'pupils-ignored',
      value: (given) => 2 * Math.log2(growthOfEqualPupils(given)),
      because: 'That takes equal pupils. Here m is first divided by {pupil-magnification}.',
    },
    {
      id: 'times-not-stops',
      value: (given) => growth(given) ** 2,
      because: 'That is how many times less light arrives. Stops count how often it has been halved.',
    },
    {
      id: 'growth-as-stops',
      value: growth,
      because:
        'That is how many times the f-number grows. Twice the number is two stops, four times are four: how many for this?',
    },
    {
      id: 'counted-twice',
      value: twiceTheLoss,
      because:
        'That is twice the loss. The square is in the two stops of each doubling already: it is not squared again.',
    },
  ],
  hint: 'By what does the f-number grow? Twice the number is two stops. In between, log of the growth divided by log 2 says how many doublings it is.',
  working: [
    { formula: effectiveFNumberFormula, note: 'Take any mark, say f/8:' },
    { formula: lightLossFormula, note: 'Each doubling of the f-number is two stops:' },
  ],
});

const handMeter = numberFamily({
  id: 'hand-meter',
  asks: 'corrected.exposure-time',
  question:
    'A hand meter held at the subject says {exposure-time} for {f-number}. You focus a lens of pupil magnification {pupil-magnification} to {magnification} and leave the aperture. Which exposure time do you set?',
  givens: (draw) => ({
    'exposure-time': draw.pick([1 / 4, 1 / 15, 1 / 30, 1 / 60]),
    'f-number': draw.pick([5.6, 8, 11]),
    magnification: draw.pick([0.5, 0.75, 1.25, 1.5, 2]),
    'pupil-magnification': draw.pick(unequal),
  }),
  tolerance: { relative: 0.12, because: 'shutter times are marked in thirds of a stop; half of one is 12 per cent' },
  mistakes: [
    {
      id: 'not-squared',
      value: (given) => given['exposure-time'] * growth(given),
      because:
        'That multiplies by how much the f-number grows, or by a number of stops. Light goes with the square of the f-number: multiply by its growth twice.',
    },
    {
      id: 'pupils-ignored',
      value: (given) => given['exposure-time'] * growthOfEqualPupils(given) ** 2,
      because: 'That takes equal pupils, (1 + m)². Here m is first divided by {pupil-magnification}.',
    },
    {
      id: 'uncorrected',
      value: (given) => given['exposure-time'],
      because: 'That would do far away. The hand meter has not seen the light that is lost on the way to the sensor.',
    },
    {
      id: 'wrong-way',
      value: (given) => given['exposure-time'] / growth(given) ** 2,
      because: 'That makes the time shorter. Less light arrives, so it must be longer.',
    },
  ],
  hint: 'By what does the f-number grow? The light falls with the square of that.',
  working: [
    { formula: effectiveFNumberFormula, note: 'The lens works at' },
    {
      formula: correctedExposureTimeFormula,
      note: 'and the time grows with the square of that over the mark:',
    },
  ],
});

const inside = numberFamily({
  id: 'inside',
  asks: 'effective-f-number',
  question:
    'A macro lens engraved {engraved.focal-length} and marked {marked.f-number} focuses inside. At {magnification} its focal length is {focal-length}, its opening from the front {entrance-pupil} wide, its pupil magnification {pupil-magnification}. At which f-number does it really work?',
  givens: (draw) => {
    const engraved = draw.pick([60, 90, 100]);
    const marked = draw.pick([4, 5.6, 8]);
    return {
      'engraved.focal-length': engraved,
      'marked.f-number': marked,
      magnification: draw.pick([0.75, 1, 1.25]),
      'focal-length': Math.round(engraved * draw.pick([0.75, 0.8, 0.84])),
      'entrance-pupil': Number((engraved / marked).toPrecision(3)),
      'pupil-magnification': draw.pick([0.6, 0.7, 0.8]),
    };
  },
  tolerance: aTwelfth,
  mistakes: [
    {
      id: 'mark-kept',
      value: (given) => given['marked.f-number'] * growth(given),
      because:
        'That starts from the mark. Focal length over opening is no longer {marked.f-number} at this setting: work it out first.',
    },
    {
      id: 'pupils-ignored',
      value: (given) => (given['focal-length'] / given['entrance-pupil']) * growthOfEqualPupils(given),
      because: 'That takes equal pupils. Divide m by {pupil-magnification} first.',
    },
    {
      id: 'mark-and-equal-pupils',
      value: (given) => given['marked.f-number'] * growthOfEqualPupils(given),
      because:
        'That is N (1 + m) from the mark. Both have changed: take the focal length and the opening at this setting, and divide m by P.',
    },
    {
      id: 'not-close-up',
      value: (given) => given['focal-length'] / given['entrance-pupil'],
      because: 'That is focal length over opening, as if far away. The opening stands farther from the sensor now.',
    },
    {
      id: 'pupils-upside-down',
      value: (given) =>
        (given['focal-length'] / given['entrance-pupil']) * (1 + given.magnification * given['pupil-magnification']),
      because:
        'That multiplies m by P. Divide: the narrower the opening looks from behind, the more each step away costs.',
    },
  ],
  hint: 'What is focal length over opening at this setting? From there go on as always.',
  working: [
    { formula: fNumberFromApertureFormula, note: 'At this setting focal length over opening is' },
    { formula: effectiveFNumberFormula, note: 'which grows by m divided by P:' },
  ],
});

const mark = numberFamily({
  id: 'mark-to-set',
  asks: 'f-number',
  question:
    'You want the lens to work as {effective-f-number} at {magnification}. Its pupil magnification is {pupil-magnification}. Which f-number do you set?',
  givens: (draw) => ({
    'effective-f-number': draw.pick([11, 16, 22]),
    magnification: draw.pick([0.5, 0.75, 1.25, 1.5, 2]),
    'pupil-magnification': draw.pick(unequal),
  }),
  tolerance: { relative: 0.06, because: 'apertures are set in thirds of a stop at best; half of one is 6 per cent' },
  mistakes: [
    {
      id: 'as-wanted',
      value: (given) => given['effective-f-number'],
      because:
        'Set to that, the lens would work at a larger number still. Close up the mark has to be smaller than what you want.',
    },
    {
      id: 'multiplied',
      value: (given) => given['effective-f-number'] * growth(given),
      because: 'That goes the wrong way: it would lose the light once more. Divide.',
    },
    {
      id: 'pupils-ignored',
      value: (given) => given['effective-f-number'] / growthOfEqualPupils(given),
      because: 'That takes equal pupils. Divide m by {pupil-magnification} first.',
    },
    {
      id: 'pupils-upside-down',
      value: (given) => given['effective-f-number'] / (1 + given.magnification * given['pupil-magnification']),
      because: 'That multiplies m by P. A mark grows by m divided by P.',
    },
  ],
  hint: 'By what does a mark grow at this size? The wanted number is that many times the mark.',
  working: [{ formula: fNumberForEffectiveFNumberFormula, note: 'The mark is smaller by 1 + m/P:' }],
});

const cases = [
  ['the camera’s own meter, which looks through the lens', 'seen'],
  ['a flash that the camera measures through the lens', 'seen'],
  ['a preview on an electronic finder, made bright by the camera as the meter says', 'seen'],
  ['a hand meter held at the subject', 'unseen'],
  ['a flash set by hand for its distance', 'unseen'],
  ['a table of exposures for the time of day', 'unseen'],
] as const;

const whoKnows = choiceFamily({
  id: 'who-knows',
  question:
    'A lens marked {f-number} is focused to {magnification} and works at {effective-f-number}. You go by {what}. What do you do about the light that is lost?',
  givens: (draw) => {
    const [what, truth] = draw.pick(cases);
    const fNumber = draw.pick([5.6, 8, 11]);
    return { what, truth, 'f-number': fNumber, magnification: 1, 'effective-f-number': 2 * fNumber };
  },
  options: {
    seen: 'Nothing: it has been counted',
    once: 'Give one stop more',
    unseen: 'Give two stops more',
    twice: 'Give four stops more',
  },
  answer: (given) => given.truth,
  mistakes: [
    {
      id: 'other-way',
      value: (given) => (given.truth === 'seen' ? 'unseen' : 'seen'),
      because:
        'Ask where it gets its light from. Has that light come through the lens, and lost on the way what the sensor’s light loses?',
    },
    {
      id: 'counted-twice',
      value: () => 'twice',
      because: 'A loss is counted once at most. How many stops is it from {f-number} to {effective-f-number}?',
    },
    {
      id: 'number-for-light',
      value: () => 'once',
      because:
        'From {f-number} to {effective-f-number} the number doubles, and the light that is left is a quarter: halved, and halved again. Then ask whether what you go by has seen that.',
    },
  ],
  hint: 'Does it look through the lens?',
  working: [
    {
      note: 'What looks through the lens sees the light that is left and has counted the loss. What looks at the subject, or at a table, has not: from {f-number} to {effective-f-number} are two stops.',
    },
  ],
});

export const families = [cone, stops, handMeter, inside, mark, whoKnows] as const;
