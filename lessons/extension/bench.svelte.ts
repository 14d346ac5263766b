import { depthOfFieldFormula } from '#core/depth/depth-of-field.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { imageDistanceFormula } from '#core/gaussian/image-distance.formula.ts';
import { lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import { magnificationFromExtensionFormula } from '#core/gaussian/magnification-from-extension.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies, lenses } from '#site/state/crate.ts';
import { asGoodAsZero, infinite, noneAtInfinity, roomInWords } from '#site/state/edges.ts';

const ofLens = [
  'focal-length',
  'focus-magnification',
  'front-principal-depth',
  'pupil-magnification',
  'principal-separation',
] as const;

export const bench = new Bench({
  inputs: {
    extension: 24,
    ...startsOf(lenses['lens-50'], ['focal-length', 'focus-magnification', 'f-number', ...ofLens]),
    ...startsOf(bodies['body-36'], ['sensor-width', 'circle-of-confusion']),
  },
  choices: {
    lens: choiceOf('Lens, at its closest focus', lenses, ofLens),
    sensor: choiceOf('Camera', bodies, ['sensor-width']),
    [circleChoice]: circleByBody,
  },
  formulas: [
    magnificationFromExtensionFormula,
    subjectDistanceFormula,
    imageDistanceFormula,
    focusDistanceFormula,
    workingDistanceFormula,
    effectiveFNumberFormula,
    lightLossFormula,
    fieldWidthFormula,
    entrancePupilFormula,
    entrancePupilDistanceFormula,
    depthOfFieldFormula,
  ],
  words: {
    magnification: noneAtInfinity,
    'subject-distance': { infinite },
    'focus-distance': { none: 'none: H and H′ cannot be so far apart here', infinite },
    'working-distance': roomInWords,
    'field-width': { infinite },
    'depth-of-field': { infinite: '∞, no far end' },
  },
  /** No ring on a lens set to infinity: the subject is infinitely far, and the rest follows. */
  edge: ({ magnification = 1, ...known }) =>
    magnification >= asGoodAsZero
      ? undefined
      : {
          magnification: 0,
          'subject-distance': Infinity,
          'image-distance': known['focal-length']!,
          'focus-distance': Infinity,
          'working-distance': Infinity,
          'effective-f-number': known['f-number']!,
          'light-loss': 0,
          'field-width': Infinity,
          'entrance-pupil-distance': Infinity,
          'depth-of-field': Infinity,
        },
});
