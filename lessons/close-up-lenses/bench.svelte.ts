import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { extensionForMagnificationFormula } from '#core/gaussian/extension-for-magnification.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import { subjectDistance, subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { colourBlur, colourBlurFormula } from '#core/rig/colour-blur.formula.ts';
import { colourSpreadOfCloseUpLensFormula } from '#core/rig/colour-spread-of-close-up-lens.formula.ts';
import { effectiveFNumberWithCloseUpLensFormula } from '#core/rig/effective-f-number-with-close-up-lens.formula.ts';
import { magnificationWithCloseUpLensFormula } from '#core/rig/magnification-with-close-up-lens.formula.ts';
import { workingDistanceWithCloseUpLensFormula } from '#core/rig/working-distance-with-close-up-lens.formula.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies } from '#site/state/crate.ts';
import { asGoodAsZero, infinite, roomInWords } from '#site/state/edges.ts';
import { glasses, lensChoices, mostOfGlass, ofLens, ownLenses, powers } from './figures/gear.ts';

/** Where the lens is sharp by itself. */
const ownPlane = step({
  from: ['focal-length', 'focus-magnification'],
  gives: ['main-lens.subject-distance'],
  evaluate: ({ focalLength, focusMagnification }) => ({
    mainLensSubjectDistance:
      focusMagnification < asGoodAsZero
        ? Infinity
        : subjectDistance({ focalLength, magnification: focusMagnification }),
  }),
});

/** Behind the lens, along the axis: the blur that a cone of f/1 would have is as wide as it is long. */
const spreadAtSensor = step({
  from: ['magnification', 'colour-spread'],
  gives: ['sensor.colour-spread'],
  evaluate: (given) => ({ sensorColourSpread: colourBlur({ ...given, effectiveFNumber: 1 }) }),
});

const none = 'none: the lens alone is focused behind the close-up lens';

export const bench = new Bench({
  inputs: {
    ...startsOf(ownLenses['lens-50'], ['focal-length', 'focus-magnification']),
    ...startsOf(powers.four, ['close-up-power']),
    ...startsOf(ownLenses['lens-50'], ['close-up-gap', 'front-principal-depth']),
    'f-number': 8,
    ...startsOf(ownLenses['lens-50'], ['pupil-magnification', 'principal-separation']),
    'abbe-number': { start: glasses.single['abbe-number'], least: 15, most: mostOfGlass },
    ...startsOf(bodies['body-36'], ['sensor-width', 'circle-of-confusion']),
  },
  choices: {
    lens: { ...choiceOf('Lens, set to infinity', lensChoices, ofLens), takes: 'infinity' },
    'close-up': choiceOf('Close-up lenses on it', powers, ['close-up-power']),
    glass: choiceOf('Their glass', glasses, ['abbe-number']),
    sensor: choiceOf('Camera', bodies, ['sensor-width']),
    [circleChoice]: circleByBody,
  },
  formulas: [
    ownPlane,
    magnificationWithCloseUpLensFormula,
    workingDistanceWithCloseUpLensFormula,
    effectiveFNumberWithCloseUpLensFormula,
    lightLossFormula,
    fieldWidthFormula,
    colourSpreadOfCloseUpLensFormula,
    colourBlurFormula,
    spreadAtSensor,
    ...under('ring', [
      extensionForMagnificationFormula,
      subjectDistanceFormula,
      workingDistanceFormula,
      effectiveFNumberFormula,
      lightLossFormula,
    ]),
  ],
  words: {
    magnification: { none },
    'working-distance': { none },
    'main-lens.subject-distance': { infinite },
    'ring.working-distance': roomInWords,
  },
});
