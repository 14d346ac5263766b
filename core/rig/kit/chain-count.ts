import { canBeCoupled } from './front.ts';
import { kindsOf, ofPart, type Kind } from './kinds.ts';
import type { KitRow } from './kit.ts';

/**
 * How many distinct chains can be built from a kit, without building any.
 *
 * Σ over cameras: (Π(n+1) + converters × Π(n+1)(n+2)/2) × (lenses × Π(c+1) + reversed + coupled), n and c being how many there are of each kind of
 * ring and close-up lens
 *
 * @param kit as `searchKit` takes it
 * @returns a whole number, or Infinity where it is past all counting
 *
 * Source: derived in [README](README.md#what-can-be-built).
 */
export function chainCount(kit: readonly KitRow[]): number {
  const kinds = kindsOf(kit);
  const lenses = ofPart(kinds, 'lens');
  const closeUps = ways(ofPart(kinds, 'close-up lens'), 1);
  return ofPart(kinds, 'camera').reduce((sum, { row: { mount } }) => {
    const here = <Row extends KitRow & { mount: string }>(all: readonly Kind<Row>[]) =>
      all.filter(({ row }) => row.mount === mount);
    const rings = here(ofPart(kinds, 'ring'));
    const backs = ways(rings, 1) + here(ofPart(kinds, 'converter')).length * ways(rings, 2);
    const fitting = here(lenses);
    const reversed = here(ofPart(kinds, 'reversing ring')).length * lenses.length;
    const pairs = fitting.reduce((count, main) => count + lenses.filter((one) => canBeCoupled(main, one)).length, 0);
    const coupled = ofPart(kinds, 'coupling ring').length * pairs;
    return sum + backs * (fitting.length * closeUps + reversed + coupled);
  }, 0);
}

/** Ways to put any number of each kind into one place, or into two. */
function ways(kinds: readonly Kind[], places: 1 | 2): number {
  return kinds.reduce((product, { ids: { length } }) => {
    return product * (length + 1) * (places === 2 ? (length + 2) / 2 : 1);
  }, 1);
}
