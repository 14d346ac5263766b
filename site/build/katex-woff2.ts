import type { Plugin } from 'vite';
import { everyFormulaMarkup, formulaParts } from './formula-markup.ts';

const olderFormat = /,\s*url\([^)]+\.(?:woff|ttf)\)\s*format\((["'])(?:woff|truetype)\1\)/g;
const fontFace = /@font-face\{[^}]*?\bKaTeX_([\w-]+)\.woff2[^}]*\}/g;
const rule = /([^{}@]+)(\{[^{}]*\})/g;
const className = /\.([a-z][\w-]*)/gi;
const exception = /:not\([^)]*\)/g;
const comma = /,(?![^(]*\))/;

/** KaTeX's style sheet without its woff and ttf copies: every browser that runs these pages reads woff2. */
export function withWoff2Only(css: string): string {
  return css.replace(olderFormat, '');
}

/** KaTeX's style sheet without the faces that no formula is set in, so that their files need not be kept for offline use. */
export function withOwnFaces(css: string, faces: ReadonlySet<string>): string {
  return css.replace(fontFace, (whole, face: string) => (faces.has(face) ? whole : ''));
}

/** KaTeX's style sheet without the rules for classes that no formula has: it is a tenth of what TeX can set that optics asks for. */
export function withOwnClasses(css: string, classes: ReadonlySet<string>): string {
  const applies = (selector: string) =>
    [...selector.replace(exception, '').matchAll(className)].every(([, name = '']) => classes.has(name));
  return css.replace(rule, (_, selectors: string, body: string) => {
    const kept = selectors.split(comma).filter(applies);
    return kept.length === 0 ? '' : kept.join(',') + body;
  });
}

/** Vite plugin: trims KaTeX's style sheet to what formulas here are set with, before its font files are gathered. */
export function katexWoff2(): Plugin {
  return {
    name: 'katex-woff2',
    enforce: 'pre',
    async transform(code, id) {
      if (!/\/katex(?:\.min)?\.css(?:\?|$)/.test(id)) return undefined;
      const { faces, classes } = formulaParts(await everyFormulaMarkup());
      // Within every formula, for readers that hear it.
      const all = new Set([...classes, 'katex-display', 'katex-mathml']);
      return { code: withOwnClasses(withOwnFaces(withWoff2Only(code), new Set(faces.keys())), all), map: null };
    },
  };
}
