import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { closeUpPowerForMagnificationFormula } from '#core/rig/close-up-power-for-magnification.formula.ts';
import { colourSpreadAtSensorFormula } from '#core/rig/colour-spread-at-sensor.formula.ts';
import { effectiveFNumberWithCloseUpLensFormula } from '#core/rig/effective-f-number-with-close-up-lens.formula.ts';
import { magnificationOfCloseUpLensFormula } from '#core/rig/magnification-of-close-up-lens.formula.ts';
import { magnificationWithCloseUpLensFormula } from '#core/rig/magnification-with-close-up-lens.formula.ts';
import { workingDistanceOfCloseUpLensFormula } from '#core/rig/working-distance-of-close-up-lens.formula.ts';
import { workingDistanceWithCloseUpLensFormula } from '#core/rig/working-distance-with-close-up-lens.formula.ts';

interface Focused {
  readonly 'focal-length': number;
  readonly 'focus-magnification': number;
  readonly 'close-up-power': number;
  readonly 'close-up-gap': number;
}

/** From H to where a lens is focused by itself. */
const ownDistance = (given: Focused) =>
  subjectDistance({ focalLength: given['focal-length'], magnification: given['focus-magnification'] });

/** The magnification with the close-up lens on. */
const withCloseUp = (given: Focused) => evaluateFormula(magnificationWithCloseUpLensFormula, given);

/** And how far the subject is. */
const room = (given: Focused) =>
  evaluateFormula(workingDistanceWithCloseUpLensFormula, { ...given, magnification: withCloseUp(given) });

/** The magnification as if the lens were at infinity. */
const atInfinity = (given: Focused) => evaluateFormula(magnificationOfCloseUpLensFormula, given);

const howLarge = numberFamily({
  id: 'how-large',
  asks: 'magnification',
  question:
    'You screw a {close-up-power} close-up lens to {a focal-length} lens and leave the lens set to infinity. What is the magnification?',
  givens: (draw) => ({
    'focal-length': draw.pick([50, 60, 85, 100, 135]),
    'close-up-power': draw.pick([1, 2, 3, 4, 5]),
  }),
  tolerance: { relative: 0.02, because: 'powers and focal lengths are rounded to two or three figures' },
  mistakes: [
    {
      id: 'millimetres-times-dioptres',
      value: (given) => given['focal-length'] * given['close-up-power'],
      because:
        'That multiplies millimetres by dioptres, which are one over metres. Write the focal length in metres, or divide by 1000.',
    },
    {
      id: 'upside-down',
      value: (given) => 1000 / (given['focal-length'] * given['close-up-power']),
      because:
        'That is the focal length of the close-up lens divided by that of the lens behind. Divide the other way: a longer lens makes a larger image.',
    },
    {
      id: 'by-itself',
      value: (given) => given['focal-length'] / (1000 / given['close-up-power'] - given['focal-length']),
      because:
        'That is what the lens would give by itself with a subject at the focal length of the close-up lens. But the light that reaches it comes as if from infinity: divide the two focal lengths.',
    },
    {
      id: 'distance-for-size',
      value: (given) => 1 / given['close-up-power'],
      because:
        'That is one over the power: the distance of the subject, in metres. The size also takes the focal length of {focal-length}.',
    },
  ],
  hint: 'How long is the focal length of the close-up lens? And how many times does it go into that of the lens?',
  working: [
    {
      formula: magnificationOfCloseUpLensFormula,
      note: 'Focal length times power; the 1000 turns millimetres into metres:',
    },
  ],
});

