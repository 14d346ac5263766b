import { edgeShiftFormula } from '#core/stack/edge-shift.formula.ts';
import { hiddenBandFormula } from '#core/stack/hidden-band.formula.ts';
import { scaleChangeOnRailFormula } from '#core/stack/scale-change-on-rail.formula.ts';
import { stackTravelFormula } from '#core/stack/stack-travel.formula.ts';
import { fNumberFromApertureFormula } from '#core/gaussian/f-number-from-aperture.formula.ts';
import { imageWidthFormula } from '#core/gaussian/image-width.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import type { StepFormula } from '#core/practice/step.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';

const behindTheEdge = numberFamily({
  id: 'behind-the-edge',
  asks: 'hidden-band',
  question:
    'A leaf’s edge is {edge-height} above the background that a frame is focused on. The entrance pupil is {entrance-pupil} wide and {entrance-pupil-distance} from the background. How wide is the band of background that only part of the pupil can see?',
  givens: (draw) => ({
    'edge-height': draw.pick([8, 10, 12, 15, 20]),
    'entrance-pupil': draw.pick([5, 8, 10, 12.5, 20]),
    'entrance-pupil-distance': draw.pick([90, 100, 120, 150]),
  }),
  tolerance: { relative: 0.015, because: 'beyond that the wrong distance would pass' },
  mistakes: [
    {
      id: 'nothing-hidden',
      value: () => 0,
      because:
        'That says that some frame shows all of it, which is the hope behind taking more frames. Focused on the background, the lens still looks past an edge {edge-height} nearer, and from that band part of the pupil is covered.',
    },
    {
      id: 'distance-to-the-background',
      value: (given) => (given['entrance-pupil'] * given['edge-height']) / given['entrance-pupil-distance'],
      because:
        'That divides by the pupil’s distance to the background. The rays cross at the edge, so it is the distance from pupil to edge that counts, shorter by {edge-height}.',
    },
    {
      id: 'one-side',
      value: (given) => evaluateFormula(hiddenBandFormula, given) / 2,
      because:
        'That is the half that lies outside the edge. The other half lies behind the leaf: the whole width of the pupil, {entrance-pupil}, goes into the band.',
    },
  ],
  hint: 'Draw the two rays from the rims of the pupil through the edge. They make two triangles of one shape, one on each side of the edge.',
  working: [
    {
      formula: hiddenBandFormula,
      note: 'The two triangles have the same shape: width over length is the same on both sides of the edge:',
    },
  ],
});

/** The pupil of which a band is left, by the two triangles of one shape. */
const pupilForBand = {
  gives: 'entrance-pupil',
  from: ['hidden-band', 'entrance-pupil-distance', 'edge-height'],
  tex: String.raw`\q{entrance-pupil} = \frac{\q{hidden-band} \, (\q{entrance-pupil-distance} - \q{edge-height})}{\q{edge-height}}`,
  evaluate: (given: { hiddenBand: number; entrancePupilDistance: number; edgeHeight: number }) =>
    (given.hiddenBand * (given.entrancePupilDistance - given.edgeHeight)) / given.edgeHeight,
} as const satisfies StepFormula;

interface Rim {
  readonly 'rim.hidden-band': number;
  readonly 'edge-height': number;
  readonly 'entrance-pupil-distance': number;
  readonly 'focal-length': number;
}
/** The f-number of a lens whose band is so many times as wide as the rim that shows. */
const fNumberFor = (given: Rim, times: number) => {
  const pupil = pupilForBand.evaluate({
    hiddenBand: times * given['rim.hidden-band'],
    entrancePupilDistance: given['entrance-pupil-distance'],
    edgeHeight: given['edge-height'],
  });
  return evaluateFormula(fNumberFromApertureFormula, { ...given, 'entrance-pupil': pupil });
};
/** The same for one who counts the pupil's distance from the background and not from the edge. */
const fromTheBackground = (given: Rim): Rim => ({
  ...given,
  'entrance-pupil-distance': given['entrance-pupil-distance'] + given['edge-height'],
});

