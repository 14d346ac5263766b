import { createProcessor } from '@mdx-js/mdx';
import type { Root } from 'mdast';
import { describe, expect, it } from 'vitest';
import { partsInOrder } from './parts-in-order.ts';

function order(mdx: string): readonly string[] {
  const tree = createProcessor().parse(mdx) as Root;
  partsInOrder()(tree);
  return tree.children.map((node) =>
    node.type === 'mdxJsxFlowElement'
      ? String(node.attributes[0]?.type === 'mdxJsxAttribute' && node.attributes[0].value)
      : node.type,
  );
}

describe('partsInOrder', () => {
  it('brings safety before the hands, and leaves what is no part where it is', () => {
    const mdx =
      '<Part is="question" />\n\ntext\n\n<Part is="hands-on" />\n\n<Part is="limits" />\n\n<Part is="safety" />\n\n<Islands />';
    expect(order(mdx)).toEqual(['question', 'paragraph', 'safety', 'hands-on', 'limits', 'false']);
  });

  it('changes nothing where all stand in order, nor an unknown part’s place', () => {
    expect(order('<Part is="idea" />\n\n<Part is="nothing" />\n\n<Part is="check" />')).toEqual([
      'idea',
      'nothing',
      'check',
    ]);
  });
});
