import fc from 'fast-check';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';

type Range = readonly [least: number, most: number];

const steps = 1_000_000;

/** Values over a range: as often in each octave where the range is above zero, else evenly; its ends more often than chance. */
export function valueIn([least, most]: Range): fc.Arbitrary<number> {
  const share = fc.integer({ min: 0, max: steps }).map((step) => step / steps);
  return least > 0
    ? share.map((part) => Math.min(most, least * (most / least) ** part))
    : share.map((part) => least + (most - least) * part);
}

/** Values of quantities keyed by id, over the vocabulary's ranges or those of *ranges*. */
export function quantities(
  ids: readonly QuantityName[],
  ranges: Readonly<Record<string, Range>> = {},
): fc.Arbitrary<Record<string, number>> {
  return fc.record(Object.fromEntries(ids.map((id) => [id, valueIn(ranges[id] ?? rangeOf(id))])));
}

function rangeOf(id: QuantityName): Range {
  const { least, most } = quantityOf(id);
  return [least, most];
}
