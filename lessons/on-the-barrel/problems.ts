import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { magnificationAtFocusDistanceFormula } from '#core/gaussian/magnification-at-focus-distance.formula.ts';
import { stoppedDownFormula } from '#core/gaussian/stopped-down.formula.ts';
import { workingDistanceFromMarksFormula } from '#core/gaussian/working-distance-from-marks.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import type { StepFormula } from '#core/practice/step.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';

const openingWidth = numberFamily({
  id: 'opening-width',
  asks: 'entrance-pupil',
  question:
    '{A focal-length} lens opens to {max-aperture}. It is set to {f-number}. How wide is its opening, seen from the front?',
  givens: (draw) => ({
    'focal-length': draw.pick([28, 35, 50, 60, 85, 100, 135, 200]),
    'max-aperture': draw.pick([1.8, 2, 2.8]),
    'f-number': draw.pick([4, 5.6, 8, 11, 16]),
  }),
  tolerance: { relative: 0.03, because: 'marks are rounded: f/11 stands for 11.3' },
  mistakes: [
    {
      id: 'multiplied',
      value: (given) => given['focal-length'] * given['f-number'],
      because: 'That multiplies. The f-number divides the focal length: a larger number is a smaller opening.',
    },
    {
      id: 'upside-down',
      value: (given) => given['f-number'] / given['focal-length'],
      because: 'That is the f-number divided by the focal length. Divide the focal length by the f-number.',
    },
    {
      id: 'widest',
      value: (given) => given['focal-length'] / given['max-aperture'],
      because: 'That is the opening at its widest, {max-aperture}. The lens is set to {f-number}.',
    },
    {
      id: 'the-number-itself',
      value: (given) => given['f-number'],
      because:
        'That takes the f-number for millimetres. It has no unit: it says into how many parts to divide the focal length.',
    },
    {
      id: 'half',
      value: (given) => given['focal-length'] / given['f-number'] / 2,
      because: 'That is half of it. The f-number says how many whole widths go into the focal length.',
    },
    {
      id: 'ratio-of-numbers',
      value: (given) => (given['focal-length'] * given['max-aperture']) / given['f-number'],
      because:
        'That divides by how many times {f-number} is more than {max-aperture}. How wide the lens could open does not matter here: only the number that is set.',
    },
  ],
  hint: 'The f in f/8 stands for the focal length. What does the stroke after it mean?',
  working: [{ formula: entrancePupilFormula, note: 'The focal length divided by the number that is set:' }],
});

const stopsBetween = numberFamily({
  id: 'stops-between',
  asks: 'stopped-down',
  question: 'A lens opens to {max-aperture}. You set it to {f-number}. By how many stops is it stopped down?',
  givens: (draw) => ({
    'max-aperture': draw.pick([1.4, 2, 2.8, 4]),
    'f-number': draw.pick([8, 11, 16, 22]),
  }),
  tolerance: {
    absolute: 0.15,
    because: 'marks are rounded: from f/2 to f/11 is 4.9 stops by the marks and 5 as meant',
  },
  mistakes: [
    {
      id: 'a-doubling-a-stop',
      value: (given) => Math.log2(given['f-number'] / given['max-aperture']),
      because:
        'That counts each doubling of the number as one stop. Half the width is a quarter of the light: two stops.',
    },
    {
      id: 'difference',
      value: (given) => given['f-number'] - given['max-aperture'],
      because: 'That subtracts the numbers. One stop multiplies the number by 1.4: count how often.',
    },
    {
      id: 'ratio',
      value: (given) => given['f-number'] / given['max-aperture'],
      because:
        'That is how many times narrower the opening is, not how often its light has been halved. Each halving of the width is two stops.',
    },
    {
      id: 'counted-twice',
      value: (given) => 4 * Math.log2(given['f-number'] / given['max-aperture']),
      because: 'That counts four stops for half the width. Half the width is a quarter of the light: two stops.',
    },
    {
      id: 'light-ratio',
      value: (given) => (given['f-number'] / given['max-aperture']) ** 2,
      because: 'That is how many times less light comes in. How often must light be halved for that?',
    },
    {
      id: 'first-mark-counted',
      value: (given) => 2 * Math.log2(given['f-number'] / given['max-aperture']) + 1,
      because: 'That counts the number you start from as well. Count the steps from one number to the next.',
    },
  ],
  hint: 'How often can you multiply the first number by 1.4 until you reach the second?',
  working: [{ formula: stoppedDownFormula, note: 'Two stops for each doubling of the f-number:' }],
});

