import { depthOfFieldFormula } from '#core/depth/depth-of-field.formula.ts';
import { farLimitFormula } from '#core/depth/far-limit.formula.ts';
import { nearLimitFormula } from '#core/depth/near-limit.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { edgeShiftFormula } from '#core/stack/edge-shift.formula.ts';
import { frameCountFormula } from '#core/stack/frame-count.formula.ts';
import { frameStepFormula } from '#core/stack/frame-step.formula.ts';
import { framesBeforeDeadline, framesBeforeDeadlineFormula } from '#core/stack/frames-before-deadline.formula.ts';
import { scaleChangeOnRailFormula } from '#core/stack/scale-change-on-rail.formula.ts';
import { stackTimeFormula } from '#core/stack/stack-time.formula.ts';
import { stackTravelFormula } from '#core/stack/stack-travel.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { Bench, choiceOf, keptChoice, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies, lenses } from '#site/state/crate.ts';
import { mostOnRing, onRing, turnedOnce } from './figures/slabs.ts';
import { subjects } from './figures/subjects.ts';

/** How many of the frames are finished by the deadline. */
const inTime = step({
  from: ['frame-count', ...framesBeforeDeadlineFormula.from],
  gives: ['in-time.frame-count'],
  evaluate: ({ frameCount, ...given }) => ({ inTimeFrameCount: Math.min(frameCount, framesBeforeDeadline(given)) }),
});

const printCount = (count: number) => printQuantity('frame-count', count);
const ofAll = (taken: number | undefined, all: number) =>
  taken! < all ? `${printCount(taken!)} of ${printCount(all)}` : 'all of them';

const oneFrame = { none: 'none: one frame is enough' };

export const bench = new Bench({
  inputs: {
    magnification: lenses['lens-90']['focus-magnification'],
    'f-number': 5.6,
    overlap: 0.25,
    ...startsOf(subjects['frost-crystal'], ['subject-depth']),
    'exposure-time': 0.5,
    'settling-time': 3,
    'recycling-time': 0,
    ...startsOf(subjects['frost-crystal'], ['time-limit']),
    ...startsOf(lenses['lens-90'], ['focal-length', 'pupil-magnification']),
    ...startsOf(bodies['body-36'], ['circle-of-confusion', 'sensor-width', 'pixel-pitch']),
  },
  choices: {
    subject: { ...choiceOf('Subject', subjects, ['subject-depth', 'time-limit']), kept: true },
    by: keptChoice('Focus moved by', {
      rail: 'moving the camera on a rail',
      'focus-ring': 'turning the focus ring',
    }),
    shown: keptChoice('Show', {
      merged: 'all finished frames, merged',
      first: 'the first frame',
      middle: 'one frame from the middle',
    }),
    lens: choiceOf('Lens', lenses, ['focal-length', 'pupil-magnification']),
    sensor: choiceOf('Camera', bodies, ['sensor-width', 'pixel-pitch']),
    [circleChoice]: circleByBody,
  },
  formulas: [
    effectiveFNumberFormula,
    entrancePupilFormula,
    entrancePupilDistanceFormula,
    nearLimitFormula,
    farLimitFormula,
    depthOfFieldFormula,
    frameStepFormula,
    frameCountFormula,
    stackTravelFormula,
    scaleChangeOnRailFormula,
    edgeShiftFormula,
    stackTimeFormula,
    inTime,
    ...under('focus-ring', [onRing, turnedOnce, edgeShiftFormula, stackTimeFormula, inTime]),
  ],
  words: {
    'depth-of-field': { infinite: '∞: no far end' },
    'far-limit': { infinite: '∞: everything behind is sharp' },
    'frame-step': oneFrame,
    'scale-change': { none: 'not possible: the subject would touch the lens' },
    'in-time.frame-count': (taken, known) => ofAll(taken, known['frame-count']!),
    'focus-ring.frame-count': (count, known) => {
      if (count !== undefined) return;
      return known['frame-count']! > mostOnRing ? 'too many to count' : 'not possible: the ring cannot reach it';
    },
    'focus-ring.frame-step': (_, known) => {
      const ends = (['least', 'most'] as const).map((end) => known[`focus-ring.${end}.frame-step`]);
      if (ends[0] === undefined) return oneFrame.none;
      const [least, most] = ends.map((length) => printQuantity('frame-step', length!));
      return least === most ? least : `${least} to ${most}`;
    },
    'focus-ring.second.magnification': oneFrame,
    'focus-ring.stack-travel': (_, known) =>
      known['depth-of-field'] === Infinity ? undefined : 'none: the camera stands still',
    'focus-ring.scale-change': { none: 'not possible: the lens would touch the subject' },
    'focus-ring.in-time.frame-count': (taken, known) => ofAll(taken, known['focus-ring.frame-count']!),
  },
  /** A depth of field without end needs no stack. */
  edge: (known) => (known['depth-of-field'] === Infinity ? { 'frame-count': 1, 'stack-travel': 0 } : undefined),
});
