/** How a number is written: `12`, `f/8`, `×2`, `1/200`, `1:2`. */
export type TypedForm = 'plain' | 'f-number' | 'times' | 'fraction' | 'ratio';

/** A typed number taken apart, or what about it cannot be understood. */
export type TypedNumber =
  | {
      readonly kind: 'number';
      readonly value: number;
      readonly form: TypedForm;
      /** What follows the number; '' for nothing. */
      readonly unit: string;
    }
  | { readonly kind: 'no-number'; readonly why: string };

/** What stands before the number, and what follows. In between a sign, the whole part of a mixed number, what divides. */
const shape =
  /^(?<lead>[^\d.,+-]*)(?<sign>[+-]?) ?(?:(?<whole>\d+) (?=\d+ ?\/ ?\d))?(?<first>[\d.,]+)(?: ?(?<divider>[:/]) ?(?<second>[\d.,]+))? ?(?<unit>.*)$/;
type Parts = Record<'lead' | 'sign' | 'first' | 'unit', string> &
  Record<'whole' | 'divider' | 'second', string | undefined>;

const spacedThousands = /(^|[^\d.,])(\d{1,3}(?: \d{3})+)(?!\d| ?[/:])/;
const decimal = /^(?:\d+[.,]?\d*|[.,]\d+)$/;
/** Three digits after a comma and no idle zero before it: as likely a thousand as a decimal. */
const eitherMeaning = /^[1-9]\d{0,2},\d{3}$/;

/**
 * One character for each meaning: every dash a hyphen, every space a space, full-width signs narrow, ½ written out.
 *
 * Not Unicode's compatibility forms as a whole: they would make 10² a hundred and two.
 */
export function tidied(text: string): string {
  return text
    .replace(/[\u200b-\u200f\u2060]/g, '')
    .replace(/[！-～]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/[¼-¾⅐-⅞]/g, (fraction) => ` ${fraction.normalize('NFKC')}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/∶/g, ':')
    .replace(/[‐-–−]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/**
 * Reads a number as people type it: `12`, `1.2`, `1,5`, `12 000`, `1/200`, `1 1/2`, `1:2`, `f/11`, `×2`, and keeps what follows as unit.
 *
 * A comma is a decimal comma. Where it may as well separate thousands, the text is refused rather than guessed at.
 *
 * @param text tidied, not empty
 */
export function typedNumber(text: string): TypedNumber {
  const joined = text.replace(
    spacedThousands,
    (_, before: string, digits: string) => before + digits.replaceAll(' ', ''),
  );
  const parts = shape.exec(joined)?.groups as Parts | undefined;
  const form = parts && formOf(parts);
  if (!form) return { kind: 'no-number', why: 'is not a number' };
  const { sign, whole = '0', first, second = '1', unit } = parts;
  const why = unclear(first) ?? unclear(second);
  if (why) return { kind: 'no-number', why };
  const size = Number(whole) + decimalNumber(first) / decimalNumber(second);
  if (!Number.isFinite(size)) return { kind: 'no-number', why: 'is too large to work with' };
  return { kind: 'number', value: sign === '-' ? 0 - size : size, form, unit };
}

/** What is wrong with digits, points and commas, if anything is. */
function unclear(digits: string): string | undefined {
  if (eitherMeaning.test(digits)) {
    return `may mean ${digits.replace(',', '')} or ${decimalNumber(digits)}. Write the one you mean`;
  }
  if (decimal.test(digits)) return undefined;
  return /\d/.test(digits) ? 'has more than one point or comma. Write thousands without any' : 'is not a number';
}

function decimalNumber(digits: string): number {
  return Number(digits.replace(',', '.'));
}

/** What kind of number has such a lead and divider; undefined for none. */
function formOf({ lead, divider }: Parts): TypedForm | undefined {
  if (divider) return lead !== '' ? undefined : divider === ':' ? 'ratio' : 'fraction';
  if (lead === '') return 'plain';
  if (/^[fƒ] ?[/:]? ?$/i.test(lead)) return 'f-number';
  return /^[x×] ?$/i.test(lead) ? 'times' : undefined;
}