/** The stops from the widest opening, solved for the number that is set. */
const fNumberStoppedDown = {
  gives: 'f-number',
  from: ['max-aperture', 'stopped-down'],
  tex: String.raw`\q{f-number} = \q{max-aperture} \times \sqrt{2}^{\q{stopped-down}}`,
  evaluate: (given: { maxAperture: number; stoppedDown: number }) => given.maxAperture * 2 ** (given.stoppedDown / 2),
} as const satisfies StepFormula;

const stopsOn = numberFamily({
  id: 'stops-on',
  asks: 'f-number',
  question:
    'A lens is wide open at {max-aperture}. You stop down by {stopped-down}. To which f-number does that come, whether or not the ring has a mark there?',
  givens: (draw) => ({
    'max-aperture': draw.pick([2.2, 2.5, 3.2, 3.5, 3.8, 4.2, 4.5, 4.8, 5.2, 6.3]),
    // With two, three or four stops, multiplying by the stops would come out right, or nearly.
    'stopped-down': draw.pick([5]),
  }),
  tolerance: { relative: 0.05, because: 'marks are rounded: f/5 for 5.1, f/7.1 for 7.2, f/20 for 19.8' },
  mistakes: [
    {
      id: 'a-doubling-a-stop',
      value: (given) => given['max-aperture'] * 2 ** given['stopped-down'],
      because: 'That doubles the number for every stop. A stop multiplies it by 1.4; two stops double it.',
    },
    {
      id: 'added',
      value: (given) => given['max-aperture'] + given['stopped-down'],
      because: 'That adds the stops to the number. A stop multiplies it by 1.4.',
    },
    {
      id: 'wrong-way',
      value: (given) => given['max-aperture'] * 2 ** (-given['stopped-down'] / 2),
      because: 'That opens the lens further. Stopping down makes the number larger.',
    },
    {
      id: 'once',
      value: (given) => given['max-aperture'] * Math.SQRT2,
      because: 'That is one stop on. Multiply by 1.4 again for each of the {stopped-down}.',
    },
    {
      id: 'times-the-stops',
      value: (given) => given['max-aperture'] * given['stopped-down'],
      because: 'That multiplies by the number of stops. Each stop multiplies by 1.4 what the one before it gave.',
    },
    {
      id: 'one-short',
      value: (given) => given['max-aperture'] * 2 ** ((given['stopped-down'] - 1) / 2),
      because: 'That is one stop short. {max-aperture} itself is no step: count from there.',
    },
  ],
  hint: 'Two stops double the number. And one?',
  working: [
    { formula: fNumberStoppedDown, note: 'Two stops double the number, one multiplies it by the root of two, 1.4:' },
  ],
});

