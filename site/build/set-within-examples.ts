import type { Root } from 'mdast';
import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';
import { visit } from 'unist-util-visit';

type Element = MdxJsxFlowElement | MdxJsxTextElement;

const kinds = ['mdxJsxFlowElement', 'mdxJsxTextElement'];
const attribute = (element: Element, name: string) =>
  element.attributes.find((one) => one.type === 'mdxJsxAttribute' && one.name === name);

/** Remark plugin: what an `<Example set={…}>` is set to holds for every `<Live>` and `<Formula>` in it that says nothing else. */
export function setWithinExamples() {
  return (tree: Root): void => {
    visit(tree, kinds, (example) => {
      const set = (example as Element).name === 'Example' && attribute(example as Element, 'set');
      if (!set) return;
      visit(example as Element, kinds, (part) => {
        const element = part as Element;
        const isNumber = element.name === 'Live' || element.name === 'Formula';
        if (isNumber && !attribute(element, 'set')) element.attributes.push(set);
      });
    });
  };
}
