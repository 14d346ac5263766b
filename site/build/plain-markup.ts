import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterBuild } from './after-build.ts';
import { withOwnHashes } from './own-hashes.ts';
import { shortPath } from './short-path.ts';

const comment = /(<(script|style)\b.*?<\/\2>)|<!--.*?-->/gs;
/** Of shapes and where they are; what they say stands in texts and labels. */
const measure = /\s(?:d|points|transform|x|y|[xy][12]|[cr][xy]|r|width|height|viewBox)="[^"]*"/g;
const longMeasure = /-?\d*\.\d{3,}(?:e-?\d+)?/g;
const share = /\s(?:offset|(?:(?:fill|stop|stroke)-)?opacity)="[^"]*"/g;
const longShare = /\d*\.\d{4,}(?:e-?\d+)?/g;
const path = /\sd="([^"]*)"/g;

/** The markup of a page as browsers need it: without comments, which only a framework that takes markup over would read. */
export const withoutComments = (html: string) => html.replace(comment, (_, kept: string | undefined) => kept ?? '');

/**
 * Drawings in *html* to a hundredth of their unit, which on a screen is a hundredth of a pixel, and to a thousandth of what is opaque; their lines
 * from each point to the next.
 */
export const roundedDrawings = (html: string) =>
  html
    .replace(measure, (attribute) => attribute.replace(longMeasure, rounded(2)))
    .replace(share, (attribute) => attribute.replace(longShare, rounded(3)))
    .replace(path, (_, data: string) => ` d="${shortPath(data)}"`);

const rounded = (decimals: number) => (number: string) => String(Number(Number(number).toFixed(decimals)));

/**
 * Astro integration: after the build, takes out of every page what no browser shows. Figures are drawn by the same code on the server and in the
 * page, to sixteen digits; in the page that costs nothing, over the wire it is a tenth of a lesson.
 */
export const plainMarkup = () =>
  afterBuild('plain-markup', ({ folder }) => {
    for (const name of globSync('**/*.html', { cwd: folder })) {
      const file = join(folder, name);
      writeFileSync(file, withOwnHashes(roundedDrawings(withoutComments(readFileSync(file, 'utf8')))));
    }
  });