const roomFromMarks = numberFamily({
  id: 'room-from-marks',
  asks: 'working-distance',
  question:
    'The focus ring of a lens ends at {focus-distance}. There its barrel is {barrel-length} long, from flange to rim. The camera’s register is {register-distance}. How much room is left in front of the lens?',
  givens: (draw) => ({
    'focus-distance': draw.pick([250, 290, 350, 440, 500]),
    'barrel-length': draw.pick([35, 50, 65, 80, 95, 120]),
    'register-distance': draw.pick([18, 44, 46]),
  }),
  tolerance: { relative: 0.03, because: 'distances on a ring are rounded to a few per cent' },
  mistakes: [
    {
      id: 'the-mark-itself',
      value: (given) => given['focus-distance'],
      because: 'That is the mark itself. It counts from the sensor: take off the camera’s register and the barrel.',
    },
    {
      id: 'register-forgotten',
      value: (given) => given['focus-distance'] - given['barrel-length'],
      because:
        'That takes off the barrel only. The flange is {register-distance} in front of the sensor: take that off too.',
    },
    {
      id: 'barrel-forgotten',
      value: (given) => given['focus-distance'] - given['register-distance'],
      because: 'That is the distance from the flange. The barrel takes {barrel-length} of it.',
    },
    {
      id: 'register-added',
      value: (given) => given['focus-distance'] + given['register-distance'] - given['barrel-length'],
      because: 'That adds the register. The distance on the ring has it inside already: subtract it.',
    },
    {
      id: 'what-is-taken',
      value: (given) => given['register-distance'] + given['barrel-length'],
      because: 'That is what camera and barrel take up. What do they leave of {focus-distance}?',
    },
  ],
  hint: 'From where does the distance on the ring count? And what is between there and the rim?',
  working: [{ formula: workingDistanceFromMarksFormula, note: 'What the camera and the barrel take is not room:' }],
});

const sizeAtClosest = numberFamily({
  id: 'size-at-closest',
  asks: 'magnification',
  question:
    '{A focal-length} lens moves as a whole. Its ring ends at {focus-distance}. Its two planes H and H′ are in one place (HH′ is {principal-separation}). What is its magnification there?',
  givens: (draw) => ({
    'focal-length': draw.pick([28, 35, 50, 60]),
    'focus-distance': draw.pick([250, 280, 300, 320, 350, 380, 400, 450]),
    'principal-separation': draw.pick([0]),
  }),
  tolerance: { relative: 0.03, because: 'distances on a ring are rounded to a few per cent' },
  mistakes: [
    {
      id: 'from-the-lens',
      value: (given) => given['focal-length'] / (given['focus-distance'] - given['focal-length']),
      because:
        'That takes the distance on the ring as if it counted from H. It counts from the sensor, which is farther away.',
    },
    {
      id: 'over-the-distance',
      value: (given) => given['focal-length'] / given['focus-distance'],
      because:
        'That is the focal length divided by the distance. It holds for far things only: here the image is more than one focal length behind H′.',
    },
    {
      id: 'the-other-place',
      value: (given) => 1 / evaluateFormula(magnificationAtFocusDistanceFormula, given),
      because:
        'That is the other place where the lens would be sharp, close to the subject. A focus ring does not reach that far: take the smaller one.',
    },
  ],
  hint: 'The distance on the ring is both sides together: f (1 + 1/m) in front and f (1 + m) behind.',
  working: [
    {
      formula: magnificationAtFocusDistanceFormula,
      note: 'From sensor to subject it is f (2 + m + 1/m) + HH′. Solved for m, the smaller of the two:',
    },
  ],
});

const lenses = [
  { f: '50 mm', n: '1:1.8', d: '0.44 m', m: '1:6.7', t: '⌀49' },
  { f: '28 mm', n: '1:2.8', d: '0.36 m', m: '1:10', t: '⌀52' },
  { f: '90 mm', n: '1:2.8', d: '0.29 m', m: '1:1', t: '⌀58' },
  { f: '200 mm', n: '1:4', d: '0.9 m', m: '1:4', t: '⌀62' },
] as const;

