import { printQuantity } from './print.ts';
import { isAnyUnit, unitWorth } from './units.ts';
import { quantityOf, type Quantity, type QuantityName } from './vocabulary.ts';

/** What became of something typed: nothing there, a value in the base unit, or words that say what was expected. */
export type Reading =
  | { readonly kind: 'blank' }
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'unreadable'; readonly message: string }
  | { readonly kind: 'out-of-range'; readonly value: number; readonly message: string };

export interface Range {
  readonly least: number;
  readonly most: number;
}

/**
 * Reads what people type for a quantity: `12 mm`, `1.2cm`, `0.5 in`, `1:2`, `2x`, `1/200`, `f/11`, `+3 dpt`, `550 nm`, `1,5`.
 *
 * A bare number is in the unit the quantity is shown in. A comma is a decimal comma; `1,500` could be either and is
 * refused in words. What is refused says what was wrong and what is accepted; no text makes this throw.
 *
 * @param range what is accepted, base unit; the vocabulary's own where not given
 */
export function readQuantity(name: QuantityName, text: string, range: Range = quantityOf(name)): Reading {
  const quantity = quantityOf(name);
  const tidy = text.normalize('NFKC').replace(/[\u2212\u2013]/g, '-').replace(/\s+/g, ' ').trim();
  if (tidy === '') return { kind: 'blank' };
  const accepted = `${quantity.name} takes ${expected(quantity)}, from ${printQuantity(name, range.least)} to ${printQuantity(name, range.most)}`;
  const refuse = (why: string) => ({ kind: 'unreadable', message: `${why}: ${accepted}. Nothing was changed.` }) as const;
  const quoted = `“${text.length > 24 ? `${text.slice(0, 24)}…` : text}”`;

  const parts = /^(?:([fF]) ?\/? ?|[x×] ?)?([+-]?[\d.,]+)(?: ?([:/]) ?([\d.,]+))? ?(.*)$/.exec(tidy.replaceAll('⁄', '/'));
  if (!parts || (parts[1] && quantity.writing !== 'f-number')) return refuse(`${quoted} is not a number`);
  const [, , first, divider, second, unit] = parts as unknown as [string, string, string, string?, string?, string?];
  if ([first, second].some((part) => part !== undefined && /^[+-]?[1-9]\d{0,2},\d{3}$/.test(part))) {
    return refuse(`${quoted} may mean thousands or a decimal comma; write it without the comma`);
  }
  if (divider && !mayDivide(quantity, divider)) return refuse(`${quoted} is not a number`);
  const numerator = decimal(first);
  const denominator = second === undefined ? 1 : decimal(second);
  if (numerator === undefined || denominator === undefined) return refuse(`${quoted} is not a number`);
  const worth = worthOf(quantity, unit ?? '');
  if (worth === undefined) return refuse(`“${unit}” is ${isAnyUnit(unit!) ? 'a unit of something else' : 'not a unit'}`);
  // Fifteen figures drop the binary dust that units of a millionth bring: 550 nm is 0.00055 mm.
  const value = Number(((numerator / denominator) * worth).toPrecision(15));
  if (!Number.isFinite(value)) return refuse(`${quoted} is not a finite number`);
  if (value >= range.least * (1 - 1e-9) && value <= range.most * (1 + 1e-9)) {
    return { kind: 'value', value: Math.min(range.most, Math.max(range.least, value)) };
  }
  return { kind: 'out-of-range', value, message: `${quoted} is out of range: ${accepted}. Nothing was changed.` };
}

/** Ratios such as 1:2 for magnifications; fractions such as 1/200 for times, powers and ratios. */
function mayDivide({ writing }: Quantity, divider: string): boolean {
  return writing === 'ratio' || (divider === '/' && (writing === 'shutter-time' || writing === 'power-fraction'));
}

/** Digits with one decimal point or comma. */
function decimal(text: string): number | undefined {
  return /^[+-]?(?:\d+[.,]?\d*|[.,]\d+)$/.test(text) ? Number(text.replace(',', '.')) : undefined;
}

function worthOf({ base, shown, writing }: Quantity, unit: string): number | undefined {
  if (unit === '') return unitWorth(base, shown);
  if (base !== '') return unitWorth(base, unit);
  if (unit === '%') return writing === 'share' ? 0.01 : undefined;
  return writing === 'ratio' ? unitWorth(base, unit) : undefined;
}

/** What a beginner may type, by example. */
function expected({ base, shown, writing }: Quantity): string {
  if (writing === 'f-number') return 'an f-number such as f/8 or 5.6';
  if (writing === 'ratio') return 'a ratio such as 0.5, 1:2 or 2×';
  if (writing === 'shutter-time') return 'a time such as 1/200 or 0.5 s';
  if (writing === 'power-fraction') return 'a fraction such as 1/4';
  if (writing === 'share') return 'a share such as 30 %';
  if (base === 'mm') return shown === 'mm' ? 'a length such as 12 mm, 1.2 cm or 0.5 in' : `a length such as 5 ${shown}`;
  return shown === '' ? 'a plain number' : `a number in ${shown}`;
}
