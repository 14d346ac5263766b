import { printQuantity } from '#core/quantity/print.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { answerText } from './words.ts';

/** How far the second number is from the first: `× 1.4`, `+0.7 stops`, `alike`. */
export function differenceText(name: QuantityName, first: number, second: number): string {
  const [one, other] = [answerText(name, first), answerText(name, second)];
  if (one === other) return 'alike';
  const off = second - first;
  if (!Number.isFinite(off)) return 'differs';
  // Two that print otherwise are never said to differ by nothing.
  if (quantityOf(name).base === 'stops') return `${signed(off, String(Number(Math.abs(off).toPrecision(2))))} stops`;
  if (!(first > 0 && second > 0)) return signed(off, printQuantity(name, Math.abs(off)));
  return `× ${Number((second / first).toPrecision(3))}`;
}

const signed = (value: number, words: string) => `${value < 0 ? '−' : '+'}${words}`;

/** Between what values of a quantity a chain can be set: `from 0.48× to 0.63×`; to infinity, `up to 0.06×` and `from 1.08 m on`. */
export function reachWords(
  name: QuantityName,
  { least, most }: { readonly least: number; readonly most: number },
): string {
  if (least === 0) return `up to ${answerText(name, most)}`;
  if (most === Infinity) return `from ${answerText(name, least)} on`;
  return `from ${answerText(name, least)} to ${answerText(name, most)}`;
}
