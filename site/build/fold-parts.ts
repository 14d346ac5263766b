import type { Node, Parent, Root } from 'mdast';
import type { MdxJsxFlowElement } from 'mdast-util-mdx-jsx';
import { visit } from 'unist-util-visit';

type Child = MdxJsxFlowElement['children'][number];

/** So many words of an idea lie open: what is first read of it. What follows under headings of its own is folded under these. */
const openWords = 250;
/** So many limits of the model lie open. */
const openLimits = 1;

const isElement = (node: Node, name: string): node is MdxJsxFlowElement =>
  node.type === 'mdxJsxFlowElement' && (node as MdxJsxFlowElement).name === name;
const textOf = (element: MdxJsxFlowElement, name: string) => {
  const found = element.attributes.find((one) => one.type === 'mdxJsxAttribute' && one.name === name);
  return found && typeof found.value === 'string' ? found.value : undefined;
};
const has = (element: MdxJsxFlowElement, name: string) =>
  element.attributes.some((one) => one.type === 'mdxJsxAttribute' && one.name === name);

/** Under its summary, which is plain words or a heading of the part. */
function fold(summary: string | Child, children: readonly Child[]): MdxJsxFlowElement {
  const element = (name: string, inside: readonly Child[], classes = ''): MdxJsxFlowElement => ({
    type: 'mdxJsxFlowElement',
    name,
    attributes: classes === '' ? [] : [{ type: 'mdxJsxAttribute', name: 'class', value: classes }],
    children: [...inside],
  });
  const words = typeof summary === 'string' ? ({ type: 'text', value: summary } as unknown as Child) : summary;
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

function wordsIn(node: Node): number {
  if (node.type === 'text') return (node as Node & { value: string }).value.split(/\s+/).filter(Boolean).length;
  return 'children' in node ? (node as Parent).children.reduce((sum, child) => sum + wordsIn(child), 0) : 0;
}

/** A part cut at its headings: what stands before the first, then each with what is under it. */
function sectionsOf(part: MdxJsxFlowElement): Child[][] {
  const sections: Child[][] = [[]];
  for (const child of part.children) {
    if (child.type === 'heading') sections.push([]);
    sections.at(-1)!.push(child);
  }
  return sections;
}

const folds: Readonly<Record<string, (part: MdxJsxFlowElement) => void>> = {
  idea: (part) => {
    const [lead = [], ...headed] = sectionsOf(part);
    const count = (section: readonly Child[]) => section.reduce((sum, child) => sum + wordsIn(child), 0);
    let words = count(lead);
    const isOpen = headed.map((section) => (words += count(section)) <= openWords);
    part.children = [
      ...lead,
      ...headed.flatMap((section, at) => (isOpen[at] ? section : [fold(section[0]!, section.slice(1))])),
    ];
  },
  formula: (part) => foldFrom(part, places(part)[1] ?? -1, 'The other formulas of this page'),
  example: (part) => {
    const example = part.children.find((child) => isElement(child, 'Example')) as MdxJsxFlowElement | undefined;
    if (!example) return;
    // The first step ends before the words of the next: formulas that stand together belong to one step.
    const found = places(example);
    const next = found.find((at, index) => index > 0 && at !== found[index - 1]! + 1);
    foldFrom(example, next ?? -1, 'The rest of the example');
  },
  'hands-on': (part) => {
    part.children = [part.children[0]!, fold('The steps, and what to expect', part.children.slice(1))];
  },
  limits: (part) => {
    const at = part.children.findIndex((child) => child.type === 'list');
    const list = part.children[at];
    if (list?.type !== 'list' || list.children.length <= openLimits) return;
    const rest: Child[] = [{ ...list, children: list.children.slice(openLimits) }, ...part.children.slice(at + 1)];
    const kept: Child = { ...list, children: list.children.slice(0, openLimits) };
    part.children = [...part.children.slice(0, at), kept, fold('More about where this ends', rest)];
  },
  instructor: (part) => {
    part.children = [fold('Steps, questions and answers for teaching it', part.children)];
  },
};

/** What is folded twice is never found. */
function refuseFoldsInFolds(part: MdxJsxFlowElement): void {
  const look = (node: Node, isFolded: boolean): void => {
    const folds = isElement(node, 'details');
    if (folds && isFolded)
      throw new Error(
        `<Part is="${textOf(part, 'is')}">: a <details> within another, or within what the build folds by itself. Let a paragraph that begins in bold take its place.`,
      );
    for (const child of 'children' in node ? (node as Parent).children : []) look(child, isFolded || folds);
  };
  look(part, false);
}

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
      if (part.name !== 'Part') return;
      folds[textOf(part, 'is') ?? '']?.(part);
      refuseFoldsInFolds(part);
    });
  };
}
