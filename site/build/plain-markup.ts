import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

const comment = /(<(script|style)\b.*?<\/\2>)|<!--.*?-->/gs;
const drawing = /<svg\b.*?<\/svg>/gs;
/** Of shapes and where they are; what they say stands in texts and labels. */
const measure = /\s(?:d|points|transform|x|y|[xy][12]|[cr][xy]|r|width|height)="[^"]*"/g;
const longNumber = /-?\d*\.\d{3,}(?:e-?\d+)?/g;

/** The markup of a page as browsers need it: without comments, which only a framework that takes markup over would read. */
export const withoutComments = (html: string) => html.replace(comment, (_, kept: string | undefined) => kept ?? '');

/** Drawings in *html* to a hundredth of their unit, which on a screen is a hundredth of a pixel. */
export const roundedDrawings = (html: string) =>
  html.replace(drawing, (svg) =>
    svg.replace(measure, (attribute) =>
      attribute.replace(longNumber, (number) => String(Number(Number(number).toFixed(2)))),
    ),
  );

/**
 * Astro integration: after the build, takes out of every page what no browser shows. Figures are drawn by the same code on the server and in the
 * page, to sixteen digits; in the page that costs nothing, over the wire it is a tenth of a lesson.
 */
export function plainMarkup(): AstroIntegration {
  return {
    name: 'plain-markup',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const folder = fileURLToPath(dir);
        for (const name of globSync('**/*.html', { cwd: folder })) {
          const file = join(folder, name);
          writeFileSync(file, roundedDrawings(withoutComments(readFileSync(file, 'utf8'))));
        }
      },
    },
  };
}