const asked = [
  {
    what: 'how bright its image can be',
    truth: 'aperture',
    tempting: 'magnification',
    trap: 'That is how large things are at the end of the ring. How bright the image can be depends on the opening: which mark tells of that?',
    other: 'thread',
    otherwise: 'That is the thread for filters in the front rim. The opening within it can be much smaller.',
  },
  {
    what: 'how large it can show things',
    truth: 'magnification',
    tempting: 'aperture',
    trap: 'That tells how wide the lens opens. How large things get depends on how far the ring goes: where would that be marked?',
    other: 'focal-length',
    otherwise: 'Focal length alone does not say it: how far the lens can be moved counts as well.',
  },
  {
    what: 'how near its focus ring goes',
    truth: 'distance',
    tempting: 'magnification',
    trap: 'That is how large things are at the end of the ring, not how near they are.',
    other: 'focal-length',
    otherwise: 'That is how far behind H′ light from far away meets. It says nothing of the ring.',
  },
  {
    what: 'which filter fits it',
    truth: 'thread',
    tempting: 'focal-length',
    trap: 'That is the focal length. It is in millimetres too, but it says nothing of how wide the rim is.',
    other: 'aperture',
    otherwise: 'That is the maximum aperture. A filter screws into the rim, whatever the opening.',
  },
  {
    what: 'how wide an angle of far things it shows',
    truth: 'focal-length',
    tempting: 'thread',
    trap: 'That is the thread in the rim. A wide front does not mean a wide view.',
    other: 'aperture',
    otherwise: 'That is the maximum aperture: it says how much light comes in, not from how wide an angle.',
  },
] as const;

const whichMark = choiceFamily({
  id: 'which-mark',
  question:
    'On a lens you read {f}, {n} and {t}. At the end of its distance scale you read {d} and, beside it, {m}. Which of these marks tells {what}?',
  givens: (draw) => ({ ...draw.pick(lenses), ...draw.pick(asked) }),
  options: {
    'focal-length': 'The first, in mm',
    aperture: 'The one with a colon beside it',
    thread: 'The one with ⌀',
    distance: 'The one in m',
    magnification: 'The one with a colon beside the distance',
  },
  answer: (given) => given.truth,
  mistakes: [
    { id: 'tempting', value: (given) => given.tempting, because: '{trap}' },
    { id: 'other', value: (given) => given.other, because: '{otherwise}' },
    {
      id: 'how-near',
      value: ({ truth }) => (truth === 'thread' || truth === 'distance' ? undefined : 'distance'),
      because: 'That is how near the subject may be, counted from the sensor. It does not tell {what}.',
    },
    {
      id: 'what-screws-on',
      value: ({ truth }) => (truth === 'distance' ? 'thread' : undefined),
      because: 'That is the thread for filters in the front rim. It says nothing of where the lens is sharp.',
    },
    {
      id: 'how-large',
      value: ({ truth }) => (truth === 'thread' ? 'magnification' : undefined),
      because: 'That is how large things are at the end of the ring. A filter asks only how wide the rim is.',
    },
    {
      id: 'how-long',
      value: ({ truth }) => (truth === 'aperture' ? 'focal-length' : undefined),
      because:
        'That is the focal length. How bright the image can be depends on how wide the lens opens, too: which mark counts both?',
    },
    {
      id: 'how-wide-the-rim',
      value: ({ truth }) => (truth === 'magnification' ? 'thread' : undefined),
      because:
        'That is the thread for filters in the front rim. How large things get depends on how far the ring goes.',
    },
    {
      id: 'how-far-open',
      value: ({ truth }) => (truth === 'distance' ? 'aperture' : undefined),
      because: 'That tells how wide the lens opens, not where it can be sharp.',
    },
    {
      id: 'how-far-away',
      value: ({ truth }) => (truth === 'thread' ? 'distance' : undefined),
      because:
        'That is a distance along the axis, from the sensor to what is sharp. A filter asks only how wide the rim is.',
    },
    {
      id: 'how-large-near-by',
      value: ({ truth }) => (truth === 'focal-length' ? 'magnification' : undefined),
      because:
        'That is how large near things are at the end of the ring. The question is of far things, and there the ring stands at its other end.',
    },
  ],
  hint: 'Which marks stand together? A colon beside the focal length and a colon beside a distance are different things.',
  working: [
    {
      note: 'In mm: the focal length, which with the sensor’s width gives the angle of view. With a colon beside it: the maximum aperture, the focal length divided by the widest opening. With ⌀: the thread. In m: the distance from sensor to subject. With a colon beside that: the magnification there.',
    },
  ],
});

export const families = [openingWidth, stopsBetween, stopsOn, roomFromMarks, sizeAtClosest, whichMark] as const;
