import { OutOfRange } from './errors.ts';
import { asMarkedFNumber, asMarkedShutterTime } from './nominal.ts';
import { plainNumber } from './plain-number.ts';
import { readableUnit, unitWorth } from './units.ts';
import { quantityOf, type QuantityName } from './vocabulary.ts';

export interface PrintOptions {
  /** Exact values of the marked series as they are: f/11.3 instead of f/11, 1/128 s instead of 1/125 s. */
  readonly exact?: boolean;
  /** Magnifications as 1:2 and 2:1 instead of 0.5× and 2×. */
  readonly ratio?: boolean;
  /** Significant digits, three unless said otherwise. Stops have one decimal and whole numbers none, and one more for each digit beyond three. */
  readonly figures?: number;
}

/** A number and its unit apart, for formulas. */
export interface PrintedNumber {
  readonly number: string;
  readonly unit: string;
}

/** Between number and unit: narrow, and never broken at a line's end. */
const gap = '\u202f';

/**
 * A quantity as the trade writes it, with its unit: `12.3 mm`, `f/8`, `1/200 s`, `0.63×`, `+3 dpt`, `45 %`, `1.3 stops`.
 *
 * Three significant digits, for stops one decimal; exact f-numbers and shutter times by their marks; infinity as ∞.
 * What it prints, `readQuantity` reads.
 *
 * @param value in the base unit; infinite where infinity is the answer
 * @throws OutOfRange where *value* is not a number
 */
export function printQuantity(name: QuantityName, value: number, options: PrintOptions = {}): string {
  const { writing } = quantityOf(name);
  const { number, unit } = printNumber(name, value, options);
  if (Number.isFinite(value)) {
    if (writing === 'f-number') return `f/${number}`;
    if (writing === 'ratio') return options.ratio && value > 0 ? asRatio(value, options.figures ?? 3) : `${number}×`;
  }
  return number + (unit === '' || unit.startsWith('°') ? '' : gap) + unit;
}

/** A share to two figures, as one says how far something is off: `2.5 %`. */
export function percent(share: number): string {
  return `${Number((100 * share).toPrecision(2))}${gap}%`;
}

/**
 * The same with number and unit apart, as it stands in a formula: without `f/` and `×`.
 *
 * @throws OutOfRange where *value* is not a number
 */
export function printNumber(name: QuantityName, value: number, options: PrintOptions = {}): PrintedNumber {
  const { exact = false, figures: digits = 3 } = options;
  if (Number.isNaN(value)) throw new OutOfRange(name, value, 'a number');
  if (!Number.isFinite(value)) return { number: decimals(value), unit: '' };
  const { base, shown, writing } = quantityOf(name);
  if (writing === 'f-number') return { number: figures(exact ? value : asMarkedFNumber(value), digits), unit: '' };
  if (writing === 'shutter-time') {
    return { number: oneOver(exact ? value : asMarkedShutterTime(value), tenthsFrom, digits), unit: 's' };
  }
  if (writing === 'power-fraction') return { number: oneOver(value, fullPower, digits), unit: '' };
  const beyond = Math.max(0, digits - 3);
  if (writing === 'whole') return { number: decimals(toPlaces(value, beyond)), unit: '' };
  if (base === 'stops') return stops(value, 1 + beyond);
  // By the size that is printed: what rounds up to 1000 mm goes by metres.
  const unit = readableUnit(shown, rounded(value, digits));
  const number = figures(value / unitWorth(base, unit)!, digits);
  return { number: writing === 'signed' && value > 0 ? `+${number}` : number, unit };
}

/** Some significant digits in plain decimals, without idle zeros; what is less than a millionth is 0. */
function figures(value: number, digits: number): string {
  return decimals(Math.abs(value) < 1e-6 ? 0 : rounded(value, digits));
}

function rounded(value: number, digits: number): number {
  return Number(value.toPrecision(digits));
}

/** Plain decimals, or ∞, with the true minus sign. */
function decimals(value: number): string {
  return (Number.isFinite(value) ? plainNumber(value) : `${value < 0 ? '-' : ''}∞`).replace('-', '−');
}

/** Cameras mark 1/4 s, and next to it 0.3 s. */
const tenthsFrom = 0.29;
/** What rounds to 1 is full power, and no longer one over anything. */
const fullPower = 0.995;

/** One over a number for values under a limit, as the trade writes short times and small powers. */
function oneOver(value: number, below: number, digits: number): string {
  return value > 0 && value < below ? `1/${figures(1 / value, digits)}` : figures(value, digits);
}

function toPlaces(value: number, places: number): number {
  return Math.round(10 ** places * value) / 10 ** places;
}

/** Nobody sees a twentieth of a stop. */
function stops(value: number, places: number): PrintedNumber {
  const number = decimals(toPlaces(value, places));
  return { number, unit: number === '1' || number === '−1' ? 'stop' : 'stops' };
}

function asRatio(magnification: number, digits: number): string {
  return magnification < 1 ? `1:${figures(1 / magnification, digits)}` : `${figures(magnification, digits)}:1`;
}
