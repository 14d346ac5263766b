import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { effectiveFNumberOfReversedLensFormula } from '#core/rig/effective-f-number-of-reversed-lens.formula.ts';
import { extensionForReversedLensFormula } from '#core/rig/extension-for-reversed-lens.formula.ts';
import { magnificationOfReversedLensFormula } from '#core/rig/magnification-of-reversed-lens.formula.ts';
import { workingDistanceOfRackedOutReversedLensFormula } from '#core/rig/working-distance-of-racked-out-reversed-lens.formula.ts';
import { workingDistanceOfReversedLensFormula } from '#core/rig/working-distance-of-reversed-lens.formula.ts';

const howLarge = numberFamily({
  id: 'how-large',
  asks: 'magnification',
  question:
    '{A focal-length} lens is turned round. Between the camera’s flange and its rim there are {extension} of rings, the reversing ring among them. The camera’s register is {register-distance}, and H is {front-principal-depth} behind the rim. What is the magnification?',
  givens: (draw) => ({
    'focal-length': draw.pick([20, 24, 28, 35]),
    extension: draw.pick([4, 16, 28, 40]),
    'register-distance': draw.pick([42, 44, 46]),
    'front-principal-depth': draw.pick([26, 30, 34, 38]),
  }),
  tolerance: { relative: 0.02, because: 'depth of H and rings are known to about a millimetre' },
  mistakes: [
    {
      id: 'depth-of-h-forgotten',
      value: (given) => (given['register-distance'] + given.extension) / given['focal-length'] - 1,
      because:
        'That counts from the sensor to the rim. The lens bends light at H, {front-principal-depth} farther: add that.',
    },
    {
      id: 'one-not-taken-off',
      value: (given) =>
        (given['register-distance'] + given.extension + given['front-principal-depth']) / given['focal-length'],
      because:
        'That is how many focal lengths H is from the sensor. The first of them only makes the horizon sharp: take 1 off.',
    },
    {
      id: 'as-for-a-ring',
      value: (given) => given.extension / given['focal-length'],
      because:
        'That is what a ring adds to a lens the right way round. Turned round, register and front glass hold the lens off as well.',
    },
    {
      id: 'register-forgotten',
      value: (given) => (given.extension + given['front-principal-depth']) / given['focal-length'] - 1,
      because: 'That counts from the flange. The sensor is {register-distance} behind it: add that.',
    },
  ],
  hint: 'How far is H from the sensor? How many focal lengths is that, and which of them counts for nothing?',
  working: [
    {
      formula: magnificationOfReversedLensFormula,
      note: 'From the sensor to H there are register, rings and the depth of H. Counted in focal lengths, less one:',
    },
  ],
});

const howMuchRoom = numberFamily({
  id: 'how-much-room',
  asks: 'working-distance',
  question:
    '{A focal-length} lens for a register of {reversed-lens.register-distance} is turned round on a camera with a register of {register-distance}. It is set to infinity, its H is {front-principal-depth} behind its rim, and it gives {magnification}. How far from its flange is the subject?',
  givens: (draw) => ({
    'focal-length': draw.pick([20, 24, 28]),
    'reversed-lens.register-distance': draw.pick([37, 39, 51]),
    'register-distance': 44,
    'front-principal-depth': draw.pick([30, 34]),
    magnification: draw.pick([1.5, 2, 2.5]),
  }),
  tolerance: { relative: 0.02, because: 'a ruler shows a millimetre' },
  mistakes: [
    {
      id: 'register-of-the-camera',
      value: (given) => given['register-distance'] + given['focal-length'] / given.magnification,
      because:
        'That takes the register of the camera. The lens brings its own: {reversed-lens.register-distance}, the distance behind its flange at which it makes the horizon sharp.',
    },
    {
      id: 'register-alone',
      value: (given) => given['reversed-lens.register-distance'],
      because:
        'That is where the horizon would be sharp, from the other side. The subject is farther away by f divided by m.',
    },
    {
      id: 'from-the-plane',
      value: (given) => subjectDistance({ focalLength: given['focal-length'], magnification: given.magnification }),
      because:
        'That counts from the principal plane that faces the subject. From the flange it is the lens’s own register and f divided by m.',
    },
    {
      id: 'right-way-round',
      value: (given) =>
        subjectDistance({ focalLength: given['focal-length'], magnification: given.magnification }) -
        given['front-principal-depth'],
      because:
        'That is the room in front of the rim, the lens the right way round. Now the rim is at the camera and the flange in front.',
    },
    {
      id: 'multiplied',
      value: (given) => given['reversed-lens.register-distance'] + given['focal-length'] * given.magnification,
      because: 'That multiplies f by m, as on the side of the sensor. On the side of the subject f is divided by m.',
    },
    {
      id: 'register-left-out',
      value: (given) => given['focal-length'] / given.magnification,
      because:
        'That counts from where the lens makes the horizon sharp. Its flange is {reversed-lens.register-distance} from there: add that.',
    },
  ],
  hint: 'Where behind its flange does this lens make the horizon sharp? How much farther is a subject at this size?',
  working: [
    {
      formula: workingDistanceOfReversedLensFormula,
      note: 'The lens’s own register, and f divided by m:',
    },
  ],
});

