import { OutOfRange } from '#core/quantity/errors.ts';
import type { Formula } from '#core/quantity/formula.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Assumption, RouteFormula } from './route.ts';

/**
 * What is taken where nothing is said, in the order in which it is told: the plainest lens there is, on the camera of the workbook’s examples,
 * in green light. Each is said beside the answer that leans on it.
 */
export const usual: readonly Assumption[] = [
  { quantity: 'focus-magnification', value: 0, words: 'the lens is set to infinity' },
  { quantity: 'pupil-magnification', value: 1, words: 'both pupils are equally wide (P = 1)' },
  {
    quantity: 'front-principal-depth',
    value: 0,
    words: 'H stands at the front rim: room is counted from H',
    // The lenses of the crate have 8 to 62 mm.
    between: [0, 65],
    // Turned round, a lens stands that much farther from the sensor: it decides the magnification, and no lens has none.
    unless: ['reversed lens'],
  },
  // The lenses of the crate have −4 to 25 mm.
  { quantity: 'principal-separation', value: 0, words: 'H and H′ stand in one place', between: [-5, 25] },
  { quantity: 'close-up-gap', value: 0, words: 'the close-up lens stands at H' },
  { quantity: 'sensor-width', value: 36, words: 'the sensor is 36 mm wide' },
  { quantity: 'wavelength', value: 0.00055, words: 'the light is green, 550 nm' },
  { quantity: 'stabilisation', value: 0, words: 'nothing is stabilised' },
  { quantity: 'flash-power', value: 1, words: 'the flash fires at full power' },
  { quantity: 'iso', value: 100, words: 'ISO is 100' },
  { quantity: 'subject-tilt', value: 0, words: 'the subject is not tilted' },
  { quantity: 'incidence-angle', value: 0, words: 'the light comes straight on' },
  // Common practice: the most frequent of several lengths.
  { quantity: 'tube-focal-length', value: 200, words: 'the objective is made for a tube lens of 200 mm' },
];

/** Formulas that say the same letters of another set-up, by the name of their file: taken only where that set-up is spoken of. */
export const setUps: Readonly<Record<string, string>> = {
  'effective-f-number-of-reversed-lens': 'reversed lens',
  'entrance-pupil-distance-of-reversed-lens': 'reversed lens',
  'entrance-pupil-of-reversed-lens': 'reversed lens',
  'extension-for-reversed-lens': 'reversed lens',
  'magnification-of-reversed-lens': 'reversed lens',
  'working-distance-of-reversed-lens': 'reversed lens',
  'working-distance-of-racked-out-reversed-lens': 'reversed lens',
  'effective-f-number-with-close-up-lens': 'close-up lens',
  'working-distance-with-close-up-lens': 'close-up lens',
  'working-distance-of-close-up-lens': 'close-up lens',
  'effective-f-number-of-objective': 'objective',
  'hyperfocal-distance-from-pupil': 'hyperfocal distance',
  'best-effective-f-number': 'best f-number',
  'balanced-f-number': 'best f-number',
  // What one would set for a detail or a depth is not what is set.
  'finest-effective-f-number': 'best f-number',
  'subject-depth-in-one-frame': 'one frame',
  'circle-of-confusion-by-diagonal': 'circle by the diagonal',
  'circle-of-confusion-by-viewing': 'circle by viewing',
  'nearest-focus-distance': 'nearest focus',
  'angle-of-view-far': 'far subject',
  'surface-reflectance-p': 'light vibrating in the plane',
  'film-reflectance-of-two-beams': 'two beams',
  'illuminance-by-inverse-square': 'inverse square',
  'motion-blur-turning-about-pupil': 'turning about the pupil',
  'scale-change-focusing': 'focusing by the ring',
  'magnification-with-ring-behind-converter': 'ring behind the converter',
  'magnification-with-rings-around-converter': 'ring behind the converter',
};

type What = QuantityName | 'close-up lens' | 'reversed lens';

/** What makes of a lens another than the one that its focal length and f-number are of. */
const withOther: readonly What[] = ['close-up lens', 'close-up-power', 'converter-factor', 'objective-magnification'];

/**
 * Formulas that go by their quantity's own name are for a lens by itself, the right way round: by the name of their file, with what they say something false.
 * A quantity stands for what it is a number of.
 */
