import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthOfFieldFormula } from '#core/depth/depth-of-field.formula.ts';
import { circleOfConfusionByDiagonalFormula } from '#core/depth/circle-of-confusion-by-diagonal.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { scaleChangeOnRailFormula } from '#core/stack/scale-change-on-rail.formula.ts';
import { airyDiameterFormula, firstDarkRing } from '#core/wave/airy-diameter.formula.ts';
import { contrastFormula } from '#core/wave/contrast.formula.ts';
import { mostFigures, ofConstant, printedLine, type LineFormula } from './printed-line.ts';

/** The numbers of a line as text, by name; what kind of line it is where it has none. */
function texts(formula: LineFormula, values: Readonly<Record<string, number>>) {
  const line = printedLine(formula, values);
  if (line.kind !== 'numbers') return line.kind;
  return Object.fromEntries(
    Object.entries(line.numbers).map(([name, { number, unit }]) => [name, `${number} ${unit}`.trim()]),
  );
}

describe('the printed line of a formula', () => {
  it('has three figures where these give the result', () => {
    expect(texts(subjectDistanceFormula, { 'focal-length': 50, magnification: 0.87 })).toEqual({
      'focal-length': '50 mm',
      magnification: '0.87',
      'subject-distance': '107 mm',
    });
  });

  it('has more of the one number that needs them, and of no other', () => {
    expect(texts(workingDistanceFormula, { 'subject-distance': 107.4712, 'front-principal-depth': 22 })).toEqual({
      'subject-distance': '107.5 mm',
      'front-principal-depth': '22 mm',
      'working-distance': '85.5 mm',
    });
  });

  it('has every digit before the point', () => {
    const given = { 'f-number': 64, magnification: 20, 'pupil-magnification': 0.2 };
    expect(texts(effectiveFNumberFormula, given)).toMatchObject({ 'effective-f-number': '6464' });
  });

  it('keeps the marks of f-numbers where they give the result, and else has the exact value behind them', () => {
    const eleven = 2 ** 3.5;
    const open = { 'f-number': eleven, magnification: 0, 'pupil-magnification': 1 };
    expect(texts(effectiveFNumberFormula, open)).toMatchObject({ 'f-number': '11', 'effective-f-number': '11' });
    expect(texts(effectiveFNumberFormula, { ...open, magnification: 0.5 })).toMatchObject({
      'f-number': '11.31',
      'effective-f-number': '17',
    });
  });

  it('is the formula’s own whatever else goes by the name of its result', () => {
    const given = { 'sensor-width': 36, 'sensor-height': 24, 'circle-of-confusion': 0.014 };
    expect(texts(circleOfConfusionByDiagonalFormula, given)).toMatchObject({ 'circle-of-confusion': '28.8 µm' });
  });

  it('has three figures of a constant where these give the result, else as many as it takes', () => {
    const constants: string[] = [];
    fc.assert(
      fc.property(
        fc.double({ min: 0.0004, max: 0.0007, noNaN: true }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        (wavelength, effectiveFNumber) => {
          const line = printedLine(airyDiameterFormula, { wavelength, 'effective-f-number': effectiveFNumber });
          if (line.kind !== 'numbers') throw new Error(line.kind);
          const { number } = line.numbers[ofConstant]!;
          constants.push(number);
          expect(firstDarkRing.toPrecision(number.replace('.', '').length)).toBe(number);
        },
      ),
      { seed: 1, numRuns: 300 },
    );
    // Three figures are 0.03 % off, of results that have three: enough for most.
    expect(constants.filter((one) => one === '1.22').length).toBeGreaterThan(240);
    expect(Math.max(...constants.map(({ length }) => length))).toBeLessThanOrEqual(8);
  });

  it('counts stops in tenths', () => {
    const loss = texts(lightLossFormula, { 'f-number': 8, 'effective-f-number': 14.3272 });
    expect(loss).toMatchObject({ 'light-loss': '1.7 stops', 'effective-f-number': '14.3' });
  });

  it('is none where numbers lack, are refused, have no end, or are no matter of the equation any more', () => {
    expect(printedLine(workingDistanceFormula, { 'subject-distance': Infinity, 'front-principal-depth': 22 })).toEqual({
      kind: 'lacking',
      of: 'subject-distance',
    });
    expect(printedLine(workingDistanceFormula, { 'subject-distance': 100 })).toMatchObject({
      of: 'front-principal-depth',
    });
    expect(printedLine(subjectDistanceFormula, { 'focal-length': 50, magnification: -1 })).toMatchObject({
      refused: { quantity: 'magnification' },
    });
    const far = {
      'circle-of-confusion': 0.03,
      'entrance-pupil-distance': 5000,
      magnification: 0.01,
      'entrance-pupil': 2,
    };
    expect(printedLine(depthOfFieldFormula, far)).toEqual({ kind: 'infinite' });
    expect(printedLine(contrastFormula, { 'spatial-frequency': 80, 'cutoff-frequency': 40 })).toEqual({
      kind: 'beyond',
    });
  });

  it(`is none where the result hangs on more than ${mostFigures} figures`, () => {
    const near = { 'frame-step': 50, 'entrance-pupil-distance': 50.00000002 };
    expect(printedLine(scaleChangeOnRailFormula, near)).toEqual({ kind: 'unprintable' });
  });
});
