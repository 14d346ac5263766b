import type { Link, Parent, Root, Text } from 'mdast';
import { termsInProse, type Occurrence } from './in-prose.ts';

/** Where a term's entry stands in the glossary, in a site that lies at *base*. */
export function entryAddress(id: string, base: string): string {
  return `${base.replace(/\/$/, '')}/glossary/#${id}`;
}

/**
 * Remark plugin: the first place of each part where a term stands leads to its entry in the glossary, whose plain sentence `show-meaning.ts`
 * shows in place.
 *
 * @param base where the site lies: `/` or `/course/`
 */
export function linkTerms({ base }: { readonly base: string }) {
  return (tree: Root): void => {
    // From the last to the first: what stands before a link keeps its place.
    for (const { term, place } of firstInEachPart(termsInProse(tree)).toReversed()) {
      const { parent, text, from, to } = place!;
      const link: Link = {
        type: 'link',
        url: entryAddress(term.id, base),
        data: { hProperties: { className: ['term'] } },
        children: [{ type: 'text', value: text.value.slice(from, to) }],
      };
      const after: Text = { type: 'text', value: text.value.slice(to) };
      (parent as Parent).children.splice(parent.children.indexOf(text) + 1, 0, link, after);
      text.value = text.value.slice(0, from);
    }
  };
}

function firstInEachPart(all: readonly Occurrence[]): readonly Occurrence[] {
  const seen = new Set<string>();
  return all.filter(({ term, part, place }) => {
    const key = `${part} ${term.id}`;
    if (!place || seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