export const unless: Readonly<Record<string, readonly What[]>> = {
  'angle-of-view': withOther,
  'close-focus-focal-length': withOther,
  'effective-f-number': [...withOther, 'reversed lens'],
  'entrance-pupil': ['reversed lens'],
  'entrance-pupil-distance': [...withOther, 'reversed lens'],
  'extension-for-magnification': [...withOther, 'reversed lens'],
  'focal-length-for-working-distance': [...withOther, 'reversed lens'],
  'focus-distance': withOther,
  'image-distance': withOther,
  'image-distance-of-subject': withOther,
  'magnification-at-focus-distance': withOther,
  'magnification-from-extension': ['reversed lens'],
  'magnification-of-subject': withOther,
  'subject-distance': withOther,
  'working-distance': [...withOther, 'reversed lens'],
  'light-lost-whatever-the-mark': ['converter-factor'],
  'objective-as-it-is-made-for': ['focal-length'],
};

/** Formulas that say something only of a number that is given: by the name of their file, of which. */
export const needs: Readonly<Record<string, readonly QuantityName[]>> = {
  // Light that comes straight on says nothing of how deep a subject is.
  'subject-depth-aslant': ['incidence-angle'],
  'lens-on-a-converter-as-it-is-set': ['focus-magnification'],
};

type Bridged =
  | 'converter-factor'
  | 'focus-magnification'
  | 'depth-of-field'
  | 'depth-of-field-close-up'
  | 'crop-factor'
  | 'effective-f-number'
  | 'far-limit'
  | 'entrance-pupil-distance'
  | 'f-number'
  | 'frame-step'
  | 'magnification'
  | 'near-limit'
  | 'objective-magnification'
  | 'pupil-magnification'
  | 'sensor-width'
  | 'subject-depth';

const bridge = <Ids extends Bridged>(
  id: string,
  formula: Omit<Formula<Ids>, 'checkedBy' | 'source'>,
): RouteFormula => ({
  id,
  ...(unless[id] && { unless: unless[id] }),
  ...(needs[id] && { needs: needs[id] }),
  formula: { ...formula, source: 'core/depth/README.md', checkedBy: [] } as unknown as Formula<never>,
});

/** Sensors of four to three are small, or larger than film was: common practice, from the sizes that camera makers print. */
const between = { small: 20, large: 40 };

/** Steps that are hardly formulas: what one quantity says of its neighbour, so that a route may go on with it. */
export const bridges: readonly RouteFormula[] = [
  bridge('one-over-the-pupil-distance', {
    gives: 'inverse-entrance-pupil-distance',
    from: ['entrance-pupil-distance'],
    tex: String.raw`\q{inverse-entrance-pupil-distance} = \frac{1}{\q{entrance-pupil-distance}}`,
    evaluate: ({ entrancePupilDistance }) => 1 / entrancePupilDistance,
    says: 'One divided by the distance from the entrance pupil to the subject.',
  }),
  bridge('depth-by-the-close-up-form', {
    gives: 'depth-of-field',
    from: ['depth-of-field-close-up'],
    tex: String.raw`\q{depth-of-field} = \q{depth-of-field-close-up}`,
    evaluate: ({ depthOfFieldCloseUp }) => depthOfFieldCloseUp,
    says: 'Close up the short form is as good as the exact one.',
  }),
  bridge('both-sides-of-the-depth', {
    gives: 'depth-of-field',
    from: ['near-limit', 'far-limit'],
    tex: String.raw`\q{depth-of-field} = \q{near-limit} + \q{far-limit}`,
    evaluate: ({ nearLimit, farLimit }) => nearLimit + farLimit,
    says: 'What is sharp before the sharp plane, and what is behind it.',
  }),
  bridge('width-by-the-crop-factor', {
    gives: 'sensor-width',
    from: ['crop-factor'],
    tex: String.raw`\q{sensor-width} = \frac{36}{\q{crop-factor}}`,
    evaluate: ({ cropFactor }) => 36 / cropFactor,
    says: 'The crop factor compares with a sensor 36 mm wide; of the same shape this one is so wide.',
  }),
  bridge('half-the-depth-before', {
    gives: 'near-limit',
    from: ['depth-of-field'],
    tex: String.raw`\q{near-limit} = \frac{\q{depth-of-field}}{2}`,
    evaluate: ({ depthOfField }) => depthOfField / 2,
    says: 'Close up half of the depth lies before the sharp plane.',
  }),
  bridge('half-the-depth-behind', {
    gives: 'far-limit',
    from: ['depth-of-field'],
    tex: String.raw`\q{far-limit} = \frac{\q{depth-of-field}}{2}`,
    evaluate: ({ depthOfField }) => depthOfField / 2,
    says: 'Close up half of the depth lies behind the sharp plane.',
  }),
  bridge('light-lost-whatever-the-mark', {
    gives: 'light-loss',
    from: ['magnification', 'pupil-magnification'],
    tex: String.raw`\q{light-loss} = 2 \log_2\left(1 + \frac{\q{magnification}}{\q{pupil-magnification}}\right)`,
    evaluate: ({ magnification, pupilMagnification }) => 2 * Math.log2(1 + magnification / pupilMagnification),
    says: 'The mark is not given, and has no part in it: the effective f-number is as many times any mark.',
  }),
  bridge('light-lost-behind-a-converter', {
    gives: 'light-loss',
    from: ['converter-factor', 'magnification', 'pupil-magnification'],
    tex: String.raw`\q{light-loss} = 2 \log_2\left(\q{converter-factor} + \frac{\q{magnification}}{\q{pupil-magnification}}\right)`,
    evaluate: ({ converterFactor, magnification, pupilMagnification }) =>
      2 * Math.log2(converterFactor + magnification / pupilMagnification),
    says: 'The mark has no part in it: behind a converter the effective f-number is as many times any mark.',
  }),
  bridge('height-at-three-to-two', {
    gives: 'sensor-height',
    from: ['sensor-width'],
    tex: String.raw`\q{sensor-height} = \frac{2\,\q{sensor-width}}{3}`,
    evaluate: ({ sensorWidth }) => (2 * sensorWidth) / 3,
    says: 'Its height is not given: most sensors are as three to two.',
  }),
  bridge('height-at-four-to-three', {
    gives: 'sensor-height',
    from: ['sensor-width'],
    tex: String.raw`\q{sensor-height} = \frac{3\,\q{sensor-width}}{4}`,
    evaluate: ({ sensorWidth }) => {
      if (sensorWidth <= between.small || sensorWidth >= between.large) return (3 * sensorWidth) / 4;
      throw new OutOfRange('sensor-width', sensorWidth, `below ${between.small} mm or above ${between.large} mm`);
    },
    says: 'Its height is not given: some sensors are as four to three.',
  }),
];

