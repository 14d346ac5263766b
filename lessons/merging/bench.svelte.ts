import { edgeShift } from '#core/stack/edge-shift.formula.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { hiddenBand } from '#core/stack/hidden-band.formula.ts';
import { magnificationAfterStep } from '#core/stack/magnification-after-step.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { railPlan, type RailPlan } from '#core/stack/rail-plan.ts';
import { scaleBetweenFocusSettings } from '#core/stack/scale-between-focus-settings.ts';
import { scaleChangeOnRail } from '#core/stack/scale-change-on-rail.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { answerOr, valueOf, type Answer } from '#site/state/answer.ts';
import { Bench, choiceOf, keptChoice } from '#site/state/bench.svelte.ts';
import { bodies, lenses } from '#site/state/crate.ts';
import { subjects } from './figures/subjects.ts';

const body = bodies['body-36'];
const lens = lenses['lens-90'];
const subject = subjects['drawing-pin'];

const starts = {
  magnification: lens['focus-magnification'],
  'f-number': 5.6,
  overlap: 0.25,
  'subject-depth': subject['subject-depth'],
  'edge-height': subject['edge-height'],
  'circle-of-confusion': 0.03,
  'focal-length': lens['focal-length'],
  'pupil-magnification': lens['pupil-magnification'],
  'sensor-width': body['sensor-width'],
  'pixel-pitch': body['pixel-pitch'],
};

type Given = keyof typeof starts;

export const bench = new Bench({
  inputs: starts,
  choices: {
    subject: { ...choiceOf('Subject', subjects, ['subject-depth', 'edge-height']), kept: true },
    by: keptChoice('Frames taken by', { rail: 'moving the camera on a rail', 'focus-ring': 'turning the focus ring' }),
    scale: keptChoice('Scale of the frames, when merged', {
      known: 'set right from the plan',
      estimated: 'set right by comparing the frames',
      uncorrected: 'left as it is',
    }),
    lost: keptChoice('Frames lost', {
      none: 'none',
      middle: 'one in the middle, to a knock',
      end: 'the last quarter, to a deadline',
    }),
    lens: choiceOf('Lens', lenses, ['focal-length', 'pupil-magnification']),
    sensor: choiceOf('Camera', bodies, ['sensor-width', 'pixel-pitch']),
  },
  compute: merging,
});

/** The optics of the lesson, for the bench and for figures that ask what other numbers would do. */
export function merging(given: Readonly<Record<Given, number>>) {
  const { magnification, overlap } = given;
  const lens = {
    focalLength: given['focal-length'],
    fNumber: given['f-number'],
    magnification,
    pupilMagnification: given['pupil-magnification'],
  };
  const sensor = { sensorWidth: given['sensor-width'], pixelPitch: given['pixel-pitch'] };
  const cone = {
    circleOfConfusion: given['circle-of-confusion'],
    magnification,
    entrancePupil: entrancePupil(lens),
    entrancePupilDistance: entrancePupilDistance(lens),
  };
  const near = nearLimit(cone);
  const far = farLimit(cone);
  /** What a change of scale comes to in pixels, where there is one. */
  const shift = (change: Answer): Answer => {
    const scaleChange = valueOf(change);
    return scaleChange === undefined ? change : edgeShift({ ...sensor, scaleChange });
  };
  const onRail = (step: number) =>
    answerOr('the subject would reach the lens', () =>
      scaleChangeOnRail({ frameStep: step, entrancePupilDistance: cone.entrancePupilDistance }),
    );
  const stack =
    far === Infinity
      ? single
      : stackOf(railPlan({ nearLimit: near, farLimit: far, subjectDepth: given['subject-depth'], overlap }), onRail);
  const { 'stack-travel': travel } = stack;
  const byRing = travel === 0 ? 0 : answerOr('the lens would reach the subject', () => ringChange(lens, travel));
  return {
    ...stack,
    'near-limit': near,
    'depth-of-field': far === Infinity ? { value: Infinity, words: '∞, no end' } : near + far,
    'effective-f-number': effectiveFNumber(lens),
    'entrance-pupil': cone.entrancePupil,
    'entrance-pupil-distance': cone.entrancePupilDistance,
    'edge-shift': shift(stack['scale-change']),
    'whole-stack.edge-shift': shift(stack['whole-stack.scale-change']),
    'focus-ring.scale-change': byRing,
    'focus-ring.edge-shift': shift(byRing),
    'hidden-band': answerOr('an edge so high would be inside the lens', () =>
      hiddenBand({ ...cone, edgeHeight: given['edge-height'] }),
    ),
  };
}

/** A depth of field without end needs no stack. */
const oneFrame: Answer = { words: 'one frame shows it all' };
const single = {
  'frame-step': oneFrame,
  'frame-count': 1,
  'stack-travel': 0,
  'scale-change': oneFrame,
  'whole-stack.scale-change': 0,
};

function stackOf(plan: RailPlan, onRail: (step: number) => Answer) {
  return {
    'frame-step': plan.frameStep,
    'frame-count': plan.frameCount,
    'stack-travel': plan.travel,
    'scale-change': onRail(plan.frameStep),
    'whole-stack.scale-change': plan.travel === 0 ? 0 : onRail(plan.travel),
  };
}

/** By how much a lens moved as a whole changes the size of a detail while its sharp plane travels from the first frame’s to the last’s. */
function ringChange(lens: { focalLength: number; magnification: number; pupilMagnification: number }, travel: number) {
  const first = lens.magnification;
  const second = magnificationAfterStep({ ...lens, step: travel });
  return Math.abs(scaleBetweenFocusSettings({ ...lens, first, second }) - 1);
}

/** The frames that are missing from a stack of *count*, counted from 0. */
export function lostFrames(lost: string | undefined, count: number): readonly number[] {
  if (count < 2 || lost === 'none') return [];
  if (lost === 'middle') return [count >> 1];
  const left = Math.ceil(0.75 * count);
  return Array.from({ length: count - left }, (_, index) => left + index);
}
