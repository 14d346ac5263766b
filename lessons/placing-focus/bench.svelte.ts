import { depthOfFieldFormula } from '#core/depth/depth-of-field.formula.ts';
import { fNumberForDepthFormula } from '#core/depth/f-number-for-depth.formula.ts';
import { farLimitFormula } from '#core/depth/far-limit.formula.ts';
import { focusOffsetOfTurnFormula } from '#core/depth/focus-offset-of-turn.formula.ts';
import { nearLimitFormula } from '#core/depth/near-limit.formula.ts';
import { sharpWidthOfTiltFormula } from '#core/depth/sharp-width-of-tilt.formula.ts';
import { subjectDepthOfTiltFormula } from '#core/depth/subject-depth-of-tilt.formula.ts';
import { keeperFramesFormula } from '#core/exposure/keeper-frames.formula.ts';
import { keeperShareFormula } from '#core/exposure/keeper-share.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { under } from '#core/quantity/answers-from.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { degree } from '#core/quantity/units.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies } from '#site/state/crate.ts';
import { holdings } from '#site/state/crate-light.ts';
import { lensAt, lensHeld } from '#site/state/lens-in-use.ts';
import { leaning, ofLens } from './figures/gear.ts';

const { magnification, ...eyes } = leaning.eyes;
/** As whole numbers, more is no number to plan with. */
const most = quantityOf('keeper-frames').most;
/** Where a share is printed as all or as nothing and is neither. */
const [hardlyAny, nearlyAll] = [0.0001, 0.9995];

export const bench = new Bench({
  inputs: {
    ...startsOf(eyes, ['subject-tilt', 'subject-width']),
    magnification,
    'f-number': 8,
    ...startsOf(holdings.hand, ['sway']),
    'focus-offset': 0,
    ...startsOf(lensAt('lens-90', magnification), ofLens),
    ...startsOf(bodies['body-36'], ['sensor-width', 'pixel-pitch', 'circle-of-confusion']),
    'turn-angle': 5 * degree,
  },
  choices: {
    subject: choiceOf('Subject', leaning, ['magnification', 'subject-width', 'subject-tilt']),
    holding: choiceOf('Holding', holdings, ['sway']),
    lens: lensHeld(ofLens),
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
    subjectDepthOfTiltFormula,
    sharpWidthOfTiltFormula,
    ...under('needed', [fNumberForDepthFormula]),
    keeperShareFormula,
    keeperFramesFormula,
    ...under('turned', [focusOffsetOfTurnFormula]),
  ],
  words: {
    'depth-of-field': { infinite: '∞, no far end' },
    'far-limit': { infinite: '∞, everything behind is sharp' },
    'sharp.subject-width': (value, known) =>
      value !== undefined && value === known['subject-width']
        ? `all ${printQuantity('subject-width', value)}`
        : undefined,
    'needed.f-number': (value) => (value === 0 ? 'any, it has no depth' : undefined),
    'keeper-share': (value) => {
      if (value === undefined || value === 1) return undefined;
      return value < hardlyAny ? 'under 0.01 %' : value > nearlyAll ? 'over 99.9 %' : undefined;
    },
    'keeper-frames': (value) =>
      value === undefined ? 'no number is enough' : value > most ? 'over 10 000: aim first' : undefined,
  },
});