const whichTube = numberFamily({
  id: 'which-tube',
  asks: 'extension',
  question:
    'You want {magnification} with {a focal-length} lens turned round. Its H is {front-principal-depth} behind its rim, and the camera’s register is {register-distance}. How long must all the rings between camera and rim be?',
  givens: (draw) => ({
    magnification: draw.pick([4, 4.5, 5, 6]),
    'focal-length': draw.pick([24, 28]),
    'front-principal-depth': draw.pick([30, 34, 38]),
    'register-distance': draw.pick([42, 44, 46]),
  }),
  tolerance: { absolute: 1, because: 'rings come in whole millimetres' },
  mistakes: [
    {
      id: 'travel-alone',
      value: (given) =>
        given['focal-length'] * given.magnification - given['register-distance'] - given['front-principal-depth'],
      because:
        'That starts from f times m. From H to the sensor it is f (1 + m), one focal length more: take register and depth of H off that.',
    },
    {
      id: 'depth-of-h-forgotten',
      value: (given) => given['focal-length'] * (1 + given.magnification) - given['register-distance'],
      because:
        'That leaves out that H is {front-principal-depth} behind the rim. The lens itself fills so much of the way: take it off.',
    },
    {
      id: 'register-forgotten',
      value: (given) => given['focal-length'] * (1 + given.magnification) - given['front-principal-depth'],
      because:
        'That leaves out the register. Behind its flange the camera has {register-distance} already: take it off.',
    },
    {
      id: 'nothing-taken-off',
      value: (given) => given['focal-length'] * (1 + given.magnification),
      because:
        'That is the whole way from H to the sensor. Register and lens bring along their parts of it: take both off.',
    },
  ],
  hint: 'How far must H be from the sensor at this size? What of that do camera and lens bring along?',
  working: [
    {
      formula: extensionForReversedLensFormula,
      note: 'From H to the sensor f (1 + m), less what camera and lens bring along:',
    },
  ],
});

const cone = numberFamily({
  id: 'cone-turned-round',
  asks: 'effective-f-number',
  question:
    'A lens with a pupil magnification of {pupil-magnification}, set to {f-number}, gives {magnification} turned round. At which f-number does it work?',
  givens: (draw) => ({
    'pupil-magnification': draw.pick([1.4, 1.5, 1.6, 1.8]),
    'f-number': draw.pick([4, 5.6, 8, 11]),
    magnification: draw.pick([1.5, 2, 2.5, 3]),
  }),
  tolerance: { relative: 0.02, because: '2 per cent is a twentieth of a stop, finer than anyone sets a lens' },
  mistakes: [
    {
      id: 'pupils-swapped-alone',
      value: (given) => given['f-number'] * (1 + given.magnification * given['pupil-magnification']),
      because:
        'That turns the pupil magnification over and leaves the marked number as it is. But that number counts in the opening as seen from the front, and the subject now sees the other one: N becomes N/P as well.',
    },
    {
      id: 'right-way-round',
      value: (given) => given['f-number'] * (1 + given.magnification / given['pupil-magnification']),
      because: 'That holds for the lens the right way round. Turned round, multiply N by m + 1/P.',
    },
    {
      id: 'pupils-ignored',
      value: (given) => given['f-number'] * (1 + given.magnification),
      because:
        'That takes the opening to look as wide from both ends. This lens has a pupil magnification of {pupil-magnification}: put 1/P in place of 1.',
    },
    {
      id: 'one-over-forgotten',
      value: (given) => given['f-number'] * (given.magnification + given['pupil-magnification']),
      because: 'That adds P. The sensor now sees the other opening, so it is 1/P: multiply N by m + 1/P.',
    },
  ],
  hint: 'Which opening does the sensor see now, and how wide is it? How far is it from the sensor?',
  working: [
    {
      formula: effectiveFNumberOfReversedLensFormula,
      note: 'The sensor sees what used to be the entrance pupil:',
    },
  ],
});

type RackedOut = Readonly<
  Record<
    'reversed-lens.register-distance' | 'focus-travel' | 'rear-protrusion' | 'focal-length' | 'magnification',
    number
  >
>;

/** What is between foremost part and subject if the focus ring counted so many times. */
const roomWithTravel = (given: RackedOut, times: number) =>
  given['reversed-lens.register-distance'] +
  times * given['focus-travel'] +
  given['focal-length'] / given.magnification -
  given['rear-protrusion'];

