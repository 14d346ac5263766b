import type { PrintedPage, Word } from './pdf.ts';

/** Millimetres in the units that title blocks name. */
const units: Readonly<Record<string, number>> = { mm: 1, '\u03bcm': 1e-3 };

export interface PrintedScale {
  /** As the title block states it: 0.5 for 1:2. */
  readonly stated: number;
  /** Millimetres of paper for a millimetre of the real thing, between the outermost numbers of the sheet's rule. */
  readonly measured: number;
  /** Between those numbers, millimetres of paper. */
  readonly length: number;
}

/** The scales that title blocks on *page* state, and what a ruler laid on the rule below each finds. */
export function scalesOn({ words }: PrintedPage): readonly PrintedScale[] {
  const titles = words.filter(({ text }) => /^scale \d/.test(text));
  const top = Math.max(...titles.map(({ y }) => y));
  const middle = 105;
  return titles.map((title) => {
    const [, drawn = '', real = ''] = /^scale ([\d.]+):([\d.]+)/.exec(title.text)!;
    // The first sheet is as wide as the page, two others share it. Beside the words stands the unit, below them the rule.
    const isOnSheet = ({ x }: Word) => title.y === top || x < middle === title.x < middle;
    const beside = words
      .filter((word) => isOnSheet(word) && Math.abs(word.y - title.y) < 0.5 && word.x > title.x)
      .map(({ text }) => text.normalize('NFKC'))
      .join('');
    const unit = Object.entries(units).find(([name]) => beside.startsWith(name))?.[1];
    const numbers = words.filter(
      (word) =>
        /^\d+(?:\.\d+)?$/.test(word.text) && isOnSheet(word) && title.y - word.y > -1.5 && title.y - word.y < 12,
    );
    // The row of numbers nearest to the words.
    const rows = numbers.map(({ y }) => numbers.filter((other) => Math.abs(other.y - y) < 0.3));
    const row = rows.filter(({ length }) => length > 1).sort(([one], [other]) => other!.y - one!.y)[0] ?? [];
    // A rule may count to both sides of its zero.
    const zero = row.find(({ text }) => text === '0') ?? row[0];
    const far = row.toSorted((one, other) => Math.abs(one.x - zero!.x) - Math.abs(other.x - zero!.x)).at(-1);
    const stated = Number(drawn) / Number(real);
    if (!zero || !far) return { stated, measured: NaN, length: NaN };
    const length = Math.abs(far.x - zero.x);
    return { stated, measured: length / (Math.abs(Number(far.text) - Number(zero.text)) * (unit ?? NaN)), length };
  });
}
