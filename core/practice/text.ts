import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { withArticle } from '#core/quantity/article.ts';

/** Values by quantity, base units; words by any other name. */
export type Known = Readonly<Record<string, number | string>>;

const mark = /\{(?:([Aa]) )?([a-z.-]+)\}/g;

/**
 * *text* with each `{focal-length}` replaced by that quantity as the trade writes it, each other `{name}` by its word,
 * and `{a focal-length}` by the same with its article: a 50 mm, an 85 mm.
 *
 * Throws where a name is not known, so that no mark is ever left standing on a page.
 */
export function filledText(text: string, known: Known): string {
  return text.replace(mark, (_, article: 'a' | 'A' | undefined, name: string) => {
    const value = known[name];
    if (value === undefined)
      throw new Error(`{${name}} is not known in “${text}”; known: ${Object.keys(known).join(', ')}`);
    const printed = typeof value === 'number' ? printQuantity(name as QuantityName, value) : value;
    return article === undefined ? printed : withArticle(article, printed);
  });
}
