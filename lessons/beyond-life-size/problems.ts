import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { effectiveFNumberOfCoupledLensesFormula } from '#core/rig/effective-f-number-of-coupled-lenses.formula.ts';
import { effectiveFNumberOfObjectiveOnLensFormula } from '#core/rig/effective-f-number-of-objective-on-lens.formula.ts';
import { effectiveFNumberWithConverterFormula } from '#core/rig/effective-f-number-with-converter.formula.ts';
import { magnificationOfCoupledLensesFormula } from '#core/rig/magnification-of-coupled-lenses.formula.ts';
import { magnificationOfInfinityObjectiveFormula } from '#core/rig/magnification-of-infinity-objective.formula.ts';
import { magnificationWithConverterFormula } from '#core/rig/magnification-with-converter.formula.ts';
import { magnificationWithRingBehindConverterFormula } from '#core/rig/magnification-with-ring-behind-converter.formula.ts';

const aTwelfth = {
  relative: 0.03,
  because: '3 per cent is a twelfth of a stop, finer than anyone sets a lens',
} as const;
const rounded = { relative: 0.02, because: 'focal lengths on lenses are rounded to two or three figures' } as const;

const coupledSize = numberFamily({
  id: 'coupled-size',
  asks: 'magnification',
  question:
    'A {reversed-lens.focal-length} lens is turned round on the front of {a main-lens.focal-length} lens. Both are set to infinity. What is the magnification?',
  givens: (draw) => ({
    'main-lens.focal-length': draw.pick([85, 100, 135, 180, 200]),
    'reversed-lens.focal-length': draw.pick([24, 28, 35, 50]),
  }),
  tolerance: rounded,
  mistakes: [
    {
      id: 'upside-down',
      value: (given) => given['reversed-lens.focal-length'] / given['main-lens.focal-length'],
      because:
        'That divides the short focal length by the long one. The lens on the camera makes the image: its focal length goes above the line.',
    },
    {
      id: 'lengths-added',
      value: (given) =>
        (given['main-lens.focal-length'] + given['reversed-lens.focal-length']) / given['reversed-lens.focal-length'],
      because:
        'That adds the two focal lengths first. The front lens only makes the light parallel: {main-lens.focal-length} alone decides how large the image of that light is.',
    },
    {
      id: 'one-off',
      value: (given) => given['main-lens.focal-length'] / given['reversed-lens.focal-length'] - 1,
      because:
        'The 1 is taken off for a lens turned round on the camera itself. Here the light between the two lenses is parallel, and nothing is taken off.',
    },
  ],
  hint: 'The front lens is a strong close-up lens. How many times does its focal length go into that of the lens behind?',
  working: [{ formula: magnificationOfCoupledLensesFormula, note: 'Long over short:' }],
});

interface Coupled {
  readonly 'main-lens.f-number': number;
  readonly 'reversed-lens.f-number': number;
  readonly magnification: number;
}
/** The cone that the lens turned round would make by itself. */
const byFront = (given: Coupled) => given.magnification * given['reversed-lens.f-number'];