const stack = numberFamily({
  id: 'one-on-the-other',
  asks: 'working-distance',
  question:
    'Two close-up lenses, {weaker.close-up-power} and {stronger.close-up-power}, sit one on the other before a lens set to infinity. How far from them is the subject?',
  givens: (draw) => {
    const powers = [1, 1.5, 2, 3, 4, 5];
    const weaker = draw.pick([0, 1, 2, 3, 4]);
    const stronger = draw.pick([1, 2, 3, 4, 5].filter((place) => place > weaker));
    return { 'weaker.close-up-power': powers[weaker]!, 'stronger.close-up-power': powers[stronger]! };
  },
  tolerance: { relative: 0.03, because: 'two thin glasses stacked are a few millimetres thick' },
  mistakes: [
    {
      id: 'lengths-added',
      value: (given) => 1000 / given['weaker.close-up-power'] + 1000 / given['stronger.close-up-power'],
      because:
        'That adds the two focal lengths. A second lens makes the pair stronger, so the distance gets shorter: add the powers.',
    },
    {
      id: 'stronger-alone',
      value: (given) => 1000 / given['stronger.close-up-power'],
      because:
        'That is the distance with the stronger one alone. The weaker one adds its {weaker.close-up-power} to it.',
    },
    {
      id: 'mean-power',
      value: (given) => 2000 / (given['weaker.close-up-power'] + given['stronger.close-up-power']),
      because: 'That takes the mean of the two powers. Light passes both of them: take the sum.',
    },
    {
      id: 'difference',
      value: (given) => 1000 / (given['stronger.close-up-power'] - given['weaker.close-up-power']),
      because: 'That takes one power from the other. Both gather light, so both count the same way: add them.',
    },
    {
      id: 'sum-of-powers',
      value: (given) => given['weaker.close-up-power'] + given['stronger.close-up-power'],
      because: 'That is the power of both together, in dioptres. The distance in millimetres is 1000 divided by it.',
    },
  ],
  hint: 'What is the power of both together? One over it, in metres, is the distance.',
  working: [
    {
      values: (known) => ({ 'close-up-power': known['weaker.close-up-power'] + known['stronger.close-up-power'] }),
      formula: workingDistanceOfCloseUpLensFormula,
      note: 'The powers {weaker.close-up-power} and {stronger.close-up-power} add up:',
    },
  ],
});

const onAFocusedLens = numberFamily({
  id: 'on-a-focused-lens',
  asks: 'magnification',
  question:
    '{A focal-length} lens, moved as a whole, is focused to {focus-magnification}. You add a {close-up-power} close-up lens, {close-up-gap} in front of its front principal plane H. What is the magnification?',
  givens: (draw) => ({
    'focal-length': draw.pick([50, 60, 85]),
    'focus-magnification': draw.pick([0.15, 0.2, 0.25]),
    'close-up-power': draw.pick([3, 4, 5]),
    'close-up-gap': draw.pick([25, 27, 30]),
  }),
  tolerance: { relative: 0.01, because: 'the gap is known to a few millimetres, a hundredth of the magnification' },
  mistakes: [
    {
      id: 'as-at-infinity',
      value: (given) => atInfinity(given),
      because:
        'That is what it gives with the lens set to infinity. Here the lens is focused closer, and that enlarges as well.',
    },
    {
      id: 'added',
      value: (given) => given['focus-magnification'] + atInfinity(given),
      because:
        'That adds the lens’s own {focus-magnification} to what the close-up lens gives at infinity. They do not simply add: on a lens that is focused closer the close-up lens adds another amount, and the gap counts.',
    },
    {
      id: 'gap-left-out',
      value: (given) => withCloseUp({ ...given, 'close-up-gap': 0 }),
      because:
        'That leaves out the gap. The close-up lens is {close-up-gap} nearer to the subject than H: subtract that from the distance of the lens alone.',
    },
    {
      id: 'close-up-part-alone',
      value: (given) => withCloseUp(given) - given['focus-magnification'],
      because: 'That is what the close-up lens adds. The {focus-magnification} of the lens itself is still missing.',
    },
    {
      id: 'gap-added',
      value: (given) => withCloseUp({ ...given, 'close-up-gap': -given['close-up-gap'] }),
      because:
        'That puts the close-up lens behind H. It is in front of it: in the formula the gap is subtracted from f.',
    },
  ],
  hint: 'Where is the lens focused by itself? How far is that from the close-up lens?',
  working: [
    {
      values: (known) => ({ 'main-lens.subject-distance': ownDistance(known) }),
      note: 'By itself the lens is sharp f (1 + 1/m₀) in front of H: {main-lens.subject-distance}. From the close-up lens that is {close-up-gap} less.',
    },
    {
      formula: magnificationWithCloseUpLensFormula,
      note: 'That distance times m₀ is f + m₀ (f − g). Times the power, in metres, it is what the close-up lens adds:',
    },
  ],
});

