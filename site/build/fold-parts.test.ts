import { createProcessor } from '@mdx-js/mdx';
import type { Node, Parent, Root } from 'mdast';
import { describe, expect, it } from 'vitest';
import { foldParts } from './fold-parts.ts';

const many = (count: number, word = 'word') => Array.from({ length: count }, () => word).join(' ');

/** The tree in short: names of elements, a fold with what stands in its summary. */
function folded(mdx: string): string {
  const tree = createProcessor().parse(mdx) as Root;
  foldParts()(tree);
  const short = (node: Node): string => {
    const name = node.type === 'mdxJsxFlowElement' ? (node as Node & { name: string }).name : node.type;
    const children = 'children' in node && name !== 'paragraph' ? (node as Parent).children.map(short) : [];
    return children.length > 0 ? `${name}(${children.join(' ')})` : name;
  };
  return short(tree.children[0]!);
}

describe('foldParts', () => {
  it('folds an idea’s later sections under their own headings, once enough lies open', () => {
    expect(
      folded(`<Part is="idea">\n\n${many(200)}\n\n### Near\n\n${many(40)}\n\n### Far\n\n${many(40)}\n\n</Part>`),
    ).toBe('Part(paragraph heading(text) paragraph details(summary(heading(text)) paragraph))');
  });

  it('leaves an idea open however long it is where it has no headings', () => {
    expect(folded(`<Part is="idea">\n\n${many(900)}\n\n${many(9)}\n\n</Part>`)).toBe('Part(paragraph paragraph)');
  });

  it('folds from the second formula on, with the words that lead up to it', () => {
    const formulas = '<Formula of="a" />\n\nwords\n\n<Formula of="b" />';
    expect(folded(`<Part is="formula">\n\nwords\n\n${formulas}\n\n</Part>`)).toBe(
      'Part(paragraph Formula details(summary(text) paragraph Formula))',
    );
  });

  it('shows what the hands are to do and the first limit, and folds the rest', () => {
    expect(folded('<Part is="hands-on">\n\nwords\n\n1. one\n\n</Part>')).toMatch(/^Part\(paragraph details\(/);
    expect(folded('<Part is="limits">\n\n- one\n- two\n\n</Part>')).toMatch(
      /^Part\(list\(.*?\) details\(summary\(text\) list/,
    );
    expect(folded('<Part is="limits">\n\n- one\n\n</Part>')).not.toContain('details');
  });

  it('refuses a fold within a fold, and says where', () => {
    const fold = '<details>\n\n<summary>more</summary>\n\nwords\n\n</details>';
    expect(() => folded(`<Part is="hands-on">\n\nwords\n\n${fold}\n\n</Part>`)).toThrow(
      /<Part is="hands-on">.*<details>/,
    );
    expect(folded(`<Part is="idea">\n\nwords\n\n${fold}\n\n</Part>`)).toContain('details');
  });
});
