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
    if (writing === 'ratio') return options.ratio && value > 0 ? asRatio(value) : `${number}×`;
  }
  return number + (unit === '' || unit.startsWith('°') ? '' : gap) + unit;
}

/**
 * The same with number and unit apart, as it stands in a formula: without `f/` and `×`.
 *
 * @throws OutOfRange where *value* is not a number
 */
export function printNumber(name: QuantityName, value: number, { exact = false }: PrintOptions = {}): PrintedNumber {
  if (Number.isNaN(value)) throw new OutOfRange(name, value, 'a number');
  if (!Number.isFinite(value)) return { number: value > 0 ? '∞' : '−∞', unit: '' };
  const { base, shown, writing } = quantityOf(name);
  if (writing === 'f-number') return { number: figures(exact ? value : asMarkedFNumber(value)), unit: '' };
  if (writing === 'shutter-time') return { number: shutterTime(exact ? value : asMarkedShutterTime(value)), unit: 's' };
  if (writing === 'power-fraction') return { number: unitFraction(value), unit: '' };
  if (writing === 'whole') return { number: withMinus(Math.round(value)), unit: '' };
  if (base === 'stops') return stops(value);
  const unit = readableUnit(shown, value);
  const number = figures(value / unitWorth(base, unit)!);
  return { number: writing === 'signed' && value > 0 ? `+${number}` : number, unit };
}

/** Three significant digits in plain decimals, without idle zeros; what is less than a millionth is 0. */
function figures(value: number): string {
  return withMinus(Math.abs(value) < 1e-6 ? 0 : Number(value.toPrecision(3)));
}

/** Plain decimals with the true minus sign. */
function withMinus(value: number): string {
  return plainNumber(value).replace('-', '−');
}

/** Cameras write fractions up to 1/4 s, and decimals from 0.3 s on. */
function shutterTime(seconds: number): string {
  return seconds > 0 && seconds < 0.29 ? `1/${figures(1 / seconds)}` : figures(seconds);
}

/** 1/4, 1/8 and so on where the share is one over a whole number. */
function unitFraction(share: number): string {
  const denominator = Number((1 / share).toPrecision(9));
  return denominator > 1 && Number.isInteger(denominator) ? `1/${plainNumber(denominator)}` : figures(share);
}

/** Nobody sees a twentieth of a stop. */
function stops(value: number): PrintedNumber {
  const number = withMinus(Math.round(10 * value) / 10);
  return { number, unit: number === '1' || number === '−1' ? 'stop' : 'stops' };
}

function asRatio(magnification: number): string {
  return magnification < 1 ? `1:${figures(1 / magnification)}` : `${figures(magnification)}:1`;
}
