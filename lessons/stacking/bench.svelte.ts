import { edgeShift } from '#core/depth/edge-shift.formula.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { focusRingPlan } from '#core/depth/focus-ring-plan.ts';
import { framesInTime } from '#core/depth/frames-in-time.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { railPlan } from '#core/depth/rail-plan.ts';
import { scaleChangeOnRail } from '#core/depth/scale-change-on-rail.formula.ts';
import { stackTime } from '#core/depth/stack-time.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { answerOr, type Answer } from '#site/state/answer.ts';
import { Bench, choiceOf, keptChoice } from '#site/state/bench.svelte.ts';
import { bodies, lenses } from '#site/state/crate.ts';
import { subjects } from './figures/subjects.ts';

const body = bodies['body-36'];
const lens = lenses['lens-90'];
const subject = subjects['frost-crystal'];

const starts = {
  magnification: lens['focus-magnification'],
  'f-number': 5.6,
  overlap: 0.25,
  'subject-depth': subject['subject-depth'],
  'exposure-time': 0.5,
  'settling-time': 3,
  'recycling-time': 0,
  'time-limit': subject['time-limit'],
  'circle-of-confusion': 0.02,
  'focal-length': lens['focal-length'],
  'pupil-magnification': lens['pupil-magnification'],
  'sensor-width': body['sensor-width'],
  'pixel-pitch': body['pixel-pitch'],
};

type Given = keyof typeof starts;

export const bench = new Bench({
  inputs: starts,
  choices: {
    subject: { ...choiceOf('Subject', subjects, ['subject-depth', 'time-limit']), kept: true },
    by: keptChoice('Sharp plane moved by', {
      rail: 'moving the camera on a rail',
      'focus-ring': 'turning the focus ring',
    }),
    shown: keptChoice('Picture of', {
      merged: 'all frames taken, merged',
      first: 'the first frame alone',
      middle: 'a frame from the middle alone',
    }),
    lens: choiceOf('Lens', lenses, ['focal-length', 'pupil-magnification']),
    sensor: choiceOf('Camera', bodies, ['sensor-width', 'pixel-pitch']),
  },
  compute: stacking,
});

/** A stack of more frames is still counted, but not frame by frame on the ring. */
export const mostOnRing = 400;

/** The optics of the lesson, for the bench and for figures that ask what other numbers would do. */
export function stacking(given: Readonly<Record<Given, number>>) {
  const cone = coneOf(given);
  const near = nearLimit(cone);
  const far = farLimit(cone);
  const depth = near + far;
  const stack = far === Infinity ? oneForAll : onRail({ ...given, ...cone, near, far });
  const count = stack['frame-count'];
  const pace = {
    exposureTime: given['exposure-time'],
    settlingTime: given['settling-time'],
    recyclingTime: given['recycling-time'],
  };
  const taken = Math.min(count, framesInTime(pace, given['time-limit']));
  return {
    ...stack,
    'focus-ring.frame-count':
      far === Infinity ? 1 : count > mostOnRing ? { words: 'not counted: too many' } : onRing(given),
    'depth-of-field': depth < Infinity ? depth : { value: Infinity, words: '∞, no end' },
    'near-limit': near,
    'far-limit': far < Infinity ? far : { value: Infinity, words: '∞, no limit' },
    'effective-f-number': cone.effectiveFNumber,
    'entrance-pupil-distance': cone.entrancePupilDistance,
    'stack-time': stackTime({ ...pace, frameCount: count }),
    'in-time.frame-count':
      taken < count
        ? { value: taken, words: `${printQuantity('frame-count', taken)} of ${printQuantity('frame-count', count)}` }
        : { value: taken, words: 'all of them' },
  };
}

function coneOf(given: Readonly<Record<Given, number>>) {
  const lens = {
    focalLength: given['focal-length'],
    fNumber: given['f-number'],
    magnification: given.magnification,
    pupilMagnification: given['pupil-magnification'],
  };
  return {
    circleOfConfusion: given['circle-of-confusion'],
    magnification: given.magnification,
    effectiveFNumber: effectiveFNumber(lens),
    entrancePupil: entrancePupil(lens),
    entrancePupilDistance: entrancePupilDistance(lens),
  };
}

/** Where the depth of field has no end there is nothing to stack. */
const none: Answer = { words: 'none: one frame shows it all' };
const oneForAll = { 'frame-step': none, 'frame-count': 1, 'stack-travel': 0, 'scale-change': none, 'edge-shift': none };

function onRail(given: Readonly<Record<Given, number>> & { near: number; far: number; entrancePupilDistance: number }) {
  const plan = railPlan({
    nearLimit: given.near,
    farLimit: given.far,
    subjectDepth: given['subject-depth'],
    overlap: given.overlap,
  });
  const change = answerOr('none: the subject would reach the lens', () =>
    scaleChangeOnRail({ frameStep: plan.frameStep, entrancePupilDistance: given.entrancePupilDistance }),
  );
  return {
    'frame-step': plan.frameStep,
    'frame-count': plan.frameCount,
    'stack-travel': plan.travel,
    'scale-change': change,
    'edge-shift':
      typeof change === 'number'
        ? edgeShift({ sensorWidth: given['sensor-width'], pixelPitch: given['pixel-pitch'], scaleChange: change })
        : change,
  };
}

function ringStack(given: Readonly<Record<Given, number>>) {
  return focusRingPlan({
    focalLength: given['focal-length'],
    fNumber: given['f-number'],
    pupilMagnification: given['pupil-magnification'],
    circleOfConfusion: given['circle-of-confusion'],
    magnification: given.magnification,
    subjectDepth: given['subject-depth'],
    overlap: given.overlap,
  });
}

function onRing(given: Readonly<Record<Given, number>>): Answer {
  return answerOr('none: the ring cannot reach it', () => ringStack(given).length);
}

/** A frame's sharp slab, mm from the nearest part of the subject. */
export interface Slab {
  readonly near: number;
  readonly plane: number;
  readonly far: number;
}

/** The slabs of the stack as it is taken, by rail or by ring; none where there are more than can be drawn, or no stack at all. */
export function slabsOf(given: Readonly<Record<Given, number>>, by: string | undefined): readonly Slab[] {
  const cone = coneOf(given);
  const [near, far] = [nearLimit(cone), farLimit(cone)];
  if (far === Infinity) return [];
  const { frameCount, frameStep } = railPlan({
    nearLimit: near,
    farLimit: far,
    subjectDepth: given['subject-depth'],
    overlap: given.overlap,
  });
  if (frameCount > mostOnRing) return [];
  if (by !== 'focus-ring')
    return Array.from({ length: frameCount }, (_, index) => {
      const plane = near + index * frameStep;
      return { near: plane - near, plane, far: plane + far };
    });
  let frames: readonly Slab[] = [];
  answerOr('', () => (frames = ringStack(given)).length);
  return frames;
}
