import { nameInFull, partIndex } from '#core/quantity/part.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';

/** A quantity's name and letter for a page, with the part it is of where a chain has two: *focal length of the reversed lens*, `f_reversed`. */
export function letterOf(id: QuantityName): { readonly name: string; readonly symbol: string } {
  const { symbol } = quantityOf(id);
  const index = partIndex(id);
  return { name: nameInFull(id), symbol: symbol === '' || index === '' ? symbol : `${symbol}_${index}` };
}
