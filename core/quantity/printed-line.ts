import { OutOfRange } from './errors.ts';
import { camelCase, evaluateFormula, type Formula } from './formula.ts';
import { printNumber, type PrintedNumber } from './print.ts';
import { unitWorth } from './units.ts';
import { quantityOf, type QuantityName } from './vocabulary.ts';

/** More figures than this nobody reads; a line that needs them is not printed. */
export const mostFigures = 7;
const usualFigures = 3;
const dust = 1e-9;

/** A formula's numbers as they stand in its line, those put in and the result, by name; its constant by the name of {@link ofConstant}. */
export interface PrintedLine {
  readonly kind: 'numbers';
  readonly numbers: Readonly<Record<string, PrintedNumber>>;
}

/** What the constant of a formula is called among the numbers of its line. */
export const ofConstant = 'constant';

/** Why a formula has no line of numbers. */
export type NoLine =
  /** What is put in has no number, or no finite one. */
  | { readonly kind: 'lacking'; readonly of: QuantityName }
  | { readonly kind: 'infinite' }
  /** The result is the function's, and the equation does not say it: contrast from the cutoff on. */
  | { readonly kind: 'beyond' }
  | { readonly kind: 'refused'; readonly refused: OutOfRange }
  /** The result hangs on more than {@link mostFigures} figures of what is put in. */
  | { readonly kind: 'unprintable' };

/** What a line needs of a formula, whatever it takes. */
export interface LineFormula extends Pick<Formula, 'gives' | 'from'> {
  readonly evaluate: (given: never) => number;
  readonly holds?: (given: never) => boolean;
  readonly constant?: Formula['constant'];
  readonly metres?: Formula['metres'];
}

/**
 * The numbers of a formula's line, rounded so that **what is printed on the right gives what is printed as the result**.
 *
 * The result is the formula's own, from *values*, three figures of it and no digit before the point left out; more where it lies so
 * nearly between two that the numbers put in cannot tell which. What is put in has three figures too, and as many more, one
 * number as few as possible, as it takes for the printed numbers to give the printed result: 107.5 mm − 22 mm = 85.5 mm, not 107 mm.
 * So has a constant of the formula. f-numbers and times keep their marks unless that takes the exact value. A line that would take more than {@link mostFigures} is none.
 *
 * @param values base units, by name; of what is put in, and of anything else
 */
export function printedLine(
  formula: LineFormula,
  values: Readonly<Partial<Record<string, number>>>,
): PrintedLine | NoLine {
  const { gives, from, constant, metres } = formula;
  const first = constant ? 1 : 0;
  const lacking = from.find((name) => values[name] === undefined || !Number.isFinite(values[name]));
  if (lacking !== undefined) return { kind: 'lacking', of: lacking };
  const given = values as Readonly<Record<string, number>>;
  const result = resultOf(formula, given);
  if (result instanceof OutOfRange) return { kind: 'refused', refused: result };
  if (!Number.isFinite(result)) return { kind: 'infinite' };

  if (formula.holds?.(named(from, given) as never) === false) return { kind: 'beyond' };

  for (let figures = figuresOfResult(gives, result); figures <= mostFigures; figures++) {
    const options = { figures };
    const text = printNumber(gives, result, options);
    // What falls between two printed values but for the dust of arithmetic may go either way.
    const roundsTo = (ours: number) =>
      [ours, ours * (1 + dust), ours * (1 - dust)].some((near) => isSame(printNumber(gives, near, options), text));
    const print = (each: readonly number[]) =>
      from.map((name, at) => printWith(name, given[name]!, each[at + first]!, name === metres));
    // Its figures come first in the list, and are the first to be fewer.
    const printConstant = (each: readonly number[]) => Number(constant!.value.toPrecision(each[0]));
    const each = figuresFor(from.length + first, (tried) => {
      const values = print(tried).map((printed, at) => [from[at], printedValue(from[at]!, printed)]);
      const ours = resultOf(formula, Object.fromEntries(values) as Record<string, number>);
      const rounding = constant ? (printConstant(tried) / constant.value) ** constant.power : 1;
      return typeof ours === 'number' && roundsTo(ours * rounding);
    });
    if (each) {
      const numbers = print(each).map((printed, at) => [from[at], printed]);
      const known = constant && { [ofConstant]: { number: String(printConstant(each)), unit: '' } };
      return { kind: 'numbers', numbers: { ...known, ...Object.fromEntries(numbers), [gives]: text } };
    }
  }
  return { kind: 'unprintable' };
}

/** Three, or all before the point, in the unit it is printed in. */
function figuresOfResult(name: QuantityName, result: number): number {
  const { number } = printNumber(name, result);
  const [whole = ''] = number.replace(/^[−+]/, '').split('.');
  return number.includes('/') ? usualFigures : Math.min(mostFigures, Math.max(usualFigures, whole.length));
}

/** The fewest figures alike for all of *count* numbers that do, then for one after another as few as still do. */
function figuresFor(count: number, doThey: (figures: readonly number[]) => boolean): readonly number[] | undefined {
  for (let alike = usualFigures; alike <= mostFigures; alike++) {
    let figures: readonly number[] = Array.from({ length: count }, () => alike);
    if (!doThey(figures)) continue;
    for (let at = 0; at < count; at++) {
      for (let fewer = usualFigures; fewer < figures[at]!; fewer++) {
        const tried = figures.with(at, fewer);
        if (doThey(tried)) figures = tried;
      }
    }
    return figures;
  }
  return undefined;
}

function printWith(name: QuantityName, value: number, figures: number, inMetres: boolean): PrintedNumber {
  return inMetres
    ? { number: `${Number((value / 1000).toPrecision(figures))}`, unit: 'm' }
    : printNumber(name, value, { figures, exact: figures > usualFigures });
}

/** What a printed number stands for, base unit. Twelve figures: a factor of 1000 leaves no dust that a count would trip over. */
function printedValue(name: QuantityName, { number, unit }: PrintedNumber): number {
  const [over, under = '1'] = number.replace('−', '-').split('/');
  return Number(((Number(over) / Number(under)) * unitWorth(quantityOf(name).base, unit)!).toPrecision(12));
}

function isSame(one: PrintedNumber, other: PrintedNumber): boolean {
  return one.number === other.number && one.unit === other.unit;
}

function named(names: readonly QuantityName[], values: Readonly<Record<string, number>>): Record<string, number> {
  return Object.fromEntries(names.map((name) => [camelCase(name), values[name]!]));
}

function resultOf(formula: LineFormula, values: Readonly<Record<string, number>>): number | OutOfRange {
  try {
    return evaluateFormula(formula as unknown as Formula, values as Record<QuantityName, number>);
  } catch (error) {
    if (error instanceof OutOfRange) return error;
    throw error;
  }
}
