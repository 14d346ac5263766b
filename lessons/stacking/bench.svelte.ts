import { edgeShift } from '#core/stack/edge-shift.formula.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { focusRingPlan, type FocusedFrame } from '#core/stack/focus-ring-plan.ts';
import { framesInTime } from '#core/stack/frames-in-time.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { railPlan } from '#core/stack/rail-plan.ts';
import { scaleBetweenFocusSettings } from '#core/stack/scale-between-focus-settings.ts';
import { scaleChangeOnRail } from '#core/stack/scale-change-on-rail.formula.ts';
import { stackTime } from '#core/stack/stack-time.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { answerOr, valueOf, type Answer } from '#site/state/answer.ts';
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

/** A stack of more frames is still counted on the rail, but not frame by frame on the ring, and is not drawn. */
export const mostOnRing = 400;

type Givens = Readonly<Record<Given, number>>;

/** The optics of the lesson, for the bench and for figures that ask what other numbers would do: the stack on the rail, and that on the ring. */
export function stacking(given: Givens) {
  const seen = seenThrough(given);
  const { near, far } = seen;
  const isOne = far === Infinity;
  const rail = isOne ? oneForAll : onRail(given, seen);
  const ring = isOne ? oneForAll : onRing(given, rail['frame-count']);
  return {
    ...rail,
    ...inTime(given, rail['frame-count']),
    ...forRing({ ...ring, ...inTime(given, ring['frame-count']) }),
    'depth-of-field': isOne ? { value: Infinity, words: '∞, no end' } : near + far,
    'near-limit': near,
    'far-limit': isOne ? { value: Infinity, words: '∞, no limit' } : far,
    'effective-f-number': seen.effectiveFNumber,
    'entrance-pupil': seen.entrancePupil,
    'entrance-pupil-distance': seen.entrancePupilDistance,
  };
}

type ForRing<Answers> = { [Name in keyof Answers as `focus-ring.${string & Name}`]: Answers[Name] };

/** Answers under names that say that they are the ring's. */
function forRing<Answers extends object>(answers: Answers): ForRing<Answers> {
  const named = Object.entries(answers).map(([name, answer]) => [`focus-ring.${name}`, answer as Answer] as const);
  return Object.fromEntries(named) as ForRing<Answers>;
}

/** How the lens sees the first frame’s sharp plane, and how far before it and behind it that frame is sharp, mm. */
function seenThrough(given: Givens) {
  const lens = lensOf(given);
  const cone = {
    ...lens,
    effectiveFNumber: effectiveFNumber(lens),
    entrancePupil: entrancePupil(lens),
    entrancePupilDistance: entrancePupilDistance(lens),
  };
  return { ...cone, near: nearLimit(cone), far: farLimit(cone) };
}

function lensOf(given: Givens) {
  return {
    focalLength: given['focal-length'],
    fNumber: given['f-number'],
    magnification: given.magnification,
    pupilMagnification: given['pupil-magnification'],
    circleOfConfusion: given['circle-of-confusion'],
  };
}

/** Where the depth of field has no end there is nothing to stack. */
const none: Answer = { words: 'none: one frame shows it all' };
const oneForAll = { 'frame-step': none, 'frame-count': 1, 'stack-travel': 0, 'scale-change': none, 'edge-shift': none };

function railOf(given: Givens, { near, far }: { readonly near: number; readonly far: number }) {
  const subject = { subjectDepth: given['subject-depth'], overlap: given.overlap };
  return railPlan({ nearLimit: near, farLimit: far, ...subject });
}

function onRail(given: Givens, seen: ReturnType<typeof seenThrough>) {
  const { frameStep, frameCount, travel } = railOf(given, seen);
  const change = answerOr('none: the subject would reach the lens', () =>
    scaleChangeOnRail({ frameStep, entrancePupilDistance: seen.entrancePupilDistance }),
  );
  return {
    'frame-step': frameStep,
    'frame-count': frameCount,
    'stack-travel': travel,
    'scale-change': change,
    'edge-shift': shiftOf(given, change),
  };
}

