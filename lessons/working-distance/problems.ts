import { backgroundBlurFormula } from '#core/depth/background-blur.formula.ts';
import { backgroundWidthFormula } from '#core/depth/background-width.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance, entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { focalLengthForWorkingDistanceFormula } from '#core/gaussian/focal-length-for-working-distance.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { lensShadowFormula } from '#core/light/lens-shadow.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { bodies } from '#site/state/crate.ts';

/** Focal lengths that are in use at these magnifications. */
const focalLengths = [50, 60, 80, 100, 140];
const depths = [15, 22, 28, 34];
const pupils = [0.6, 0.7, 1.3, 1.5];
const sensorWidths = Object.values(bodies).map((body) => body['sensor-width']);

const room = numberFamily({
  id: 'room',
  asks: 'working-distance',
  question:
    'A lens has a focal length of {focal-length} where it is focused to {magnification}. Its H is {front-principal-depth} behind its front rim. How much room is there between rim and subject?',
  givens: (draw) => ({
    'focal-length': draw.pick(focalLengths),
    magnification: draw.pick([0.2, 0.25, 0.4, 0.5, 0.75]),
    'front-principal-depth': draw.pick(depths),
  }),
  tolerance: { relative: 0.02, because: 'a ruler held in front of a lens is read to a millimetre or two' },
  mistakes: [
    {
      id: 'rim-forgotten',
      value: (given) => evaluateFormula(subjectDistanceFormula, given),
      because: 'That is the distance from H. The rim is {front-principal-depth} in front of H, so the room is smaller.',
    },
    {
      id: 'rim-added',
      value: (given) => evaluateFormula(subjectDistanceFormula, given) + given['front-principal-depth'],
      because: 'That adds {front-principal-depth}. The rim is in front of H, nearer to the subject: subtract.',
    },
    {
      id: 'image-side',
      value: (given) => given['focal-length'] * (1 + given.magnification) - given['front-principal-depth'],
      because:
        'That starts from f (1 + m), the distance from H′ to the sensor. On the side of the subject it is f (1 + 1/m).',
    },
    {
      id: 'from-the-sensor',
      value: (given) => given['focal-length'] * (2 + given.magnification + 1 / given.magnification),
      because:
        'That is the distance from the sensor to the subject, with H and H′ in one place. Room is counted from the rim.',
    },
    {
      id: 'one-forgotten',
      value: (given) => given['focal-length'] / given.magnification - given['front-principal-depth'],
      because: 'That starts from f divided by m. From H the subject is one focal length farther: f (1 + 1/m).',
    },
  ],
  hint: 'How far from H is the subject? And what of that way does the lens itself take?',
  working: [
    { formula: subjectDistanceFormula, note: 'From H to the subject:' },
    { formula: workingDistanceFormula, note: 'From there on the lens itself takes {front-principal-depth}:' },
  ],
});

const longerLens = numberFamily({
  id: 'longer-lens',
  asks: 'working-distance',
  question:
    'With a focal length of {short.focal-length} you have {short.working-distance} of room. You change to {focal-length} and photograph at the same magnification. Both lenses have their H {front-principal-depth} behind the rim. How much room have you now?',
  givens: (draw) => ({
    'short.focal-length': draw.pick([40, 50, 60]),
    'short.working-distance': draw.pick([60, 85, 110, 130]),
    'focal-length': draw.pick([90, 105, 140]),
    'front-principal-depth': draw.pick([22, 30, 38]),
  }),
  tolerance: { relative: 0.015, because: 'both rooms are read from a ruler to a millimetre or two' },
  mistakes: [
    {
      id: 'rim-taken-for-h',
      value: (given) => (given['short.working-distance'] * given['focal-length']) / given['short.focal-length'],
      because:
        'That multiplies the room itself. What grows with the focal length is the distance from H: add {front-principal-depth} first and subtract it at the end.',
    },
    {
      id: 'unchanged',
      value: (given) => given['short.working-distance'],
      because: 'That is the room with the shorter lens. At the same magnification a longer lens is farther away.',
    },
    {
      id: 'upside-down',
      value: (given) => (given['short.working-distance'] * given['short.focal-length']) / given['focal-length'],
      because: 'That makes the room smaller. With a longer lens there is more of it: divide the other way round.',
    },
    {
      id: 'from-h',
      value: (given) =>
        ((given['short.working-distance'] + given['front-principal-depth']) * given['focal-length']) /
        given['short.focal-length'],
      because: 'That is the distance from H. The rim is {front-principal-depth} in front of H: take that off again.',
    },
    {
      id: 'lengths-added',
      value: (given) => given['short.working-distance'] + given['focal-length'] - given['short.focal-length'],
      because:
        'That adds what the focal length has grown by. At one magnification the distance from H is a fixed number of focal lengths: it grows in their ratio.',
    },
  ],
  hint: 'From which plane do distances grow with the focal length: from the rim or from H?',
  working: [
    {
      values: (known) => ({
        'subject-distance':
          ((known['short.working-distance'] + known['front-principal-depth']) * known['focal-length']) /
          known['short.focal-length'],
      }),
      note: 'From H the first lens has {short.working-distance} and {front-principal-depth} more. At one magnification this grows with the focal length, to {subject-distance}.',
    },
    { formula: workingDistanceFormula, note: 'From the rim:' },
  ],
});

