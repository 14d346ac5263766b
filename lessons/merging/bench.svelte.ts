import { farLimitFormula } from '#core/depth/far-limit.formula.ts';
import { depthOfFieldFormula } from '#core/depth/depth-of-field.formula.ts';
import { nearLimitFormula } from '#core/depth/near-limit.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { edgeShiftFormula } from '#core/stack/edge-shift.formula.ts';
import { frameCountFormula } from '#core/stack/frame-count.formula.ts';
import { frameStepFormula } from '#core/stack/frame-step.formula.ts';
import { hiddenBandFormula } from '#core/stack/hidden-band.formula.ts';
import { magnificationAfterStep } from '#core/stack/magnification-after-step.ts';
import { scaleBetweenFocusSettings } from '#core/stack/scale-between-focus-settings.ts';
import { scaleChangeOnRailFormula } from '#core/stack/scale-change-on-rail.formula.ts';
import { stackTravelFormula } from '#core/stack/stack-travel.formula.ts';
import { Bench, choiceOf, keptChoice, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies, lenses } from '#site/state/crate.ts';
import { stackable } from '#site/state/subjects.ts';

/** By how much a lens moved as a whole changes the size of a detail while its sharp plane travels from the first frame’s to the last’s. */
const turned = step({
  from: ['focal-length', 'magnification', 'pupil-magnification', 'stack-travel'],
  gives: ['scale-change'],
  evaluate({ stackTravel, ...lens }) {
    const first = lens.magnification;
    const second = magnificationAfterStep({ ...lens, step: stackTravel });
    return { scaleChange: Math.abs(scaleBetweenFocusSettings({ ...lens, first, second }) - 1) };
  },
});

/** What a stack of one frame changes from the first to the last. */
const nothing = { 'whole-stack.scale-change': 0, 'focus-ring.scale-change': 0 };
const reached = 'not possible: the subject would touch the lens';

export const bench = new Bench({
  inputs: {
    magnification: lenses['lens-90']['focus-magnification'],
    'f-number': 5.6,
    overlap: 0.25,
    ...startsOf(stackable['drawing-pin'], ['subject-depth', 'edge-height']),
    ...startsOf(lenses['lens-90'], ['focal-length', 'pupil-magnification']),
    ...startsOf(bodies['body-36'], ['circle-of-confusion', 'sensor-width', 'pixel-pitch']),
  },
  choices: {
    subject: { ...choiceOf('Subject', stackable, ['subject-depth', 'edge-height']), kept: true },
    by: keptChoice('Frames taken by', { rail: 'moving the camera on a rail', 'focus-ring': 'turning the focus ring' }),
    scale: keptChoice('Size of the frames when merged', {
      known: 'corrected as planned',
      estimated: 'corrected by comparing the frames',
      uncorrected: 'not corrected',
    }),
    lost: keptChoice('Frames lost', {
      none: 'none',
      middle: 'one in the middle (the table was bumped)',
      end: 'the last quarter (time ran out)',
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
    ...under('whole-stack', [scaleChangeOnRailFormula, edgeShiftFormula], { 'frame-step': 'stack-travel' }),
    ...under('focus-ring', [turned, edgeShiftFormula]),
    hiddenBandFormula,
  ],
  words: {
    'depth-of-field': { infinite: '∞: no far end' },
    'frame-step': { none: 'none: one frame is enough' },
    'scale-change': { none: reached },
    'whole-stack.scale-change': { none: reached },
    'focus-ring.scale-change': { none: 'not possible: the lens would touch the subject' },
    'hidden-band': { none: 'none: an edge so high would be inside the lens' },
  },
  /** A depth of field without end needs no stack, and one frame moves nothing. */
  edge: (known) => {
    if (known['depth-of-field'] === Infinity) return { 'frame-count': 1, 'stack-travel': 0, ...nothing };
    return known['stack-travel'] === 0 ? nothing : undefined;
  },
});

/** The frames that are missing from a stack of *count*, counted from 0. */
export function lostFrames(lost: string | undefined, count: number): readonly number[] {
  if (count < 2 || lost === 'none') return [];
  if (lost === 'middle') return [count >> 1];
  const left = Math.ceil(0.75 * count);
  return Array.from({ length: count - left }, (_, index) => left + index);
}
