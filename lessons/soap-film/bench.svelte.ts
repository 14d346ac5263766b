import { depthOfFieldFormula } from '#core/depth/depth-of-field.formula.ts';
import { fNumberForDepthFormula } from '#core/depth/f-number-for-depth.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { brightFilmThicknessFormula } from '#core/light/bright-film-thickness.formula.ts';
import { brightWavelengthFormula } from '#core/light/bright-wavelength.formula.ts';
import { filmReflectanceOfTwoBeamsFormula } from '#core/light/film-reflectance-of-two-beams.formula.ts';
import { refractionAngleFormula } from '#core/light/refraction-angle.formula.ts';
import { soapFilmReflectance } from '#core/light/soap-film-colour.ts';
import { sourceSizeForMirrorFormula } from '#core/light/source-size-for-mirror.formula.ts';
import { subjectDepthAslantFormula } from '#core/light/subject-depth-aslant.formula.ts';
import { surfaceReflectanceP } from '#core/light/surface-reflectance-p.formula.ts';
import { surfaceReflectanceS } from '#core/light/surface-reflectance-s.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies, lenses } from '#site/state/crate.ts';
import { colours, sources, thickest, thinnest } from './figures/gear.ts';
import { closedTooFar, unseenInWords } from './figures/in-words.ts';

/** Light of lamps and sky swings both ways alike: the mean of both. */
const oneSurface = step({
  from: ['incidence-angle', 'refractive-index'],
  gives: ['reflectance'],
  evaluate: (given) => ({ reflectance: (surfaceReflectanceS(given) + surfaceReflectanceP(given)) / 2 }),
});

/** All beams, of each way of swinging by itself, and the mean of both. */
const wholeFilm = step({
  from: ['film-thickness', 'refractive-index', 'incidence-angle', 'wavelength'],
  gives: ['film-reflectance'],
  evaluate: (given) => ({ filmReflectance: soapFilmReflectance(given, given.wavelength) }),
});

const film = { least: thinnest, most: thickest };

export const bench = new Bench({
  inputs: {
    'film-thickness': { start: 0.00034, ...film },
    'incidence-angle': Math.PI / 6,
    'bottom.film-thickness': { start: 0.001, ...film },
    'top.film-thickness': { start: thinnest, ...film },
    'refractive-index': { start: 1.33, least: 1.01 },
    ...startsOf(colours.green, ['wavelength']),
    'interference-order': 2,
    'source-size': { start: sources.bowl['source-size'], least: 5, most: 1000 },
    'flash-distance': { start: 100, least: 10, most: 2000 },
    magnification: 0.5,
    'focal-length': 80,
    'f-number': 8,
    'pupil-magnification': lenses['lens-90']['pupil-magnification'],
    ...startsOf(bodies['body-36'], ['sensor-width', 'circle-of-confusion']),
  },
  choices: {
    light: choiceOf('Colour of light', colours, ['wavelength']),
    flash: choiceOf('Light', sources, ['source-size']),
    sensor: choiceOf('Camera', bodies, ['sensor-width']),
    [circleChoice]: circleByBody,
  },
  formulas: [
    refractionAngleFormula,
    oneSurface,
    wholeFilm,
    ...under('two-beams', [filmReflectanceOfTwoBeamsFormula]),
    ...under('bright', [brightFilmThicknessFormula]),
    ...under('bright', [brightWavelengthFormula]),
    fieldWidthFormula,
    entrancePupilFormula,
    entrancePupilDistanceFormula,
    ...under('needed', [sourceSizeForMirrorFormula]),
    subjectDepthAslantFormula,
    effectiveFNumberFormula,
    depthOfFieldFormula,
    ...under('needed', [fNumberForDepthFormula]),
  ],
  words: {
    'two-beams.film-reflectance': { none: 'so aslant, two beams are not enough' },
    'bright.wavelength': unseenInWords,
    'subject-depth': { none: 'seen edge-on' },
    'depth-of-field': { infinite: '∞, no far end' },
    'needed.f-number': closedTooFar,
  },
});
