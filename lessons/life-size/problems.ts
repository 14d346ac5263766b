import { cropFactorFormula } from '#core/gaussian/crop-factor.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { imageWidthFormula } from '#core/gaussian/image-width.formula.ts';
import { magnificationFromFieldFormula } from '#core/gaussian/magnification-from-field.formula.ts';
import { pixelPitch } from '#core/gaussian/pixel-pitch.ts';
import { pixelsPerMillimetreFormula } from '#core/gaussian/pixels-per-millimetre.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';

/** Sizes of sensors smaller than 36 × 24 mm that cameras have (common practice). */
const smallSensors = [
  { 'sensor-width': 23.5, 'sensor-height': 15.6 },
  { 'sensor-width': 22.3, 'sensor-height': 14.9 },
  { 'sensor-width': 17.3, 'sensor-height': 13 },
  { 'sensor-width': 13.2, 'sensor-height': 8.8 },
] as const;
/** Without the one whose short side is about its width over its crop factor: a learner's number could mean either. */
const tellingSensors = smallSensors.filter((sensor) => sensor['sensor-width'] !== 23.5);

type Sensor = (typeof smallSensors)[number];
const cropOf = (given: Sensor) => evaluateFormula(cropFactorFormula, given);
/** What formulas give from the numbers of a problem, right or wrong ones. */
type Numbers<Name extends string> = Readonly<Record<Name, number>>;
const magnificationOf = (given: Numbers<'sensor-width' | 'field-width'>) =>
  evaluateFormula(magnificationFromFieldFormula, given);
const fieldOf = (given: Numbers<'sensor-width' | 'magnification'>) => evaluateFormula(fieldWidthFormula, given);
const imageOf = (given: Numbers<'subject-width' | 'magnification'>) => evaluateFormula(imageWidthFormula, given);

const rulerPhotograph = numberFamily({
  id: 'ruler-photograph',
  asks: 'magnification',
  question:
    'A sensor is {sensor-width} by {sensor-height}. Its photograph of a ruler shows {field-width} from the left edge to the right. You print the whole picture {print-width} wide. What was the magnification?',
  givens: (draw) => ({
    ...draw.pick(tellingSensors),
    'field-width': draw.pick([16, 20, 30, 40, 47, 60, 75, 90, 120]),
    'print-width': draw.pick([200, 250, 300, 400]),
  }),
  tolerance: { relative: 0.02, because: 'a ruler’s edge in a picture can be read to one part in fifty' },
  mistakes: [
    {
      id: 'print-enlargement',
      value: (given) => magnificationOf({ ...given, 'sensor-width': given['print-width'] }),
      because:
        'That is how much larger the ruler is on the paper, {print-width} divided by {field-width}. A print can have any size. Magnification compares the ruler with its image on the sensor, {sensor-width} wide.',
    },
    {
      id: 'times-crop-factor',
      value: (given) => magnificationOf(given) * cropOf(given),
      because:
        'That is the right number times the crop factor. The small sensor is already counted, as {sensor-width}, its own width.',
    },
    {
      id: 'over-crop-factor',
      value: (given) => magnificationOf(given) / cropOf(given),
      because:
        'That is the right number divided by the crop factor. The small sensor is already counted, as {sensor-width}, its own width.',
    },
    {
      id: 'upside-down',
      value: (given) => 1 / magnificationOf(given),
      because:
        'That is the ruler divided by the sensor. Magnification is image divided by subject, so divide the sensor’s width by the ruler.',
    },
    {
      id: 'short-side',
      value: (given) => magnificationOf({ ...given, 'sensor-width': given['sensor-height'] }),
      because: 'That uses the short side of the sensor. The ruler lay along the long one, {sensor-width}.',
    },
  ],
  hint: 'What else is exactly as wide as the image of that much ruler?',
  working: [
    {
      formula: magnificationFromFieldFormula,
      note: 'The image of {field-width} of ruler just fills the sensor. The print does not matter.',
    },
  ],
});

