import type { RouteFormula } from '#core/diagnosis/route.ts';
import type { KnownFamily } from '#core/diagnosis/slips.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { magnificationFromExtensionFormula } from '#core/gaussian/magnification-from-extension.formula.ts';
import { numberFamily } from '#core/practice/family.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import type { Formula } from '#core/quantity/formula.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { airyDiameterFormula } from '#core/wave/airy-diameter.formula.ts';

export const by = (id: string, formula: unknown, more: Partial<RouteFormula> = {}): RouteFormula => ({
  id,
  formula: formula as Formula<never>,
  ...more,
});

/** A formula of our own: what it gives, of what, and how. */
export function made(
  gives: QuantityName,
  from: readonly QuantityName[],
  evaluate: (known: Record<string, number>) => number,
) {
  return {
    gives,
    from,
    tex: `\\q{${gives}} = ${from.join()}`,
    evaluate,
    says: '',
    source: '',
    checkedBy: ['airy-pattern'],
  };
}

export const formulas = [
  by('magnification-from-extension', magnificationFromExtensionFormula),
  by('effective-f-number', effectiveFNumberFormula, { unless: ['reversed lens', 'converter-factor'] }),
  by('field-width', fieldWidthFormula),
  by('airy-diameter', airyDiameterFormula),
];
export const assumptions = [
  { quantity: 'focus-magnification', value: 0, words: 'the lens is set to infinity' },
  { quantity: 'pupil-magnification', value: 1, words: 'both pupils are equally wide' },
  { quantity: 'sensor-width', value: 36, words: 'the sensor is 36 mm wide' },
  { quantity: 'wavelength', value: 0.00055, words: 'the light is green' },
] as const;
export const roads = { formulas, assumptions };
/** 36 mm of rings on 50 mm at f/8: m = 0.72, N_w = 13.76. */
export const rings = { 'focal-length': 50, extension: 36, 'f-number': 8 } as const;
export const airy = 2 * 1.2196698913 * 0.00055 * 13.76;

/** A family of problems about rings, with the slips that it knows. */
export const family = numberFamily({
  id: 'rings',
  question: '',
  asks: 'magnification',
  tolerance: { relative: 0.02, because: '' } as never,
  givens: () => ({ 'focal-length': 100, extension: 25, subject: 'a coin' }),
  hint: '',
  working: [{ formula: formulas[0]!.formula, with: { 'focus-magnification': 0 } } as never],
  answer: (given) => given.extension / given['focal-length'],
  mistakes: [
    {
      id: 'upside-down',
      value: (given) => given['focal-length'] / given.extension,
      because: 'Upside down: {extension}.',
    },
    {
      id: 'added',
      value: (given) => 1 + given.extension / given['focal-length'],
      because: 'One too many of {subject}.',
    },
    { id: 'nothing', value: () => undefined, because: 'Nothing.' },
    {
      id: 'refused',
      value: () => {
        throw new OutOfRange('extension', 1, 'none');
      },
      because: 'Refused.',
    },
    { id: 'right', value: (given) => given.extension / given['focal-length'], because: 'Right.' },
  ],
});
export const families: readonly KnownFamily[] = [{ lesson: 'extension', family }];
