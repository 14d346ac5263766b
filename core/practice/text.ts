import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** Values by quantity, base units; words by any other name. */
export type Known = Readonly<Record<string, number | string>>;

const mark = /\{(?:([Aa]) )?([a-z.-]+)\}/g;

/** What is read aloud with a vowel first: acorn, f/4, 8, 85, 11, 18, but not 0.8 or 110. */
const vowelFirst = /^(?:f\/|[aeiou8]|1[18](?!\d))/i;

/**
 * *text* with each `{focal-length}` replaced by that quantity as the trade writes it, each other `{name}` by its word,
 * and `{a focal-length}` by the same with its article: a 50 mm, an 85 mm.
 *
 * Throws where a name is not known, so that no mark is ever left standing on a page.
 */
export function filledText(text: string, known: Known): string {
  return text.replace(mark, (_, article: string | undefined, name: string) => {
    const value = known[name];
    if (value === undefined)
      throw new Error(`{${name}} is not known in “${text}”; known: ${Object.keys(known).join(', ')}`);
    const printed = typeof value === 'number' ? printQuantity(name as QuantityName, value) : value;
    if (article === undefined) return printed;
    return `${article}${vowelFirst.test(printed) ? 'n' : ''} ${printed}`;
  });
}