const fieldOfABody = numberFamily({
  id: 'field-of-a-body',
  asks: 'field-width',
  question:
    '{A focal-length} lens gives {magnification}. The subject is {focus-distance} from the sensor, which is {sensor-width} by {sensor-height}. How wide is the field, the part of the subject that fills the picture?',
  givens: (draw) => {
    const lens = {
      focalLength: draw.pick([50, 60, 75, 90, 105]),
      magnification: draw.pick([0.2, 0.25, 0.4, 0.5, 0.8, 1.5, 2]),
    };
    const distance = focusDistance({ ...lens, principalSeparation: 0 });
    return {
      ...draw.pick(smallSensors),
      'focal-length': lens.focalLength,
      magnification: lens.magnification,
      'focus-distance': Math.round(distance),
    };
  },
  tolerance: { relative: 0.02, because: 'nobody frames a picture more exactly' },
  mistakes: [
    {
      id: 'from-the-focal-length',
      value: (given) => (given['sensor-width'] * given['focus-distance']) / given['focal-length'],
      because:
        'That is the sensor’s width times {focus-distance} divided by {focal-length}. That rule is for distant subjects and fails close up. Once you know m, you need neither.',
    },
    {
      id: 'times-magnification',
      value: (given) => given['sensor-width'] * given.magnification,
      because:
        'That multiplies the sensor by m. From the sensor back to the subject, divide: the more an image is magnified, the less of the subject fits.',
    },
    {
      id: 'larger-sensor',
      value: (given) => fieldOf({ ...given, 'sensor-width': 36 }),
      because: 'That is the field of a sensor 36 mm wide. This one is {sensor-width} wide.',
    },
    {
      id: 'crop-counted-twice',
      value: (given) => fieldOf(given) / cropOf(given),
      because:
        'That divides by the crop factor as well. The small sensor is already counted, by its own width of {sensor-width}.',
    },
  ],
  hint: 'Two of the numbers given are enough. Which part of the subject has an image as wide as the sensor?',
  working: [
    {
      formula: fieldWidthFormula,
      note: 'Only the sensor and m count. Focal length and distance are already contained in {magnification}.',
    },
  ],
});

const imageOnTheSensor = numberFamily({
  id: 'image-on-the-sensor',
  asks: 'image-width',
  question:
    '{A thing} is {subject-width} wide. You photograph it at {magnification} with a camera whose crop factor is {crop-factor}. How wide is its image in the plane of the sensor?',
  givens: (draw) => ({
    ...draw.pick([
      { thing: 'drawing pin', 'subject-width': 10 },
      { thing: 'acorn', 'subject-width': 14 },
      { thing: 'button', 'subject-width': 18 },
      { thing: 'walnut', 'subject-width': 32 },
      { thing: 'bay leaf', 'subject-width': 80 },
    ]),
    magnification: draw.pick([0.1, 0.2, 0.25, 0.3, 0.4, 0.6, 0.75, 1.5]),
    'crop-factor': draw.pick([1.5, 1.6, 2]),
  }),
  tolerance: { relative: 0.02, because: 'you seldom know such sizes any better' },
  mistakes: [
    {
      id: 'times-crop-factor',
      value: (given) => imageOf(given) * given['crop-factor'],
      because:
        'That multiplies by the crop factor, {crop-factor}. A smaller sensor catches less of the image. It does not make the image larger.',
    },
    {
      id: 'over-crop-factor',
      value: (given) => imageOf(given) / given['crop-factor'],
      because:
        'That divides by the crop factor, {crop-factor}. The sensor is smaller; the image that the lens forms is not.',
    },
    {
      id: 'divided',
      value: (given) => given['subject-width'] / given.magnification,
      because: 'That divides by m. The image is m times as wide as the subject: multiply.',
    },
  ],
  hint: 'What does the lens know about the sensor behind it?',
  working: [
    {
      formula: imageWidthFormula,
      note: 'The crop factor does not matter here: it says how much of the image the sensor catches. The image is m times as wide as the subject:',
    },
  ],
});

const pixelsOnAMillimetre = numberFamily({
  id: 'pixels-on-a-millimetre',
  asks: 'pixels-per-millimetre',
  question:
    'A sensor {sensor-width} wide has {count} pixels along that side. At {magnification}, how many pixels are there along one millimetre of the subject?',
  givens: (draw) => ({
    'sensor-width': draw.pick([23.5, 22.3, 17.3, 13.2]),
    count: draw.pick(['5000', '6000', '7200', '8000']),
    magnification: draw.pick([0.1, 0.2, 0.25, 0.5, 0.75, 1.5, 2]),
  }),
  tolerance: { relative: 0.02, because: 'the sensor’s width is given to three figures' },
  mistakes: [
    {
      id: 'magnification-forgotten',
      value: (given) => 1 / pitchOf(given),
      because:
        'That is {count} pixels divided by {sensor-width}: the pixels on one millimetre of the sensor. The image of one millimetre of the subject is {magnification} as long.',
    },
    {
      id: 'divided',
      value: (given) => 1 / pitchOf(given) / given.magnification,
      because: 'That divides by m. The larger the image of a millimetre, the more pixels it covers: multiply.',
    },
    {
      id: 'larger-sensor',
      value: (given) => (Number(given.count) * given.magnification) / 36,
      because:
        'That spreads the {count} pixels over 36 mm. Here they share {sensor-width}, so they are closer together.',
    },
  ],
  hint: 'First: how wide is one pixel? Then: how wide is the image of one millimetre?',
  working: [
    {
      values: (known) => ({ 'pixel-pitch': pitchOf(known) }),
      note: 'Each pixel is {sensor-width} divided by {count} wide. The image of one millimetre of the subject is {magnification} as long. Count how many pixels fit into that.',
      formula: pixelsPerMillimetreFormula,
    },
  ],
});

