declare module 'virtual:meanings' {
  import type { TermId } from '#core/quantity/terms.ts';
  import type { QuantityId } from '#core/quantity/vocabulary.ts';

  /** The plain sentence of each entry of the glossary. */
  export const ofTerms: Readonly<Record<TermId, string>>;
  /** What is said of each quantity's letter after its name. */
  export const ofLetters: Readonly<Record<QuantityId, string>>;
}
