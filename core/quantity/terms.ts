import type { Explanation } from './explanation.ts';
import { quantitiesExplained } from './terms-of-quantities.ts';
import { wordsExplained, type WordId } from './terms-of-the-trade.ts';
import { quantityIds, vocabulary, type QuantityId } from './vocabulary.ts';

/** Id of an entry of the glossary: a quantity's, or that of a word that is none. */
export type TermId = QuantityId | WordId;

/** An entry of the glossary. */
export interface Term extends Required<Explanation> {
  readonly id: TermId;
  /** As a heading: `focal length`, `life size (1:1)`. */
  readonly name: string;
  /** Set where it is a quantity: its letter, unit and range stand in the vocabulary under this id. */
  readonly quantity?: QuantityId;
}

const ofQuantities: readonly Term[] = quantityIds.map((id) => {
  const { name } = vocabulary[id];
  return { forms: [name], ...quantitiesExplained[id], id, name, quantity: id };
});

const ofTheTrade: readonly Term[] = Object.entries<(typeof wordsExplained)[WordId] & Partial<Explanation>>(
  wordsExplained,
).map(([id, word]) => ({ forms: [word.name], ...word, id: id as WordId }));

/** The glossary in the order of the alphabet: quantities and words, each once. */
export const terms: readonly Term[] = [...ofQuantities, ...ofTheTrade].sort((a, b) =>
  a.name.localeCompare(b.name, 'en'),
);