const shortestLens = numberFamily({
  id: 'shortest-lens',
  asks: 'focal-length',
  question:
    'A dragonfly lets nothing come nearer than {working-distance}. You want it at {magnification}. In the lenses that you think of, H is {front-principal-depth} behind the rim. What focal length must they have there at least?',
  givens: (draw) => ({
    'working-distance': draw.pick([150, 200, 260, 350]),
    magnification: draw.pick([0.25, 0.33, 0.4, 0.5]),
    'front-principal-depth': draw.pick([22, 34, 48]),
  }),
  tolerance: { relative: 0.03, because: 'focal lengths are engraved to a few per cent' },
  mistakes: [
    {
      id: 'rim-forgotten',
      value: (given) => given['working-distance'] / (1 + 1 / given.magnification),
      because:
        'That takes the room for the distance from H. H is {front-principal-depth} farther away: add that first.',
    },
    {
      id: 'image-side',
      value: (given) => (given['working-distance'] + given['front-principal-depth']) / (1 + given.magnification),
      because: 'That divides by 1 + m, which belongs to the side of the sensor. Divide by 1 + 1/m.',
    },
    {
      id: 'as-from-the-sensor',
      value: (given) => given['working-distance'] / (2 + given.magnification + 1 / given.magnification),
      because:
        'That takes the room for the distance from the sensor. The animal minds the rim: the room and {front-principal-depth} are the distance from H.',
    },
    {
      id: 'rim-subtracted',
      value: (given) => (given['working-distance'] - given['front-principal-depth']) / (1 + 1 / given.magnification),
      because:
        'That takes {front-principal-depth} off. H is behind the rim, farther from the animal: add it to the room.',
    },
    {
      id: 'one-forgotten',
      value: (given) => (given['working-distance'] + given['front-principal-depth']) * given.magnification,
      because: 'That divides the distance from H by 1/m. It is one focal length more than that: f (1 + 1/m).',
    },
  ],
  hint: 'How far from H may the animal be? And how many focal lengths is that at this magnification?',
  working: [
    {
      formula: focalLengthForWorkingDistanceFormula,
      note: 'From H the animal is {working-distance} and {front-principal-depth} away, and that is f (1 + 1/m):',
    },
  ],
});