const nearer = numberFamily({
  id: 'nearer',
  asks: 'working-distance',
  question:
    '{A focal-length} lens, moved as a whole, is focused to {focus-magnification}. A {close-up-power} close-up lens goes on, {close-up-gap} in front of H. How far from it is the subject?',
  givens: (draw) => ({
    'focal-length': draw.pick([50, 60, 85]),
    'focus-magnification': draw.pick([0.25, 0.3, 0.5]),
    'close-up-power': draw.pick([2, 3, 4, 5]),
    'close-up-gap': draw.pick([25, 30, 40]),
  }),
  tolerance: { relative: 0.01, because: 'a tape shows a millimetre or two' },
  mistakes: [
    {
      id: 'as-at-infinity',
      value: (given) => evaluateFormula(workingDistanceOfCloseUpLensFormula, given),
      because: 'That is 1000 over the power, right for a lens set to infinity. This one is focused closer.',
    },
    {
      id: 'gap-left-out',
      value: (given) => room({ ...given, 'close-up-gap': 0 }),
      because:
        'That counts the distance of the lens alone from H. The close-up lens is {close-up-gap} in front of H: subtract that first.',
    },
    {
      id: 'gap-added',
      value: (given) => room({ ...given, 'close-up-gap': -given['close-up-gap'] }),
      because:
        'That puts the close-up lens behind H. It is {close-up-gap} in front of it, nearer to where the lens alone is sharp.',
    },
    {
      id: 'from-h',
      value: (given) => room(given) + given['close-up-gap'],
      because:
        'That is the distance from H. The question asks for it from the close-up lens, {close-up-gap} farther in front.',
    },
    {
      id: 'close-up-lens-ignored',
      value: (given) => ownDistance(given) - given['close-up-gap'],
      because: 'That is where the lens is focused without the close-up lens. With it the subject comes nearer.',
    },
    {
      id: 'lengths-subtracted',
      value: (given) => Math.abs(1000 / given['close-up-power'] - (ownDistance(given) - given['close-up-gap'])),
      because: 'That subtracts one distance from the other. What adds up is one over each of them.',
    },
  ],
  hint: 'From the close-up lens, how far away would the lens alone be sharp? How many times larger does the close-up lens make the image? So many times nearer is the subject.',
  working: [
    {
      values: (known) => ({ 'main-lens.subject-distance': ownDistance(known) }),
      note: 'By itself the lens is sharp f (1 + 1/m₀) in front of H: {main-lens.subject-distance}. From the close-up lens that is {close-up-gap} less.',
    },
    {
      formula: magnificationWithCloseUpLensFormula,
      note: 'With the close-up lens on, the magnification is:',
    },
    {
      formula: workingDistanceWithCloseUpLensFormula,
      note: 'As many times as that is more than m₀, the subject is nearer than where the lens alone is sharp. Above the line stands that distance times m₀:',
    },
  ],
});

