import { asPlainNumber } from './as-photographers-write.ts';
import { expectedWords, type Range } from './expected.ts';
import { otherMeaning, type TypedValue } from './other-meaning.ts';
import { printQuantity } from './print.ts';
import { tidied, typedNumber, type TypedForm } from './typed-number.ts';
import { typedUnitWorth, unitWords } from './units.ts';
import { quantityOf, type Quantity, type QuantityName } from './vocabulary.ts';

/**
 * What became of something typed: nothing there, a value in the base unit, or words for what was wrong and what is expected.
 * A value that people more often mean otherwise brings the question along that settles it.
 */
export type Reading =
  | { readonly kind: 'blank' }
  | { readonly kind: 'value'; readonly value: number; readonly asks?: string }
  | ({ readonly kind: 'unreadable' } & Refusal)
  | ({ readonly kind: 'out-of-range'; readonly value: number } & Refusal);

export interface Refusal {
  /** The whole sentence: what was wrong, and what is expected. */
  readonly message: string;
  /** The second half alone: `a length from 4 mm to 800 mm, for example 50 mm or 2 in`. */
  readonly expected: string;
}

/**
 * Reads what people type for a quantity: `12 mm`, `1.2cm`, `0.5 in`, `1:2`, `2x`, `1/200`, `f/11`, `+3 dpt`, `550 nm`, `1,5`,
 * and as photographers write it: `ISO 100`, `life size`.
 *
 * A bare number is in the unit the quantity is shown in, and where books print another one the answer asks whether that was meant; f/11 is 11, the mark and not the exact value behind it. What is
 * refused says what was wrong and what is accepted, and no text makes this throw. What prints like an end of the range is that end.
 *
 * @param range what is accepted, base unit; the vocabulary's own where not given
 */
export function readQuantity(name: QuantityName, text: string, range: Range = quantityOf(name)): Reading {
  const tidy = tidied(text);
  if (tidy === '') return { kind: 'blank' };
  const quoted = `“${shortened(tidy)}”`;
  const found = valueOf(quantityOf(name), asPlainNumber(name, tidy));
  const asked = typeof found === 'string' ? undefined : otherMeaning(name, found, range);
  const question = asked === undefined ? '' : ` Did you mean ${printQuantity(name, asked)}?`;
  const refusal = (why: string): Refusal => {
    const expected = expectedWords(name, range);
    return { expected, message: `${quoted} ${why}.${question} ${atStart(quantityOf(name).name)} takes ${expected}.` };
  };
  if (typeof found === 'string') return { kind: 'unreadable', ...refusal(`cannot be used: ${found}`) };
  const { value } = found;
  if (value >= range.least && value <= range.most) {
    const asks = question && `${quoted} is taken as ${printQuantity(name, value)}.${question}`;
    return { kind: 'value', value, ...(asks && { asks }) };
  }
  const end = value < range.least ? range.least : range.most;
  if (printQuantity(name, value) === printQuantity(name, end)) return { kind: 'value', value: end };
  return { kind: 'out-of-range', value, ...refusal(`is ${value < end ? 'less' : 'more'} than the page allows`) };
}

/** The value of a text in the base unit, or what is wrong with it. */
function valueOf(quantity: Quantity, tidy: string): TypedValue | string {
  const typed = typedNumber(tidy);
  if (typed.kind === 'no-number') return `it ${typed.why}`;
  const { form, unit } = typed;
  // Lenses are engraved 1:1.8 for f/1.8.
  const isEngraved = form === 'ratio' && quantity.writing === 'f-number' && typed.value <= 1;
  const value = isEngraved ? Number((1 / typed.value).toPrecision(15)) : typed.value;
  const stranger = isEngraved ? undefined : strangerForm(quantity, form);
  if (stranger) return `it is ${stranger}`;
  const worth = typedUnitWorth(quantity, unit);
  if (worth === undefined) return strangerUnit(unit);
  const inBase = value * worth;
  if (!Number.isFinite(inBase)) return 'it is too large to work with';
  if (quantity.writing === 'whole' && !Number.isInteger(inBase)) return 'it is not a whole number';
  // Fifteen figures drop the binary dust that a unit of a millionth brings: 550 nm is 0.00055 mm.
  const inFigures = worth === 1 ? inBase : Number(inBase.toPrecision(15));
  return { value: inFigures, bare: unit === '' && form === 'plain' ? value : undefined };
}

/** What a form of number is in which the quantity is never written; undefined where it may be. */
function strangerForm(quantity: Quantity, form: TypedForm): string | undefined {
  const { writing } = quantity;
  if (form === 'f-number' && writing !== 'f-number') return 'an f-number';
  if (form === 'fraction' && writing === 'f-number') return 'a fraction';
  if (form === 'ratio' && writing !== 'ratio') return 'a ratio';
  return form === 'times' && typedUnitWorth(quantity, '×') === undefined ? 'a ratio' : undefined;
}

function strangerUnit(unit: string): string {
  const words = unitWords(unit);
  return words ? `it is ${words}` : `“${shortened(unit)}” is not a unit the page knows`;
}

/** Foreign text is quoted back in part: enough to recognise, too little to flood a page. */
function shortened(text: string): string {
  const letters = Array.from(text.slice(0, 60));
  return letters.length > 24 ? `${letters.slice(0, 24).join('')}…` : text;
}

/** At a sentence's start; the trade writes *f-number* small there too. */
function atStart(name: string): string {
  return name.startsWith('f-') ? `The ${name}` : name.charAt(0).toUpperCase() + name.slice(1);
}
