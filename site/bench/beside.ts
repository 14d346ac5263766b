import type { Chain } from '#site/chain/chain.ts';
import { matchedTo, type Alike } from './match.ts';
import { measuresOf, placedChain, type ImpossibleLinks, type PlacedChain } from './placed.ts';
import type { BenchState } from './state.ts';
import { reachWords } from './compared-words.ts';
import { answerText } from './words.ts';

/** A second chain as it stands, and what is to be said of how it was set. */
export interface Beside {
  readonly chain: Chain;
  readonly placed: PlacedChain | ImpossibleLinks;
  readonly words: string;
}

/** The second chain, set to have alike with the first what it should. */
export function besideOf(chain: Chain, equal: BenchState['equal'], first: PlacedChain | ImpossibleLinks): Beside {
  if (equal === undefined) return { chain, placed: placedChain(chain), words: '' };
  const wanted = first.kind === 'built' ? measuresOf(first)[equal] : undefined;
  if (wanted === undefined) {
    return { chain, placed: placedChain(chain), words: 'The first chain has nothing to be equal to.' };
  }
  const found = matchedTo(chain, equal, wanted);
  const set = found.kind === 'matched' ? found.chain : chain;
  return { chain: set, placed: placedChain(set), words: matchWords(equal, wanted, found) };
}

function matchWords(name: Alike, wanted: number, found: ReturnType<typeof matchedTo>): string {
  const value = answerText(name, wanted);
  if (found.kind === 'matched') return `The second chain is set to ${value}, as the first.`;
  if (found.kind === 'fixed') return `Nothing in the second chain can be set to give ${value}.`;
  return `The second chain does not reach ${value}: it goes ${reachWords(name, found)}.`;
}
