import postcss, { type ChildNode } from 'postcss';

/** What in a selector may be so or otherwise says nothing of whether it applies. */
const eitherWay = /:(?:is|not|has)\((?:[^()]|\([^()]*\))*\)/g;
/** Marks of one component's own styles: Svelte's classes, as the build names them, and Astro's attributes. */
const componentMark = /\.(s[0-9a-z]{4})(?![\w-])|\[(data-astro-cid-\w+)\]/g;
const grouping = new Set(['media', 'supports', 'container', 'layer']);

/** One rule of a style sheet, within what groups it: `['@media print'] .part{…}`. */
export interface Rule {
  readonly within: readonly string[];
  readonly text: string;
  /** For each of its selectors the components that it is for. */
  readonly marks: readonly (readonly string[])[];
}

/** The rules of a style sheet, each by itself. */
export function rulesOf(css: string): Rule[] {
  const flat = (nodes: readonly ChildNode[], within: readonly string[]): Rule[] =>
    nodes.flatMap((node): Rule[] => {
      if (node.type === 'atrule' && grouping.has(node.name) && node.nodes)
        return flat(node.nodes, [...within, `@${node.name} ${node.params}`]);
      if (node.type === 'comment') return [];
      const selectors = node.type === 'rule' ? node.selectors : [];
      const marks = selectors.map((selector) =>
        [...selector.replace(eitherWay, '').matchAll(componentMark)].map(([, svelte, astro]) => (svelte ?? astro)!),
      );
      return [{ within, text: node.toString(), marks }];
    });
  return flat(postcss.parse(css).nodes, []);
}

/** Rules as a style sheet: what follows one another within the same group stands in it together. */
export function sheetOf(rules: readonly Rule[]): string {
  let css = '';
  let open: readonly string[] = [];
  const close = (depth: number) => {
    css += '}'.repeat(open.length - depth);
    open = open.slice(0, depth);
  };
  for (const { within, text } of rules) {
    const other = within.findIndex((group, depth) => group !== open[depth]);
    close(other === -1 ? within.length : other);
    css += within
      .slice(open.length)
      .map((group) => `${group}{`)
      .join('');
    open = within;
    css += /[}]$/.test(text) ? text : `${text};`;
  }
  close(0);
  return css;
}

/** The rules of *rules* that can apply where *has* knows which components there are; one that stands in several places stands in the last. */
export function usedRules(rules: readonly Rule[], has: (mark: string) => boolean): Map<string, Rule> {
  const used = new Map<string, Rule>();
  for (const rule of rules) {
    if (rule.marks.length > 0 && !rule.marks.some((marks) => marks.every(has))) continue;
    const key = JSON.stringify([rule.within, rule.text]);
    used.delete(key);
    used.set(key, rule);
  }
  return used;
}
