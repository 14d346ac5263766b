import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { edgeShift, edgeShiftFormula } from '#core/stack/edge-shift.formula.ts';
import { frameStep, frameStepFormula } from '#core/stack/frame-step.formula.ts';
import { hiddenBandFormula } from '#core/stack/hidden-band.formula.ts';
import { scaleChangeOnRail, scaleChangeOnRailFormula } from '#core/stack/scale-change-on-rail.formula.ts';
import { stackTravelFormula } from '#core/stack/stack-travel.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { imageWidth, imageWidthFormula } from '#core/gaussian/image-width.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { circlesOfBodies } from '#site/state/body-circle.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';

const behindTheEdge = numberFamily({
  id: 'behind-the-edge',
  asks: 'hidden-band',
  question:
    'A leaf’s edge stands {edge-height} above the ground that a frame is focused on. The entrance pupil is {entrance-pupil} wide and stands {entrance-pupil-distance} from the ground. How wide is the band of ground that is seen past the edge by part of the pupil only?',
  givens: (draw) => ({
    'edge-height': draw.pick([8, 10, 12, 15, 20]),
    'entrance-pupil': draw.pick([5, 8, 10, 12.5, 20]),
    'entrance-pupil-distance': draw.pick([90, 100, 120, 150]),
  }),
  answer: (given) => evaluateFormula(hiddenBandFormula, given),
  tolerance: { relative: 0.015, because: 'nearer than this the wrong distance would pass' },
  mistakes: [
    {
      id: 'nothing-hidden',
      value: () => 0,
      because:
        'That says that some frame shows all of it, which is the hope behind taking more frames. Focused on the ground, the lens still looks past an edge {edge-height} nearer, and from here one side of the pupil does not see past it.',
    },
    {
      id: 'distance-to-the-ground',
      value: (given) => (given['entrance-pupil'] * given['edge-height']) / given['entrance-pupil-distance'],
      because:
        'That divides by the pupil’s distance to the ground. The rays cross at the edge, so it is the distance from pupil to edge that counts, shorter by {edge-height}.',
    },
    {
      id: 'one-side',
      value: (given) =>
        (0.5 * given['entrance-pupil'] * given['edge-height']) /
        (given['entrance-pupil-distance'] - given['edge-height']),
      because:
        'That is the half that lies outside the edge. The other half lies under it: the whole width of the pupil, {entrance-pupil}, goes into the band.',
    },
  ],
  hint: 'Draw the two rays from the rims of the pupil through the edge. They make two triangles of one shape, one on each side of the edge.',
  working: [
    { formula: hiddenBandFormula, note: 'Behind the edge the triangle is as wide for its length as it is before it:' },
  ],
});

interface Lens {
  readonly magnification: number;
  readonly 'f-number': number;
  readonly 'pupil-magnification': number;
  readonly 'circle-of-confusion': number;
  readonly overlap: number;
}
const worksAt = (given: Lens) => evaluateFormula(effectiveFNumberFormula, given);
const depthAt = (given: Lens, fNumber: number) =>
  evaluateFormula(depthOfFieldCloseUpFormula, { ...given, 'effective-f-number': fNumber });

