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
] as const;

type Sensor = (typeof smallSensors)[number];
const cropOf = (given: Sensor) => evaluateFormula(cropFactorFormula, given);

const rulerPhotograph = numberFamily({
  id: 'ruler-photograph',
  asks: 'magnification',
  question:
    'A sensor is {sensor-width} by {sensor-height}. On a photograph taken with it {field-width} of ruler reach from the left edge to the right. The whole picture is printed {print-width} wide. What was the magnification?',
  givens: (draw) => ({
    ...draw.pick(smallSensors),
    'field-width': draw.pick([16, 20, 30, 40, 47, 60, 75, 90, 120]),
    'print-width': draw.pick([200, 250, 300, 400]),
  }),
  tolerance: { relative: 0.02, because: 'a ruler’s edge in a picture is read to a fiftieth' },
  mistakes: [
    {
      id: 'print-enlargement',
      value: (given) => given['print-width'] / given['field-width'],
      because:
        'That is how much larger the ruler is on the paper, {print-width} over {field-width}. A print can be made in any size; magnification ends at the sensor, which is {sensor-width} wide.',
    },
    {
      id: 'times-crop-factor',
      value: (given) => (given['sensor-width'] / given['field-width']) * cropOf(given),
      because:
        'That is the right number times the crop factor. The small sensor is already counted: it is the {sensor-width} above the line.',
    },
    {
      id: 'upside-down',
      value: (given) => given['field-width'] / given['sensor-width'],
      because:
        'That is the ruler over the sensor. Magnification is image over subject, so the sensor goes above the line.',
    },
    {
      id: 'short-side',
      value: (given) => given['sensor-height'] / given['field-width'],
      because: 'That takes the short side of the sensor. The ruler lay along the long one, {sensor-width}.',
    },
  ],
  hint: 'The image of that much ruler is exactly as wide as something you know.',
  working: [
    {
      formula: magnificationFromFieldFormula,
      note: 'The image of {field-width} of ruler just fills the sensor. The print does not come into it.',
    },
  ],
});

const fieldOfABody = numberFamily({
  id: 'field-of-a-body',
  asks: 'field-width',
  question:
    '{A focal-length} lens gives {magnification} with the subject {focus-distance} from the sensor, which is {sensor-width} by {sensor-height}. How wide a piece of the subject fills the picture?',
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
  tolerance: { relative: 0.02, because: 'nobody frames a picture more closely' },
  mistakes: [
    {
      id: 'from-the-focal-length',
      value: (given) => (given['sensor-width'] * given['focus-distance']) / given['focal-length'],
      because:
        'That is sensor width times distance over focal length, {focus-distance} over {focal-length}. It is the rule for distant subjects; close up it goes wrong, and once m is known you need neither.',
    },
    {
      id: 'times-magnification',
      value: (given) => given['sensor-width'] * given.magnification,
      because:
        'That multiplies the sensor by m. From the sensor back to the subject you divide: the more an image is magnified, the less fits.',
    },
    {
      id: 'larger-sensor',
      value: (given) => 36 / given.magnification,
      because: 'That is what a sensor 36 mm wide would see. This one is {sensor-width} wide.',
    },
    {
      id: 'crop-counted-twice',
      value: (given) => given['sensor-width'] / given.magnification / cropOf(given),
      because:
        'That takes the crop factor off as well. The small sensor is already counted, by its own width of {sensor-width}.',
    },
  ],
  hint: 'Two of the numbers given are enough. Which piece of the subject has an image as wide as the sensor?',
  working: [
    {
      formula: fieldWidthFormula,
      note: 'Only the sensor and m count. Focal length and distance have done their work in bringing about {magnification}.',
    },
  ],
});

const imageOnTheSensor = numberFamily({
  id: 'image-on-the-sensor',
  asks: 'image-width',
  question:
    '{A thing} is {subject-width} wide. You photograph it at {magnification} with a body whose crop factor is {crop-factor}. How wide is its image on the sensor?',
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
  tolerance: { relative: 0.02, because: 'the sizes of such things are known no better' },
  mistakes: [
    {
      id: 'times-crop-factor',
      value: (given) => given['subject-width'] * given.magnification * given['crop-factor'],
      because:
        'That multiplies by the crop factor, {crop-factor}. A smaller sensor catches less of the image. It does not make the image any larger.',
    },
    {
      id: 'over-crop-factor',
      value: (given) => (given['subject-width'] * given.magnification) / given['crop-factor'],
      because:
        'That divides by the crop factor, {crop-factor}. The sensor is smaller; the image that the lens throws on it is not.',
    },
    {
      id: 'divided',
      value: (given) => given['subject-width'] / given.magnification,
      because: 'That divides by m. Magnification says how many times as large as the subject its image is: multiply.',
    },
  ],
  hint: 'What does the lens know about the sensor behind it?',
  working: [
    { formula: imageWidthFormula, note: 'The crop factor is of no use here. Image width is m times subject width:' },
  ],
});

