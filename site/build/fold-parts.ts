import type { Root, RootContent } from 'mdast';
import type { MdxJsxFlowElement } from 'mdast-util-mdx-jsx';
import { visit } from 'unist-util-visit';

type Child = MdxJsxFlowElement['children'][number];

const isElement = (node: RootContent | Child, name: string): node is MdxJsxFlowElement =>
  node.type === 'mdxJsxFlowElement' && node.name === name;
const textOf = (element: MdxJsxFlowElement, name: string) => {
  const found = element.attributes.find((one) => one.type === 'mdxJsxAttribute' && one.name === name);
  return found && typeof found.value === 'string' ? found.value : undefined;
};
const has = (element: MdxJsxFlowElement, name: string) =>
  element.attributes.some((one) => one.type === 'mdxJsxAttribute' && one.name === name);

function fold(summary: string, children: readonly Child[]): MdxJsxFlowElement {
  const element = (name: string, inside: readonly Child[], classes = ''): MdxJsxFlowElement => ({
    type: 'mdxJsxFlowElement',
    name,
    attributes: classes === '' ? [] : [{ type: 'mdxJsxAttribute', name: 'class', value: classes }],
    children: [...inside],
  });
  const words = { type: 'text', value: summary } as unknown as Child;
  return element('details', [element('summary', [words]), ...children], 'part-fold');
}

/** Folds all from index *at*; the words that lead up to it go with it. */
function foldFrom(part: MdxJsxFlowElement, at: number, summary: string): void {
  if (at <= 0 || at >= part.children.length) return;
  const leads = (child: Child | undefined) => child?.type === 'paragraph';
  const start = at > 1 && leads(part.children[at - 1]) ? at - 1 : at;
  part.children = [...part.children.slice(0, start), fold(summary, part.children.slice(start))];
}

/** Where formulas stand among the children of a part. */
const places = (part: MdxJsxFlowElement) =>
  part.children.flatMap((child, at) => (isElement(child, 'Formula') ? [at] : []));

const folds: Readonly<Record<string, (part: MdxJsxFlowElement) => void>> = {
  formula: (part) => foldFrom(part, places(part)[1] ?? -1, 'The other formulas of this page'),
  example: (part) => {
    const example = part.children.find((child) => isElement(child, 'Example')) as MdxJsxFlowElement | undefined;
    if (!example) return;
    // The first step ends before the words of the next: formulas that stand together belong to one step.
    const found = places(example);
    const next = found.find((at, index) => index > 0 && at !== found[index - 1]! + 1);
    foldFrom(example, next ?? -1, 'The rest of the example');
  },
  limits: (part) => {
    const at = part.children.findIndex((child) => child.type === 'list');
    const list = part.children[at];
    if (list?.type !== 'list' || list.children.length <= 3) return;
    const rest: Child[] = [{ ...list, children: list.children.slice(3) }, ...part.children.slice(at + 1)];
    const kept: Child = { ...list, children: list.children.slice(0, 3) };
    part.children = [...part.children.slice(0, at), kept, fold('More about where this ends', rest)];
  },
  instructor: (part) => {
    part.children = [fold('Steps, questions and answers for teaching it', part.children)];
  },
};

/**
 * Remark plugin: a lesson's parts show their beginnings and fold the rest, and every formula knows which formulas
 * with a list of letters stand before it, so that a letter is explained once.
 */
export function foldParts() {
  return (tree: Root): void => {
    const before: string[] = [];
    visit(tree, 'mdxJsxFlowElement', (node) => {
      const element = node as MdxJsxFlowElement;
      const of = element.name === 'Formula' ? textOf(element, 'of') : undefined;
      if (of === undefined || has(element, 'brief')) return;
      element.attributes.push({ type: 'mdxJsxAttribute', name: 'after', value: before.join(' ') });
      before.push(of);
    });
    visit(tree, 'mdxJsxFlowElement', (node) => {
      const part = node as MdxJsxFlowElement;
      if (part.name === 'Part') folds[textOf(part, 'is') ?? '']?.(part);
    });
  };
}
