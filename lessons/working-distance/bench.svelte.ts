import { backgroundBlurFormula } from '#core/depth/background-blur.formula.ts';
import { backgroundWidthFormula } from '#core/depth/background-width.formula.ts';
import { angleOfViewFormula } from '#core/gaussian/angle-of-view.formula.ts';
import { entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { extensionForMagnificationFormula } from '#core/gaussian/extension-for-magnification.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { focalLengthForWorkingDistanceFormula } from '#core/gaussian/focal-length-for-working-distance.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { lensShadowFormula } from '#core/light/lens-shadow.formula.ts';
import { under } from '#core/quantity/answers-from.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { bodies } from '#site/state/crate.ts';
import { roomInWords } from '#site/state/edges.ts';
import { lensAt, lensHeld, ofLens } from '#site/state/lens-in-use.ts';
import { animals } from './figures/gear.ts';

const half = 0.5;
const start = lensAt('lens-50', half);

export const bench = new Bench({
  inputs: {
    magnification: half,
    ...startsOf(animals.hoverfly, ['flight-distance']),
    ...startsOf(start, ofLens),
    'f-number': 5.6,
    // A slider in even steps that are still fine close by; past it a background blurs hardly more.
    'background-distance': { start: 500, most: 20_000 },
    ...startsOf(bodies['body-36'], ['sensor-width']),
  },
  choices: {
    lens: lensHeld(ofLens),
    animal: choiceOf('Animal', animals, ['flight-distance']),
    sensor: choiceOf('Camera', bodies, ['sensor-width']),
  },
  formulas: [
    subjectDistanceFormula,
    workingDistanceFormula,
    extensionForMagnificationFormula,
    ...under('shortest', [focalLengthForWorkingDistanceFormula], { 'working-distance': 'flight-distance' }),
    entrancePupilFormula,
    entrancePupilDistanceFormula,
    fieldWidthFormula,
    backgroundWidthFormula,
    backgroundBlurFormula,
    angleOfViewFormula,
    lensShadowFormula,
  ],
  words: {
    'working-distance': roomInWords,
    extension: { none: 'none: its own focusing is enough' },
    'shortest.focal-length': { none: 'any: H is so far in front of the rim' },
    'lens-shadow': { none: 'none: the sharp plane is inside the lens' },
  },
});
