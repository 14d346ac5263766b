import { angleOfViewFarFormula } from '#core/gaussian/angle-of-view-far.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { exitPupilFormula } from '#core/gaussian/exit-pupil.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { focusTravelFormula } from '#core/gaussian/focus-travel.formula.ts';
import { magnificationAtFocusDistanceFormula } from '#core/gaussian/magnification-at-focus-distance.formula.ts';
import { stoppedDownFormula } from '#core/gaussian/stopped-down.formula.ts';
import { workingDistanceFromMarksFormula } from '#core/gaussian/working-distance-from-marks.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { bodies } from '#site/state/crate.ts';
import { roomInWords } from '#site/state/edges.ts';
import { marks } from '#site/state/lens-marks.ts';
import { barrelAt, lensChoice, nearestOf } from './figures/lens-in-hand.ts';

const ofBody = ['register-distance', 'sensor-width'] as const;
const { 'focus-distance': closest } = marks['lens-50'].closest;

export const bench = new Bench({
  inputs: {
    'focus-distance': closest,
    'f-number': 8,
    ...startsOf(marks['lens-50'], ['focal-length', 'max-aperture', 'principal-separation', 'pupil-magnification']),
    'barrel-length': barrelAt('lens-50', closest),
    ...startsOf(bodies['body-36'], ofBody),
  },
  choices: { lens: lensChoice, sensor: choiceOf('Camera', bodies, ofBody) },
  formulas: [
    entrancePupilFormula,
    exitPupilFormula,
    stoppedDownFormula,
    angleOfViewFarFormula,
    magnificationAtFocusDistanceFormula,
    focusTravelFormula,
    fieldWidthFormula,
    workingDistanceFromMarksFormula,
  ],
  words: {
    'stopped-down': (value = 0) =>
      value < -0.05 ? `${printQuantity('stopped-down', -value)} wider than the lens opens` : undefined,
    magnification: (value, known) =>
      value === undefined ? `none: sharp only from ${printQuantity('focus-distance', nearestOf(known))} on` : undefined,
    'working-distance': roomInWords,
  },
});
