import { brightFilmThicknessFormula } from '#core/light/bright-film-thickness.formula.ts';
import { brightWavelengthFormula } from '#core/light/bright-wavelength.formula.ts';
import { refractionAngleFormula } from '#core/light/refraction-angle.formula.ts';
import { sourceSizeForMirrorFormula } from '#core/light/source-size-for-mirror.formula.ts';
import { surfaceReflectanceS } from '#core/light/surface-reflectance-s.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { degree } from '#core/quantity/units.ts';

/** Soapy water, and syrups of it. */
const indices = [1.33, 1.36, 1.4];
/** From soapy water to oils, of which films are drawn as well. */
const clearLiquids = [1.31, 1.33, 1.34, 1.36, 1.38, 1.4, 1.42, 1.44, 1.46, 1.48, 1.5, 1.52];
const nanometres = (...wavelengths: readonly number[]) => wavelengths.map((nm) => nm * 1e-6);
const rounding = { relative: 0.01, because: 'rounding while working it out' } as const;

interface Film {
  readonly wavelength: number;
  readonly 'refractive-index': number;
}

const firstBright = numberFamily({
  id: 'first-bright',
  asks: 'film-thickness',
  question:
    'A film of refractive index {refractive-index} is seen straight on. How thin is it where light of {wavelength} first comes back most strongly?',
  givens: (draw) => ({
    wavelength: draw.pick(nanometres(450, 480, 550, 590, 650)),
    'refractive-index': draw.pick(indices),
    'refraction-angle': 0,
    'interference-order': 1,
  }),
  tolerance: rounding,
  mistakes: [
    {
      id: 'not-turned-over',
      value: ({ wavelength, 'refractive-index': index }) => wavelength / (2 * index),
      because:
        'That gives the detour a whole wave. The front beam is turned over, so half a wave brings the two in step.',
    },
    {
      id: 'as-in-air',
      value: ({ wavelength }) => wavelength / 4,
      because: 'That is a quarter of the wave as it is in air. Inside the film it is shorter: divide by the index too.',
    },
    {
      id: 'neither',
      value: ({ wavelength }) => wavelength / 2,
      because:
        'That leaves out two things: the front beam is turned over, and inside the film the wave is shorter. Divide by twice the index.',
    },
  ],
  hint: 'By how much of a wave must the second beam be late? And how often does it cross the film?',
  working: [{ formula: brightFilmThicknessFormula, note: 'Half a wave of detour, there and back through water:' }],
});

const dark = ({ wavelength, 'refractive-index': index }: Film, count: number) => (count * wavelength) / (2 * index);

const darkAgain = numberFamily({
  id: 'dark-again',
  asks: 'film-thickness',
  question:
    'A film of index {refractive-index} is seen straight on. At the top, where it is thinnest, it is dark. How thick is it at dark band number {interference-order} below that, in light of {wavelength}?',
  givens: (draw) => ({
    wavelength: draw.pick(nanometres(450, 550, 650)),
    'refractive-index': draw.pick(indices),
    'interference-order': draw.pick([1, 2, 3]),
  }),
  answer: (given) => dark(given, given['interference-order']),
  tolerance: rounding,
  mistakes: [
    {
      id: 'a-bright-one',
      value: (given) => dark(given, given['interference-order'] - 0.5),
      because: 'There the film is bright: the detour is a half more than whole waves. Dark is at whole ones.',
    },
    {
      id: 'the-top-counted',
      value: (given) => dark(given, given['interference-order'] - 1),
      because: 'That counts the dark top as number 1. The count begins below it: the top is at no detour at all.',
    },
    {
      id: 'as-in-air',
      value: ({ wavelength, 'interference-order': count }) => (count * wavelength) / 2,
      because: 'That counts the wave as it is in air. Inside the film it is shorter: divide by the index.',
    },
    {
      id: 'one-way',
      value: (given) => 2 * dark(given, given['interference-order']),
      because: 'That goes through the film once. The second beam goes there and back: half the thickness is enough.',
    },
  ],
  hint: 'At which detours do the beams cancel, if one of them has been turned over?',
  working: [
    {
      note: 'Dark is at {interference-order} whole waves of detour, there and back: {interference-order} × {wavelength} over 2 × {refractive-index}, which is {film-thickness}.',
      values: (known) => ({ 'film-thickness': dark(known, known['interference-order']) }),
    },
  ],
});

