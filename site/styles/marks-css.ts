import { quantityIds } from '#core/quantity/vocabulary.ts';
import { markOf } from './marks.ts';

/**
 * The text of `marks.css`: whatever carries `data-quantity` gets the quantity's colour as `--mark` and its line style as `--dash`,
 * so that widgets need no table of marks in the browser.
 *
 * Ids match from their end, so that `reversed-lens.focal-length` is marked as `focal-length`; longer ids come
 * later, so that `tube-focal-length` overrules it.
 */
export function marksCss(): string {
  const shortFirst = [...quantityIds].sort((one, other) => one.length - other.length || (one < other ? -1 : 1));
  const rules = shortFirst.map((id) => {
    const { colour, dash } = markOf(id);
    return `[data-quantity$='${id}'] {\n  --mark: ${colour};\n  --dash: ${dash};\n}\n`;
  });
  return `/* Written by marks-css.ts; \`npx vitest run site/styles -u\` rewrites it. */\n${rules.join('')}`;
}
