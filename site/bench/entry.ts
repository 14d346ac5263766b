import type { TermId } from '#core/quantity/terms.ts';

/** Where the glossary says what a quantity is, from the bench; `show-meaning.ts` says it in place. */
export const entryOf = (id: TermId): string => `../glossary/#${id}`;
