import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { unitSpellings } from '#core/quantity/units.ts';

/** A number as it stands in a text: what was written, where, and how finely. */
export interface WrittenNumber {
  /** Number and unit, as the readers of quantities take it: `36 mm`, `f/8`, `1:2`. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** How it is written, where that says what it may be. */
  readonly form: 'f-number' | 'ratio' | 'times' | 'fraction' | 'sum' | 'plain' | 'strange';
  /** The unit as written, in lower case; '' for none. */
  readonly unit: string;
  /** Half of the last figure over the number itself; 0 where the writing is exact. */
  readonly rounding: number;
  /** Of a pair such as 36 × 24 mm: which of the two; 0 for a number alone. */
  readonly ofPair: 0 | 1 | 2;
  /** Set where the writing alone names it: 10×/0.25 stands on an objective. */
  readonly names?: QuantityName;
}

const digits = String.raw`(?:\d{1,3}(?: \d{3})+(?![\d.,]\d|\d)|\d+(?:[.,]\d+)?|[.,]\d+)`;
const spellings = [
  ...unitSpellings,
  'mp',
  'megapixels',
  'megapixel',
  'mpx',
  'millimetres',
  'millimeters',
  'millimetre',
  'metres',
  'meters',
  'metre',
  'centimetres',
  'centimeters',
  'nanometres',
  'micrometres',
]
  .filter((unit) => unit !== 'x' && unit !== '×')
  .sort((one, other) => other.length - one.length)
  .map((unit) => unit.replace(/[/.^$*+?()[\]{}|\\]/g, String.raw`\$&`));
/** One letter before a sign of equality is the letter of what comes next: e = 24 m = 0.63. */
const unit = String.raw`(?![msdn] ?=)(?:${spellings.join('|')})(?![\p{L}\d])\.?`;
const high = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Ways of writing a number, the most particular first; each names its parts. */
const writings: readonly RegExp[] = [
  String.raw`(?<engraved>\d+(?:[.,]\d+)?) ?[x×] ?\/ ?(?<aperture>[01]?[.,]\d+)`,
  String.raw`(?<engraved>\d+(?:[.,]\d+)?) ?[x×] (?<aperture>0?[.,]\d+)(?![\d.,]*\d| ?${unit}| ?[x×%])`,
  String.raw`(?<engraved>[2-9]|[1-9]\d)(?: ?\/ ?)(?<aperture>0?[.,](?!95)\d{1,2})(?![\d.,]*\d| ?(?:s|sec|seconds?)(?!\p{L}))`,
  String.raw`(?<wide>${digits}) ?(?:mm)? ?[x×*] ?(?<high>${digits})(?: ?(?<unit>${unit}))?`,
  String.raw`(?<![\p{L}\d])[fƒ] ?\/ ?(?<mark>${digits})(?![\d.,]*\d| ?mm)`,
  String.raw`(?<![\p{L}\d])[fƒ] ?(?<mark>${digits})(?![\d.,]*\d| ?(?:mm|cm|x|×|:))`,
  String.raw`(?<first>${digits}) ?: ?(?<second>${digits})`,
  String.raw`(?<focal>\d{2,3}) ?\/ ?(?<widest>(?:0[.,]95|[1-9](?:[.,]\d+)?|[12]\d))(?![\d.,]*\d| ?(?:s|sec|seconds?)(?!\p{L}))`,
  String.raw`(?<fraction>(?:\d+ )?\d+ ?\/ ?${digits})(?: ?(?<unit>${unit}))?`,
  String.raw`(?<![\p{L}\d])[x×] ?(?<times>${digits})`,
  String.raw`(?<times>${digits}) ?(?:[x×](?![\p{L}\d])|times\b)`,
  String.raw`(?<sum>${digits}(?: ?mm)?(?: ?\+ ?${digits}(?: ?mm)?)+)(?![\p{L}\d])`,
  String.raw`(?<plain>(?<![\p{L}\d)])[+-]?${digits})(?: ?(?<unit>${unit})|(?![.,]?[\p{L}\d${high}]))`,
  String.raw`(?<strange>[+-]?[\d.,]*\d[\p{L}\d${high}]+)`,
].map((source) => new RegExp(source, 'iuy'));

