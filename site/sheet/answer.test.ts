import { describe, expect, it } from 'vitest';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { formulaTopics } from '#site/formula-topics.ts';
import { sheetAnswer } from './answer.ts';

const formulas = new Map(formulaTopics().flatMap((t) => t.formulas.map(({ id, formula }) => [id, formula])));
const ask = (id: string, letter: QuantityName, given: Record<string, number>) =>
  sheetAnswer(formulas.get(id)!, letter, given);

describe('x', () => {
  it('y', () => {
    console.log(JSON.stringify([
      ask('effective-f-number', 'effective-f-number', { 'f-number': 8, magnification: 1, 'pupil-magnification': 1 }),
      ask('focus-distance', 'magnification', { 'focus-distance': 225, 'focal-length': 50, 'principal-separation': 0 }),
      ask('focus-distance', 'magnification', { 'focus-distance': 150, 'focal-length': 50, 'principal-separation': 0 }),
      ask('frame-count', 'subject-depth', { 'frame-count': 13, 'depth-of-field': 0.5, overlap: 0.25 }),
      ask('stack-travel', 'frame-count', { 'stack-travel': 3.3, 'frame-step': 0.5 }),
      ask('stack-travel', 'frame-step', { 'stack-travel': 3.3 }),
      ask('stack-time', 'settling-time', { 'frame-count': 9, 'exposure-time': 0.5, 'recycling-time': 2, 'stack-time': 20.5 }),
      ask('bright-wavelength', 'refraction-angle', { wavelength: 0.00078, 'refractive-index': 1, 'film-thickness': 0.00001, 'interference-order': 1 }),
      ask('refraction-angle', 'incidence-angle', { 'refraction-angle': 1.2, 'refractive-index': 1.33 }),
      ask('film-reflectance', 'film-thickness', { 'film-reflectance': 0.05, reflectance: 0.02, 'refractive-index':1.33, 'refraction-angle': 0.3, wavelength: 0.00055 }),
      ask('far-limit', 'far-limit', { 'circle-of-confusion': 0.03, 'entrance-pupil-distance': 5000, magnification: 0.02, 'entrance-pupil': 1 }),
      ask('exposure-time-from-illuminance', 'effective-f-number', { 'exposure-time': 1/128, 'incident-light-constant': 250, illuminance: 2000, iso: 100 }),
    ], null, 1));
  });
});