const coupledCone = numberFamily({
  id: 'coupled-cone',
  asks: 'effective-f-number',
  question:
    'Two coupled lenses, both set to infinity, give {magnification}. The lens on the camera is marked {main-lens.f-number}, the one turned round {reversed-lens.f-number}. What is the effective f-number?',
  givens: (draw) => {
    // Never alike, so that it matters which of the two decides.
    const [main, front, magnification] = draw.pick([
      [8, 1.8, 3],
      [11, 1.4, 4],
      [5.6, 4, 3],
      [8, 2.8, 4],
      [4, 2.8, 5],
      [16, 2, 4],
      [4, 5.6, 2],
      [11, 2, 3],
      [8, 4, 4],
      [5.6, 1.4, 2],
      [11, 5.6, 4],
      [16, 2.8, 3],
      [5.6, 2.8, 5],
    ] as const);
    return { 'main-lens.f-number': main, 'reversed-lens.f-number': front, magnification };
  },
  tolerance: aTwelfth,
  mistakes: [
    {
      id: 'the-other-one',
      value: (given) => Math.min(given['main-lens.f-number'], byFront(given)),
      because:
        'That is the cone of the larger opening. Light has to pass both, and the smaller opening decides: the larger of the two numbers.',
    },
    {
      id: 'as-on-rings',
      value: (given) => given['main-lens.f-number'] * (1 + given.magnification),
      because:
        'That is the rule for a lens that has moved away from the sensor. The lens on the camera is at infinity: nothing has moved.',
    },
    {
      id: 'front-as-on-rings',
      value: (given) => given['reversed-lens.f-number'] * (1 + given.magnification),
      because:
        'That treats the front lens as if it were on rings. Parallel light leaves it: its cone at the sensor is its mark times the magnification.',
    },
    {
      id: 'both-multiplied',
      value: (given) => given['main-lens.f-number'] * given.magnification,
      because:
        'That multiplies the mark of the lens on the camera. That mark holds as it is; the mark of the front lens is multiplied by the magnification.',
    },
  ],
  hint: 'What would the cone be if only the lens on the camera had an opening? And what if only the front lens had one?',
  working: [
    {
      formula: effectiveFNumberOfCoupledLensesFormula,
      note: 'The mark of the lens on the camera, or the front one’s times m: the larger number is the smaller opening.',
    },
  ],
});

const ringBefore = numberFamily({
  id: 'ring-before',
  asks: 'magnification',
  question:
    '{A focal-length} lens gives {focus-magnification} by its own focusing. You add {extension} of rings and, between them and the camera, a {converter-factor} converter. What is the magnification?',
  givens: (draw) => ({
    'focal-length': draw.pick([50, 60, 85, 100]),
    'focus-magnification': draw.pick([0.15, 0.25, 0.5, 1]),
    extension: draw.pick([12, 20, 24, 36]),
    'converter-factor': draw.pick([1.4, 1.7, 2]),
  }),
  tolerance: rounded,
  mistakes: [
    {
      id: 'ring-not-enlarged',
      value: (given) =>
        given['converter-factor'] * given['focus-magnification'] + given.extension / given['focal-length'],
      because:
        'That enlarges the lens’s own {focus-magnification} and not what the rings add. The converter is behind both: it enlarges their sum.',
    },
    {
      id: 'lens-not-enlarged',
      value: (given) =>
        given['focus-magnification'] + (given['converter-factor'] * given.extension) / given['focal-length'],
      because:
        'That enlarges what the rings add and not the lens’s own {focus-magnification}. The converter enlarges their sum.',
    },
    {
      id: 'converter-left-out',
      value: (given) => given['focus-magnification'] + given.extension / given['focal-length'],
      because: 'That is what lens and rings give. The converter makes it {converter-factor} as large.',
    },
    {
      id: 'longer-lens',
      value: (given) =>
        given['converter-factor'] * given['focus-magnification'] +
        given.extension / (given['converter-factor'] * given['focal-length']),
      because:
        'That counts the rings on a lens of {converter-factor} the focal length. So they would count behind the converter, with the lens at infinity. Before it they are enlarged.',
    },
    {
      id: 'own-focusing-forgotten',
      value: (given) => (given['converter-factor'] * given.extension) / given['focal-length'],
      because:
        'That leaves out the lens’s own {focus-magnification}. Add it to what the rings give before the converter enlarges both.',
    },
  ],
  hint: 'What do lens and rings give without the converter? What does the converter make of that?',
  working: [{ formula: magnificationWithConverterFormula, note: 'The converter enlarges all that is in front of it:' }],
});

