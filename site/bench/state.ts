import { firstChain, type Chain } from '#site/chain/chain.ts';
import { usualConditions, type Conditions } from './conditions.ts';
import { usualLayers, type Layer } from './drawn.ts';
import type { Alike } from './match.ts';

/** All that the page is set to; its address says it whole. */
export interface BenchState {
  readonly chain: Chain;
  /** A second chain, to compare with. */
  readonly beside?: Chain;
  /** What the second is set to have alike with the first, if anything. */
  readonly equal?: Alike;
  readonly conditions: Conditions;
  readonly shown: readonly Layer[];
}

export const firstState = (): BenchState => ({
  chain: firstChain(),
  conditions: usualConditions,
  shown: usualLayers,
});