const narrowRim = numberFamily({
  id: 'aperture-for-a-rim',
  asks: 'f-number',
  question:
    'Along an edge {edge-height} above the background, the halo that shows is to be {rim.hidden-band} wide. The lens has a focal length of {focal-length}, and its entrance pupil is {entrance-pupil-distance} from the background. Which f-number do you set?',
  givens: (draw) => ({
    'rim.hidden-band': draw.pick([0.2, 0.3, 0.4, 0.5]),
    'edge-height': draw.pick([10, 12, 15]),
    'entrance-pupil-distance': draw.pick([118, 134, 152]),
    'focal-length': draw.pick([60, 75, 90, 100]),
  }),
  tolerance: { relative: 0.03, because: '3 % is a twelfth of a stop, finer than anyone sets a lens' },
  mistakes: [
    {
      id: 'rim-for-band',
      value: (given) => fNumberFor(given, 1),
      because:
        'That takes the halo for the whole band. Only the outer half of the band shows, so the band may be twice {rim.hidden-band} wide.',
    },
    {
      id: 'distance-to-the-background',
      value: (given) => fNumberFor(fromTheBackground(given), 2),
      because:
        'That counts the pupil’s distance to the background. The rays cross at the edge, which is {edge-height} nearer: take that off first.',
    },
    {
      id: 'both',
      value: (given) => fNumberFor(fromTheBackground(given), 1),
      because:
        'Two slips: the halo is only the outer half of the band, and the pupil’s distance counts from the edge, not from the background.',
    },
  ],
  hint: 'How wide is the whole band, with the half that the object hides? How wide may the pupil be then? And what is focal length over pupil?',
  working: [
    {
      formula: pupilForBand,
      values: (known) => ({ 'hidden-band': 2 * known['rim.hidden-band'] }),
      note: 'The halo is the outer half of the band, so the band is twice as wide. The two triangles at the edge have the same shape, so the pupil is',
    },
    {
      formula: fNumberFromApertureFormula,
      note: 'and the f-number says how many times that fits into the focal length:',
    },
  ],
});

const wholeStack = numberFamily({
  id: 'whole-stack-on-the-rail',
  asks: 'scale-change',
  question:
    '{frame-count} frames on a rail, {frame-step} apart, from near to far. In the first frame a hair lies in the sharp plane, {entrance-pupil-distance} from the entrance pupil and {focus-distance} from the sensor. By how much has its image grown in the last frame?',
  givens: (draw) => ({
    'frame-count': draw.pick([5, 6, 8, 9, 11]),
    'frame-step': draw.pick([1, 1.2, 1.5, 2]),
    'entrance-pupil-distance': draw.pick([60, 75, 90]),
    'focus-distance': draw.pick([170, 200, 240]),
  }),
  tolerance: { relative: 0.01, because: 'a merging program wants it to a part of a pixel' },
  mistakes: [
    {
      id: 'distance-before',
      value: (given) => evaluateFormula(stackTravelFormula, given) / given['entrance-pupil-distance'],
      because:
        'That divides the travel by {entrance-pupil-distance}, the distance before the camera moved. The image grows towards what it is at the end, when the pupil is nearer by the whole travel.',
    },
    {
      id: 'new-size',
      value: (given) =>
        1 +
        evaluateFormula(scaleChangeOnRailFormula, {
          ...given,
          'frame-step': evaluateFormula(stackTravelFormula, given),
        }),
      because:
        'That is how many times its first size the image has in the end. The question asks by how much it has grown.',
    },
    {
      id: 'one-step-too-many',
      value: (given) =>
        evaluateFormula(scaleChangeOnRailFormula, {
          ...given,
          'frame-step': given['frame-count'] * given['frame-step'],
        }),
      because: 'That is a step for every frame. Between {frame-count} frames there is one step fewer.',
    },
    {
      id: 'from-the-sensor',
      value: (given) =>
        evaluateFormula(scaleChangeOnRailFormula, {
          'frame-step': evaluateFormula(stackTravelFormula, given),
          'entrance-pupil-distance': given['focus-distance'],
        }),
      because:
        'That counts from the sensor, {focus-distance} away. A lens sees perspective from its entrance pupil, and that is {entrance-pupil-distance} away.',
    },
    {
      id: 'steps-of-one-size',
      value: (given) => (given['frame-count'] - 1) * evaluateFormula(scaleChangeOnRailFormula, given),
      because:
        'That adds up the first step’s change over and over. The camera gets nearer with every step, so each changes the size by more than the one before.',
    },
  ],
  hint: 'How far has the camera moved in all? And how far from the hair is the entrance pupil then?',
  working: [
    { formula: stackTravelFormula, note: 'One step fewer than there are frames:' },
    {
      formula: scaleChangeOnRailFormula,
      values: (known) => ({ 'frame-step': known['stack-travel'] }),
      note: 'The whole travel taken as one step:',
    },
  ],
});