const pixelsOnAMillimetre = numberFamily({
  id: 'pixels-on-a-millimetre',
  asks: 'pixels-per-millimetre',
  question:
    'A sensor {sensor-width} wide has {count} pixels along that side. At {magnification}, how many of them lie along one millimetre of the subject?',
  givens: (draw) => ({
    'sensor-width': draw.pick([23.5, 22.3, 17.3, 13.2]),
    count: draw.pick(['5000', '6000', '7200', '8000']),
    magnification: draw.pick([0.1, 0.2, 0.25, 0.5, 0.75, 1.5, 2]),
  }),
  tolerance: { relative: 0.02, because: 'three figures of the sensor’s width are given' },
  mistakes: [
    {
      id: 'magnification-forgotten',
      value: (given) => 1 / pitchOf(given),
      because:
        'That is {count} pixels over {sensor-width}: pixels on a millimetre of sensor. Many pixels are not magnification; one millimetre of subject covers {magnification} of a millimetre there.',
    },
    {
      id: 'divided',
      value: (given) => 1 / pitchOf(given) / given.magnification,
      because: 'That divides by m. The larger the image of a millimetre, the more pixels lie under it: multiply.',
    },
    {
      id: 'larger-sensor',
      value: (given) => (Number(given.count) * given.magnification) / 36,
      because:
        'That spreads the {count} pixels over 36 mm. Here they share {sensor-width}, so they stand closer together.',
    },
  ],
  hint: 'First: how wide is one pixel? Then: how wide is the image of one millimetre?',
  working: [
    {
      values: (known) => ({ 'pixel-pitch': pitchOf(known) }),
      note: 'Each pixel is {sensor-width} over {count} wide. One millimetre of subject is {magnification} of a millimetre on the sensor, and as many pixels as fit into that lie along it.',
      formula: pixelsPerMillimetreFormula,
    },
  ],
});

function pitchOf(given: { readonly 'sensor-width': number; readonly count: string }): number {
  return pixelPitch({ sensorWidth: given['sensor-width'], pixelsAcross: Number(given.count) });
}

type Effect = 'same' | 'larger' | 'smaller';

/** A row for each: what is done, what that does to the image, and what people say it does. */
// prettier-ignore
const changes: readonly (readonly [change: string, truth: Effect, tempting: Effect])[] = [
  ['The lens, set as before, goes on a body with a smaller sensor', 'same', 'larger'],
  ['The lens, set as before, goes on a body with twice the pixels', 'same', 'larger'],
  ['You crop the picture and print the rest as large as the whole', 'same', 'larger'],
  ['A ring goes behind the lens, and you move in until it is sharp', 'larger', 'same'],
  ['You focus farther away, and step back until it is sharp', 'smaller', 'same'],
];

const whatChangesIt = choiceFamily({
  id: 'what-changes-the-image',
  question:
    '{A thing} is sharp in the finder. {change}; where nothing else is said you keep your distance. What happens to the size of its image on the sensor?',
  givens: (draw) => {
    const [change, truth, tempting] = draw.pick(changes);
    return { change, truth, tempting, thing: draw.pick(['bay leaf', 'drawing pin', 'postage stamp', 'feather']) };
  },
  options: { same: 'It stays as it was', larger: 'It gets larger', smaller: 'It gets smaller' },
  answer: (given) => given.truth,
  mistakes: [
    {
      id: 'picture-for-image',
      value: (given) => given.tempting,
      because:
        'That is what happens to something else, not to the image on the sensor. The lens, its setting and the distances decide that image; a body, a crop or a print only decides what is done with it.',
    },
    {
      id: 'other-way',
      value: (given) => (given.truth === 'smaller' ? 'larger' : 'smaller'),
      because:
        'Nothing here works in that direction. Coming nearer, with the lens farther from the sensor, makes the image grow; going farther off makes it shrink; a body, a crop or a print leaves it alone.',
    },
  ],
  hint: 'Think of the patch of light that the lens throws, as if no sensor were there yet.',
  working: [
    {
      note: 'The image is what the lens throws, with this setting and at this distance. Has either changed? Nearer, with the lens farther from the sensor, it is larger; farther off it is smaller; and if nothing in front of the sensor has changed it is as it was, whatever catches, crops or prints it.',
    },
  ],
});

export const families = [rulerPhotograph, fieldOfABody, imageOnTheSensor, pixelsOnAMillimetre, whatChangesIt] as const;
