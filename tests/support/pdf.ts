/** What a printed page holds, in millimetres of its paper from the lower left corner. */
import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';

export interface Word {
  readonly text: string;
  /** Middle of the word. */
  readonly x: number;
  /** Its baseline. */
  readonly y: number;
}

export interface PrintedPage {
  /** Of the paper, millimetres. */
  readonly width: number;
  readonly height: number;
  /** Of its smallest type, points; infinite where there is none. */
  readonly smallest: number;
  /** All words in their order. */
  readonly text: string;
  readonly words: readonly Word[];
}

const millimetre = 72 / 25.4;

type Matrix = readonly [number, number, number, number, number, number];
const times = ([a, b, c, d, e, f]: Matrix, [p, q, r, s, t, u]: Matrix): Matrix => [
  a * p + c * q,
  b * p + d * q,
  a * r + c * s,
  b * r + d * s,
  a * t + c * u + e,
  b * t + d * u + f,
];

/** Reads a PDF with the open viewer's own parser: every word where it stands on the paper. */
export async function readPdf(file: Uint8Array): Promise<readonly PrintedPage[]> {
  const document = await getDocumentProxy(new Uint8Array(file));
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    const [left, bottom, right, top] = page.view as [number, number, number, number];
    const sizes = items.flatMap((item) =>
      'str' in item && item.str.trim() !== '' ? [Math.hypot(item.transform[2], item.transform[3])] : [],
    );
    const words = items.flatMap((item) =>
      'str' in item && item.str.trim() !== ''
        ? [
            {
              text: item.str.trim(),
              x: (item.transform[4] + item.width / 2) / millimetre,
              y: item.transform[5] / millimetre,
            },
          ]
        : [],
    );
    pages.push({
      width: (right - left) / millimetre,
      height: (top - bottom) / millimetre,
      smallest: Math.min(...sizes),
      text: words.map(({ text }) => text).join(' '),
      words,
    });
  }
  return pages;
}

/** Lengths of all upright strokes on the first page of a PDF. */
export async function uprightStrokes(file: Uint8Array): Promise<readonly number[]> {
  const { OPS } = await getResolvedPDFJS();
  const page = await (await getDocumentProxy(new Uint8Array(file))).getPage(1);
  const { fnArray, argsArray } = await page.getOperatorList();
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  const saved: Matrix[] = [];
  const upright: number[] = [];
  for (const [index, operator] of fnArray.entries()) {
    const given: unknown = argsArray[index];
    if (operator === OPS.save) saved.push(now);
    else if (operator === OPS.restore) now = saved.pop() ?? now;
    else if (operator === OPS.transform) now = times(now, given as Matrix);
    else if (operator === OPS.constructPath) {
      const [, , box] = given as [number, unknown, ArrayLike<number> | null];
      if (!box) continue;
      const [left, bottom, right, top] = Array.from(box) as [number, number, number, number];
      const across = Math.abs(now[0] * (right - left) + now[2] * (top - bottom)) / millimetre;
      const length = Math.abs(now[1] * (right - left) + now[3] * (top - bottom)) / millimetre;
      if (across < 0.01) upright.push(length);
    }
  }
  return upright;
}