/** A film seen aslant, with the angle at which light runs inside. */
const withInside = <Given extends Film & { readonly 'incidence-angle': number }>(given: Given) => ({
  ...given,
  'refraction-angle': evaluateFormula(refractionAngleFormula, given),
});

const seenAslant = numberFamily({
  id: 'seen-aslant',
  asks: 'film-thickness',
  question:
    'You see a film of index {refractive-index} at {incidence-angle} from straight on. How thick is it where light of {wavelength} first comes back most strongly?',
  givens: (draw) => ({
    wavelength: draw.pick(nanometres(450, 550, 650)),
    'refractive-index': draw.pick([1.33, 1.36]),
    'incidence-angle': draw.pick([45 * degree, 50 * degree, 60 * degree]),
    'interference-order': 1,
  }),
  tolerance: rounding,
  mistakes: [
    {
      id: 'straight-on',
      value: ({ wavelength, 'refractive-index': index }) => wavelength / (4 * index),
      because: 'That is for light straight on. Aslant the detour is shorter, so it takes a thicker film.',
    },
    {
      id: 'not-turned-over',
      value: (given) => 2 * evaluateFormula(brightFilmThicknessFormula, withInside(given)),
      because:
        'That gives the detour a whole wave. The front beam is turned over, so half a wave brings the two in step.',
    },
    {
      id: 'angle-outside',
      value: ({ wavelength, 'refractive-index': index, 'incidence-angle': angle }) =>
        wavelength / (4 * index * Math.cos(angle)),
      because: 'That takes the cosine of the angle outside. Inside light runs more steeply: find that angle first.',
    },
    {
      id: 'longer-way',
      value: (given) =>
        (given.wavelength / (4 * given['refractive-index'])) * Math.cos(evaluateFormula(refractionAngleFormula, given)),
      because:
        'That takes the detour to grow aslant. The way inside is longer, but the first beam gains more meanwhile: divide by the cosine.',
    },
  ],
  hint: 'In which direction does the light run inside? Does the detour get longer or shorter by that?',
  working: [
    { formula: refractionAngleFormula, note: 'Inside, light runs at' },
    { formula: brightFilmThicknessFormula, note: 'and the film has to be thicker by 1 over the cosine of that:' },
  ],
});