function pitchOf(given: { readonly 'sensor-width': number; readonly count: string }): number {
  return pixelPitch({ sensorWidth: given['sensor-width'], pixelsAcross: Number(given.count) });
}

type Effect = 'same' | 'larger' | 'smaller';

interface Change {
  /** What is done. */
  readonly change: string;
  /** What that does to the image. */
  readonly truth: Effect;
  /** What people say it does, and why it does not; then the same for the answer that is left. */
  readonly tempting: Effect;
  readonly reason: string;
  readonly other: Effect;
  readonly otherwise: string;
}

const changes: readonly Change[] = [
  {
    change: 'You put the lens, set as before, on a camera with a smaller sensor, and keep your distance',
    truth: 'same',
    tempting: 'larger',
    reason:
      'It looks larger on a print or screen, because a picture from a smaller sensor is enlarged more. What of the image before that?',
    other: 'smaller',
    otherwise: 'A smaller sensor catches a smaller piece of the image. What of the image that the piece is taken from?',
  },
  {
    change: 'You put the lens, set as before, on a camera with twice the pixels, and keep your distance',
    truth: 'same',
    tempting: 'larger',
    reason:
      'It looks larger on a screen that gives every pixel as much room as before. What do pixels do to the image that falls on them?',
    other: 'smaller',
    otherwise: 'More pixels cut the image into finer pieces. What of all the pieces together?',
  },
  {
    change: 'You take the picture, crop it, and print the rest as large as you would have printed the whole',
    truth: 'same',
    tempting: 'larger',
    reason: 'It is larger on the print. What of the image on the sensor, before anything was cropped?',
    other: 'smaller',
    otherwise: 'Cropping cuts off margins of the picture. When was the image on the sensor?',
  },
  {
    change: 'You put a tube without glass between camera and lens, and move nearer until it is sharp',
    truth: 'larger',
    tempting: 'same',
    reason:
      'The tube has no glass, but two distances are not what they were: lens to sensor, and lens to subject. What do they do to the image?',
    other: 'smaller',
    otherwise:
      'The lens is farther from the sensor now, and nearer to the subject. Which way does each of the two change the image?',
  },
  {
    change: 'You turn the focus ring to a greater distance, and step back until it is sharp',
    truth: 'smaller',
    tempting: 'same',
    reason: 'The lens is the same, but its setting and your distance are not. What do they do to the image?',
    other: 'larger',
    otherwise: 'The subject is farther away now, and the lens is the same. Which way does that change the image?',
  },
  {
    change:
      'You change to a lens of twice the focal length, and step back until it fills as much of the picture as before',
    truth: 'same',
    tempting: 'larger',
    reason: 'From the same place it would be larger. But you stepped back: until when?',
    other: 'smaller',
    otherwise:
      'With the old lens it would be smaller from there. But the lens is another one: how far did you step back with it?',
  },
];

const whatChangesIt = choiceFamily({
  id: 'what-changes-the-image',
  question: '{A thing} is in focus. {change}. What happens to the size of its image on the sensor?',
  givens: (draw) => ({
    ...draw.pick(changes),
    thing: draw.pick(['bay leaf', 'drawing pin', 'postage stamp', 'feather']),
  }),
  options: {
    same: 'It stays as it was',
    larger: 'It gets larger',
    smaller: 'It gets smaller',
    depends: 'That depends on the sensor',
  },
  answer: (given) => given.truth,
  mistakes: [
    { id: 'tempting', value: (given) => given.tempting, because: '{reason}' },
    { id: 'other-way', value: (given) => given.other, because: '{otherwise}' },
    {
      id: 'by-the-sensor',
      value: () => 'depends',
      because:
        'The lens forms the same image on a small sensor, on a large one, and on a sheet of paper in their place. Which of lens, setting and distance has changed here?',
    },
  ],
  hint: 'Think of the image that the lens forms, as if no sensor were there yet.',
  working: [
    {
      note: 'Lens, setting and distance decide how large the image is. Has any of them changed? If not, the image is as it was: camera, crop and print only decide what becomes of it. From nearer, with the lens farther from the sensor, the image is larger. From farther away, with the same lens, it is smaller.',
    },
  ],
});

export const families = [rulerPhotograph, fieldOfABody, imageOnTheSensor, pixelsOnAMillimetre, whatChangesIt] as const;
