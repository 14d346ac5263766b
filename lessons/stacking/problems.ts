import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { frameCountFormula } from '#core/stack/frame-count.formula.ts';
import { frameStep, frameStepFormula } from '#core/stack/frame-step.formula.ts';
import { framesBeforeDeadlineFormula } from '#core/stack/frames-before-deadline.formula.ts';
import { stackTimeFormula } from '#core/stack/stack-time.formula.ts';
import { subjectDepthOfTiltFormula } from '#core/depth/subject-depth-of-tilt.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';
import { circlesOfBodies } from '#site/state/body-circle.ts';
import { evaluateFormula } from '#core/quantity/formula.ts';
import { degree } from '#core/quantity/units.ts';

interface Lens {
  readonly magnification: number;
  readonly 'f-number': number;
  readonly 'pupil-magnification': number;
  readonly 'circle-of-confusion': number;
}
const worksAt = (given: Lens) => evaluateFormula(effectiveFNumberFormula, given);
const depthAt = (given: Lens, fNumber: number) =>
  evaluateFormula(depthOfFieldCloseUpFormula, { ...given, 'effective-f-number': fNumber });

const step = numberFamily({
  id: 'step-of-the-rail',
  asks: 'frame-step',
  question:
    'A lens of pupil magnification {pupil-magnification} works at {magnification}, set to {f-number}. A blur of {circle-of-confusion} is allowed, and neighbouring frames are to share {overlap} of their depth. How far must the camera move between two frames?',
  givens: (draw) => ({
    magnification: draw.pick([0.5, 0.7, 1.5, 2, 3]),
    'f-number': draw.pick([4, 5.6, 8, 11]),
    'pupil-magnification': draw.pick([0.7, 0.85, 1.2, 1.5]),
    'circle-of-confusion': draw.pick(circlesOfBodies),
    overlap: draw.pick([0.2, 0.25, 0.3, 0.4]),
  }),
  tolerance: { relative: 0.03, because: 'depths are known no better than the circle of confusion is' },
  mistakes: [
    {
      id: 'no-overlap',
      value: (given) => depthAt(given, worksAt(given)),
      because:
        'That is the whole depth of a frame: a stack without overlap. The seams would be just where both frames are only just sharp enough, and the slightest slip of the rail opens a gap. Take {overlap} of the depth off.',
    },
    {
      id: 'marked-f-number',
      value: (given) => frameStep({ depthOfField: depthAt(given, given['f-number']), overlap: given.overlap }),
      because:
        'That takes the marked {f-number}. At {magnification} the effective f-number is larger, and each frame is deeper: you would take more frames than you need. Use N (1 + m/P).',
    },
    {
      id: 'overlap-taken-as-step',
      value: (given) => given.overlap * depthAt(given, worksAt(given)),
      because: 'That is the part that neighbouring frames share. The camera moves by the rest of the depth.',
    },
    {
      id: 'pupils-forgotten',
      value: (given) =>
        frameStep({
          depthOfField: depthAt(given, worksAt({ ...given, 'pupil-magnification': 1 })),
          overlap: given.overlap,
        }),
      because:
        'That takes N (1 + m) for the effective f-number, right for equal pupils (P = 1). Here m is first divided by {pupil-magnification}.',
    },
    {
      id: 'magnification-once',
      value: (given) =>
        given.magnification * frameStep({ depthOfField: depthAt(given, worksAt(given)), overlap: given.overlap }),
      because:
        'That divides by m once. It counts twice: on the subject the blur may be only c/m wide, and the cone there is m times as wide as the one at the sensor. The depth is twice the effective f-number times c/m².',
    },
    {
      id: 'multiplied',
      value: (given) =>
        given.magnification ** 4 * frameStep({ depthOfField: depthAt(given, worksAt(given)), overlap: given.overlap }),
      because:
        'That multiplies by m squared. Divide: the more an image is magnified, the less of the subject’s depth is sharp.',
    },
    {
      id: 'one-side',
      value: (given) => frameStep({ depthOfField: depthAt(given, worksAt(given)) / 2, overlap: given.overlap }),
      because:
        'That counts the depth on one side of the sharp plane. A frame is sharp in front of it and behind it: twice the effective f-number times c/m².',
    },
  ],
  hint: 'What is the effective f-number? How deep is one frame then, both sides together? And what is left without the shared part?',
  working: [
    { formula: effectiveFNumberFormula, note: 'The effective f-number is' },
    { formula: depthOfFieldCloseUpFormula, note: 'so that one frame is sharp over' },
    {
      formula: frameStepFormula,
      values: (known) => ({ 'depth-of-field': known['depth-of-field-close-up'] }),
      note: 'and the camera moves by what is not shared:',
    },
  ],
});