const ringBehind = numberFamily({
  id: 'ring-behind',
  asks: 'magnification',
  question:
    '{A focal-length} lens is set to infinity. Behind it is a {converter-factor} converter, and between that and the camera {a extension} ring. What is the magnification?',
  givens: (draw) => ({
    'focal-length': draw.pick([50, 60, 85, 100]),
    'converter-factor': draw.pick([1.4, 1.7, 2]),
    extension: draw.pick([12, 20, 24, 36]),
  }),
  tolerance: rounded,
  mistakes: [
    {
      id: 'place-ignored',
      value: (given) => (given['converter-factor'] * given.extension) / given['focal-length'],
      because:
        'That is what the ring gives before the converter, where it is enlarged. Here it is behind: nothing enlarges its part.',
    },
    {
      id: 'converter-left-out',
      value: (given) => given.extension / given['focal-length'],
      because:
        'That is the ring on the lens alone. Lens and converter together have {converter-factor} the focal length, and on that a ring gives less.',
    },
    {
      id: 'divided-twice',
      value: (given) => given.extension / (given['converter-factor'] ** 2 * given['focal-length']),
      because:
        'That divides by the factor twice. It is k² times less than the same ring before the converter, but only k times less than on the lens alone.',
    },
    {
      id: 'upside-down',
      value: (given) => (given['converter-factor'] * given['focal-length']) / given.extension,
      because: 'That divides the focal length by the ring. A longer ring gives more: it goes above the line.',
    },
  ],
  hint: 'Seen from the ring, lens and converter are one lens. What is its focal length?',
  working: [
    {
      formula: magnificationWithRingBehindConverterFormula,
      note: 'Lens and converter are a lens of k times the focal length:',
    },
  ],
});

const converterLight = numberFamily({
  id: 'converter-light',
  asks: 'effective-f-number',
  question:
    'A lens marked {f-number} and a {converter-factor} converter behind it give {magnification} together. The lens’s pupil magnification is {pupil-magnification}. What is the effective f-number?',
  givens: (draw) => ({
    'f-number': draw.pick([4, 5.6, 8, 11]),
    'converter-factor': draw.pick([1.4, 1.7, 2]),
    magnification: draw.pick([1, 1.5, 2, 2.5]),
    'pupil-magnification': draw.pick([0.7, 0.8, 1.2, 1.3]),
  }),
  tolerance: aTwelfth,
  mistakes: [
    {
      id: 'free-of-loss',
      value: (given) => given['f-number'] * (1 + given.magnification / given['pupil-magnification']),
      because:
        'That is a lens on rings. The converter spreads the light over a larger image: the 1 becomes {converter-factor}.',
    },
    {
      id: 'converter-alone',
      value: (given) => given['f-number'] * given['converter-factor'],
      because:
        'That is the converter’s part, right for far things. Close up the lens has moved away from the sensor as well.',
    },
    {
      id: 'counted-twice',
      value: (given) =>
        given['f-number'] * given['converter-factor'] * (1 + given.magnification / given['pupil-magnification']),
      because:
        'That counts the converter twice: {magnification} holds its enlargement already. Multiply by k plus m/P.',
    },
    {
      id: 'pupils-upside-down',
      value: (given) =>
        given['f-number'] * (given['converter-factor'] + given.magnification * given['pupil-magnification']),
      because: 'That multiplies m by P. Divide: with a wider exit pupil less light is lost.',
    },
    {
      id: 'pupils-ignored',
      value: (given) => given['f-number'] * (given['converter-factor'] + given.magnification),
      because: 'That takes equal pupils. Divide m by {pupil-magnification} before you add it to {converter-factor}.',
    },
  ],
  hint: 'Far away, what would the converter make of the mark? By how much does m/P add to that?',
  working: [{ formula: effectiveFNumberWithConverterFormula, note: 'The factor, and m divided by P, times the mark:' }],
});

interface OnLens {
  readonly 'objective-magnification': number;
  readonly 'focal-length': number;
  readonly 'tube-focal-length': number;
}
const onLens = (given: OnLens) => evaluateFormula(magnificationOfInfinityObjectiveFormula, given);

