import { printQuantity } from '#core/quantity/print.ts';

/** Least and most of a magnification, in as many figures as tell them apart: `0.389 to 0.391×`. */
export function rangeWords({ least, most }: { readonly least: number; readonly most: number }): string {
  for (let figures = 3; ; figures++) {
    const [low, high] = [least, most].map((value) => printQuantity('magnification', value, { figures }));
    if (low !== high || figures === 6) return `${low!.replace('×', '')} to ${high!}`;
  }
}