const rackedOut = numberFamily({
  id: 'racked-out',
  asks: 'working-distance',
  question:
    '{A focal-length} lens for a register of {reversed-lens.register-distance}, moved as a whole by its focus ring, gives {magnification} turned round. You turn the ring until the lens is {focus-travel} out. Behind its flange, {rear-protrusion} of metal stand out. How much room is left?',
  givens: (draw) => ({
    'focal-length': draw.pick([35, 50]),
    'reversed-lens.register-distance': draw.pick([42, 44, 46]),
    magnification: draw.pick([0.8, 1, 1.2]),
    'focus-travel': draw.pick([6, 7]),
    'rear-protrusion': draw.pick([4, 5]),
  }),
  tolerance: { absolute: 0.8, because: 'a ruler shows a millimetre' },
  mistakes: [
    {
      id: 'travel-forgotten',
      value: (given) => roomWithTravel(given, 0),
      because:
        'That leaves out the focus ring. The glass stays, and the flange comes {focus-travel} nearer to the subject: take that off.',
    },
    {
      id: 'travel-added',
      value: (given) => roomWithTravel(given, 1),
      because:
        'That adds the travel. The rim is screwed to the camera, so the flange moves away from the camera, towards the subject: take the travel off.',
    },
    {
      id: 'larger-by-the-ring',
      value: (given) => {
        const magnification = given.magnification + given['focus-travel'] / given['focal-length'];
        return roomWithTravel({ ...given, magnification }, -1);
      },
      because:
        'That lets the focus ring enlarge the image. Turned round it does not: glass and rim stay together, and the rim is screwed to the camera. Keep {magnification}.',
    },
    {
      id: 'metal-forgotten',
      value: (given) => roomWithTravel({ ...given, 'rear-protrusion': 0 }, -1),
      because:
        'That counts from the flange. What stands out before it, {rear-protrusion}, is what the subject meets first.',
    },
    {
      id: 'metal-added',
      value: (given) => roomWithTravel({ ...given, 'rear-protrusion': -given['rear-protrusion'] }, -1),
      because:
        'That adds what stands out behind the flange. It faces the subject now and takes {rear-protrusion} of the room.',
    },
  ],
  hint: 'Where would the subject be with the ring at infinity? By how much does the flange move, and which way?',
  working: [
    {
      formula: workingDistanceOfRackedOutReversedLensFormula,
      note: 'The magnification stays. The flange comes nearer by the travel, and what stands out takes its part:',
    },
  ],
});

/** Of each kind one goes into a question, and whichever it is: shortest, longest, fastest and nearest are what they are called. */
const kinds = {
  shortest: ['24 mm f/4, closest 0.35 m', '28 mm f/3.5, closest 0.4 m', '35 mm f/3.5, closest 0.5 m'],
  longest: ['105 mm f/4, closest 1.2 m', '135 mm f/3.5, closest 1.5 m', '200 mm f/4, closest 2.5 m'],
  fastest: ['50 mm f/1.4, closest 0.45 m', '55 mm f/1.2, closest 0.6 m', '85 mm f/1.8, closest 0.9 m'],
  nearest: [
    '60 mm f/2.8 macro, closest 0.2 m',
    '70 mm f/2.8 macro, closest 0.25 m',
    '90 mm f/2.8 macro, closest 0.3 m',
  ],
} as const;
type Kind = keyof typeof kinds;
const orders: readonly (readonly Kind[])[] = [
  ['shortest', 'longest', 'fastest', 'nearest'],
  ['longest', 'nearest', 'shortest', 'fastest'],
  ['fastest', 'shortest', 'nearest', 'longest'],
  ['nearest', 'fastest', 'longest', 'shortest'],
];
const letters = ['a', 'b', 'c', 'd'] as const;

const whichLens = choiceFamily({
  id: 'which-lens',
  question:
    'Four lenses go on one camera by the same reversing ring, turned round. In each, H is {front-principal-depth} behind the rim. A: {first}. B: {second}. C: {third}. D: {fourth}. Which gives the largest image?',
  options: { a: 'A', b: 'B', c: 'C', d: 'D' },
  givens: (draw) => {
    const order = draw.pick(orders);
    const [first, second, third, fourth] = order.map((kind) => draw.pick(kinds[kind])) as [
      string,
      string,
      string,
      string,
    ];
    return {
      'front-principal-depth': draw.pick([20, 24, 28, 32]),
      first,
      second,
      third,
      fourth,
      order: order.join(' '),
    };
  },
  answer: (given) => letterOf('shortest', given.order),
  mistakes: [
    {
      id: 'longest',
      value: (given) => letterOf('longest', given.order),
      because:
        'That is the longest. Turned round, the distance from H to the sensor is counted in focal lengths: the shorter they are, the more of them it takes.',
    },
    {
      id: 'fastest',
      value: (given) => letterOf('fastest', given.order),
      because: 'That is the one that opens widest. The opening is about light; size is about the focal length.',
    },
    {
      id: 'nearest',
      value: (given) => letterOf('nearest', given.order),
      because:
        'That is the one that comes nearest the right way round. Turned round, its focus ring adds nothing: compare focal lengths.',
    },
  ],
  hint: 'From H to the sensor it is as far in all four. Into how many focal lengths does that go?',
  working: [
    {
      note: 'Register, ring and depth of H are alike. Divided by the focal length, less one, they give most for the shortest lens.',
    },
  ],
});

function letterOf(kind: Kind, order: string): (typeof letters)[number] {
  return letters[order.split(' ').indexOf(kind)]!;
}

export const families = [howLarge, howMuchRoom, whichTube, cone, rackedOut, whichLens] as const;