const whichPower = numberFamily({
  id: 'which-power',
  asks: 'close-up-power',
  question:
    'You want {magnification} with {a focal-length} lens set to infinity. How strong must the close-up lenses on it be in all?',
  givens: (draw) => ({
    magnification: draw.pick([0.2, 0.25, 0.3, 0.4, 0.5, 0.6]),
    'focal-length': draw.pick([70, 85, 100, 135, 150, 200]),
  }),
  tolerance: { relative: 0.03, because: 'close-up lenses come in whole dioptres' },
  mistakes: [
    {
      id: 'as-for-a-ring',
      value: (given) => 1000 / (given['focal-length'] * (1 + 1 / given.magnification)),
      because:
        'That takes the distance at which a ring would give this size, f (1 + 1/m). A close-up lens on a lens set to infinity works at its own focal length, f divided by m.',
    },
    {
      id: 'power-of-the-lens',
      value: (given) => 1000 / given['focal-length'],
      because:
        'That is the power of the {focal-length} lens itself: a close-up lens as strong would give life size. Multiply by the magnification you want.',
    },
    {
      id: 'ring-length',
      value: (given) => given['focal-length'] * given.magnification,
      because: 'That is the length of ring in millimetres that gives this size: f times m. For a power, divide by f.',
    },
    {
      id: 'in-metres',
      value: (given) => given.magnification / given['focal-length'],
      because:
        'That divides by millimetres. A dioptre is one over a metre: write the focal length in metres, or multiply by 1000.',
    },
    {
      id: 'focal-length-of-the-close-up-lens',
      value: (given) => given['focal-length'] / given.magnification,
      because:
        'That is the focal length that the close-up lens must have, in millimetres. Its power is 1000 divided by that.',
    },
  ],
  hint: 'Which focal length goes into {focal-length} as often as the magnification says? And how many dioptres is that?',
  working: [
    {
      formula: closeUpPowerForMagnificationFormula,
      note: 'The size, divided by the focal length in metres:',
    },
  ],
});

const fringe = numberFamily({
  id: 'blue-before-red',
  asks: 'colour-spread',
  question:
    'A {close-up-power} close-up lens of one glass, Abbe number {abbe-number}, is on {a focal-length} lens set to infinity. Behind the lens, how far before red does blue come to its focus?',
  givens: (draw) => ({
    'close-up-power': draw.pick([1, 2, 3, 4]),
    'abbe-number': draw.pick([55, 58, 60, 64]),
    'focal-length': draw.pick([85, 100, 135, 200]),
  }),
  tolerance: { relative: 0.03, because: 'the rule is good to a few per cent' },
  mistakes: [
    {
      id: 'on-the-subject',
      value: (given) => 1000 / (given['close-up-power'] * given['abbe-number']),
      because:
        'That is how far apart blue and red are sharp in front of the lens. At the sensor lengths along the axis come out m² times as long.',
    },
    {
      id: 'as-if-the-lens-were-glass',
      value: (given) => given['focal-length'] / given['abbe-number'],
      because:
        'That is what a {focal-length} lens of one glass would do by itself. Only the close-up lens spreads colours here, and it has a small part of the power.',
    },
    {
      id: 'not-squared',
      value: (given) => (given['focal-length'] * given['close-up-power']) / given['abbe-number'] / 1000,
      because:
        'That is the magnification divided by V. Multiply by the focal length once more: it counts twice, once for the size and once for the cone.',
    },
  ],
  hint: 'How many millimetres apart are blue and red in front of the lens? By which number are lengths along the axis enlarged?',
  working: [
    {
      formula: colourSpreadAtSensorFormula,
      note: 'The spread in front, 1000/(Φ V), times the square of the magnification f Φ/1000:',
    },
  ],
});

