import { addressOfChain } from '#site/chain/chain-in-text.ts';
import type { Chain } from '#site/chain/chain.ts';
import { pathTo } from '#site/course.ts';

/** Where the bench shows a chain. */
export const benchAddress = (chain: Chain): string => `${pathTo('bench/')}?chain=${addressOfChain(chain)}`;
