import type { Node, Parent, Root, Text } from 'mdast';
import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';
import { terms, type Term } from '#core/quantity/terms.ts';

/** A term where a lesson's prose writes it. */
export interface Occurrence {
  readonly term: Term;
  /** The part of the lesson, by the name that `<Part is="…">` gives it. */
  readonly part: string;
  /** In bold or, for a word by the way, in italics, by itself: here the lesson says what it means. */
  readonly introduces: boolean;
  /** Set where it can be made a link: where in the tree the text is, and which of its letters are the term. */
  readonly place?: { readonly parent: Parent; readonly text: Text; readonly from: number; readonly to: number };
}

type Element = MdxJsxFlowElement | MdxJsxTextElement;

/** What is no running prose: it has a link of its own, is read at a glance, or is no English. */
const leftAlone = new Set([
  'heading',
  'link',
  'inlineCode',
  'code',
  'math',
  'inlineMath',
  'mdxFlowExpression',
  'mdxTextExpression',
]);

/** The words that a `<Predict>` carries as attributes. */
const predictWords = ['question', 'options', 'answer'];

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);

/** One form as a pattern: at a sentence's start or within, over the end of a line, one or several. */
function pattern(form: string): string {
  const [first = '', ...rest] = form;
  const either = first.toUpperCase() === first ? escaped(first) : `[${first}${first.toUpperCase()}]`;
  return `${either}${escaped(rest.join('')).replaceAll(' ', String.raw`\s+`)}(?:s|es)?`;
}

const byForm = new Map(
  terms
    .flatMap((term) => term.forms.map((form) => [form, term] as const))
    // The longer one first: an effective f-number is not an f-number.
    .sort(([one], [other]) => other.length - one.length),
);
const anyForm = new RegExp(
  String.raw`(?<![\p{L}\p{N}-])(?:${[...byForm.keys()].map((form) => `(${pattern(form)})`).join('|')})(?![\p{L}\p{N}]|-\p{L})`,
  'gu',
);
const inOrder = [...byForm.values()];

interface Match {
  readonly term: Term;
  readonly from: number;
  readonly to: number;
}

/** The terms in a piece of text, none within another. */
export function termsIn(text: string): Match[] {
  return [...text.matchAll(anyForm)].map((match) => ({
    term: inOrder[match.slice(1).findIndex((group) => group !== undefined)]!,
    from: match.index,
    to: match.index + match[0].length,
  }));
}

function plainText(node: Node): string {
  if ('children' in node) return (node as Parent).children.map(plainText).join('');
  return 'value' in node ? String(node.value) : '';
}

/** A term's name, with an article, a letter or 1:1 beside it at most: no rule, no question, no run-in head. */
function isNameAlone(text: string): boolean {
  const rest = termsIn(text).reduceRight((left, { from, to }) => left.slice(0, from) + left.slice(to), text);
  return rest.split(/[\s,()]+/).filter(Boolean).length <= 1 && !/[.?!:”]$/.test(text);
}

/** **Rail or ring?** A paragraph that begins with a few words in bold has them for a heading. */
function isRunInHead(node: Node, parent: Parent): boolean {
  return (
    node.type === 'strong' &&
    parent.children[0] === node &&
    parent.children.length > 1 &&
    /[.?!:”]$/.test(plainText(node))
  );
}

function attributeText(element: Element, name: string): string {
  const found = element.attributes.find((one) => one.type === 'mdxJsxAttribute' && one.name === name);
  const value = found?.value;
  return typeof value === 'string' ? value : (value?.value ?? '');
}

/** Every term in the running prose of a lesson's tree, in reading order. */
export function termsInProse(tree: Root): readonly Occurrence[] {
  const found: Occurrence[] = [];
  const walk = (node: Node, parent: Parent, part: string, isSetOff: boolean): void => {
    if (leftAlone.has(node.type) || ('name' in node && node.name === 'summary') || isRunInHead(node, parent)) return;
    if (node.type === 'text') {
      for (const { term, from, to } of termsIn((node as Text).value)) {
        found.push({ term, part, introduces: isSetOff, place: { parent, text: node as Text, from, to } });
      }
      return;
    }
    const element = node.type.startsWith('mdxJsx') ? (node as Element) : undefined;
    if (element?.name === 'kbd') return;
    if (element?.name === 'Predict') {
      for (const { term } of termsIn(predictWords.map((name) => attributeText(element, name)).join('\n'))) {
        found.push({ term, part, introduces: false });
      }
    }
    const here = element?.name === 'Part' ? attributeText(element, 'is') : part;
    const setOff = node.type === 'strong' || node.type === 'emphasis' ? isNameAlone(plainText(node)) : isSetOff;
    for (const child of 'children' in node ? (node as Parent).children : []) walk(child, node as Parent, here, setOff);
  };
  walk(tree, tree, '', false);
  return found;
}