const light = numberFamily({
  id: 'light-through',
  asks: 'effective-f-number',
  question:
    'A lens set to {f-number} gives {focus-magnification} by its own focusing. Its pupil magnification is {pupil-magnification}. With a close-up lens on it you reach {magnification}. What is its effective f-number now?',
  givens: (draw) => ({
    'f-number': draw.pick([4, 5.6, 8, 11]),
    'focus-magnification': draw.pick([0.15, 0.2, 0.25]),
    'pupil-magnification': draw.pick([0.6, 0.7, 1.3, 1.5]),
    magnification: draw.pick([0.75, 0.8, 1]),
  }),
  tolerance: { relative: 0.03, because: '3 per cent is a twelfth of a stop, finer than anyone sets a lens' },
  mistakes: [
    {
      id: 'total-size',
      value: (given) => given['f-number'] * (1 + given.magnification / given['pupil-magnification']),
      because:
        'That would be a ring’s f-number at {magnification}. Behind the close-up lens only the lens’s own focusing, {focus-magnification}, has moved anything.',
    },
    {
      id: 'total-size-equal-pupils',
      value: (given) => given['f-number'] * (1 + given.magnification),
      because:
        'That takes the whole {magnification}, and equal pupils. What the close-up lens adds costs no light: take {focus-magnification}, divided by the pupil magnification.',
    },
    {
      id: 'nothing-lost',
      value: (given) => given['f-number'],
      because:
        'The close-up lens costs no light, but the lens’s own focusing does: it has moved away from the sensor by {focus-magnification} of its focal length.',
    },
    {
      id: 'multiplied-by-pupils',
      value: (given) => given['f-number'] * (1 + given['focus-magnification'] * given['pupil-magnification']),
      because: 'That multiplies by the pupil magnification. Divide {focus-magnification} by it.',
    },
    {
      id: 'pupils-ignored',
      value: (given) => given['f-number'] * (1 + given['focus-magnification']),
      because:
        'That is right for equal pupils. Divide {focus-magnification} by the pupil magnification before you add 1.',
    },
  ],
  hint: 'What has moved away from the sensor: the lens, the close-up lens, or both?',
  working: [
    {
      formula: effectiveFNumberWithCloseUpLensFormula,
      note: 'Only what the lens gives by its own focusing counts, however large the image is in the end:',
    },
  ],
});

type Way = 'ring' | 'close-up' | 'alike';
const wishes = { room: 'as much room as possible in front', light: 'as much light as possible on the sensor' };

const ringOrLens = choiceFamily({
  id: 'ring-or-lens',
  question:
    '{A focal-length} lens is set to infinity and to {f-number}; its H is {front-principal-depth} behind its front rim. With a ring or with a {close-up-power} close-up lens you get the same size. You want {wish}. Which do you take?',
  options: { ring: 'The ring', 'close-up': 'The close-up lens', alike: 'Either: it is the same' } satisfies Record<
    Way,
    string
  >,
  givens: (draw) => ({
    'focal-length': draw.pick([50, 85, 100, 135]),
    'f-number': draw.pick([5.6, 8, 11]),
    'front-principal-depth': draw.pick([18, 22, 30]),
    'close-up-power': draw.pick([2, 3, 4]),
    wish: draw.pick(Object.values(wishes)),
  }),
  answer: ({ wish }): Way => (wish === wishes.room ? 'ring' : 'close-up'),
  mistakes: [
    {
      id: 'tube-takes-room',
      value: ({ wish }) => (wish === wishes.room ? 'close-up' : undefined),
      because:
        'The ring is in front of the camera, not in front of the lens. Compare from where each is sharp: one is bound to 1000 divided by its power, whatever the lens. And the other, counted from H?',
    },
    {
      id: 'air-costs-nothing',
      value: ({ wish }) => (wish === wishes.light ? 'ring' : undefined),
      because:
        'There is no glass in it, but the lens is farther from the sensor. Its light spreads over a larger area there. What of the other, which leaves the lens where it was?',
    },
    {
      id: 'one-size-one-room',
      value: ({ wish }) => (wish === wishes.room ? 'alike' : undefined),
      because:
        'The size is the same, and from where you get it is not. Ask how far each is from the subject when it is sharp: 1000 divided by the power here, f (1 + 1/m) from H there.',
    },
    {
      id: 'one-mark-one-light',
      value: ({ wish }) => (wish === wishes.light ? 'alike' : undefined),
      because:
        'Size and mark are the same, {f-number}. But which of the two takes the lens away from the sensor, and makes the cone there narrower than the mark says?',
    },
  ],
  hint: 'Which of the two moves the lens away from the sensor? And which is bound to 1000 over its power?',
  working: [
    {
      formula: magnificationOfCloseUpLensFormula,
      note: 'Both give this size:',
    },
    {
      formula: workingDistanceOfCloseUpLensFormula,
      note: 'The close-up lens leaves this much room and costs no light. The ring leaves one focal length more, counted from H, and makes the cone at the sensor narrower:',
    },
  ],
});

export const families = [howLarge, stack, onAFocusedLens, nearer, whichPower, fringe, light, ringOrLens] as const;