const stepOf = (given: { readonly 'depth-of-field': number; readonly overlap: number }) =>
  frameStep({ depthOfField: given['depth-of-field'], overlap: given.overlap });

const frameCountOf = (given: Readonly<Record<'depth-of-field' | 'subject-depth' | 'overlap', number>>) =>
  evaluateFormula(frameCountFormula, given);

const howMany = numberFamily({
  id: 'how-many-frames',
  asks: 'frame-count',
  question:
    'One frame is sharp over {depth-of-field}. The subject is {subject-depth} deep. Neighbouring frames are to share {overlap} of their depth. How many frames does it need?',
  givens: (draw) => ({
    'depth-of-field': draw.pick([0.09, 0.14, 0.17, 0.23, 0.31]),
    'subject-depth': draw.pick([2, 3, 4, 5]),
    overlap: draw.pick([0.3, 0.35, 0.4]),
  }),
  tolerance: { absolute: 0.4, because: 'frames are counted whole' },
  mistakes: [
    {
      id: 'no-overlap',
      value: (given) => Math.ceil(given['subject-depth'] / given['depth-of-field']),
      because:
        'That puts the depths end to end. With {overlap} shared, each new frame adds only the rest of its depth.',
    },
    {
      id: 'depth-over-step',
      value: (given) => Math.ceil(given['subject-depth'] / stepOf(given)),
      because:
        'That divides the whole depth by the step. The first frame covers its own depth, {depth-of-field}, without any step: divide what is left, and add that first frame.',
    },
    {
      id: 'depth-over-step-and-one',
      value: (given) => 1 + Math.ceil(given['subject-depth'] / stepOf(given)),
      because:
        'That counts the first frame and then steps through the whole depth. The first frame has covered {depth-of-field} of it already: only what is left needs steps.',
    },
    {
      id: 'depth-over-overlap',
      value: (given) => Math.ceil(given['subject-depth'] / (given['depth-of-field'] * given.overlap)),
      because: 'That steps by the part that is shared. The step is what is not shared.',
    },
    {
      id: 'half-depth',
      value: (given) => frameCountOf({ ...given, 'depth-of-field': given['depth-of-field'] / 2 }),
      because:
        'That takes half of the depth for each frame. {depth-of-field} is both sides of the sharp plane already.',
    },
    {
      id: 'rounded-down',
      value: (given) =>
        1 +
        Math.floor(
          (given['subject-depth'] - given['depth-of-field']) / (given['depth-of-field'] * (1 - given.overlap)),
        ),
      because:
        'That rounds down, and the far end of the subject stays soft. A part of a step still takes a whole frame.',
    },
  ],
  hint: 'The first frame covers its whole depth. How much is left, and how much of that does each further frame add?',
  working: [{ formula: frameCountFormula, note: 'The first frame covers its depth, each further one a step:' }],
});

