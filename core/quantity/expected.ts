import { fNumberSeries, shutterTimeSeries } from './nominal.ts';
import { printQuantity } from './print.ts';
import { measureWords, readableUnit, unitWorth } from './units.ts';
import { quantityOf, type Quantity, type QuantityName } from './vocabulary.ts';

/** What is accepted, in the base unit, ends included. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

const kinds: Partial<Record<Quantity['writing'], string>> = {
  'f-number': 'an f-number',
  ratio: 'a ratio',
  whole: 'a whole number',
  'power-fraction': 'a fraction of full power',
};

/**
 * What may be typed for a quantity, for a beginner: `a length from 4 mm to 800 mm, for example 50 mm or 2 in`.
 *
 * @param example in the base unit; where left out, a round number in the middle of the range
 */
export function expectedWords(name: QuantityName, range: Range = quantityOf(name), example?: number): string {
  const ends = `from ${printQuantity(name, range.least)} to ${printQuantity(name, range.most)}`;
  const quantity = quantityOf(name);
  const kind = kinds[quantity.writing] ?? measureWords(quantity);
  return `${kind} ${ends}, for example ${examples(name, range, example).join(' or ')}`;
}

function examples(name: QuantityName, range: Range, example?: number): string[] {
  const { base, shown, writing } = quantityOf(name);
  const value = example ?? exampleIn(quantityOf(name), range);
  const printed = printQuantity(name, value);
  const isRoundRatio = (value > 0 && Number.isInteger(value)) || Number.isInteger(1 / value);
  if (writing === 'ratio' && isRoundRatio) return [printed, printQuantity(name, value, { ratio: true })];
  const inches = Number((value / inch).toPrecision(2));
  const asInches = base === 'mm' && shown === 'mm' && value >= 10 && value < 1000 && isWithin(inches * inch, range);
  return asInches ? [printed, `${inches} in`] : [printed];
}

const inch = unitWorth('mm', 'in')!;

/** A value that the trade would name, well inside the range; the lower end where the range is too narrow for one. */
function exampleIn(quantity: Quantity, range: Range): number {
  const { shown, base, writing } = quantity;
  if (writing === 'f-number') return middleMark(fNumberSeries, range);
  if (writing === 'shutter-time') return middleMark(shutterTimeSeries, range);
  const middle = middleOf(quantity, range);
  const worth = unitWorth(base, readableUnit(shown, middle))!;
  const example =
    writing === 'power-fraction' ? 2 ** Math.round(Math.log2(middle)) : roundNumber(middle / worth) * worth;
  return isWithin(example, range) ? example : range.least;
}

/** The middle by ratio where the trade thinks in ratios. A range from zero on may run far beyond what is common: 50 of the unit is plenty. */
function middleOf({ base, shown, scale }: Quantity, { least, most }: Range): number {
  if (least <= 0) return Math.min(Math.max(0, most) / 2, 50 * unitWorth(base, shown)!);
  return scale === 'log' ? Math.sqrt(least) * Math.sqrt(most) : least + (most - least) / 2;
}

function middleMark(series: readonly number[], range: Range): number {
  const marks = series.filter((mark) => isWithin(mark, range));
  return marks[marks.length >> 1] ?? range.least;
}

/** The nearest of 1, 2, 5 times a power of ten. */
function roundNumber(value: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.abs(value)));
  const first = Math.abs(value) / power;
  return value === 0 ? 0 : Math.sign(value) * power * (first < 1.5 ? 1 : first < 3.5 ? 2 : first < 7.5 ? 5 : 10);
}

function isWithin(value: number, { least, most }: Range): boolean {
  return value >= least && value <= most;
}
