import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { pixelsPerPaperMillimetre } from '#site/figures/scale/drawing-scale.ts';

/** What can be printed of a lesson, and on how many pages it fits at most. */
export const pagesOf = {
  learner: 2,
  'hands-on': 1,
  instructor: 1,
  problems: 1,
  key: 2,
  card: 1,
  'four-cards': 1,
  cards: 1,
} as const;

export type Paper = keyof typeof pagesOf;

/** What A4 and Letter both have room for within the margins of paper.css, mm. */
const page = { width: 182, height: 254 };
const gap = 6;

/** CSS pixels of a length on paper, mm. */
const pixels = (length: number) => length * pixelsPerPaperMillimetre;

export const pagePixels = { width: pixels(page.width), height: pixels(page.height) };

/** A drawing laid out in millimetres: its place on the page, and the box that a figure draws in. */
export interface PaperSize {
  /** As an SVG takes them: `182mm`. */
  readonly width: string;
  readonly height: string;
  readonly box: SheetBox;
}

function paperSize(width: number, height: number, text: number): PaperSize {
  const box = { width: pixels(width), height: pixels(height), text, small: 0.86 * text, onPaper: true };
  return { width: `${width}mm`, height: `${height}mm`, box };
}

/** The lesson's first drawing takes the whole width; the others stand two in a row. */
export const wholeSize = paperSize(page.width, 74, 12);
/** A card to cut out, A6. */
export const cardSize = paperSize(105, 148, 13);
/** The same without the code, four on a page. */
export const quarterCardSize = paperSize(88, 124, 11);
/** The same small, without the code: two beside each other, four rows of them on a page. */
export const smallCardSize = paperSize(88, 58, 7.5);
/** At its foot, of the code of the address, pixels. */
export const codeRoom = pixels(28);
export const halfSize = paperSize((page.width - gap) / 2, 60, 10.5);
