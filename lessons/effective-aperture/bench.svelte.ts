import { correctedExposureTimeFormula } from '#core/exposure/corrected-exposure-time.formula.ts';
import { finderLossFormula } from '#core/gaussian/finder-loss.formula.ts';
import { lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import { numericalApertureFormula } from '#core/gaussian/numerical-aperture.formula.ts';
import { step } from '#core/quantity/answers-from.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { Bench, choiceOf, keptChoice } from '#site/state/bench.svelte.ts';
import { lenses } from '#site/state/crate.ts';
import { brightness, inStops, isGain } from './figures/in-stops.ts';
import { isReached, ways, worksAt, type Way } from './figures/ways.ts';

/** What the lens works at, by the way in which it has come to its magnification. */
const worksAtByWay = step({
  from: ['f-number', 'magnification', 'pupil-magnification', 'focus-magnification', 'converter-factor'],
  gives: ['effective-f-number'],
  evaluate(given, chosen) {
    const way = chosen['reached-by'] as Way;
    return isReached(way, given) ? { effectiveFNumber: worksAt(way, given) } : {};
  },
});

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
    'effective-f-number': (works, known) =>
      works === undefined
        ? `none: a close-up lens gives no less than the lens alone, ${printQuantity('focus-magnification', known['focus-magnification']!)}`
        : undefined,
    'light-loss': (stops = 0) => (isGain(stops) ? `none: ${inStops(stops, ['lost', 'gained'])}` : undefined),
    'finder-loss': (stops = 0) => (isGain(stops) ? `none: ${brightness(stops)}` : undefined),
    'numerical-aperture': { none: 'no lens in air has so wide a cone' },
  },
});