const whichColour = numberFamily({
  id: 'which-colour',
  asks: 'wavelength',
  question:
    'A film {film-thickness} thick, index {refractive-index}, is seen at {incidence-angle} from straight on. Which wavelength of order {interference-order} does it send back most strongly?',
  givens: (draw) => {
    const order = draw.pick([1, 3]);
    return {
      'film-thickness': draw.pick(order === 1 ? nanometres(105, 115, 125) : nanometres(500, 560, 620)),
      'refractive-index': draw.pick([1.33, 1.36]),
      'incidence-angle': draw.pick([40 * degree, 45 * degree, 50 * degree]),
      'interference-order': order,
    };
  },
  tolerance: rounding,
  mistakes: [
    {
      id: 'whole-waves',
      value: (given) =>
        evaluateFormula(brightWavelengthFormula, {
          ...given,
          'refraction-angle': evaluateFormula(refractionAngleFormula, given),
          'interference-order': given['interference-order'] + 0.5,
        }),
      because: 'That divides by j: at whole waves of detour the film is dark. Bright is half a wave before.',
    },
    {
      id: 'straight-on',
      value: (given) => evaluateFormula(brightWavelengthFormula, { ...given, 'refraction-angle': 0 }),
      because: 'That is for a film seen straight on. From aside the detour is shorter: multiply by the cosine inside.',
    },
    {
      id: 'angle-outside',
      value: (given) =>
        evaluateFormula(brightWavelengthFormula, { ...given, 'refraction-angle': given['incidence-angle'] }),
      because: 'That takes the cosine of the angle outside. Inside light runs more steeply.',
    },
    {
      id: 'divided-by-the-cosine',
      value: (given) => {
        const inside = evaluateFormula(refractionAngleFormula, given);
        return (
          evaluateFormula(brightWavelengthFormula, { ...given, 'refraction-angle': inside }) / Math.cos(inside) ** 2
        );
      },
      because: 'That divides by the cosine, so that the film would turn redder from aside. Multiply: it turns bluer.',
    },
    {
      id: 'as-in-air',
      value: (given) =>
        evaluateFormula(brightWavelengthFormula, {
          ...given,
          'refraction-angle': evaluateFormula(refractionAngleFormula, given),
        }) / given['refractive-index'],
      because: 'That leaves out the index. Inside the film the wave is shorter, and the detour holds more of them.',
    },
  ],
  hint: 'In which direction does light run inside, and how many waves of detour are bright?',
  working: [
    { formula: refractionAngleFormula, note: 'Inside, light runs at' },
    { formula: brightWavelengthFormula, note: 'so that the detour is half a wave short of {interference-order} for' },
  ],
});

/** What one surface sends back straight on. */
const one = (given: { readonly 'refractive-index': number }) =>
  surfaceReflectanceS({ incidenceAngle: 0, refractiveIndex: given['refractive-index'] });

const howMuch = numberFamily({
  id: 'how-much-comes-back',
  asks: 'film-reflectance',
  question:
    'A film has refractive index {refractive-index}. Seen straight on, each of its surfaces sends back the square of (index − 1)/(index + 1). Which share of the light comes back where the film is brightest, all beams counted?',
  givens: (draw) => ({ 'refractive-index': draw.pick(clearLiquids) }),
  answer: (given) => (4 * one(given)) / (1 + one(given)) ** 2,
  tolerance: { relative: 0.01, because: 'the further beams take 4 per cent and have to be told from that' },
  mistakes: [
    {
      id: 'one-surface',
      value: one,
      because: 'That is one surface alone. Two beams come back, and where the film is brightest they are in step.',
    },
    {
      id: 'lights-added',
      value: (given) => 2 * one(given),
      because: 'That adds the light of two beams. In step their swings add: twice the swing is four times the light.',
    },
    {
      id: 'two-beams',
      value: (given) => 4 * one(given),
      because: 'That is two beams alone. What goes to and fro inside takes a little away: divide by (1 + ρ)².',
    },
  ],
  hint: 'In step, what adds up: the light of the beams, or their swing?',
  working: [
    {
      note: 'One surface sends back {reflectance}.',
      values: (known) => ({ reflectance: one(known) }),
    },
    {
      note: 'In step two beams have twice the swing and four times the light. With all further beams that is 4ρ over (1 + ρ)²: {film-reflectance}.',
      values: (known) => ({ 'film-reflectance': (4 * one(known)) / (1 + one(known)) ** 2 }),
    },
  ],
});