const strip = numberFamily({
  id: 'strip',
  asks: 'background-width',
  question:
    'The sensor is {sensor-width} wide. The focal length in use is {focal-length}, the magnification {magnification}, the pupil magnification {pupil-magnification}. A hedge is {background-distance} behind the subject. How many millimetres of the hedge are in the picture, from side to side?',
  givens: (draw) => ({
    'sensor-width': draw.pick(sensorWidths),
    'focal-length': draw.pick(focalLengths),
    magnification: draw.pick([0.4, 0.5, 0.75, 1]),
    'pupil-magnification': draw.pick(pupils),
    'background-distance': draw.pick([400, 500, 800, 1000]),
  }),
  tolerance: { relative: 0.03, because: 'where the entrance pupil is, is known to a few millimetres' },
  mistakes: [
    {
      id: 'at-the-subject',
      value: (given) => evaluateFormula(fieldWidthFormula, given),
      because: 'That is the width at the subject. Behind it the lines of sight go on spreading.',
    },
    {
      id: 'from-the-subject-on',
      value: (given) =>
        (evaluateFormula(fieldWidthFormula, given) * given['background-distance']) /
        evaluateFormula(entrancePupilDistanceFormula, given),
      because:
        'That counts the spreading from the subject on. It begins at the entrance pupil: take u + B, not B alone.',
    },
    {
      id: 'from-h',
      value: (given) => {
        const fromH = evaluateFormula(subjectDistanceFormula, given);
        return (evaluateFormula(fieldWidthFormula, given) * (fromH + given['background-distance'])) / fromH;
      },
      because:
        'That looks from H. A lens looks from its entrance pupil, u = f (1/m + 1/P) away; the two are one only where P is 1.',
    },
  ],
  hint: 'From which point do the two lines of sight start that pass the ends of the field?',
  working: [
    { formula: entrancePupilDistanceFormula, note: 'The lens looks from its entrance pupil, so far from the subject:' },
    { formula: fieldWidthFormula, note: 'At the subject the picture is so wide:' },
    { formula: backgroundWidthFormula, note: 'The same two lines of sight, longer by {background-distance}:' },
  ],
});

const smear = numberFamily({
  id: 'smear',
  asks: 'background-blur',
  question:
    'A drop of dew shines {background-distance} behind the subject. The focal length in use is {focal-length} at {f-number}, the magnification {magnification}, the pupil magnification {pupil-magnification}. How wide is the blur of the drop on the sensor?',
  givens: (draw) => ({
    'background-distance': draw.pick([120, 200, 300, 500]),
    'focal-length': draw.pick(focalLengths),
    'f-number': draw.pick([4, 5.6, 8]),
    magnification: draw.pick([0.4, 0.5, 0.7]),
    'pupil-magnification': draw.pick(pupils),
  }),
  tolerance: { relative: 0.03, because: 'f-numbers are marked to a few per cent' },
  mistakes: [
    {
      id: 'infinitely-far',
      value: (given) => given.magnification * evaluateFormula(entrancePupilFormula, given),
      because: 'That is m times D, the blur of something infinitely far. At {background-distance} it is smaller.',
    },
    {
      id: 'as-near-the-plane',
      value: (given) =>
        (given.magnification ** 2 * given['background-distance']) /
        effectiveFNumber({
          fNumber: given['f-number'],
          magnification: given.magnification,
          pupilMagnification: given['pupil-magnification'],
        }),
      because:
        'That is the rule for places near the sharp plane, where blur grows evenly. So far behind it grows ever more slowly: divide by u + B.',
    },
    {
      id: 'on-the-subject',
      value: (given) => {
        const fromPupil = entrancePupilDistance({
          focalLength: given['focal-length'],
          magnification: given.magnification,
          pupilMagnification: given['pupil-magnification'],
        });
        return (
          (evaluateFormula(entrancePupilFormula, given) * given['background-distance']) /
          (fromPupil + given['background-distance'])
        );
      },
      because: 'That is its width in the sharp plane. On the sensor everything there is m times as large.',
    },
    {
      id: 'opening',
      value: (given) => evaluateFormula(entrancePupilFormula, given),
      because:
        'That is how wide the opening is. The cone of the drop is narrower where it passes the sharp plane, and the lens shows it at {magnification}.',
    },
  ],
  hint: 'How wide is the cone of the drop where it passes the sharp plane? And how large does the lens show that?',
  working: [
    { formula: entrancePupilFormula, note: 'The opening, seen from the front:' },
    { formula: entrancePupilDistanceFormula, note: 'So far it is from the subject:' },
    {
      formula: backgroundBlurFormula,
      note: 'The cone of the drop is D wide at the opening; in the sharp plane its share B over u + B of that, and on the sensor m times as much:',
    },
  ],
});