const noSoftBand = numberFamily({
  id: 'no-soft-band',
  asks: 'frame-step',
  question:
    'A stack at {magnification}, marked {f-number}, with a lens of pupil magnification {pupil-magnification}, came out striped. {circle-of-confusion} of blur still counts as sharp, and neighbouring frames shall share {overlap} of their depth. How far apart should the frames have been?',
  givens: (draw) => ({
    magnification: draw.pick([0.5, 0.8, 1, 1.5, 2, 3]),
    'f-number': draw.pick([4, 5.6, 8, 11]),
    'pupil-magnification': draw.pick([0.7, 0.85, 1.2, 1.5]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
    overlap: draw.pick([0.2, 0.25, 0.3]),
  }),
  answer: (given) => frameStep({ depthOfField: depthAt(given, worksAt(given)), overlap: given.overlap }),
  tolerance: { relative: 0.03, because: 'depths are known no better than the circle of confusion is' },
  mistakes: [
    {
      id: 'marked-f-number',
      value: (given) => frameStep({ depthOfField: depthAt(given, given['f-number']), overlap: given.overlap }),
      because:
        'That takes {f-number} from the ring. At {magnification} the lens works at a larger number, and its depth is larger with it: these frames are closer than they need to be.',
    },
    {
      id: 'no-overlap',
      value: (given) => depthAt(given, worksAt(given)),
      because:
        'That is the whole depth of a frame. Then every seam lies where both of its frames are just about to be called soft; take {overlap} of the depth off.',
    },
    {
      id: 'overlap-taken-as-step',
      value: (given) => given.overlap * depthAt(given, worksAt(given)),
      because: 'That is what neighbours share, {overlap} of the depth. The camera moves by the rest.',
    },
    {
      id: 'one-side-of-the-plane',
      value: (given) => frameStep({ depthOfField: depthAt(given, worksAt(given)) / 2, overlap: given.overlap }),
      because: 'That counts the depth on one side of the sharp plane. A frame is sharp before it and behind it.',
    },
  ],
  hint: 'Three steps: the f-number the lens works at, the depth of one frame, and what is left of it when the shared part is taken off.',
  working: [
    { formula: effectiveFNumberFormula, note: 'The lens works at' },
    { formula: depthOfFieldCloseUpFormula, note: 'so that one frame is sharp over' },
    {
      formula: frameStepFormula,
      values: (known) => ({ 'depth-of-field': known['depth-of-field-close-up'] }),
      note: 'and the camera moves by what is not shared:',
    },
  ],
});

const wholeStack = numberFamily({
  id: 'whole-stack-on-the-rail',
  asks: 'scale-change',
  question:
    '{frame-count} frames on a rail, {frame-step} apart, from near to far. A hair lies in the sharp plane of the first. There it is {entrance-pupil-distance} from the entrance pupil and {focus-distance} from the sensor. By how much has its picture grown by the last frame?',
  givens: (draw) => ({
    'frame-count': draw.pick([5, 6, 8, 9, 11]),
    'frame-step': draw.pick([1, 1.2, 1.5, 2]),
    'entrance-pupil-distance': draw.pick([60, 75, 90]),
    'focus-distance': draw.pick([170, 200, 240]),
  }),
  answer: (given) =>
    scaleChangeOnRail({
      frameStep: (given['frame-count'] - 1) * given['frame-step'],
      entrancePupilDistance: given['entrance-pupil-distance'],
    }),
  tolerance: { relative: 0.01, because: 'a merging program wants it to a part of a pixel' },
  mistakes: [
    {
      id: 'distance-before',
      value: (given) => ((given['frame-count'] - 1) * given['frame-step']) / given['entrance-pupil-distance'],
      because:
        'That divides the travel by {entrance-pupil-distance}, the distance before the camera moved. The picture grows towards what it is at the end, when the pupil is nearer by the whole travel.',
    },
    {
      id: 'one-step-too-many',
      value: (given) =>
        scaleChangeOnRail({
          frameStep: given['frame-count'] * given['frame-step'],
          entrancePupilDistance: given['entrance-pupil-distance'],
        }),
      because: 'That is a step for every frame. Between {frame-count} frames there is one step fewer.',
    },
    {
      id: 'from-the-sensor',
      value: (given) =>
        scaleChangeOnRail({
          frameStep: (given['frame-count'] - 1) * given['frame-step'],
          entrancePupilDistance: given['focus-distance'],
        }),
      because:
        'That counts from the sensor, {focus-distance} away. A lens sees perspective from its entrance pupil, and that is {entrance-pupil-distance} away.',
    },
    {
      id: 'steps-of-one-size',
      value: (given) =>
        (given['frame-count'] - 1) *
        scaleChangeOnRail({
          frameStep: given['frame-step'],
          entrancePupilDistance: given['entrance-pupil-distance'],
        }),
      because:
        'That adds up the first step’s change over and over. The camera gets nearer with every step, so each changes the scale by more than the one before.',
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
    'From one frame to the next the picture grows by {scale-change}. At {magnification} it takes in {field-width} of the subject, on pixels of {pixel-pitch}. How far does a detail at the left or right side move, if the scale is left as it is?',
  givens: (draw) => ({
    'scale-change': draw.pick([0.001, 0.002, 0.003, 0.004, 0.005]),
    magnification: draw.pick([1.5, 2, 2.5, 3]),
    'field-width': draw.pick([8, 9, 10, 12]),
    'pixel-pitch': draw.pick([0.004, 0.005, 0.006]),
  }),
  answer: (given) => edgeShift({ ...onTheSensor(given), scaleChange: given['scale-change'] }),
  tolerance: { relative: 0.03, because: 'a tenth of a few pixels does not show' },
  mistakes: [
    {
      id: 'across-the-whole-width',
      value: (given) => 2 * edgeShift({ ...onTheSensor(given), scaleChange: given['scale-change'] }),
      because:
        'That lets the picture grow from one side to the other. It grows from its middle, so only half the width counts.',
    },
    {
      id: 'on-the-subject',
      value: (given) =>
        edgeShift({
          sensorWidth: given['field-width'],
          pixelPitch: given['pixel-pitch'],
          scaleChange: given['scale-change'],
        }),
      because:
        'That counts pixels along the subject. They lie on the sensor, where the {field-width} are {magnification} as long.',
    },
    {
      id: 'per-cent-of-pixels',
      value: (given) =>
        edgeShift({
          sensorWidth: given['field-width'] / given.magnification,
          pixelPitch: given['pixel-pitch'],
          scaleChange: given['scale-change'],
        }),
      because: 'That divides by the magnification. The image is the field times {magnification}, not over it.',
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

function onTheSensor(given: { magnification: number; 'field-width': number; 'pixel-pitch': number }) {
  const width = imageWidth({ magnification: given.magnification, subjectWidth: given['field-width'] });
  return { sensorWidth: width, pixelPitch: given['pixel-pitch'] };
}

type Remedy = 'frames' | 'scale' | 'pupil' | 'retake';

// prettier-ignore
const flaws: readonly (readonly [flaw: string, truth: Remedy, tempting: Remedy])[] = [
  ['A pale soft rim follows every outline that stands before far ground', 'pupil', 'scale'],
  ['Close to a feeler the ground behind it is never clean, whichever frame you look at', 'pupil', 'retake'],
  ['Edges are double, at the sides most and in the middle not at all', 'scale', 'retake'],
  ['Hairs are clean in the middle of the picture and smeared outwards towards its corners', 'scale', 'pupil'],
  ['Sharp and soft stripes follow one another up an even slope, and diffraction allows no smaller aperture', 'frames', 'scale'],
  ['One hair shows twice, a little apart, and all that surrounds it is clean', 'retake', 'scale'],
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
    scale: 'Setting all frames to one scale first',
    pupil: 'A smaller aperture',
    retake: 'Taking it again with nothing moving',
  },
  answer: (given) => given.truth,
  mistakes: [
    {
      id: 'another-fault',
      value: (given) => given.tempting,
      because:
        'That cures another fault. Look at where this one shows: stripes along the depth come from frames too far apart, what grows from the middle to the sides comes from scale, what keeps to one hair has moved, and what follows the outlines is the pupil looking round an edge.',
    },
    {
      id: 'more-of-the-same',
      value: (given) => (given.truth === 'frames' ? 'retake' : 'frames'),
      because:
        'Ask what those frames would hold that the ones you have do not. More frames fill gaps in depth and do nothing else: they have the same blur round the same edge and the same change of scale. The same frames once more help only where something moved.',
    },
  ],
  hint: 'Where does it show: along the depth, from the middle outwards, at one thing only, or along outlines?',
  working: [
    {
      note: 'Along the depth, frames were too far apart. From the middle outwards, they had different scales. At one thing only, it moved. Along outlines before a far background, part of the pupil was blocked in every frame that had the background in focus: a smaller pupil makes that band narrower, and no frame is without it.',
    },
  ],
});

export const families = [behindTheEdge, noSoftBand, wholeStack, atTheSide, whatHelps] as const;