const howLong = numberFamily({
  id: 'how-long',
  asks: 'stack-time',
  question:
    'A stack of {frame-count} frames, {exposure-time} each. Between frames the rail needs {settling-time} to come to rest, and the flash, at the same time, {recycling-time} to recharge. How long does the stack take?',
  givens: (draw) => ({
    'frame-count': draw.pick([10, 15, 20, 30]),
    'exposure-time': draw.pick([0.5, 1, 2]),
    'settling-time': draw.pick([2, 3, 4]),
    'recycling-time': draw.pick([1, 1.5]),
  }),
  tolerance: { relative: 0.01, because: 'so that one wait too many shows' },
  mistakes: [
    {
      id: 'waits-added',
      value: (given) =>
        given['frame-count'] * given['exposure-time'] +
        (given['frame-count'] - 1) * (given['settling-time'] + given['recycling-time']),
      because: 'That adds the two waits. They run at the same time: the longer one decides.',
    },
    {
      id: 'one-wait-too-many',
      value: (given) =>
        given['frame-count'] * (given['exposure-time'] + Math.max(given['settling-time'], given['recycling-time'])),
      because: 'That waits once more after the last frame. Between {frame-count} frames there is one wait fewer.',
    },
    {
      id: 'waits-forgotten',
      value: (given) => given['frame-count'] * given['exposure-time'],
      because: 'That counts the exposures alone. Most of the time goes in between them.',
    },
  ],
  hint: 'How many waits lie between that many frames, and which of the two takes longer?',
  working: [{ formula: stackTimeFormula, note: 'Exposures, and between them the longer wait:' }],
});

const deadline = numberFamily({
  id: 'before-it-melts',
  asks: 'frame-count',
  question:
    'A frost crystal will hold for {time-limit}. Each frame takes {exposure-time}. In between the rail needs {settling-time} to come to rest, and the flash, at the same time, {recycling-time} to recharge. How many frames are finished in time?',
  givens: (draw) => ({
    'time-limit': draw.pick([20, 30, 45, 60]),
    'exposure-time': draw.pick([0.5, 1]),
    'settling-time': draw.pick([1.8, 2.3, 3.1]),
    'recycling-time': draw.pick([0.7, 1.2]),
  }),
  tolerance: { absolute: 0.4, because: 'frames are counted whole' },
  mistakes: [
    {
      id: 'exposures-alone',
      value: (given) => Math.floor(given['time-limit'] / given['exposure-time']),
      because: 'That leaves no time for the rail. Between any two frames {settling-time} go by.',
    },
    {
      id: 'waits-added',
      value: (given) => inTime({ ...given, 'settling-time': given['settling-time'] + given['recycling-time'] }),
      because:
        'That waits for the rail and then for the flash. They go on at the same time, so the longer wait is enough.',
    },
    {
      id: 'unfinished-frame',
      value: (given) => inTime(given) + 1,
      because:
        'The last of these would not be finished: the crystal is gone before its exposure ends. Half a frame is no frame.',
    },
  ],
  hint: 'Think of the last frame as having a wait after it as well, give that wait to the time there is, and divide.',
  working: [
    {
      formula: framesBeforeDeadlineFormula,
      note: 'The wait after the last frame costs nothing, so it is added to the time:',
    },
  ],
});

function inTime(
  given: Readonly<Record<'time-limit' | 'exposure-time' | 'settling-time' | 'recycling-time', number>>,
): number {
  return evaluateFormula(framesBeforeDeadlineFormula, given);
}

const tilted = numberFamily({
  id: 'a-tilted-stamp',
  asks: 'subject-depth',
  question:
    'A flat stamp, {subject-width} long, is tilted by {subject-tilt} to the sensor. How deep is the stack that it needs?',
  givens: (draw) => ({
    'subject-width': draw.pick([18, 22, 25, 30]),
    'subject-tilt': draw.pick([10, 15, 20, 25]) * degree,
  }),
  tolerance: { relative: 0.01, because: 'so that a tangent does not pass for a sine' },
  mistakes: [
    {
      id: 'cosine',
      value: (given) => given['subject-width'] * Math.cos(given['subject-tilt']),
      because: 'That is how long it looks from the camera. Depth is the other side of the triangle.',
    },
    {
      id: 'tangent',
      value: (given) => given['subject-width'] * Math.tan(given['subject-tilt']),
      because:
        'That takes {subject-width} as the side across the picture. It is the length along the slope: a sine, not a tangent.',
    },
    {
      id: 'flat-is-flat',
      value: () => 0,
      because:
        'Flat it is, but not parallel to the sensor: one end is nearer. Turned square to the camera it would need one frame.',
    },
  ],
  hint: 'Draw the stamp from the side. Which side of the right-angled triangle points along the axis?',
  working: [{ formula: subjectDepthOfTiltFormula, note: 'The depth is the side opposite the angle:' }],
});

