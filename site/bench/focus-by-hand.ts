import type { Chain } from '#site/chain/chain.ts';
import { matchedTo, measured } from './match.ts';

/** No hand sets a focus finer than to four figures, and an address is to be read. */
const shortened = (chain: Chain): Chain =>
  chain.map((link) => ({
    ...link,
    ...(link.focus !== undefined && { focus: Number(link.focus.toPrecision(4)) }),
    ...(link.extension !== undefined && { extension: Number(link.extension.toPrecision(4)) }),
  }));

/** The chain focused so that *name* is *value*, or as near to it as it goes; undefined where nothing of it can be set. */
export function focusedTo(chain: Chain, name: 'focus-distance' | 'working-distance', value: number): Chain | undefined {
  const found = matchedTo(chain, name, value);
  if (found.kind === 'matched') return shortened(found.chain);
  if (found.kind === 'fixed') return undefined;
  const end = matchedTo(chain, name, value > found.most ? found.most : found.least);
  return end.kind === 'matched' && measured(end.chain, name) !== undefined ? shortened(end.chain) : undefined;
}
