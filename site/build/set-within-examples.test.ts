import type { Root } from 'mdast';
import type { MdxJsxAttribute, MdxJsxFlowElement } from 'mdast-util-mdx-jsx';
import { expect, test } from 'vitest';
import { setWithinExamples } from './set-within-examples.ts';

const set: MdxJsxAttribute = { type: 'mdxJsxAttribute', name: 'set', value: 'the example’s' };
const own: MdxJsxAttribute = { type: 'mdxJsxAttribute', name: 'set', value: 'its own' };
const element = (name: string, attributes: MdxJsxAttribute[] = [], children: MdxJsxFlowElement[] = []) =>
  ({ type: 'mdxJsxFlowElement', name, attributes, children }) satisfies MdxJsxFlowElement;

test('numbers and formulas within an example are set as it is, unless they say otherwise; those outside are not', () => {
  const [live, formula, other, letter, outside] = [
    element('Live'),
    element('Formula'),
    element('Live', [own]),
    element('Letter'),
    element('Live'),
  ];
  const example = element('Example', [set], [live, element('div', [], [formula, other, letter])]);
  const tree: Root = { type: 'root', children: [example, outside] };
  setWithinExamples()(tree);
  expect([live, formula, other, letter, outside].map(({ attributes }) => attributes)).toEqual([
    [set],
    [set],
    [own],
    [],
    [],
  ]);
});
