import { rings } from '#site/state/crate.ts';
import { parts } from '#site/state/crate-parts.ts';

/** All lengths that some of *lengths* come to, shortest first. */
const sumsOf = (lengths: readonly number[]) =>
  [...lengths.reduce((sums, one) => new Set([...sums, ...[...sums].map((sum) => sum + one)]), new Set([0]))].sort(
    (a, b) => a - b,
  );

const sums = sumsOf(rings);
/** More rings than this are no set that anybody stacks. */
const most = 8;

/** Of a ring longer than this no crate tells, mm. */
const { longest } = parts.bellows;

/**
 * What makes an extension, mm: the shortest rings that are long enough, the bellows, or nothing. Focusing does the rest.
 *
 * @param own lengths of the reader's own rings, mm; with none the crate's are taken, and its bellows
 */
export function extensionInWords(extension: number | undefined, own: readonly number[] = []): string {
  if (extension === undefined || extension <= 0) return 'lens alone';
  if (own.length > 0) {
    const found = sumsOf(own.slice(0, most)).find((length) => length >= extension - 0.05);
    return found === undefined
      ? 'longer than your rings: bellows, or another lens'
      : `lens + ${Number(found.toFixed(1))} mm of your rings`;
  }
  const sum = sums.find((length) => length >= extension - 0.05);
  if (sum !== undefined) return `lens + ${sum} mm of rings`;
  return extension <= longest ? 'lens + bellows' : 'longer than the bellows: another lens';
}
