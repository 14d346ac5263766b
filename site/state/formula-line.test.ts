import { expect, it } from 'vitest';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { formulaLine } from './formula-line.ts';

const textsOf = (subjectDistance: number, frontPrincipalDepth: number) => {
  const line = formulaLine(workingDistanceFormula, {
    'subject-distance': subjectDistance,
    'front-principal-depth': frontPrincipalDepth,
  });
  return 'texts' in line ? Object.values(line.texts).map((text) => text.replace('\u2009', ' ')) : line.words;
};

it('puts a negative number that is put in into parentheses, for it may follow a minus, and no other', () => {
  expect(textsOf(150, -9)).toEqual(['150 mm', '(−9 mm)', '159 mm']);
  expect(textsOf(20, 22)).toEqual(['20 mm', '22 mm', '−2 mm']);
});