const howLarge = numberFamily({
  id: 'how-large-a-diffuser',
  asks: 'source-size',
  question:
    'You photograph {field-width} of a soap film. The entrance pupil is {entrance-pupil} wide and {entrance-pupil-distance} from the film, the diffuser {flash-distance} from it. How wide must the diffuser be to fill the picture?',
  givens: (draw) => ({
    'field-width': draw.pick([40, 60, 72]),
    'entrance-pupil-distance': draw.pick([200, 250, 300]),
    'entrance-pupil': draw.pick([10, 15, 20]),
    'flash-distance': draw.pick([100, 150, 180]),
  }),
  tolerance: { relative: 0.01, because: 'the pupil’s part is a few per cent and has to be told' },
  mistakes: [
    {
      id: 'as-the-film',
      value: (given) => given['field-width'],
      because: 'That is as wide as the film. The light is farther away, and the view widens on its way there.',
    },
    {
      id: 'eye-a-point',
      value: (given) => given['field-width'] * (1 + given['flash-distance'] / given['entrance-pupil-distance']),
      because: 'That looks through a pinhole. The opening of the lens is wide, and all of it should see the light.',
    },
    {
      id: 'pupil-as-it-is',
      value: (given) =>
        given['field-width'] * (1 + given['flash-distance'] / given['entrance-pupil-distance']) +
        given['entrance-pupil'],
      because: 'That adds the whole width of the pupil. Seen through the film it adds less: D times d divided by u.',
    },
    {
      id: 'only-what-is-added',
      value: (given) =>
        ((given['field-width'] + given['entrance-pupil']) * given['flash-distance']) / given['entrance-pupil-distance'],
      because: 'That is how much the view widens behind the film. The width of the film itself has to be added.',
    },
  ],
  hint: 'Think of the film as a window and of the light as behind it. How wide is the view there?',
  working: [{ formula: sourceSizeForMirrorFormula, note: 'Through the film as through a window:' }],
});

/** What is set up and what is asked of it, by what decides the answer. */
const scenes = {
  thinner: {
    scenes: [
      'An upright film has drained, and its top is silver-white.',
      'A bubble hangs from a straw, and the place below the straw has just turned silver.',
      'A film in a ring has drained for two minutes. Its upper edge is pale silver.',
    ],
    where: 'there next',
  },
  aslant: {
    scenes: [
      'Seen straight on, a film is black, silver, yellow, purple, blue and green, then yellow again. You look at that second yellow.',
      'A place of a film well below its first green is orange, seen straight on.',
      'Straight on, the yellow band below the first green of a film is at the height of your eyes.',
    ],
    where: 'there as you go round to the side',
  },
  'off-the-light': {
    scenes: [
      'A small flash is mirrored in the middle of a film, which shines in colours there.',
      'A lit card covers the left half of what a film mirrors. That half is coloured.',
      'A ring light is mirrored in a film as a coloured ring.',
    ],
    where: 'in the rest of the film, where it mirrors a dark room',
  },
} as const;

const whatNext = choiceFamily({
  id: 'what-comes-next',
  question: '{scene} What do you see {where}?',
  givens: (draw) => {
    const which = draw.pick(['thinner', 'aslant', 'off-the-light'] as const);
    return { which, scene: draw.pick(scenes[which].scenes), where: scenes[which].where };
  },
  options: {
    black: 'Black',
    blue: 'Blue or green',
    red: 'Red',
    coloured: 'Colours as in the middle',
  },
  answer: ({ which }) => (which === 'aslant' ? 'blue' : 'black'),
  mistakes: [
    {
      id: 'redder',
      value: () => 'red',
      because:
        'The detour gets no longer: in a thinner film it is shorter, and aslant as well, and above silver there is no colour left. And a film has colour only where it mirrors something bright.',
    },
    {
      id: 'other-way',
      value: ({ which }) => (which === 'aslant' ? 'black' : 'blue'),
      because:
        'Ask two things. Does the detour get longer or shorter, and is any of it left? And what is there for the film to mirror?',
    },
    {
      id: 'as-if-painted',
      value: () => 'coloured',
      because:
        'A film is not painted. Its colour goes by how thick it is, from where you look, and what it mirrors: which of the three has changed, or is missing there?',
    },
  ],
  hint: 'What happens to the detour, and is there a light to mirror?',
  working: [
    {
      note: 'The thinner the film, the shorter the detour: silver, then black. Aslant the detour is shorter as well: the second yellow goes to green and blue. And where a film mirrors nothing bright, nothing comes back.',
    },
  ],
});

export const families = [firstBright, darkAgain, seenAslant, whichColour, howMuch, howLarge, whatNext] as const;