type Move = 'rail' | 'ring' | 'square';

// prettier-ignore
const cases: readonly (readonly [scene: string, truth: Move, tempting: Move])[] = [
  ['With a lens on a bellows, turning the ring hardly moves the sharp plane', 'rail', 'ring'],
  ['With a lens that moves as a whole, the sharp plane will not go further in, however you turn the ring', 'rail', 'ring'],
  ['The reversed lens has no ring that does anything', 'rail', 'ring'],
  ['The subject is a flat engraving, a little aslant under the camera', 'square', 'rail'],
  ['The subject is a pressed leaf between two panes, held at an angle', 'square', 'ring'],
];
/** Far below life size the same question has another answer. */
const gardens = ['a flower bed', 'a row of mushrooms', 'a hedge in frost'];

const whichWay = choiceFamily({
  id: 'rail-ring-or-neither',
  question: '{scene}. You work at {magnification}. What do you move to have all of it sharp?',
  givens: (draw) => {
    if (draw.pick([0, 1, 2]) === 0) {
      const scene = `You want ${draw.pick(gardens)} sharp through a depth of ${draw.pick([150, 200, 300])} mm, and the rail is 100 mm long`;
      return { scene, truth: 'ring' as const, tempting: 'rail' as const, magnification: draw.pick([0.05, 0.08, 0.1]) };
    }
    const [scene, truth, tempting] = draw.pick(cases);
    return { scene, truth, tempting, magnification: draw.pick([1, 1.5, 2, 3]) };
  },
  options: {
    rail: 'The camera, on a rail',
    ring: 'The focus ring',
    square: 'The camera, once, so that it stands square to the subject',
  },
  answer: (given) => given.truth,
  mistakes: [
    {
      id: 'ring-near-life-size',
      value: ({ truth }) => (truth === 'rail' ? 'ring' : undefined),
      because:
        'Ask what turning it does here, at {magnification}: does it move the sharp plane through the subject, or does it change the size most of all?',
    },
    {
      id: 'rail-in-a-garden',
      value: ({ truth }) => (truth === 'ring' ? 'rail' : undefined),
      because:
        'Ask how far that would have to move: as far as the subject is deep. How long is the rail? And what moves the sharp plane easily at {magnification}?',
    },
    {
      id: 'flat-and-thought-deep',
      value: ({ truth }) => (truth === 'square' ? 'rail' : undefined),
      because:
        'Many frames would do it. But is the subject as deep as it looks from here, or does it only stand at an angle?',
    },
    {
      id: 'ring-for-what-stands-at-an-angle',
      value: ({ truth }) => (truth === 'square' ? 'ring' : undefined),
      because:
        'That would have to sweep from the near side to the far side. Look at the shape of the subject: does it have to have a near side at all?',
    },
    {
      id: 'deep-and-thought-flat',
      value: ({ truth }) => (truth === 'square' ? undefined : 'square'),
      because: 'That takes away depth that comes from standing at an angle, and only that. Is this subject flat?',
    },
  ],
  hint: 'First: is the subject flat? Then: is it near life size or far below it?',
  working: [
    {
      note: 'Turn a flat subject square to the camera. Near life size and beyond, move the camera: the ring changes size more than it moves the sharp plane. Far below life size turn the ring: it covers any depth, and the size hardly changes.',
    },
  ],
});

export const families = [step, howMany, howLong, deadline, tilted, whichWay] as const;