/** Of what the mark alone may be taken, where nothing says how near the subject is: exposures, which tables give for far subjects. */
const tabled: readonly QuantityName[] = ['exposure-value', 'light-value', 'exposure-time', 'iso', 'flash-distance'];

const lensOnConverter = {
  gives: 'magnification',
  from: ['converter-factor', 'focus-magnification'],
  tex: String.raw`\q{magnification} = \q{converter-factor}\,\q{focus-magnification}`,
  evaluate: ({ converterFactor, focusMagnification }: { converterFactor: number; focusMagnification: number }) =>
    converterFactor * focusMagnification,
  says: 'No ring is spoken of: the converter enlarges what the lens gives by itself.',
} as const;

/** Steps that are only taken where nothing else leads to what is asked, and it is one of those that they answer, if they name some. */
export const lastly: readonly { readonly by: RouteFormula; readonly answers?: readonly QuantityName[] }[] = [
  {
    by: bridge('marked-f-number-far-away', {
      gives: 'effective-f-number',
      from: ['f-number'],
      tex: String.raw`\q{effective-f-number} = \q{f-number}`,
      evaluate: ({ fNumber }) => fNumber,
      says: 'Nothing says how near the subject is. Far away the lens works at its mark.',
    }),
    answers: tabled,
  },
  {
    by: bridge('mark-to-set-far-away', {
      gives: 'f-number',
      from: ['effective-f-number'],
      tex: String.raw`\q{f-number} = \q{effective-f-number}`,
      evaluate: ({ effectiveFNumber }) => effectiveFNumber,
      says: 'Nothing says how near the subject is. Far away the mark is what the lens works at.',
    }),
    answers: ['f-number'],
  },
  {
    by: bridge('lens-on-a-converter', lensOnConverter),
    answers: ['magnification', 'field-width', 'field-height'],
  },
  // With what the lens gives by itself all the rest follows, light and depth as well.
  { by: bridge('lens-on-a-converter-as-it-is-set', lensOnConverter) },
  {
    by: bridge('objective-as-it-is-made-for', {
      gives: 'magnification',
      from: ['objective-magnification'],
      tex: String.raw`\q{magnification} = \q{objective-magnification}`,
      evaluate: ({ objectiveMagnification }) => objectiveMagnification,
      says: 'On the length of tube that it is made for, an objective gives the magnification that stands on it.',
    }),
    answers: ['magnification', 'field-width', 'field-height', 'effective-f-number', 'airy-diameter'],
  },
  {
    by: bridge('frames-by-their-step', {
      gives: 'frame-count',
      from: ['subject-depth', 'frame-step'],
      tex: String.raw`\q{frame-count} = 1 + \left\lceil\frac{\q{subject-depth}}{\q{frame-step}}\right\rceil`,
      evaluate: ({ subjectDepth, frameStep }) => 1 + Math.ceil(subjectDepth / frameStep - 1e-9),
      says: 'Nothing says how deep one frame is: counted from a sharp plane at one end to one at the other.',
    }),
    answers: ['frame-count', 'stack-time', 'stack-travel'],
  },
];