/**
 * The numbers that stand in *text*, from first to last, each with its unit.
 *
 * Of 36 × 24 mm both are found; of 12 + 20 mm the sum. No text makes this throw.
 *
 * @param text tidied
 */
export function numbersIn(text: string): readonly WrittenNumber[] {
  const found: WrittenNumber[] = [];
  let at = 0;
  while (at < text.length) {
    const match = startsNumber(text, at) ? firstMatch(text, at) : undefined;
    if (!match) {
      at += 1;
      continue;
    }
    found.push(...written(match, at));
    at += match[0].length;
  }
  return found;
}

/** A digit inside a word belongs to the word: N_w0, body2. */
function startsNumber(text: string, at: number): boolean {
  return at === 0 || !/[\p{L}\d_]/u.test(text[at - 1]!);
}

function firstMatch(text: string, at: number): RegExpExecArray | undefined {
  for (const writing of writings) {
    writing.lastIndex = at;
    const match = writing.exec(text);
    if (match) return match;
  }
  return undefined;
}

function written(match: RegExpExecArray, start: number): readonly WrittenNumber[] {
  const {
    engraved,
    aperture,
    wide,
    high,
    mark,
    first,
    focal,
    widest,
    strange,
    fraction,
    times,
    sum,
    plain,
    unit: measured = '',
  } = match.groups!;
  const rest = { start, end: start + match[0].length, unit: measured.toLowerCase(), ofPair: 0 as const };
  const exact = { ...rest, rounding: 0 };
  if (engraved !== undefined && aperture !== undefined) {
    return [
      { ...exact, text: `${engraved}×`, form: 'times', names: 'objective-magnification' },
      { ...exact, text: aperture, form: 'plain', names: 'numerical-aperture' },
    ];
  }
  if (wide !== undefined && high !== undefined) {
    const beside = measured === '' ? '' : ` ${measured}`;
    return [
      { ...rest, text: wide + beside, form: 'plain', ofPair: 1, rounding: roundingOf(wide) },
      { ...rest, text: high + beside, form: 'plain', ofPair: 2, rounding: roundingOf(high) },
    ];
  }
  if (mark !== undefined) return [{ ...rest, text: `f/${mark}`, form: 'f-number', rounding: roundingOf(mark) }];
  if (first !== undefined) return [{ ...exact, text: match[0], form: 'ratio' }];
  if (focal !== undefined && widest !== undefined) {
    return [
      { ...exact, text: `${focal} mm`, unit: 'mm', form: 'plain', names: 'focal-length', rounding: roundingOf(focal) },
      { ...exact, text: `f/${widest}`, form: 'f-number', names: 'max-aperture' },
    ];
  }
  if (strange !== undefined) return [{ ...exact, text: strange, form: 'strange' }];
  if (fraction !== undefined) return [{ ...exact, text: match[0], form: 'fraction' }];
  if (times !== undefined) return [{ ...rest, text: `${times}×`, form: 'times', rounding: roundingOf(times) }];
  if (sum !== undefined) return [{ ...exact, text: `${total(sum)} mm`, unit: 'mm', form: 'sum' }];
  return [{ ...rest, text: match[0], form: 'plain', rounding: roundingOf(plain!) }];
}

/** Half of the last figure as a share of the number: 0.005 of 0.72 is 0.0069. */
function roundingOf(number: string): number {
  const plain = number.replace(/ /g, '').replace(',', '.');
  const decimals = plain.split('.')[1]?.length ?? 0;
  const size = Math.abs(Number(plain));
  return size === 0 ? 0 : (0.5 * 10 ** -decimals) / size;
}

function total(sum: string): number {
  const parts = sum.split('+').map((part) => Number(part.replace(/mm/i, '').trim().replace(',', '.')));
  return Number(parts.reduce((all, part) => all + part, 0).toPrecision(12));
}

/** The number alone, without its unit. */
export function asPlainNumber({ text }: Pick<WrittenNumber, 'text'>): number {
  return Number.parseFloat(text.replace(/(\d) (?=\d{3})/g, '$1').replace(',', '.'));
}