const atTheSide = numberFamily({
  id: 'at-the-side',
  asks: 'edge-shift',
  question:
    'From one frame to the next the picture grows by {scale-change}. At {magnification} it takes in {field-width} of the subject, on pixels of {pixel-pitch}. How far does a detail at the left or right side move if the size is not corrected?',
  givens: (draw) => ({
    'scale-change': draw.pick([0.001, 0.002, 0.003, 0.004, 0.005]),
    magnification: draw.pick([1.5, 2, 2.5, 3]),
    'field-width': draw.pick([8, 9, 10, 12]),
    'pixel-pitch': draw.pick([0.004, 0.005, 0.006]),
  }),
  tolerance: { relative: 0.03, because: 'a tenth of a few pixels does not show' },
  mistakes: [
    {
      id: 'across-the-whole-width',
      value: (given) => 2 * shiftAcross(given, widthOnTheSensor(given)),
      because:
        'That lets the picture grow from one side to the other. It grows from its middle, so only half the width counts.',
    },
    {
      id: 'on-the-subject',
      value: (given) => shiftAcross(given, given['field-width']),
      because:
        'That counts pixels along the subject. They lie on the sensor, where the {field-width} are {magnification} as long.',
    },
    {
      id: 'per-cent-of-pixels',
      value: (given) => shiftAcross(given, given['field-width'] / given.magnification),
      because: 'That divides by the magnification. The image is the field times {magnification}, not divided by it.',
    },
  ],
  hint: 'How wide is the picture on the sensor, how many pixels is half of that, and what part of them is the change?',
  working: [
    {
      formula: imageWidthFormula,
      values: (known) => ({ 'subject-width': known['field-width'] }),
      note: 'On the sensor the field is',
    },
    {
      formula: edgeShiftFormula,
      values: (known) => ({ 'sensor-width': known['image-width'] }),
      note: 'and half of it, in pixels, grows by that share:',
    },
  ],
});

function widthOnTheSensor(given: { readonly magnification: number; readonly 'field-width': number }): number {
  return evaluateFormula(imageWidthFormula, { ...given, 'subject-width': given['field-width'] });
}

function shiftAcross(
  given: { readonly 'scale-change': number; readonly 'pixel-pitch': number },
  width: number,
): number {
  return evaluateFormula(edgeShiftFormula, { ...given, 'sensor-width': width });
}

type Remedy = 'frames' | 'scale' | 'pupil' | 'retake';

// prettier-ignore
const flaws: readonly (readonly [flaw: string, truth: Remedy, tempting: Remedy])[] = [
  ['A pale soft rim follows every outline that stands in front of a distant background', 'pupil', 'scale'],
  ['Close to an antenna the background is never clean, whichever frame you look at', 'pupil', 'retake'],
  ['Edges are double, at the sides most and in the middle not at all', 'scale', 'retake'],
  ['Hairs are clean in the middle of the picture and smeared outwards towards its corners', 'scale', 'pupil'],
  ['Sharp and soft stripes follow one another up an even slope, and diffraction allows no smaller aperture', 'frames', 'scale'],
  ['One hair shows twice, a little apart, and everything around it is clean', 'retake', 'scale'],
];

const whatHelps = choiceFamily({
  id: 'what-helps',
  question: 'You merge {frame-count} frames of {a thing}. {flaw}. What would have helped?',
  givens: (draw) => {
    const [flaw, truth, tempting] = draw.pick(flaws);
    return {
      flaw,
      truth,
      tempting,
      thing: draw.pick(['bay leaf', 'hoverfly', 'frost crystal', 'jumping spider']),
      'frame-count': draw.pick([12, 20, 30, 40]),
    };
  },
  options: {
    frames: 'More frames, closer together',
    scale: 'Bringing all frames to one size first',
    pupil: 'A smaller aperture',
    retake: 'Taking it again with nothing moving',
  },
  answer: (given) => given.truth,
  mistakes: [
    {
      id: 'more-of-the-same',
      value: ({ truth }) => (truth === 'frames' ? undefined : 'frames'),
      because:
        'Ask what those frames would hold that the ones you have do not. Would this fault be missing in any of them?',
    },
    {
      id: 'different-sizes',
      value: ({ truth }) => (truth === 'scale' ? undefined : 'scale'),
      because:
        'Frames of different sizes agree in the middle and part more and more towards the sides, all along. Is that how this fault lies?',
    },
    {
      id: 'band-along-outlines',
      value: ({ truth }) => (truth === 'pupil' ? undefined : 'pupil'),
      because:
        'That makes the band narrower that an outline hides of what is far behind it, and each frame deeper, as far as diffraction allows. Does this fault follow such outlines, and is it allowed here?',
    },
    {
      id: 'something-moved',
      value: ({ truth }) => (truth === 'retake' ? undefined : 'retake'),
      because:
        'What moves between two frames is double by itself; all the rest is clean, and so is each frame. Is all of that so here?',
    },
  ],
  hint: 'Where does it show: along the depth, from the middle outwards, at one thing only, or along outlines?',
  working: [
    {
      note: 'Along the depth, frames were too far apart. From the middle outwards, they had different sizes. At one thing only, it moved. Along outlines in front of a distant background, part of the pupil was blocked in every frame that had the background in focus: a smaller pupil makes that band narrower, and no frame is without it.',
    },
  ],
});

export const families = [behindTheEdge, narrowRim, wholeStack, atTheSide, whatHelps] as const;
