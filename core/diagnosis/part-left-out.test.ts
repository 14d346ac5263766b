import { describe, expect, it } from 'vitest';
import { effectiveFNumberWithConverterFormula } from '#core/rig/effective-f-number-with-converter.formula.ts';
import { magnificationOfInfinityObjectiveFormula } from '#core/rig/magnification-of-infinity-objective.formula.ts';
import { magnificationWithConverterFormula } from '#core/rig/magnification-with-converter.formula.ts';
import { magnificationWithRingBehindConverterFormula } from '#core/rig/magnification-with-ring-behind-converter.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { by, formulas, roads } from '#tests/support/few-roads.ts';
import { partsLeftOut } from './part-left-out.ts';
import { routesFrom } from './route.ts';
import { bridges } from './usual.ts';

const rounding = { relative: 1e-9, because: 'rounding' };
const ways = {
  ...roads,
  formulas: [
    ...formulas.filter(({ id }) => id !== 'magnification-from-extension'),
    by('magnification-with-converter', magnificationWithConverterFormula),
    by('effective-f-number-with-converter', effectiveFNumberWithConverterFormula),
    by('behind', magnificationWithRingBehindConverterFormula, { setUp: 'ring behind the converter' }),
    by('magnification-of-infinity-objective', magnificationOfInfinityObjectiveFormula),
    ...bridges.filter(({ id }) => id === 'light-lost-behind-a-converter'),
  ],
};
type Given = Parameters<typeof routesFrom>[0];
const slips = (to: Parameters<ReturnType<typeof routesFrom>['get']>[0], given: Given, setUps: readonly string[] = []) =>
  new Map(partsLeftOut(routesFrom(given, ways, setUps).get(to)![0]!).map((slip) => [slip.id, slip]));

// 50 mm on 25 mm of rings are 1:2; behind 2× they are 1:1, and f/4 works as 4 × (2 + 1) = 12.
const behind = { 'focal-length': 50, extension: 25, 'converter-factor': 2, 'f-number': 4 } as const;

describe('a converter that is left out', () => {
  it.each([
    ['magnification', 0.5],
    ['effective-f-number', 6],
    ['field-width', 72],
    ['light-loss', 2 * Math.log2(1.5)],
    ['airy-diameter', 2 * 1.2196698913 * 0.00055 * 6],
  ] as const)('gives the %s of lens and rings: %d', (to, value) => {
    expect(slips(to, behind).get('converter-left-out')).toMatchObject({ value: closeTo(value, rounding), tier: 2 });
    expect(slips(to, behind).get('converter-left-out')!.because).toContain('2× as large');
  });

  it('is no slip where there is none, nor where a ring behind it makes it another', () => {
    expect(slips('field-width', { magnification: 1 }).size).toBe(0);
    const ringBehind = { 'focal-length': 50, extension: 25, 'converter-factor': 2 };
    expect(slips('magnification', ringBehind, ['ring behind the converter']).size).toBe(0);
  });
});

describe('an objective on another lens than its tube lens', () => {
  const onLens = (focalLength: number) =>
    slips('magnification', {
      'objective-magnification': 10,
      'focal-length': focalLength,
      'tube-focal-length': 200,
    });

  it('does not give what is engraved, nor more with a shorter lens', () => {
    const found = onLens(100);
    expect(found.get('engraved')).toMatchObject({ value: closeTo(10, rounding), tier: 2 });
    expect(found.get('engraved')!.because).toMatch(/10× *, which holds on 200.mm\. Here 100.mm/);
    expect(found.get('tube-upside-down')!.value).toEqual(closeTo(20, rounding));
    expect(found.has('tube-200')).toBe(false);
    expect(found.get('tube-180')).toMatchObject({
      value: closeTo(1000 / 180, rounding),
      tier: 3,
      instead: 'tube-focal-length',
    });
  });

  it('may be made for just that lens, if objectives are', () => {
    const found = onLens(180);
    expect(found.has('engraved')).toBe(false);
    expect(found.get('tube-180')).toMatchObject({ value: closeTo(10, rounding), instead: 'tube-focal-length' });
  });
});
