import { describe, expect, expectTypeOf, it } from 'vitest';
import { camelCase, evaluateFormula, type CamelCase, type Formula, type Named } from './formula.ts';

const ratio = {
  gives: 'magnification',
  from: ['image-width', 'subject-width'],
  tex: String.raw`\q{magnification} = \frac{\q{image-width}}{\q{subject-width}}`,
  evaluate: ({ imageWidth, subjectWidth }) => imageWidth / subjectWidth,
  says: 'how many times as wide the image is',
  source: 'for this test',
  checkedBy: [],
} as const satisfies Formula<'image-width' | 'subject-width'>;

describe('camelCase', () => {
  it.each([
    ['iso', 'iso'],
    ['focal-length', 'focalLength'],
    ['main-lens.f-number', 'mainLensFNumber'],
  ])('makes of %s the name %s', (id, name) => {
    expect(camelCase(id)).toBe(name);
  });

  it('names at run time what the types name', () => {
    expectTypeOf<CamelCase<'main-lens.f-number'>>().toEqualTypeOf<'mainLensFNumber'>();
    expectTypeOf<Named<'focal-length'>>().toEqualTypeOf<{ focalLength: number }>();
  });
});

describe('evaluateFormula', () => {
  it('gives a formula its inputs by name out of values keyed by id', () => {
    expect(evaluateFormula(ratio, { 'image-width': 36, 'subject-width': 24 })).toBe(1.5);
  });

  it('hands over nothing but its inputs', () => {
    const seen: unknown[] = [];
    const spy = { ...ratio, evaluate: (given: Named<'image-width' | 'subject-width'>) => seen.push(given) };
    const values = { 'image-width': 36, 'subject-width': 24, iso: 100 };
    evaluateFormula(spy, values);
    expect(seen).toEqual([{ imageWidth: 36, subjectWidth: 24 }]);
  });
});
