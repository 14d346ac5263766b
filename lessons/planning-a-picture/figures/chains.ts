import { Fetched } from '#site/state/fetched.svelte.ts';
import type * as Planned from './planned-chain.ts';

type OfChains = Pick<typeof Planned, 'plannedChain' | 'rangesOf' | 'rangeTexts' | 'textOf' | 'spelledName'>;

const load = (): Promise<OfChains> => import('./planned-chain.ts');

/** What puts chains together and sets them, fetched when one is first asked for; what leans on one has no number until it is here. */
export const chains = new Fetched(load);

// What is drawn while the site is built waits for nothing; browsers are sent none of this.
if (import.meta.env.SSR) chains.here = await load();
