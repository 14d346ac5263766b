import type { Element, Root } from 'hast';
import { visit } from 'unist-util-visit';

/** Rehype plugin: bad TeX in a lesson stops the build instead of printing red text on the page. */
export function failOnBadTex() {
  return (tree: Root, file: { path?: string; messages: { reason: string }[] }): void => {
    visit(tree, 'element', (node: Element) => {
      const classes = node.properties['className'];
      if (Array.isArray(classes) && classes.includes('katex-error')) {
        throw new Error(`${file.path ?? 'A lesson'}: KaTeX cannot read a formula: ${String(node.properties['title'])}`);
      }
    });
  };
}