const shadow = numberFamily({
  id: 'shadow',
  asks: 'lens-shadow',
  question:
    'A beetle sits on a leaf that faces the lens, under an even grey sky. The rim of the lens is {rim-diameter} wide and {working-distance} away. How much of the sky’s light does it take?',
  givens: (draw) => ({
    'rim-diameter': draw.pick([52, 58, 64, 72]),
    // Where two slips would lead to one number no question is asked.
    'working-distance': draw.pick([20, 22, 110, 125, 140, 160]),
  }),
  tolerance: { relative: 0.03, because: 'a rim is rounded, and its width known to a millimetre or so' },
  mistakes: [
    {
      id: 'diameter-for-radius',
      value: (given) => evaluateFormula(lensShadowFormula, { ...given, 'rim-diameter': 2 * given['rim-diameter'] }),
      because: 'That puts in the whole diameter. It is the radius that counts, half of {rim-diameter}.',
    },
    {
      id: 'not-squared',
      value: (given) => given['rim-diameter'] / (2 * given['working-distance']),
      because: 'That is the radius over the distance. Light goes with areas: square both, and add them below.',
    },
    {
      id: 'what-is-left',
      value: (given) => 1 - evaluateFormula(lensShadowFormula, given),
      because: 'That is the light that is left. The question asks for what the rim takes.',
    },
    {
      id: 'not-added',
      value: (given) => (given['rim-diameter'] / 2 / given['working-distance']) ** 2,
      because:
        'That divides by the square of the distance alone. Below the line stand both squares, that of the radius as well.',
    },
  ],
  hint: 'What is the radius of the rim? And how large is its square beside the sum of both squares?',
  working: [{ formula: lensShadowFormula, note: 'The rim is a dark disc on the axis of the leaf:' }],
});

const wishes = {
  far: 'to stay as far from the beetle as you can',
  smooth: 'the hedge two metres behind as smooth as it gets',
  meadow: 'as much as possible of the meadow behind the beetle',
  large: 'the beetle as large as possible in the picture',
};

type Taken = 'short' | 'long' | 'alike';
const takenFor = (wish: string): Taken => (wish === wishes.large ? 'alike' : wish === wishes.meadow ? 'short' : 'long');

const whichLens = choiceFamily({
  id: 'which-lens',
  question:
    'You photograph a beetle at {magnification}. You have lenses of {short.focal-length} and {long.focal-length}, and use {f-number} with either. You want {wish}. Which do you take?',
  options: {
    short: 'The shorter one',
    long: 'The longer one',
    alike: 'Either: it is the same',
  } satisfies Record<Taken, string>,
  givens: (draw) => ({
    magnification: draw.pick([0.25, 0.5, 1]),
    'short.focal-length': draw.pick([50, 60]),
    'long.focal-length': draw.pick([100, 140, 180]),
    'f-number': draw.pick([5.6, 8, 11]),
    wish: draw.pick(Object.values(wishes)),
  }),
  answer: ({ wish }): Taken => takenFor(wish),
  mistakes: [
    {
      id: 'longer-is-larger',
      value: ({ wish }) => (wish === wishes.large ? 'long' : undefined),
      because: 'From one place it would be larger. You work at {magnification} with both: what does that fix?',
    },
    {
      id: 'nearer-is-larger',
      value: ({ wish }) => (wish === wishes.large ? 'short' : undefined),
      because: 'It takes you nearer. You go as near as {magnification} asks, with either: what does that fix?',
    },
    {
      id: 'smaller-lens-more-room',
      value: ({ wish }) => (takenFor(wish) === 'long' ? 'short' : undefined),
      because:
        'Ask first what {magnification} fixes. Then: through which lens do you look from farther away, and which has the wider opening at {f-number}?',
    },
    {
      id: 'longer-reaches-more',
      value: ({ wish }) => (wish === wishes.meadow ? 'long' : undefined),
      because:
        'That enlarges what is far away, so less of it fits behind the beetle. From where would more of the meadow fit behind it: from near, or from far?',
    },
    {
      id: 'one-size-all-alike',
      value: ({ wish }) => (wish === wishes.large ? undefined : 'alike'),
      because:
        'Does {magnification} fix what you want? It does not fix from where a lens looks, nor through how wide an opening.',
    },
  ],
  hint: 'What does the magnification fix? And from where does each of the two lenses look?',
  working: [
    {
      formula: subjectDistanceFormula,
      values: (known) => ({ 'focal-length': known['long.focal-length'] }),
      note: 'At one magnification the beetle is equally large. The longer lens is this far from it, counted from H, the shorter one nearer in the ratio of the focal lengths. From farther away a narrower strip of background is seen, and the opening f/N that blurs it is wider:',
    },
  ],
});

export const families = [room, longerLens, shortestLens, strip, smear, shadow, whichLens] as const;
