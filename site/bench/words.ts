import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { sharpPlaneWords } from '#core/rig/solved-rig.ts';
import type { Chain } from '#site/chain/chain.ts';
import type { ImpossibleLinks, PlacedChain } from './placed.ts';

/** A chain in words, from the camera outwards. */
export const inWords = (chain: Chain): string =>
  chain.map(({ thing, turned }) => (turned ? `${thing.name} turned round` : thing.name)).join(', ');

/** Why a chain cannot be, with the name of the part at fault. */
export const refusal = (chain: Chain, { at, why }: ImpossibleLinks): string =>
  `This chain cannot be built. Part ${at + 1}, ${chain[at]!.thing.name}: ${why[0]!.toUpperCase()}${why.slice(1)}`;

/** What a reader has to know of a chain before its numbers; '' where a subject can be put into its sharp plane. */
export function caution({ positions }: PlacedChain): string {
  const { sharpPlane } = positions.solved;
  return sharpPlane === 'in front' ? '' : sharpPlaneWords(positions.solved);
}

/** An answer as the page prints it: what has no end, in words. */
export function answerText(name: QuantityName, value: number): string {
  if (value === Infinity) return 'no end';
  return printQuantity(name, value);
}
