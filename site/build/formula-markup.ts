import katex from 'katex';
import { glossary } from '#core/quantity/glossary.ts';
import { everyEquation } from './equations.ts';

const mathml = /<span class="katex-mathml">.*?<\/math><\/span>/gs;
const tag = /<(\/?)(?:span|svg|path)\b(?:[^>]*?\bclass="([^"]*)")?[^>]*?(\/?)>([^<]*)/g;
const entity = /&(?:#x([0-9a-f]+)|(amp|lt|gt));/gi;
const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>' };

/** Classes by which a style sheet of formulas chooses a face, other than the upright one; numbers have the face of the text. */
const faceOfClass = [
  [/\bnumber\b/, undefined],
  [/\bmathnormal\b/, 'Math-Italic'],
  [/\bboldsymbol\b/, 'Math-BoldItalic'],
  [/\b(?:amsrm|mathbb|textbb)\b/, 'AMS-Regular'],
  [/\b(?:mathbf|textbf)\b/, 'Main-Bold'],
  [/\b(?:mathit|textit)\b/, 'Main-Italic'],
  [/\b(?:delimsizing size1|delim-size1|small-op)\b/, 'Size1-Regular'],
  [/\b(?:delimsizing size2|large-op)\b/, 'Size2-Regular'],
  [/\bdelimsizing size3\b/, 'Size3-Regular'],
  [/\b(?:delimsizing size4|delim-size4)\b/, 'Size4-Regular'],
  [/\bkatex-html\b/, 'Main-Regular'],
] as const;

let all: Promise<string> | undefined;

/** All that formulas can come to: the letters of quantities, and every equation in letters and in numbers. */
export function everyFormulaMarkup(): Promise<string> {
  return (all ??= everyEquation().then((equations) =>
    [...Object.values(glossary).map(({ tex }) => katex.renderToString(tex)), ...Object.values(equations).flat()].join(
      '',
    ),
  ));
}

/** What formulas in *markup*, of a page or of a script, are made of: the characters that they set in each face, by the name of its file, and their classes. */
export function formulaParts(markup: string): {
  readonly faces: ReadonlyMap<string, string>;
  readonly classes: ReadonlySet<string>;
} {
  const faces = new Map<string, Set<string>>();
  const classes = new Set<string>();
  const html = markup.replaceAll('\\"', '"').replace(mathml, '');
  for (const start of html.matchAll(/<span class="katex[ "]/g)) {
    const open: (string | undefined)[] = [];
    tag.lastIndex = start.index;
    for (const [, closes, names = '', closed, text = ''] of html.matchAll(tag)) {
      if (closes) open.pop();
      else {
        for (const name of names.split(' ')) if (name !== '') classes.add(name);
        const own = faceOfClass.find(([pattern]) => pattern.test(names));
        if (!closed) open.push(own ? own[1] : open.at(-1));
      }
      if (open.length === 0) break;
      const face = open.at(-1);
      if (face === undefined || text === '') continue;
      if (!faces.has(face)) faces.set(face, new Set());
      for (const character of plain(text)) faces.get(face)!.add(character);
    }
  }
  return { faces: new Map([...faces].map(([face, set]) => [face, [...set].sort().join('')])), classes };
}

const plain = (text: string) =>
  text.replace(entity, (_, code: string | undefined, name: string) =>
    code === undefined ? named[name.toLowerCase()]! : String.fromCodePoint(parseInt(code, 16)),
  );