const objective = numberFamily({
  id: 'objective',
  asks: 'effective-f-number',
  question:
    'An objective is engraved {objective-magnification}, NA {numerical-aperture}, for a tube lens of {tube-focal-length}. You put it on {a focal-length} lens set to infinity and to {f-number}. What is the effective f-number?',
  givens: (draw) => {
    const [engraved, aperture] = draw.pick([
      [4, 0.1],
      [5, 0.14],
      [10, 0.25],
      [20, 0.4],
    ] as const);
    return {
      'objective-magnification': engraved,
      'numerical-aperture': aperture,
      'tube-focal-length': 200,
      'focal-length': draw.pick([100, 135]),
      'f-number': draw.pick([2.8, 4, 5.6]),
    };
  },
  tolerance: aTwelfth,
  mistakes: [
    {
      id: 'engraved-magnification',
      value: (given) => given['objective-magnification'] / (2 * given['numerical-aperture']),
      because:
        'That takes the engraved {objective-magnification}, which holds on {tube-focal-length}. On {focal-length} the image is smaller and its cone wider.',
    },
    {
      id: 'not-halved',
      value: (given) => onLens(given) / given['numerical-aperture'],
      because:
        'That divides by NA alone. NA is the half angle of the cone, the f-number its whole width: divide by 2 NA.',
    },
    {
      id: 'lens-behind',
      value: (given) => given['f-number'],
      because:
        'That is the mark of the lens behind. It decides only where its cone is the more slender one, and here the objective’s is.',
    },
    {
      id: 'lens-behind-enlarged',
      value: (given) => given['f-number'] * (1 + onLens(given)),
      because:
        'That is a lens on rings. The lens behind the objective is at infinity: nothing has moved, and its mark holds as it is.',
    },
  ],
  hint: 'How large is the image on this lens? Divide that by twice the NA, and compare with the mark of the lens behind.',
  working: [
    {
      values: (known) => ({ magnification: onLens(known) }),
      note: 'On {focal-length} instead of {tube-focal-length} the magnification is {magnification}.',
    },
    { formula: effectiveFNumberOfObjectiveOnLensFormula, note: 'The more slender of the two cones counts:' },
  ],
});

type Answer = 'nearer' | 'alike' | 'farther' | 'nowhere';

const roomWithConverter = choiceFamily({
  id: 'room',
  question:
    '{A focal-length} lens is focused to {focus-magnification}. {thing}, nothing else is touched, and you move until the subject is sharp again. Where is it now?',
  options: {
    nearer: 'Nearer to the lens',
    alike: 'Where it was',
    farther: 'Farther away',
    nowhere: 'Nowhere: it is sharp at no distance now',
  } satisfies Record<Answer, string>,
  givens: (draw) => ({
    'focal-length': draw.pick([60, 85, 100]),
    'focus-magnification': draw.pick([0.5, 0.75, 1]),
    'converter-factor': 2,
    extension: 36,
    thing: draw.pick(['A ×2 converter goes behind the lens', 'A 36 mm ring goes behind the lens']),
  }),
  answer: ({ thing }): Answer => (thing.includes('converter') ? 'alike' : 'nearer'),
  mistakes: [
    {
      id: 'all-alike',
      value: ({ thing }): Answer => (thing.includes('converter') ? 'nearer' : 'alike'),
      because:
        'Ask what has happened to the lens. A ring moves it away from the sensor; a converter enlarges the image that is there. Which of the two is it, and what does it change in front of the lens?',
    },
    {
      id: 'longer-is-farther',
      value: (): Answer => 'farther',
      because:
        'A lens of longer focal length is farther away at the same size. Here the focal length of the lens has not changed, nor has its distance grown.',
    },
    {
      id: 'no-longer-sharp',
      value: (): Answer => 'nowhere',
      because:
        'What goes behind the lens takes the far end of its focusing at most. The lens still forms a sharp image of something in front of it: has what it does to near things been changed, or only what becomes of its image?',
    },
  ],
  hint: 'Is there anything new in front of the lens, or has the lens moved?',
  working: [
    {
      formula: magnificationWithConverterFormula,
      note: 'With both, ring before converter, the size would be this; of the two only the ring has moved the lens.',
    },
  ],
});

export const families = [
  coupledSize,
  coupledCone,
  ringBefore,
  ringBehind,
  converterLight,
  objective,
  roomWithConverter,
] as const;
