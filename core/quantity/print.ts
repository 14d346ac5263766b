import { OutOfRange } from './errors.ts';
import { exactFNumber, exactShutterTime, nominalFNumber, nominalShutterTime } from './nominal.ts';
import { readableUnit, unitWorth } from './units.ts';
import { quantityOf, type QuantityName } from './vocabulary.ts';

export interface PrintOptions {
  /** Exact values instead of the marked ones: f/11.3 for f/11, 1/128 s for 1/125 s. */
  readonly exact?: boolean;
}

/** A number and its unit apart, for formulas. */
export interface PrintedNumber {
  readonly number: string;
  readonly unit: string;
}

/** Between number and unit: narrow, and never broken at a line's end. */
const gap = '\u202f';

/**
 * A quantity as the trade writes it, with its unit: `12.3 mm`, `f/8`, `1/200 s`, `0.63×`, `+3 dpt`, `45 %`.
 *
 * Three significant digits; f-numbers and shutter times in their marked values where they are one; infinity as ∞.
 *
 * @param value in the base unit; infinite where infinity is the answer
 * @throws OutOfRange where *value* is not a number
 */
export function printQuantity(name: QuantityName, value: number, options: PrintOptions = {}): string {
  const { writing } = quantityOf(name);
  const { number, unit } = printNumber(name, value, options);
  if (writing === 'f-number') return `f/${number}`;
  if (writing === 'ratio') return `${number}×`;
  if (unit === '' || unit.startsWith('°')) return number + unit;
  return number + gap + unit;
}

/** The same with number and unit apart, as it stands in a formula: without `f/` and `×`. */
export function printNumber(name: QuantityName, value: number, { exact = false }: PrintOptions = {}): PrintedNumber {
  if (Number.isNaN(value)) throw new OutOfRange(name, value, 'a number');
  const { base, shown, writing } = quantityOf(name);
  if (!Number.isFinite(value)) return { number: value > 0 ? '∞' : '−∞', unit: '' };
  if (writing === 'f-number') return { number: figures(exact ? value : markedFNumber(value)), unit: '' };
  if (writing === 'shutter-time') return { number: shutterTime(value, exact), unit: 's' };
  if (writing === 'power-fraction' && Number.isInteger(Number((1 / value).toPrecision(9)))) {
    return { number: value === 1 ? '1' : `1/${figures(1 / value)}`, unit: '' };
  }
  const unit = readableUnit(base, shown, value);
  const number = writing === 'whole' ? String(Math.round(value)) : figures(value / unitWorth(base, unit)!);
  return { number: writing === 'signed' && value > 0 ? `+${number}` : number, unit };
}

/** Three significant digits in plain decimals, without idle zeros, with a true minus sign. */
function figures(value: number): string {
  const rounded = Number(value.toPrecision(3));
  const text = Math.abs(rounded) < 1e-6 ? '0' : String(rounded);
  return text.replace('-', '−');
}

/** The marked number a value stands for; itself where it is none. Marked and exact values differ by up to 3 per cent. */
function markedFNumber(value: number): number {
  const nominal = nominalFNumber(value);
  return isClose(value, exactFNumber(nominal)!) ? nominal : value;
}

function shutterTime(value: number, exact: boolean): string {
  const nominal = nominalShutterTime(value);
  const shown = !exact && isClose(value, exactShutterTime(nominal)!) ? nominal : value;
  return shown < 0.29 ? `1/${figures(1 / shown)}` : figures(shown);
}

/** To three figures the same. */
function isClose(value: number, other: number): boolean {
  return Math.abs(value / other - 1) < 1e-3;
}
