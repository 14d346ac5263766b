import type { Root, RootContent } from 'mdast';
import { parts, type PartName } from '#site/lesson/parts.ts';

const order = Object.keys(parts) as PartName[];

function partOf(node: RootContent): PartName | undefined {
  if (node.type !== 'mdxJsxFlowElement' || node.name !== 'Part') return undefined;
  const is = node.attributes.find((one) => one.type === 'mdxJsxAttribute' && one.name === 'is')?.value;
  return order.find((name) => name === is);
}

/** Remark plugin: a lesson's parts stand on its page in the one order of all lessons, wherever the file has them. */
export function partsInOrder() {
  return (tree: Root): void => {
    const places = tree.children.flatMap((node, index) => (partOf(node) ? [index] : []));
    const sorted = places
      .map((index) => tree.children[index]!)
      .sort((a, b) => order.indexOf(partOf(a)!) - order.indexOf(partOf(b)!));
    for (const [rank, index] of places.entries()) tree.children[index] = sorted[rank]!;
  };
}
