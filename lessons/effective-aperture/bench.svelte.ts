import { correctedExposureTimeFormula } from '#core/exposure/corrected-exposure-time.formula.ts';
import { finderLossFormula } from '#core/gaussian/finder-loss.formula.ts';
import { lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import { numericalApertureFormula } from '#core/gaussian/numerical-aperture.formula.ts';
import { step } from '#core/quantity/answers-from.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { Bench, choiceOf, keptChoice } from '#site/state/bench.svelte.ts';
import { lenses } from '#site/state/crate.ts';
import { ways, worksAt, type Way } from './figures/ways.ts';

/** What the lens works at, by the way in which it has come to its magnification. */
const worksAtByWay = step({
  from: ['f-number', 'magnification', 'pupil-magnification', 'focus-magnification', 'converter-factor'],
  gives: ['effective-f-number'],
  evaluate: (given, chosen) => ({ effectiveFNumber: worksAt(chosen['reached-by'] as Way, given) }),
});

/** A lens turned round can work wider than its mark: what is gained is no loss below zero. */
const gained = (stops = 0) => (stops < -0.005 ? `none: ${printQuantity('light-loss', -stops)} gained` : undefined);

export const bench = new Bench({
  inputs: {
    magnification: 1,
    'pupil-magnification': 1,
    'f-number': 8,
    'focus-magnification': 0.1,
    'converter-factor': { start: 2, least: 1.01 },
    'max-aperture': 2.8,
    'exposure-time': 1 / 60,
  },
  choices: {
    'reached-by': keptChoice('Reached by', ways),
    lens: choiceOf('Pupils of', lenses, ['pupil-magnification']),
  },
  formulas: [worksAtByWay, lightLossFormula, correctedExposureTimeFormula, finderLossFormula, numericalApertureFormula],
  words: {
    'light-loss': gained,
    'finder-loss': (stops = 0) =>
      stops < -0.005 ? `none: ${printQuantity('finder-loss', -stops)} brighter` : undefined,
    'numerical-aperture': { none: 'no lens in air has so wide a cone' },
  },
});