/** The stack on the focus ring, whose frames number some as many as *onRail*. The camera stands; the steps are as uneven as the depths. */
function onRing(given: Givens, onRail: number) {
  const frames = onRail > mostOnRing ? [] : ringFrames(given);
  const [first, second] = frames;
  if (!first) {
    const no: Answer = { words: onRail > mostOnRing ? 'not counted: too many' : 'none: the ring cannot reach it' };
    return { 'frame-step': no, 'frame-count': no, 'stack-travel': no, 'scale-change': no, 'edge-shift': no };
  }
  const stack = { 'frame-count': frames.length, 'stack-travel': still };
  if (!second) return { ...stack, 'frame-step': none, 'scale-change': none, 'edge-shift': none };
  const steps = stepsBetween(frames);
  const [least, most] = [Math.min(...steps), Math.max(...steps)].map((step) => printQuantity('frame-step', step));
  const change = answerOr('none: the lens would reach the subject', () =>
    Math.abs(
      scaleBetweenFocusSettings({
        ...lensOf(given),
        first: first.magnification,
        second: second.magnification,
      }) - 1,
    ),
  );
  return {
    ...stack,
    'frame-step': { words: least === most ? least! : `${least} to ${most}` },
    'scale-change': change,
    'edge-shift': shiftOf(given, change),
  };
}

const still: Answer = { value: 0, words: 'none: the camera stands still' };

function shiftOf(given: Givens, change: Answer): Answer {
  if (typeof change !== 'number') return change;
  return edgeShift({ sensorWidth: given['sensor-width'], pixelPitch: given['pixel-pitch'], scaleChange: change });
}

/** How long the frames take and how many are finished by the deadline. */
function inTime(given: Givens, frames: Answer) {
  const count = valueOf(frames);
  if (count === undefined) return { 'stack-time': frames, 'in-time.frame-count': frames };
  const pace = {
    exposureTime: given['exposure-time'],
    settlingTime: given['settling-time'],
    recyclingTime: given['recycling-time'],
  };
  const taken = Math.min(count, framesInTime(pace, given['time-limit']));
  const words =
    taken < count ? `${printQuantity('frame-count', taken)} of ${printQuantity('frame-count', count)}` : 'all of them';
  return { 'stack-time': stackTime({ ...pace, frameCount: count }), 'in-time.frame-count': { value: taken, words } };
}

/** The frames on the focus ring; none where it cannot bring the sharp plane through the whole subject. */
function ringFrames(given: Givens): readonly FocusedFrame[] {
  try {
    return focusRingPlan({ ...lensOf(given), subjectDepth: given['subject-depth'], overlap: given.overlap });
  } catch (error) {
    if (error instanceof OutOfRange) return [];
    throw error;
  }
}

/** A frame's sharp slab, mm from the nearest part of the subject. */
export interface Slab {
  readonly near: number;
  readonly plane: number;
  readonly far: number;
}

/** How far the sharp plane goes from each frame to the next, mm. */
export function stepsBetween(frames: readonly Slab[]): readonly number[] {
  return frames.slice(1).map(({ plane }, index) => plane - frames[index]!.plane);
}

/** The slabs of the stack as it is taken, by rail or by ring; none where there are more than can be drawn, or no stack at all. */
export function slabsOf(given: Givens, by: string | undefined): readonly Slab[] {
  const seen = seenThrough(given);
  const { near, far } = seen;
  if (far === Infinity) return [];
  const { frameCount, frameStep } = railOf(given, seen);
  if (frameCount > mostOnRing) return [];
  if (by === 'focus-ring')
    return ringFrames(given).map((frame) => ({ ...frame, far: Math.min(frame.far, given['subject-depth']) }));
  return Array.from({ length: frameCount }, (_, index) => {
    const plane = near + index * frameStep;
    return { near: plane - near, plane, far: plane + far };
  });
}
