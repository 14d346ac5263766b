import { ofLetters, ofTerms } from 'virtual:meanings';
import { nameInFull } from '#core/quantity/part.ts';
import type { TermId } from '#core/quantity/terms.ts';
import type { QuantityId, QuantityName } from '#core/quantity/vocabulary.ts';

/** What *asked*, a term in prose or a letter of a formula, means, and where its entry stands. */
export function meaningOf(asked: HTMLElement): { readonly sentence: string; readonly entry: string } {
  if (asked instanceof HTMLAnchorElement)
    return { sentence: ofTerms[asked.hash.slice(1) as TermId], entry: asked.href };
  const name = asked.dataset['quantity'] as QuantityName;
  const id = name.slice(name.lastIndexOf('.') + 1) as QuantityId;
  const glossary = document.querySelector<HTMLAnchorElement>('.page-header a[href$="/glossary/"]')!;
  return { sentence: `${nameInFull(name)}, ${ofLetters[id]}.`, entry: `${glossary.href}#${id}` };
}
